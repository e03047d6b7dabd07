package quarterlight.edit.spoken;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CancellationException;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import quarterlight.caption.CaptionFile;
import quarterlight.edit.fact.FactEdits;
import quarterlight.edit.intake.Intake;
import quarterlight.photo.MediaSamples;
import quarterlight.photo.film.SoundSpan;
import quarterlight.photo.originals.Original;
import quarterlight.photo.worker.DecodingWorkers;
import quarterlight.store.VisitStore;
import quarterlight.table.ZoneTable;
import quarterlight.task.Progress;
import quarterlight.visit.photo.MediaKind;
import quarterlight.visit.photo.Photo;
import quarterlight.words.Cue;

/** What a recognizer hears becomes captions of the visit, tied to the recording; here another ear stands in for it. */
class RecognizingTest {
    private static final double DENTED_AT_S = 3;

    @TempDir
    Path folder;

    private VisitStore store;
    private DecodingWorkers workers;
    private Recognizing recognizing;

    @BeforeEach
    void aVisitWithTwoMemosAndAFilmWithoutSound() throws Exception {
        assumeTrue(SoundSpan.available(), "skipped, since sound cannot be decoded on this computer");
        Path card = Files.createDirectories(folder.resolve("card"));
        MediaSamples.wav(card.resolve("long.wav"), 40);
        MediaSamples.wav(card.resolve("short.wav"), 5);
        Files.copy(Path.of(MediaSamples.class.getResource("numbered.mp4").toURI()), card.resolve("mute.mp4"));
        store = VisitStore.create(
                folder.resolve("visit"),
                new FactEdits(ZoneTable.load()).start(Map.of("car", "Tamarisk", "style", "coupe"), ZoneOffset.UTC),
                Clock.systemUTC());
        workers = new DecodingWorkers();
        Intake intake = new Intake(store, Clock.systemUTC(), (photo, jpeg) -> {}, workers);
        intake.run(List.of(card), Progress.NONE);
        recognizing = new Recognizing(store, intake);
    }

    @AfterEach
    void close() throws Exception {
        if (store != null) {
            store.close();
            workers.close();
        }
    }

    private Recognizing.Outcome run(Recognizing.Ear ear, Progress progress) throws Exception {
        return recognizing.run(Recognizing.wordless(store.read()), "a-model.bin", ear, workers, progress);
    }

    private static List<Cue> dented(byte[] samples, double from) {
        return from > 0
                ? List.of()
                : List.of(new Cue(DENTED_AT_S, DENTED_AT_S + 1.5, "The hood is <dented> & the roof --> sound."));
    }

    private Photo photo(String name) throws Exception {
        return store.read().photos().stream()
                .filter(photo -> photo.file().name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void wordsAreCaptionsOfTheirOwnRecordingAndTheNextCallLeavesThemAlone() throws Exception {
        Recognizing.Outcome outcome = run(RecognizingTest::dented, Progress.NONE);
        assertThat(outcome.made()).containsExactlyInAnyOrder("long.vtt", "short.vtt");
        assertThat(outcome.mute()).containsExactly("mute.mp4");
        assertThat(outcome.silent()).isEmpty();
        for (String name : List.of("long", "short")) {
            Photo words = photo(name + ".vtt");
            assertThat(words.file().kind()).isEqualTo(MediaKind.WORDS);
            assertThat(words.file().more().beside())
                    .as("the same words of two recordings are two files")
                    .contains(photo(name + ".wav").file().sha256());
            Path kept = Original.of(store.folder().root(), words.file());
            assertThat(Files.readString(kept)).contains("not checked", name + ".wav", "a-model.bin");
            assertThat(CaptionFile.read(kept).words().cues())
                    .containsExactly(
                            new Cue(DENTED_AT_S, DENTED_AT_S + 1.5, "The hood is <dented> & the roof --> sound."));
        }
        assertThat(Recognizing.wordless(store.read()))
                .extracting(photo -> photo.file().name())
                .containsExactly("mute.mp4");
    }

    @Test
    void aLongRecordingIsHeardInPiecesWithoutGapOrOverlap() throws Exception {
        List<String> pieces = new ArrayList<>();
        double[] next = {0};
        run(
                (samples, from) -> {
                    assertThat(from).isEqualTo(from == 0 ? 0 : next[0]);
                    next[0] = from + samples.length / (2.0 * 16_000);
                    pieces.add(from + " to " + next[0]);
                    assertThat(next[0] - from).isLessThanOrEqualTo(28);
                    return List.of();
                },
                Progress.NONE);
        assertThat(pieces).as("two of the long one, one of the short one").hasSize(3);
        assertThat(pieces).anyMatch(piece -> piece.endsWith(" to 40.0"));
        assertThat(pieces).anyMatch(piece -> piece.equals("0.0 to 5.0"));
    }

    @Test
    void whereNothingIsHeardNothingIsAdded() throws Exception {
        int before = store.read().photos().size();
        Recognizing.Outcome outcome = run((samples, from) -> List.of(), Progress.NONE);
        assertThat(outcome.silent()).containsExactlyInAnyOrder("long.wav", "short.wav");
        assertThat(outcome.made()).isEmpty();
        assertThat(store.read().photos()).hasSize(before);
    }

    @Test
    void cancelledBetweenRecordingsTheFinishedOnesKeepTheirWords() throws Exception {
        boolean[] cancelled = {false};
        Progress progress = new Progress() {
            @Override
            public void report(int done, int total, String what) {
                // not looked at
            }

            @Override
            public boolean cancelled() {
                return cancelled[0];
            }
        };
        List<Photo> memos = List.of(photo("short.wav"), photo("long.wav"));
        int[] heard = {0};
        assertThatThrownBy(() -> recognizing.run(
                        memos,
                        "a-model.bin",
                        (samples, from) -> {
                            heard[0]++;
                            cancelled[0] = heard[0] > 1;
                            progress.checkCancelled();
                            return dented(samples, from);
                        },
                        workers,
                        progress))
                .isInstanceOf(CancellationException.class);
        assertThat(photo("short.vtt").file().kind()).isEqualTo(MediaKind.WORDS);
        assertThat(Recognizing.wordless(store.read()))
                .extracting(photo -> photo.file().name())
                .contains("long.wav");
    }
}
