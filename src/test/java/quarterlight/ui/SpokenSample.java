package quarterlight.ui;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.OptionalDouble;
import quarterlight.store.SampleVisit;
import quarterlight.store.VisitStore;
import quarterlight.visit.photo.MediaFacts;
import quarterlight.visit.photo.MediaHeader;
import quarterlight.visit.photo.MediaKind;
import quarterlight.visit.photo.PhotoFile;
import quarterlight.visit.photo.Sha256;

/** Words of an invented walk in a visit, without the workers that an intake needs. */
public final class SpokenSample {
    /** Sure and doubtful, with and without a place. */
    public static final String WALK =
            """
            [0:03] The left front fender is dented.
            [0:09] Overspray on the trunk floor.
            [0:14] Reading on the hood four to five mils.
            [0:20] The horn works.
            [0:26] Engine stamp on the pad, C seven one two.
            [0:33] The seller says the engine was rebuilt.
            [0:48] I did not look at the spare wheel well.
            [0:55] That one is dented as well.
            [1:02] The right rear door is rusted through at the bottom.
            """;

    private SpokenSample() {}

    /** Puts words into the originals of a visit. */
    public static void add(VisitStore store, int number, String name, String words) throws Exception {
        add(store, SampleVisit.hash(number), name, words.getBytes(StandardCharsets.UTF_8));
    }

    /** Puts a memo into the originals of a visit. */
    public static void addMemo(VisitStore store, int number, String name, byte[] sound) throws Exception {
        add(store, SampleVisit.hash(number), name, sound, MediaKind.SOUND);
    }

    private static void add(VisitStore store, Sha256 sha256, String name, byte[] words) throws Exception {
        add(store, sha256, name, words, MediaKind.WORDS);
    }

    private static void add(VisitStore store, Sha256 sha256, String name, byte[] words, MediaKind kind)
            throws Exception {
        String stored = "originals/" + sha256.prefix() + "-" + name;
        write(store.folder().root().resolve(stored), words);
        PhotoFile file = new PhotoFile(
                name,
                stored,
                sha256,
                words.length,
                kind,
                kind == MediaKind.WORDS ? "timed text" : "WAV",
                MediaHeader.NONE,
                OptionalDouble.empty(),
                List.of(),
                MediaFacts.NONE);
        store.change("take in words", tx -> tx.addPhoto(file));
    }

    private static void write(Path file, byte[] bytes) throws IOException {
        Files.createDirectories(file.getParent());
        Files.write(file, bytes);
    }
}
