package quarterlight.table;

import static quarterlight.language.Sentences.say;

import java.util.Optional;
import java.util.function.Function;
import quarterlight.coverage.EvidenceKind;
import quarterlight.table.cell.RowContext;
import quarterlight.table.text.Quoted;
import quarterlight.units.Worded;
import quarterlight.visit.CoverageOverride;
import quarterlight.visit.photo.PhotoFile;
import quarterlight.visit.photo.PhotoId;
import quarterlight.visit.row.CellRefused;

/** What a row must keep to beyond the form of its cells. */
@FunctionalInterface
public interface RowRule<T> {
    /** What something drawn on a photo must keep to; the geometry of photos knows it, the caller passes it in. */
    @FunctionalInterface
    interface OnPhoto<T> {
        /** The cell at fault and why, or empty if it can be drawn on the photo. */
        Optional<CellRefused> problem(T drawn, PhotoFile photo);
    }

    /** A wish names a kind of evidence that is known, and is kept by its word. */
    RowRule<CoverageOverride> KNOWN_EVIDENCE = (wish, context) -> new CoverageOverride(
            wish.zone(),
            Worded.find(EvidenceKind.class, wish.evidence())
                    .orElseThrow(() -> new CellRefused(
                            "evidence",
                            say("cell.none-of", Quoted.of(wish.evidence()), Worded.words(EvidenceKind.class))))
                    .word(),
            wish.want());

    /**
     * The value as it is to be kept.
     *
     * @throws CellRefused if the row breaks the rule
     */
    T checked(T value, RowContext context) throws CellRefused;

    static <T> RowRule<T> none() {
        return (value, context) -> value;
    }

    /** @param photo the photo that a row is drawn on */
    static <T> RowRule<T> onPhoto(Function<T, PhotoId> photo, OnPhoto<T> rule) {
        return (value, context) -> {
            Optional<CellRefused> problem =
                    rule.problem(value, context.photo(photo.apply(value)).file());
            if (problem.isPresent()) {
                throw problem.get();
            }
            return value;
        };
    }
}
