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
import quarterlight.visit.Photo;
import quarterlight.visit.PhotoId;
import quarterlight.visit.Pin;
import quarterlight.visit.Recorded;
import quarterlight.visit.VisitRecord;

/** The photos of a visit in corrected time over all cameras; those without a time come last, in the order of intake. Immutable. */
public final class PhotoList {
    /** A list without photos. */
    public static final PhotoList EMPTY = new PhotoList(List.of());

    private final List<PhotoItem> items;
    private final Map<PhotoId, Integer> places;

    PhotoList(List<PhotoItem> items) {
        this(items, placed(items));
    }

    private PhotoList(List<PhotoItem> items, Map<PhotoId, Integer> places) {
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

    /** Where this list tells other things of a photo than another list does; empty unless both hold the same photos at the same places. */
    public Optional<List<Integer>> changes(PhotoList before) {
        if (size() != before.size()) {
            return Optional.empty();
        }
        List<Integer> changed = new ArrayList<>();
        for (int place = 0; place < items.size(); place++) {
            PhotoItem now = items.get(place);
            PhotoItem then = before.items.get(place);
            if (now != then) {
                if (!now.isAt(then)) {
                    return Optional.empty();
                }
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
        return Optional.ofNullable(places.get(id)).map(items::get);
    }

    /** Place in the list; empty for a photo that is not in it. */
    public OptionalInt placeOf(PhotoId id) {
        Integer place = places.get(id);
        return place == null ? OptionalInt.empty() : OptionalInt.of(place);
    }
}
