package quarterlight.ui.pages;

import java.nio.file.Path;
import java.util.Locale;
import java.util.Set;
import quarterlight.page.print.Paper;
import quarterlight.ui.kit.UiContext;
import quarterlight.ui.kit.visit.OpenVisit;

/** Makes the sheet to take along to the car and opens it in the program that the computer has for it. Event thread only. */
public final class TakeAlong {
    /** Its name in the folder of the visit. */
    private static final String FILE = "sheet.pdf";
    /** Countries whose usual paper is Letter; common practice. */
    private static final Set<String> LETTER = Set.of("US", "CA", "MX", "PH", "CL", "CO");

    private final UiContext parts;
    private final OpenVisit visit;

    public TakeAlong(UiContext parts, OpenVisit visit) {
        this.parts = parts;
        this.visit = visit;
    }

    /** The paper usual in a country. */
    static Paper paper(Locale place) {
        return LETTER.contains(place.getCountry()) ? Paper.LETTER : Paper.A4;
    }

    public void make() {
        Path file = visit.folder().resolve(FILE);
        Paper paper = paper(Locale.getDefault());
        parts.jobs()
                .start(
                        parts.texts().get("sheet.making"),
                        progress -> parts.work().sheet(visit.store(), file, paper),
                        this::open,
                        parts.problems()::failed);
    }

    private void open(Path made) {
        parts.problems().remark(parts.texts().get("sheet.made", made));
        parts.jobs()
                .start(
                        parts.texts().get("pages.opening", String.valueOf(made.getFileName())),
                        progress -> PagesActions.opened(made),
                        done -> {},
                        failure -> parts.problems().remark(parts.texts().get("sheet.made", made)));
    }
}
