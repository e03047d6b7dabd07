package quarterlight.cli.analysis;

import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
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
import quarterlight.cli.text.GapJson;
import quarterlight.cli.text.TextTable;
import quarterlight.cli.text.WalkDoubtsText;
import quarterlight.coverage.Coverage;
import quarterlight.coverage.Gap;
import quarterlight.coverage.NeededLook;
import quarterlight.coverage.TrialItem;
import quarterlight.coverage.TrialList;
import quarterlight.coverage.ZoneCoverage;
import quarterlight.edit.spoken.VisitWalk;
import quarterlight.rust.RustReport;
import quarterlight.store.problem.VisitProblem;
import quarterlight.table.TableUnreadable;
import quarterlight.table.json.JsonObject;
import quarterlight.table.json.WalkDoubtsJson;
import quarterlight.thickness.ThicknessSurvey;
import quarterlight.visit.VisitRecord;
import quarterlight.visit.photo.MediaKind;
import quarterlight.words.unsaid.Unsaid;

/** {@code gaps}: what evidence is missing, by what one look would close, or each gap in the order of a walk round the car. */
public final class GapsVerb implements Verb {
    /** So many zones of a look are named in the table. */
    private static final int SHOWN_ZONES = 4;

    private final CliContext around;

    public GapsVerb(CliContext around) {
        this.around = around;
    }

    @Override
    public CommandSpec spec() {
        return CliOptions.verb("gaps", "list missing evidence, by what one look would close")
                .addPositional(CliOptions.visit())
                .addOption(OptionSpec.builder("--all")
                        .description("every gap, in walk-around order")
                        .build())
                .addOption(CliOptions.json());
    }

    @Override
    public int run(ParseResult call) throws VisitProblem, CallRefused {
        VisitRecord visit = Visits.read(around, CliOptions.pathAt(call, 0));
        ZoneCatalog catalog = around.zones().get();
        RustReport rust = RustReport.of(
                visit,
                catalog,
                around.areas().of(CliOptions.pathAt(call, 0), visit.facts()).areas());
        List<ZoneCoverage> zones = Coverage.zones(
                visit,
                catalog,
                ThicknessSurvey.of(visit, catalog),
                rust,
                OwnLists.coverage(around, CliOptions.pathAt(call, 0)));
        TrialList trials = OwnLists.trials(around, CliOptions.pathAt(call, 0));
        Set<ZoneId> there = zones.stream().map(zone -> zone.zone().id()).collect(Collectors.toSet());
        List<TrialItem> untried =
                trials.untried(visit, there, trials.runs(visit).orElse(true));
        List<Unsaid> unsaid = unsaid(visit, CliOptions.pathAt(call, 0), catalog);
        around.console()
                .print(
                        CliOptions.isJson(call)
                                ? json(zones, untried)
                                        .put("not_said", WalkDoubtsJson.unsaid(unsaid))
                                        .text()
                                : OwnLists.remark(CliOptions.pathAt(call, 0))
                                        + told(gaps(zones), call)
                                        + words(untried)
                                        + WalkDoubtsText.unsaid(unshown(unsaid, zones)));
        return Exit.DONE;
    }

    /** What the words of the visit leave out; empty where it has none. */
    private List<Unsaid> unsaid(VisitRecord visit, Path folder, ZoneCatalog catalog) throws CallRefused {
        boolean words = visit.photos().stream().anyMatch(photo -> photo.file().kind() == MediaKind.WORDS);
        try {
            return words
                    ? VisitWalk.of(visit, folder, catalog, around.settings()).unsaid()
                    : List.of();
        } catch (TableUnreadable e) {
            throw new CallRefused(e.getMessage());
        }
    }

    /** Of zones never spoken of those that lack all other evidence too. */
    private static List<Unsaid> unshown(List<Unsaid> all, List<ZoneCoverage> zones) {
        Set<ZoneId> missing = zones.stream()
                .filter(zone -> zone.state() == ZoneCoverage.State.MISSING)
                .map(zone -> zone.zone().id())
                .collect(Collectors.toSet());
        return all.stream()
                .flatMap(one -> one.kind() == Unsaid.Kind.NEVER_SPOKEN_OF ? one.only(missing).stream() : Stream.of(one))
                .toList();
    }

    private static List<Gap> gaps(List<ZoneCoverage> zones) {
        return zones.stream().flatMap(zone -> zone.gaps().stream()).toList();
    }

    private static String told(List<Gap> gaps, ParseResult call) {
        return call.hasMatchedOption("--all") || gaps.isEmpty() ? table(gaps) : looks(gaps);
    }

    private static String looks(List<Gap> gaps) {
        List<NeededLook> looks = NeededLook.of(gaps);
        TextTable table = new TextTable().left("look").right("gaps").left("zones");
        for (NeededLook look : looks) {
            table.row(look.words(), Integer.toString(look.gaps().size()), zones(look));
        }
        return table.text() + "\n" + CliText.count(gaps.size(), "gap", "gaps") + ", closed by "
                + CliText.count(looks.size(), "look", "looks") + "; --all lists each.\n";
    }

    private static String zones(NeededLook look) {
        List<String> zones = look.gaps().stream()
                .map(gap -> gap.zone().id().value())
                .distinct()
                .toList();
        return String.join(", ", zones.subList(0, Math.min(SHOWN_ZONES, zones.size())))
                + (zones.size() > SHOWN_ZONES ? " and " + (zones.size() - SHOWN_ZONES) + " more" : "");
    }

    private static JsonObject look(NeededLook look) {
        return new JsonObject()
                .put("look", look.words())
                .put("lacks", look.lacks().word())
                .put("group", look.group().word())
                .put("gaps", look.gaps().size())
                .put(
                        "zones",
                        look.gaps().stream()
                                .map(gap -> gap.zone().id().value())
                                .distinct()
                                .toList());
    }

    private static JsonObject json(List<ZoneCoverage> zones, List<TrialItem> untried) {
        return new JsonObject()
                .put(
                        "looks",
                        NeededLook.of(gaps(zones)).stream().map(GapsVerb::look).toList())
                .put("gaps", gaps(zones).stream().map(GapJson::of).toList())
                .put(
                        "zones",
                        zones.stream()
                                .map(zone -> new JsonObject()
                                        .put("zone", zone.zone().id())
                                        .put("state", zone.state().word()))
                                .toList())
                .put(
                        "untried",
                        untried.stream()
                                .map(item -> new JsonObject()
                                        .put("group", item.group().word())
                                        .put("item", item.item()))
                                .toList());
    }

    private static String words(List<TrialItem> untried) {
        return untried.isEmpty()
                ? ""
                : "Not tried, of the usual list: "
                        + untried.stream().map(TrialItem::item).collect(Collectors.joining("; ")) + ".\n"
                        + TrialList.caution() + "\n";
    }

    private static String table(List<Gap> gaps) {
        if (gaps.isEmpty()) {
            return "Nothing is missing.\n";
        }
        TextTable table =
                new TextTable().left("zone", "lacks").right("have", "want").left("why");
        for (Gap gap : gaps) {
            table.row(
                    gap.zone().id().value(),
                    gap.lacks().word() + gap.part().map(part -> " of " + part).orElse(""),
                    Integer.toString(gap.have()),
                    Integer.toString(gap.want()),
                    gap.why()
                            + gap.excuse()
                                    .map(text -> " Not looked at: " + text)
                                    .orElse(""));
        }
        return table.text() + "\n" + CliText.count(gaps.size(), "gap", "gaps") + ".\n";
    }
}
