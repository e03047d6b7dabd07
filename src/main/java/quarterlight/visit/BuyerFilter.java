package quarterlight.visit;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import quarterlight.car.ZoneId;
import quarterlight.visit.annotation.HiddenRegion;
import quarterlight.visit.annotation.KeptFrame;
import quarterlight.visit.annotation.Trace;
import quarterlight.visit.mark.Feature;
import quarterlight.visit.mark.Mark;
import quarterlight.visit.photo.Photo;
import quarterlight.visit.photo.PhotoId;
import quarterlight.visit.pin.Pin;
import quarterlight.visit.pin.RecordId;
import quarterlight.visit.pin.Recorded;
import quarterlight.visit.reading.Reading;
import quarterlight.visit.statement.Claim;
import quarterlight.visit.statement.Statement;
import quarterlight.visit.trial.Sign;
import quarterlight.visit.trial.Trial;

/**
 * The one filter between a visit and a buyer. Private rows stay at home, and a statement that a private one takes back with them; so does every row
 * about a zone that is left out, every photo that is left out or pinned to nothing but zones left out, and papers, sounds, words and sidecars that are
 * not released. What names such a file names it no more. A kept frame keeps the hidden regions of its film, whether the film goes along or not.
 */
final class BuyerFilter {
    private final VisitRecord visit;
    private final Set<ZoneId> zones;

    private BuyerFilter(VisitRecord visit) {
        this.visit = visit;
        this.zones = visit.zonesLeftOut();
    }

    static VisitRecord of(VisitRecord visit) {
        Set<PhotoId> withheld = new HashSet<>(visit.photosLeftOut());
        withheld.addAll(new BuyerFilter(visit).shownOnlyOnZonesLeftOut());
        return WithheldFiles.of(visit, withheld).without(new BuyerFilter(withFilmRegions(visit)).open());
    }

    /** Regions of a film stand on its kept frames too, so that they hold when the film itself stays at home. */
    private static VisitRecord withFilmRegions(VisitRecord visit) {
        List<Recorded<HiddenRegion>> regions = new ArrayList<>(visit.hidden());
        long next =
                visit.hidden().stream().mapToLong(row -> row.id().value()).max().orElse(0) + 1;
        for (Photo frame : visit.photos()) {
            if (KeptFrame.film(frame, visit.photos()).isPresent()) {
                for (HiddenRegion region : visit.hiddenOn(frame.id())) {
                    regions.add(new Recorded<>(new RecordId(next++), region));
                }
            }
        }
        return visit.withHidden(regions);
    }

    private Set<PhotoId> shownOnlyOnZonesLeftOut() {
        if (zones.isEmpty()) {
            return Set.of();
        }
        Set<PhotoId> inside = photos(zones::contains);
        inside.removeAll(photos(zone -> !zones.contains(zone)));
        return inside;
    }

    private Set<PhotoId> photos(Predicate<ZoneId> on) {
        return visit.pins().stream()
                .map(Recorded::value)
                .filter(pin -> on.test(pin.zone()))
                .map(Pin::photo)
                .collect(Collectors.toCollection(HashSet::new));
    }

    private VisitRecord open() {
        return new VisitRecord(
                visit.facts(),
                visit.photos(),
                on(visit.pins(), Pin::zone),
                open(on(visit.readings(), Reading::zone), Reading::confidential),
                visit.gaugeChecks(),
                maybeOn(on(visit.signs(), Sign::zone), Sign::speaksFor),
                on(visit.traces(), Trace::zone),
                maybeOn(visit.marks(), Mark::zone),
                open(maybeOn(visit.trials(), Trial::zone), Trial::confidential),
                on(statements(), Statement::zone),
                maybeOn(visit.features(), Feature::zone),
                visit.clocks(),
                visit.photoNotes(),
                visit.hidden(),
                maybeOn(visit.coverage(), CoverageOverride::zone),
                leftOut(),
                open(maybeOn(visit.claims(), Claim::zone), Claim::confidential),
                visit.odometer(),
                visit.released(),
                decisions(),
                List.of());
    }

    private <T> List<Recorded<T>> on(List<Recorded<T>> rows, Function<T, ZoneId> zone) {
        return maybeOn(rows, row -> Optional.of(zone.apply(row)));
    }

    private <T> List<Recorded<T>> maybeOn(List<Recorded<T>> rows, Function<T, Optional<ZoneId>> zone) {
        return rows.stream()
                .filter(row -> zone.apply(row.value()).filter(zones::contains).isEmpty())
                .toList();
    }

    /** What a private statement takes back is gone too: without the one, the other would seem to stand. */
    private List<Recorded<Statement>> statements() {
        Set<RecordId> gone = visit.statements().stream()
                .filter(row -> row.value().details().confidential())
                .flatMap(row -> row.value().details().withdraws().stream())
                .collect(Collectors.toSet());
        return open(visit.statements(), statement -> statement.details().confidential()).stream()
                .filter(row -> !gone.contains(row.id()))
                .toList();
    }

    /** So that pages can say how much is left out; of a file that is held back anyway nothing is said. */
    private List<Recorded<ReportExclusion>> leftOut() {
        WithheldFiles held = WithheldFiles.of(visit);
        return visit.leftOut().stream()
                .filter(row -> row.value().photo().filter(held::holds).isEmpty())
                .toList();
    }

    /** A decision names its zone in the id of its matter. */
    private List<Recorded<MatterDecision>> decisions() {
        return visit.decisions().stream()
                .filter(row -> Stream.of(row.value().matter().split(":")).noneMatch(part -> zones.stream()
                        .anyMatch(zone -> zone.value().equals(part))))
                .toList();
    }

    private static <T> List<Recorded<T>> open(List<Recorded<T>> rows, Predicate<T> confidential) {
        return rows.stream().filter(row -> !confidential.test(row.value())).toList();
    }
}
