package quarterlight.photo.speech;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Set;
import java.util.concurrent.CancellationException;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import quarterlight.photo.worker.WorkerLimits;
import quarterlight.task.Progress;
import quarterlight.words.Cue;

/** A model runs in a process of its own; what is no model, is damaged or takes too much is refused with a sentence; sound is cut where it is quiet. */
class LocalRecognizerTest {
    private static final int HEAP_MB = 96;

    @TempDir
    Path folder;

    private static void refused(Path model, String... parts) {
        assertThatThrownBy(() -> LocalRecognizer.open(model, Progress.NONE))
                .isInstanceOf(RecognizerUnusable.class)
                .hasMessageContainingAll(parts);
    }

    @Test
    void whatIsNoModelIsRefusedBeforeAProcessStarts() throws Exception {
        refused(
                Files.writeString(folder.resolve("text.bin"), "no model at all", StandardCharsets.US_ASCII),
                "text.bin");
        refused(Files.createFile(folder.resolve("empty.bin")), "empty.bin", "not a model");
        refused(folder.resolve("none.bin"), "none.bin", "cannot be read");
        refused(folder, "cannot be read");
    }

    @Test
    void aDamagedModelCostsItsOwnProcessOnlyAndIsRefused() throws Exception {
        Set<Path> before = unpacked();
        refused(RecognizerModel.damaged(folder.resolve("damaged.bin")), "damaged.bin", "damaged");
        assertThat(unpacked()).as("the unpacked native part is removed").isEqualTo(before);
    }

    private static Set<Path> unpacked() throws IOException {
        try (Stream<Path> files = Files.list(Path.of(System.getProperty("java.io.tmpdir")))) {
            return files.filter(file -> file.toString().endsWith(".parts")).collect(Collectors.toSet());
        }
    }

    @Test
    void aModelRunsAndItsTimesLieWithinTheStretch() throws Exception {
        try (LocalRecognizer recognizer = LocalRecognizer.open(RecognizerModel.file(), Progress.NONE)) {
            List<Cue> heard = recognizer.hear(hum(2), 100);
            assertThat(heard).allSatisfy(cue -> {
                assertThat(cue.fromSeconds()).isBetween(100.0, 102.0);
                assertThat(cue.untilSeconds()).isBetween(cue.fromSeconds(), 102.0);
                assertThat(cue.text()).isNotBlank();
            });
        }
    }

    private static byte[] hum(int seconds) {
        byte[] samples = new byte[2 * seconds * LocalRecognizer.RATE];
        for (int i = 0; i < samples.length / 2; i++) {
            int value = (int) (6000 * Math.sin(i * 0.05));
            samples[2 * i] = (byte) value;
            samples[2 * i + 1] = (byte) (value >> 8);
        }
        return samples;
    }

    @Test
    void whatTakesMoreMemoryOrTimeThanItMayIsStopped() {
        Path model = RecognizerModel.file();
        assertThatThrownBy(() -> heard(model, new WorkerLimits(HEAP_MB, 200, Duration.ofMinutes(2))))
                .isInstanceOf(RecognizerUnusable.class)
                .hasMessageContainingAll("for-tests", "200 MB", "smaller");
        assertThatThrownBy(() -> heard(model, new WorkerLimits(HEAP_MB, 2000, Duration.ofMillis(50))))
                .isInstanceOf(RecognizerUnusable.class)
                .hasMessageContaining(" min ");
    }

    private static void heard(Path model, WorkerLimits limits) throws RecognizerUnusable {
        try (LocalRecognizer recognizer = LocalRecognizer.open(model, limits, Progress.NONE)) {
            recognizer.hear(hum(28), 0);
        }
    }

    @Test
    void cancellingEndsTheProcessInTheMiddleOfAStretch() throws Exception {
        AtomicBoolean hearing = new AtomicBoolean();
        int[] asked = {0};
        Progress cancelledSoon = new Progress() {
            @Override
            public void report(int done, int total, String what) {
                // not looked at
            }

            @Override
            public boolean cancelled() {
                return hearing.get() && asked[0]++ > 0;
            }
        };
        try (LocalRecognizer recognizer = LocalRecognizer.open(RecognizerModel.file(), cancelledSoon)) {
            hearing.set(true);
            assertThatThrownBy(() -> recognizer.hear(hum(28), 0)).isInstanceOf(CancellationException.class);
        }
    }

    @Test
    void memoryGrowsWithTheModel() {
        assertThat(LocalRecognizer.limits(0).memoryMb()).isEqualTo(1024);
        assertThat(LocalRecognizer.limits(3000L << 20).memoryMb()).isEqualTo(4500 + 1024);
    }

    @Test
    void remarksInBracketsAreNoWords() {
        assertThat(LocalRecognizer.spoken(" [BLANK_AUDIO]")).isEmpty();
        assertThat(LocalRecognizer.spoken(" The hood (door closes)\n is dented."))
                .isEqualTo("The hood is dented.");
    }

    @Test
    void soundIsCutWhereItIsQuiet() {
        int rate = 1000;
        byte[] samples = new byte[20 * rate];
        for (int i = 0; i < samples.length / 2; i++) {
            int value = i > 8300 && i < 8700 ? 0 : 9000;
            samples[2 * i] = (byte) value;
            samples[2 * i + 1] = (byte) (value >> 8);
        }
        assertThat(QuietCut.of(samples, rate, 0.7)).isBetween(8300, 8700);
        assertThat(QuietCut.of(samples, rate, 0.9)).isGreaterThanOrEqualTo(9000);
        assertThat(QuietCut.of(new byte[100], rate, 0.7)).isEqualTo(50);
    }
}
