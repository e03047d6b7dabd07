package quarterlight.edit.export;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import quarterlight.car.ZoneCatalog;
import quarterlight.edit.EditRefused;
import quarterlight.file.StagingFolder;
import quarterlight.store.VisitStore;
import quarterlight.store.problem.VisitProblem;
import quarterlight.table.drawn.AnnotationText;
import quarterlight.table.drawn.CocoText;
import quarterlight.table.drawn.GeoJsonText;
import quarterlight.table.workbook.WorkbookOut;
import quarterlight.task.Progress;

/** Writes a visit for other programs, in one of several forms. */
public final class Exporting {
    /** Spreadsheets take a CSV file for UTF-8 if it begins with it (The Unicode Standard, 23.8). */
    private static final String BYTE_ORDER_MARK = "\uFEFF";

    private final ZoneCatalog catalog;
    private final Map<String, byte[]> drawings;

    /** @param drawings of the body diagram by file name, where the form has some */
    public Exporting(ZoneCatalog catalog, Map<String, byte[]> drawings) {
        this.catalog = Objects.requireNonNull(catalog, "catalog");
        this.drawings = Map.copyOf(drawings);
    }

    /**
     * Makes the folder or file, whole or not at all.
     *
     * @return the files by their paths within the folder; of a file its name
     * @throws EditRefused if something is at the target
     * @throws java.util.concurrent.CancellationException if the progress is cancelled; nothing is left behind
     */
    public List<String> write(VisitStore visit, Path target, ExportChoice choice, Progress progress)
            throws EditRefused, VisitProblem, IOException {
        try (StagingFolder unfinished = Targets.beside(target)) {
            Map<String, byte[]> files = files(visit, unfinished.folder(), choice, progress);
            Path made = unfinished.folder().resolve("export");
            if (choice.form().isFolder()) {
                Files.createDirectory(made);
                for (Map.Entry<String, byte[]> file : files.entrySet()) {
                    progress.checkCancelled();
                    Path path = made.resolve(file.getKey());
                    Files.createDirectories(path.getParent());
                    Files.write(path, file.getValue());
                }
            } else {
                Files.write(made, files.values().iterator().next());
            }
            Targets.deliver(unfinished, made, target);
            return choice.form().isFolder()
                    ? List.copyOf(files.keySet())
                    : List.of(String.valueOf(target.getFileName()));
        }
    }

    /**
     * The one file of a form that is no folder.
     *
     * @param scratch an empty folder, for a copy of the database
     */
    public byte[] file(VisitStore visit, Path scratch, ExportChoice choice, Progress progress)
            throws VisitProblem, IOException {
        return files(visit, scratch, choice, progress).values().iterator().next();
    }

    private Map<String, byte[]> files(VisitStore visit, Path scratch, ExportChoice choice, Progress progress)
            throws VisitProblem, IOException {
        try (Snapshot snapshot = Snapshot.of(visit, scratch)) {
            VisitTables tables = VisitTables.of(snapshot.store(), catalog, choice.disclosure());
            progress.checkCancelled();
            return switch (choice.form()) {
                case TABLES -> tables(tables, choice);
                case XMP -> sidecars(tables, choice, "");
                case VIEWS -> new LinkedHashMap<>(drawings);
                case XLSX -> Map.of("", workbook(tables));
                case COCO -> Map.of("", bytes(CocoText.of(tables.drawings())));
                case GEOJSON -> Map.of("", bytes(GeoJsonText.of(tables.drawings())));
                case ANNOTATIONS -> Map.of("", bytes(AnnotationText.of(tables.drawings())));
            };
        }
    }

    private Map<String, byte[]> tables(VisitTables tables, ExportChoice choice) {
        Map<String, byte[]> files = new LinkedHashMap<>();
        String mark = choice.marked() ? BYTE_ORDER_MARK : "";
        tables.csv().forEach((name, csv) -> files.put(name, bytes(mark + csv)));
        files.put("visit.json", bytes(tables.document()));
        files.putAll(drawings);
        files.putAll(sidecars(tables, choice, "sidecars/"));
        return files;
    }

    private Map<String, byte[]> sidecars(VisitTables tables, ExportChoice choice, String folder) {
        Map<String, byte[]> files = new LinkedHashMap<>();
        Sidecars.of(tables.visit(), catalog, choice.disclosure() == Disclosure.WHOLE)
                .forEach((name, xmp) -> files.put(folder + name, bytes(xmp)));
        return files;
    }

    private static byte[] workbook(VisitTables tables) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        WorkbookOut.write(tables.sheets(), out);
        return out.toByteArray();
    }

    private static byte[] bytes(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }
}
