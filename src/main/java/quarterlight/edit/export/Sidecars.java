package quarterlight.edit.export;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import quarterlight.archive.Sidecar;
import quarterlight.capture.CorrectedTimes;
import quarterlight.car.Zone;
import quarterlight.car.ZoneCatalog;
import quarterlight.car.ZoneId;
import quarterlight.table.text.NumberText;
import quarterlight.visit.VisitRecord;
import quarterlight.visit.photo.CaptureTime;
import quarterlight.visit.photo.Photo;
import quarterlight.visit.pin.Pin;
import quarterlight.visit.pin.Recorded;

/** What stands in the sidecar of each photo of a visit, and how its file is named. */
final class Sidecars {
    private final VisitRecord visit;
    private final Map<ZoneId, String> labels;
    private final CorrectedTimes times;
    private final boolean withPlaces;

    private Sidecars(VisitRecord visit, ZoneCatalog catalog, boolean withPlaces) {
        this.visit = visit;
        this.labels =
                catalog.zonesOf(visit.facts().car().body()).stream().collect(Collectors.toMap(Zone::id, Zone::label));
        this.times = CorrectedTimes.of(visit);
        this.withPlaces = withPlaces;
    }

    /** The documents by file name: {@code DSC_0231.JPG.xmp}; where photos share a name, the name in the originals counts. */
    static Map<String, String> of(VisitRecord visit, ZoneCatalog catalog, boolean withPlaces) {
        Sidecars sidecars = new Sidecars(visit, catalog, withPlaces);
        Map<String, Integer> names = new HashMap<>();
        visit.photos().forEach(photo -> names.merge(key(plainName(photo)), 1, Integer::sum));
        Map<String, String> files = new LinkedHashMap<>();
        for (Photo photo : visit.photos()) {
            if (!photo.file().kind().isCameras()) {
                continue;
            }
            boolean alone = names.get(key(plainName(photo))) == 1;
            files.put(
                    (alone ? plainName(photo) : storedName(photo)) + ".xmp",
                    sidecars.of(photo).xml());
        }
        return files;
    }

    /** Some disks hold two names that differ by capitals for one. */
    private static String key(String name) {
        return name.toLowerCase(Locale.ROOT);
    }

    private static String storedName(Photo photo) {
        String stored = photo.file().stored();
        return stored.substring(stored.lastIndexOf('/') + 1);
    }

    /** The name in the originals without the hash before it: the name it came with, where every disk can bear that. */
    private static String plainName(Photo photo) {
        String prefix = photo.file().sha256().hex() + "-";
        return storedName(photo).startsWith(prefix) ? storedName(photo).substring(prefix.length()) : storedName(photo);
    }

    private Sidecar of(Photo photo) {
        Set<String> subjects = new LinkedHashSet<>();
        List<String> captions = new ArrayList<>();
        for (Recorded<Pin> row : visit.pins()) {
            Pin pin = row.value();
            if (pin.photo().equals(photo.id())) {
                subjects.add(labels.getOrDefault(pin.zone(), pin.zone().value()));
                pin.shows().ifPresent(subjects::add);
                pin.caption().map(text -> moment(pin) + text).ifPresent(captions::add);
            }
        }
        return new Sidecar(
                List.copyOf(subjects),
                captions.isEmpty()
                        ? Optional.empty()
                        : Optional.of(captions.stream().distinct().collect(Collectors.joining("; "))),
                isTrusted(photo) ? times.of(photo.id()).map(time -> time.local()) : Optional.empty(),
                withPlaces ? photo.file().position() : Optional.empty());
    }

    private static String moment(Pin pin) {
        return pin.at().isPresent() ? NumberText.of(pin.at().getAsDouble()) + " s: " : "";
    }

    /** A time in the future or of a camera's reset date says nothing unless the clock was set right. */
    private boolean isTrusted(Photo photo) {
        boolean suspect = photo.file().captured().map(CaptureTime::suspect).orElse(false);
        return !suspect
                || visit.clocks().stream()
                        .anyMatch(clock -> photo.file().camera().equals(Optional.of(clock.camera())));
    }
}
