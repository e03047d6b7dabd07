package quarterlight.cli.evidence;

import java.nio.file.Path;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.ParseResult;
import quarterlight.car.ZoneCatalog;
import quarterlight.car.ZoneId;
import quarterlight.cli.call.CallRefused;
import quarterlight.cli.call.CliContext;
import quarterlight.cli.call.CliOptions;
import quarterlight.cli.call.Exit;
import quarterlight.cli.call.OwnLists;
import quarterlight.cli.call.Verb;
import quarterlight.cli.call.Visits;
import quarterlight.cli.text.CliText;
import quarterlight.cli.text.TextTable;
import quarterlight.cli.text.WalkDoubtsText;
import quarterlight.edit.EditRefused;
import quarterlight.edit.spoken.DraftDropping;
import quarterlight.edit.spoken.DraftKeeping;
import quarterlight.edit.spoken.DraftLine;
import quarterlight.edit.spoken.DraftTeaching;
import quarterlight.edit.spoken.SpokenQuote;
import quarterlight.edit.spoken.VisitWalk;
import quarterlight.edit.spoken.WalkContradictions;
import quarterlight.store.VisitStore;
import quarterlight.store.problem.VisitProblem;
import quarterlight.table.TableUnreadable;
import quarterlight.table.cell.RowContext;
import quarterlight.table.json.DraftsJson;
import quarterlight.table.json.JsonObject;
import quarterlight.table.json.WalkDoubtsJson;
import quarterlight.visit.VisitRecord;
import quarterlight.words.Draft;
import quarterlight.words.clash.Contradiction;

/** {@code listen}: drafts of evidence worked out from the words of a visit; {@code --keep} makes rows of some. */
public final class ListenVerb implements Verb {
    private static final String KEEP = "--keep";
    private static final String DROP = "--drop";
    private static final String FORGET = "--forget";
    private static final int PERCENT = 100;
    /** Of drafts that are hardly ever right people are told how many there are. */
    private static final double MIN_SHOWN_P = 0.2;

    private static final int MAX_NAMED_ZONES = 2;

    private final CliContext around;

    public ListenVerb(CliContext around) {
        this.around = around;
    }

    @Override
    public CommandSpec spec() {
        return CliOptions.verb(
                        "listen",
                        "work out drafts of evidence from the words of the visit; nothing enters it without " + KEEP)
                .addPositional(CliOptions.visit())
                .addOption(CliOptions.text(KEEP, "ID,...", "make rows of these drafts, as one undo step"))
                .addOption(CliOptions.text(DROP, "ID,...", "do not offer these drafts again, as one undo step"))
                .addOption(CliOptions.text(
                        RecognizeCall.MODEL,
                        "MODEL",
                        "make the words of films and memos that have none, by the speech recognizer with this"
                                + " model file"))
                .addOption(CliOptions.text(RecognizeCall.OF, "FILM", "the one film or memo to make the words of"))
                .addOption(OptionSpec.builder(FORGET)
                        .type(boolean.class)
                        .description("forget what kept and dropped drafts have taught")
                        .build())
                .addOption(CliOptions.json());
    }

    @Override
    public int run(ParseResult call) throws CallRefused, EditRefused, VisitProblem {
        boolean keeps = call.hasMatchedOption(KEEP);
        if (call.hasMatchedOption(RecognizeCall.MODEL)) {
            if (keeps || call.hasMatchedOption(DROP) || call.hasMatchedOption(FORGET)) {
                throw new CallRefused(RecognizeCall.MODEL + " goes without " + KEEP + ", " + DROP + " and " + FORGET
                        + "; make the words first, then look at their drafts");
            }
            return new RecognizeCall(around).run(call);
        }
        if (call.hasMatchedOption(RecognizeCall.OF)) {
            throw new CallRefused(RecognizeCall.OF + " goes with " + RecognizeCall.MODEL + " MODEL; name a model file");
        }
        if (keeps && call.hasMatchedOption(DROP)) {
            throw new CallRefused(KEEP + " and " + DROP + " do not go together; give one of them");
        }
        if (call.hasMatchedOption(FORGET)) {
            new DraftTeaching(around.settings()).forget();
        }
        return keeps ? keep(call) : call.hasMatchedOption(DROP) ? drop(call) : list(call);
    }

    private int list(ParseResult call) throws CallRefused, VisitProblem {
        Path folder = CliOptions.pathAt(call, 0);
        VisitRecord visit = Visits.read(around, folder);
        VisitWalk walk = walk(visit, folder, around.zones().get());
        Map<String, String> states = new HashMap<>();
        DraftDropping.dropped(visit, walk).forEach(id -> states.put(id, "dropped"));
        Set<String> kept = DraftKeeping.kept(visit, walk);
        kept.forEach(id -> states.put(id, "kept"));
        List<Contradiction> against = WalkContradictions.of(visit, walk);
        if (CliOptions.isJson(call)) {
            around.console()
                    .print(DraftsJson.of(walk.drafts(), states)
                            .put("not_said", WalkDoubtsJson.unsaid(walk.unsaid()))
                            .put("contradictions", WalkDoubtsJson.contradictions(against))
                            .put("remarks", walk.remarks())
                            .text());
        } else {
            around.console()
                    .print(table(walk, states)
                            + WalkDoubtsText.unsaid(walk.unsaid())
                            + WalkDoubtsText.contradictions(against));
        }
        return Exit.DONE;
    }

    private VisitWalk walk(VisitRecord visit, Path folder, ZoneCatalog zones) throws CallRefused {
        try {
            return VisitWalk.of(visit, folder, zones, around.settings());
        } catch (TableUnreadable e) {
            throw new CallRefused(e.getMessage());
        }
    }

    private int keep(ParseResult call) throws CallRefused, EditRefused, VisitProblem {
        List<String> ids = ids(call, KEEP);
        Path folder = CliOptions.pathAt(call, 0);
        try (VisitStore store = around.visits().forEditing(folder)) {
            VisitRecord visit = store.read();
            ZoneCatalog zones = around.zones().get();
            RowContext context = RowContext.of(visit, zones, OwnLists.patterns(around, folder));
            DraftKeeping.Outcome outcome = new DraftKeeping(store).keep(walk(visit, folder, zones), ids, context);
            new DraftTeaching(around.settings()).teach(outcome.kept(), List.of());
            around.console().print(CliOptions.isJson(call) ? json(outcome).text() : report(outcome));
            return Exit.DONE;
        }
    }

    private int drop(ParseResult call) throws CallRefused, EditRefused, VisitProblem {
        List<String> ids = ids(call, DROP);
        Path folder = CliOptions.pathAt(call, 0);
        try (VisitStore store = around.visits().forEditing(folder)) {
            VisitWalk walk = walk(store.read(), folder, around.zones().get());
            Set<String> before = DraftDropping.dropped(store.read(), walk);
            int dropped = new DraftDropping(store).drop(walk, ids);
            new DraftTeaching(around.settings())
                    .teach(
                            List.of(),
                            walk.drafts().stream()
                                    .filter(draft -> ids.contains(draft.id()) && !before.contains(draft.id()))
                                    .toList());
            around.console()
                    .print(
                            CliOptions.isJson(call)
                                    ? new JsonObject().put("dropped", dropped).text()
                                    : CliText.count(dropped, "draft", "drafts") + " dropped.\n");
            return Exit.DONE;
        }
    }

    private static List<String> ids(ParseResult call, String option) throws CallRefused {
        List<String> ids = Arrays.stream(call.matchedOptionValue(option, "").split("[,\\s]+"))
                .filter(id -> !id.isEmpty())
                .toList();
        if (ids.isEmpty()) {
            throw new CallRefused(option + " names no draft; listen without it lists them with their ids");
        }
        return ids;
    }

    private static JsonObject json(DraftKeeping.Outcome outcome) {
        return new JsonObject()
                .put("kept", outcome.kept().stream().map(Draft::id).toList())
                .put("rows", outcome.rows())
                .put("kept_before", outcome.before());
    }

    private static String report(DraftKeeping.Outcome outcome) {
        String before = outcome.before().isEmpty()
                ? ""
                : ", " + CliText.count(outcome.before().size(), "was", "were") + " kept before";
        return CliText.count(outcome.kept().size(), "draft", "drafts") + " kept as "
                + CliText.count(outcome.rows(), "row", "rows") + before + ".\n";
    }

    private static String table(VisitWalk walk, Map<String, String> states) {
        StringBuilder out = new StringBuilder();
        if (walk.parts().isEmpty() && walk.remarks().isEmpty()) {
            return "No words yet. Add them with: words VISIT FILE\n";
        }
        for (String source : walk.parts().keySet()) {
            List<Draft> drafts = walk.drafts().stream()
                    .filter(draft -> draft.source().equals(source))
                    .filter(draft -> isShown(draft, states))
                    .toList();
            out.append(heading(source, walk.parts().get(source), drafts.size()));
            if (!drafts.isEmpty()) {
                out.append(table(drafts, states)).append('\n');
            }
        }
        walk.remarks().forEach(remark -> out.append(remark).append('\n'));
        long unlikely =
                walk.drafts().stream().filter(draft -> !isShown(draft, states)).count();
        if (unlikely > 0) {
            out.append(CliText.count(unlikely, "draft", "drafts"))
                    .append(" under ")
                    .append(Math.round(MIN_SHOWN_P * PERCENT))
                    .append("% not shown; --json has them all.\n");
        }
        if (!walk.drafts().isEmpty()) {
            out.append("Drafts are no evidence until they are kept: listen VISIT " + KEEP + " ID,...\n");
        }
        return out.toString();
    }

    private static boolean isShown(Draft draft, Map<String, String> states) {
        return draft.p() >= MIN_SHOWN_P || states.containsKey(draft.id());
    }

    private static String heading(String source, VisitWalk.Part part, int drafts) {
        return source
                + part.about().map(photo -> ", of " + photo.file().name()).orElse("")
                + ": "
                + (drafts == 0 ? "no drafts" : CliText.count(drafts, "draft", "drafts"))
                + "\n";
    }

    private static String table(List<Draft> drafts, Map<String, String> states) {
        TextTable table = new TextTable()
                .left("id")
                .right("time")
                .left("what", "zone", "value")
                .right("p")
                .left("state", "words");
        for (Draft draft : drafts) {
            table.row(
                    draft.id(),
                    SpokenQuote.clock(draft.atSeconds()),
                    draft.what().word(),
                    zones(draft.zones()),
                    DraftLine.value(draft),
                    Long.toString(Math.round(draft.p() * PERCENT)) + "%",
                    draft.withdrawn() ? "taken back" : states.getOrDefault(draft.id(), ""),
                    draft.words());
        }
        return table.text();
    }

    private static String zones(List<ZoneId> zones) {
        String named = zones.stream().limit(MAX_NAMED_ZONES).map(ZoneId::value).collect(Collectors.joining(" "));
        return zones.isEmpty()
                ? "whole car"
                : zones.size() <= MAX_NAMED_ZONES
                        ? named
                        : named + " and " + (zones.size() - MAX_NAMED_ZONES) + " more";
    }
}
