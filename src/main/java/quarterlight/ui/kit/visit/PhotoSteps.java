package quarterlight.ui.kit.visit;

import java.time.LocalDateTime;
import java.util.Comparator;
import java.util.List;
import quarterlight.car.ZoneId;
import quarterlight.visit.photo.MediaKind;
import quarterlight.visit.photo.Photo;
import quarterlight.visit.photo.PhotoId;

/** Goes from photo to photo of the selected zone. Event thread only. */
public final class PhotoSteps {
    private final OpenVisit visit;

    public PhotoSteps(OpenVisit visit) {
        this.visit = visit;
    }

    /** The photos that are gone through: those of the selected zone if it has any, else all; in the order of time. */
    public List<PhotoId> all() {
        List<PhotoId> all = kept();
        List<PhotoId> ofZone = visit.selection()
                .zone()
                .map(zone -> all.stream()
                        .filter(id -> visit.zonesOf(id).contains(zone))
                        .toList())
                .orElse(List.of());
        return ofZone.isEmpty() ? all : ofZone;
    }

    private List<PhotoId> kept() {
        return visit.visit().photos().stream()
                .filter(photo -> photo.setAside().isEmpty() && photo.file().kind() == MediaKind.PHOTO)
                .sorted(Comparator.comparing(photo -> visit.times()
                        .of(photo.id())
                        .map(time -> time.local().toLocalDateTime())
                        .orElse(LocalDateTime.MAX)))
                .map(Photo::id)
                .toList();
    }

    /** Brings a photo of a zone into hand, unless one is or the zone has none. */
    public void bring(ZoneId zone) {
        boolean there = visit.selection()
                .photo()
                .filter(id -> visit.zonesOf(id).contains(zone))
                .isPresent();
        if (!there) {
            kept().stream()
                    .filter(id -> visit.zonesOf(id).contains(zone))
                    .findFirst()
                    .ifPresent(id -> visit.selection().photos(List.of(id)));
        }
    }

    /** Brings the next photo into hand, round and round. */
    public void step(int by) {
        List<PhotoId> list = all();
        if (list.isEmpty()) {
            return;
        }
        int at = visit.selection().photo().map(list::indexOf).orElse(-1);
        int next = at < 0 ? 0 : Math.floorMod(at + by, list.size());
        visit.selection().photos(List.of(list.get(next)));
    }
}
