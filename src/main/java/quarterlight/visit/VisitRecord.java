package quarterlight.visit;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import quarterlight.car.ZoneId;
import quarterlight.visit.annotation.HiddenRegion;
import quarterlight.visit.annotation.KeptFrame;
import quarterlight.visit.annotation.PhotoNote;
import quarterlight.visit.annotation.Trace;
import quarterlight.visit.mark.Feature;
import quarterlight.visit.mark.Mark;
import quarterlight.visit.mark.OdometerFigure;
import quarterlight.visit.photo.ClockSetting;
import quarterlight.visit.photo.Photo;
import quarterlight.visit.photo.PhotoId;
import quarterlight.visit.pin.Pin;
import quarterlight.visit.pin.RecordId;
import quarterlight.visit.pin.Recorded;
import quarterlight.visit.reading.GaugeCheck;
import quarterlight.visit.reading.Reading;
import quarterlight.visit.statement.Claim;
import quarterlight.visit.statement.Statement;
import quarterlight.visit.trial.Sign;
import quarterlight.visit.trial.Trial;

/** All that a visit holds at one moment, read in one transaction; what every computation and page starts from. Immutable. */
public record VisitRecord(
        VisitFacts facts,
        List<Photo> photos,
        List<Recorded<Pin>> pins,
        List<Recorded<Reading>> readings,
        List<Recorded<GaugeCheck>> gaugeChecks,
        List<Recorded<Sign>> signs,
        List<Recorded<Trace>> traces,
        List<Recorded<Mark>> marks,
        List<Recorded<Trial>> trials,
        List<Recorded<Statement>> statements,
        List<Recorded<Feature>> features,
        List<ClockSetting> clocks,
        List<Recorded<PhotoNote>> photoNotes,
        List<Recorded<HiddenRegion>> hidden,
        List<Recorded<CoverageOverride>> coverage,
        List<Recorded<ReportExclusion>> leftOut,
        List<Recorded<Claim>> claims,
        List<Recorded<OdometerFigure>> odometer,
        List<Recorded<BuyerRelease>> released,
        List<Recorded<MatterDecision>> decisions,
        List<Recorded<DroppedDraft>> dropped) {
    public VisitRecord {
        Objects.requireNonNull(facts, "facts");
        photos = List.copyOf(photos);
        pins = List.copyOf(pins);
        readings = List.copyOf(readings);
        gaugeChecks = List.copyOf(gaugeChecks);
        signs = List.copyOf(signs);
        traces = List.copyOf(traces);
        marks = List.copyOf(marks);
        trials = List.copyOf(trials);
        statements = List.copyOf(statements);
        features = List.copyOf(features);
        clocks = List.copyOf(clocks);
        photoNotes = List.copyOf(photoNotes);
        hidden = List.copyOf(hidden);
        coverage = List.copyOf(coverage);
        leftOut = List.copyOf(leftOut);
        claims = List.copyOf(claims);
        odometer = List.copyOf(odometer);
        released = List.copyOf(released);
        decisions = List.copyOf(decisions);
        dropped = List.copyOf(dropped);
    }

    /** A visit of which nothing but the facts is known. */
    public static VisitRecord empty(VisitFacts facts) {
        return new VisitRecord(
                facts, List.of(), List.of(), List.of(), List.of(), List.of(), List.of(), List.of(), List.of(),
                List.of(), List.of(), List.of(), List.of(), List.of(), List.of(), List.of(), List.of(), List.of(),
                List.of(), List.of(), List.of());
    }

    /** The facts and the clocks of this visit with other photos and nothing else. */
    public VisitRecord holding(List<Photo> others) {
        return new VisitRecord(
                facts, others, List.of(), List.of(), List.of(), List.of(), List.of(), List.of(), List.of(), List.of(),
                List.of(), clocks, List.of(), List.of(), List.of(), List.of(), List.of(), List.of(), List.of(),
                List.of(), List.of());
    }

    /** The same visit with other marks. */
    public VisitRecord withMarks(List<Recorded<Mark>> others) {
        return new VisitRecord(
                facts,
                photos,
                pins,
                readings,
                gaugeChecks,
                signs,
                traces,
                others,
                trials,
                statements,
                features,
                clocks,
                photoNotes,
                hidden,
                coverage,
                leftOut,
                claims,
                odometer,
                released,
                decisions,
                dropped);
    }

    /**
     * The same visit as a buyer may see it; everything that leaves is made of this: without private rows, without zones and photos left out and
     * what is told of them, and without papers and memos that are not released.
     */
    public VisitRecord forBuyer() {
        return BuyerFilter.of(this);
    }

    /** The same visit with the report of another length. */
    public VisitRecord reported(ReportLength length) {
        VisitChoices choices = facts.choices();
        VisitChoices other = new VisitChoices(
                choices.gaugeCorrection(),
                choices.diagram(),
                choices.terms(),
                choices.limits(),
                length,
                choices.brief());
        return new VisitRecord(
                facts.with(other),
                photos,
                pins,
                readings,
                gaugeChecks,
                signs,
                traces,
                marks,
                trials,
                statements,
                features,
                clocks,
                photoNotes,
                hidden,
                coverage,
                leftOut,
                claims,
                odometer,
                released,
                decisions,
                dropped);
    }

    /** The same visit with other hidden regions. */
    VisitRecord withHidden(List<Recorded<HiddenRegion>> others) {
        return new VisitRecord(
                facts,
                photos,
                pins,
                readings,
                gaugeChecks,
                signs,
                traces,
                marks,
                trials,
                statements,
                features,
                clocks,
                photoNotes,
                others,
                coverage,
                leftOut,
                claims,
                odometer,
                released,
                decisions,
                dropped);
    }

    /** Zones that the inspector leaves out of what the buyer gets. */
    public Set<ZoneId> zonesLeftOut() {
        return leftOut.stream().flatMap(row -> row.value().zone().stream()).collect(Collectors.toSet());
    }

    /** Photos that the inspector leaves out of what the buyer gets. */
    public Set<PhotoId> photosLeftOut() {
        return leftOut.stream().flatMap(row -> row.value().photo().stream()).collect(Collectors.toSet());
    }

    /** Whether a later statement takes this one back. */
    public boolean isWithdrawn(RecordId statement) {
        return statements.stream()
                .anyMatch(row -> row.value().details().withdraws().equals(Optional.of(statement)));
    }

    /** The statements that no later one takes back. */
    public List<Statement> standing() {
        Set<RecordId> withdrawn = statements.stream()
                .flatMap(row -> row.value().details().withdraws().stream())
                .collect(Collectors.toSet());
        return statements.stream()
                .filter(row -> !withdrawn.contains(row.id()))
                .map(Recorded::value)
                .toList();
    }

    public Optional<Photo> photo(PhotoId id) {
        return photos.stream().filter(photo -> photo.id().equals(id)).findFirst();
    }

    /** The regions of a photo or film that nothing made for the buyer may show; a kept frame of a film has those of its film too. */
    public List<HiddenRegion> hiddenOn(PhotoId id) {
        if (hidden.isEmpty()) {
            return List.of();
        }
        Stream<HiddenRegion> ofFilm = photo(id).stream().flatMap(frame -> KeptFrame.film(frame, photos).stream()
                .flatMap(film -> hiddenOnItself(film.id()).map(region -> KeptFrame.onFrame(region, film, frame))));
        return Stream.concat(hiddenOnItself(id), ofFilm).toList();
    }

    private Stream<HiddenRegion> hiddenOnItself(PhotoId id) {
        return hidden.stream().map(Recorded::value).filter(region -> region.photo()
                .equals(id));
    }
}
