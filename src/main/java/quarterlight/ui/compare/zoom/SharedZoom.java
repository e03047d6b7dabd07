package quarterlight.ui.compare.zoom;

import java.util.ArrayList;
import java.util.List;

/**
 * How far two photos are zoomed and which part of them is seen, the same for both: the middle of the frame lies at the same share of each photo.
 * Event thread only.
 */
public final class SharedZoom {
    static final double MAX = 12;

    private final List<Runnable> listeners = new ArrayList<>();
    private double factor = 1;
    private double x = 0.5;
    private double y = 0.5;

    /** How many times larger than fitted, 1 to {@link #MAX}. */
    double factor() {
        return factor;
    }

    /** Where the middle of the frame lies, as a share of the photo's width. */
    double x() {
        return x;
    }

    double y() {
        return y;
    }

    /** Zooms by a factor; what lies at a place of the photo, given as shares from the middle of the frame, stays where it is. */
    public void zoom(double by, double fromMiddleX, double fromMiddleY) {
        double next = Math.max(1, Math.min(MAX, factor * by));
        double kept = 1 - factor / next;
        move(x + fromMiddleX * kept, y + fromMiddleY * kept, next);
    }

    /** Moves what is seen by shares of the photo. */
    public void pan(double byX, double byY) {
        move(x + byX, y + byY, factor);
    }

    public void fit() {
        move(0.5, 0.5, 1);
    }

    /** Whether all of both photos is seen. */
    boolean isFitted() {
        return factor == 1;
    }

    private void move(double toX, double toY, double next) {
        factor = next;
        double free = 0.5 / factor;
        x = Math.max(free, Math.min(1 - free, toX));
        y = Math.max(free, Math.min(1 - free, toY));
        listeners.forEach(Runnable::run);
    }

    void onChange(Runnable listener) {
        listeners.add(listener);
    }
}
