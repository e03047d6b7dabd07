package quarterlight.visit.row;

import static quarterlight.language.Sentences.say;
import static quarterlight.visit.row.Field.optional;
import static quarterlight.visit.row.Field.required;

import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import quarterlight.car.ZoneId;
import quarterlight.units.Numerals;
import quarterlight.visit.VisitRecord;
import quarterlight.visit.pin.ViewPoint;
import quarterlight.visit.reading.GaugeCheck;
import quarterlight.visit.reading.GaugeMode;
import quarterlight.visit.reading.GaugeMoment;
import quarterlight.visit.reading.GaugeSurface;
import quarterlight.visit.reading.GaugeValue;
import quarterlight.visit.reading.Reading;

/** What the gauge showed: readings, and checks on bare metal or a shim. */
final class GaugeKinds {
    private GaugeKinds() {}

    static RecordKind<Reading> readings() {
        Field<Reading, ZoneId> zone = required("zone", Shape.ZONE, Reading::zone);
        Field<Reading, GaugeValue> value = required("value", Shape.GAUGE_VALUE, Reading::value);
        Field<Reading, LocalDateTime> time = optional("time", Shape.TIME, Reading::time);
        Field<Reading, String> spot = optional("spot", Shape.TEXT, Reading::spot);
        Field<Reading, ViewPoint> point = optional("view", Shape.POINT, Reading::point);
        Field<Reading, GaugeMode> mode = optional("mode", Shape.word(GaugeMode.class), Reading::mode);
        Field<Reading, String> exclude = optional("exclude", Shape.TEXT, Reading::exclude);
        Field<Reading, String> note = optional("note", Shape.TEXT, Reading::note);
        Field<Reading, Boolean> confidential =
                optional("private", Shape.FLAG, reading -> Optional.of(reading.confidential()));
        return RecordKind.of(
                        "readings",
                        "reading",
                        VisitRecord::readings,
                        List.of(zone, value, time, spot, point, mode, exclude, note, confidential),
                        in -> new Reading(
                                in.need(zone),
                                in.need(value),
                                in.get(time),
                                in.get(spot),
                                in.get(point),
                                in.get(mode),
                                in.get(exclude),
                                in.get(note),
                                in.get(confidential).orElse(false)))
                .named((reading, words) -> say("undo.row.reading", shown(reading.value()), words.zone(reading.zone())));
    }

    /** As typed, with its unit. */
    private static String shown(GaugeValue value) {
        if (value instanceof GaugeValue.Measured measured) {
            return Numerals.typed(measured.typed()) + " " + measured.unit().word();
        } else if (value instanceof GaugeValue.Range range) {
            return range.typed() + " " + range.unit().word();
        }
        return say(value instanceof GaugeValue.NoMetal ? "undo.reading.no-metal" : "undo.reading.over");
    }

    static RecordKind<GaugeCheck> checks() {
        Field<GaugeCheck, GaugeMoment> when = required("when", Shape.word(GaugeMoment.class), GaugeCheck::when)
                .storedAs("moment");
        Field<GaugeCheck, GaugeSurface> on =
                required("on", Shape.word(GaugeSurface.class), GaugeCheck::on).storedAs("surface");
        Field<GaugeCheck, ShownThickness> shown = required(
                "nominal",
                Shape.SHOWN_THICKNESS,
                check -> new ShownThickness(check.nominal(), check.shown(), check.nominalToleranceUm()));
        Field<GaugeCheck, Double> percent =
                optional("gauge_tolerance_percent", Shape.AMOUNT, check -> boxed(check.gaugeTolerancePercent()));
        Field<GaugeCheck, Double> um =
                optional("gauge_tolerance_um", Shape.AMOUNT, check -> boxed(check.gaugeToleranceUm()));
        Field<GaugeCheck, String> note = optional("note", Shape.TEXT, GaugeCheck::note);
        return RecordKind.of(
                        "gauge",
                        "gauge_check",
                        VisitRecord::gaugeChecks,
                        List.of(when, on, shown, percent, um, note),
                        in -> {
                            GaugeMoment moment = in.need(when);
                            GaugeSurface surface = in.need(on);
                            ShownThickness thickness = in.need(shown);
                            return new GaugeCheck(
                                    moment,
                                    surface,
                                    thickness.nominal(),
                                    thickness.shown(),
                                    thickness.toleranceUm(),
                                    unboxed(in.get(percent)),
                                    unboxed(in.get(um)),
                                    in.get(note));
                        })
                .named((check, words) -> say(
                        "undo.row.check",
                        check.when().said(),
                        check.on() == GaugeSurface.BARE
                                ? say("undo.check.bare")
                                : say("undo.check.shim", shown(check.nominal())),
                        shown(check.shown())));
    }

    static Optional<Double> boxed(OptionalDouble value) {
        return value.isPresent() ? Optional.of(value.getAsDouble()) : Optional.empty();
    }

    static OptionalDouble unboxed(Optional<Double> value) {
        return value.map(OptionalDouble::of).orElseGet(OptionalDouble::empty);
    }
}
