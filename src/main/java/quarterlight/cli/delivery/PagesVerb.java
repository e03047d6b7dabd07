package quarterlight.cli.delivery;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.ParseResult;
import quarterlight.cli.call.CallRefused;
import quarterlight.cli.call.CliContext;
import quarterlight.cli.call.CliOptions;
import quarterlight.cli.call.Exit;
import quarterlight.cli.call.Interruption;
import quarterlight.cli.call.OwnLists;
import quarterlight.cli.call.Verb;
import quarterlight.diagram.file.DiagramRefused;
import quarterlight.edit.pages.CheckedPages;
import quarterlight.language.Language;
import quarterlight.page.PagesChoice;
import quarterlight.page.check.PageCheck;
import quarterlight.page.check.PageFault;
import quarterlight.page.print.Paper;
import quarterlight.photo.worker.DecodingWorkers;
import quarterlight.store.VisitStore;
import quarterlight.store.problem.VisitProblem;
import quarterlight.table.TableUnreadable;
import quarterlight.table.json.JsonObject;
import quarterlight.table.text.Quoted;
import quarterlight.task.Progress;
import quarterlight.units.ThicknessUnit;
import quarterlight.units.Worded;

/** {@code pages}: makes the pages for the buyer. */
public final class PagesVerb implements Verb {
    private static final String UNIT = "--unit";
    private static final String SHORT = "--short";
    private static final String LANGUAGE = "--language";

    private final CliContext around;

    public PagesVerb(CliContext around) {
        this.around = around;
    }

    @Override
    public CommandSpec spec() {
        return CliOptions.verb(
                        "pages",
                        "make the annotated diagram (SVG, PDF) and the report (PDF, one HTML file) in pages/ of the"
                                + " visit")
                .addPositional(CliOptions.visit())
                .addOption(CliOptions.text(
                        "--paper", "PAPER", Worded.words(Paper.class).replace(", ", " or ") + " (default: a4)"))
                .addOption(CliOptions.text(UNIT, "UNIT", "mil or um (default: the one in which most was measured)"))
                .addOption(OptionSpec.builder(SHORT)
                        .description("the short report: first page, diagram, what matters")
                        .build())
                .addOption(language())
                .addOption(CliOptions.pathOption("--out", "FOLDER", "folder to write them to instead"))
                .addOption(CliOptions.json());
    }

    @Override
    public int run(ParseResult call) throws CallRefused, VisitProblem, IOException {
        PagesChoice choice = choice(call);
        Path visit = CliOptions.pathAt(call, 0);
        DecodingWorkers.makeReady();
        CheckedPages pages;
        try (VisitStore store = around.visits().forReading(visit)) {
            Path out = call.matchedOptionValue("--out", store.folder().pages());
            if (Files.exists(out) && !Files.isDirectory(out)) {
                throw new CallRefused(out + " is a file; name a folder for the pages");
            }
            try (Interruption interruption = Interruption.watched(around.console())) {
                pages = make(store, out, choice, interruption);
            }
        }
        PageCheck check = pages.check();
        if (CliOptions.isJson(call)) {
            around.console()
                    .print(new JsonObject()
                            .put("paper", choice.paper().word())
                            .put("made", pages.files())
                            .put("pages", check.pages())
                            .put(
                                    "faults",
                                    check.faults().stream()
                                            .map(PageFault::sentence)
                                            .toList())
                            .text());
        } else {
            pages.files().forEach(file -> around.console().print("Made " + file + "\n"));
            around.console().print(check.sentence() + "\n");
        }
        return check.faults().isEmpty() ? Exit.DONE : Exit.NOT_ALL;
    }

    private static PagesChoice choice(ParseResult call) throws CallRefused {
        Paper paper = paper("pages", call.matchedOptionValue("--paper", Paper.A4.word()));
        Optional<ThicknessUnit> unit = Optional.empty();
        if (call.hasMatchedOption(UNIT)) {
            String typed = call.matchedOptionValue(UNIT, "");
            unit = Optional.of(ThicknessUnit.said(typed)
                    .orElseThrow(() -> new CallRefused("pages: " + Quoted.of(typed) + " is no unit; take mil or um")));
        }
        return new PagesChoice(paper, unit, call.hasMatchedOption(SHORT), language("pages", call));
    }

    public static Paper paper(String verb, String word) throws CallRefused {
        return Worded.find(Paper.class, word)
                .orElseThrow(() -> new CallRefused(verb + ": there is no paper " + Quoted.of(word) + "; take one of "
                        + Worded.words(Paper.class)));
    }

    /** The option of verbs that make pages: what language people read on them. */
    public static OptionSpec language() {
        return CliOptions.text(
                LANGUAGE,
                "LANGUAGE",
                "language of the pages: en or de; what was typed stays as typed, this program's own answers are"
                        + " English (default: en)");
    }

    /** What {@link #language()} was given. */
    public static Language language(String verb, ParseResult call) throws CallRefused {
        String code = call.matchedOptionValue(LANGUAGE, Language.ENGLISH.code());
        return Language.coded(code)
                .orElseThrow(() -> new CallRefused(
                        verb + ": there are no pages in the language " + Quoted.of(code) + "; take en or de"));
    }

    public List<Path> make(VisitStore store, Path out, Paper paper, Progress progress)
            throws CallRefused, VisitProblem, IOException {
        return make(store, out, PagesChoice.on(paper), progress).files();
    }

    private CheckedPages make(VisitStore store, Path out, PagesChoice choice, Progress progress)
            throws CallRefused, VisitProblem, IOException {
        try {
            return OwnLists.work(around).pages(store, out, choice, progress);
        } catch (DiagramRefused | TableUnreadable e) {
            throw new CallRefused(e.getMessage());
        }
    }
}
