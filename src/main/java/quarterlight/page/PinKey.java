package quarterlight.page;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import quarterlight.capture.CorrectedTimes;
import quarterlight.car.ZoneCatalog;
import quarterlight.car.ZoneId;
import quarterlight.diagram.BodyDiagram;
import quarterlight.diagram.ZonePlaces;
import quarterlight.diagram.ink.PinMark;
import quarterlight.findings.Findings;
import quarterlight.visit.VisitRecord;
import quarterlight.visit.photo.Photo;
import quarterlight.visit.photo.PhotoId;
import quarterlight.visit.pin.Pin;
import quarterlight.visit.pin.RecordId;
import quarterlight.visit.pin.Recorded;
import quarterlight.visit.pin.ViewPoint;

/**
 * The pins of a visit with what the key says of each. A pin bears the number of its photo, which the photo got when it was taken in and
 * keeps for good; later moments of one film add a letter in the order in which they were pinned. Photos set aside are left out.
 */
public final class PinKey {
    private static final int LETTERS = 26;

    /**
     * One pin in the key.
     *
     * @param number of its photo, as on the diagram
     * @param pin its row
     * @param point where its disc points to; empty for a zone that stands in no view
     * @param zone the zone's name
     * @param text what it shows, and the caption
     * @param time day and corrected time, or empty text
     * @param file the photo's name
     * @param value the pin itself
     */
    public record Entry(
            String number,
            RecordId pin,
            PhotoId photo,
            Optional<ViewPoint> point,
            String zone,
            String text,
            String time,
            String file,
            Pin value) {}

    /** The key of a visit without pins. */
    public static final PinKey NONE = new PinKey(List.of());

    private final List<Entry> entries;

    private PinKey(List<Entry> entries) {
        this.entries = List.copyOf(entries);
    }

    /** The key as the pages show it. */
    public static PinKey of(Findings car, BodyDiagram diagram) {
        return of(car, diagram, ZonePlaces.of(diagram));
    }

    /** The key as the pages show it, without what the inspector left out; numbers are those of the window. */
    public static PinKey of(Findings car, BodyDiagram diagram, ZonePlaces places) {
        return shown(car.visit(), car.times(), car.catalog(), diagram, places);
    }

    /** The same of a visit of which nothing was worked out yet but the times. */
    public static PinKey shown(
            VisitRecord visit, CorrectedTimes times, ZoneCatalog catalog, BodyDiagram diagram, ZonePlaces places) {
        ReportSelection selection = ReportSelection.of(visit);
        return new PinKey(of(visit, times, catalog, diagram, places).entries.stream()
                .filter(entry -> selection.shows(entry.photo())
                        && selection.shows(entry.value().zone()))
                .toList());
    }

    /** The key of a visit of which nothing was worked out yet but the times. */
    public static PinKey of(
            VisitRecord visit, CorrectedTimes times, ZoneCatalog catalog, BodyDiagram diagram, ZonePlaces places) {
        Map<PhotoId, Photo> photos = new HashMap<>();
        visit.photos().stream()
                .filter(photo -> photo.setAside().isEmpty())
                .forEach(photo -> photos.put(photo.id(), photo));
        Moments moments = new Moments();
        List<Recorded<Pin>> pins = visit.pins().stream()
                .filter(pin -> photos.containsKey(pin.value().photo()))
                .toList();
        Map<RecordId, String> numbers = new HashMap<>();
        pins.forEach(pin -> numbers.put(pin.id(), moments.number(pin.value())));
        Map<ZoneId, Optional<ViewPoint>> middles = new HashMap<>();
        List<Entry> entries = new ArrayList<>();
        for (Recorded<Pin> row : sorted(pins)) {
            Pin pin = row.value();
            entries.add(entry(
                    numbers.get(row.id()),
                    row,
                    pin.point().or(() -> middles.computeIfAbsent(pin.zone(), zone -> places.pointFor(diagram, zone))),
                    catalog,
                    times,
                    photos.get(pin.photo())));
        }
        return new PinKey(entries);
    }

    private static List<Recorded<Pin>> sorted(List<Recorded<Pin>> pins) {
        return pins.stream()
                .sorted(Comparator.comparing(pin -> pin.value().photo()))
                .toList();
    }

    private static Entry entry(
            String number,
            Recorded<Pin> row,
            Optional<ViewPoint> point,
            ZoneCatalog catalog,
            CorrectedTimes times,
            Photo photo) {
        Pin pin = row.value();
        return new Entry(
                number,
                row.id(),
                pin.photo(),
                point,
                catalog.get(pin.zone()).label(),
                Stream.of(pin.shows(), pin.caption()).flatMap(Optional::stream).collect(Collectors.joining(": ")),
                CaptureTimeText.words(times, pin.photo()),
                photo.file().name(),
                pin);
    }

    /** The key with one more pin, the same as if the whole key were made anew. */
    public PinKey with(
            Recorded<Pin> row,
            Photo photo,
            CorrectedTimes times,
            ZoneCatalog catalog,
            BodyDiagram diagram,
            ZonePlaces places) {
        if (photo.setAside().isPresent()) {
            return this;
        }
        Moments moments = new Moments();
        entries.forEach(entry -> moments.number(entry.value()));
        Pin pin = row.value();
        List<Entry> all = new ArrayList<>(entries);
        int at = (int) entries.stream()
                .filter(entry -> entry.photo().compareTo(photo.id()) <= 0)
                .count();
        all.add(
                at,
                entry(
                        moments.number(pin),
                        row,
                        pin.point().or(() -> places.pointFor(diagram, pin.zone())),
                        catalog,
                        times,
                        photo));
        return new PinKey(all);
    }

    /** The moments of each film that are pinned, in the order in which they were. */
    private static final class Moments {
        private final Map<PhotoId, List<OptionalDouble>> known = new HashMap<>();

        String number(Pin pin) {
            List<OptionalDouble> moments = known.computeIfAbsent(pin.photo(), photo -> new ArrayList<>());
            if (!moments.contains(pin.at())) {
                moments.add(pin.at());
            }
            return numbered(pin.photo(), moments.indexOf(pin.at()));
        }
    }

    /** The number of a photo; of a further moment of a film with a letter: 12, 12b, 12c, and after z 12-27. */
    static String numbered(PhotoId photo, int moment) {
        String letter =
                moment == 0 ? "" : moment < LETTERS ? String.valueOf((char) ('a' + moment)) : "-" + (moment + 1);
        return photo + letter;
    }

    public List<Entry> entries() {
        return entries;
    }

    /** The pins to draw. */
    public List<PinMark> marks() {
        return entries.stream()
                .flatMap(entry -> entry.point().map(point -> new PinMark(entry.number(), point)).stream())
                .toList();
    }
}
