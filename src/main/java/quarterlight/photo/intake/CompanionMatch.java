package quarterlight.photo.intake;

import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import quarterlight.photo.MediaType;
import quarterlight.photo.intake.FolderScan.Found;
import quarterlight.visit.photo.MediaKind;

/**
 * What a file of words or a sidecar is about, by its name in the same folder: IMG_1.xmp and IMG_1.JPG.xmp are about IMG_1.JPG, walk.vtt and
 * walk.en.vtt about walk.mp4. Of several files that bear the name the first in order counts.
 */
final class CompanionMatch {
    private final Map<Map.Entry<Optional<Path>, String>, Path> pictures = new HashMap<>();
    private final Map<Map.Entry<Optional<Path>, String>, Path> spoken = new HashMap<>();

    CompanionMatch(List<Found> media) {
        for (Found found : media) {
            MediaKind kind = found.type().kind();
            if (kind.isCameras()) {
                put(pictures, found.file());
            }
            if (kind.hasMoments()) {
                put(spoken, found.file());
            }
        }
    }

    /** A name within a folder, which need not be one that this computer's setting for file names can write. */
    private static Map.Entry<Optional<Path>, String> beside(Path file, String name) {
        return Map.entry(Optional.ofNullable(file.getParent()), name);
    }

    private static void put(Map<Map.Entry<Optional<Path>, String>, Path> files, Path file) {
        String name = name(file);
        files.putIfAbsent(beside(file, name), file);
        files.putIfAbsent(beside(file, stem(name)), file);
    }

    /** Whether files of a format lie beside others. */
    static boolean isBeside(MediaType type) {
        return type.kind() == MediaKind.WORDS || type.kind() == MediaKind.SIDECAR;
    }

    Optional<Path> of(Found found) {
        Map<Map.Entry<Optional<Path>, String>, Path> files = found.type().kind() == MediaKind.WORDS ? spoken : pictures;
        String name = stem(name(found.file()));
        return Optional.ofNullable(files.get(beside(found.file(), name)))
                .or(() -> Optional.ofNullable(files.get(beside(found.file(), stem(name)))));
    }

    private static String name(Path file) {
        return String.valueOf(file.getFileName()).toLowerCase(Locale.ROOT);
    }

    private static String stem(String name) {
        int dot = name.lastIndexOf('.');
        return dot > 0 ? name.substring(0, dot) : name;
    }
}
