package quarterlight.ui.gauge.check;

import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import quarterlight.car.Substrate;
import quarterlight.car.ZoneId;
import quarterlight.edit.EditRefused;
import quarterlight.edit.fact.FactEdits;
import quarterlight.edit.gauge.GaugeCheckEdits;
import quarterlight.edit.gauge.TypedReading;
import quarterlight.edit.row.RowEdits;
import quarterlight.ui.kit.Settings;
import quarterlight.ui.kit.UiContext;
import quarterlight.ui.kit.visit.OpenVisit;
import quarterlight.visit.pin.Recorded;
import quarterlight.visit.reading.GaugeCheck;
import quarterlight.visit.reading.GaugeMode;
import quarterlight.visit.reading.GaugeMoment;
import quarterlight.visit.reading.GaugeValue;
import quarterlight.visit.row.RecordKind;

/** What can be done with the gauge check; each is one step of undo. Event thread only. */
final class CheckActions {
    private static final String PERCENT = "gauge.accuracy.percent";
    private static final String UM = "gauge.accuracy.um";

    private final UiContext parts;
    private final OpenVisit visit;

    CheckActions(UiContext parts, OpenVisit visit) {
        this.parts = parts;
        this.visit = visit;
    }

    /** A number with point or comma that is 0 or more; empty for a blank. */
    OptionalDouble number(String typed) throws EditRefused {
        String text = typed.strip().replace(',', '.');
        if (text.isEmpty()) {
            return OptionalDouble.empty();
        }
        if (!text.matches("\\d{1,7}(\\.\\d{1,4})?")) {
            throw new EditRefused("accuracy", parts.texts().get("check.accuracy.bad", typed.strip()));
        }
        return OptionalDouble.of(Double.parseDouble(text));
    }

    /** A thickness as typed; a bare number is in the unit shown. */
    GaugeValue.Measured thickness(String typed) throws EditRefused {
        GaugeValue value = TypedReading.of(
                typed, parts.settings().settings().unit(), visit.visit().facts().gaugeRange());
        if (value instanceof GaugeValue.Measured measured) {
            return measured;
        }
        throw new EditRefused("gauge", parts.texts().get("check.shown.bad"));
    }

    /** What the gauge showed; a blank takes the check back. */
    void shown(CheckSheet.Row row, GaugeMoment moment, String typed) throws EditRefused {
        Optional<Recorded<GaugeCheck>> kept = row.at(moment);
        if (typed.isBlank()) {
            kept.ifPresent(check -> visit.edit(
                    store -> {
                        new RowEdits(store).remove(RecordKind.GAUGE, List.of(check.id()));
                        return check;
                    },
                    done -> {}));
            return;
        }
        GaugeValue.Measured shown = thickness(typed);
        if (kept.isPresent()) {
            GaugeCheck old = kept.get().value();
            if (!old.shown().equals(shown)) {
                visit.edit(
                        store -> {
                            new RowEdits(store)
                                    .update(RecordKind.GAUGE, kept.get().id(), with(old, shown));
                            return shown;
                        },
                        done -> {});
            }
        } else {
            GaugeCheck fresh = new GaugeCheck(
                    moment, row.on(), row.nominal(), shown, row.toleranceUm(), percent(), um(), Optional.empty());
            visit.edit(store -> new RowEdits(store).add(RecordKind.GAUGE, List.of(fresh)), done -> {});
        }
    }

    private static GaugeCheck with(GaugeCheck old, GaugeValue.Measured shown) {
        return new GaugeCheck(
                old.when(),
                old.on(),
                old.nominal(),
                shown,
                old.nominalToleranceUm(),
                old.gaugeTolerancePercent(),
                old.gaugeToleranceUm(),
                old.note());
    }

    void shimTolerance(CheckSheet.Row row, OptionalDouble um) {
        row.before()
                .or(row::after)
                .ifPresent(check -> visit.edit(
                        store -> {
                            new GaugeCheckEdits(store).shimTolerance(check.value(), um);
                            return check;
                        },
                        done -> {}));
    }

    /** Keeps the accuracy for all checks, and for the next visit. */
    void accuracy(OptionalDouble percent, OptionalDouble um) {
        parts.settings().change(settings -> with(with(settings, PERCENT, percent), UM, um));
        visit.edit(
                store -> {
                    new GaugeCheckEdits(store).accuracy(percent, um);
                    return um;
                },
                done -> {});
    }

    private static Settings with(Settings settings, String key, OptionalDouble value) {
        return settings.with(key, value.isPresent() ? plain(value.getAsDouble()) : "");
    }

    static String plain(double value) {
        return BigDecimal.valueOf(value).stripTrailingZeros().toPlainString();
    }

    /** The stated accuracy: of the first check, else as stated in an earlier visit. */
    OptionalDouble percent() {
        return visit.visit().gaugeChecks().stream()
                .findFirst()
                .map(row -> row.value().gaugeTolerancePercent())
                .orElseGet(() -> kept(PERCENT));
    }

    /** The stated accuracy beside the percent, um. */
    OptionalDouble um() {
        return visit.visit().gaugeChecks().stream()
                .findFirst()
                .map(row -> row.value().gaugeToleranceUm())
                .orElseGet(() -> kept(UM));
    }

    private OptionalDouble kept(String key) {
        try {
            return number(parts.settings().settings().text(key).orElse(""));
        } catch (EditRefused e) {
            return OptionalDouble.empty();
        }
    }

    void correct(boolean yes) {
        set(Map.of("gauge-correction", yes ? "yes" : "no"));
    }

    void substrate(Set<ZoneId> zones, Substrate substrate) {
        Map<String, String> values = new LinkedHashMap<>();
        zones.forEach(zone -> values.put("substrate." + zone.value(), substrate.word()));
        set(values);
    }

    void mode(Set<ZoneId> zones, Optional<GaugeMode> mode) {
        visit.edit(
                store -> {
                    new GaugeCheckEdits(store).mode(zones, mode);
                    return zones;
                },
                done -> {});
    }

    private void set(Map<String, String> values) {
        if (!values.isEmpty()) {
            visit.edit(store -> new FactEdits(parts.catalog()).set(store, values), stray -> {});
        }
    }
}
