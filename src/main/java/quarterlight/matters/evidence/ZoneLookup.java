package quarterlight.matters.evidence;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import quarterlight.car.Zone;
import quarterlight.car.ZoneId;
import quarterlight.car.body.Construction;
import quarterlight.findings.Findings;
import quarterlight.language.Sentences;
import quarterlight.rust.need.Load;
import quarterlight.rust.need.LoadTable;
import quarterlight.visit.photo.PhotoId;

/** Names, loads and photos of the zones of one car. */
final class ZoneLookup {
    private static final Pattern NOT_A_WORD = Pattern.compile("[^\\p{L}\\p{N}]+");
    private static final int MAX_SLUG = 48;

    private final Findings car;
    private final Construction construction;

    ZoneLookup(Findings car) {
        this.car = car;
        this.construction = car.visit().facts().car().body().construction();
    }

    String label(ZoneId zone) {
        return car.catalog().find(zone).map(Zone::label).orElse(zone.value());
    }

    Load load(ZoneId zone) {
        return car.catalog()
                .find(zone)
                .map(known -> LoadTable.of(known, construction))
                .orElse(Load.FITTING);
    }

    /** The photos of a mark's or statement's own, or none; set-aside photos show nothing. */
    List<PhotoId> shown(Stream<PhotoId> photos) {
        return photos.filter(id -> car.visit()
                        .photo(id)
                        .filter(photo -> photo.setAside().isEmpty())
                        .isPresent())
                .distinct()
                .toList();
    }

    List<PhotoId> shown(Optional<PhotoId> photo) {
        return shown(photo.stream());
    }

    /** A text as part of an id: {@code brake-pedal-holds}. */
    static String slug(String text) {
        String slug = NOT_A_WORD.matcher(text.strip().toLowerCase(Locale.ROOT)).replaceAll("-");
        String bare = slug.replaceAll("^-|-$", "");
        return bare.length() <= MAX_SLUG ? bare : bare.substring(0, MAX_SLUG).replaceAll("-[^-]*$", "");
    }

    /** The text with a capital and a full stop. */
    static String sentence(String text) {
        return Sentences.whole(text);
    }
}
