package quarterlight.edit.spoken;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collection;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import quarterlight.edit.EditRefused;
import quarterlight.file.DurableFiles;
import quarterlight.table.TableUnreadable;
import quarterlight.table.list.LexiconTable;
import quarterlight.words.Draft;
import quarterlight.words.weigh.Weights;

/**
 * Lets confirmed, changed and dropped drafts teach how likely the next ones are. What is learned lies in one small file of the settings, apart
 * from the program's weights and from every visit: it can be read, and forgotten. A visit never changes by it.
 */
public final class DraftTeaching {
    private static final double LEAST = 0.0005;

    private final Path settings;

    /** @param settings the folder of the user's own lists of words */
    public DraftTeaching(Path settings) {
        this.settings = Objects.requireNonNull(settings, "settings");
    }

    /**
     * Takes in what became of some drafts: one small step for each.
     *
     * @param right drafts kept as they stood
     * @param wrong drafts dropped, or changed before they were kept
     * @throws EditRefused if what was learned cannot be read or written; nothing was learned then
     */
    public void teach(Collection<Draft> right, Collection<Draft> wrong) throws EditRefused {
        if (right.isEmpty() && wrong.isEmpty()) {
            return;
        }
        Map<String, Double> learned = learned();
        Weights shipped = LexiconTable.weights();
        Weights now = shipped.plus(learned);
        for (Draft draft : right) {
            now = now.taught(draft, true);
        }
        for (Draft draft : wrong) {
            now = now.taught(draft, false);
        }
        Map<String, Double> moved = new TreeMap<>();
        now.byFeature().forEach((name, weight) -> {
            double by = weight - shipped.byFeature().getOrDefault(name, 0.0);
            if (Math.abs(by) >= LEAST) {
                moved.put(name, by);
            }
        });
        write(moved);
    }

    /** How far each weight was moved, by feature. */
    public Map<String, Double> learned() throws EditRefused {
        try {
            return LexiconTable.learned(settings);
        } catch (TableUnreadable e) {
            throw new EditRefused("words", e.getMessage());
        }
    }

    /** Forgets all that was learned: from now on only the program's weights hold. */
    public void forget() throws EditRefused {
        try {
            Files.deleteIfExists(file());
        } catch (IOException e) {
            throw refused("deleted");
        }
    }

    private void write(Map<String, Double> moved) throws EditRefused {
        StringBuilder text = new StringBuilder("feature,weight\n");
        moved.forEach((name, by) -> text.append(String.format(Locale.ROOT, "%s,%.4f\n", quoted(name), by)));
        try {
            DurableFiles.text(file(), text.toString());
        } catch (IOException e) {
            throw refused("written");
        }
    }

    private static String quoted(String name) {
        return name.contains(",") || name.contains("\"") ? '"' + name.replace("\"", "\"\"") + '"' : name;
    }

    private Path file() {
        return settings.resolve(LexiconTable.LEARNED);
    }

    private EditRefused refused(String verb) {
        return new EditRefused(
                "words",
                file() + " cannot be " + verb + "; check the rights of its folder. The visit is as it should be.");
    }
}
