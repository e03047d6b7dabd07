package quarterlight.cli.delivery;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParseResult;
import quarterlight.archive.ArchiveAudit;
import quarterlight.archive.BagRefused;
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
import quarterlight.edit.archive.ArchiveProof;
import quarterlight.photo.originals.OriginalsAudit;
import quarterlight.store.StoreAudit;
import quarterlight.store.VisitStore;
import quarterlight.store.problem.VisitProblem;
import quarterlight.table.json.JsonObject;
import quarterlight.task.Progress;
import quarterlight.visit.VisitRecord;
import quarterlight.visit.photo.Photo;

/** {@code audit}: every original against its hash, and the database or the archive against itself. */
public final class AuditVerb implements Verb {
    private static final String KEY = "--key";

    private final CliContext around;

    public AuditVerb(CliContext around) {
        this.around = around;
    }

    @Override
    public CommandSpec spec() {
        return CliOptions.verb("audit", "check every original against its hash, and the database for consistency")
                .addPositional(CliOptions.path(0, "VISIT|FILE.zip", "folder of the visit, or an archive"))
                .addOption(CliOptions.text(
                        KEY,
                        "FINGERPRINT",
                        "of an archive: the key that it must be signed with, as you know it from the inspector"))
                .addOption(CliOptions.json());
    }

    @Override
    public int run(ParseResult call) throws CallRefused, VisitProblem, IOException {
        Path path = CliOptions.pathAt(call, 0);
        if (Files.isRegularFile(path)) {
            return archive(path, call);
        }
        try (VisitStore store = around.visits().forReading(path)) {
            VisitRecord visit = store.read();
            OriginalsAudit originals = OriginalsAudit.of(
                    path, visit.photos().stream().map(Photo::file).toList(), Progress.NONE);
            List<String> database = StoreAudit.of(store);
            Optional<String> head = store.logHead();
            boolean ok = originals.ok() && database.isEmpty();
            around.console()
                    .print(
                            CliOptions.isJson(call)
                                    ? json(ok, originals, database, head).text()
                                    : report(ok, visit.photos().size(), originals, database, head));
            if (!ok) {
                around.console().complain(complaint(path, originals, database));
            }
            return ok ? Exit.DONE : Exit.NOT_ALL;
        }
    }

    private int archive(Path file, ParseResult call) throws CallRefused, IOException {
        ArchiveProof proof;
        try (Interruption interruption = Interruption.watched(around.console())) {
            proof = ArchiveProof.of(file, around.visits(), around.zones().get(), interruption);
        } catch (BagRefused e) {
            throw new CallRefused(e.getMessage());
        }
        ArchiveAudit audit = proof.bag();
        SignatureVerdict signature = new SignatureVerdict(
                proof.signature(),
                new SigningKeyFile(around.settings()).open(),
                Optional.ofNullable(call.matchedOptionValue(KEY, null)));
        boolean ok = proof.ok() && signature.ok();
        around.console()
                .print(
                        CliOptions.isJson(call)
                                ? json(ok, proof, signature).text()
                                : report(proof) + signature.text() + "\n");
        if (!signature.ok()) {
            around.console().complain(file + ": " + signature.text());
        }
        if (!proof.bag().ok() || !proof.database().isEmpty()) {
            around.console()
                    .complain(file + ": " + CliText.count(audit.changed().size(), "file", "files") + " changed, "
                            + audit.missing().size() + " missing, "
                            + audit.unlisted().size() + " added, "
                            + CliText.count(
                                    audit.faults().size() + proof.database().size(), "other fault", "other faults")
                            + "; use another copy of the archive");
        }
        return ok ? Exit.DONE : Exit.NOT_ALL;
    }

    private static JsonObject json(boolean ok, ArchiveProof proof, SignatureVerdict signature) {
        ArchiveAudit audit = proof.bag();
        return new JsonObject()
                .put("ok", ok)
                .put("changed", audit.changed())
                .put("missing", audit.missing())
                .put("unreferenced", audit.unlisted())
                .put("archive", audit.faults())
                .put("database", proof.database())
                .put("log_head", proof.head())
                .put("signature", signature.check().state().word())
                .put("key", signature.check().key().map(PublicHalf::fingerprint))
                .put("key_is", signature.whose().map(SignatureVerdict.Whose::word))
                .put("signed_by", signature.check().signer())
                .put("signed_at", signature.check().time())
                .put("files", audit.files())
                .put("originals", audit.originals());
    }

    private static String report(ArchiveProof proof) {
        ArchiveAudit audit = proof.bag();
        StringBuilder out = new StringBuilder();
        audit.changed().forEach(file -> out.append("changed: ").append(file).append('\n'));
        audit.missing().forEach(file -> out.append("missing: ").append(file).append('\n'));
        audit.unlisted().forEach(file -> out.append("added: ").append(file).append('\n'));
        audit.faults().forEach(fault -> out.append("archive: ").append(fault).append('\n'));
        proof.database().forEach(fault -> out.append("database: ").append(fault).append('\n'));
        if (audit.ok() && proof.database().isEmpty()) {
            out.append("All ").append(CliText.count(audit.files(), "file is", "files are"));
            out.append(" as archived");
            out.append(
                    audit.originals() == 0
                            ? "; it holds no originals.\n"
                            : ", and every original is unchanged, " + audit.originals() + " in all.\n");
            proof.head().ifPresent(head -> out.append(proves(head)));
        }
        return out.toString();
    }

    /** What holds, and what it does not prove. */
    private static String proves(String head) {
        return "The log ends with entry " + head + ".\n"
                + "That nothing was changed since a certain day is proved only to who"
                + " noted the end of the log on that day: it must still stand in the"
                + " log. That what was entered is true, no audit proves.\n";
    }

    private static JsonObject json(boolean ok, OriginalsAudit originals, List<String> database, Optional<String> head) {
        return new JsonObject()
                .put("ok", ok)
                .put("changed", originals.changed())
                .put("missing", originals.missing())
                .put("unreadable", originals.unreadable())
                .put("unreferenced", originals.unreferenced())
                .put("database", database)
                .put("log_head", head);
    }

    private static String report(
            boolean ok, int photos, OriginalsAudit originals, List<String> database, Optional<String> head) {
        StringBuilder out = new StringBuilder();
        originals.changed().forEach(file -> out.append("changed: ").append(file).append('\n'));
        originals.missing().forEach(file -> out.append("missing: ").append(file).append('\n'));
        originals
                .unreadable()
                .forEach(file -> out.append("cannot be read: ").append(file).append('\n'));
        originals.unreferenced().forEach(file -> out.append("remark: no photo refers to ")
                .append(file)
                .append('\n'));
        database.forEach(fault -> out.append("database: ").append(fault).append('\n'));
        if (ok) {
            out.append("All ").append(CliText.count(photos, "original is", "originals are"));
            out.append(" unchanged since they were added, and the database agrees with its edit log.\n");
            head.ifPresent(end -> out.append(proves(end)));
        }
        return out.toString();
    }

    private static String complaint(Path visit, OriginalsAudit originals, List<String> database) {
        return visit + ": " + CliText.count(originals.changed().size(), "original", "originals") + " changed, "
                + originals.missing().size() + " missing, "
                + originals.unreadable().size() + " that cannot be read, "
                + CliText.count(database.size(), "fault", "faults")
                + " in the database; get the files back from an archive or the camera's card";
    }
}
