package quarterlight.cli.analysis;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParseResult;
import quarterlight.car.ZoneId;
import quarterlight.cli.call.CallRefused;
import quarterlight.cli.call.CliContext;
import quarterlight.cli.call.CliOptions;
import quarterlight.cli.call.Exit;
import quarterlight.cli.call.OwnLists;
import quarterlight.cli.call.Verb;
import quarterlight.cli.call.Visits;
import quarterlight.cli.text.CliText;
import quarterlight.cli.text.HistoryTable;
import quarterlight.finish.FinishCautions;
import quarterlight.finish.FinishEngine;
import quarterlight.finish.FinishEvidence;
import quarterlight.finish.FinishHistory;
import quarterlight.finish.JointHistory;
import quarterlight.finish.NextMeasurement;
import quarterlight.finish.history.Chances;
import quarterlight.finish.history.FinishReason;
import quarterlight.finish.history.Scenario;
import quarterlight.finish.history.ZoneHistory;
import quarterlight.finish.model.HeldNumbers;
import quarterlight.store.problem.VisitProblem;
import quarterlight.table.json.JsonObject;
import quarterlight.thickness.ThicknessSurvey;
import quarterlight.visit.VisitRecord;

/** {@code history}: the finish history of each zone and of the car. */
public final class HistoryVerb implements Verb {
    private static final List<String> LIKELIHOODS = List.of(
            "factory",
            "over",
            "stripped",
            "filler",
            "replaced",
            "not_factory_low",
            "not_factory_high",
            "log10_lr_own",
            "strength",
            "refinish_score",
            "repair_score",
            "stories",
            "jury",
            "hangs_on",
            "hidden_10cm_patch",
            "hidden_10cm_patch_missed",
            "reasons");

    private final CliContext around;

    public HistoryVerb(CliContext around) {
        this.around = around;
    }

    @Override
    public CommandSpec spec() {
        return CliOptions.verb("history", "finish history of each zone and of the car; an aid, not proof")
                .addPositional(CliOptions.visit())
                .addOption(CliOptions.json());
    }

    @Override
    public int run(ParseResult call) throws VisitProblem, CallRefused {
        VisitRecord record = Visits.read(around, CliOptions.pathAt(call, 0));
        FinishEvidence evidence =
                OwnLists.findings(around, CliOptions.pathAt(call, 0), record).evidence();
        JointHistory joint = new FinishEngine(evidence.profile()).joint(evidence);
        List<NextMeasurement> next = joint.next();
        Map<ZoneId, HeldNumbers.Sway> hangsOn = joint.hangsOn();
        around.console()
                .print(
                        CliOptions.isJson(call)
                                ? json(joint, next, hangsOn).text()
                                : HistoryTable.of(joint.history(), next, hangsOn)
                                        + CliText.line(ThicknessSurvey.correctionRefused(record)));
        return Exit.DONE;
    }

    static JsonObject json(JointHistory joint, List<NextMeasurement> next, Map<ZoneId, HeldNumbers.Sway> hangsOn) {
        FinishHistory history = joint.history();
        boolean known = !history.zones().isEmpty();
        return car(
                        new JsonObject()
                                .put("profile", history.profile().word())
                                .put("model", FinishHistory.VERSION),
                        history,
                        known)
                .put("prior", known ? Optional.empty() : Optional.of(car(new JsonObject(), history, true)))
                .put(
                        "zones",
                        joint.evidence().zones().stream()
                                .map(zone -> zone(history, zone.zone(), hangsOn))
                                .toList())
                .put("measure_next", next.stream().map(HistoryVerb::next).toList())
                .put("remarks", history.remarks())
                .put("cautions", FinishCautions.texts());
    }

    /** What is said of the car as a whole; of a car of which nothing is known that is its prior, and no finding. */
    private static JsonObject car(JsonObject json, FinishHistory history, boolean told) {
        JsonObject scenarios = new JsonObject();
        for (Scenario scenario : Scenario.values()) {
            scenarios.put(scenario.word(), history.scenarios().get(scenario));
        }
        return json.put("car_level_um", known(told, history.carLevel().um()))
                .put("car_level_sd_um", known(told, history.carLevelSd().um()))
                .put("scenarios", known(told, scenarios));
    }

    private static <T> Optional<T> known(boolean told, T value) {
        return told ? Optional.of(value) : Optional.empty();
    }

    private static JsonObject next(NextMeasurement next) {
        return new JsonObject()
                .put("zone", next.zone())
                .put("why", next.about())
                .put("spots", next.spots())
                .put("settles", next.settles())
                .put("kind", next.why().word())
                .put("expected_bits", next.expectedBits())
                .put(
                        "places",
                        next.places().stream()
                                .map(place -> new JsonObject()
                                        .put("view", place.view().word())
                                        .put("x", place.x())
                                        .put("y", place.y()))
                                .toList());
    }

    private static JsonObject zone(FinishHistory history, ZoneId id, Map<ZoneId, HeldNumbers.Sway> hangsOn) {
        return history.zone(id)
                .map(zone -> zone(zone, hangsOn.get(id)))
                .orElseGet(() -> unknown(history.prior(id).orElseThrow()));
    }

    /** A zone of which nothing of its own is known: its prior is no finding. */
    private static JsonObject unknown(FinishHistory.ZonePrior prior) {
        JsonObject zone = new JsonObject().put("zone", prior.zone()).put("readable", prior.readable());
        for (String key : LIKELIHOODS) {
            zone.put(key, Optional.empty());
        }
        return zone.put(
                "prior", new JsonObject().put("not_factory", prior.notFactory()).put("filler", prior.filler()));
    }

    private static JsonObject zone(ZoneHistory zone, HeldNumbers.Sway sway) {
        Chances chances = zone.chances();
        JsonObject jury = new JsonObject();
        zone.jury()
                .forEach((model, said) -> jury.put(
                        model.word(),
                        new JsonObject().put("not_factory", said.notFactory()).put("filler", said.filler())));
        return new JsonObject()
                .put("zone", zone.zone())
                .put("readable", zone.readable())
                .put("factory", chances.factory())
                .put("over", chances.over())
                .put("stripped", chances.stripped())
                .put("filler", chances.filler())
                .put("replaced", zone.replaced())
                .put("not_factory_low", zone.notFactoryLow())
                .put("not_factory_high", zone.notFactoryHigh())
                .put("log10_lr_own", zone.log10LrOwn())
                .put("strength", zone.strength().phrase())
                .put("refinish_score", zone.refinishScore())
                .put("repair_score", zone.repairScore())
                .put("stories", zone.stories().stream().map(HistoryVerb::story).toList())
                .put("jury", jury)
                .put(
                        "hangs_on",
                        new JsonObject()
                                .put("number", sway.number().word())
                                .put("meaning", sway.number().meaning())
                                .put("refinish_if_low", sway.low())
                                .put("refinish_if_high", sway.high())
                                .put("would_turn", sway.turns()))
                .put("hidden_10cm_patch", zone.hiddenPatch().map(ZoneHistory.HiddenPatch::chance))
                .put("hidden_10cm_patch_missed", zone.hiddenPatch().map(ZoneHistory.HiddenPatch::missed))
                .put("reasons", zone.reasons().stream().map(HistoryVerb::reason).toList())
                .put("prior", Optional.empty());
    }

    private static JsonObject story(ZoneHistory.Story story) {
        return new JsonObject()
                .put("story", story.story().word())
                .put("words", story.story().words())
                .put("chance", story.chance());
    }

    private static JsonObject reason(FinishReason reason) {
        return new JsonObject()
                .put("source", reason.source().word())
                .put("sign", reason.sign().map(sign -> sign.word()))
                .put("seen", reason.sign().map(sign -> reason.seen()))
                .put("log10_refinish", reason.log10Refinish())
                .put("log10_repair", reason.log10Repair());
    }
}
