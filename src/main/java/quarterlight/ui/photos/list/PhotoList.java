package quarterlight.ui.photos.list;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.Collectors;
import quarterlight.capture.CorrectedTime;
import quarterlight.capture.CorrectedTimes;
import quarterlight.capture.PhotoGroups;
import quarterlight.visit.VisitRecord;
import quarterlight.visit.photo.Photo;
import quarterlight.visit.photo.PhotoId;
import quarterlight.visit.pin.Pin;
import quarterlight.visit.pin.Recorded;

/** The photos of a visit in corrected time over all cameras; those without a time come last, in the order of intake. Immutable. */
public final class PhotoList {
    /** A list without photos. */
    public static final PhotoList EMPTY = new PhotoList(List.of());

    private final List<PhotoItem> items;
    private final Places places;

    /** Where each photo stands; the same object in lists of the same photos in the same order. */
    private static final class Places {
        private final Map<PhotoId, Integer> byPhoto;

        Places(Map<PhotoId, Integer> byPhoto) {
            this.byPhoto = byPhoto;
        }
    }

    PhotoList(List<PhotoItem> items) {
        this(items, new Places(placed(items)));
    }

    private PhotoList(List<PhotoItem> items, Places places) {
        this.items = List.copyOf(items);
        this.places = places;
    }

    private static Map<PhotoId, Integer> placed(List<PhotoItem> items) {
        Map<PhotoId, Integer> places = new HashMap<>();
        for (int i = 0; i < items.size(); i++) {
            places.put(items.get(i).id(), i);
        }
        return places;
    }

    public static PhotoList of(VisitRecord visit, CorrectedTimes times) {
        PhotoGroups groups = PhotoGroups.of(visit, times);
        Map<PhotoId, List<Recorded<Pin>>> pins = pins(visit);
        Set<PhotoId> noted = noted(visit);
        List<PhotoItem> items = new ArrayList<>(visit.photos().size());
        for (Photo photo : visit.photos()) {
            Optional<CorrectedTime> time = times.of(photo.id());
            items.add(new PhotoItem(
                    photo,
                    time.map(t -> t.utc().toInstant()),
                    time.map(t -> t.local().toLocalDateTime()),
                    groups.of(photo.id()).map(OptionalInt::of).orElseGet(OptionalInt::empty),
                    pins.getOrDefault(photo.id(), List.of()),
                    List.of(),
                    noted.contains(photo.id())));
        }
        items.sort(Comparator.comparing((PhotoItem item) -> item.at().orElse(Instant.MAX))
                .thenComparing(PhotoItem::id));
        return new PhotoList(items);
    }

    /** The same photos in the same order with the pins and notes of a later state of the visit, and the pins that are being stored. */
    PhotoList with(VisitRecord visit, List<Pin> underWay) {
        Map<PhotoId, List<Recorded<Pin>>> pins = pins(visit);
        Map<PhotoId, List<Pin>> storing = underWay.stream().collect(Collectors.groupingBy(Pin::photo));
        Set<PhotoId> noted = noted(visit);
        List<PhotoItem> fresh = new ArrayList<>(items.size());
        for (PhotoItem item : items) {
            List<Recorded<Pin>> now = pins.getOrDefault(item.id(), List.of());
            List<Pin> soon = storing.getOrDefault(item.id(), List.of());
            boolean isNoted = noted.contains(item.id());
            boolean same = now.equals(item.pins()) && soon.equals(item.storing()) && isNoted == item.noted();
            fresh.add(same ? item : item.with(now, soon, isNoted));
        }
        return new PhotoList(fresh, places);
    }

    /** The same with other pins that are being stored. */
    PhotoList with(List<Pin> underWay) {
        Map<PhotoId, List<Pin>> storing = underWay.stream().collect(Collectors.groupingBy(Pin::photo));
        List<PhotoItem> fresh = new ArrayList<>(items);
        for (int place = 0; place < items.size(); place++) {
            PhotoItem item = items.get(place);
            if (item.isStoring() || storing.containsKey(item.id())) {
                List<Pin> soon = storing.getOrDefault(item.id(), List.of());
                fresh.set(place, item.with(item.pins(), soon, item.noted()));
            }
        }
        return new PhotoList(fresh, places);
    }

    private static Map<PhotoId, List<Recorded<Pin>>> pins(VisitRecord visit) {
        Map<PhotoId, List<Recorded<Pin>>> pins = new HashMap<>();
        visit.pins().forEach(row -> pins.computeIfAbsent(row.value().photo(), photo -> new ArrayList<>())
                .add(row));
        return pins;
    }

    /** Photos on which something was drawn, hidden or outlined, or of which a statement speaks. */
    private static Set<PhotoId> noted(VisitRecord visit) {
        Set<PhotoId> noted = new HashSet<>();
        visit.photoNotes().forEach(row -> noted.add(row.value().photo()));
        visit.hidden().forEach(row -> noted.add(row.value().photo()));
        visit.traces().forEach(row -> noted.add(row.value().photo()));
        visit.statements().forEach(row -> noted.addAll(row.value().photos()));
        return noted;
    }

    /** Where pins or notes are others than in an earlier list; empty if this list was not made of that one by such changes alone. */
    public Optional<List<Integer>> changes(PhotoList before) {
        if (places != before.places) {
            return Optional.empty();
        }
        List<Integer> changed = new ArrayList<>();
        for (int place = 0; place < items.size(); place++) {
            if (!items.get(place).hasPinsAndNotesOf(before.items.get(place))) {
                changed.add(place);
            }
        }
        return Optional.of(changed);
    }

    public List<PhotoItem> items() {
        return items;
    }

    public int size() {
        return items.size();
    }

    public Optional<PhotoItem> find(PhotoId id) {
        return Optional.ofNullable(places.byPhoto.get(id)).map(items::get);
    }

    /** Place in the list; empty for a photo that is not in it. */
    public OptionalInt placeOf(PhotoId id) {
        Integer place = places.byPhoto.get(id);
        return place == null ? OptionalInt.empty() : OptionalInt.of(place);
    }
}
