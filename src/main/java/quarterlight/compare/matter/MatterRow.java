package quarterlight.compare.matter;

import static quarterlight.language.Sentences.say;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.stream.Collectors;
import quarterlight.visit.statement.Severity;

/**
 * One matter on all cars.
 *
 * @param severity the gravest that any car shows
 * @param safety whether it is a matter of safety on any car
 * @param place where, in words
 * @param cells one for each car, in their order
 */
public record MatterRow(
        Severity severity, boolean safety, Concern concern, Subject subject, String place, List<MatterCell> cells) {
    public MatterRow {
        Objects.requireNonNull(severity, "severity");
        Objects.requireNonNull(concern, "concern");
        Objects.requireNonNull(subject, "subject");
        Objects.requireNonNull(place, "place");
        cells = List.copyOf(cells);
    }

    /** Whether it stands in the first part. */
    public boolean isHeavy() {
        return severity.compareTo(Severity.MAJOR) >= 0;
    }

    /** Whether it was found on some car and nobody looked on another: a question that one look would settle. */
    public boolean isOpen() {
        return has(CellClass.FOUND) && has(CellClass.NOT_LOOKED_AT);
    }

    private boolean has(CellClass kind) {
        return cells.stream().anyMatch(cell -> cell.is(kind));
    }

    /** Which cars show what: {@code found on A, not looked at on B}. */
    public String contrast() {
        List<String> parts = new ArrayList<>();
        for (CellClass kind : CellClass.values()) {
            List<String> letters = new ArrayList<>();
            for (int car = 0; car < cells.size(); car++) {
                if (cells.get(car).is(kind)) {
                    letters.add(letter(car));
                }
            }
            if (!letters.isEmpty()) {
                String cars = joined(letters);
                parts.add(
                        kind == CellClass.NOT_ON_THIS_CAR
                                ? say("compare.matter-row.not-there-on", cars)
                                : say("compare.matter-row.on", kind.said(), cars));
            }
        }
        return parts.stream().collect(Collectors.joining(", "));
    }

    private static String joined(List<String> letters) {
        int last = letters.size() - 1;
        return last == 0
                ? letters.get(0)
                : say("compare.matter-row.and", String.join(", ", letters.subList(0, last)), letters.get(last));
    }

    /** What a car is called in the table: A, B, and so on. */
    public static String letter(int car) {
        return String.valueOf((char) ('A' + car));
    }
}
