package quarterlight.finish;

import static quarterlight.language.Sentences.figure;
import static quarterlight.language.Sentences.say;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import quarterlight.car.ZoneId;
import quarterlight.finish.history.ZoneHistory;
import quarterlight.finish.model.CarPosterior;
import quarterlight.finish.model.NextSpots;
import quarterlight.finish.place.PatchPlaces;
import quarterlight.units.Worded;
import quarterlight.visit.pin.ViewPoint;

/**
 * What more spots of one zone can be expected to settle there.
 *
 * @param why what is open
 * @param spots the number of further spots worth taking
 * @param expectedBits expected fall of the uncertainty of "factory finish or not" in bits with that many spots, 0 to 1
 * @param about a sentence on what was found and where to look
 * @param settles what the spots decide between
 * @param places where the spots belong: the one to be read again, else where they find a patch that no spot stands on yet;
 *     empty where the outline or the doubtful spot's place is not known
 */
public record NextMeasurement(
        ZoneId zone, Why why, int spots, double expectedBits, String about, String settles, List<ViewPoint> places) {
    public NextMeasurement {
        places = List.copyOf(places);
    }

    /** A spot this much apart from the middle of the others is unlike them: a factor of 1.8. Judgement. */
    private static final double UNLIKE = Math.log(1.8);

    private static final int AGAIN = 4;
    private static final double OPEN_LOW = .15;
    private static final double OPEN_HIGH = .85;

    /** Reasons to measure. */
    public enum Why implements Worded {
        /** One spot is not like the others of its panel. */
        READ_AGAIN,
        /** Measured or looked at, and open. */
        OPEN,
        /** Not measured. */
        NOT_MEASURED,
        /** Settled as far as spots can. */
        SETTLED
    }

    /** Best first: doubtful readings, then what each further spot would settle most; of equals the order of the zones. */
    static List<NextMeasurement> of(JointHistory joint, CarPosterior car, PanelPlaces places) {
        List<NextMeasurement> found = new ArrayList<>();
        for (ZoneEvidence zone : joint.evidence().zones()) {
            if (zone.readable()) {
                NextSpots.Gain gain = NextSpots.of(car, places.of(zone.zone()));
                found.add(one(joint, zone, gain));
            }
        }
        found.sort(Comparator.comparing((NextMeasurement next) -> next.why != Why.READ_AGAIN)
                .thenComparing(Comparator.comparingLong(NextMeasurement::millibitsOfSpot)
                        .reversed()));
        return found;
    }

    /** Time in the garage is spent by the spot. Whole thousandths, so that chance in the draws does not order what is equal. */
    long millibitsOfSpot() {
        return Math.round(1000 * expectedBits / Math.max(1, spots));
    }

    private static NextMeasurement one(JointHistory joint, ZoneEvidence zone, NextSpots.Gain gain) {
        OptionalInt doubtful = doubtful(zone);
        if (doubtful.isPresent()) {
            return new NextMeasurement(
                    zone.zone(),
                    Why.READ_AGAIN,
                    AGAIN,
                    gain.bits(),
                    say(
                            "finish.next-measurement.one-spot-reads-um-mil",
                            figure("%.0f", zone.spotsUm().get(doubtful.getAsInt())),
                            figure("%.1f", zone.spotsUm().get(doubtful.getAsInt()) / 25.4)),
                    say("finish.next-measurement.a-local-patch-or-a"),
                    zone.allPlaces().isEmpty()
                            ? List.of()
                            : List.of(zone.allPlaces().get(doubtful.getAsInt())));
        }
        List<ViewPoint> places = Optional.ofNullable(
                        joint.evidence().sizes().outlines().get(zone.zone()))
                .map(outline -> PatchPlaces.next(outline, zone.places(), gain.spots()))
                .orElse(List.of());
        Optional<ZoneHistory> kept = joint.history().zone(zone.zone());
        if (kept.isEmpty() || !zone.hasValues()) {
            return new NextMeasurement(
                    zone.zone(),
                    Why.NOT_MEASURED,
                    gain.spots(),
                    gain.bits(),
                    say("finish.next-measurement.not-measured-yet-spread-the"),
                    say("finish.next-measurement.factory-finish-or-not"),
                    places);
        }
        boolean open = kept.get().notFactory() > OPEN_LOW && kept.get().notFactory() < OPEN_HIGH;
        return new NextMeasurement(
                zone.zone(),
                open ? Why.OPEN : Why.SETTLED,
                gain.spots(),
                gain.bits(),
                open
                        ? say("finish.next-measurement.the-readings-and-signs-leave")
                        : say("finish.next-measurement.more-spots-would-change-little"),
                say("finish.next-measurement.factory-finish-or-not"),
                places);
    }

    /** The one spot unlike the middle of the others, of three and more. */
    static OptionalInt doubtful(ZoneEvidence zone) {
        List<Double> um = zone.spotsUm();
        if (um.size() < 3) {
            return OptionalInt.empty();
        }
        OptionalInt found = OptionalInt.empty();
        for (int n = 0; n < um.size(); n++) {
            List<Double> others = new ArrayList<>(um);
            others.remove(n);
            double middle = median(others);
            if (um.get(n) > 0 && middle > 0 && Math.abs(Math.log(um.get(n) / middle)) > UNLIKE) {
                if (found.isPresent()) {
                    return OptionalInt.empty();
                }
                found = OptionalInt.of(n);
            }
        }
        return found;
    }

    private static double median(List<Double> values) {
        List<Double> sorted = values.stream().sorted().toList();
        return (sorted.get((sorted.size() - 1) / 2) + sorted.get(sorted.size() / 2)) / 2;
    }
}
