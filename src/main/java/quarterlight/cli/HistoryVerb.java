package quarterlight.cli;

import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParseResult;
import quarterlight.finish.Chances;
import quarterlight.finish.FinishCautions;
import quarterlight.finish.FinishHistory;
import quarterlight.finish.FinishReason;
import quarterlight.finish.Scenario;
import quarterlight.finish.ZoneHistory;
import quarterlight.store.VisitProblem;
import quarterlight.table.JsonObject;
import quarterlight.units.ThicknessUnit;
import quarterlight.visit.VisitRecord;

/** {@code history}: the finish history of each zone and of the car. */
final class HistoryVerb implements Verb {
    private static final int SHOWN_REASONS = 3;
    private static final double WORTH_SHOWING = 0.1;

    private final Surroundings around;

    HistoryVerb(Surroundings around) {
        this.around = around;
    }

    @Override
    public CommandSpec spec() {
        return Words.verb("history", "finish history of each zone and of the car: an aid, not proof")
                .addPositional(Words.visit())
                .addOption(Words.json());
    }

    @Override
    public int run(ParseResult call) throws VisitProblem, CallRefused {
        VisitRecord record = Visits.read(around, Words.pathAt(call, 0));
        FinishHistory history =
                OwnLists.findings(around, Words.pathAt(call, 0), record).history();
        around.console().print(Words.isJson(call) ? json(history).text() : table(history));
        return Exit.DONE;
    }

    static JsonObject json(FinishHistory history) {
        JsonObject scenarios = new JsonObject();
        for (Scenario scenario : Scenario.values()) {
            scenarios.put(scenario.word(), history.scenarios().get(scenario));
        }
        return new JsonObject()
                .put("profile", history.profile().word())
                .put("model", history.model().version())
                .put("car_level_um", history.carLevel().um())
                .put("car_level_sd_um", history.carLevelSd().um())
                .put("scenarios", scenarios)
                .put("zones", history.zones().stream().map(HistoryVerb::zone).toList())
                .put("cautions", FinishCautions.texts());
    }

    private static JsonObject zone(ZoneHistory zone) {
        Chances chances = zone.chances();
        return new JsonObject()
                .put("zone", zone.zone())
                .put("readable", zone.readable())
                .put("factory", chances.factory())
                .put("over", chances.over())
                .put("stripped", chances.stripped())
                .put("filler", chances.filler())
                .put("not_factory_low", zone.notFactoryLow())
                .put("not_factory_high", zone.notFactoryHigh())
                .put("log10_lr_own", zone.log10LrOwn())
                .put("strength", zone.strength().phrase())
                .put("refinish_score", zone.refinishScore())
                .put("repair_score", zone.repairScore())
                .put("reasons", zone.reasons().stream().map(HistoryVerb::reason).toList());
    }

    private static JsonObject reason(FinishReason reason) {
        return new JsonObject()
                .put("source", reason.source().word())
                .put("sign", reason.sign().map(sign -> sign.word()))
                .put("seen", reason.sign().map(sign -> reason.seen()))
                .put("log10_refinish", reason.log10Refinish())
                .put("log10_repair", reason.log10Repair());
    }

    private static String table(FinishHistory history) {
        StringBuilder out = new StringBuilder();
        out.append("Finish profile ").append(history.profile().word());
        out.append(". Factory level of the car ")
                .append(Shown.number(history.carLevel().um(), 0))
                .append(" um (")
                .append(Shown.number(history.carLevel().in(ThicknessUnit.MIL), 1))
                .append(" mil), standard deviation ")
                .append(Shown.number(history.carLevelSd().um(), 0))
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
                .left("what moved it most");
        for (ZoneHistory zone : history.zones()) {
            Chances chances = zone.chances();
            table.row(
                    zone.zone().value(),
                    Integer.toString(zone.refinishScore()),
                    percent(zone.notFactoryLow()) + " to " + percent(zone.notFactoryHigh()),
                    Integer.toString(zone.repairScore()),
                    percent(chances.factory()),
                    percent(chances.over()),
                    percent(chances.stripped()),
                    percent(chances.filler()),
                    reasons(zone));
        }
        out.append(table.text()).append('\n');
        out.append("All figures in percent.");
        FinishCautions.texts().forEach(text -> out.append(' ').append(text));
        return out.append('\n').toString();
    }

    private static String percent(double share) {
        return Integer.toString((int) Math.floor(100 * share + 0.5));
    }

    private static String reasons(ZoneHistory zone) {
        List<String> words = zone.reasons().stream()
                .filter(reason -> weight(reason) >= WORTH_SHOWING)
                .limit(SHOWN_REASONS)
                .map(HistoryVerb::words)
                .toList();
        String said = words.isEmpty() ? "nothing much" : String.join(", ", words);
        return zone.readable() ? said : "gauge cannot read it; " + said;
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
        return what + " " + (strongest > 0 ? "+" : "") + Shown.number(strongest, 1);
    }
}
