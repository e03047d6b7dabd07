package quarterlight.settings;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import quarterlight.car.ZoneId;
import quarterlight.car.body.BodyStyle;
import quarterlight.walk.PastWalk;
import quarterlight.walk.WalkHabits;

class WalkFolderTest {
    private static final ZoneId HOOD = new ZoneId("hood");
    private static final ZoneId ROOF = new ZoneId("roof");

    @TempDir
    Path settings;

    private WalkFolder folder;

    @BeforeEach
    void open() {
        folder = new WalkFolder(settings.resolve("not yet there"));
    }

    @Test
    void whatIsKeptIsReadAgain() {
        PastWalk walk = walk(BodyStyle.COUPE, 0, HOOD, HOOD, ROOF);

        assertThat(folder.read()).isEqualTo(new WalkFolder.Remembered(List.of(), List.of()));
        assertThat(folder.keep(walk)).isEmpty();
        assertThat(folder.read()).isEqualTo(new WalkFolder.Remembered(List.of(walk), List.of()));
    }

    @Test
    void aVisitCountsOnceHoweverOftenItIsKept() throws IOException {
        folder.keep(walk(BodyStyle.COUPE, 0, HOOD, ROOF));
        folder.keep(walk(BodyStyle.COUPE, 0, HOOD, ROOF));
        PastWalk grown = walk(BodyStyle.COUPE, 0, ROOF, HOOD, ROOF, HOOD, ROOF);
        folder.keep(grown);

        assertThat(folder.read().walks()).containsExactly(grown);
        assertThat(files()).hasSize(1);
    }

    @Test
    void theFirstPhotoMayBeInSeveralVisits() {
        PastWalk one = walk(BodyStyle.COUPE, 0, HOOD, ROOF, HOOD, ROOF);
        List<PastWalk.Moment> photos = new ArrayList<>(
                walk(BodyStyle.COUPE, 100, HOOD, ROOF, HOOD, ROOF).photos());
        photos.set(0, one.photos().get(0));
        PastWalk other = new PastWalk(BodyStyle.COUPE, photos);
        folder.keep(one);
        folder.keep(other);

        assertThat(folder.read().walks()).containsExactlyInAnyOrder(one, other);
    }

    @Test
    void aVisitWhosePinsAreTakenAwayIsForgotten() throws IOException {
        folder.keep(walk(BodyStyle.COUPE, 0, HOOD, ROOF));
        PastWalk.Moment first = walk(BodyStyle.COUPE, 0, HOOD).photos().get(0);
        folder.keep(new PastWalk(BodyStyle.COUPE, List.of(first)));

        assertThat(folder.read().walks()).isEmpty();
        assertThat(files()).isEmpty();
    }

    @Test
    void aDamagedFileCostsOneSentenceAndNoOtherWalk() throws IOException {
        PastWalk good = walk(BodyStyle.SEDAN, 0, HOOD, ROOF);
        folder.keep(walk(BodyStyle.COUPE, 100, HOOD, ROOF));
        Path file = files().get(0);
        folder.keep(good);
        byte[] whole = Files.readAllBytes(file);
        long seed = 7;
        Random random = new Random(seed);
        for (int round = 0; round < 60; round++) {
            byte[] bytes = whole.clone();
            if (round % 2 == 0) {
                bytes = java.util.Arrays.copyOf(bytes, random.nextInt(bytes.length - 1));
            } else {
                bytes[random.nextInt(bytes.length)] = (byte) 0xff;
            }
            Files.write(file, bytes);

            WalkFolder.Remembered remembered = folder.read();

            assertThat(remembered.walks()).as("seed %d, round %d", seed, round).containsExactly(good);
            assertThat(remembered.remarks()).hasSize(1);
            assertThat(remembered.remarks().get(0))
                    .contains(file.toString(), "Delete the file")
                    .doesNotContain("Exception");
        }
    }

    @Test
    void aFolderThatCannotBeWrittenCostsOneSentence() throws IOException {
        Path blocked = settings.resolve("blocked");
        Files.createDirectories(blocked);
        Files.writeString(blocked.resolve("walks"), "a file where the folder should be");

        List<String> remarks = new WalkFolder(blocked).keep(walk(BodyStyle.COUPE, 0, HOOD, ROOF));

        assertThat(remarks).hasSize(1);
        assertThat(remarks.get(0)).contains(blocked.toString()).doesNotContain("Exception");
    }

    @Test
    void habitsComeFromCarsOfTheStyleAndNeverFromTheVisitItself() {
        PastWalk atHand = walk(BodyStyle.COUPE, 0, HOOD, ROOF);
        PastWalk coupe = walk(BodyStyle.COUPE, 100, HOOD, ROOF);
        PastWalk pickup = walk(BodyStyle.PICKUP, 200, ROOF, HOOD);

        assertThat(PastWalk.habitsFor(atHand, List.of(atHand))).isEqualTo(WalkHabits.NONE);
        assertThat(PastWalk.habitsFor(atHand, List.of(atHand, coupe, pickup)).moves())
                .containsOnlyKeys(HOOD);
        assertThat(PastWalk.habitsFor(atHand, List.of(pickup)).moves()).containsOnlyKeys(ROOF);
    }

    private List<Path> files() throws IOException {
        try (Stream<Path> files = Files.list(settings.resolve("not yet there").resolve("walks"))) {
            return files.toList();
        }
    }

    /** Photos with digests from a number on, 10 s apart. */
    private static PastWalk walk(BodyStyle style, int from, ZoneId... zones) {
        List<PastWalk.Moment> photos = new ArrayList<>();
        for (int i = 0; i < zones.length; i++) {
            photos.add(new PastWalk.Moment(String.format("%012x", from + i), 10.5 * i, List.of(zones[i])));
        }
        return new PastWalk(style, photos);
    }
}
