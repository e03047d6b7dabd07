package quarterlight.edit.archive;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.time.LocalDateTime;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import quarterlight.archive.ArchiveAudit;
import quarterlight.archive.BagWriter;
import quarterlight.archive.RfcBag;
import quarterlight.edit.EditRefused;
import quarterlight.edit.export.Disclosure;
import quarterlight.store.SampleVisit;
import quarterlight.store.VisitOpening;
import quarterlight.store.VisitStore;
import quarterlight.table.ZoneTable;
import quarterlight.task.Progress;
import quarterlight.visit.photo.MediaFacts;
import quarterlight.visit.photo.MediaHeader;
import quarterlight.visit.photo.PhotoFile;
import quarterlight.visit.photo.Sha256;

/** An archive holds the visit, restores to the same visit, and tells what is wrong with it. */
class ArchivingTest {
    @TempDir
    Path folder;

    private final Restoring restoring = new Restoring(VisitOpening.by(SampleVisit.CLOCK), ZoneTable.load());

    private final Archiving archiving =
            new Archiving(ZoneTable.load(), SampleVisit.CLOCK, (pages, pictures, progress) -> {
                Files.createDirectories(pages);
                Files.writeString(pages.resolve("page.html"), "for the buyer");
            });

    /** A visit of a released schema: random rows of every kind, with texts that trouble careless writers. */
    private Path released(int schema) throws IOException {
        Path visit = Files.createDirectory(folder.resolve("released"));
        Files.createDirectory(visit.resolve("originals"));
        try (InputStream in = SampleVisit.class.getResourceAsStream("schema-%04d.db".formatted(schema))) {
            Files.copy(in, visit.resolve("visit.db"));
        }
        return visit;
    }

    /** A visit with two originals on the disk. */
    private Path small() throws Exception {
        Path visit = folder.resolve("small");
        try (VisitStore store = VisitStore.create(visit, SampleVisit.fullFacts(), SampleVisit.CLOCK)) {
            for (int i = 1; i <= 2; i++) {
                byte[] content = ("original " + i).repeat(1000).getBytes(StandardCharsets.UTF_8);
                PhotoFile bare = SampleVisit.barePhoto(i);
                String hex = HexFormat.of()
                        .formatHex(MessageDigest.getInstance("SHA-256").digest(content));
                PhotoFile file = new PhotoFile(
                        bare.name(),
                        "originals/100%-" + i + ".JPG",
                        new Sha256(hex),
                        content.length,
                        bare.kind(),
                        bare.type(),
                        new MediaHeader(
                                bare.captured(),
                                bare.gpsUtc(),
                                bare.position(),
                                bare.camera(),
                                bare.width(),
                                bare.height(),
                                bare.orientation(),
                                bare.seconds(),
                                bare.contentId()),
                        bare.sharpness(),
                        bare.notes(),
                        MediaFacts.NONE);
                Files.write(visit.resolve(file.stored()), content);
                store.change("take in " + i, tx -> tx.addPhoto(file));
            }
        }
        Files.writeString(visit.resolve("pages/report.html"), "a page");
        Files.createDirectories(visit.resolve("diagrams"));
        Files.writeString(visit.resolve("diagrams/mine.svg"), "a diagram of one's own");
        return visit;
    }

    private Archived archive(Path visit, Path target, boolean forBuyer) throws Exception {
        try (VisitStore store = VisitStore.openForReading(visit)) {
            return archiving.make(store, target, forBuyer, Progress.NONE);
        }
    }

    private static String rows(Path visit) throws Exception {
        try (VisitStore store = VisitStore.openForReading(visit)) {
            return store.read() + "\n"
                    + store.tables().stream()
                            .filter(table -> !table.table().equals("edit-log"))
                            .toList();
        }
    }

    private static String everything(Path visit) throws Exception {
        try (VisitStore store = VisitStore.openForReading(visit)) {
            return store.read() + "\n" + store.editLog() + "\n" + store.tables();
        }
    }

    private List<String> names() throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(file -> file.getFileName().toString()).sorted().toList();
        }
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11})
    void everyRowOfEveryKindComesBack(int schema) throws Exception {
        Path visit = released(schema);
        Path zip = folder.resolve("a.zip");
        Archived archived = archive(visit, zip, false);
        assertThat(archived.missing()).as("its photos were never files").hasSize(2);
        assertThat(archived.ok()).isFalse();
        assertThat(RfcBag.of(zip).findings()).isEmpty();
        Path back = folder.resolve("back");
        Restoring.Restored restored = restoring.restore(zip, back, Progress.NONE);
        assertThat(restored.missing()).hasSize(2);
        assertThat(restored.faults()).isEmpty();
        assertThat(restored.leftOut()).isEmpty();
        // a visit of an older schema begins its chain whenever it is read, so its log differs by that entry
        boolean chained = schema >= 11;
        assertThat(chained ? everything(back) : rows(back)).isEqualTo(chained ? everything(visit) : rows(visit));
        assertThat(names()).containsExactly("a.zip", "back", "released");
    }

    @Test
    void originalsAndPagesComeBackByteForByte() throws Exception {
        Path visit = small();
        Path zip = folder.resolve("a.zip");
        Archived archived = archive(visit, zip, false);
        assertThat(archived.ok()).isTrue();
        assertThat(archived.originals()).isEqualTo(2);
        assertThat(archived.bytes()).isEqualTo(Files.size(zip));
        assertThat(archived.sha256().hex())
                .isEqualTo(HexFormat.of()
                        .formatHex(MessageDigest.getInstance("SHA-256").digest(Files.readAllBytes(zip))));
        RfcBag.Seen seen = RfcBag.of(zip);
        assertThat(seen.findings()).isEmpty();
        assertThat(seen.text("bag-info.txt")).contains("Bagging-Date: 2026-03-02\n");
        Path back = folder.resolve("back");
        assertThat(restoring.restore(zip, back, Progress.NONE).ok()).isTrue();
        for (String file :
                List.of("originals/100%-1.JPG", "originals/100%-2.JPG", "pages/report.html", "diagrams/mine.svg")) {
            assertThat(back.resolve(file)).hasSameBinaryContentAs(visit.resolve(file));
        }
        assertThat(everything(back)).isEqualTo(everything(visit));
        assertThat(ArchiveAudit.of(zip, Progress.NONE).ok()).isTrue();
    }

    @Test
    void aChangedAMissingAndALinkedOriginalAreTold() throws Exception {
        Path visit = small();
        Files.writeString(visit.resolve("originals/100%-1.JPG"), "somebody was here");
        Path outside = Files.writeString(folder.resolve("secret"), "not of this visit");
        Files.delete(visit.resolve("originals/100%-2.JPG"));
        Files.createSymbolicLink(visit.resolve("originals/100%-2.JPG"), outside);
        Files.createSymbolicLink(visit.resolve("pages/link.html"), outside);
        Files.writeString(visit.resolve("originals/stray.txt"), "nobody names it");
        Path zip = folder.resolve("a.zip");
        Archived archived = archive(visit, zip, false);
        assertThat(archived.changed()).containsExactly("originals/100%-1.JPG", "originals/100%-2.JPG");
        assertThat(archived.unnamed()).containsExactly("originals/stray.txt", "pages/link.html");
        RfcBag.Seen seen = RfcBag.of(zip);
        assertThat(seen.findings()).isEmpty();
        assertThat(seen.files()).doesNotContainKeys("data/originals/100%-2.JPG", "data/pages/link.html");
        assertThat(seen.text("data/originals/100%-1.JPG")).isEqualTo("somebody was here");
        ArchiveAudit audit = ArchiveAudit.of(zip, Progress.NONE);
        assertThat(audit.changed()).containsExactly("data/originals/100%-1.JPG");
        assertThat(audit.missing()).containsExactly("data/originals/100%-2.JPG");
        Restoring.Restored restored = restoring.restore(zip, folder.resolve("back"), Progress.NONE);
        assertThat(restored.changed()).containsExactly("originals/100%-1.JPG");
        assertThat(restored.missing()).containsExactly("originals/100%-2.JPG");
    }

    @Test
    void whatIsThereIsNeverReplacedAndACancelledArchiveLeavesNothing() throws Exception {
        Path visit = small();
        Path taken = Files.writeString(folder.resolve("taken.zip"), "mine");
        assertThatThrownBy(() -> archive(visit, taken, false)).isInstanceOf(EditRefused.class);
        assertThat(taken).hasContent("mine");
        assertThatThrownBy(() -> archive(visit, visit.resolve("pages/a.zip"), false))
                .isInstanceOf(EditRefused.class)
                .hasMessageContaining("within the visit");
        assertThatThrownBy(() -> archive(visit, folder.resolve("none/a.zip"), false))
                .isInstanceOf(EditRefused.class)
                .hasMessageContaining("is not there");
        Path zip = folder.resolve("a.zip");
        Progress stopped = new Progress() {
            private int asked;

            @Override
            public void report(int done, int total, String what) {}

            @Override
            public boolean cancelled() {
                return ++asked > 3;
            }
        };
        try (VisitStore store = VisitStore.openForReading(visit)) {
            assertThatThrownBy(() -> archiving.make(store, zip, false, stopped))
                    .isInstanceOf(CancellationException.class);
        }
        assertThat(names()).containsExactly("small", "taken.zip");
        archive(visit, zip, false);
        assertThatThrownBy(() -> restoring.restore(zip, visit, Progress.NONE)).isInstanceOf(EditRefused.class);
        assertThatThrownBy(() -> restoring.restore(zip, folder.resolve("back"), stopped))
                .isInstanceOf(CancellationException.class);
        assertThat(names()).containsExactly("a.zip", "small", "taken.zip");
    }

    @Test
    void theBuyersArchiveHasPagesAndTablesAndIsNotRestored() throws Exception {
        Path visit = released(2);
        Path zip = folder.resolve("b.zip");
        assertThat(archive(visit, zip, true).ok()).isTrue();
        RfcBag.Seen seen = RfcBag.of(zip);
        assertThat(seen.findings()).isEmpty();
        assertThat(seen.text("data/pages/page.html")).isEqualTo("for the buyer");
        assertThat(seen.files().keySet())
                .noneMatch(path -> path.endsWith(".db")
                        || path.contains("originals/")
                        || path.contains("hidden")
                        || path.contains("edit-log")
                        || path.contains("clocks")
                        || path.contains("left-out"));
        assertThat(seen.text("data/tables/photos.json")).doesNotContain("latitude", "39.7391", "alder-pocket-3", "gps");
        assertThatThrownBy(() -> restoring.restore(zip, folder.resolve("back"), Progress.NONE))
                .isInstanceOf(EditRefused.class)
                .hasMessageContaining("for the buyer");
        assertThat(names()).containsExactly("b.zip", "released");
    }

    /** A new table or column must be thought about before it goes to a buyer. */
    @Test
    void everyTableGoesToTheBuyerByDecision() throws Exception {
        try (VisitStore store = VisitStore.openForReading(released(2))) {
            List<String> given = store.tables().stream()
                    .filter(table -> Disclosure.FOR_BUYER.of(table).isPresent())
                    .map(table -> table.table())
                    .toList();
            assertThat(given)
                    .containsExactlyInAnyOrder(
                            "claims",
                            "coverage",
                            "facts",
                            "features",
                            "gauge",
                            "marks",
                            "notes",
                            "odometer",
                            "photos",
                            "pins",
                            "readings",
                            "signs",
                            "statements",
                            "substrates",
                            "traces",
                            "trials");
        }
    }

    @Test
    void aDamagedAndAForeignBagAreRefusedWithTheFile() throws Exception {
        Path zip = folder.resolve("bad.zip");
        try (OutputStream out = Files.newOutputStream(zip);
                BagWriter bag = new BagWriter(out, "b", LocalDateTime.of(2026, 5, 2, 12, 0))) {
            bag.put("visit.db", "no database");
            bag.finish(Map.of(), Optional.empty());
        }
        assertThatThrownBy(() -> restoring.restore(zip, folder.resolve("back"), Progress.NONE))
                .isInstanceOf(EditRefused.class)
                .hasMessageContaining("cannot be opened");
        Path good = folder.resolve("good.zip");
        archive(small(), good, false);
        byte[] bytes = Files.readAllBytes(good);
        String text = new String(bytes, StandardCharsets.ISO_8859_1);
        bytes[text.indexOf("original 2original 2") + 5] ^= 1;
        Path damaged = Files.write(folder.resolve("damaged.zip"), bytes);
        assertThatThrownBy(() -> restoring.restore(damaged, folder.resolve("back"), Progress.NONE))
                .isInstanceOf(EditRefused.class)
                .hasMessageContaining("damaged.zip is damaged: data/originals/100%-2.JPG");
        assertThat(ArchiveAudit.of(damaged, Progress.NONE).changed()).containsExactly("data/originals/100%-2.JPG");
        assertThat(names()).containsExactly("bad.zip", "damaged.zip", "good.zip", "small");
    }
}
