package quarterlight.page;

import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import quarterlight.capture.CorrectedTimes;
import quarterlight.car.ZoneCatalog;
import quarterlight.diagram.BodyDiagram;
import quarterlight.diagram.ZonePlaces;
import quarterlight.diagram.ink.PinMark;
import quarterlight.findings.Findings;
import quarterlight.visit.Photo;
import quarterlight.visit.PhotoId;
import quarterlight.visit.Pin;
import quarterlight.visit.RecordId;
import quarterlight.visit.Recorded;
import quarterlight.visit.ViewPoint;
import quarterlight.visit.VisitRecord;

/**
 * The pins of a visit, numbered in the order in which their photos were taken, with what the key says of each. Photos set aside
 * are left out.
 */
public final class PinKey {
    private static final DateTimeFormatter CLOCK = DateTimeFormatter.ofPattern("HH:mm:ss", Locale.US);

    /**
     * One pin in the key.
     *
     * @param number as on the diagram
     * @param pin its row
     * @param point where its disc points to; empty for a zone that stands in no view
     * @param zone the zone's name
     * @param text what it shows, and the caption
     * @param time corrected time of day, or empty text
     * @param file the photo's name
     * @param value the pin itself
     */
    public record Entry(
            int number,
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
        Selection selection = Selection.of(visit);
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
        List<Recorded<Pin>> pins = visit.pins().stream()
                .filter(pin -> photos.containsKey(pin.value().photo()))
                .sorted(Comparator.comparing((Recorded<Pin> pin) ->
                                instant(times, pin.value().photo()))
                        .thenComparing(pin -> pin.value().photo()))
                .toList();
        List<Entry> entries = new ArrayList<>();
        for (Recorded<Pin> row : pins) {
            Pin pin = row.value();
            entries.add(new Entry(
                    entries.size() + 1,
                    row.id(),
                    pin.photo(),
                    pin.point().or(() -> places.pointFor(diagram, pin.zone())),
                    catalog.get(pin.zone()).label(),
                    Stream.of(pin.shows(), pin.caption())
                            .flatMap(Optional::stream)
                            .collect(Collectors.joining(": ")),
                    times.of(pin.photo()).map(t -> CLOCK.format(t.local())).orElse(""),
                    photos.get(pin.photo()).file().name(),
                    pin));
        }
        return new PinKey(entries);
    }

    private static long instant(CorrectedTimes times, PhotoId photo) {
        return times.of(photo).map(t -> t.utc().toInstant().toEpochMilli()).orElse(Long.MAX_VALUE);
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
