package quarterlight.visit;

import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import quarterlight.car.Car;
import quarterlight.visit.annotation.HiddenRegion;
import quarterlight.visit.annotation.PhotoNote;
import quarterlight.visit.annotation.Trace;
import quarterlight.visit.mark.Feature;
import quarterlight.visit.mark.Mark;
import quarterlight.visit.mark.MarkKind;
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

/** A visit record put together part by part, for tests; what is not given is empty. One use. */
public final class VisitParts {
    private final VisitFacts facts;
    private List<Photo> photos = List.of();
    private List<Recorded<Pin>> pins = List.of();
    private List<Recorded<Reading>> readings = List.of();
    private List<Recorded<GaugeCheck>> gaugeChecks = List.of();
    private List<Recorded<Sign>> signs = List.of();
    private List<Recorded<Trace>> traces = List.of();
    private List<Recorded<Mark>> marks = List.of();
    private List<Recorded<Trial>> trials = List.of();
    private List<Recorded<Statement>> statements = List.of();
    private List<Recorded<Feature>> features = List.of();
    private List<ClockSetting> clocks = List.of();
    private List<Recorded<PhotoNote>> photoNotes = List.of();
    private List<Recorded<HiddenRegion>> hidden = List.of();
    private List<Recorded<CoverageOverride>> coverage = List.of();
    private List<Recorded<ReportExclusion>> leftOut = List.of();
    private List<Recorded<Claim>> claims = List.of();
    private List<Recorded<OdometerFigure>> odometer = List.of();
    private List<Recorded<BuyerRelease>> released = List.of();
    private List<Recorded<MatterDecision>> decisions = List.of();
    private List<Recorded<DroppedDraft>> dropped = List.of();

    public VisitParts(VisitFacts facts) {
        this.facts = facts;
    }

    /** The facts of a visit of which only the car and the time zone are known. */
    public static VisitFacts facts(Car car, ZoneId timezone) {
        Optional<String> none = Optional.empty();
        return new VisitFacts(
                car,
                timezone,
                none,
                none,
                Optional.empty(),
                none,
                none,
                none,
                none,
                none,
                none,
                VisitFacts.USUAL_GAUGE_RANGE,
                VisitChoices.USUAL);
    }

    /** A pin of a whole photo to a zone, without a place of its own or words. */
    public static Pin pin(PhotoId photo, quarterlight.car.ZoneId zone) {
        return new Pin(
                photo,
                zone,
                OptionalDouble.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty());
    }

    /** A stamp in a zone with a photo, and nothing else known of it. */
    public static Mark stamp(String part, String text, quarterlight.car.ZoneId zone, PhotoId photo) {
        return new Mark(
                part,
                MarkKind.STAMP,
                text,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.of(zone),
                Optional.empty(),
                Optional.of(photo),
                Optional.empty(),
                Optional.empty(),
                Optional.empty());
    }

    /** Values as rows numbered from 1. */
    public static <T> List<Recorded<T>> rows(List<T> values) {
        return IntStream.range(0, values.size())
                .mapToObj(i -> new Recorded<>(new RecordId(i + 1L), values.get(i)))
                .toList();
    }

    public VisitParts photos(List<Photo> given) {
        photos = given;
        return this;
    }

    public VisitParts pins(List<Recorded<Pin>> given) {
        pins = given;
        return this;
    }

    public VisitParts readings(List<Recorded<Reading>> given) {
        readings = given;
        return this;
    }

    public VisitParts gaugeChecks(List<Recorded<GaugeCheck>> given) {
        gaugeChecks = given;
        return this;
    }

    public VisitParts signs(List<Recorded<Sign>> given) {
        signs = given;
        return this;
    }

    public VisitParts traces(List<Recorded<Trace>> given) {
        traces = given;
        return this;
    }

    public VisitParts marks(List<Recorded<Mark>> given) {
        marks = given;
        return this;
    }

    public VisitParts trials(List<Recorded<Trial>> given) {
        trials = given;
        return this;
    }

    public VisitParts statements(List<Recorded<Statement>> given) {
        statements = given;
        return this;
    }

    public VisitParts features(List<Recorded<Feature>> given) {
        features = given;
        return this;
    }

    public VisitParts clocks(List<ClockSetting> given) {
        clocks = given;
        return this;
    }

    public VisitParts photoNotes(List<Recorded<PhotoNote>> given) {
        photoNotes = given;
        return this;
    }

    public VisitParts hidden(List<Recorded<HiddenRegion>> given) {
        hidden = given;
        return this;
    }

    public VisitParts coverage(List<Recorded<CoverageOverride>> given) {
        coverage = given;
        return this;
    }

    public VisitParts claims(List<Recorded<Claim>> given) {
        claims = given;
        return this;
    }

    public VisitParts released(List<Recorded<BuyerRelease>> given) {
        released = given;
        return this;
    }

    public VisitParts decisions(List<Recorded<MatterDecision>> given) {
        decisions = given;
        return this;
    }

    public VisitParts dropped(List<Recorded<DroppedDraft>> given) {
        dropped = given;
        return this;
    }

    public VisitParts odometer(List<Recorded<OdometerFigure>> given) {
        odometer = given;
        return this;
    }

    public VisitParts leftOut(List<Recorded<ReportExclusion>> given) {
        leftOut = given;
        return this;
    }

    public VisitRecord record() {
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
                hidden,
                coverage,
                leftOut,
                claims,
                odometer,
                released,
                decisions,
                dropped);
    }
}
