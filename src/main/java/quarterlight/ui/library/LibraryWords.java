package quarterlight.ui.library;

import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import quarterlight.store.library.LibraryRow;
import quarterlight.store.library.LibraryVisit;
import quarterlight.ui.kit.Texts;

/** Lines of the list in words. Pure functions of texts. */
final class LibraryWords {
    private static final String BETWEEN = " \u00b7 ";

    private final Texts texts;

    LibraryWords(Texts texts) {
        this.texts = texts;
    }

    /** What it says. */
    String title(LibraryItem item) {
        return item.row()
                .map(row -> row.text().replaceAll("\\s+", " "))
                .orElse(item.visit().car());
    }

    /** Where and when. */
    String below(LibraryItem item) {
        return item.row().map(this::place).orElseGet(() -> about(item.visit()));
    }

    /** How much. */
    String atRight(LibraryItem item) {
        if (!item.isHead()) {
            return "";
        }
        return item.found() > 0
                ? texts.get("library.found", item.found())
                : texts.get("library.photos", item.visit().photos());
    }

    /** Date, client and place of a visit, as far as they are known. */
    String about(LibraryVisit visit) {
        String known = Stream.of(visit.date(), visit.client(), visit.place())
                .flatMap(Optional::stream)
                .collect(Collectors.joining(BETWEEN));
        return known.isEmpty() ? String.valueOf(visit.folder().getFileName()) : known;
    }

    /** What kind of row it is, and its zone. */
    String place(LibraryRow row) {
        String kind = texts.get("library.kind." + row.kind().toLowerCase(Locale.ROOT));
        return row.zone().isEmpty() ? kind : kind + BETWEEN + row.zone();
    }

    /** All of it, for those who hear the list. */
    String spoken(LibraryItem item) {
        return title(item) + ", " + below(item) + (item.isHead() ? ", " + atRight(item) : "");
    }
}
