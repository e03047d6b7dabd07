package quarterlight.table.cell;

import java.time.DateTimeException;
import java.time.LocalDateTime;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.util.Optional;

/** Dates with times as they stand in tables and commands: ISO 8601 local time, or with an offset. */
public final class MomentText {
    private MomentText() {}

    /**
     * Reads {@code 2026-05-02T10:15}, with seconds and fraction if given, a blank instead of the T allowed. A time with an offset is
     * brought to the local time of {@code zone}. Empty if the text is none, or names a time that does not exist.
     */
    public static Optional<LocalDateTime> parse(String text, ZoneId zone) {
        String iso = text.strip().replaceFirst("^(\\d{4}-\\d{2}-\\d{2}) +", "$1T");
        try {
            return Optional.of(LocalDateTime.parse(iso));
        } catch (DateTimeException local) {
            return withOffset(iso, zone);
        }
    }

    private static Optional<LocalDateTime> withOffset(String iso, ZoneId zone) {
        try {
            return Optional.of(OffsetDateTime.parse(iso).atZoneSameInstant(zone).toLocalDateTime());
        } catch (DateTimeException e) {
            return Optional.empty();
        }
    }
}
