package quarterlight.ui.library;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;
import quarterlight.car.ZoneCatalog;
import quarterlight.edit.EditRefused;
import quarterlight.edit.library.VisitLibrary;
import quarterlight.store.VisitOpening;
import quarterlight.store.library.LibraryHit;
import quarterlight.store.library.LibraryUnusable;
import quarterlight.store.library.LibraryVisit;
import quarterlight.task.Progress;

/** The library of the folders asked last, kept open between questions, so that typing does not look through the disk at each letter. One worker thread only. */
final class LibraryShelf {
    private final Path settings;
    private final ZoneCatalog catalog;
    private final Supplier<VisitOpening> opening;
    private final Function<Path, String> gone;
    private Optional<VisitLibrary> open = Optional.empty();
    private List<Path> folders = List.of();
    private List<String> remarks = List.of();

    /**
     * @param settings the folder where the index lies
     * @param opening how visits are opened; only for reading
     * @param gone what is said of a folder that is not there
     */
    LibraryShelf(Path settings, ZoneCatalog catalog, Supplier<VisitOpening> opening, Function<Path, String> gone) {
        this.settings = settings;
        this.catalog = catalog;
        this.opening = opening;
        this.gone = gone;
    }

    /** @param anew whether the folders are looked through again, although they are those of the last question */
    LibraryAnswer answer(LibraryQuestion asked, boolean anew, Progress progress)
            throws EditRefused, LibraryUnusable, IOException {
        if (anew || open.isEmpty() || !asked.folders().equals(folders)) {
            reopen(asked.folders(), progress);
        }
        progress.checkCancelled();
        VisitLibrary library = open.orElseThrow();
        List<LibraryVisit> visits = library.visits(asked.order());
        if (asked.isForAll()) {
            return new LibraryAnswer(LibraryItem.ofVisits(visits), 0, visits.size(), visits.size(), remarks);
        }
        List<LibraryHit> hits = asked.like() ? library.like(asked.text()) : library.find(asked.text(), asked.order());
        int saying = (int) hits.stream().map(LibraryHit::visit).distinct().count();
        return new LibraryAnswer(LibraryItem.ofHits(hits), hits.size(), saying, visits.size(), remarks);
    }

    private void reopen(List<Path> wanted, Progress progress) throws EditRefused, LibraryUnusable, IOException {
        close();
        List<String> said = new ArrayList<>();
        List<Path> there = new ArrayList<>();
        for (Path folder : wanted) {
            if (Files.isDirectory(folder)) {
                there.add(folder);
            } else {
                said.add(gone.apply(folder));
            }
        }
        VisitLibrary library = VisitLibrary.of(there, settings, catalog, opening.get(), progress);
        open = Optional.of(library);
        folders = wanted;
        said.addAll(library.remarks());
        remarks = said;
    }

    void close() throws LibraryUnusable {
        Optional<VisitLibrary> before = open;
        open = Optional.empty();
        if (before.isPresent()) {
            before.get().close();
        }
    }
}
