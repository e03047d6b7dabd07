package quarterlight.edit.spoken;

import static quarterlight.language.Sentences.say;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import quarterlight.edit.EditRefused;
import quarterlight.edit.intake.Intake;
import quarterlight.edit.intake.IntakeRefused;
import quarterlight.edit.intake.IntakeResult;
import quarterlight.photo.SoundUnreadable;
import quarterlight.photo.originals.OriginalsUnwritable;
import quarterlight.photo.speech.LocalRecognizer;
import quarterlight.photo.speech.QuietCut;
import quarterlight.photo.speech.RecognizerUnusable;
import quarterlight.photo.worker.DecodingWorkers;
import quarterlight.photo.worker.OriginalPictures;
import quarterlight.store.VisitStore;
import quarterlight.store.problem.VisitProblem;
import quarterlight.task.Progress;
import quarterlight.visit.VisitRecord;
import quarterlight.visit.photo.MediaKind;
import quarterlight.visit.photo.Photo;
import quarterlight.words.Cue;

/**
 * Makes the words of films and memos on this computer, by a recognizer with a model file that the user names, and takes them into the visit as a file of
 * captions like any other.
 */
public final class Recognizing {
    /** The recognizer hears half a minute at once. */
    private static final double HEARD_AT_ONCE_S = 28;

    private static final double EARLIEST_CUT = 0.7;
    private static final int SAMPLE_BYTES = 2;

    private final VisitStore store;
    private final Intake intake;

    public Recognizing(VisitStore store, Intake intake) {
        this.store = Objects.requireNonNull(store, "store");
        this.intake = Objects.requireNonNull(intake, "intake");
    }

    /**
     * What came of it.
     *
     * @param made names of the files of words that were taken in
     * @param silent names of recordings in which no words were heard
     * @param mute names of films that have no sound
     */
    public record Outcome(List<String> made, List<String> silent, List<String> mute) {
        public Outcome {
            made = List.copyOf(made);
            silent = List.copyOf(silent);
            mute = List.copyOf(mute);
        }
    }

    /** What hears; a test puts another in its place. */
    @FunctionalInterface
    interface Ear {
        List<Cue> hear(byte[] samples, double from) throws RecognizerUnusable;
    }

    /** The films and memos of a visit that have no words yet, in the order in which they came. */
    public static List<Photo> wordless(VisitRecord visit) {
        List<Photo> told = visit.photos().stream()
                .filter(photo -> photo.file().kind() == MediaKind.WORDS)
                .flatMap(photo -> SpokenAbout.of(photo, visit).stream())
                .toList();
        return visit.photos().stream()
                .filter(SpokenAbout::speaks)
                .filter(photo -> photo.setAside().isEmpty())
                .filter(photo -> !told.contains(photo))
                .toList();
    }

    /**
     * Makes the words of recordings, one after the other; cancelled, what was finished before stays.
     *
     * @throws RecognizerUnusable if the model is none, or the library cannot run here; nothing was changed
     * @throws SoundUnreadable if a recording cannot be decoded
     */
    public Outcome run(List<Photo> recordings, Path model, DecodingWorkers workers, Progress progress)
            throws RecognizerUnusable, SoundUnreadable, EditRefused, IntakeRefused, OriginalsUnwritable, VisitProblem,
                    IOException, InterruptedException {
        try (LocalRecognizer recognizer = LocalRecognizer.open(model, progress)) {
            return run(recordings, String.valueOf(model.getFileName()), recognizer::hear, workers, progress);
        }
    }

    Outcome run(List<Photo> recordings, String model, Ear ear, DecodingWorkers workers, Progress progress)
            throws RecognizerUnusable, SoundUnreadable, EditRefused, IntakeRefused, OriginalsUnwritable, VisitProblem,
                    IOException, InterruptedException {
        List<String> made = new ArrayList<>();
        List<String> silent = new ArrayList<>();
        List<String> mute = new ArrayList<>();
        OriginalPictures originals = new OriginalPictures(store.folder().root(), workers);
        for (Photo recording : recordings) {
            progress.checkCancelled();
            String name = recording.file().name();
            if (sound(recording, originals, 0).isEmpty()) {
                mute.add(name);
                continue;
            }
            List<Cue> cues = cues(recording, originals, ear, progress);
            if (cues.isEmpty()) {
                silent.add(name);
            } else {
                made.add(take(recording, captions(recording, model, cues), workers, progress));
            }
        }
        return new Outcome(made, silent, mute);
    }

    private static Optional<byte[]> sound(Photo recording, OriginalPictures originals, double at)
            throws SoundUnreadable {
        return originals.sound(recording.file(), at, HEARD_AT_ONCE_S, 1, LocalRecognizer.RATE);
    }

    private static List<Cue> cues(Photo recording, OriginalPictures originals, Ear ear, Progress progress)
            throws SoundUnreadable, RecognizerUnusable {
        int length = (int) Math.ceil(recording.file().seconds().orElse(0));
        List<Cue> cues = new ArrayList<>();
        double at = 0;
        while (true) {
            progress.report(
                    (int) at,
                    Math.max(length, (int) at),
                    say(
                            "refused.words.listening",
                            recording.file().name(),
                            SpokenQuote.clock(at),
                            SpokenQuote.clock(length)));
            byte[] heard = sound(recording, originals, at).orElse(new byte[0]);
            boolean last = heard.length < SAMPLE_BYTES * (HEARD_AT_ONCE_S - 1) * LocalRecognizer.RATE;
            int samples = last ? heard.length / SAMPLE_BYTES : QuietCut.of(heard, LocalRecognizer.RATE, EARLIEST_CUT);
            if (samples > 0) {
                cues.addAll(ear.hear(Arrays.copyOf(heard, SAMPLE_BYTES * samples), at));
            }
            if (last) {
                return cues;
            }
            at += (double) samples / LocalRecognizer.RATE;
        }
    }

    private String take(Photo recording, String captions, DecodingWorkers workers, Progress progress)
            throws EditRefused, IntakeRefused, OriginalsUnwritable, VisitProblem, IOException, InterruptedException {
        String name = recording.file().name();
        int dot = name.lastIndexOf('.');
        Path folder = Files.createTempDirectory("quarterlight-words");
        Path file = folder.resolve((dot > 0 ? name.substring(0, dot) : name) + ".vtt");
        try {
            Files.writeString(file, captions, StandardCharsets.UTF_8);
            IntakeResult taken = new TimedWordsImport(store, intake)
                    .take(List.of(file), Optional.of(recording), workers, progress)
                    .taken();
            if (!taken.refused().isEmpty()) {
                throw new EditRefused(
                        name,
                        say(
                                "refused.words.not-added",
                                name,
                                taken.refused().get(0).reason()));
            }
            return String.valueOf(file.getFileName());
        } finally {
            Files.deleteIfExists(file);
            Files.deleteIfExists(folder);
        }
    }

    /** As WebVTT (W3C), with a note on where it comes from, which also tells the same words of two recordings apart. */
    static String captions(Photo recording, String model, List<Cue> cues) {
        StringBuilder out = new StringBuilder(
                        "WEBVTT\n\nNOTE Made by a speech recognizer on this computer; not checked.\n")
                .append("Of ")
                .append(note(recording.file().name()))
                .append(", SHA-256 ")
                .append(recording.file().sha256().hex())
                .append(", with the model ")
                .append(note(model))
                .append(".\n\n");
        for (Cue cue : cues) {
            out.append(time(cue.fromSeconds()))
                    .append(" --> ")
                    .append(time(cue.untilSeconds()))
                    .append('\n')
                    .append(cue.text().replace("&", "&amp;").replace("<", "&lt;"))
                    .append("\n\n");
        }
        return out.toString();
    }

    /** A name on one line that cannot be taken for a time line. */
    private static String note(String name) {
        return name.replaceAll("\\s+", " ").replace("-->", "->");
    }

    private static String time(double seconds) {
        long ms = Math.round(seconds * 1000);
        return String.format(
                Locale.ROOT, "%02d:%02d:%02d.%03d", ms / 3_600_000, ms / 60_000 % 60, ms / 1000 % 60, ms % 1000);
    }
}
