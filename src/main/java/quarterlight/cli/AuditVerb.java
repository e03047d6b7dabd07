package quarterlight.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParseResult;
import quarterlight.photo.OriginalsAudit;
import quarterlight.store.StoreAudit;
import quarterlight.store.VisitProblem;
import quarterlight.store.VisitStore;
import quarterlight.table.JsonObject;
import quarterlight.task.Progress;
import quarterlight.visit.Photo;
import quarterlight.visit.VisitRecord;

/** {@code audit}: every original against its hash, and the database against itself. */
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
            throw new CallRefused(
                    "the audit of an archive such as " + path + " is not built yet; name the folder of a visit");
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
