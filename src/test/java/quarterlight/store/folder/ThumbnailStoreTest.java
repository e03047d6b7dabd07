package quarterlight.store.folder;

import static org.assertj.core.api.Assertions.assertThat;
import static quarterlight.store.SampleVisit.hash;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ThumbnailStoreTest {
    @TempDir
    Path folder;

    private VisitFolder visit() {
        return new VisitFolder(folder);
    }

    @Test
    void aPictureComesBackBySizeAlsoInAnotherSession() {
        try (ThumbnailStore thumbs = ThumbnailStore.open(visit())) {
            thumbs.put(hash(1), 320, new byte[] {1, 2, 3});
            thumbs.put(hash(1), 160, new byte[] {4});
            thumbs.put(hash(1), 160, new byte[] {5});
        }
        try (ThumbnailStore thumbs = ThumbnailStore.open(visit())) {
            assertThat(thumbs.get(hash(1), 320))
                    .hasValueSatisfying(b -> assertThat(b).containsExactly(1, 2, 3));
            assertThat(thumbs.get(hash(1), 160))
                    .hasValueSatisfying(b -> assertThat(b).containsExactly(5));
            assertThat(thumbs.get(hash(2), 320)).isEmpty();
        }
    }

    @Test
    void aCacheDeletedWhileOpenIsMadeAnew() throws Exception {
        try (ThumbnailStore thumbs = ThumbnailStore.open(visit())) {
            thumbs.put(hash(1), 320, new byte[] {1});
            Files.delete(visit().thumbs());
            thumbs.put(hash(2), 320, new byte[] {2});
            assertThat(thumbs.get(hash(2), 320)).isPresent();
        }
        assertThat(visit().thumbs()).exists();
        try (ThumbnailStore thumbs = ThumbnailStore.open(visit())) {
            assertThat(thumbs.get(hash(2), 320)).isPresent();
        }
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6})
    void aBrokenCacheIsMadeAnew(long seed) throws Exception {
        try (ThumbnailStore thumbs = ThumbnailStore.open(visit())) {
            for (int i = 0; i < 20; i++) {
                thumbs.put(hash(i), 320, new byte[3000]);
            }
        }
        byte[] bytes = Files.readAllBytes(visit().thumbs());
        Random random = new Random(seed);
        int from = seed % 2 == 0 ? 0 : 100;
        for (int i = from; i < bytes.length; i += 1 + random.nextInt(40)) {
            bytes[i] = (byte) random.nextInt();
        }
        Files.write(visit().thumbs(), bytes);
        try (ThumbnailStore thumbs = ThumbnailStore.open(visit())) {
            for (int i = 0; i < 20; i++) {
                thumbs.get(hash(i), 320);
                thumbs.put(hash(100 + i), 320, new byte[] {(byte) i});
                assertThat(thumbs.get(hash(100 + i), 320))
                        .as("seed %d, picture %d", seed, i)
                        .isPresent();
            }
        }
    }

    @Test
    void whereNoFileCanBeTheCacheIsInMemory() throws Exception {
        Files.createDirectory(visit().thumbs());
        try (ThumbnailStore thumbs = ThumbnailStore.open(visit())) {
            thumbs.put(hash(1), 320, new byte[] {1});
            assertThat(thumbs.get(hash(1), 320)).isPresent();
        }
    }
}
