package quarterlight.photo.speech;

import io.github.givimad.whisperjni.WhisperContext;
import io.github.givimad.whisperjni.WhisperFullParams;
import io.github.givimad.whisperjni.WhisperJNI;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import quarterlight.photo.wire.Wire;
import quarterlight.photo.worker.RequestLoop.Answered;

/** What the recognizer's process does with a request: the first names the model, each that follows is sound. One thread. */
final class RecognizerTasks {
    private static final int MAX_THREADS = 8;
    private static final float LOUDEST = 32_768;
    private static final double HUNDREDTH_S = 0.01;

    private final Optional<WhisperJNI> library = load();
    private Optional<WhisperContext> model = Optional.empty();

    private static Optional<WhisperJNI> load() {
        try {
            WhisperJNI.loadLibrary();
            WhisperJNI.setLibraryLogger(null);
            return Optional.of(new WhisperJNI());
        } catch (IOException | LinkageError e) {
            System.getLogger(RecognizerTasks.class.getName())
                    .log(System.Logger.Level.INFO, "the recognizer's native part cannot be loaded", e);
            return Optional.empty();
        }
    }

    Answered answer(byte[] request) throws IOException {
        if (library.isEmpty()) {
            return new Answered(told(SpeechAnswer.NO_LIBRARY), true);
        }
        if (model.isPresent()) {
            return hear(library.get(), model.get(), request);
        }
        try (DataInputStream in = new DataInputStream(new ByteArrayInputStream(request))) {
            model = Optional.ofNullable(library.get().init(Path.of(Wire.text(in))));
        }
        return model.isPresent()
                ? new Answered(told(SpeechAnswer.DONE), false)
                : new Answered(told(SpeechAnswer.NO_MODEL), true);
    }

    private static byte[] told(SpeechAnswer answer) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (DataOutputStream out = new DataOutputStream(bytes)) {
            Wire.kind(out, answer);
        }
        return bytes.toByteArray();
    }

    private static Answered hear(WhisperJNI whisper, WhisperContext opened, byte[] request) throws IOException {
        float[] samples = floats(request);
        if (whisper.full(opened, wishes(), samples, samples.length) != 0) {
            return new Answered(told(SpeechAnswer.FAILED), true);
        }
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (DataOutputStream out = new DataOutputStream(bytes)) {
            Wire.kind(out, SpeechAnswer.DONE);
            int pieces = whisper.fullNSegments(opened);
            out.writeInt(pieces);
            for (int i = 0; i < pieces; i++) {
                out.writeDouble(whisper.fullGetSegmentTimestamp0(opened, i) * HUNDREDTH_S);
                out.writeDouble(whisper.fullGetSegmentTimestamp1(opened, i) * HUNDREDTH_S);
                Wire.text(out, whisper.fullGetSegmentText(opened, i));
            }
        }
        return new Answered(bytes.toByteArray(), false);
    }

    private static WhisperFullParams wishes() {
        WhisperFullParams wishes = new WhisperFullParams();
        wishes.nThreads = Math.min(MAX_THREADS, Runtime.getRuntime().availableProcessors());
        wishes.noContext = true;
        wishes.suppressNonSpeechTokens = true;
        wishes.language = "en";
        wishes.printProgress = false;
        wishes.printRealtime = false;
        wishes.printTimestamps = false;
        return wishes;
    }

    /** Samples from -1 to 1 out of 16 bits, low byte first. */
    private static float[] floats(byte[] heard) {
        float[] floats = new float[heard.length / 2];
        for (int i = 0; i < floats.length; i++) {
            floats[i] = (heard[2 * i + 1] << 8 | heard[2 * i] & 0xFF) / LOUDEST;
        }
        return floats;
    }
}
