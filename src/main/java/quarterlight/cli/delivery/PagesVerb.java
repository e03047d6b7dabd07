package quarterlight.cli.delivery;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParseResult;
import quarterlight.cli.call.CallRefused;
import quarterlight.cli.call.CliContext;
import quarterlight.cli.call.CliOptions;
import quarterlight.cli.call.Exit;
import quarterlight.cli.call.Interruption;
import quarterlight.cli.call.OwnLists;
import quarterlight.cli.call.Verb;
import quarterlight.diagram.file.DiagramRefused;
import quarterlight.page.check.PageCheck;
import quarterlight.page.check.PageFault;
import quarterlight.page.print.Paper;
import quarterlight.store.VisitStore;
import quarterlight.store.problem.VisitProblem;
import quarterlight.table.TableUnreadable;
import quarterlight.table.json.JsonObject;
import quarterlight.table.text.Quoted;
import quarterlight.task.Progress;
import quarterlight.units.Worded;

/** {@code pages}: makes the pages for the buyer. */
public final class PagesVerb implements Verb {
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
                .addOption(CliOptions.pathOption("--out", "FOLDER", "folder to write them to instead"))
                .addOption(CliOptions.json());
    }

    @Override
    public int run(ParseResult call) throws CallRefused, VisitProblem, IOException {
        Paper paper = paper("pages", call.matchedOptionValue("--paper", Paper.A4.word()));
        Path visit = CliOptions.pathAt(call, 0);
        List<Path> made;
        PageCheck check;
        try (VisitStore store = around.visits().forReading(visit)) {
            Path out = call.matchedOptionValue("--out", store.folder().pages());
            if (Files.exists(out) && !Files.isDirectory(out)) {
                throw new CallRefused(out + " is a file; name a folder for the pages");
            }
            try (Interruption interruption = Interruption.watched()) {
                made = make(store, out, paper, interruption);
                check = OwnLists.work(around).check(store, made);
            }
        }
        if (CliOptions.isJson(call)) {
            around.console()
                    .print(new JsonObject()
                            .put("paper", paper.word())
                            .put("made", made)
                            .put("pages", check.pages())
                            .put(
                                    "faults",
                                    check.faults().stream()
                                            .map(PageFault::sentence)
                                            .toList())
                            .text());
        } else {
            made.forEach(file -> around.console().print("Made " + file + "\n"));
            around.console().print(check.sentence() + "\n");
        }
        return check.faults().isEmpty() ? Exit.DONE : Exit.NOT_ALL;
    }

    public static Paper paper(String verb, String word) throws CallRefused {
        return Worded.find(Paper.class, word)
                .orElseThrow(() -> new CallRefused(verb + ": there is no paper " + Quoted.of(word) + "; take one of "
                        + Worded.words(Paper.class)));
    }

    public List<Path> make(VisitStore store, Path out, Paper paper, Progress progress)
            throws CallRefused, VisitProblem, IOException {
        try {
            return OwnLists.work(around).pages(store, out, paper, progress);
        } catch (DiagramRefused | TableUnreadable e) {
            throw new CallRefused(e.getMessage());
        }
    }
}
