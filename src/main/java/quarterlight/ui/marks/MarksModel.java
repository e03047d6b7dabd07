package quarterlight.ui.marks;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import quarterlight.marks.judge.JudgedMark;
import quarterlight.ui.kit.Listeners;
import quarterlight.visit.mark.Mark;
import quarterlight.visit.pin.RecordId;
import quarterlight.visit.pin.Recorded;

/** What the Marks station has in hand: a row or a new mark, as written, and what it means as it stands. Event thread only. */
final class MarksModel {
    /**
     * The state shown.
     *
     * @param row the mark in hand; empty for a new one
     * @param kept the draft as it is kept in the visit, or the empty one
     * @param reading what the draft means; empty until it is read, or while it is no mark
     */
    record State(Optional<RecordId> row, MarkDraft kept, MarkDraft draft, Optional<JudgedMark> reading) {
        /** True if leaving would lose what was written. */
        boolean isChanged() {
            return !draft.equals(kept);
        }
    }

    private final Listeners listeners = new Listeners();
    private final Map<Optional<RecordId>, MarkDraft> waiting = new HashMap<>();
    private State state = new State(Optional.empty(), MarkDraft.EMPTY, MarkDraft.EMPTY, Optional.empty());

    State state() {
        return state;
    }

    void onChange(Runnable listener) {
        listeners.add(listener);
    }

    private void set(State next) {
        if (!next.equals(state)) {
            state = next;
            listeners.tell();
        }
    }

    /** Takes a kept mark in hand, as it was being written if it could not be kept; what is in hand waits until its row comes back. */
    void turnTo(Recorded<Mark> mark) {
        putAway();
        take(mark);
        Optional.ofNullable(waiting.remove(Optional.of(mark.id()))).ifPresent(this::write);
    }

    /** Begins a new mark, with what was written of one before, else with what is known of it already. */
    void turnToNew(MarkDraft known) {
        putAway();
        Optional.ofNullable(waiting.remove(Optional.<RecordId>empty()))
                .ifPresentOrElse(this::begin, () -> beginWith(known));
    }

    /** Begins a new mark on which nothing has been written yet. */
    void beginWith(MarkDraft known) {
        set(new State(Optional.empty(), known, known, Optional.empty()));
    }

    private void putAway() {
        boolean isLeft = state.row().isEmpty() || state.draft().problem().isPresent();
        if (state.isChanged() && isLeft) {
            waiting.put(state.row(), state.draft());
        }
    }

    /** Takes a kept mark in hand as it is kept. */
    void take(Recorded<Mark> mark) {
        MarkDraft kept = MarkDraft.of(mark.value());
        set(new State(Optional.of(mark.id()), kept, kept, Optional.empty()));
    }

    /** Begins a new mark. */
    void begin(MarkDraft draft) {
        set(new State(Optional.empty(), MarkDraft.EMPTY, draft, Optional.empty()));
    }

    void write(MarkDraft draft) {
        set(new State(state.row(), state.kept(), draft, draft.mark().isPresent() ? state.reading() : Optional.empty()));
    }

    /** What a draft means; dropped if another is in hand by now. */
    void read(MarkDraft draft, JudgedMark reading) {
        if (draft.equals(state.draft())) {
            set(new State(state.row(), state.kept(), draft, Optional.of(reading)));
        }
    }

    /** The visit changed: a mark in hand that was changed elsewhere is shown anew unless something is being written. */
    void follow(List<Recorded<Mark>> marks) {
        if (state.row().isEmpty()) {
            return;
        }
        Optional<Recorded<Mark>> now = marks.stream()
                .filter(mark -> state.row().get().equals(mark.id()))
                .findFirst();
        if (now.isEmpty()) {
            begin(state.isChanged() ? state.draft() : MarkDraft.EMPTY);
        } else if (!state.isChanged() || MarkDraft.of(now.get().value()).equals(state.draft())) {
            take(now.get());
        }
    }
}
