package quarterlight.ui.photos.list;

import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import quarterlight.car.ZoneId;
import quarterlight.visit.photo.CameraId;

/**
 * What the contact sheet is narrowed to.
 *
 * @param zonesOnly true to show only photos pinned to the zones selected on the diagram
 * @param camera the one camera shown
 * @param group the one group shown
 * @param name part of the file's name, in any case; empty for all
 */
public record PhotoFilter(
        PhotoScope showing, boolean zonesOnly, Optional<CameraId> camera, OptionalInt group, String name) {
    /** Everything is shown. */
    public static final PhotoFilter ALL =
            new PhotoFilter(PhotoScope.ALL, false, Optional.empty(), OptionalInt.empty(), "");

    public PhotoFilter {
        Objects.requireNonNull(showing, "showing");
        Objects.requireNonNull(camera, "camera");
        Objects.requireNonNull(group, "group");
        name = name.strip().toLowerCase(Locale.ROOT);
    }

    /** Whether nothing is left out. */
    public boolean takesAll() {
        return showing == PhotoScope.ALL && !zonesOnly && camera.isEmpty() && group.isEmpty() && name.isEmpty();
    }

    public PhotoFilter with(PhotoScope other) {
        return new PhotoFilter(other, zonesOnly, camera, group, name);
    }

    public PhotoFilter withZonesOnly(boolean only) {
        return new PhotoFilter(showing, only, camera, group, name);
    }

    public PhotoFilter withCamera(Optional<CameraId> one) {
        return new PhotoFilter(showing, zonesOnly, one, group, name);
    }

    public PhotoFilter withGroup(OptionalInt one) {
        return new PhotoFilter(showing, zonesOnly, camera, one, name);
    }

    public PhotoFilter withName(String part) {
        return new PhotoFilter(showing, zonesOnly, camera, group, part);
    }

    /** @param zones zones selected on the diagram */
    boolean takes(PhotoItem item, PhotoHints hints, Set<ZoneId> zones) {
        return showing.takes(item, hints)
                && (!zonesOnly || item.allPins().anyMatch(pin -> zones.contains(pin.zone())))
                && (camera.isEmpty() || camera.equals(item.photo().file().camera()))
                && (group.isEmpty() || group.equals(item.group()))
                && (name.isEmpty() || item.name().toLowerCase(Locale.ROOT).contains(name));
    }
}
