package quarterlight.ui.library;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import java.util.stream.Stream;
import quarterlight.ui.kit.Settings;

/** The folders that the user named as homes of visits, as the settings keep them. Pure functions. */
final class LibraryFolders {
    private static final String KEY = "library.folder.";

    private LibraryFolders() {}

    /** Those that were named; before any was, those in which the visits opened of late lie. */
    static List<Path> of(Settings settings) {
        if (settings.values().keySet().stream().noneMatch(key -> key.startsWith(KEY))) {
            return settings.recent().stream()
                    .map(Path::getParent)
                    .filter(Objects::nonNull)
                    .distinct()
                    .toList();
        }
        List<Path> folders = new ArrayList<>();
        new TreeMap<>(settings.values()).forEach((key, value) -> {
            if (key.startsWith(KEY) && !value.isEmpty()) {
                path(value).forEach(folders::add);
            }
        });
        return folders;
    }

    private static Stream<Path> path(String text) {
        try {
            return Stream.of(Path.of(text));
        } catch (InvalidPathException e) {
            return Stream.empty();
        }
    }

    /** The settings with these folders; none at all is kept too. */
    static Settings with(Settings settings, List<Path> folders) {
        Map<String, String> values = new TreeMap<>(settings.values());
        values.keySet().removeIf(key -> key.startsWith(KEY));
        values.put(key(0), "");
        for (int i = 0; i < folders.size(); i++) {
            values.put(key(i), folders.get(i).toString());
        }
        return new Settings(values);
    }

    private static String key(int number) {
        return KEY + String.format("%03d", number);
    }
}
