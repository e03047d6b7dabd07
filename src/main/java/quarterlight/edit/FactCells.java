package quarterlight.edit;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.TreeMap;
import quarterlight.car.Car;
import quarterlight.table.cell.NumberText;
import quarterlight.visit.VisitFacts;

/** The facts of a visit as the keys and values by which they are set; what is not known has an empty value. */
public final class FactCells {
    private FactCells() {}

    /** Every key of {@link FactEdits#keys}, in their order, then one key per zone that is made of something else than the car. */
    public static Map<String, String> of(VisitFacts facts) {
        Car car = facts.car();
        Map<String, String> cells = new LinkedHashMap<>();
        cells.put("car", car.name());
        cells.put("style", car.body().style().word());
        cells.put("year", text(car.modelYear()));
        cells.put("built", text(car.built()));
        cells.put("finish", car.finish().word());
        cells.put("construction", car.body().construction().word());
        cells.put("engine", car.body().engine().word());
        cells.put("substrate", car.substrate().word());
        cells.put("drive", car.drive().word());
        cells.put("wheelbase-mm", text(car.dimensions().wheelbaseMm()));
        cells.put("length-mm", text(car.dimensions().lengthMm()));
        cells.put("width-mm", text(car.dimensions().widthMm()));
        cells.put("height-mm", text(car.dimensions().heightMm()));
        cells.put("timezone", facts.timezone().getId());
        cells.put("inspector", text(facts.inspector()));
        cells.put("client", text(facts.client()));
        cells.put("date", text(facts.date()));
        cells.put("place", text(facts.place()));
        cells.put("odometer", text(facts.odometer()));
        cells.put("light", text(facts.light()));
        cells.put("lifted", text(facts.lifted()));
        cells.put("taken-apart", text(facts.takenApart()));
        cells.put("claimed", text(facts.claimed()));
        cells.put("gauge-range", NumberText.of(facts.gaugeRange().um()) + " um");
        new TreeMap<>(car.substrates()).forEach((zone, made) -> cells.put("substrate." + zone, made.word()));
        return cells;
    }

    private static String text(Optional<?> value) {
        return value.map(Object::toString).orElse("");
    }

    private static String text(OptionalInt value) {
        return value.isPresent() ? Integer.toString(value.getAsInt()) : "";
    }
}
