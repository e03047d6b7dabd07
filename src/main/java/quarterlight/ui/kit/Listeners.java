package quarterlight.ui.kit;

import java.util.ArrayList;
import java.util.List;

/** Listeners of one thing, told in the order in which they came. Event thread only. */
public final class Listeners {
    /** A registered listener. */
    @FunctionalInterface
    public interface Registration {
        void remove();
    }

    private final List<Runnable> listeners = new ArrayList<>();

    public Registration add(Runnable listener) {
        listeners.add(listener);
        return () -> listeners.remove(listener);
    }

    public boolean isEmpty() {
        return listeners.isEmpty();
    }

    public void tell() {
        List.copyOf(listeners).forEach(Runnable::run);
    }
}
