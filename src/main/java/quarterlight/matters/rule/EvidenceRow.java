package quarterlight.matters.rule;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import quarterlight.visit.photo.PhotoId;
import quarterlight.visit.pin.RecordId;

/**
 * One piece of evidence of a finding.
 *
 * @param table the kind of rows that it stands in ({@code statements}, {@code trials}, ...), or the name of what was worked out
 *     ({@code rust}, {@code history}, {@code dates})
 * @param row its row there; empty for what was worked out of many rows
 * @param text what it says, in a full sentence with its basis
 * @param photos that show it, the best first
 */
public record EvidenceRow(String table, Optional<RecordId> row, String text, List<PhotoId> photos) {
    public EvidenceRow {
        Objects.requireNonNull(table, "table");
        Objects.requireNonNull(row, "row");
        Objects.requireNonNull(text, "text");
        photos = List.copyOf(photos);
    }

    public static EvidenceRow of(String table, RecordId row, String text, List<PhotoId> photos) {
        return new EvidenceRow(table, Optional.of(row), text, photos);
    }

    public static EvidenceRow workedOut(String table, String text) {
        return new EvidenceRow(table, Optional.empty(), text, List.of());
    }
}
