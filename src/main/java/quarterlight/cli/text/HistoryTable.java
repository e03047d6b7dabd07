package quarterlight.cli.text;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import quarterlight.car.ZoneId;
import quarterlight.finish.FinishCautions;
import quarterlight.finish.FinishHistory;
import quarterlight.finish.NextMeasurement;
import quarterlight.finish.history.Chances;
import quarterlight.finish.history.FinishReason;
import quarterlight.finish.history.ZoneHistory;
import quarterlight.finish.model.HeldNumbers;
import quarterlight.units.Numerals;
import quarterlight.units.ThicknessUnit;

/** What {@code history} prints for people. */
public final class HistoryTable {
    private static final int SHOWN_REASONS = 3;
    private static final int SHOWN_NEXT = 6;
    private static final double WORTH_SHOWING = 0.1;

    private HistoryTable() {}

    public static String of(FinishHistory history, List<NextMeasurement> next, Map<ZoneId, HeldNumbers.Sway> hangsOn) {
        StringBuilder out = new StringBuilder();
        out.append("Finish profile ").append(history.profile().word());
        if (history.zones().isEmpty()) {
            out.append(". No panel has a reading or a sign, so nothing is said of the finish.\n");
        } else {
            addKnown(out, history);
        }
        addBelow(out, history, next, hangsOn);
        out.append("\nAll figures in percent.");
        FinishCautions.texts().forEach(text -> out.append(' ').append(text));
        return out.append('\n').toString();
    }

    /** The car as a whole and each panel of which something is known. */
    private static void addKnown(StringBuilder out, FinishHistory history) {
        out.append(". Factory level of the car ")
                .append(CliText.number(history.carLevel().um(), 0))
                .append(" um (")
                .append(CliText.number(history.carLevel().in(ThicknessUnit.MIL), 1))
                .append(" mil), standard deviation ")
                .append(CliText.number(history.carLevelSd().um(), 0))
                .append(" um.\n");
        out.append("The car: ")
                .append(history.scenarios().entrySet().stream()
                        .sorted(Comparator.comparing(entry -> entry.getKey()))
                        .map(entry -> entry.getKey().word() + " " + percent(entry.getValue()) + " %")
                        .collect(Collectors.joining(", ")))
                .append(".\n\n");
        TextTable table = new TextTable()
                .left("zone")
                .right("refinish", "band", "repair", "factory", "over", "stripped", "filler")
                .left("strongest reason");
        for (ZoneHistory zone : history.zones()) {
            Chances chances = zone.chances();
            table.row(
                    zone.zone().value(),
                    ZoneHistory.shown(zone.refinishScore()),
                    zone.shownBand(),
                    ZoneHistory.shown(zone.repairScore()),
                    percent(chances.factory()),
                    percent(chances.over()),
                    percent(chances.stripped()),
                    percent(chances.filler()),
                    reasons(zone));
        }
        out.append(table.text()).append('\n');
    }

    /** What stands below the table: zones of which nothing is known, remarks, what findings hang on, where to measure. */
    private static void addBelow(
            StringBuilder out,
            FinishHistory history,
            List<NextMeasurement> next,
            Map<ZoneId, HeldNumbers.Sway> hangsOn) {
        if (!history.priors().isEmpty()) {
            out.append("Nothing is known of ")
                    .append(history.priors().stream()
                            .map(zone -> zone.zone().value())
                            .collect(Collectors.joining(", ")))
                    .append(": no reading, no sign.\n");
        }
        history.remarks().forEach(remark -> out.append(remark).append('\n'));
        hangsOn.forEach((zone, sway) -> {
            if (sway.turns()) {
                out.append(zone)
                        .append(": would turn with ")
                        .append(sway.number().meaning())
                        .append(" (")
                        .append(percent(sway.low()))
                        .append(" to ")
                        .append(percent(sway.high()))
                        .append(").\n");
            }
        });
        out.append("\nWhere to measure next:\n");
        next.stream().limit(SHOWN_NEXT).forEach(one -> out.append("  ")
                .append(one.zone())
                .append(", ")
                .append(Numerals.count(one.spots(), "spot", "spots"))
                .append(": ")
                .append(one.about())
                .append(places(one))
                .append('\n'));
    }

    /** Where the spots belong, as a table of readings names places. */
    private static String places(NextMeasurement next) {
        return next.places().isEmpty()
                ? ""
                : " Place" + (next.places().size() > 1 ? "s" : "") + " ("
                        + next.places().get(0).view().word() + " view, x y): "
                        + next.places().stream()
                                .map(place -> String.format(Locale.US, "%.2f %.2f", place.x(), place.y()))
                                .collect(Collectors.joining("; "))
                        + ".";
    }

    private static String percent(double share) {
        return ZoneHistory.shown(share);
    }

    private static String reasons(ZoneHistory zone) {
        List<String> words = zone.reasons().stream()
                .filter(reason -> weight(reason) >= WORTH_SHOWING)
                .limit(SHOWN_REASONS)
                .map(HistoryTable::words)
                .toList();
        String said = words.isEmpty() ? "nothing much" : String.join(", ", words);
        return zone.readable() ? said : "gauge cannot read this material; " + said;
    }

    private static double weight(FinishReason reason) {
        return Math.max(Math.abs(reason.log10Refinish()), Math.abs(reason.log10Repair()));
    }

    private static String words(FinishReason reason) {
        String what = reason.sign()
                .map(sign -> (reason.seen() ? "" : "no ") + sign.word())
                .orElse(reason.source().word().replace('-', ' '));
        double strongest = Math.abs(reason.log10Refinish()) >= Math.abs(reason.log10Repair())
                ? reason.log10Refinish()
                : reason.log10Repair();
        return what + " " + (strongest > 0 ? "+" : "") + CliText.number(strongest, 1);
    }
}
