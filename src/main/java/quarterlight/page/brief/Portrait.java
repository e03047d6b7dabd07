package quarterlight.page.brief;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import quarterlight.car.Zone;
import quarterlight.car.ZoneCatalog;
import quarterlight.car.ZoneGroup;
import quarterlight.page.ReportSelection;
import quarterlight.visit.VisitRecord;
import quarterlight.visit.photo.MediaKind;
import quarterlight.visit.photo.PhotoId;
import quarterlight.visit.pin.Pin;
import quarterlight.visit.pin.Recorded;

/** The photo by which a car is known at a glance. Pure functions. */
public final class Portrait {
    /** Words by which a photo of the whole car is known from one of a clock or a paper. */
    private static final Pattern WHOLE = Pattern.compile("\\b(side|front|rear|quarter|overall|whole|car)\\b");

    private Portrait() {}

    /** A photo of the whole car from one side, else one of its outside; empty before any is pinned. */
    public static Optional<PhotoId> of(VisitRecord visit, ZoneCatalog catalog) {
        Set<PhotoId> kept = kept(visit);
        List<Pin> pins = visit.pins().stream()
                .map(Recorded::value)
                .filter(pin -> kept.contains(pin.photo()))
                .toList();
        Stream<PhotoId> ofCar = pins.stream()
                .filter(pin -> pin.zone().value().equals("whole-car"))
                .filter(pin -> WHOLE.matcher(pin.shows().orElse("").toLowerCase(Locale.ROOT))
                        .find())
                .map(Pin::photo);
        Stream<PhotoId> outside = pins.stream()
                .filter(pin -> catalog.find(pin.zone())
                        .map(Zone::group)
                        .filter(group -> group == ZoneGroup.OUTER)
                        .isPresent())
                .map(Pin::photo);
        return Stream.concat(ofCar, outside).findFirst();
    }

    /** The first photo that is kept, whatever it shows. */
    public static Optional<PhotoId> first(VisitRecord visit) {
        return kept(visit).stream().findFirst();
    }

    private static Set<PhotoId> kept(VisitRecord visit) {
        ReportSelection selection = ReportSelection.of(visit);
        Set<PhotoId> kept = new LinkedHashSet<>();
        visit.photos().stream()
                .filter(photo -> photo.setAside().isEmpty() && photo.file().kind() == MediaKind.PHOTO)
                .map(photo -> photo.id())
                .filter(selection::shows)
                .forEach(kept::add);
        return kept;
    }
}
