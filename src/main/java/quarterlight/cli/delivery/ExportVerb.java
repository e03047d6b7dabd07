package quarterlight.cli.delivery;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
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
import quarterlight.cli.text.StandardInput;
import quarterlight.diagram.BodyDiagram;
import quarterlight.diagram.file.DiagramRefused;
import quarterlight.diagram.file.VisitDiagram;
import quarterlight.edit.EditRefused;
import quarterlight.edit.export.Disclosure;
import quarterlight.edit.export.ExportChoice;
import quarterlight.edit.export.ExportForm;
import quarterlight.edit.export.Exporting;
import quarterlight.edit.export.Targets;
import quarterlight.findings.Findings;
import quarterlight.page.DiagramDrawing;
import quarterlight.store.VisitStore;
import quarterlight.store.problem.VisitProblem;
import quarterlight.table.json.JsonObject;
import quarterlight.table.text.Nearest;
import quarterlight.units.Worded;
import quarterlight.visit.VisitRecord;

/** {@code export}: writes the visit for other programs. */
public final class ExportVerb implements Verb {
    private static final String AS = "--as";
    private static final String WITH_PLACES = "--with-places";
    private static final String FOR_BUYER = "--for-buyer";
    private static final String BOM = "--bom";

    private final CliContext around;

    public ExportVerb(CliContext around) {
        this.around = around;
    }

    @Override
    public CommandSpec spec() {
        return CliOptions.verb(
                        "export",
                        "export the visit for other programs: tables as CSV, everything as JSON, the diagram as SVG,"
                                + " an XMP sidecar for each photo; or one of the other forms")
                .addPositional(CliOptions.visit())
                .addPositional(CliOptions.path(
                        1, "TARGET", "folder or file to write; must not exist yet; - prints a file on standard output"))
                .addOption(CliOptions.text(
                                AS,
                                "FORM",
                                "tables (default), xlsx (a workbook), coco, geojson or annotations (outlines and notes"
                                        + " on photos), xmp (sidecars), views (each view of the diagram as SVG and PNG)")
                        .toBuilder()
                        .completionCandidates(Worded.list(ExportForm.class))
                        .build())
                .addOption(OptionSpec.builder(FOR_BUYER)
                        .type(boolean.class)
                        .description("only what a buyer may see")
                        .build())
                .addOption(OptionSpec.builder(WITH_PLACES)
                        .type(boolean.class)
                        .description("include where photos were taken")
                        .build())
                .addOption(OptionSpec.builder(BOM)
                        .type(boolean.class)
                        .description("begin CSV with a byte order mark, for spreadsheets that ask for it")
                        .build())
                .addOption(CliOptions.json());
    }

    @Override
    public int run(ParseResult call) throws CallRefused, EditRefused, VisitProblem, IOException {
        ExportChoice choice = choice(call);
        Path target = CliOptions.pathAt(call, 1);
        boolean printed = StandardInput.isMeant(target);
        if (printed && (choice.form().isFolder() || CliOptions.isJson(call))) {
            throw new CallRefused("export: " + choice.form().word()
                    + (choice.form().isFolder() ? " is a folder of files and" : " with --json")
                    + " cannot go to standard output; name a target");
        }
        if (!printed) {
            Targets.requireFree(target);
        }
        List<String> made;
        try (VisitStore store = around.visits().forReading(CliOptions.pathAt(call, 0));
                Interruption interruption = Interruption.watched(around.console())) {
            Exporting exporting = new Exporting(around.zones().get(), drawings(store, choice));
            if (printed) {
                print(exporting, store, choice, interruption);
                return Exit.DONE;
            }
            made = exporting.write(store, target, choice, interruption);
        } catch (DiagramRefused e) {
            throw new CallRefused(e.getMessage());
        } catch (CancellationException e) {
            throw new CallRefused("stopped before the end; nothing was exported");
        }
        if (CliOptions.isJson(call)) {
            around.console()
                    .print(new JsonObject()
                            .put("folder", target)
                            .put("form", choice.form().word())
                            .put("made", made)
                            .text());
        } else {
            String what = choice.form().isFolder() ? " with " + CliText.count(made.size(), "file", "files") : "";
            around.console().print("Made " + target + what + ".\n");
        }
        return Exit.DONE;
    }

    private static ExportChoice choice(ParseResult call) throws CallRefused {
        String word = call.matchedOptionValue(AS, ExportForm.TABLES.word());
        ExportForm form = Worded.find(ExportForm.class, word)
                .orElseThrow(() -> new CallRefused("export: there is no form \"" + word + "\""
                        + Nearest.hint(word, Worded.list(ExportForm.class)) + "; the forms are "
                        + Worded.words(ExportForm.class)));
        boolean places = call.hasMatchedOption(WITH_PLACES);
        boolean buyer = call.hasMatchedOption(FOR_BUYER);
        if (places && buyer) {
            throw new CallRefused("export: places never go to a buyer; leave out " + WITH_PLACES + " or " + FOR_BUYER);
        }
        Disclosure disclosure = buyer ? Disclosure.FOR_BUYER : places ? Disclosure.WHOLE : Disclosure.WITHOUT_PLACES;
        return new ExportChoice(form, disclosure, call.hasMatchedOption(BOM));
    }

    private Map<String, byte[]> drawings(VisitStore store, ExportChoice choice)
            throws CallRefused, DiagramRefused, VisitProblem, IOException {
        if (!choice.form().isDrawn()) {
            return Map.of();
        }
        Path folder = store.folder().root();
        VisitRecord record = choice.disclosure().of(store.read());
        BodyDiagram diagram = VisitDiagram.of(folder, record.facts());
        Findings findings = OwnLists.findings(around, folder, record);
        return choice.form() == ExportForm.VIEWS
                ? DiagramDrawing.views(findings, diagram)
                : Map.of("diagram.svg", DiagramDrawing.svg(findings, diagram).getBytes(StandardCharsets.UTF_8));
    }

    private void print(Exporting exporting, VisitStore store, ExportChoice choice, Interruption interruption)
            throws VisitProblem, IOException {
        Path scratch = Files.createTempDirectory("quarterlight-");
        try {
            byte[] file = exporting.file(store, scratch, choice, interruption);
            around.console().status().clear();
            around.console().out().write(file);
            around.console().out().flush();
        } finally {
            try (var left = Files.list(scratch)) {
                for (Path file : left.toList()) {
                    Files.deleteIfExists(file);
                }
            }
            Files.deleteIfExists(scratch);
        }
    }
}
