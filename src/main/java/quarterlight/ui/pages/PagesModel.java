package quarterlight.ui.pages;

import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import quarterlight.language.Language;
import quarterlight.page.PagesChoice;
import quarterlight.page.check.PageCheck;
import quarterlight.page.print.Paper;
import quarterlight.ui.kit.Listeners;
import quarterlight.units.ThicknessUnit;

/** What the Pages station shows: the files made, the one in the preview and its page. Event thread only. */
final class PagesModel {
    /**
     * The state shown.
     *
     * @param file the file in the preview
     * @param page from 0
     * @param pages how many there are; 0 while it is not known
     * @param picture the page; empty while it is drawn
     * @param since what was changed since the pages were made; empty before it was looked for
     * @param check what a look over the pages that were made here has found
     */
    record State(
            List<MadeFile> files,
            Optional<MadeFile> file,
            int page,
            int pages,
            Optional<BufferedImage> picture,
            PagesChoice choice,
            Optional<List<String>> since,
            Optional<PageCheck> check) {
        State {
            files = List.copyOf(files);
            since = since.map(List::copyOf);
        }

        State at(Optional<MadeFile> otherFile, int otherPage, int otherPages, Optional<BufferedImage> otherPicture) {
            return new State(files, otherFile, otherPage, otherPages, otherPicture, choice, since, check);
        }

        State asked(PagesChoice other) {
            return new State(files, file, page, pages, picture, other, since, check);
        }
    }

    private final Listeners listeners = new Listeners();
    private State state = new State(
            List.of(),
            Optional.empty(),
            0,
            0,
            Optional.empty(),
            PagesChoice.on(Paper.A4),
            Optional.empty(),
            Optional.empty());

    State state() {
        return state;
    }

    Listeners.Registration onChange(Runnable listener) {
        return listeners.add(listener);
    }

    private void set(State next) {
        state = next;
        listeners.tell();
    }

    /** The files as they lie on the disk; the one in the preview stays if it is still there. */
    void files(List<MadeFile> files, List<String> since, Optional<PageCheck> check) {
        List<MadeFile> pdfs = new ArrayList<>(files);
        pdfs.removeIf(file -> !file.isPdf());
        Optional<MadeFile> kept = state.file()
                .flatMap(old -> pdfs.stream()
                        .filter(file -> file.path().equals(old.path()))
                        .findFirst())
                .or(() -> pdfs.stream().findFirst());
        boolean same = kept.equals(state.file());
        set(new State(
                files,
                kept,
                same ? state.page() : 0,
                same ? state.pages() : 0,
                same ? state.picture() : Optional.empty(),
                state.choice(),
                Optional.of(since),
                check));
    }

    void choose(MadeFile file) {
        set(state.at(Optional.of(file), 0, 0, Optional.empty()));
    }

    void turnTo(int page) {
        if (page >= 0 && page < state.pages() && page != state.page()) {
            set(state.at(state.file(), page, state.pages(), state.picture()));
        }
    }

    /** A page was drawn; dropped if another is wanted by now. */
    void drawn(MadeFile file, int page, int pages, BufferedImage picture) {
        if (state.file().equals(Optional.of(file)) && (state.page() == page || state.pages() == 0)) {
            set(state.at(state.file(), Math.min(state.page(), pages - 1), pages, Optional.of(picture)));
        }
    }

    void paper(Paper paper) {
        set(state.asked(state.choice().with(paper)));
    }

    void language(Language language) {
        set(state.asked(state.choice().said(language)));
    }

    /** @param unit of all pages; empty for the one in which most was measured */
    void unit(Optional<ThicknessUnit> unit) {
        set(state.asked(state.choice().in(unit)));
    }
}
