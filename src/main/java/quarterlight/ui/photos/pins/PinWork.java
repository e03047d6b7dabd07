package quarterlight.ui.photos.pins;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Consumer;
import quarterlight.car.ZoneId;
import quarterlight.edit.row.RowEdits;
import quarterlight.ui.kit.UiContext;
import quarterlight.ui.kit.visit.OpenVisit;
import quarterlight.ui.photos.list.PhotoItem;
import quarterlight.ui.photos.list.PhotosModel;
import quarterlight.visit.photo.PhotoId;
import quarterlight.visit.pin.Pin;
import quarterlight.visit.pin.RecordId;
import quarterlight.visit.pin.Recorded;
import quarterlight.visit.pin.ViewPoint;
import quarterlight.visit.row.RecordKind;

/**
 * Makes, moves, words and removes pins, and sets photos aside; each is one step that undo takes back. A pin is shown and the next photo
 * comes up at once, before the visit has answered. Event thread only.
 */
public final class PinWork {
    private final UiContext parts;
    private final PhotosModel model;
    private final OpenVisit visit;

    public PinWork(UiContext parts, PhotosModel model) {
        this.parts = Objects.requireNonNull(parts, "parts");
        this.model = Objects.requireNonNull(model, "model");
        this.visit = model.visit();
    }

    /**
     * Pins the selected photos to a zone and brings up the next one that wants a pin. A film stays while a moment of it is shown, and so does a
     * photo that had a pin before: whoever went back to it is not done with it.
     */
    public void pinSelected(ZoneId zone, Optional<ViewPoint> point) {
        List<PhotoId> photos = visit.selection().photos();
        boolean moment = visit.selection().moment().isPresent();
        boolean old = model.selected().stream().allMatch(PhotoItem::isPinned);
        if (pin(photos, zone, point) && !moment && !old) {
            model.goOnAfter(photos);
        }
    }

    /** Pins the selected photos to a zone; they stay in hand for another pin or for words. */
    public void pinAndStay(ZoneId zone) {
        pin(visit.selection().photos(), zone, Optional.empty());
    }

    /** Pins photos to a zone; those that are pinned there already stay as they are. False if nothing could be pinned at all. */
    public boolean pin(List<PhotoId> photos, ZoneId zone, Optional<ViewPoint> point) {
        if (photos.isEmpty() || !isEditable()) {
            return false;
        }
        List<Pin> pins = photos.stream()
                .flatMap(id -> model.all().find(id).stream())
                .filter(item -> item.allPins()
                        .noneMatch(pin -> pin.zone().equals(zone)
                                && pin.at().equals(moment(item))
                                && (point.isEmpty() || pin.point().equals(point))))
                .map(item -> new Pin(
                        item.id(), zone, moment(item), point, Optional.empty(), Optional.empty(), Optional.empty()))
                .toList();
        if (!pins.isEmpty()) {
            visit.pin(
                    pins,
                    store -> new RowEdits(store).add(RecordKind.PINS, pins),
                    done -> {},
                    parts.problems()::failed);
        }
        return true;
    }

    /** The moment that is shown, for the film in hand. */
    private OptionalDouble moment(PhotoItem item) {
        boolean inHand = visit.selection().photo().equals(Optional.of(item.id()));
        return inHand && item.hasPlaces() ? visit.selection().moment() : OptionalDouble.empty();
    }

    /** Ties a pin to another point, so perhaps to another zone. */
    public void move(RecordId pin, ZoneId zone, ViewPoint point) {
        row(pin).filter(row -> isEditable()).ifPresent(row -> change(row, with(row.value(), zone, Optional.of(point))));
    }

    private static Pin with(Pin pin, ZoneId zone, Optional<ViewPoint> point) {
        return new Pin(pin.photo(), zone, pin.at(), point, pin.shows(), pin.caption(), pin.mark());
    }

    /** Says what a pin shows, and its caption. */
    void word(RecordId pin, String shows, String caption) {
        row(pin).filter(row -> isEditable()).ifPresent(row -> {
            Pin old = row.value();
            Pin fresh = new Pin(old.photo(), old.zone(), old.at(), old.point(), some(shows), some(caption), old.mark());
            if (!fresh.equals(old)) {
                change(row, fresh);
            }
        });
    }

    private static Optional<String> some(String text) {
        return Optional.of(text.strip()).filter(stripped -> !stripped.isEmpty());
    }

    private void change(Recorded<Pin> row, Pin fresh) {
        visit.edit(
                store -> {
                    new RowEdits(store).update(RecordKind.PINS, row.id(), fresh);
                    return row.id();
                },
                done -> {});
    }

    private Optional<Recorded<Pin>> row(RecordId pin) {
        return visit.visit().pins().stream().filter(row -> row.id().equals(pin)).findFirst();
    }

    void remove(List<RecordId> pins) {
        if (!pins.isEmpty() && isEditable()) {
            visit.edit(
                    store -> {
                        new RowEdits(store).remove(RecordKind.PINS, pins);
                        return pins;
                    },
                    done -> {});
        }
    }

    /** Sets the selected photos aside and brings up the next one that wants a pin. */
    public void setAside(String reason) {
        List<PhotoId> photos = visit.selection().photos();
        if (!photos.isEmpty() && isEditable()) {
            underWay(photos, store -> {
                new RowEdits(store).setAside(photos, Optional.of(reason));
                return photos;
            });
            model.goOnOrLetGo(photos);
        }
    }

    /** Takes back those of the selected photos that were set aside. */
    public void takeBack() {
        List<PhotoId> photos = model.selected().stream()
                .filter(PhotoItem::isAside)
                .map(PhotoItem::id)
                .toList();
        if (!photos.isEmpty() && isEditable()) {
            visit.edit(
                    store -> {
                        new RowEdits(store).setAside(photos, Optional.empty());
                        return photos;
                    },
                    done -> {});
        }
    }

    private boolean isEditable() {
        if (!visit.isEditable()) {
            parts.problems().tell(parts.texts().get("visit.reading.only"));
        }
        return visit.isEditable();
    }

    private <T> void underWay(List<PhotoId> photos, OpenVisit.StoreWork<T> work) {
        model.begin(photos);
        Consumer<Exception> failed = problem -> {
            model.end(photos);
            parts.problems().failed(problem);
        };
        visit.edit(work, done -> model.end(photos), failed);
    }
}
