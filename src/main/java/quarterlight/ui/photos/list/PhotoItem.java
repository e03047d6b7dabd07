package quarterlight.ui.photos.list;

import java.time.Instant;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Stream;
import quarterlight.ui.kit.visit.PendingImport;
import quarterlight.visit.photo.MediaKind;
import quarterlight.visit.photo.Photo;
import quarterlight.visit.photo.PhotoId;
import quarterlight.visit.pin.Pin;
import quarterlight.visit.pin.Recorded;

/**
 * A photo or film as the station lists it.
 *
 * @param at when it was taken, corrected; empty without a recorded time
 * @param local the same as local time at the visit
 * @param group number of the group between two pauses, from 1
 * @param pins its pins in the order in which they were made
 * @param storing pins that were made and that the visit does not hold yet
 * @param noted true if something was drawn or said on it
 */
public record PhotoItem(
        Photo photo,
        Optional<Instant> at,
        Optional<LocalDateTime> local,
        OptionalInt group,
        List<Recorded<Pin>> pins,
        List<Pin> storing,
        boolean noted) {
    public PhotoItem {
        pins = List.copyOf(pins);
        storing = List.copyOf(storing);
    }

    PhotoItem with(List<Recorded<Pin>> otherPins, List<Pin> underWay, boolean isNoted) {
        return new PhotoItem(photo, at, local, group, otherPins, underWay, isNoted);
    }

    /** True if pins and notes of it are as another item of the same photo has them. */
    boolean hasPinsAndNotesOf(PhotoItem other) {
        return noted == other.noted && pins.equals(other.pins) && storing.equals(other.storing);
    }

    public PhotoId id() {
        return photo.id();
    }

    public String name() {
        return photo.file().name();
    }

    /** True for a photo with a pin, also while that is being stored. */
    public boolean isPinned() {
        return !pins.isEmpty() || isStoring();
    }

    /** True while a pin of it is being stored. */
    public boolean isStoring() {
        return !storing.isEmpty();
    }

    /** Its pins, those that are being stored last. */
    public Stream<Pin> allPins() {
        return Stream.concat(pins.stream().map(Recorded::value), storing.stream());
    }

    public boolean isAside() {
        return photo.setAside().isPresent();
    }

    /** True for a photo that still wants a pin. */
    public boolean isOpen() {
        return !isPinned() && !isAside() && !isComing() && !isHeldBack();
    }

    /** True while the file is being taken in. */
    public boolean isComing() {
        return PendingImport.isComing(id());
    }

    /** True for a film or a paper: it can be gone through by moments or pages. */
    public boolean hasPlaces() {
        return isFilm() || isPaper();
    }

    public boolean isPaper() {
        return photo.file().kind() == MediaKind.PAPER;
    }

    /** True for what goes to the buyer only once it is released. */
    public boolean isHeldBack() {
        return photo.file().kind().isHeldBack();
    }

    public boolean isFilm() {
        return photo.file().kind() == MediaKind.FILM;
    }
}
