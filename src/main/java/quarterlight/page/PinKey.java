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
            Pin value) {
        private Entry numbered(int other) {
            return new Entry(other, pin, photo, point, zone, text, time, file, value);
        }
    }

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
        Map<ZoneId, Optional<ViewPoint>> middles = new HashMap<>();
        List<Entry> entries = new ArrayList<>();
        for (Recorded<Pin> row : pins) {
            Pin pin = row.value();
            entries.add(entry(
                    entries.size() + 1,
                    row,
                    pin.point().or(() -> middles.computeIfAbsent(pin.zone(), zone -> places.pointFor(diagram, zone))),
                    catalog,
                    times,
                    photos.get(pin.photo())));
        }
        return new PinKey(entries);
    }

    private static Entry entry(
            int number,
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
                times.of(pin.photo()).map(t -> CLOCK.format(t.local())).orElse(""),
                photo.file().name(),
                pin);
    }

    /** The key with one more pin, numbered as if the whole key were made anew. */
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
        List<Entry> all = new ArrayList<>(entries.size() + 1);
        entries.stream()
                .takeWhile(entry -> !isLater(times, entry.photo(), photo.id()))
                .forEach(all::add);
        Pin pin = row.value();
        int at = all.size();
        all.add(entry(at + 1, row, pin.point().or(() -> places.pointFor(diagram, pin.zone())), catalog, times, photo));
        entries.subList(at, entries.size()).forEach(entry -> all.add(entry.numbered(entry.number() + 1)));
        return new PinKey(all);
    }

    private static boolean isLater(CorrectedTimes times, PhotoId one, PhotoId other) {
        int order = Long.compare(instant(times, one), instant(times, other));
        return order > 0 || order == 0 && one.compareTo(other) > 0;
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
