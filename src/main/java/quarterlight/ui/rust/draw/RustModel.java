package quarterlight.ui.rust.draw;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import quarterlight.ui.kit.Listeners;
import quarterlight.visit.annotation.PixelPoint;
import quarterlight.visit.annotation.TraceKind;
import quarterlight.visit.photo.PhotoId;

/**
 * What the Rust station works on: the outline being drawn, the tool, the cross-hair, and the steps that can be taken back while drawing.
 * An outline left unfinished stays with its photo. Event thread only.
 */
public final class RustModel {
    /**
     * The state shown. Immutable.
     *
     * @param cross where the cross-hair of the keyboard is; empty until a key moves it
     * @param held the point that moves with the cross-hair or the pointer
     * @param kind of the next outline
     */
    public record State(
            Optional<TraceDraft> draft,
            RustTool tool,
            Optional<PixelPoint> cross,
            Optional<Handle> held,
            ScaleKind wish,
            TraceKind kind) {}

    private static final int MAX_STEPS = 500;

    private final Listeners changed = new Listeners();
    private final Deque<Optional<TraceDraft>> past = new ArrayDeque<>();
    private final Deque<Optional<TraceDraft>> future = new ArrayDeque<>();
    private final Map<PhotoId, TraceDraft> parked = new HashMap<>();
    private State state = new State(
            Optional.empty(), RustTool.LOOK, Optional.empty(), Optional.empty(), ScaleKind.USUAL, TraceKind.SURFACE);

    public State state() {
        return state;
    }

    public Optional<TraceDraft> draft() {
        return state.draft();
    }

    public Listeners.Registration onChange(Runnable listener) {
        return changed.add(listener);
    }

    private void set(State next) {
        if (!next.equals(state)) {
            state = next;
            changed.tell();
        }
    }

    private State with(Optional<TraceDraft> draft) {
        return new State(draft, state.tool(), state.cross(), state.held(), state.wish(), state.kind());
    }

    /** Changes the draft; one step to be taken back. */
    public void write(TraceDraft next) {
        if (!Optional.of(next).equals(state.draft())) {
            remember();
            set(with(Optional.of(next)));
        }
    }

    /** Keeps the draft as it is now as a step, before a drag changes it many times. */
    public void remember() {
        past.push(state.draft());
        future.clear();
        if (past.size() > MAX_STEPS) {
            past.removeLast();
        }
    }

    /** Changes the draft within a drag. */
    public void replace(TraceDraft next) {
        set(with(Optional.of(next)));
    }

    /** Begins with a draft; steps of another one cannot be taken back any more. */
    public void begin(TraceDraft first, RustTool tool) {
        past.clear();
        future.clear();
        set(new State(Optional.of(first), tool, state.cross(), Optional.empty(), state.wish(), first.kind()));
    }

    /** Lets go of the draft, such as once it is kept. */
    public void end() {
        past.clear();
        future.clear();
        set(new State(Optional.empty(), RustTool.LOOK, state.cross(), Optional.empty(), state.wish(), state.kind()));
    }

    /** Puts the draft away; {@link #undo} brings it back. */
    public void drop() {
        if (state.draft().isPresent()) {
            remember();
            set(new State(
                    Optional.empty(), RustTool.LOOK, state.cross(), Optional.empty(), state.wish(), state.kind()));
        }
    }

    /** Another photo is in hand: what was begun on the one before stays with it. */
    public void photo(Optional<PhotoId> photo) {
        Optional<PhotoId> old = state.draft().map(TraceDraft::photo);
        if (old.isPresent() && !old.equals(photo)) {
            TraceDraft left = state.draft().get();
            if (!left.isBlank()) {
                parked.put(left.photo(), left);
            }
            end();
        }
        set(new State(state.draft(), state.tool(), Optional.empty(), Optional.empty(), state.wish(), state.kind()));
        if (state.draft().isEmpty()) {
            photo.map(parked::remove).ifPresent(kept -> begin(kept, RustTool.EDIT));
        }
    }

    /** Outlines begun and not kept, on photos that are not in hand. */
    public int unfinished() {
        return parked.size();
    }

    /** Takes back one step of drawing; false if there is none. */
    public boolean undo() {
        return step(past, future);
    }

    public boolean redo() {
        return step(future, past);
    }

    private boolean step(Deque<Optional<TraceDraft>> from, Deque<Optional<TraceDraft>> to) {
        if (from.isEmpty()) {
            return false;
        }
        to.push(state.draft());
        Optional<TraceDraft> next = from.pop();
        RustTool tool = next.isPresent() && state.tool() == RustTool.LOOK ? RustTool.EDIT : state.tool();
        set(new State(next, tool, state.cross(), Optional.empty(), state.wish(), state.kind()));
        return true;
    }

    public void tool(RustTool tool) {
        set(new State(state.draft(), tool, state.cross(), Optional.empty(), state.wish(), state.kind()));
    }

    public void cross(PixelPoint at) {
        set(new State(state.draft(), state.tool(), Optional.of(at), state.held(), state.wish(), state.kind()));
    }

    public void hold(Optional<Handle> handle) {
        set(new State(state.draft(), state.tool(), state.cross(), handle, state.wish(), state.kind()));
    }

    public void wish(ScaleKind wish) {
        set(new State(state.draft(), state.tool(), state.cross(), state.held(), wish, state.kind()));
    }

    /** The kind of the draft, and of outlines to come. */
    public void kind(TraceKind kind) {
        state.draft().ifPresent(draft -> write(draft.with(kind)));
        set(new State(state.draft(), state.tool(), state.cross(), state.held(), state.wish(), kind));
    }
}
