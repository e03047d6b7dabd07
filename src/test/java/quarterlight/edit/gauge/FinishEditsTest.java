package quarterlight.edit.gauge;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import quarterlight.car.ZoneId;
import quarterlight.store.SampleVisit;
import quarterlight.store.VisitStore;
import quarterlight.units.ThicknessUnit;
import quarterlight.visit.photo.PhotoId;
import quarterlight.visit.pin.Recorded;
import quarterlight.visit.reading.GaugeCheck;
import quarterlight.visit.reading.GaugeMode;
import quarterlight.visit.reading.GaugeMoment;
import quarterlight.visit.reading.GaugeSurface;
import quarterlight.visit.reading.GaugeValue;
import quarterlight.visit.row.RecordKind;
import quarterlight.visit.trial.Sign;
import quarterlight.visit.trial.SignKind;

class FinishEditsTest {
    private static final ZoneId HOOD = SampleVisit.HOOD;
    private static final ZoneId ROOF = new ZoneId("roof");

    @TempDir
    Path folder;

    private VisitStore store;
    private FinishEdits edits;

    @BeforeEach
    void open() throws Exception {
        store = VisitStore.create(folder.resolve("v"), SampleVisit.bareFacts(), SampleVisit.CLOCK);
        edits = new FinishEdits(store);
    }

    @AfterEach
    void close() {
        store.close();
    }

    private static FinishEdits.Place place(ZoneId zone, SignKind kind) {
        return new FinishEdits.Place(zone, kind, Optional.empty());
    }

    private List<Sign> signs() throws Exception {
        return store.read().signs().stream().map(Recorded::value).toList();
    }

    @Test
    void manyZonesAreOneStepAndANotedSignKeepsItsWords() throws Exception {
        store.change(
                "add sign",
                tx -> tx.add(
                        RecordKind.SIGNS,
                        new Sign(
                                HOOD,
                                SignKind.OVERSPRAY,
                                true,
                                Optional.empty(),
                                Optional.empty(),
                                Optional.of("on the latch"))));
        Set<FinishEdits.Place> places =
                new LinkedHashSet<>(List.of(place(HOOD, SignKind.OVERSPRAY), place(ROOF, SignKind.OVERSPRAY)));
        edits.note(places, Optional.of(false));
        assertThat(signs()).hasSize(2).noneMatch(Sign::seen);
        assertThat(signs().get(0).note()).contains("on the latch");
        edits.note(places, Optional.empty());
        assertThat(signs()).isEmpty();
        store.undo();
        store.undo();
        assertThat(signs()).singleElement().matches(Sign::seen);
    }

    @Test
    void aSignOfAJambSpeaksForThePanelNamed() throws Exception {
        ZoneId jamb = new ZoneId("hood-underside");
        edits.note(Set.of(new FinishEdits.Place(jamb, SignKind.FACTORY_STENCIL, Optional.of(HOOD))), Optional.of(true));
        assertThat(signs().get(0).speaksFor()).contains(HOOD);
        edits.speakFor(jamb, Optional.of(ROOF));
        assertThat(signs().get(0).speaksFor()).contains(ROOF);
        edits.speakFor(jamb, Optional.empty());
        assertThat(signs().get(0).speaksFor()).isEmpty();
    }

    @Test
    void aPhotoIsTiedToNotedSignsAloneAndTakenOffAgain() throws Exception {
        PhotoId photo = store.edit("take in", tx -> tx.addPhoto(SampleVisit.barePhoto(1)));
        edits.note(Set.of(place(HOOD, SignKind.RIPPLE)), Optional.of(true));
        Set<FinishEdits.Place> places = Set.of(place(HOOD, SignKind.RIPPLE), place(ROOF, SignKind.RIPPLE));
        edits.photo(places, Optional.of(photo));
        assertThat(signs()).singleElement().matches(sign -> sign.photo().equals(Optional.of(photo)));
        edits.photo(places, Optional.empty());
        assertThat(signs()).singleElement().matches(sign -> sign.photo().isEmpty());
    }

    @Test
    void readingsAndSignsAreKeptTogether() throws Exception {
        edits.keep(
                List.of(SampleVisit.reading(HOOD, "132")),
                List.of(new Sign(HOOD, SignKind.RIPPLE, true, Optional.empty(), Optional.empty(), Optional.empty())));
        assertThat(store.undoLabel()).contains("keep reading 132 um on hood; sign ripple, seen on hood");
        store.undo();
        assertThat(store.read().readings()).isEmpty();
        assertThat(signs()).isEmpty();
    }

    @Test
    void accuracyAndShimAreStatedForAllTheirChecks() throws Exception {
        store.change("add checks", tx -> {
            tx.add(RecordKind.GAUGE, check(GaugeMoment.BEFORE, GaugeSurface.BARE, "0"));
            tx.add(RecordKind.GAUGE, check(GaugeMoment.BEFORE, GaugeSurface.SHIM, "125"));
            tx.add(RecordKind.GAUGE, check(GaugeMoment.AFTER, GaugeSurface.SHIM, "125"));
        });
        GaugeCheckEdits checks = new GaugeCheckEdits(store);
        checks.accuracy(OptionalDouble.of(3), OptionalDouble.of(2.5));
        checks.shimTolerance(store.read().gaugeChecks().get(1).value(), OptionalDouble.of(1));
        List<GaugeCheck> kept =
                store.read().gaugeChecks().stream().map(Recorded::value).toList();
        assertThat(kept)
                .allMatch(check -> check.gaugeTolerancePercent().equals(OptionalDouble.of(3))
                        && check.gaugeToleranceUm().equals(OptionalDouble.of(2.5)));
        assertThat(kept)
                .extracting(GaugeCheck::nominalToleranceUm)
                .containsExactly(OptionalDouble.empty(), OptionalDouble.of(1), OptionalDouble.of(1));
    }

    @Test
    void theModeIsNotedForTheReadingsOfTheZonesAlone() throws Exception {
        store.change("add readings", tx -> {
            tx.add(RecordKind.READINGS, SampleVisit.reading(HOOD, "132"));
            tx.add(RecordKind.READINGS, SampleVisit.reading(ROOF, "128"));
        });
        new GaugeCheckEdits(store).mode(Set.of(HOOD), Optional.of(GaugeMode.EDDY));
        assertThat(store.read().readings().get(0).value().mode()).contains(GaugeMode.EDDY);
        assertThat(store.read().readings().get(1).value().mode()).isNotEqualTo(Optional.of(GaugeMode.EDDY));
    }

    private static GaugeCheck check(GaugeMoment when, GaugeSurface on, String nominal) {
        GaugeValue.Measured value = new GaugeValue.Measured(new BigDecimal(nominal), ThicknessUnit.UM);
        return new GaugeCheck(
                when,
                on,
                value,
                value,
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                Optional.empty());
    }
}
