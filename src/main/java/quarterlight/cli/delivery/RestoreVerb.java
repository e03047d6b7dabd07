package quarterlight.cli.delivery;

import java.io.IOException;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParseResult;
import quarterlight.archive.signature.PublicHalf;
import quarterlight.archive.signature.SignatureVerdict;
import quarterlight.archive.signature.SigningKeyFile;
import quarterlight.cli.call.CallRefused;
import quarterlight.cli.call.CliContext;
import quarterlight.cli.call.CliOptions;
import quarterlight.cli.call.Exit;
import quarterlight.cli.call.Interruption;
import quarterlight.cli.call.Verb;
import quarterlight.cli.text.CliText;
import quarterlight.edit.EditRefused;
import quarterlight.edit.archive.Restoring;
import quarterlight.edit.list.VisitLists;
import quarterlight.table.json.JsonObject;

/** {@code restore}: opens an archive again as a visit. */
public final class RestoreVerb implements Verb {
    private final CliContext around;

    public RestoreVerb(CliContext around) {
        this.around = around;
    }

    @Override
    public CommandSpec spec() {
        return CliOptions.verb("restore", "restore a visit from an archive")
                .addPositional(CliOptions.path(0, "FILE.zip", "an archive of a whole visit"))
                .addPositional(CliOptions.path(1, "VISIT", "folder of the visit; must not exist yet"))
                .addOption(CliOptions.json());
    }

    @Override
    public int run(ParseResult call) throws CallRefused, EditRefused, IOException {
        Restoring.Restored restored;
        try (Interruption interruption = Interruption.watched(around.console())) {
            restored = new Restoring(around.visits(), around.zones().get())
                    .restore(CliOptions.pathAt(call, 0), CliOptions.pathAt(call, 1), interruption);
        } catch (CancellationException e) {
            throw new CallRefused("stopped before the end; no visit was made");
        }
        SignatureVerdict signature = new SignatureVerdict(
                restored.signature(), new SigningKeyFile(around.settings()).open(), Optional.empty());
        around.console()
                .print(
                        CliOptions.isJson(call)
                                ? json(restored, signature).text()
                                : report(restored) + signature.text() + "\n");
        if (!restored.ok()) {
            around.console().complain(complaint(restored));
        }
        return restored.ok() ? Exit.DONE : Exit.NOT_ALL;
    }

    private static String complaint(Restoring.Restored restored) {
        String originals = restored.visit() + ": "
                + CliText.count(restored.changed().size(), "original was", "originals were")
                + " changed and " + restored.missing().size() + " missing before the archive was made; ";
        if (restored.leftOut().isEmpty() && restored.faults().isEmpty()) {
            return originals + "the visit was restored as it was archived";
        }
        return originals + CliText.count(restored.leftOut().size(), "thing was", "things were")
                + " left out or set right, " + CliText.count(restored.faults().size(), "thing does", "things do")
                + " not hold together; the visit was restored as far as it could be trusted";
    }

    private static JsonObject json(Restoring.Restored restored, SignatureVerdict signature) {
        return new JsonObject()
                .put("visit", restored.visit())
                .put("photos", restored.photos())
                .put("changed", restored.changed())
                .put("missing", restored.missing())
                .put("left_out", restored.leftOut())
                .put("database", restored.faults())
                .put("lists", restored.lists())
                .put("log_head", restored.head())
                .put("signature", signature.check().state().word())
                .put("key", signature.check().key().map(PublicHalf::fingerprint))
                .put("key_is", signature.whose().map(SignatureVerdict.Whose::word));
    }

    private static String report(Restoring.Restored restored) {
        StringBuilder out = new StringBuilder();
        restored.changed().forEach(file -> out.append("changed: ").append(file).append('\n'));
        restored.missing().forEach(file -> out.append("missing: ").append(file).append('\n'));
        restored.leftOut().forEach(line -> out.append("left out: ").append(line).append('\n'));
        restored.faults()
                .forEach(fault -> out.append("database: ").append(fault).append('\n'));
        if (restored.lists()) {
            out.append("The lists that came with it hold for it, not those of this computer; they lie in ")
                    .append(restored.visit().resolve(VisitLists.FOLDER))
                    .append(".\n");
        }
        restored.head()
                .ifPresent(head ->
                        out.append("Its edit log ends with entry ").append(head).append(".\n"));
        return out.append("Restored ")
                .append(restored.visit())
                .append(", ")
                .append(CliText.count(restored.photos(), "photo", "photos"))
                .append(".\n")
                .toString();
    }
}
