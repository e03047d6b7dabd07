package quarterlight.visit;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;

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
        List<Recorded<CoverageWish>> coverage,
        List<Recorded<LeftOut>> leftOut) {
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
    }

    /** A visit of which nothing but the facts is known. */
    public static VisitRecord empty(VisitFacts facts) {
        return new VisitRecord(
                facts, List.of(), List.of(), List.of(), List.of(), List.of(), List.of(), List.of(), List.of(),
                List.of(), List.of(), List.of(), List.of(), List.of(), List.of(), List.of());
    }

    /** The facts and the clocks of this visit with other photos and nothing else. */
    public VisitRecord holding(List<Photo> others) {
        return new VisitRecord(
                facts, others, List.of(), List.of(), List.of(), List.of(), List.of(), List.of(), List.of(), List.of(),
                List.of(), clocks, List.of(), List.of(), List.of(), List.of());
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
                leftOut);
    }

    public Optional<Photo> photo(PhotoId id) {
        return photos.stream().filter(photo -> photo.id().equals(id)).findFirst();
    }

    /** The notes on a photo or film, in the order in which they were drawn. */
    public List<PhotoNote> notesOn(PhotoId id) {
        return photoNotes.stream()
                .map(Recorded::value)
                .filter(note -> note.photo().equals(id))
                .toList();
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
