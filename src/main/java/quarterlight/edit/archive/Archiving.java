package quarterlight.edit.archive;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.OffsetDateTime;
import java.time.temporal.ChronoUnit;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import quarterlight.about.ProgramVersion;
import quarterlight.archive.BagWriter;
import quarterlight.archive.Digested;
import quarterlight.archive.DigestedOutput;
import quarterlight.archive.Packing;
import quarterlight.archive.signature.ReaderFiles;
import quarterlight.archive.signature.SigningKey;
import quarterlight.car.ZoneCatalog;
import quarterlight.edit.EditRefused;
import quarterlight.edit.export.Disclosure;
import quarterlight.edit.export.Snapshot;
import quarterlight.edit.export.Targets;
import quarterlight.edit.export.VisitTables;
import quarterlight.edit.list.VisitLists;
import quarterlight.file.StagingFolder;
import quarterlight.finish.FinishHistory;
import quarterlight.matters.rule.MatterRule;
import quarterlight.store.VisitStore;
import quarterlight.store.problem.VisitProblem;
import quarterlight.table.TableUnreadable;
import quarterlight.task.Progress;
import quarterlight.visit.VisitFacts;

/**
 * Packs a visit into one file that proves itself: a bag with the database, the originals, every table and the pages; or, for the
 * buyer, with the tables and pages that a buyer gets. Nothing of the visit is changed; that an archive was made is noted beside it.
 */
public final class Archiving {
    static final String CONTENTS = "Quarterlight-Contents";
    static final String DATABASE = "visit.db";
    static final String FOR_BUYER = "for the buyer";
    static final String PICTURES = "pictures";
    private static final String WHOLE = "whole visit";

    private final ZoneCatalog catalog;
    private final Clock clock;
    private final PageMaker pages;
    private final Optional<Path> settings;
    private final Optional<SigningKey> key;

    /** Makes the pages for the buyer, and the full-size pictures beside them. */
    @FunctionalInterface
    public interface PageMaker {
        /**
         * @param folder for the pages; need not exist
         * @param pictures for the pictures, as a buyer may see them
         */
        void write(Path folder, Path pictures, Progress progress) throws VisitProblem, EditRefused, IOException;
    }

    /** @param pages asked only for an archive for the buyer; a whole one holds the pages as they lie in the visit */
    public Archiving(ZoneCatalog catalog, Clock clock, PageMaker pages) {
        this(catalog, clock, pages, Optional.empty(), Optional.empty());
    }

    private Archiving(
            ZoneCatalog catalog, Clock clock, PageMaker pages, Optional<Path> settings, Optional<SigningKey> key) {
        this.settings = settings;
        this.key = key;
        this.catalog = Objects.requireNonNull(catalog, "catalog");
        this.clock = Objects.requireNonNull(clock, "clock");
        this.pages = Objects.requireNonNull(pages, "pages");
    }

    /** @param folder of settings, whose lists go into a whole archive if the visit has none that came with it */
    public Archiving withListsOf(Path folder) {
        return new Archiving(catalog, clock, pages, Optional.of(folder), key);
    }

    /** @param by signs the archive */
    public Archiving signedBy(SigningKey by) {
        return new Archiving(catalog, clock, pages, settings, Optional.of(by));
    }

    /**
     * Makes the archive, whole or not at all.
     *
     * @throws EditRefused if something is at the target, or it lies within the visit
     * @throws java.util.concurrent.CancellationException if the progress is cancelled; nothing is left behind
     */
    public Archived make(VisitStore visit, Path target, boolean forBuyer, Progress progress)
            throws EditRefused, VisitProblem, IOException {
        Targets.requireOutside(visit.folder().root(), target);
        try (StagingFolder unfinished = Targets.beside(target);
                Snapshot snapshot = Snapshot.of(visit, unfinished.folder())) {
            Path made = unfinished.folder().resolve("archive.zip");
            Archived archived;
            try (DigestedOutput out = new DigestedOutput(new BufferedOutputStream(Files.newOutputStream(made)));
                    BagWriter bag = new BagWriter(out, baseName(target), LocalDateTime.now(clock))) {
                BaggedFiles files = forBuyer
                        ? buyersShare(bag, unfinished.folder(), progress)
                        : everything(bag, visit, snapshot, progress);
                VisitTables tables =
                        VisitTables.of(snapshot.store(), catalog, forBuyer ? Disclosure.FOR_BUYER : Disclosure.WHOLE);
                for (Map.Entry<String, String> table : tables.csvAndJson().entrySet()) {
                    bag.put("tables/" + table.getKey(), table.getValue());
                }
                progress.checkCancelled();
                Optional<String> head = snapshot.store().logHead();
                VisitFacts facts = tables.visit().facts();
                for (Map.Entry<String, String> file : ReaderFiles.of(
                                facts.car().name(), forBuyer, key.map(SigningKey::open))
                        .entrySet()) {
                    bag.beside(file.getKey(), file.getValue());
                }
                bag.finish(info(facts, forBuyer, head), key);
                out.flush();
                Digested digested = out.finish();
                archived = new Archived(
                        target,
                        digested.bytes(),
                        digested.sha256(),
                        files.originals,
                        files.changed,
                        files.missing,
                        files.unreadable,
                        files.unnamed,
                        head,
                        key.map(by -> by.open().fingerprint()));
            }
            progress.checkCancelled();
            Targets.deliver(unfinished, made, target);
            MadeArchives.note(visit.folder().root(), OffsetDateTime.now(clock), forBuyer ? FOR_BUYER : WHOLE, archived);
            return archived;
        }
    }

    private BaggedFiles everything(BagWriter bag, VisitStore visit, Snapshot snapshot, Progress progress)
            throws EditRefused, VisitProblem, IOException {
        BaggedFiles files = new BaggedFiles(bag, progress);
        try (InputStream database = Files.newInputStream(snapshot.database())) {
            bag.put(DATABASE, Packing.SMALLER, database, progress);
        }
        if (settings.isPresent()) {
            lists(bag, visit.folder().root(), settings.get());
        }
        files.originals(visit.folder(), snapshot.store().read().photos());
        files.diagrams(visit.folder().root());
        files.pages(visit.folder().pages());
        return files;
    }

    private static void lists(BagWriter bag, Path visit, Path settings) throws EditRefused, IOException {
        try {
            for (Map.Entry<String, String> list :
                    VisitLists.texts(visit, settings).entrySet()) {
                bag.put(VisitLists.FOLDER + "/" + list.getKey(), list.getValue());
            }
        } catch (TableUnreadable e) {
            throw new EditRefused("lists", e.getMessage());
        }
    }

    private BaggedFiles buyersShare(BagWriter bag, Path folder, Progress progress)
            throws EditRefused, VisitProblem, IOException {
        BaggedFiles files = new BaggedFiles(bag, progress);
        Path made = folder.resolve("pages");
        Path pictures = folder.resolve(PICTURES);
        pages.write(made, pictures, progress);
        files.pages(made);
        files.pictures(pictures);
        return files;
    }

    private Map<String, String> info(VisitFacts facts, boolean forBuyer, Optional<String> head) {
        Map<String, String> info = new LinkedHashMap<>();
        info.put("Bag-Software-Agent", "Quarterlight");
        info.put("Bagging-Date", LocalDate.now(clock).toString());
        info.put("External-Description", "Visit to one car: " + facts.car().name());
        info.put(CONTENTS, forBuyer ? FOR_BUYER : WHOLE);
        info.put("Quarterlight-Version", ProgramVersion.ours().text());
        info.put(
                "Quarterlight-Models",
                "finish history " + FinishHistory.VERSION + ", what matters " + MatterRule.VERSION);
        head.ifPresent(end -> info.put(ArchiveProof.HEAD, end));
        if (key.isPresent()) {
            facts.inspector().ifPresent(name -> info.put("Quarterlight-Signed-By", name));
            info.put(
                    "Quarterlight-Signed-At",
                    OffsetDateTime.now(clock).truncatedTo(ChronoUnit.SECONDS).toString());
        }
        return info;
    }

    /** The folder within the zip bears the name of the file. */
    private static String baseName(Path target) {
        String name = target.toAbsolutePath().normalize().getFileName().toString();
        String stem = name.replaceFirst("(?i)\\.zip$", "").replaceAll("[\\\\/:\\p{Cntrl}]", "_");
        return stem.isBlank() || stem.matches("\\.+") ? "visit" : stem;
    }
}
