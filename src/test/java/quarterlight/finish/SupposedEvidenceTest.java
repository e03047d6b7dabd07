package quarterlight.finish;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import quarterlight.car.ZoneCatalog;
import quarterlight.car.ZoneId;
import quarterlight.table.ZoneTable;
import quarterlight.thickness.ThicknessSurvey;
import quarterlight.thickness.VisitBuilder;
import quarterlight.visit.VisitRecord;
import quarterlight.visit.trial.SignKind;

/** What is supposed of a zone must come to what the visit gives once it is kept. */
class SupposedEvidenceTest {
    private static final ZoneId HOOD = new ZoneId("hood");

    private final ZoneCatalog catalog = ZoneTable.load();

    private static VisitBuilder visit() {
        return new VisitBuilder()
                .reading("hood", "130")
                .reading("hood", "128")
                .reading("roof", "125")
                .reading("roof", "131")
                .sign("hood", SignKind.OVERSPRAY, false, "");
    }

    private FinishEvidence evidence(VisitRecord visit) {
        return FinishEvidence.of(visit, catalog, ThicknessSurvey.of(visit, catalog), Map.of());
    }

    @Test
    void whatIsSupposedComesToWhatIsKept() {
        VisitRecord kept = visit().reading("hood", "260")
                .reading("hood", "none")
                .reading("hood", "over")
                .sign("hood", SignKind.TAPE_EDGE, true, "")
                .sign("hood", SignKind.RIPPLE, false, "")
                .build();
        SupposedEvidence supposed = new SupposedEvidence(
                HOOD, List.of(260.0), 1, 1, Map.of(SignKind.TAPE_EDGE, true, SignKind.RIPPLE, false));
        assertThat(supposed.with(evidence(visit().build()))).isEqualTo(evidence(kept));
    }

    @Test
    void seenWinsOverNotSeen() {
        FinishEvidence kept = evidence(visit().build());
        FinishEvidence seen = new SupposedEvidence(HOOD, List.of(), 0, 0, Map.of(SignKind.OVERSPRAY, true)).with(kept);
        assertThat(seen.zone(HOOD).orElseThrow().signs()).containsEntry(SignKind.OVERSPRAY, true);
        FinishEvidence not = new SupposedEvidence(HOOD, List.of(), 0, 0, Map.of(SignKind.OVERSPRAY, false)).with(seen);
        assertThat(not).isEqualTo(seen);
    }

    @Test
    void aZoneWithoutFinishChangesNothing() {
        FinishEvidence kept = evidence(visit().build());
        assertThat(new SupposedEvidence(new ZoneId("hood-underside"), List.of(300.0), 0, 0, Map.of()).with(kept))
                .isEqualTo(kept);
    }

    @Test
    void aThickReadingMovesTheLikelihoodUp() {
        FinishEvidence kept = evidence(visit().build());
        double before = FinishHistory.of(kept).zone(HOOD).orElseThrow().notFactory();
        double after = FinishHistory.of(new SupposedEvidence(HOOD, List.of(400.0, 410.0), 0, 0, Map.of()).with(kept))
                .zone(HOOD)
                .orElseThrow()
                .notFactory();
        assertThat(after).isGreaterThan(before + 0.3);
    }
}
