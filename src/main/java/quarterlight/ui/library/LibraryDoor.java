package quarterlight.ui.library;

import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Consumer;
import quarterlight.ui.kit.UiContext;

/** The way to the window of all visits: one, which comes to the front when it is asked for again. Event thread only. */
public final class LibraryDoor {
    private final UiContext parts;
    private final Consumer<Path> opened;
    private Optional<LibraryWindow> window = Optional.empty();

    /** @param opened opens a visit in the window of visits */
    public LibraryDoor(UiContext parts, Consumer<Path> opened) {
        this.parts = parts;
        this.opened = opened;
    }

    public void open() {
        if (window.filter(LibraryWindow::isOpen).isPresent()) {
            window.get().lookAgain();
        } else {
            window = Optional.of(new LibraryWindow(parts, opened));
        }
        window.get().show();
    }
}
