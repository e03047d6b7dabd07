package quarterlight.edit.spoken;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import quarterlight.visit.VisitRecord;
import quarterlight.visit.photo.MediaKind;
import quarterlight.visit.photo.Photo;

/** The film or memo whose words a file holds. */
public final class SpokenAbout {
    private SpokenAbout() {}

    /** What a file of words of the visit is tied to, if that is in the visit. */
    static Optional<Photo> of(Photo words, VisitRecord visit) {
        return words.file().more().beside().flatMap(sha256 -> visit.photos().stream()
                .filter(photo -> photo.file().sha256().equals(sha256))
                .findFirst());
    }

    public static boolean speaks(Photo photo) {
        return photo.file().kind() == MediaKind.FILM || photo.file().kind() == MediaKind.SOUND;
    }

    /** The films and memos of a visit that bear the name of a file of words: walk.vtt and walk.en.vtt bear that of walk.mp4. */
    static List<Photo> named(String words, VisitRecord visit) {
        String stem = stem(words.toLowerCase(Locale.ROOT));
        List<Photo> near = withStem(stem, visit);
        return near.isEmpty() ? withStem(stem(stem), visit) : near;
    }

    private static List<Photo> withStem(String stem, VisitRecord visit) {
        return visit.photos().stream()
                .filter(SpokenAbout::speaks)
                .filter(photo -> {
                    String name = photo.file().name().toLowerCase(Locale.ROOT);
                    return name.equals(stem) || stem(name).equals(stem);
                })
                .toList();
    }

    private static String stem(String name) {
        int dot = name.lastIndexOf('.');
        return dot > 0 ? name.substring(0, dot) : name;
    }
}
