package quarterlight.edit;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import quarterlight.car.Car;
import quarterlight.visit.VisitFacts;

/** The facts of a visit by the keys of {@link FactEdits}, written so that setting them gives the same facts. Pure functions. */
public final class FactTexts {
    private FactTexts() {}

    /** Every key but those of single zones; a fact that is not known is an empty text. */
    public static Map<String, String> of(VisitFacts facts) {
        Map<String, String> texts = new LinkedHashMap<>();
        Car car = facts.car();
        texts.put("car", car.name());
        texts.put("style", car.body().style().word());
        texts.put("year", text(car.modelYear()));
        texts.put("built", car.built().map(Object::toString).orElse(""));
        texts.put("finish", car.finish().word());
        texts.put("construction", car.body().construction().word());
        texts.put("engine", car.body().engine().word());
        texts.put("substrate", car.substrate().word());
        texts.put("drive", car.drive().word());
        texts.put("wheelbase-mm", text(car.dimensions().wheelbaseMm()));
        texts.put("length-mm", text(car.dimensions().lengthMm()));
        texts.put("width-mm", text(car.dimensions().widthMm()));
        texts.put("height-mm", text(car.dimensions().heightMm()));
        texts.put("timezone", facts.timezone().getId());
        texts.put("inspector", text(facts.inspector()));
        texts.put("client", text(facts.client()));
        texts.put("date", facts.date().map(Object::toString).orElse(""));
        texts.put("place", text(facts.place()));
        texts.put("odometer", text(facts.odometer()));
        texts.put("light", text(facts.light()));
        texts.put("lifted", text(facts.lifted()));
        texts.put("taken-apart", text(facts.takenApart()));
        texts.put("claimed", text(facts.claimed()));
        double range = facts.gaugeRange().um();
        texts.put("gauge-range", range == Math.rint(range) ? Long.toString((long) range) : Double.toString(range));
        return texts;
    }

    private static String text(Optional<String> fact) {
        return fact.orElse("");
    }

    private static String text(OptionalInt fact) {
        return fact.isPresent() ? Integer.toString(fact.getAsInt()) : "";
    }
}
