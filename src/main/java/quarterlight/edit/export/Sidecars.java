package quarterlight.edit.export;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import quarterlight.archive.Sidecar;
import quarterlight.archive.SidecarRegion;
import quarterlight.capture.CorrectedTimes;
import quarterlight.car.Zone;
import quarterlight.car.ZoneCatalog;
import quarterlight.car.ZoneId;
import quarterlight.language.Language;
import quarterlight.table.text.NumberText;
import quarterlight.visit.VisitRecord;
import quarterlight.visit.annotation.PhotoNote;
import quarterlight.visit.annotation.PixelPoint;
import quarterlight.visit.annotation.Trace;
import quarterlight.visit.photo.CaptureTime;
import quarterlight.visit.photo.Photo;
import quarterlight.visit.pin.Pin;
import quarterlight.visit.pin.Recorded;

/** What stands in the sidecar of each photo of a visit, and how its file is named. */
final class Sidecars {
    private final VisitRecord visit;
    private final Map<ZoneId, String> labels;
    private final Map<ZoneId, String> groups;
    private final CorrectedTimes times;
    private final boolean withPlaces;

    private Sidecars(VisitRecord visit, ZoneCatalog catalog, boolean withPlaces) {
        this.visit = visit;
        this.labels =
                catalog.zonesOf(visit.facts().car().body()).stream().collect(Collectors.toMap(Zone::id, Zone::label));
        this.groups = catalog.zonesOf(visit.facts().car().body()).stream()
                .collect(Collectors.toMap(Zone::id, zone -> zone.group().word()));
        this.times = CorrectedTimes.of(visit);
        this.withPlaces = withPlaces;
    }

    /** The documents by file name: {@code DSC_0231.JPG.xmp}; where photos share a name, the name in the originals counts. Other programs find photos by their words, so those are English whatever the window speaks. */
    static Map<String, String> of(VisitRecord visit, ZoneCatalog catalog, boolean withPlaces) {
        Map<String, Integer> names = new HashMap<>();
        visit.photos().forEach(photo -> names.merge(key(plainName(photo)), 1, Integer::sum));
        Map<String, String> files = new LinkedHashMap<>();
        try (Language.Scope spoken = Language.ENGLISH.inHandUntilClosed()) {
            Objects.requireNonNull(spoken, "spoken");
            Sidecars sidecars = new Sidecars(visit, catalog, withPlaces);
            for (Photo photo : visit.photos()) {
                if (!photo.file().kind().isCameras()) {
                    continue;
                }
                boolean alone = names.get(key(plainName(photo))) == 1;
                files.put(
                        (alone ? plainName(photo) : storedName(photo)) + ".xmp",
                        sidecars.of(photo).xml());
            }
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
        Set<List<String>> paths = new LinkedHashSet<>();
        List<String> captions = new ArrayList<>();
        for (Recorded<Pin> row : visit.pins()) {
            Pin pin = row.value();
            if (pin.photo().equals(photo.id())) {
                subjects.add(label(pin.zone()));
                paths.add(List.of(groups.getOrDefault(pin.zone(), "car"), label(pin.zone())));
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
                withPlaces ? photo.file().position() : Optional.empty(),
                List.copyOf(paths),
                size(photo).map(size -> regions(photo, size)).orElse(List.of()),
                size(photo),
                photo.setAside().isPresent());
    }

    private String label(ZoneId zone) {
        return labels.getOrDefault(zone, zone.value());
    }

    private static Optional<Sidecar.Size> size(Photo photo) {
        int width = photo.file().width().orElse(0);
        int height = photo.file().height().orElse(0);
        return width > 0 && height > 0 ? Optional.of(new Sidecar.Size(width, height)) : Optional.empty();
    }

    /** Outlines with zone and kind; notes, but for bare texts, by their shape. */
    private List<SidecarRegion> regions(Photo photo, Sidecar.Size size) {
        List<SidecarRegion> regions = new ArrayList<>();
        for (Recorded<Trace> row : visit.traces()) {
            Trace trace = row.value();
            if (trace.photo().equals(photo.id())) {
                String name = label(trace.zone()) + ": " + trace.kind().word();
                regions.add(region(trace.outline().shell(), size, name, trace.note()));
            }
        }
        for (Recorded<PhotoNote> row : visit.photoNotes()) {
            PhotoNote note = row.value();
            if (note.photo().equals(photo.id()) && note.points().size() > 1) {
                regions.add(region(note.points(), size, note.shape().word(), note.text()));
            }
        }
        return regions;
    }

    private static SidecarRegion region(
            List<PixelPoint> points, Sidecar.Size size, String name, Optional<String> words) {
        double left = points.stream().mapToDouble(PixelPoint::x).min().orElse(0) / size.width();
        double right = points.stream().mapToDouble(PixelPoint::x).max().orElse(0) / size.width();
        double top = points.stream().mapToDouble(PixelPoint::y).min().orElse(0) / size.height();
        double bottom = points.stream().mapToDouble(PixelPoint::y).max().orElse(0) / size.height();
        return new SidecarRegion((left + right) / 2, (top + bottom) / 2, right - left, bottom - top, name, words);
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
