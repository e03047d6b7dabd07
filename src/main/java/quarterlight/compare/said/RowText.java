package quarterlight.compare.said;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import quarterlight.compare.matter.CellClass;
import quarterlight.compare.matter.MatterRow;
import quarterlight.visit.photo.PhotoId;

/**
 * One matter on all cars, in words.
 *
 * @param severity in a word
 * @param contrast which cars show what
 * @param why why unlike zones stand together; empty if they are the same
 */
public record RowText(
        MatterRow row, String severity, String place, String contrast, Optional<String> why, List<CellText> cells) {
    public RowText {
        Objects.requireNonNull(row, "row");
        Objects.requireNonNull(severity, "severity");
        Objects.requireNonNull(place, "place");
        Objects.requireNonNull(contrast, "contrast");
        Objects.requireNonNull(why, "why");
        cells = List.copyOf(cells);
    }

    /**
     * What one car shows.
     *
     * @param label its class in a word, to stand before the text
     */
    public record CellText(CellClass kind, String label, String text, Optional<PhotoId> photo) {
        public CellText {
            Objects.requireNonNull(kind, "kind");
            Objects.requireNonNull(label, "label");
            Objects.requireNonNull(text, "text");
            Objects.requireNonNull(photo, "photo");
        }
    }

    static RowText of(MatterRow row) {
        Optional<String> why = row.subject().places().size() == 1
                ? row.subject().places().get(0).counterpart().map(one -> one.said())
                : Optional.empty();
        return new RowText(
                row,
                row.severity().said(),
                row.place(),
                capital(row.contrast()),
                why,
                row.cells().stream()
                        .map(cell ->
                                new CellText(cell.kind(), capital(cell.kind().said()), cell.text(), cell.photo()))
                        .toList());
    }

    private static String capital(String text) {
        return Character.toUpperCase(text.charAt(0)) + text.substring(1);
    }
}
