package quarterlight.ui.kit.visit;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;
import quarterlight.car.ZoneId;
import quarterlight.ui.kit.Listeners;
import quarterlight.visit.VisitRecord;
import quarterlight.visit.photo.Photo;
import quarterlight.visit.photo.PhotoId;

/** What is selected and what the pointer is over, shared by the diagram and all stations. Event thread only. */
public final class Selection {
    private final Listeners selected = new Listeners();
    private final Listeners hovered = new Listeners();
    private Set<ZoneId> zones = Set.of();
    private List<PhotoId> photos = List.of();
    private OptionalDouble moment = OptionalDouble.empty();
    private Optional<ZoneId> hoveredZone = Optional.empty();
    private Optional<PhotoId> hoveredPhoto = Optional.empty();

    public Set<ZoneId> zones() {
        return zones;
    }

    /** The one selected zone; empty for none or several. */
    public Optional<ZoneId> zone() {
        return zones.size() == 1 ? zones.stream().findFirst() : Optional.empty();
    }

    /** The selected photos, the one in hand first. */
    public List<PhotoId> photos() {
        return photos;
    }

    /** The photo in hand. */
    public Optional<PhotoId> photo() {
        return photos.stream().findFirst();
    }

    public Optional<ZoneId> hoveredZone() {
        return hoveredZone;
    }

    public Optional<PhotoId> hoveredPhoto() {
        return hoveredPhoto;
    }

    public void zones(Set<ZoneId> chosen) {
        if (!chosen.equals(zones)) {
            zones = java.util.Collections.unmodifiableSet(new LinkedHashSet<>(chosen));
            selected.tell();
        }
    }

    /** Selects photos; those that are still on their way cannot be. */
    public void photos(List<PhotoId> wanted) {
        List<PhotoId> chosen =
                wanted.stream().filter(photo -> !PendingImport.isComing(photo)).toList();
        if (!chosen.equals(photos)) {
            if (!chosen.stream().findFirst().equals(photo())) {
                moment = OptionalDouble.empty();
            }
            photos = List.copyOf(chosen);
            selected.tell();
        }
    }

    /** Seconds into the film in hand, if it was stepped to a moment; what is pinned or said then concerns this moment. */
    public OptionalDouble moment() {
        return moment;
    }

    /** Says which moment of the film in hand is shown; empty for the film as a whole. */
    public void moment(OptionalDouble seconds) {
        moment = seconds;
    }

    public void hover(Optional<ZoneId> zone, Optional<PhotoId> photo) {
        if (!zone.equals(hoveredZone) || !photo.equals(hoveredPhoto)) {
            hoveredZone = zone;
            hoveredPhoto = photo;
            hovered.tell();
        }
    }

    /** Told when zones or photos are selected. */
    public Listeners.Registration onSelected(Runnable listener) {
        return selected.add(listener);
    }

    /** Told when the pointer comes over something or leaves it. */
    public Listeners.Registration onHovered(Runnable listener) {
        return hovered.add(listener);
    }

    /** Lets go of photos that the visit no longer holds. */
    void keep(VisitRecord visit) {
        if (photos.isEmpty()) {
            return;
        }
        Set<PhotoId> known = visit.photos().stream().map(Photo::id).collect(Collectors.toSet());
        List<PhotoId> kept = new ArrayList<>(photos);
        kept.retainAll(known);
        photos(kept);
    }
}
