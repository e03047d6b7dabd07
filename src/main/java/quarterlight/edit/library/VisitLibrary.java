package quarterlight.edit.library;

import static quarterlight.language.Sentences.say;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeMap;
import quarterlight.car.ZoneCatalog;
import quarterlight.edit.EditRefused;
import quarterlight.store.VisitOpening;
import quarterlight.store.VisitStore;
import quarterlight.store.library.LibraryHit;
import quarterlight.store.library.LibraryIndex;
import quarterlight.store.library.LibraryRow;
import quarterlight.store.library.LibraryUnusable;
import quarterlight.store.library.LibraryVisit;
import quarterlight.store.problem.VisitProblem;
import quarterlight.task.Progress;
import quarterlight.visit.VisitFacts;
import quarterlight.visit.VisitRecord;

/**
 * All visits in some folders, searchable. What they say is kept in an index in the settings folder, which is brought up to date by the stamps of their
 * databases and may be deleted at any time. Visits are only read. Not for the event thread.
 */
public final class VisitLibrary implements AutoCloseable {
    private static final System.Logger LOG = System.getLogger(VisitLibrary.class.getName());

    /** The name of the index in the settings folder. */
    public static final String INDEX = "visits.index";

    /** More rows are not told. */
    public static final int MOST = 500;

    private static final int AT_ONCE = 50;

    private final ZoneCatalog catalog;
    private final VisitOpening opening;
    private final LibraryIndex index;
    private final List<Path> folders;
    private final List<String> remarks = new ArrayList<>();

    private VisitLibrary(ZoneCatalog catalog, VisitOpening opening, LibraryIndex index, List<Path> folders) {
        this.catalog = Objects.requireNonNull(catalog, "catalog");
        this.opening = Objects.requireNonNull(opening, "opening");
        this.index = index;
        this.folders = List.copyOf(folders);
    }

    /**
     * Opens the index for these folders and brings it up to date.
     *
     * @param opening how visits are opened; only for reading
     * @throws EditRefused if a folder is not there or cannot be read
     */
    public static VisitLibrary of(
            List<Path> folders, Path settings, ZoneCatalog catalog, VisitOpening opening, Progress progress)
            throws EditRefused, LibraryUnusable, IOException {
        List<Path> tops = new ArrayList<>();
        for (Path folder : folders) {
            if (!Files.isDirectory(folder)) {
                throw new EditRefused(
                        folder.toString(),
                        say(Files.exists(folder) ? "refused.library.file" : "refused.library.gone", folder));
            }
            tops.add(folder.toAbsolutePath().normalize());
        }
        Path file = settings.resolve(INDEX);
        try {
            return refreshed(LibraryIndex.open(file), tops, catalog, opening, progress);
        } catch (LibraryUnusable e) {
            LOG.log(System.Logger.Level.INFO, "the index of visits is made anew", e);
            LibraryIndex.discard(file);
            return refreshed(LibraryIndex.open(file), tops, catalog, opening, progress);
        }
    }

    private static VisitLibrary refreshed(
            LibraryIndex index, List<Path> folders, ZoneCatalog catalog, VisitOpening opening, Progress progress)
            throws LibraryUnusable, IOException {
        VisitLibrary library = new VisitLibrary(catalog, opening, index, folders);
        try {
            library.refresh(progress);
            return library;
        } catch (LibraryUnusable | IOException | RuntimeException e) {
            index.close();
            throw e;
        }
    }

    private void refresh(Progress progress) throws LibraryUnusable, IOException {
        Map<Path, String> there = new TreeMap<>();
        for (Path folder : folders) {
            there.putAll(VisitFolders.below(folder));
        }
        Map<Path, String> known = index.stamps();
        for (Path folder : known.keySet()) {
            boolean named = folders.stream().anyMatch(folder::startsWith);
            if (named && !there.containsKey(folder)) {
                index.forget(folder);
            }
        }
        there.entrySet().removeIf(visit -> visit.getValue().equals(known.get(visit.getKey())));
        Map<LibraryVisit, List<LibraryRow>> read = new LinkedHashMap<>();
        int done = 0;
        for (Map.Entry<Path, String> visit : there.entrySet()) {
            progress.checkCancelled();
            progress.report(
                    done++, there.size(), say("progress.reading", visit.getKey().getFileName()));
            read(visit.getKey(), visit.getValue(), read);
            if (read.size() == AT_ONCE) {
                index.put(read);
                read.clear();
            }
        }
        index.put(read);
    }

    private void read(Path folder, String stamp, Map<LibraryVisit, List<LibraryRow>> read) throws LibraryUnusable {
        try (VisitStore store = opening.forReading(folder)) {
            VisitRecord record = store.read();
            VisitFacts facts = record.facts();
            read.put(
                    new LibraryVisit(
                            folder,
                            stamp,
                            facts.car().name(),
                            facts.date().map(Object::toString),
                            facts.client(),
                            facts.place(),
                            record.photos().size(),
                            VisitSayings.ofCar(record, catalog)),
                    VisitSayings.of(record, catalog));
        } catch (VisitProblem e) {
            index.forget(folder);
            remarks.add(e.getMessage());
        }
    }

    /** Visits that could not be read, a sentence each. */
    public List<String> remarks() {
        return List.copyOf(remarks);
    }

    /** Every visit in the folders, in an order. */
    public List<LibraryVisit> visits(VisitOrder order) throws LibraryUnusable {
        return index.visits(folders).stream().sorted(order.comparator()).toList();
    }

    /** Rows that hold every word of a text, {@link #MOST} at most; the visits in an order. */
    public List<LibraryHit> find(String text, VisitOrder order) throws LibraryUnusable {
        return index.find(text, folders, MOST).stream()
                .sorted(Comparator.comparing(LibraryHit::visit, order.comparator()))
                .toList();
    }

    /** Stamps, tags and castings whose number is like another, the likest first, {@link #MOST} at most. */
    public List<LibraryHit> like(String number) throws LibraryUnusable {
        String asked = MarkLikeness.bare(number);
        List<String> like = index.numbers(MarkLikeness.least(asked), MarkLikeness.most(asked)).stream()
                .filter(one -> MarkLikeness.isLike(one, asked))
                .sorted(Comparator.<String>comparingInt(one -> MarkLikeness.apart(one, asked))
                        .thenComparing(Comparator.naturalOrder()))
                .toList();
        Set<LibraryHit> hits = new LinkedHashSet<>();
        for (String one : like) {
            if (hits.size() < MOST) {
                hits.addAll(index.bearing(one, folders, MOST - hits.size()));
            }
        }
        return List.copyOf(hits);
    }

    @Override
    public void close() throws LibraryUnusable {
        index.close();
    }
}
