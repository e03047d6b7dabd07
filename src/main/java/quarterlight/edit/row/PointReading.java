package quarterlight.edit.row;

import static quarterlight.language.Sentences.say;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import quarterlight.edit.EditRefused;
import quarterlight.store.VisitStore;
import quarterlight.store.VisitTx;
import quarterlight.store.problem.SchemaRefused;
import quarterlight.store.problem.VisitProblem;
import quarterlight.thickness.spot.PointDistance;
import quarterlight.thickness.spot.SpotNearby;
import quarterlight.visit.pin.RecordId;
import quarterlight.visit.pin.Recorded;
import quarterlight.visit.reading.Reading;
import quarterlight.visit.row.RecordKind;

/** Keeps a reading that was taken at a point: it joins the spot that lies there already, if any. */
public final class PointReading {
    private final VisitStore store;
    private final PointDistance distance;

    public PointReading(VisitStore store, PointDistance distance) {
        this.store = Objects.requireNonNull(store, "store");
        this.distance = Objects.requireNonNull(distance, "distance");
    }

    /**
     * Adds the reading as one edit; without a point it is added as it is.
     *
     * @throws EditRefused if the visit does not take the reading; nothing was added
     */
    public RecordId add(Reading reading) throws EditRefused, VisitProblem {
        if (reading.point().isEmpty()) {
            return new RowEdits(store)
                    .add(RecordKind.READINGS, List.of(reading))
                    .ids()
                    .get(0);
        }
        String label = new RowLabels(store.read()).added(RecordKind.READINGS, List.of(reading));
        try {
            return store.edit(label, tx -> joined(tx, reading));
        } catch (SchemaRefused e) {
            throw new EditRefused("readings", say("refused.rule.reading", e.rule()));
        }
    }

    private RecordId joined(VisitTx tx, Reading reading) {
        List<Recorded<Reading>> zone = tx.read().readings().stream()
                .filter(row -> row.value().zone().equals(reading.zone()))
                .toList();
        Optional<SpotNearby> near = SpotNearby.of(zone, reading.point().orElseThrow(), distance);
        near.ifPresent(spot -> zone.stream()
                .filter(row -> spot.toLabel().contains(row.id()))
                .forEach(row -> tx.update(RecordKind.READINGS, row.id(), with(row.value(), spot.label()))));
        return tx.add(
                RecordKind.READINGS,
                near.map(spot -> with(reading, spot.label())).orElse(reading));
    }

    private static Reading with(Reading r, String spot) {
        return new Reading(
                r.zone(), r.value(), r.time(), Optional.of(spot), r.point(), r.mode(), r.exclude(), r.note());
    }
}
