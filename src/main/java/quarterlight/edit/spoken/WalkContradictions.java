package quarterlight.edit.spoken;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import quarterlight.visit.VisitRecord;
import quarterlight.visit.mark.Mark;
import quarterlight.visit.mark.OdometerFigure;
import quarterlight.visit.pin.Recorded;
import quarterlight.visit.reading.Reading;
import quarterlight.visit.statement.Claim;
import quarterlight.visit.statement.Statement;
import quarterlight.visit.trial.Sign;
import quarterlight.visit.trial.Trial;
import quarterlight.words.Draft;
import quarterlight.words.clash.Contradiction;
import quarterlight.words.clash.Contradictions;

/** What contradicts each other among the words of a visit and its rows. Nothing is changed. */
public final class WalkContradictions {
    private static final double SAME_SECOND = 0.011;

    private WalkContradictions() {}

    /** In the order of the walk; what only rows say comes last. */
    public static List<Contradiction> of(VisitRecord visit, VisitWalk walk) {
        Set<String> dropped = DraftDropping.dropped(visit, walk);
        List<Draft> standing = walk.drafts().stream()
                .filter(draft -> !dropped.contains(draft.id()))
                .toList();
        return Contradictions.of(
                walk.spoken().heard(),
                visit,
                draft -> dropped.contains(draft.id()),
                row -> standing.stream().anyMatch(draft -> comesFrom(draft, row)),
                sentence -> walk.spoken().ear().hear(sentence));
    }

    /** A row made of a draft as it was read says nothing that the draft does not say. */
    private static boolean comesFrom(Draft draft, Recorded<?> row) {
        if (row.value() instanceof Statement statement) {
            return statement
                            .atSeconds()
                            .filter(at -> Math.abs(at - draft.atSeconds()) < SAME_SECOND)
                            .isPresent()
                    && statement.text().equals(draft.words().strip());
        }
        if (row.value() instanceof Claim claim) {
            return claim.photo().isPresent()
                    && claim.text().equals(draft.words().strip());
        }
        return note(row.value())
                .filter(note -> note.contains(SpokenQuote.of(draft)))
                .isPresent();
    }

    private static Optional<String> note(Object row) {
        if (row instanceof Sign sign) {
            return sign.note();
        }
        if (row instanceof Trial trial) {
            return trial.note();
        }
        if (row instanceof Mark mark) {
            return mark.note();
        }
        if (row instanceof Reading reading) {
            return reading.note();
        }
        return row instanceof OdometerFigure figure ? figure.note() : Optional.empty();
    }
}
