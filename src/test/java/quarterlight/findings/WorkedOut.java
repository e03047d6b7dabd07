package quarterlight.findings;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;
import quarterlight.car.ZoneId;
import quarterlight.car.body.BodyStyle;
import quarterlight.finish.FinishHistory;
import quarterlight.finish.history.Chances;
import quarterlight.finish.history.FinishReason;
import quarterlight.finish.history.ZoneHistory;
import quarterlight.marks.Contradiction;
import quarterlight.marks.MarksReport;
import quarterlight.rust.TestVisits;
import quarterlight.table.ZoneTable;
import quarterlight.table.list.DatePatternTable;
import quarterlight.visit.VisitParts;

/** What was worked out of an invented coupe, with a finish history and contradictions given by the test in place of computed ones. */
final class WorkedOut {
    private static final Findings BARE = of(parts -> parts);

    private WorkedOut() {}

    /** All that is worked out of a coupe of which the test records some parts. */
    static Findings of(UnaryOperator<VisitParts> recorded) {
        return Findings.of(
                recorded.apply(new VisitParts(TestVisits.facts(BodyStyle.COUPE)))
                        .record(),
                ZoneTable.load(),
                Map.of(),
                DatePatternTable.load());
    }

    /** The coupe with what rests on no statistics: claims, figures, statements; its finish and its marks are those of the bare coupe. */
    static Findings beside(UnaryOperator<VisitParts> recorded) {
        return BARE.beside(recorded.apply(new VisitParts(TestVisits.facts(BodyStyle.COUPE)))
                .record());
    }

    /** The same with a finish history of these zones. */
    static Findings withHistory(Findings car, ZoneHistory... zones) {
        FinishHistory history = car.history();
        return new Findings(
                car.visit(),
                car.catalog(),
                car.times(),
                car.thickness(),
                car.rust(),
                car.evidence(),
                new FinishHistory(
                        history.profile(),
                        history.carLevel(),
                        history.carLevelSd(),
                        history.scenarios(),
                        List.of(zones),
                        List.of(),
                        List.of()),
                car.marks());
    }

    /** The same with these contradictions among its marks. */
    static Findings withContradictions(Findings car, Contradiction... contradictions) {
        MarksReport marks = car.marks();
        return new Findings(
                car.visit(),
                car.catalog(),
                car.times(),
                car.thickness(),
                car.rust(),
                car.evidence(),
                car.history(),
                new MarksReport(
                        marks.window(), marks.marks(), marks.order(), marks.features(), List.of(contradictions)));
    }

    /** A zone that was refinished with this chance, by what its readings say. */
    static ZoneHistory refinished(String zone, double chance) {
        return history(
                zone, chance, List.of(new FinishReason(FinishReason.Source.VALUES, Optional.empty(), true, 1, 0)));
    }

    /** A zone of which only the rest of the car speaks. */
    static ZoneHistory unmeasured(String zone, double chance) {
        return history(zone, chance, List.of());
    }

    private static ZoneHistory history(String zone, double chance, List<FinishReason> reasons) {
        return new ZoneHistory(
                new ZoneId(zone),
                true,
                new Chances(1 - chance, chance, 0, 0),
                0,
                0,
                1,
                0,
                0,
                reasons,
                List.of(),
                Map.of(),
                Optional.empty());
    }
}
