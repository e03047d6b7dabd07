package quarterlight.store.folder;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import quarterlight.photo.originals.OriginalsAudit;
import quarterlight.store.SampleVisit;
import quarterlight.store.VisitStore;
import quarterlight.store.problem.VisitProblem;
import quarterlight.task.Progress;
import quarterlight.visit.photo.Photo;
import quarterlight.visit.photo.PhotoFile;

/** Visits of the schemas before the fourth, whose originals are named by the first 12 digits of their digests. */
class OriginalNameUpgradeTest {
    @TempDir
    Path folder;

    private Path visit;
    private Path originals;

    @BeforeEach
    void make() throws Exception {
        visit = folder.resolve("visit");
        VisitStore.create(visit, SampleVisit.bareFacts(), SampleVisit.CLOCK).close();
        originals = Files.createDirectories(visit.resolve("originals"));
        sql("DROP INDEX photo_by_stored", "PRAGMA user_version = 3");
    }

    private void sql(String... statements) throws SQLException {
        try (Connection connection = DriverManager.getConnection("jdbc:sqlite:" + visit.resolve("visit.db"));
                Statement statement = connection.createStatement()) {
            for (String text : statements) {
                statement.execute(text);
            }
        }
    }

    private static String digest(String content) throws Exception {
        return HexFormat.of()
                .formatHex(MessageDigest.getInstance("SHA-256").digest(content.getBytes(StandardCharsets.UTF_8)));
    }

    /** A photo as an earlier program left it. */
    private void photo(String content, String name, String digest, boolean there) throws Exception {
        String stored = digest.substring(0, 12) + "-" + name;
        if (there) {
            Files.writeString(originals.resolve(stored), content);
        }
        sql("INSERT INTO photo (name, stored, sha256, bytes, kind, type, orientation) VALUES ('" + name
                + "', 'originals/" + stored + "', '" + digest + "', " + content.length() + ", 'photo', 'JPEG', 1)");
    }

    private List<PhotoFile> read(boolean editing) throws VisitProblem {
        try (VisitStore store =
                editing ? VisitStore.openForEditing(visit, SampleVisit.CLOCK) : VisitStore.openForReading(visit)) {
            return store.read().photos().stream().map(Photo::file).toList();
        }
    }

    private Map<String, String> files() throws Exception {
        try (Stream<Path> all = Files.list(originals)) {
            Map<String, String> files = new TreeMap<>();
            for (Path file : all.collect(Collectors.toList())) {
                files.put(file.getFileName().toString(), Files.readString(file));
            }
            return files;
        }
    }

    @Test
    void filesGetTheirWholeDigestsWhenTheVisitIsUpgraded() throws Exception {
        photo("one", "1.jpg", digest("one"), true);
        photo("two", "2.jpg", digest("two"), true);
        assertThat(OriginalsAudit.of(visit, read(false), Progress.NONE))
                .as("a reader changes nothing and finds them as they are")
                .isEqualTo(new OriginalsAudit(List.of(), List.of(), List.of(), List.of()));
        assertThat(files())
                .containsOnlyKeys(
                        digest("one").substring(0, 12) + "-1.jpg", digest("two").substring(0, 12) + "-2.jpg");
        List<PhotoFile> photos = read(true);
        assertThat(photos)
                .extracting(PhotoFile::stored)
                .containsExactly("originals/" + digest("one") + "-1.jpg", "originals/" + digest("two") + "-2.jpg");
        assertThat(files()).isEqualTo(Map.of(digest("one") + "-1.jpg", "one", digest("two") + "-2.jpg", "two"));
        assertThat(OriginalsAudit.of(visit, photos, Progress.NONE))
                .isEqualTo(new OriginalsAudit(List.of(), List.of(), List.of(), List.of()));
    }

    @Test
    void ofTwoPhotosOfOneNameTheOneWhoseContentItIsGetsTheFile() throws Exception {
        String kept = digest("kept");
        String lost = kept.substring(0, 12) + digest("lost").substring(12);
        photo("lost", "1.jpg", lost, true);
        photo("kept", "1.jpg", kept, true);
        List<PhotoFile> photos = read(true);
        assertThat(files()).isEqualTo(Map.of(kept + "-1.jpg", "kept"));
        assertThat(OriginalsAudit.of(visit, photos, Progress.NONE).missing())
                .containsExactly("originals/" + lost + "-1.jpg");
    }

    @Test
    void aRenameThatWasCutOffLeavesNothingThatCannotBeFound() throws Exception {
        photo("one", "1.jpg", digest("one"), true);
        photo("two", "2.jpg", digest("two"), true);
        Path whole = originals.resolve(digest("one") + "-1.jpg");
        Files.move(originals.resolve(digest("one").substring(0, 12) + "-1.jpg"), whole);
        assertThat(OriginalsAudit.of(visit, read(false), Progress.NONE).ok()).isTrue();
        Files.writeString(originals.resolve(digest("two") + "-2.jpg"), "what is there stays");
        List<PhotoFile> photos = read(true);
        assertThat(whole).hasContent("one");
        assertThat(files()).containsEntry(digest("two").substring(0, 12) + "-2.jpg", "two");
        assertThat(OriginalsAudit.of(visit, photos, Progress.NONE).changed())
                .containsExactly("originals/" + digest("two") + "-2.jpg");
    }

    @Test
    void noTwoPhotosCanHaveOneFile() throws Exception {
        photo("one", "1.jpg", digest("one"), true);
        read(true);
        String stored = "originals/" + digest("one") + "-1.jpg";
        org.assertj.core.api.Assertions.assertThatThrownBy(() ->
                        sql("INSERT INTO photo (name, stored, sha256, bytes, kind, type, orientation) VALUES ('2', '"
                                + stored + "', '" + digest("two") + "', 3, 'photo', 'JPEG', 1)"))
                .hasMessageContaining("UNIQUE");
    }
}
