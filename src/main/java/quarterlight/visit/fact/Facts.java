package quarterlight.visit.fact;

import java.time.LocalDate;
import java.time.ZoneId;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.TreeMap;
import java.util.function.Function;
import quarterlight.car.FinishProfile;
import quarterlight.car.PartialDate;
import quarterlight.car.Substrate;
import quarterlight.car.body.BodyStyle;
import quarterlight.car.body.Construction;
import quarterlight.car.body.Dimensions;
import quarterlight.car.body.DriveSide;
import quarterlight.car.body.EnginePlace;
import quarterlight.units.Thickness;
import quarterlight.units.Worded;
import quarterlight.visit.ReportLength;
import quarterlight.visit.VisitChoices;
import quarterlight.visit.VisitFacts;
import quarterlight.visit.fact.Fact.Section;
import quarterlight.visit.row.CellSink;
import quarterlight.visit.row.Shape;

/** Every fact of a visit, in the order in which they are told. */
public final class Facts {
    /** Before the id of a zone: the key of what that zone is made of. */
    public static final String SUBSTRATE_OF = "substrate.";

    private static final int MAX_YEAR = 9999;
    private static final int MAX_MM = 100_000;

    public static final Fact<String> CAR = Fact.always("car", "car", Shape.TEXT, FactForm.name(), facts -> facts.car()
                    .name())
            .in(Section.CAR)
            .demanded("TEXT", "what you call the car");
    public static final Fact<BodyStyle> STYLE = Fact.always(
                    "style",
                    "style",
                    Shape.word(BodyStyle.class),
                    FactForm.word(BodyStyle.class).needed(),
                    facts -> facts.car().body().style())
            .in(Section.CAR)
            .demanded("STYLE", "coupe, sedan, convertible, wagon or pickup");
    public static final Fact<Integer> YEAR = Fact.of(
                    "year",
                    "model_year",
                    Shape.count(MAX_YEAR),
                    FactForm.year(),
                    facts -> boxed(facts.car().modelYear()))
            .in(Section.CAR)
            .asked("Y", "model year");
    public static final Fact<PartialDate> BUILT = Fact.of(
                    "built", "built", Shape.DATE, FactForm.date(), facts -> facts.car()
                            .built())
            .in(Section.CAR)
            .asked("DATE", "claimed build date: a day, month or year");
    public static final Fact<FinishProfile> FINISH = word(
                    "finish", FinishProfile.class, facts -> facts.car().finish())
            .usually(FinishProfile.UNKNOWN)
            .in(Section.CAR)
            .asked("PROFILE", "lacquer, enamel, modern or unknown (default: unknown)");
    public static final Fact<Construction> CONSTRUCTION = word("construction", Construction.class, facts -> facts.car()
                    .body()
                    .construction())
            .in(Section.CAR)
            .asked("C", "unibody, body-on-frame or subframe (default: body-on-frame for a pickup, else unibody)");
    public static final Fact<EnginePlace> ENGINE = word(
                    "engine", EnginePlace.class, facts -> facts.car().body().engine())
            .usually(EnginePlace.FRONT)
            .in(Section.CAR)
            .asked("PLACE", "front or rear (default: front)");
    public static final Fact<Substrate> SUBSTRATE = word(
                    "substrate", Substrate.class, facts -> facts.car().substrate())
            .usually(Substrate.STEEL)
            .in(Section.CAR)
            .asked("S", "steel, aluminum, fiberglass, plastic or wood (default: steel)");
    public static final Fact<DriveSide> DRIVE = word(
                    "drive", DriveSide.class, facts -> facts.car().drive())
            .usually(DriveSide.LEFT)
            .in(Section.CAR)
            .asked("SIDE", "side of the steering wheel: left or right (default: left)");

    public static final Fact<Integer> WHEELBASE = size("wheelbase", 1000, 6000, Dimensions::wheelbaseMm);
    public static final Fact<Integer> LENGTH = size("length", 1500, 9000, Dimensions::lengthMm);
    public static final Fact<Integer> WIDTH = size("width", 900, 3000, Dimensions::widthMm);
    public static final Fact<Integer> HEIGHT = size("height", 700, 3500, Dimensions::heightMm);

    public static final Fact<String> INSPECTOR =
            text("inspector", VisitFacts::inspector).in(Section.VISIT);
    public static final Fact<String> CREDENTIALS =
            text("credentials", facts -> facts.choices().brief().credentials()).in(Section.VISIT);
    public static final Fact<String> CONTACT =
            text("contact", facts -> facts.choices().brief().contact()).in(Section.VISIT);
    public static final Fact<String> CLIENT = text("client", VisitFacts::client).in(Section.VISIT);
    public static final Fact<LocalDate> DATE = Fact.of(
                    "date",
                    "visit_date",
                    Shape.TEXT.as(LocalDate::parse, LocalDate::toString),
                    FactForm.day(),
                    VisitFacts::date)
            .in(Section.VISIT);
    public static final Fact<String> PLACE = text("place", VisitFacts::place).in(Section.VISIT);
    public static final Fact<ZoneId> TIMEZONE = Fact.always(
                    "timezone",
                    "timezone",
                    Shape.TEXT.as(ZoneId::of, ZoneId::getId),
                    FactForm.timezone(),
                    VisitFacts::timezone)
            .in(Section.VISIT)
            .asked("ZONE", "time zone of the visit, such as America/Denver (default: this computer's)");
    public static final Fact<String> ODOMETER =
            text("odometer", VisitFacts::odometer).in(Section.VISIT);
    public static final Fact<String> LIGHT = text("light", VisitFacts::light).in(Section.VISIT);
    public static final Fact<String> LIFTED = text("lifted", VisitFacts::lifted).in(Section.VISIT);
    public static final Fact<String> TAKEN_APART =
            text("taken-apart", VisitFacts::takenApart).in(Section.VISIT);
    public static final Fact<String> CLAIMED =
            text("claimed", VisitFacts::claimed).in(Section.VISIT);
    public static final Fact<Thickness> GAUGE_RANGE = Fact.always(
                    "gauge-range",
                    "gauge_range_um",
                    Shape.AMOUNT.as(Thickness::new, Thickness::um),
                    FactForm.thickness(),
                    VisitFacts::gaugeRange)
            .usually(VisitFacts.USUAL_GAUGE_RANGE)
            .in(Section.VISIT);

    public static final Fact<Boolean> GAUGE_CORRECTION = Fact.always(
                    "gauge-correction", "gauge_correction", Shape.FLAG, FactForm.yesOrNo(), facts -> facts.choices()
                            .gaugeCorrection())
            .usually(VisitChoices.USUAL.gaugeCorrection());
    public static final Fact<String> TERMS =
            text("terms", facts -> facts.choices().terms());
    public static final Fact<String> LIMITS =
            text("limits", facts -> facts.choices().limits());
    /** The paragraph of the first page, in place of the one that is composed. */
    public static final Fact<String> BRIEF =
            text("brief", facts -> facts.choices().brief().paragraph());
    /** A drawing of one's own is named by its path on the inspector's disk. */
    public static final Fact<String> DIAGRAM = Fact.of(
                    "diagram", "diagram", Shape.TEXT, FactForm.textBut(VisitChoices.SHIPPED), facts -> facts.choices()
                            .diagram())
            .keptAtHome();

    public static final Fact<ReportLength> REPORT = Fact.always(
                    "report",
                    "report_length",
                    Shape.word(ReportLength.class),
                    FactForm.word(ReportLength.class),
                    facts -> facts.choices().length())
            .usually(VisitChoices.USUAL.length());

    private static final List<Fact<?>> ALL = List.of(
            CAR,
            STYLE,
            YEAR,
            BUILT,
            FINISH,
            CONSTRUCTION,
            ENGINE,
            SUBSTRATE,
            DRIVE,
            WHEELBASE,
            LENGTH,
            WIDTH,
            HEIGHT,
            INSPECTOR,
            CREDENTIALS,
            CONTACT,
            CLIENT,
            DATE,
            PLACE,
            TIMEZONE,
            ODOMETER,
            LIGHT,
            LIFTED,
            TAKEN_APART,
            CLAIMED,
            GAUGE_RANGE,
            GAUGE_CORRECTION,
            TERMS,
            LIMITS,
            BRIEF,
            DIAGRAM,
            REPORT);

    private Facts() {}

    public static List<Fact<?>> all() {
        return ALL;
    }

    public static Optional<Fact<?>> find(String key) {
        return ALL.stream().filter(fact -> fact.key().equals(key)).findFirst();
    }

    /** The columns of the database that the facts take up. */
    public static List<String> storedColumns() {
        return ALL.stream()
                .flatMap(fact -> fact.field().storedColumns().stream())
                .toList();
    }

    public static void write(VisitFacts facts, CellSink out) {
        ALL.forEach(fact -> fact.write(facts, out));
    }

    /** The facts by their keys, written so that setting them gives the same facts; one that is not known is empty. */
    public static Map<String, String> texts(VisitFacts facts) {
        Map<String, String> texts = new LinkedHashMap<>();
        ALL.forEach(fact -> texts.put(fact.key(), fact.text(facts)));
        return texts;
    }

    /** The facts as tables tell them: with units, and one more key per zone that is made of something else than the car. */
    public static Map<String, String> cells(VisitFacts facts) {
        Map<String, String> cells = new LinkedHashMap<>();
        ALL.forEach(fact -> cells.put(fact.key(), fact.cell(facts)));
        new TreeMap<>(facts.car().substrates()).forEach((zone, made) -> cells.put(SUBSTRATE_OF + zone, made.word()));
        return cells;
    }

    private static Fact<String> text(String key, Function<VisitFacts, Optional<String>> of) {
        return Fact.of(key, key.replace('-', '_'), Shape.TEXT, FactForm.text(), of);
    }

    private static <E extends Enum<E> & Worded> Fact<E> word(String key, Class<E> type, Function<VisitFacts, E> of) {
        return Fact.always(key, key, Shape.word(type), FactForm.word(type), of);
    }

    private static Fact<Integer> size(String key, int min, int max, Function<Dimensions, OptionalInt> of) {
        return Fact.of(
                        key + "-mm",
                        key + "_mm",
                        Shape.count(MAX_MM),
                        FactForm.mm(min, max),
                        facts -> boxed(of.apply(facts.car().dimensions())))
                .in(Section.SIZE);
    }

    private static Optional<Integer> boxed(OptionalInt value) {
        return value.isPresent() ? Optional.of(value.getAsInt()) : Optional.empty();
    }
}
