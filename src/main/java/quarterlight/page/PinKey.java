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
import quarterlight.diagram.BodyDiagram;
import quarterlight.diagram.ZonePlaces;
import quarterlight.diagram.ink.PinMark;
import quarterlight.findings.Findings;
import quarterlight.visit.Photo;
import quarterlight.visit.PhotoId;
import quarterlight.visit.Pin;
import quarterlight.visit.Recorded;
import quarterlight.visit.ViewPoint;

/**
 * The pins of a visit, numbered in the order in which their photos were taken, with what the key says of each. Photos set aside,
 * and what the inspector left out, are not among them.
 */
public final class PinKey {
    private static final DateTimeFormatter CLOCK = DateTimeFormatter.ofPattern("HH:mm:ss", Locale.US);

    /**
     * One pin in the key.
     *
     * @param number as on the diagram
     * @param point where its disc points to; empty for a zone that stands in no view
     * @param zone the zone's name
     * @param text what it shows, and the caption
     * @param time corrected time of day, or empty text
     * @param file the photo's name
     * @param pin the pin itself
     */
    public record Entry(
            int number,
            PhotoId photo,
            Optional<ViewPoint> point,
            String zone,
            String text,
            String time,
            String file,
            Pin pin) {}

    private final List<Entry> entries;

    private PinKey(List<Entry> entries) {
        this.entries = List.copyOf(entries);
    }

    /** The key of a visit on a diagram. */
    public static PinKey of(Findings car, BodyDiagram diagram) {
        return of(car, diagram, ZonePlaces.of(diagram));
    }

    /** The same, where the middles of the diagram's zones are known already. */
    public static PinKey of(Findings car, BodyDiagram diagram, ZonePlaces places) {
        Selection selection = Selection.of(car.visit());
        Map<PhotoId, Photo> photos = new HashMap<>();
        car.visit().photos().stream()
                .filter(photo -> photo.setAside().isEmpty() && selection.shows(photo.id()))
                .forEach(photo -> photos.put(photo.id(), photo));
        List<Pin> pins = car.visit().pins().stream()
                .map(Recorded::value)
                .filter(pin -> photos.containsKey(pin.photo()) && selection.shows(pin.zone()))
                .sorted(Comparator.comparing((Pin pin) -> instant(car, pin.photo()))
                        .thenComparing(Pin::photo))
                .toList();
        List<Entry> entries = new ArrayList<>();
        for (Pin pin : pins) {
            entries.add(new Entry(
                    entries.size() + 1,
                    pin.photo(),
                    pin.point().or(() -> places.pointFor(diagram, pin.zone())),
                    car.catalog().get(pin.zone()).label(),
                    Stream.of(pin.shows(), pin.caption())
                            .flatMap(Optional::stream)
                            .collect(Collectors.joining(": ")),
                    car.times()
                            .of(pin.photo())
                            .map(t -> CLOCK.format(t.local()))
                            .orElse(""),
                    photos.get(pin.photo()).file().name(),
                    pin));
        }
        return new PinKey(entries);
    }

    private static long instant(Findings car, PhotoId photo) {
        return car.times()
                .of(photo)
                .map(t -> t.utc().toInstant().toEpochMilli())
                .orElse(Long.MAX_VALUE);
    }

    public List<Entry> entries() {
        return entries;
    }

    public List<PinMark> marks() {
        return entries.stream()
                .flatMap(entry -> entry.point().map(point -> new PinMark(entry.number(), point)).stream())
                .toList();
    }
}
