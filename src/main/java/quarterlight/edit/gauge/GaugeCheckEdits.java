package quarterlight.edit.gauge;

import static quarterlight.language.Sentences.say;

import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.UnaryOperator;
import quarterlight.car.ZoneId;
import quarterlight.edit.row.RowLabels;
import quarterlight.store.VisitStore;
import quarterlight.store.problem.VisitProblem;
import quarterlight.visit.pin.Recorded;
import quarterlight.visit.reading.GaugeCheck;
import quarterlight.visit.reading.GaugeMode;
import quarterlight.visit.reading.Reading;
import quarterlight.visit.row.RecordKind;

/** Changes what is stated of the gauge for many rows at once: accuracies of its checks, the mode of readings. One step of undo each. */
public final class GaugeCheckEdits {
    private final VisitStore store;

    public GaugeCheckEdits(VisitStore store) {
        this.store = Objects.requireNonNull(store, "store");
    }

    /**
     * States the gauge's accuracy, the same for every check.
     *
     * @param percent of the value; empty if none is stated
     * @param um on top of it, um; empty if none is stated
     */
    public void accuracy(OptionalDouble percent, OptionalDouble um) throws VisitProblem {
        change(
                say("undo.accuracy"),
                check -> new GaugeCheck(
                        check.when(),
                        check.on(),
                        check.nominal(),
                        check.shown(),
                        check.nominalToleranceUm(),
                        percent,
                        um,
                        check.note()));
    }

    /** States the tolerance of a shim for every check on the same surface as this one. */
    public void shimTolerance(GaugeCheck like, OptionalDouble um) throws VisitProblem {
        change(
                say("undo.shim"),
                check -> check.on() == like.on()
                                && check.nominal()
                                        .thickness()
                                        .equals(like.nominal().thickness())
                        ? new GaugeCheck(
                                check.when(),
                                check.on(),
                                check.nominal(),
                                check.shown(),
                                um,
                                check.gaugeTolerancePercent(),
                                check.gaugeToleranceUm(),
                                check.note())
                        : check);
    }

    private void change(String label, UnaryOperator<GaugeCheck> change) throws VisitProblem {
        store.change(label, tx -> {
            for (Recorded<GaugeCheck> row : tx.read().gaugeChecks()) {
                GaugeCheck changed = change.apply(row.value());
                if (!changed.equals(row.value())) {
                    tx.update(RecordKind.GAUGE, row.id(), changed);
                }
            }
        });
    }

    /** Notes the mode that the gauge worked in for every reading of these zones; empty if it is not known. */
    public void mode(Set<ZoneId> zones, Optional<GaugeMode> mode) throws VisitProblem {
        RowLabels labels = new RowLabels(store.read());
        String where = zones.size() == 1 ? labels.zone(zones.iterator().next()) : say("undo.zones", zones.size());
        store.change(say("undo.mode", where), tx -> {
            for (Recorded<Reading> row : tx.read().readings()) {
                Reading reading = row.value();
                if (zones.contains(reading.zone()) && !reading.mode().equals(mode)) {
                    tx.update(
                            RecordKind.READINGS,
                            row.id(),
                            new Reading(
                                    reading.zone(),
                                    reading.value(),
                                    reading.time(),
                                    reading.spot(),
                                    reading.point(),
                                    mode,
                                    reading.exclude(),
                                    reading.note()));
                }
            }
        });
    }
}
