package quarterlight.ui.photos.list;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.function.Predicate;
import quarterlight.capture.CorrectedTimes;
import quarterlight.car.ZoneId;
import quarterlight.ui.kit.Listeners;
import quarterlight.ui.kit.visit.OpenVisit;
import quarterlight.ui.kit.visit.PendingImport;
import quarterlight.visit.VisitRecord;
import quarterlight.visit.photo.Photo;
import quarterlight.visit.photo.PhotoId;
import quarterlight.walk.Suggestion;

/** What the Photos station shows: the list, the filter, the hints and the photo in hand. Event thread only. */
public final class PhotosModel {
    private final OpenVisit visit;
    private final Listeners listChanged = new Listeners();
    private final Listeners hintsChanged = new Listeners();
    private final Listeners suggestionsChanged = new Listeners();
    private final Set<PhotoId> underWay = new HashSet<>();
    private PhotoList all = PhotoList.EMPTY;
    private PhotoList shown = PhotoList.EMPTY;
    private Optional<VisitRecord> read = Optional.empty();
    private CorrectedTimes timesRead;
    private PhotoFilter filter = PhotoFilter.ALL;
    private PhotoHints measured = PhotoHints.NONE;
    private PhotoHints hints = PhotoHints.NONE;
    private Map<PhotoId, List<Suggestion>> suggestions = Map.of();
    private boolean suggested;
    private Set<ZoneId> narrowedTo = Set.of();
    private boolean begun;

    public PhotosModel(OpenVisit visit) {
        this.visit = Objects.requireNonNull(visit, "visit");
        this.timesRead = visit.times();
        visit.onVisit(this::visitChanged);
        visit.onUnderWay(this::underWayChanged);
        visit.selection().onSelected(this::selectionChanged);
        read();
    }

    private void visitChanged() {
        read();
        takeFirst();
    }

    private void read() {
        List<Photo> coming = PendingImport.photos(visit.coming(), visit.visit().photos());
        if (!coming.isEmpty()) {
            List<Photo> photos = new ArrayList<>(visit.visit().photos());
            photos.addAll(coming);
            VisitRecord both = visit.visit().holding(photos);
            all = PhotoList.of(both, CorrectedTimes.of(both)).with(visit.visit(), visit.underWay());
            read = Optional.empty();
            narrow();
            return;
        }
        if (timesRead == visit.times() && read.equals(Optional.of(visit.visit()))) {
            return;
        }
        boolean samePhotos = read.map(
                        before -> before.photos().equals(visit.visit().photos()))
                .orElse(false);
        all = samePhotos && timesRead == visit.times()
                ? all.with(visit.visit(), visit.underWay())
                : PhotoList.of(visit.visit(), visit.times()).with(visit.underWay());
        read = Optional.of(visit.visit());
        timesRead = visit.times();
        if (!samePhotos) {
            weigh();
        }
        narrow();
    }

    /**
     * The first time that there are photos, the first without a pin is taken in hand, or else the first of all, so that the keys act at once. While
     * photos come in, that waits until the first of the list is held.
     */
    public void takeFirst() {
        if (begun || all.items().isEmpty() || all.items().get(0).isComing()) {
            return;
        }
        List<PhotoItem> held =
                shown.items().stream().filter(item -> !item.isComing()).toList();
        held.stream()
                .filter(PhotoItem::isOpen)
                .findFirst()
                .or(() -> held.stream().findFirst())
                .ifPresent(item -> select(item.id()));
    }

    /** A photo whose only likeness was set aside is alike no more. */
    private void weigh() {
        hints = measured.among(id -> !underWay.contains(id)
                && all.find(id).filter(item -> !item.isAside()).isPresent());
    }

    private void underWayChanged() {
        all = all.with(visit.underWay());
        narrow();
    }

    /** Photos in hand that the filter does not take stand among the others while they are in hand, so that nothing acts unseen. */
    private void narrow() {
        if (filter.takesAll()) {
            shown = all;
            listChanged.tell();
            return;
        }
        Set<PhotoId> inHand = Set.copyOf(visit.selection().photos());
        shown = new PhotoList(all.items().stream()
                .filter(item -> inHand.contains(item.id()) || takes(item))
                .toList());
        listChanged.tell();
    }

    private boolean takes(PhotoItem item) {
        return filter.takes(item, hints, visit.selection().zones());
    }

    private void selectionChanged() {
        begun |= !visit.selection().photos().isEmpty();
        boolean otherZones = !visit.selection().zones().equals(narrowedTo);
        narrowedTo = visit.selection().zones();
        if (filter.zonesOnly() && otherZones) {
            letGo();
        } else if (!filter.takesAll()) {
            List<PhotoId> inHand = visit.selection().photos();
            boolean guests = inHand.stream().anyMatch(id -> shown.placeOf(id).isEmpty())
                    || shown.items().stream().anyMatch(item -> !inHand.contains(item.id()) && !takes(item));
            if (guests) {
                narrow();
            }
        }
    }

    /** The filter is another: only photos that it takes stay in hand, or else the first of them. */
    private void letGo() {
        List<PhotoId> kept = visit.selection().photos().stream()
                .filter(id -> all.find(id).filter(this::takes).isPresent())
                .toList();
        List<PhotoId> first = all.items().stream()
                .filter(item -> !item.isComing() && takes(item))
                .map(PhotoItem::id)
                .limit(1)
                .toList();
        visit.selection().photos(kept.isEmpty() ? first : kept);
        narrow();
    }

    /** Every photo of the visit. */
    public PhotoList all() {
        return all;
    }

    /** The photos that the filter lets through. */
    public PhotoList shown() {
        return shown;
    }

    public PhotoFilter filter() {
        return filter;
    }

    public void filter(PhotoFilter next) {
        if (!next.equals(filter)) {
            filter = next;
            letGo();
        }
    }

    /** How many photos each choice would show, whatever else the filter says; in the order of the choices. */
    public Map<PhotoScope, Integer> counts() {
        Map<PhotoScope, Integer> counts = new EnumMap<>(PhotoScope.class);
        for (PhotoScope choice : PhotoScope.values()) {
            int count = 0;
            for (PhotoItem item : all.items()) {
                count += choice.takes(item, hints) ? 1 : 0;
            }
            counts.put(choice, count);
        }
        return counts;
    }

    public PhotoHints hints() {
        return hints;
    }

    public void hints(PhotoHints fresh) {
        measured = fresh;
        weigh();
        narrow();
        hintsChanged.tell();
    }

    /** Likely zones of a photo, best first. */
    public List<Suggestion> suggestions(PhotoId photo) {
        return suggestions.getOrDefault(photo, List.of());
    }

    /** True once likely zones were worked out; before that, none says nothing. */
    public boolean isSuggested() {
        return suggested;
    }

    public void suggestions(Map<PhotoId, List<Suggestion>> fresh) {
        suggested = true;
        suggestions = Collections.unmodifiableMap(fresh);
        suggestionsChanged.tell();
    }

    /** The photo in hand. */
    public Optional<PhotoItem> inHand() {
        return visit.selection().photo().flatMap(all::find);
    }

    /** The selected photos, the one in hand first. */
    public List<PhotoItem> selected() {
        return visit.selection().photos().stream()
                .flatMap(id -> all.find(id).stream())
                .toList();
    }

    public void select(PhotoId photo) {
        if (!PendingImport.isComing(photo)) {
            visit.selection().photos(List.of(photo));
        }
    }

    /** Photos whose setting aside is on its way to the visit count as set aside already. */
    public void begin(Collection<PhotoId> photos) {
        underWay.addAll(photos);
        weigh();
    }

    public void end(Collection<PhotoId> photos) {
        underWay.removeAll(photos);
        weigh();
    }

    /**
     * Brings up the next of the photos shown after those that are done with, by time, from the last to the first: one that still wants a pin
     * where pinning is what the filter is for, else the next that the filter takes. False if there is none.
     */
    public boolean goOnAfter(List<PhotoId> done) {
        boolean pinning = !filter.zonesOnly() && filter.showing().isForPinning();
        return bringUp(done, item -> pinning ? item.isOpen() : takes(item));
    }

    /** Brings up the next of the photos shown that still wants a pin; false if there is none. */
    public boolean nextOpen() {
        return bringUp(visit.selection().photos(), PhotoItem::isOpen);
    }

    private boolean bringUp(List<PhotoId> done, Predicate<PhotoItem> wanted) {
        int from = done.stream()
                .map(all::placeOf)
                .filter(OptionalInt::isPresent)
                .mapToInt(OptionalInt::getAsInt)
                .max()
                .orElse(-1);
        List<PhotoItem> items = all.items();
        for (int i = 1; i <= items.size(); i++) {
            PhotoItem item = items.get((from + i) % items.size());
            if (shown.placeOf(item.id()).isPresent()
                    && !underWay.contains(item.id())
                    && !done.contains(item.id())
                    && wanted.test(item)) {
                select(item.id());
                return true;
            }
        }
        return false;
    }

    /** Once photos left what the filter takes, and none follows, nothing is in hand; without a filter they stay. */
    public void goOnOrLetGo(List<PhotoId> done) {
        if (!goOnAfter(done) && !filter.takesAll()) {
            visit.selection().photos(List.of());
        }
    }

    /** Goes by a number of photos along what is shown. */
    public void step(int by) {
        int size = shown.size();
        if (size > 0) {
            OptionalInt here = inHand().map(item -> shown.placeOf(item.id())).orElse(OptionalInt.empty());
            int next = here.isPresent() ? here.getAsInt() + by : by > 0 ? 0 : size - 1;
            select(shown.items().get(Math.max(0, Math.min(size - 1, next))).id());
        }
    }

    /** Goes to the next photo of the same group, from the last to the first. */
    public void nextInGroup() {
        inHand().filter(item -> item.group().isPresent()).ifPresent(item -> {
            List<PhotoItem> group = shown.items().stream()
                    .filter(other -> other.group().equals(item.group()))
                    .toList();
            select(group.get((group.indexOf(item) + 1) % group.size()).id());
        });
    }

    public OpenVisit visit() {
        return visit;
    }

    /** Told when the list or what is shown of it changed. */
    public Listeners.Registration onList(Runnable listener) {
        return listChanged.add(listener);
    }

    /** Told when suggestions changed. */
    public Listeners.Registration onSuggestions(Runnable listener) {
        return suggestionsChanged.add(listener);
    }

    /** Told when hints changed. */
    public Listeners.Registration onHints(Runnable listener) {
        return hintsChanged.add(listener);
    }
}
