package quarterlight.ui.library;

import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import quarterlight.edit.library.VisitOrder;

/**
 * What is asked of the library.
 *
 * @param folders where visits lie
 * @param text words that a row must hold, or a number; blank for all visits
 * @param like true if the text is a number, and numbers like it are asked for
 */
record LibraryQuestion(List<Path> folders, String text, boolean like, VisitOrder order) {
    LibraryQuestion {
        folders = List.copyOf(folders);
        Objects.requireNonNull(text, "text");
        Objects.requireNonNull(order, "order");
    }

    boolean isForAll() {
        return text.isBlank();
    }

    LibraryQuestion in(List<Path> others) {
        return new LibraryQuestion(others, text, like, order);
    }

    LibraryQuestion asking(String other, boolean number) {
        return new LibraryQuestion(folders, other, number, order);
    }

    LibraryQuestion by(VisitOrder other) {
        return new LibraryQuestion(folders, text, like, other);
    }
}
