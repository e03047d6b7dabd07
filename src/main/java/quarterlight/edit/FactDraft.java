package quarterlight.edit;

import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.TreeMap;
import quarterlight.car.Body;
import quarterlight.car.BodyStyle;
import quarterlight.car.Car;
import quarterlight.car.Construction;
import quarterlight.car.Dimensions;
import quarterlight.car.DriveSide;
import quarterlight.car.EnginePlace;
import quarterlight.car.FinishProfile;
import quarterlight.car.PartialDate;
import quarterlight.car.Substrate;
import quarterlight.units.Thickness;
import quarterlight.visit.ReportLength;
import quarterlight.visit.VisitChoices;
import quarterlight.visit.VisitFacts;

/** The facts of a visit while keys are set one after the other. One thread, one use. */
final class FactDraft {
    Optional<String> car = Optional.empty();
    Optional<BodyStyle> style = Optional.empty();
    /** Empty as long as it is the usual one of the style. */
    Optional<Construction> construction = Optional.empty();

    EnginePlace engine = EnginePlace.FRONT;
    DriveSide drive = DriveSide.LEFT;
    FinishProfile finish = FinishProfile.UNKNOWN;
    Substrate substrate = Substrate.STEEL;
    final Map<quarterlight.car.ZoneId, Substrate> substrates = new TreeMap<>();
    OptionalInt year = OptionalInt.empty();
    Optional<PartialDate> built = Optional.empty();
    OptionalInt wheelbaseMm = OptionalInt.empty();
    OptionalInt lengthMm = OptionalInt.empty();
    OptionalInt widthMm = OptionalInt.empty();
    OptionalInt heightMm = OptionalInt.empty();
    ZoneId timezone;
    Optional<String> inspector = Optional.empty();
    Optional<String> client = Optional.empty();
    Optional<LocalDate> date = Optional.empty();
    Optional<String> place = Optional.empty();
    Optional<String> odometer = Optional.empty();
    Optional<String> light = Optional.empty();
    Optional<String> lifted = Optional.empty();
    Optional<String> takenApart = Optional.empty();
    Optional<String> claimed = Optional.empty();
    Thickness gaugeRange = VisitFacts.USUAL_GAUGE_RANGE;
    boolean gaugeCorrection = VisitChoices.USUAL.gaugeCorrection();
    Optional<String> diagram = VisitChoices.USUAL.diagram();
    Optional<String> terms = VisitChoices.USUAL.terms();
    Optional<String> limits = VisitChoices.USUAL.limits();
    ReportLength report = VisitChoices.USUAL.length();

    FactDraft(ZoneId timezone) {
        this.timezone = timezone;
    }

    static FactDraft of(VisitFacts facts) {
        FactDraft draft = new FactDraft(facts.timezone());
        Car car = facts.car();
        Body body = car.body();
        draft.car = Optional.of(car.name());
        draft.style = Optional.of(body.style());
        draft.construction = Optional.of(body.construction()).filter(c -> c != Construction.usualFor(body.style()));
        draft.engine = body.engine();
        draft.drive = car.drive();
        draft.finish = car.finish();
        draft.substrate = car.substrate();
        draft.substrates.putAll(car.substrates());
        draft.year = car.modelYear();
        draft.built = car.built();
        draft.wheelbaseMm = car.dimensions().wheelbaseMm();
        draft.lengthMm = car.dimensions().lengthMm();
        draft.widthMm = car.dimensions().widthMm();
        draft.heightMm = car.dimensions().heightMm();
        draft.inspector = facts.inspector();
        draft.client = facts.client();
        draft.date = facts.date();
        draft.place = facts.place();
        draft.odometer = facts.odometer();
        draft.light = facts.light();
        draft.lifted = facts.lifted();
        draft.takenApart = facts.takenApart();
        draft.claimed = facts.claimed();
        draft.gaugeRange = facts.gaugeRange();
        draft.gaugeCorrection = facts.choices().gaugeCorrection();
        draft.diagram = facts.choices().diagram();
        draft.terms = facts.choices().terms();
        draft.limits = facts.choices().limits();
        draft.report = facts.choices().length();
        return draft;
    }

    Body body() throws EditRefused {
        BodyStyle known = style.orElseThrow(() -> missing("style", "one of coupe, sedan, convertible, wagon, pickup"));
        return new Body(known, construction.orElse(Construction.usualFor(known)), engine);
    }

    VisitFacts facts() throws EditRefused {
        String name = car.orElseThrow(() -> missing("car", "what you call the car"));
        Dimensions size = new Dimensions(wheelbaseMm, lengthMm, widthMm, heightMm);
        return new VisitFacts(
                new Car(name, body(), drive, finish, year, built, substrate, substrates, size),
                timezone,
                inspector,
                client,
                date,
                place,
                odometer,
                light,
                lifted,
                takenApart,
                claimed,
                gaugeRange,
                new VisitChoices(gaugeCorrection, diagram, terms, limits, report));
    }

    private static EditRefused missing(String key, String wanted) {
        return new EditRefused(key, "A visit needs " + key + ". Give " + wanted + ".");
    }
}
