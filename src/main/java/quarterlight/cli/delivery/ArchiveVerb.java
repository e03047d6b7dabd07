package quarterlight.cli.delivery;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
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
import quarterlight.cli.call.Passphrase;
import quarterlight.cli.call.Verb;
import quarterlight.cli.text.CliText;
import quarterlight.diagram.file.DiagramRefused;
import quarterlight.edit.EditRefused;
import quarterlight.edit.archive.Archived;
import quarterlight.edit.archive.Archiving;
import quarterlight.edit.export.DisclosurePreview;
import quarterlight.page.PagesChoice;
import quarterlight.page.print.Paper;
import quarterlight.store.VisitStore;
import quarterlight.store.problem.VisitProblem;
import quarterlight.table.TableUnreadable;
import quarterlight.table.json.JsonObject;
import quarterlight.task.Progress;
import quarterlight.units.Worded;

/** {@code archive}: packs the visit into one file that proves itself. */
public final class ArchiveVerb implements Verb {
    private static final String FOR_BUYER = "--for-buyer";
    private static final String PAPER = "--paper";
    private static final String UNSIGNED = "--unsigned";

    private final CliContext around;

    public ArchiveVerb(CliContext around) {
        this.around = around;
    }

    @Override
    public CommandSpec spec() {
        return CliOptions.verb(
                        "archive",
                        "pack the visit into one self-verifying file (BagIt 1.0 in a zip): originals, all tables, the"
                                + " pages")
                .addPositional(CliOptions.visit())
                .addPositional(CliOptions.path(1, "FILE.zip", "the archive; must not exist yet"))
                .addOption(OptionSpec.builder(FOR_BUYER)
                        .type(boolean.class)
                        .description("leave out originals, places, hidden regions and the database; make new pages")
                        .build())
                .addOption(CliOptions.text(
                        PAPER,
                        "PAPER",
                        "of the pages for the buyer: "
                                + Worded.words(Paper.class).replace(", ", " or ") + " (default: a4)"))
                .addOption(OptionSpec.builder(UNSIGNED)
                        .type(boolean.class)
                        .description("do not sign it")
                        .build())
                .addOption(Passphrase.option())
                .addOption(CliOptions.json());
    }

    @Override
    public int run(ParseResult call) throws CallRefused, EditRefused, VisitProblem, IOException {
        Path visit = CliOptions.pathAt(call, 0);
        Path file = CliOptions.pathAt(call, 1);
        Paper paper = PagesVerb.paper("archive", call.matchedOptionValue(PAPER, Paper.A4.word()));
        Archived archived;
        Optional<DisclosurePreview> going = Optional.empty();
        try (VisitStore store = around.visits().forReading(visit);
                Interruption interruption = Interruption.watched(around.console())) {
            Archiving archiving = new Archiving(
                            around.zones().get(),
                            around.clock(),
                            (folder, pictures, progress) -> makePages(store, folder, pictures, paper, progress))
                    .withListsOf(around.settings());
            if (!call.hasMatchedOption(UNSIGNED)) {
                archiving = archiving.signedBy(Passphrase.key(call, around));
            }
            if (call.hasMatchedOption(FOR_BUYER)) {
                going = Optional.of(
                        DisclosurePreview.of(store.read(), around.zones().get()));
            }
            if (going.isPresent() && !CliOptions.isJson(call)) {
                around.console().print(going.get().text());
            }
            archived = archiving.make(store, file, call.hasMatchedOption(FOR_BUYER), interruption);
        } catch (CancellationException e) {
            throw new CallRefused("stopped before the end; no archive was made");
        }
        around.console().print(CliOptions.isJson(call) ? json(archived, going).text() : report(archived));
        if (!archived.ok()) {
            around.console().complain(complaint(visit, archived));
        }
        return archived.ok() ? Exit.DONE : Exit.NOT_ALL;
    }

    private void makePages(VisitStore store, Path folder, Path pictures, Paper paper, Progress progress)
            throws EditRefused, VisitProblem, IOException {
        try {
            OwnLists.work(around).pagesWithin(store, folder, PagesChoice.on(paper), progress);
            OwnLists.work(around).pictures(store, pictures, progress);
        } catch (DiagramRefused | TableUnreadable e) {
            throw new EditRefused("pages", e.getMessage());
        }
    }

    private static JsonObject json(Archived archived, Optional<DisclosurePreview> going) {
        return new JsonObject()
                .put("goes", going.map(DisclosurePreview::goes))
                .put("stays", going.map(DisclosurePreview::stays))
                .put("file", archived.file())
                .put("bytes", archived.bytes())
                .put("sha256", archived.sha256())
                .put("originals", archived.originals())
                .put("changed", archived.changed())
                .put("missing", archived.missing())
                .put("unreadable", archived.unreadable())
                .put("left_out", archived.unnamed())
                .put("log_head", archived.head())
                .put("key", archived.key());
    }

    private static String report(Archived archived) {
        StringBuilder out = new StringBuilder();
        archived.changed().forEach(file -> out.append("changed: ").append(file).append('\n'));
        archived.missing().forEach(file -> out.append("missing: ").append(file).append('\n'));
        archived.unreadable()
                .forEach(file -> out.append("cannot be read: ").append(file).append('\n'));
        archived.unnamed().forEach(file -> out.append("remark: left out (no photo refers to it, or it is a link): ")
                .append(file)
                .append('\n'));
        return out.append("Made ")
                .append(archived.file())
                .append(", ")
                .append(CliText.count(archived.originals(), "original", "originals"))
                .append(", ")
                .append(archived.bytes())
                .append(" bytes.\nIts SHA-256 is ")
                .append(archived.sha256())
                .append(". Keep it somewhere other than with the file: it identifies this archive.\n")
                .append(archived.head()
                        .map(head -> "The edit log ends with entry " + head
                                + ". Who has noted that can tell later whether anything before it was changed.\n")
                        .orElse(""))
                .append(archived.key()
                        .map(key -> "Signed with the key " + key
                                + ". Who checks it compares that with the printed brief.\n")
                        .orElse("It is not signed.\n"))
                .toString();
    }

    private static String complaint(Path visit, Archived archived) {
        return visit + ": " + CliText.count(archived.changed().size(), "original", "originals") + " changed and "
                + archived.missing().size()
                + " missing since they were added"
                + (archived.unreadable().isEmpty()
                        ? ""
                        : ", " + archived.unreadable().size() + " cannot be read")
                + "; the archive was made from what is there, run audit for details";
    }
}
