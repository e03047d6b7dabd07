package quarterlight.edit.gauge;

import static quarterlight.language.Sentences.say;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import quarterlight.car.ZoneId;
import quarterlight.edit.row.RowLabels;
import quarterlight.store.VisitStore;
import quarterlight.store.VisitTx;
import quarterlight.store.problem.VisitProblem;
import quarterlight.visit.photo.PhotoId;
import quarterlight.visit.pin.Recorded;
import quarterlight.visit.reading.Reading;
import quarterlight.visit.row.RecordKind;
import quarterlight.visit.trial.Sign;
import quarterlight.visit.trial.SignKind;

/** Notes signs of many zones at once, and keeps readings and signs together; each call is one step of undo. */
public final class FinishEdits {
    private final VisitStore store;

    public FinishEdits(VisitStore store) {
        this.store = Objects.requireNonNull(store, "store");
    }

    /**
     * A sign in a zone, whatever is noted of it.
     *
     * @param speaksFor the panel it speaks for, if the zone itself has no finish history
     */
    public record Place(ZoneId zone, SignKind kind, Optional<ZoneId> speaksFor) {
        public Place {
            Objects.requireNonNull(zone, "zone");
            Objects.requireNonNull(kind, "kind");
            Objects.requireNonNull(speaksFor, "speaksFor");
        }

        /** True for a row that is noted of the same sign in the same zone. */
        public boolean holds(Sign sign) {
            return sign.zone().equals(zone) && sign.kind() == kind;
        }
    }

    /**
     * Notes signs as seen, or as looked for and not seen, or takes the notes back. A sign that was noted keeps its photo and
     * its words; noted twice, all its rows follow.
     *
     * @param seen empty for "not looked for"
     */
    public void note(Set<Place> places, Optional<Boolean> seen) throws VisitProblem {
        if (places.isEmpty()) {
            return;
        }
        store.change(noting(places, seen), tx -> {
            List<Recorded<Sign>> kept = tx.read().signs();
            for (Place place : places) {
                note(tx, kept, place, seen);
            }
        });
    }

    private String noting(Set<Place> places, Optional<Boolean> seen) throws VisitProblem {
        return say(seen.isPresent() ? "undo.signs.note" : "undo.take-back", named(places, seen));
    }

    /** The first of some signs by its words and its zone, and how many more there are. */
    private String named(Set<Place> places, Optional<Boolean> seen) throws VisitProblem {
        Place first = places.stream()
                .min(Comparator.comparing(Place::zone).thenComparing(Place::kind))
                .orElseThrow();
        String key = seen.map(yes -> yes ? "undo.row.sign.seen" : "undo.row.sign.not-seen")
                .orElse("undo.row.sign");
        String one = say(key, first.kind().said().replace('-', ' '), zone(first.zone()));
        return places.size() == 1 ? one : say("undo.more", one, places.size() - 1);
    }

    private String zone(ZoneId zone) throws VisitProblem {
        return new RowLabels(store.read()).zone(zone);
    }

    private static void note(VisitTx tx, List<Recorded<Sign>> kept, Place place, Optional<Boolean> seen) {
        List<Recorded<Sign>> rows =
                kept.stream().filter(row -> place.holds(row.value())).toList();
        if (seen.isEmpty()) {
            rows.forEach(row -> tx.remove(RecordKind.SIGNS, row.id()));
        } else if (rows.isEmpty()) {
            tx.add(
                    RecordKind.SIGNS,
                    new Sign(
                            place.zone(),
                            place.kind(),
                            seen.get(),
                            place.speaksFor(),
                            Optional.empty(),
                            Optional.empty()));
        } else {
            for (Recorded<Sign> row : rows) {
                Sign sign = row.value();
                if (sign.seen() != seen.get()) {
                    tx.update(
                            RecordKind.SIGNS,
                            row.id(),
                            new Sign(
                                    sign.zone(), sign.kind(), seen.get(), sign.speaksFor(), sign.photo(), sign.note()));
                }
            }
        }
    }

    /** Ties a photo to signs that are noted, or takes it off; places without a note stay as they are. */
    public void photo(Set<Place> places, Optional<PhotoId> photo) throws VisitProblem {
        if (places.isEmpty()) {
            return;
        }
        String what = named(places, Optional.empty());
        RowLabels labels = new RowLabels(store.read());
        String label =
                photo.map(id -> say("undo.tie", labels.photo(id), what)).orElseGet(() -> say("undo.untie", what));
        store.change(label, tx -> {
            for (Recorded<Sign> row : tx.read().signs()) {
                if (places.stream().anyMatch(place -> place.holds(row.value()))) {
                    Sign sign = row.value();
                    tx.update(
                            RecordKind.SIGNS,
                            row.id(),
                            new Sign(sign.zone(), sign.kind(), sign.seen(), sign.speaksFor(), photo, sign.note()));
                }
            }
        });
    }

    /** Says for which panel the signs noted in a zone speak; empty for the zone itself. */
    public void speakFor(ZoneId zone, Optional<ZoneId> panel) throws VisitProblem {
        String label = say("undo.signs.speak", zone(zone));
        store.change(label, tx -> {
            for (Recorded<Sign> row : tx.read().signs()) {
                if (row.value().zone().equals(zone)) {
                    Sign sign = row.value();
                    tx.update(
                            RecordKind.SIGNS,
                            row.id(),
                            new Sign(zone, sign.kind(), sign.seen(), panel, sign.photo(), sign.note()));
                }
            }
        });
    }

    /** Adds readings and signs together. */
    public void keep(List<Reading> readings, List<Sign> signs) throws VisitProblem {
        RowLabels labels = new RowLabels(store.read());
        List<String> kept = new ArrayList<>();
        if (!readings.isEmpty()) {
            kept.add(labels.named(RecordKind.READINGS, readings));
        }
        if (!signs.isEmpty()) {
            kept.add(labels.named(RecordKind.SIGNS, signs));
        }
        store.change(say("undo.keep", String.join("; ", kept)), tx -> {
            tx.addAll(RecordKind.READINGS, readings);
            tx.addAll(RecordKind.SIGNS, signs);
        });
    }
}
