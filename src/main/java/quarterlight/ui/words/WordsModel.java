package quarterlight.ui.words;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import quarterlight.car.ZoneCatalog;
import quarterlight.edit.spoken.DraftDropping;
import quarterlight.edit.spoken.DraftKeeping;
import quarterlight.edit.spoken.VisitWalk;
import quarterlight.table.cell.RowContext;
import quarterlight.ui.kit.Listeners;
import quarterlight.visit.VisitRecord;
import quarterlight.words.Draft;

/** What the Words station has in hand: the walk, its drafts with what became of each, and how the inspector changed some. Event thread only. */
final class WordsModel {
    private final Listeners listeners = new Listeners();
    private final ZoneCatalog catalog;
    private final Map<String, Draft> written = new HashMap<>();
    private final Set<String> seen = new HashSet<>();
    private Optional<WalkReading.Walk> walk = Optional.empty();
    private Optional<RowContext> context = Optional.empty();
    private List<DraftRow> rows = List.of();
    private Optional<String> inHand = Optional.empty();
    private boolean all;

    WordsModel(ZoneCatalog catalog) {
        this.catalog = catalog;
    }

    void onChange(Runnable listener) {
        listeners.add(listener);
    }

    Optional<WalkReading.Walk> walk() {
        return walk;
    }

    /** The drafts of the list, in the order of the walk: those that are open, or all. */
    List<DraftRow> shown() {
        return rows.stream()
                .filter(row -> all || row.isOpen() && (row.read().p() >= DraftRow.MIN_SHOWN_P || row.isChanged()))
                .toList();
    }

    long count(DraftRow.State state) {
        return rows.stream().filter(row -> row.state() == state).count();
    }

    /** How many open drafts are so unlikely that they are not listed. */
    long unlikely() {
        return all
                ? 0
                : rows.stream()
                        .filter(row -> row.isOpen() && row.read().p() < DraftRow.MIN_SHOWN_P && !row.isChanged())
                        .count();
    }

    boolean showsAll() {
        return all;
    }

    void showAll(boolean everything) {
        all = everything;
        listeners.tell();
    }

    Optional<DraftRow> inHand() {
        return inHand.flatMap(this::row);
    }

    Optional<DraftRow> row(String id) {
        return rows.stream().filter(row -> row.id().equals(id)).findFirst();
    }

    /** Takes a draft in hand; what is in hand has been seen. */
    void turnTo(Optional<String> id) {
        id.ifPresent(seen::add);
        if (!id.equals(inHand)) {
            inHand = id;
            listeners.tell();
        }
    }

    /** Drafts that stood whole on the screen; only these can be kept together. */
    void see(List<String> ids) {
        seen.addAll(ids);
    }

    boolean wasSeen(String id) {
        return seen.contains(id);
    }

    /** Another draft than it was read, not kept yet. */
    void write(Draft draft) {
        written.put(draft.id(), draft);
        rows = rows.stream()
                .map(row ->
                        row.id().equals(draft.id()) ? new DraftRow(row.read(), draft, row.state(), lacks(draft)) : row)
                .toList();
        listeners.tell();
    }

    private Optional<String> lacks(Draft draft) {
        return walk.isEmpty() || context.isEmpty()
                ? Optional.empty()
                : DraftKeeping.lacks(draft, walk.get().walk(), context.get());
    }

    void read(WalkReading.Walk fresh, VisitRecord visit) {
        walk = Optional.of(fresh);
        follow(visit);
    }

    /** The visit changed: tells anew what is kept and what was dropped; what undo brought back comes into hand. */
    void follow(VisitRecord visit) {
        if (walk.isEmpty()) {
            return;
        }
        VisitWalk heard = walk.get().walk();
        context = Optional.of(RowContext.of(visit, catalog, walk.get().patterns()));
        Set<String> kept = DraftKeeping.kept(visit, heard);
        Set<String> dropped = DraftDropping.dropped(visit, heard);
        List<DraftRow> fresh = new ArrayList<>();
        for (Draft draft : heard.drafts()) {
            Draft as = written.getOrDefault(draft.id(), draft);
            DraftRow.State state = draft.withdrawn()
                    ? DraftRow.State.WITHDRAWN
                    : dropped.contains(draft.id())
                            ? DraftRow.State.DROPPED
                            : kept.contains(draft.id()) ? DraftRow.State.KEPT : DraftRow.State.OPEN;
            fresh.add(new DraftRow(draft, as, state, state == DraftRow.State.OPEN ? lacks(as) : Optional.empty()));
        }
        fresh.stream()
                .filter(row -> row.isOpen()
                        && row(row.id()).filter(WordsModel::isSettled).isPresent())
                .findFirst()
                .ifPresent(row -> inHand = Optional.of(row.id()));
        rows = List.copyOf(fresh);
        listeners.tell();
    }

    private static boolean isSettled(DraftRow row) {
        return row.state() == DraftRow.State.KEPT || row.state() == DraftRow.State.DROPPED;
    }
}
