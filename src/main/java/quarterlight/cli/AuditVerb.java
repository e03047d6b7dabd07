package quarterlight.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParseResult;
import quarterlight.archive.ArchiveAudit;
import quarterlight.archive.BagRefused;
import quarterlight.photo.originals.OriginalsAudit;
import quarterlight.store.StoreAudit;
import quarterlight.store.VisitProblem;
import quarterlight.store.VisitStore;
import quarterlight.table.JsonObject;
import quarterlight.task.Progress;
import quarterlight.visit.Photo;
import quarterlight.visit.VisitRecord;

/** {@code audit}: every original against its hash, and the database or the archive against itself. */
final class AuditVerb implements Verb {
    private final Surroundings around;

    AuditVerb(Surroundings around) {
        this.around = around;
    }

    @Override
    public CommandSpec spec() {
        return Words.verb("audit", "every original against its hash, the database against itself")
                .addPositional(Words.path(0, "VISIT|FILE.zip", "folder of the visit, or an archive"))
                .addOption(Words.json());
    }

    @Override
    public int run(ParseResult call) throws CallRefused, VisitProblem, IOException {
        Path path = Words.pathAt(call, 0);
        if (Files.isRegularFile(path)) {
            return archive(path, call);
        }
        try (VisitStore store = VisitStore.openForReading(path)) {
            VisitRecord visit = store.read();
            OriginalsAudit originals = OriginalsAudit.of(
                    path, visit.photos().stream().map(Photo::file).toList(), Progress.NONE);
            List<String> database = StoreAudit.of(store);
            boolean ok = originals.ok() && database.isEmpty();
            around.console()
                    .print(
                            Words.isJson(call)
                                    ? json(ok, originals, database).text()
                                    : report(ok, visit.photos().size(), originals, database));
            if (!ok) {
                around.console().complain(complaint(path, originals, database));
            }
            return ok ? Exit.DONE : Exit.NOT_ALL;
        }
    }

    private int archive(Path file, ParseResult call) throws CallRefused, IOException {
        ArchiveAudit audit;
        try (Interruption interruption = Interruption.watched()) {
            audit = ArchiveAudit.of(file, interruption);
        } catch (BagRefused e) {
            throw new CallRefused(e.getMessage());
        }
        around.console().print(Words.isJson(call) ? json(audit).text() : report(audit));
        if (!audit.ok()) {
            around.console()
                    .complain(file + ": " + Shown.count(audit.changed().size(), "file", "files") + " changed, "
                            + audit.missing().size() + " missing, "
                            + audit.unlisted().size() + " added, "
                            + Shown.count(audit.faults().size(), "other fault", "other faults")
                            + "; take another copy of the archive");
        }
        return audit.ok() ? Exit.DONE : Exit.NOT_ALL;
    }

    private static JsonObject json(ArchiveAudit audit) {
        return new JsonObject()
                .put("ok", audit.ok())
                .put("changed", audit.changed())
                .put("missing", audit.missing())
                .put("unreferenced", audit.unlisted())
                .put("archive", audit.faults())
                .put("files", audit.files())
                .put("originals", audit.originals());
    }

    private static String report(ArchiveAudit audit) {
        StringBuilder out = new StringBuilder();
        audit.changed().forEach(file -> out.append("changed: ").append(file).append('\n'));
        audit.missing().forEach(file -> out.append("missing: ").append(file).append('\n'));
        audit.unlisted().forEach(file -> out.append("added: ").append(file).append('\n'));
        audit.faults().forEach(fault -> out.append("archive: ").append(fault).append('\n'));
        if (audit.ok()) {
            out.append("All ").append(Shown.count(audit.files(), "file is", "files are"));
            out.append(" as archived");
            out.append(
                    audit.originals() == 0
                            ? "; it holds no originals.\n"
                            : ", and every original as taken in, " + audit.originals() + " in all.\n");
        }
        return out.toString();
    }

    private static JsonObject json(boolean ok, OriginalsAudit originals, List<String> database) {
        return new JsonObject()
                .put("ok", ok)
                .put("changed", originals.changed())
                .put("missing", originals.missing())
                .put("unreferenced", originals.unreferenced())
                .put("database", database);
    }

    private static String report(boolean ok, int photos, OriginalsAudit originals, List<String> database) {
        StringBuilder out = new StringBuilder();
        originals.changed().forEach(file -> out.append("changed: ").append(file).append('\n'));
        originals.missing().forEach(file -> out.append("missing: ").append(file).append('\n'));
        originals.unreferenced().forEach(file -> out.append("remark: no photo names ")
                .append(file)
                .append('\n'));
        database.forEach(fault -> out.append("database: ").append(fault).append('\n'));
        if (ok) {
            out.append("All ").append(Shown.count(photos, "original is", "originals are"));
            out.append(" as taken in, and the database agrees with itself.\n");
        }
        return out.toString();
    }

    private static String complaint(Path visit, OriginalsAudit originals, List<String> database) {
        return visit + ": " + Shown.count(originals.changed().size(), "original", "originals") + " changed, "
                + originals.missing().size() + " missing, "
                + Shown.count(database.size(), "fault", "faults")
                + " in the database; take the files from an archive or from the camera's card";
    }
}
