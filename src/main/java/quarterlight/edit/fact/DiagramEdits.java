package quarterlight.edit.fact;

import static quarterlight.language.Sentences.say;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import quarterlight.car.ZoneCatalog;
import quarterlight.car.body.Body;
import quarterlight.diagram.file.DiagramFile;
import quarterlight.diagram.file.DiagramRefused;
import quarterlight.diagram.file.VisitDiagram;
import quarterlight.edit.EditRefused;
import quarterlight.file.DurableFiles;
import quarterlight.store.VisitStore;
import quarterlight.store.problem.VisitProblem;
import quarterlight.visit.VisitChoices;
import quarterlight.visit.fact.Facts;

/**
 * Chooses the body diagram of a visit: one of the inspector's own, by the name of a file in the folder of own diagrams or by the path of any
 * file, or {@link #SHIPPED} for the program's. The chosen file is checked and copied into the folder of the visit, so that the visit needs
 * nothing outside itself.
 */
public final class DiagramEdits {
    /** The key of the fact. */
    public static final String KEY = Facts.DIAGRAM.key();
    /** The word for the program's own diagram. */
    public static final String SHIPPED = VisitChoices.SHIPPED;

    /** The folder of own diagrams within the folder of settings. */
    public static final String OWN = "diagrams";

    private static final String ENDING = ".svg";

    private final Path folder;
    private final ZoneCatalog catalog;

    /** @param folder of own diagrams; need not exist */
    public DiagramEdits(Path folder, ZoneCatalog catalog) {
        this.folder = folder;
        this.catalog = catalog;
    }

    /** The names that can be chosen from the folder of own diagrams, sorted; none if there is no such folder. */
    public List<String> names() {
        if (!Files.isDirectory(folder)) {
            return List.of();
        }
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(file -> String.valueOf(file.getFileName()))
                    .filter(name -> name.endsWith(ENDING) && name.length() > ENDING.length())
                    .map(name -> name.substring(0, name.length() - ENDING.length()))
                    .sorted()
                    .toList();
        } catch (IOException e) {
            return List.of();
        }
    }

    /**
     * Sets facts of which one may be the diagram, as one edit. A diagram that is refused changes nothing.
     *
     * @return remarks, in sentences, on what no longer fits
     */
    public List<String> set(VisitStore store, FactEdits facts, Map<String, String> values)
            throws EditRefused, VisitProblem {
        String wanted = values.getOrDefault(KEY, SHIPPED).strip();
        if (wanted.isEmpty() || wanted.equals(SHIPPED)) {
            return facts.set(store, values);
        }
        Body body = facts.apply(store.read().facts(), values).car().body();
        Path file = find(wanted);
        try {
            DiagramFile.own(file, body, catalog);
        } catch (DiagramRefused e) {
            throw new EditRefused(KEY, e.getMessage());
        }
        Map<String, String> named = new LinkedHashMap<>(values);
        try {
            byte[] drawing = Files.readAllBytes(file);
            String name = freeName(store.folder().root(), nameOf(file), drawing);
            named.put(KEY, name);
            Path target = VisitDiagram.file(store.folder().root(), name);
            boolean isNew = !Files.exists(target);
            if (isNew) {
                DurableFiles.write(target, out -> out.write(drawing));
            }
            boolean done = false;
            try {
                List<String> remarks = facts.set(store, named);
                done = true;
                return remarks;
            } finally {
                if (!done && isNew) {
                    Files.deleteIfExists(target);
                }
            }
        } catch (IOException e) {
            throw new EditRefused(
                    KEY, say("refused.diagram.copy", store.folder().root().resolve(VisitDiagram.FOLDER)));
        }
    }

    /** The name, numbered where the visit keeps another drawing under it, so that undo brings back the drawing of before. */
    private static String freeName(Path visit, String wanted, byte[] drawing) throws IOException {
        String name = wanted;
        for (int number = 2; ; number++) {
            Path kept = VisitDiagram.file(visit, name);
            if (!Files.exists(kept) || Arrays.equals(Files.readAllBytes(kept), drawing)) {
                return name;
            }
            name = wanted + "-" + number;
        }
    }

    private Path find(String wanted) throws EditRefused {
        Path named;
        Path given;
        try {
            named = folder.resolve(wanted.endsWith(ENDING) ? wanted : wanted + ENDING);
            given = Path.of(wanted);
        } catch (InvalidPathException e) {
            throw new EditRefused(KEY, say("refused.diagram.name", wanted));
        }
        if (Files.isRegularFile(named)) {
            return named;
        }
        if (Files.isRegularFile(given)) {
            return given;
        }
        List<String> names = names();
        throw new EditRefused(
                KEY,
                "There is no diagram \"" + wanted + "\": no such file, and none of that name in " + folder
                        + ". Give the path of a file, "
                        + (names.isEmpty() ? "" : "one of " + String.join(", ", names) + ", ")
                        + "or " + SHIPPED + ".");
    }

    private static String nameOf(Path file) {
        String name = String.valueOf(file.getFileName());
        return name.endsWith(ENDING) ? name.substring(0, name.length() - ENDING.length()) : name;
    }
}
