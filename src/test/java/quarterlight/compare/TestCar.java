package quarterlight.compare;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import quarterlight.car.Car;
import quarterlight.car.ZoneCatalog;
import quarterlight.car.ZoneId;
import quarterlight.car.body.BodyStyle;
import quarterlight.compare.matter.CarEvidence;
import quarterlight.compare.matter.Care;
import quarterlight.compare.matter.FoundMatters;
import quarterlight.compare.said.ComparisonSheet;
import quarterlight.compare.said.SheetMaking;
import quarterlight.findings.Findings;
import quarterlight.matters.Matters;
import quarterlight.rust.TestVisits;
import quarterlight.table.CounterpartTable;
import quarterlight.table.ZoneTable;
import quarterlight.table.list.CoverageTable;
import quarterlight.table.list.DatePatternTable;
import quarterlight.table.list.TrialTable;
import quarterlight.units.ThicknessText;
import quarterlight.units.ThicknessUnit;
import quarterlight.visit.VisitFacts;
import quarterlight.visit.VisitParts;
import quarterlight.visit.VisitRecord;
import quarterlight.visit.mark.Mark;
import quarterlight.visit.mark.MarkKind;
import quarterlight.visit.photo.MediaKind;
import quarterlight.visit.photo.PhotoId;
import quarterlight.visit.pin.Pin;
import quarterlight.visit.reading.GaugeCheck;
import quarterlight.visit.reading.GaugeMoment;
import quarterlight.visit.reading.GaugeSurface;
import quarterlight.visit.reading.GaugeValue;
import quarterlight.visit.reading.Reading;
import quarterlight.visit.statement.Condition;
import quarterlight.visit.statement.Facets;
import quarterlight.visit.statement.Severity;
import quarterlight.visit.statement.Statement;
import quarterlight.visit.trial.Trial;
import quarterlight.visit.trial.TrialResult;

/** An invented car of few facts, put together step by step, for tests of comparisons. */
public final class TestCar {
    public static final ZoneCatalog CATALOG = ZoneTable.load();

    /** How many photos each has; every third stands upright. */
    public static final int PHOTOS = 40;

    private final BodyStyle style;
    private final List<Reading> readings = new ArrayList<>();
    private final List<Statement> statements = new ArrayList<>();
    private final List<Trial> trials = new ArrayList<>();
    private final List<Mark> marks = new ArrayList<>();
    private final List<GaugeCheck> checks = new ArrayList<>();
    private final List<Pin> pins = new ArrayList<>();
    private Optional<String> name = Optional.empty();

    private TestCar(BodyStyle style) {
        this.style = style;
    }

    public static TestCar of(BodyStyle style) {
        return new TestCar(style);
    }

    /** The truck of which the comparison once said that nothing lay beyond the uncertainty. */
    public static TestCar rottenTruck() {
        return of(BodyStyle.PICKUP)
                .stated(
                        "frame-side-rail-left",
                        Condition.RUSTED_THROUGH,
                        "Rail rotted through behind the cab.",
                        Severity.GRAVE)
                .stated("cab-corner-right", Condition.RUSTED_THROUGH, "Cab corner open to the weather.", Severity.MAJOR)
                .stamped("Engine stamp", "engine", "R7114C", "R7114D")
                .measured("hood", 110, 112, 115)
                .checked(100, 140);
    }

    public static TestCar cleanCoupe() {
        TestCar car = of(BodyStyle.COUPE).checked(100, 101).tried("Brake pedal holds", TrialResult.WORKS);
        car.stamped("Engine stamp", "engine", "F2209A", "F2209A");
        for (String zone : List.of("hood", "roof", "decklid", "door-front-left", "door-front-right", "quarter-left")) {
            car.measured(zone, 108, 112, 115);
        }
        return car;
    }

    public TestCar named(String other) {
        name = Optional.of(other);
        return this;
    }

    public TestCar stated(String zone, Condition condition, String text, Severity severity) {
        statements.add(new Statement(
                new ZoneId(zone),
                Facets.of(condition),
                text,
                Optional.ofNullable(severity),
                Optional.empty(),
                Optional.empty(),
                Optional.empty()));
        return this;
    }

    public TestCar noRust(String zone) {
        return stated(zone, Condition.NO_RUST, "No rust there.", null);
    }

    public TestCar measured(String zone, int... um) {
        for (int value : um) {
            readings.add(new Reading(
                    new ZoneId(zone),
                    um(value),
                    Optional.empty(),
                    Optional.empty(),
                    Optional.empty(),
                    Optional.empty(),
                    Optional.empty(),
                    Optional.empty()));
        }
        return this;
    }

    public TestCar tried(String item, TrialResult result) {
        trials.add(new Trial(item, result, Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty()));
        return this;
    }

    public TestCar stamped(String part, String zone, String text, String expected) {
        marks.add(new Mark(
                part,
                MarkKind.STAMP,
                text,
                Optional.empty(),
                Optional.empty(),
                Optional.of(expected),
                Optional.of(new ZoneId(zone)),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty()));
        return this;
    }

    /** Pins one of its photos, 1 to {@value #PHOTOS}, to a zone. */
    public TestCar pinned(int photo, String zone, String caption) {
        pins.add(new Pin(
                new PhotoId(photo),
                new ZoneId(zone),
                OptionalDouble.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.of(caption),
                Optional.empty()));
        return this;
    }

    /** A gauge check on a shim, good to 5 um. */
    public TestCar checked(int nominal, int shown) {
        checks.add(new GaugeCheck(
                GaugeMoment.BEFORE,
                GaugeSurface.SHIM,
                um(nominal),
                um(shown),
                OptionalDouble.of(1),
                OptionalDouble.empty(),
                OptionalDouble.of(4),
                Optional.empty()));
        return this;
    }

    private static GaugeValue.Measured um(int value) {
        return new GaugeValue.Measured(BigDecimal.valueOf(value), ThicknessUnit.UM);
    }

    private VisitFacts facts() {
        VisitFacts facts = TestVisits.facts(style);
        Car car = facts.car();
        return VisitParts.facts(
                new Car(
                        name.orElse(car.name()),
                        car.body(),
                        car.drive(),
                        car.finish(),
                        car.modelYear(),
                        car.built(),
                        car.substrate(),
                        car.substrates(),
                        car.dimensions()),
                facts.timezone());
    }

    public Findings findings() {
        VisitRecord visit = new VisitParts(facts())
                .photos(IntStream.rangeClosed(1, PHOTOS)
                        .mapToObj(id -> TestVisits.photo(
                                id, MediaKind.PHOTO, id % 3 == 0 ? 3000 : 4000, id % 3 == 0 ? 4000 : 3000))
                        .toList())
                .pins(TestVisits.rows(pins))
                .readings(TestVisits.rows(readings))
                .gaugeChecks(TestVisits.rows(checks))
                .marks(TestVisits.rows(marks))
                .trials(TestVisits.rows(trials))
                .statements(TestVisits.rows(statements))
                .record();
        return Findings.of(visit, CATALOG, Map.of(), DatePatternTable.load());
    }

    public CarEvidence evidence() {
        Findings car = findings();
        return FoundMatters.of(car, Matters.of(car, List.of(), TrialTable.load()), "");
    }

    /** A comparison of cars, the first two in detail. */
    public static ComparisonSheet sheet(Care care, TestCar... cars) {
        return sheet(care, ThicknessUnit.MIL, cars);
    }

    public static ComparisonSheet sheet(Care care, ThicknessUnit unit, TestCar... cars) {
        return SheetMaking.of(
                List.of(cars).stream().map(TestCar::evidence).toList(),
                new SheetMaking.Asked(
                        care, new ThicknessText(unit), 0, 1, CoverageTable.load(), CounterpartTable.load()));
    }
}
