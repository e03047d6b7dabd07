package quarterlight.marks;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import quarterlight.car.Car;
import quarterlight.car.FinishProfile;
import quarterlight.car.PartialDate;
import quarterlight.car.Substrate;
import quarterlight.car.ZoneId;
import quarterlight.car.body.Body;
import quarterlight.car.body.BodyStyle;
import quarterlight.car.body.Dimensions;
import quarterlight.car.body.DriveSide;
import quarterlight.marks.judge.JudgedMark;
import quarterlight.table.list.DatePatternTable;
import quarterlight.visit.VisitFacts;
import quarterlight.visit.VisitParts;
import quarterlight.visit.mark.Feature;
import quarterlight.visit.mark.Mark;
import quarterlight.visit.mark.MarkKind;
import quarterlight.visit.mark.MarkStage;
import quarterlight.visit.photo.PhotoId;
import quarterlight.visit.statement.Origin;

/** A car and its marks, told in few words. */
public final class MarkTeller {
    private final Car car;
    private final List<Mark> marks = new ArrayList<>();
    private final List<Feature> features = new ArrayList<>();
    private Optional<LocalDate> visited = Optional.empty();
    private Optional<Origin> origin = Optional.empty();

    private MarkTeller(OptionalInt modelYear, Optional<PartialDate> built) {
        car = new Car(
                "Test car",
                Body.usual(BodyStyle.COUPE),
                DriveSide.LEFT,
                FinishProfile.UNKNOWN,
                modelYear,
                built,
                Substrate.STEEL,
                Map.of(),
                Dimensions.NOT_GIVEN);
    }

    public static MarkTeller built(String date) {
        return new MarkTeller(OptionalInt.empty(), PartialDate.parse(date));
    }

    static MarkTeller modelYear(int year) {
        return new MarkTeller(OptionalInt.of(year), Optional.empty());
    }

    public static MarkTeller undated() {
        return new MarkTeller(OptionalInt.empty(), Optional.empty());
    }

    MarkTeller visited(String day) {
        visited = Optional.of(LocalDate.parse(day));
        return this;
    }

    /** What the parts of the marks that follow are. */
    MarkTeller parts(Origin given) {
        origin = Optional.of(given);
        return this;
    }

    public MarkTeller mark(String part, MarkKind kind, String text) {
        return add(part, kind, text, Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty());
    }

    public MarkTeller stage(String part, MarkKind kind, String text, MarkStage stage) {
        return add(part, kind, text, Optional.of(stage), Optional.empty(), Optional.empty(), Optional.empty());
    }

    MarkTeller pattern(String part, String text, String pattern) {
        return add(
                part, MarkKind.STAMP, text, Optional.empty(), Optional.of(pattern), Optional.empty(), Optional.empty());
    }

    MarkTeller expected(String part, MarkKind kind, String text, String expected) {
        return add(part, kind, text, Optional.empty(), Optional.empty(), Optional.of(expected), Optional.empty());
    }

    MarkTeller lead(String part, String text, int days) {
        return add(
                part, MarkKind.CASTING, text, Optional.empty(), Optional.empty(), Optional.empty(), Optional.of(days));
    }

    /** A label on the door jamb, without a stage. */
    public MarkTeller label(String text) {
        marks.add(new Mark(
                "Door label",
                MarkKind.LABEL,
                text,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.of(new ZoneId("door-jamb-front-left")),
                Optional.empty(),
                Optional.of(new PhotoId(marks.size() + 1L)),
                Optional.empty(),
                Optional.empty(),
                Optional.empty()));
        return this;
    }

    MarkTeller feature(String name, String from, String to, boolean fitted) {
        features.add(new Feature(
                name,
                PartialDate.parse(from).orElseThrow(),
                PartialDate.parse(to).orElseThrow(),
                Optional.of(fitted),
                Optional.of(new ZoneId("quarter-left")),
                Optional.empty()));
        return this;
    }

    private MarkTeller add(
            String part,
            MarkKind kind,
            String text,
            Optional<MarkStage> stage,
            Optional<String> pattern,
            Optional<String> expected,
            Optional<Integer> lead) {
        marks.add(new Mark(
                part,
                kind,
                text,
                stage,
                pattern,
                expected,
                Optional.of(new ZoneId("engine")),
                Optional.empty(),
                Optional.of(new PhotoId(marks.size() + 1L)),
                Optional.empty(),
                lead,
                origin));
        return this;
    }

    public MarksReport report() {
        return MarksReport.of(
                new VisitParts(facts())
                        .marks(VisitParts.rows(marks))
                        .features(VisitParts.rows(features))
                        .record(),
                DatePatternTable.load());
    }

    private VisitFacts facts() {
        VisitFacts bare = VisitParts.facts(car, java.time.ZoneId.of("UTC"));
        return new VisitFacts(
                car,
                bare.timezone(),
                bare.inspector(),
                bare.client(),
                visited,
                bare.place(),
                bare.odometer(),
                bare.light(),
                bare.lifted(),
                bare.takenApart(),
                bare.claimed(),
                bare.gaugeRange(),
                bare.choices());
    }

    public JudgedMark first() {
        return report().marks().get(0);
    }
}
