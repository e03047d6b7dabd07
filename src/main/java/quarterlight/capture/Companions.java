package quarterlight.capture;

import java.time.Duration;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiPredicate;
import quarterlight.visit.VisitRecord;
import quarterlight.visit.photo.MediaKind;
import quarterlight.visit.photo.Photo;
import quarterlight.visit.photo.PhotoFile;
import quarterlight.visit.photo.PhotoId;

/**
 * Photos and the short films that a phone took with them, each tied to the other.
 * <p>Where both files carry a content identifier, it alone decides. Else they belong together if their names are the same up to the ending, the
 * film is short, and their corrected times lie within seconds. Each photo and film has one companion at most; the first in order counts.
 */
public final class Companions {
    /** Common practice, without a source: such films are about three seconds long and begin before the photo. */
    public static final Duration NEAR = Duration.ofSeconds(5);

    private static final double MAX_SECONDS = 10;

    private final Map<PhotoId, PhotoId> pairs;

    private Companions(Map<PhotoId, PhotoId> pairs) {
        this.pairs = pairs;
    }

    public static Companions of(VisitRecord visit, CorrectedTimes times) {
        Map<PhotoId, PhotoId> pairs = new LinkedHashMap<>();
        tie(visit, pairs, (photo, film) -> sameContent(photo.file(), film.file()));
        tie(
                visit,
                pairs,
                (photo, film) -> !bothSay(photo.file(), film.file())
                        && stem(photo.file()).equals(stem(film.file()))
                        && film.file().seconds().orElse(0) <= MAX_SECONDS
                        && near(times.of(photo.id()), times.of(film.id())));
        return new Companions(pairs);
    }

    private static void tie(VisitRecord visit, Map<PhotoId, PhotoId> pairs, BiPredicate<Photo, Photo> together) {
        Map<String, List<Photo>> films = new LinkedHashMap<>();
        Set<PhotoId> free = new HashSet<>();
        for (Photo film : visit.photos()) {
            if (film.file().kind() == MediaKind.FILM && !pairs.containsKey(film.id())) {
                keys(film.file()).forEach(key -> films.computeIfAbsent(key, k -> new ArrayList<>())
                        .add(film));
                free.add(film.id());
            }
        }
        for (Photo photo : visit.photos()) {
            if (photo.file().kind() == MediaKind.PHOTO && !pairs.containsKey(photo.id())) {
                keys(photo.file()).stream()
                        .flatMap(key -> films.getOrDefault(key, List.of()).stream())
                        .filter(film -> free.contains(film.id()) && together.test(photo, film))
                        .findFirst()
                        .ifPresent(film -> {
                            free.remove(film.id());
                            pairs.put(photo.id(), film.id());
                            pairs.put(film.id(), photo.id());
                        });
            }
        }
    }

    /** Under these a companion can be found, so that not each is compared with each. */
    private static List<String> keys(PhotoFile file) {
        List<String> keys = new ArrayList<>();
        file.contentId().ifPresent(id -> keys.add("content " + id));
        keys.add("stem " + stem(file));
        return keys;
    }

    private static boolean bothSay(PhotoFile photo, PhotoFile film) {
        return photo.contentId().isPresent() && film.contentId().isPresent();
    }

    private static boolean sameContent(PhotoFile photo, PhotoFile film) {
        return bothSay(photo, film) && photo.contentId().equals(film.contentId());
    }

    private static boolean near(Optional<CorrectedTime> photo, Optional<CorrectedTime> film) {
        return photo.isPresent()
                && film.isPresent()
                && Duration.between(photo.get().utc(), film.get().utc()).abs().compareTo(NEAR) <= 0;
    }

    private static String stem(PhotoFile file) {
        int dot = file.name().lastIndexOf('.');
        return (dot > 0 ? file.name().substring(0, dot) : file.name()).toLowerCase(Locale.ROOT);
    }

    /** The film of a photo, or the photo of a film. */
    public Optional<PhotoId> of(PhotoId photo) {
        return Optional.ofNullable(pairs.get(photo));
    }
}
