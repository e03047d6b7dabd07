package quarterlight.ui;

import java.awt.Component;
import java.awt.Container;
import java.awt.Window;
import java.util.List;
import java.util.stream.Stream;

/** The components of a window one by one, parents before their children; on the event thread. */
public final class WindowParts {
    private WindowParts() {}

    /** All that lies within, not {@code at} itself. */
    public static Stream<Component> within(Container at) {
        return Stream.of(at.getComponents()).flatMap(WindowParts::of);
    }

    /** It and all within. */
    public static Stream<Component> of(Component at) {
        return at instanceof Container inner ? Stream.concat(Stream.of(at), within(inner)) : Stream.of(at);
    }

    /** Of every window there is. */
    public static Stream<Component> ofWindows() {
        return Stream.of(Window.getWindows()).flatMap(WindowParts::of);
    }

    /** All of a kind within, in that order. */
    public static <T> List<T> within(Container at, Class<T> kind) {
        return within(at).filter(kind::isInstance).map(kind::cast).toList();
    }

    /**
     * The first of a kind within that has this name.
     *
     * @throws AssertionError if there is none
     */
    public static <T extends Component> T named(Container at, Class<T> kind, String name) {
        return within(at, kind).stream()
                .filter(one -> name.equals(one.getName()))
                .findFirst()
                .orElseThrow(() -> new AssertionError("no " + name));
    }

    /** Lays out all within, as showing it would. */
    public static void layOut(Container at) {
        of(at).filter(Container.class::isInstance).forEach(Component::doLayout);
    }
}
