package quarterlight.ui.library;

import java.nio.file.Path;
import java.util.Optional;
import java.util.function.BiConsumer;
import quarterlight.ui.kit.UiContext;
import quarterlight.ui.kit.place.Subject;

/** The way to the window of all visits: one, which comes to the front when it is asked for again. Event thread only. */
public final class LibraryDoor {
    private final UiContext parts;
    private final BiConsumer<Path, Optional<Subject.OfRow>> opened;
    private Optional<LibraryWindow> window = Optional.empty();

    /** @param opened opens a visit in the window of visits, at a row if one was found */
    public LibraryDoor(UiContext parts, BiConsumer<Path, Optional<Subject.OfRow>> opened) {
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
