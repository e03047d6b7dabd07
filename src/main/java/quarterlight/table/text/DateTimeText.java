package quarterlight.table.text;

import static quarterlight.language.Sentences.say;

import java.time.DateTimeException;
import java.time.LocalDateTime;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.time.zone.ZoneOffsetTransition;
import java.util.Optional;

/** Dates with times as they stand in tables and commands: ISO 8601 local time, or with an offset. */
public final class DateTimeText {
    /** Nothing that a visit records lies outside of these years; cameras that lost their time begin later. */
    private static final int MIN_YEAR = 1900;

    private static final int MAX_YEAR = 2199;
    private static final DateTimeFormatter SHORT = DateTimeFormatter.ofPattern("HH:mm");

    private DateTimeText() {}

    /**
     * Reads {@code 2026-05-02T10:15}, with seconds and fraction if given, a blank instead of the T allowed. A time with an offset is
     * brought to the local time of {@code zone}. Empty if {@link #fault} says why.
     */
    public static Optional<LocalDateTime> parse(String text, ZoneId zone) {
        return written(text, zone)
                .filter(moment -> isUsual(moment) && gap(moment, zone).isEmpty());
    }

    /** Why a text cannot be taken as a moment, and what to do; empty if it can. */
    public static Optional<String> fault(String text, ZoneId zone) {
        Optional<LocalDateTime> moment = written(text, zone);
        if (moment.isEmpty()) {
            return Optional.of(say("cell.time", Quoted.of(text)));
        }
        if (!isUsual(moment.get())) {
            return Optional.of(say("cell.time.year", Quoted.of(text), MIN_YEAR, MAX_YEAR));
        }
        return gap(moment.get(), zone)
                .map(gap -> say(
                        "cell.time.gap",
                        Quoted.of(text),
                        zone,
                        SHORT.format(gap.getDateTimeBefore()),
                        SHORT.format(gap.getDateTimeAfter())));
    }

    private static boolean isUsual(LocalDateTime moment) {
        return moment.getYear() >= MIN_YEAR && moment.getYear() <= MAX_YEAR;
    }

    private static Optional<ZoneOffsetTransition> gap(LocalDateTime moment, ZoneId zone) {
        return Optional.ofNullable(zone.getRules().getTransition(moment)).filter(ZoneOffsetTransition::isGap);
    }

    private static Optional<LocalDateTime> written(String text, ZoneId zone) {
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
