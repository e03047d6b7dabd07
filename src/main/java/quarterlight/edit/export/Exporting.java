package quarterlight.edit.export;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.Function;
import quarterlight.car.ZoneCatalog;
import quarterlight.edit.EditRefused;
import quarterlight.file.StagingFolder;
import quarterlight.store.VisitStore;
import quarterlight.store.problem.VisitProblem;
import quarterlight.task.Progress;
import quarterlight.visit.VisitRecord;

/** Writes a visit for other programs: tables as CSV, all of it as JSON, the diagram as SVG, and a sidecar per photo. */
public final class Exporting {
    private final ZoneCatalog catalog;
    private final Function<VisitRecord, String> diagram;

    /** @param diagram makes the annotated diagram as SVG */
    public Exporting(ZoneCatalog catalog, Function<VisitRecord, String> diagram) {
        this.catalog = Objects.requireNonNull(catalog, "catalog");
        this.diagram = Objects.requireNonNull(diagram, "diagram");
    }

    /**
     * Makes the folder, whole or not at all.
     *
     * @param withPlaces whether it says where photos were taken
     * @return the files by their paths within the folder
     * @throws EditRefused if something is at the target
     * @throws java.util.concurrent.CancellationException if the progress is cancelled; nothing is left behind
     */
    public List<String> write(VisitStore visit, Path target, boolean withPlaces, Progress progress)
            throws EditRefused, VisitProblem, IOException {
        try (StagingFolder unfinished = Targets.beside(target);
                Snapshot snapshot = Snapshot.of(visit, unfinished.folder())) {
            Path folder = Files.createDirectory(unfinished.folder().resolve("export"));
            VisitTables tables = VisitTables.of(
                    snapshot.store(), catalog, withPlaces ? Disclosure.WHOLE : Disclosure.WITHOUT_PLACES);
            List<String> made = new ArrayList<>();
            for (Map.Entry<String, String> table : tables.csv().entrySet()) {
                write(folder, table.getKey(), table.getValue(), made);
            }
            write(folder, "visit.json", tables.document(), made);
            progress.checkCancelled();
            write(folder, "diagram.svg", diagram.apply(tables.visit()), made);
            Files.createDirectory(folder.resolve("sidecars"));
            for (Map.Entry<String, String> sidecar :
                    Sidecars.of(tables.visit(), catalog, withPlaces).entrySet()) {
                progress.checkCancelled();
                write(folder, "sidecars/" + sidecar.getKey(), sidecar.getValue(), made);
            }
            Targets.deliver(unfinished, folder, target);
            return List.copyOf(made);
        }
    }

    private static void write(Path folder, String name, String text, List<String> made) throws IOException {
        Files.writeString(folder.resolve(name), text, StandardCharsets.UTF_8);
        made.add(name);
    }
}
