package quarterlight.edit.list;

import static quarterlight.language.Sentences.say;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import quarterlight.edit.EditRefused;
import quarterlight.file.DurableFiles;
import quarterlight.file.PlainFile;
import quarterlight.table.TableUnreadable;
import quarterlight.table.json.JsonObject;
import quarterlight.table.list.UserList;

/**
 * The user's own lists as one file, to be taken to another computer: what visits must bring, the walk, functions to try, date patterns, words of spoken walks,
 * columns of other programs' tables, and sentences written before. Sentences are joined to those that are there; another list takes the place of
 * the one that is there, which stays beside it. Not for the event thread.
 */
public final class ListBundle {
    private static final String FORMAT = "quarterlight lists";
    private static final int VERSION = 1;
    private static final int MAX_BYTES = 32 << 20;
    private static final String PHRASES = "phrases.txt";
    private static final String COLUMNS = "columns";
    private static final List<String> WORDS = List.of("words-parts.csv", "words-cues.csv", "words-homophones.csv");
    private static final Pattern PLAIN_NAME = Pattern.compile("columns/[\\p{L}\\p{N}][\\p{L}\\p{N} ._-]{0,99}");
    private static final String BEFORE = ".before";

    private final Path settings;

    /** @param settings the settings folder; need not exist */
    public ListBundle(Path settings) {
        this.settings = Objects.requireNonNull(settings, "settings");
    }

    /** The document that holds every list of one's own. */
    public String text() throws IOException {
        List<JsonObject> lists = new ArrayList<>();
        for (Map.Entry<String, String> file : files().entrySet()) {
            lists.add(new JsonObject().put("file", file.getKey()).put("text", file.getValue()));
        }
        return new JsonObject()
                .put("format", FORMAT)
                .put("format_version", VERSION)
                .put("lists", lists)
                .text();
    }

    /** The names of the files that {@link #text} holds. */
    public List<String> names() throws IOException {
        return List.copyOf(files().keySet());
    }

    private Map<String, String> files() throws IOException {
        Map<String, String> files = new LinkedHashMap<>();
        for (String name : plainNames()) {
            if (Files.isRegularFile(settings.resolve(name))) {
                files.put(name, PlainFile.text(settings.resolve(name), MAX_BYTES));
            }
        }
        Path columns = settings.resolve(COLUMNS);
        if (Files.isDirectory(columns)) {
            Map<String, String> profiles = new TreeMap<>();
            try (Stream<Path> found = Files.list(columns)) {
                for (Path profile : found.filter(Files::isRegularFile).toList()) {
                    String name = COLUMNS + "/" + profile.getFileName();
                    if (PLAIN_NAME.matcher(name).matches()) {
                        profiles.put(name, PlainFile.text(profile, MAX_BYTES));
                    }
                }
            }
            files.putAll(profiles);
        }
        return files;
    }

    private static List<String> plainNames() {
        List<String> names = new ArrayList<>();
        for (UserList list : UserList.values()) {
            names.add(list.file());
        }
        names.addAll(WORDS);
        names.add(PHRASES);
        return names;
    }

    /**
     * Takes the lists of such a document in: all of them or, if one cannot be used, none.
     *
     * @return the names of the files taken in
     * @throws EditRefused if the file is no such document or one of its lists cannot be used
     */
    public List<String> take(Path from) throws EditRefused, IOException {
        Map<String, String> files = read(from);
        for (Map.Entry<String, String> file : files.entrySet()) {
            require(from, file.getKey(), file.getValue());
        }
        for (Map.Entry<String, String> file : files.entrySet()) {
            keep(file.getKey(), file.getValue());
        }
        return List.copyOf(files.keySet());
    }

    private static Map<String, String> read(Path from) throws EditRefused, IOException {
        JsonNode document;
        try {
            document = new ObjectMapper().readTree(PlainFile.text(from, MAX_BYTES));
        } catch (JsonProcessingException e) {
            throw refused(from, say("refused.lists.none"));
        }
        if (!document.path("format").asText().equals(FORMAT)) {
            throw refused(from, say("refused.lists.none"));
        }
        if (document.path("format_version").asInt() > VERSION) {
            throw refused(from, say("refused.lists.later"));
        }
        Map<String, String> files = new LinkedHashMap<>();
        for (JsonNode list : document.path("lists")) {
            String name = list.path("file").asText();
            if (!plainNames().contains(name) && !PLAIN_NAME.matcher(name).matches()) {
                throw refused(from, say("refused.lists.unknown", name));
            }
            files.put(name, list.path("text").asText());
        }
        return files;
    }

    private static EditRefused refused(Path from, String why) {
        return new EditRefused(from.toString(), from + " " + why);
    }

    private static Optional<UserList> list(String name) {
        return Stream.of(UserList.values())
                .filter(list -> list.file().equals(name))
                .findFirst();
    }

    private static void require(Path from, String name, String text) throws EditRefused, IOException {
        Optional<UserList> list = list(name);
        if (list.isEmpty()) {
            return;
        }
        Path tried = Files.createTempFile("quarterlight-", ".csv");
        try {
            Files.writeString(tried, text);
            list.get().read(tried);
        } catch (TableUnreadable e) {
            throw refused(
                    from, say("refused.lists.unusable", name, e.getMessage().replace(tried + " ", "")));
        } finally {
            Files.deleteIfExists(tried);
        }
    }

    private void keep(String name, String text) throws IOException {
        Path file = settings.resolve(name);
        Files.createDirectories(file.getParent());
        String kept = text;
        if (Files.isRegularFile(file)) {
            String there = PlainFile.text(file, MAX_BYTES);
            if (name.equals(PHRASES)) {
                Set<String> lines = new LinkedHashSet<>(text.lines().toList());
                lines.addAll(there.lines().toList());
                kept = String.join("\n", lines) + "\n";
            } else if (!there.equals(text)) {
                byte[] before = there.getBytes(StandardCharsets.UTF_8);
                DurableFiles.write(settings.resolve(name + BEFORE), out -> out.write(before));
            }
        }
        DurableFiles.text(file, kept);
    }
}
