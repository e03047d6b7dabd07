package quarterlight.thickness;

import java.math.BigDecimal;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import quarterlight.car.Car;
import quarterlight.car.FinishProfile;
import quarterlight.car.Substrate;
import quarterlight.car.ZoneId;
import quarterlight.car.body.Body;
import quarterlight.car.body.BodyStyle;
import quarterlight.car.body.Dimensions;
import quarterlight.car.body.DriveSide;
import quarterlight.units.ThicknessUnit;
import quarterlight.visit.VisitFacts;
import quarterlight.visit.VisitParts;
import quarterlight.visit.VisitRecord;
import quarterlight.visit.pin.RecordId;
import quarterlight.visit.pin.Recorded;
import quarterlight.visit.pin.ViewPoint;
import quarterlight.visit.reading.GaugeCheck;
import quarterlight.visit.reading.GaugeMode;
import quarterlight.visit.reading.GaugeValue;
import quarterlight.visit.reading.Reading;
import quarterlight.visit.trial.Sign;
import quarterlight.visit.trial.SignKind;

/** Builds a visit of an invented coupe with readings, gauge checks and signs. */
public final class VisitBuilder {
    private final List<Recorded<Reading>> readings = new ArrayList<>();
    private final List<Recorded<GaugeCheck>> checks = new ArrayList<>();
    private final List<Recorded<Sign>> signs = new ArrayList<>();
    private final Map<ZoneId, Substrate> substrates = new HashMap<>();
    private long row;

    /** {@code value} is a number, {@code none} or {@code over}; an empty text is no spot, mode or reason. */
    public VisitBuilder reading(String zone, String value, String spot, String mode, String exclude) {
        return reading(zone, value, spot, Optional.empty(), mode, exclude);
    }

    /** A reading at a point of a view. */
    public VisitBuilder readingAt(String zone, String value, ViewPoint point, String exclude) {
        return reading(zone, value, "", Optional.of(point), "", exclude);
    }

    private VisitBuilder reading(
            String zone, String value, String spot, Optional<ViewPoint> point, String mode, String exclude) {
        GaugeValue shown =
                switch (value) {
                    case "none" -> new GaugeValue.NoMetal();
                    case "over" -> new GaugeValue.OverRange();
                    default -> new GaugeValue.Measured(new BigDecimal(value), ThicknessUnit.UM);
                };
        readings.add(recorded(new Reading(
                new ZoneId(zone),
                shown,
                Optional.empty(),
                filled(spot),
                point,
                filled(mode).map(GaugeMode::valueOf),
                filled(exclude),
                Optional.empty())));
        return this;
    }

    public VisitBuilder reading(String zone, String value) {
        return reading(zone, value, "", "", "");
    }

    public VisitBuilder check(GaugeCheck check) {
        checks.add(recorded(check));
        return this;
    }

    public VisitBuilder sign(String zone, SignKind kind, boolean seen, String speaksFor) {
        signs.add(recorded(new Sign(
                new ZoneId(zone), kind, seen, filled(speaksFor).map(ZoneId::new), Optional.empty(), Optional.empty())));
        return this;
    }

    public VisitBuilder substrate(String zone, Substrate substrate) {
        substrates.put(new ZoneId(zone), substrate);
        return this;
    }

    public VisitRecord build() {
        Car car = new Car(
                "Tamarisk",
                Body.usual(BodyStyle.COUPE),
                DriveSide.LEFT,
                FinishProfile.LACQUER,
                OptionalInt.empty(),
                Optional.empty(),
                Substrate.STEEL,
                substrates,
                Dimensions.NOT_GIVEN);
        VisitFacts facts = VisitParts.facts(car, ZoneOffset.UTC);
        return new VisitParts(facts)
                .readings(readings)
                .gaugeChecks(checks)
                .signs(signs)
                .record();
    }

    private <T> Recorded<T> recorded(T value) {
        row++;
        return new Recorded<>(new RecordId(row), value);
    }

    private static Optional<String> filled(String text) {
        return Optional.of(text).filter(t -> !t.isEmpty());
    }
}
