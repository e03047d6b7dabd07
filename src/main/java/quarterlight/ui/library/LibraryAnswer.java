package quarterlight.ui.library;

import java.util.List;
import quarterlight.edit.library.VisitLibrary;

/**
 * What the library says to a question.
 *
 * @param rows how many rows were found
 * @param visits how many visits have some, or are there at all where nothing was asked
 * @param all how many visits the folders hold
 * @param remarks folders that are not there and visits that cannot be read, a sentence each
 */
record LibraryAnswer(List<LibraryItem> items, int rows, int visits, int all, List<String> remarks) {
    LibraryAnswer {
        items = List.copyOf(items);
        remarks = List.copyOf(remarks);
    }

    /** Whether there may be more rows than are shown. */
    boolean isCut() {
        return rows >= VisitLibrary.MOST;
    }
}
