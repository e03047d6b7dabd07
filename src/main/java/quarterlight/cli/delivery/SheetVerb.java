package quarterlight.cli.delivery;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Objects;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParseResult;
import quarterlight.cli.call.CallRefused;
import quarterlight.cli.call.CliContext;
import quarterlight.cli.call.CliOptions;
import quarterlight.cli.call.Exit;
import quarterlight.cli.call.OwnLists;
import quarterlight.cli.call.Verb;
import quarterlight.diagram.file.DiagramRefused;
import quarterlight.language.Language;
import quarterlight.page.print.Paper;
import quarterlight.store.VisitStore;
import quarterlight.store.problem.VisitProblem;
import quarterlight.table.TableUnreadable;
import quarterlight.table.json.JsonObject;
import quarterlight.units.Worded;

/** {@code sheet}: makes the sheet to take along to the car, to be written on. */
public final class SheetVerb implements Verb {
    /** Its usual name, in the folder of the visit. */
    static final String FILE = "sheet.pdf";

    private static final byte[] PDF = "%PDF".getBytes(StandardCharsets.US_ASCII);

    private final CliContext around;

    public SheetVerb(CliContext around) {
        this.around = around;
    }

    @Override
    public CommandSpec spec() {
        return CliOptions.verb(
                        "sheet", "make the sheet to take along: two pages made for this car, to be written on (PDF)")
                .addPositional(CliOptions.visit())
                .addOption(CliOptions.text(
                        "--paper", "PAPER", Worded.words(Paper.class).replace(", ", " or ") + " (default: a4)"))
                .addOption(PagesVerb.language())
                .addOption(CliOptions.pathOption(
                        "--out", "FILE", "PDF file to write instead of " + FILE + " of the visit"))
                .addOption(CliOptions.json());
    }

    @Override
    public int run(ParseResult call) throws CallRefused, VisitProblem, IOException {
        Paper paper = PagesVerb.paper("sheet", call.matchedOptionValue("--paper", Paper.A4.word()));
        Language language = PagesVerb.language("sheet", call);
        Path visit = CliOptions.pathAt(call, 0);
        Path made;
        try (VisitStore store = around.visits().forReading(visit)) {
            Path out = call.matchedOptionValue("--out", store.folder().root().resolve(FILE));
            requireOurs(out);
            try (Language.Scope spoken = language.inHandUntilClosed()) {
                Objects.requireNonNull(spoken, "spoken");
                made = OwnLists.work(around).sheet(store, out, paper);
            }
        } catch (DiagramRefused | TableUnreadable e) {
            throw new CallRefused(e.getMessage());
        }
        around.console()
                .print(
                        CliOptions.isJson(call)
                                ? new JsonObject()
                                        .put("paper", paper.word())
                                        .put("made", made)
                                        .text()
                                : OwnLists.remark(visit) + "Made " + made + "\n");
        return Exit.DONE;
    }

    /** An earlier PDF is replaced; anything else that stands there is not. */
    private static void requireOurs(Path out) throws CallRefused, IOException {
        if (Files.isDirectory(out)) {
            throw new CallRefused(out + " is a folder; name a file for the sheet, such as " + out.resolve(FILE));
        }
        if (Files.exists(out)) {
            try (InputStream in = Files.newInputStream(out)) {
                if (!java.util.Arrays.equals(in.readNBytes(PDF.length), PDF)) {
                    throw new CallRefused(out + " is there and is no PDF; name another file for the sheet");
                }
            }
        }
    }
}
