package quarterlight.cli.library;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.CancellationException;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParseResult;
import quarterlight.cli.call.CallRefused;
import quarterlight.cli.call.CliContext;
import quarterlight.cli.call.CliOptions;
import quarterlight.cli.call.Exit;
import quarterlight.cli.call.Interruption;
import quarterlight.cli.call.Verb;
import quarterlight.cli.text.CliText;
import quarterlight.edit.EditRefused;
import quarterlight.edit.archive.Archiving;
import quarterlight.edit.library.VisitBackup;
import quarterlight.edit.library.VisitBackup.Copied;
import quarterlight.store.VisitOpening;
import quarterlight.table.json.JsonObject;

/** {@code backup}: an archive of each of many visits, each proved. */
public final class BackupVerb implements Verb {
    private final CliContext around;

    public BackupVerb(CliContext around) {
        this.around = around;
    }

    @Override
    public CommandSpec spec() {
        return CliOptions.verb(
                        "backup",
                        "archive every visit in folders into one folder, and read each archive again; a visit that did"
                                + " not change is not written again")
                .addPositional(CliOptions.path(0, "TARGET", "the folder for the archives"))
                .addPositional(CliOptions.paths(1, "FOLDER", "where visits lie, also in folders below"))
                .addOption(CliOptions.json());
    }

    @Override
    public int run(ParseResult call) throws CallRefused, EditRefused, IOException {
        List<Path> folders = call.matchedPositional(1).getValue();
        VisitOpening opening = VisitOpening.by(around.clock()).onThisComputer(around.settings());
        Archiving archiving = new Archiving(around.zones().get(), around.clock(), (folder, pictures, progress) -> {
                    throw new IllegalStateException("an archive for oneself has the pages that are there");
                })
                .withListsOf(around.settings());
        List<Copied> copied;
        try (Interruption interruption = Interruption.watched(around.console())) {
            copied = new VisitBackup(archiving, opening, around.zones().get())
                    .run(folders, CliOptions.pathAt(call, 0), interruption);
        } catch (CancellationException e) {
            throw new CallRefused(
                    "stopped; the archives that were finished are whole, and the same command continues from there");
        }
        around.console().print(CliOptions.isJson(call) ? document(copied).text() : report(copied));
        copied.stream().flatMap(one -> one.fault().stream()).forEach(around.console()::complain);
        return copied.stream().allMatch(one -> one.fault().isEmpty()) ? Exit.DONE : Exit.NOT_ALL;
    }

    private static String report(List<Copied> copied) {
        if (copied.isEmpty()) {
            return "There is no visit in these folders.\n";
        }
        StringBuilder out = new StringBuilder();
        for (Copied one : copied) {
            String what = one.fault().isPresent() ? "does not hold" : one.made() ? "made" : "there already";
            out.append(one.visit()).append(": ").append(what);
            one.archive().ifPresent(file -> out.append(", ").append(file));
            out.append('\n');
        }
        long held = copied.stream().filter(one -> one.fault().isEmpty()).count();
        return out.append(held)
                .append(" of ")
                .append(CliText.count(copied.size(), "visit", "visits"))
                .append(" archived and read again, file by file.\n")
                .toString();
    }

    private static JsonObject document(List<Copied> copied) {
        return new JsonObject()
                .put("ok", copied.stream().allMatch(one -> one.fault().isEmpty()))
                .put(
                        "visits",
                        copied.stream()
                                .map(one -> new JsonObject()
                                        .put("visit", one.visit())
                                        .put("archive", one.archive())
                                        .put("made", one.made())
                                        .put("fault", one.fault()))
                                .toList());
    }
}
