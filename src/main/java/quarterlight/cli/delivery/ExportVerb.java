package quarterlight.cli.delivery;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.CancellationException;
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
import quarterlight.cli.text.CliText;
import quarterlight.diagram.BodyDiagram;
import quarterlight.diagram.file.DiagramRefused;
import quarterlight.diagram.file.VisitDiagram;
import quarterlight.edit.EditRefused;
import quarterlight.edit.export.Exporting;
import quarterlight.page.DiagramDrawing;
import quarterlight.store.VisitStore;
import quarterlight.store.problem.VisitProblem;
import quarterlight.table.json.JsonObject;
import quarterlight.visit.VisitRecord;

/** {@code export}: writes the visit for other programs. */
public final class ExportVerb implements Verb {
    private static final String WITH_PLACES = "--with-places";

    private final CliContext around;

    public ExportVerb(CliContext around) {
        this.around = around;
    }

    @Override
    public CommandSpec spec() {
        return CliOptions.verb(
                        "export",
                        "export the visit for other programs: tables as CSV, everything as JSON, the diagram as SVG,"
                                + " an XMP sidecar for each photo")
                .addPositional(CliOptions.visit())
                .addPositional(CliOptions.path(1, "FOLDER", "folder to write to; must not exist yet"))
                .addOption(OptionSpec.builder(WITH_PLACES)
                        .type(boolean.class)
                        .description("include where photos were taken")
                        .build())
                .addOption(CliOptions.json());
    }

    @Override
    public int run(ParseResult call) throws CallRefused, EditRefused, VisitProblem, IOException {
        Path folder = CliOptions.pathAt(call, 1);
        List<String> made;
        try (VisitStore store = around.visits().forReading(CliOptions.pathAt(call, 0));
                Interruption interruption = Interruption.watched()) {
            VisitRecord record = store.read();
            BodyDiagram diagram = VisitDiagram.of(store.folder().root(), record.facts());
            String drawing =
                    DiagramDrawing.svg(OwnLists.findings(around, store.folder().root(), record), diagram);
            made = new Exporting(around.zones().get(), visit -> drawing)
                    .write(store, folder, call.hasMatchedOption(WITH_PLACES), interruption);
        } catch (DiagramRefused e) {
            throw new CallRefused(e.getMessage());
        } catch (CancellationException e) {
            throw new CallRefused("stopped before the end; nothing was exported");
        }
        if (CliOptions.isJson(call)) {
            around.console()
                    .print(new JsonObject()
                            .put("folder", folder)
                            .put("made", made)
                            .text());
        } else {
            around.console().print("Made " + folder + " with " + CliText.count(made.size(), "file", "files") + ".\n");
        }
        return Exit.DONE;
    }
}
