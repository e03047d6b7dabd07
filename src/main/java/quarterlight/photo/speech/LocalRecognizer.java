package quarterlight.photo.speech;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.channels.SeekableByteChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.concurrent.CancellationException;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import quarterlight.photo.wire.Wire;
import quarterlight.photo.worker.WorkerLimits;
import quarterlight.photo.worker.WorkerLost;
import quarterlight.photo.worker.WorkerProcess;
import quarterlight.task.Progress;
import quarterlight.task.Threads;
import quarterlight.words.Cue;

/**
 * A speech recognizer with a model in memory, in a process of its own, since its library ends the whole process over a damaged model. Works on this computer
 * alone. For one thread; cancelled, its process is ended at once.
 */
public final class LocalRecognizer implements AutoCloseable {
    private static final System.Logger LOG = System.getLogger(LocalRecognizer.class.getName());

    /** Samples a second that the recognizer hears, one channel of 16 bits, low byte first. */
    public static final int RATE = 16_000;

    private static final int MAGIC = 0x67676d6c;
    private static final int HEAP_MB = 96;
    /** What the library takes beside half as much again as the model file, with room. */
    private static final long BESIDE_MODEL_MB = 1024;

    private static final long MB = 1 << 20;
    /** For the model, and for each stretch of half a minute at most. */
    private static final Duration TIME = Duration.ofMinutes(10);

    private static final int CANCEL_LOOK_MS = 100;
    private static final int SAMPLE_BYTES = 2;
    private static final String NATIVE_PART_MISSING =
            "the speech recognizer cannot run on this computer, since its native part is missing or does not fit; add"
                    + " captions made elsewhere with words";

    private final Path model;
    private final WorkerLimits limits;
    private final Progress progress;
    private final WorkerProcess process;
    private final ScheduledExecutorService watch;

    private LocalRecognizer(
            Path model, WorkerLimits limits, Progress progress, WorkerProcess process, ScheduledExecutorService watch) {
        this.model = model;
        this.limits = limits;
        this.progress = progress;
        this.process = process;
        this.watch = watch;
    }

    /**
     * Loads a model.
     *
     * @param model a file in the ggml form of whisper.cpp
     * @param progress asked all the time whether to stop
     * @throws RecognizerUnusable if there is no such file, it is no model, or the library cannot run here
     */
    public static LocalRecognizer open(Path model, Progress progress) throws RecognizerUnusable {
        return open(model, limits(size(model)), progress);
    }

    static LocalRecognizer open(Path model, WorkerLimits limits, Progress progress) throws RecognizerUnusable {
        requireModel(model);
        ScheduledExecutorService watch = Threads.later("recognizer-watch");
        LocalRecognizer opened;
        try {
            opened = new LocalRecognizer(
                    model, limits, progress, WorkerProcess.start(limits, watch, RecognizerMain.class), watch);
        } catch (IOException e) {
            watch.shutdownNow();
            throw new RecognizerUnusable(
                    "the speech recognizer cannot be started (" + e.getMessage()
                            + "); add captions made elsewhere with words",
                    e);
        }
        try {
            opened.load();
            return opened;
        } catch (RecognizerUnusable | RuntimeException e) {
            opened.close();
            throw e;
        }
    }

    /** @param modelBytes size of the model file */
    static WorkerLimits limits(long modelBytes) {
        return new WorkerLimits(HEAP_MB, Math.toIntExact(modelBytes / MB * 3 / 2 + BESIDE_MODEL_MB), TIME);
    }

    private static long size(Path model) throws RecognizerUnusable {
        try {
            return Files.size(model);
        } catch (IOException e) {
            throw unreadable(model, e);
        }
    }

    private static RecognizerUnusable unreadable(Path model, IOException e) {
        return new RecognizerUnusable("the model " + model + " cannot be read; check its name", e);
    }

    /** Native code is given only what begins as a model does. */
    private static void requireModel(Path model) throws RecognizerUnusable {
        ByteBuffer head = ByteBuffer.allocate(Integer.BYTES).order(ByteOrder.LITTLE_ENDIAN);
        try (SeekableByteChannel in = Files.newByteChannel(model)) {
            while (head.hasRemaining() && in.read(head) >= 0) {
                // a short read goes on
            }
        } catch (IOException e) {
            throw unreadable(model, e);
        }
        if (head.hasRemaining() || head.getInt(0) != MAGIC) {
            throw notAModel(model);
        }
    }

    private static RecognizerUnusable notAModel(Path model) {
        return new RecognizerUnusable(model.getFileName()
                + " is damaged or is not a model that the recognizer can read; name a whole ggml model file"
                + " for whisper.cpp");
    }

    private void load() throws RecognizerUnusable {
        ByteArrayOutputStream request = new ByteArrayOutputStream();
        try (DataOutputStream out = new DataOutputStream(request)) {
            Wire.text(out, model.toAbsolutePath().toString());
            try (DataInputStream in = answer(request.toByteArray())) {
                require(Wire.kind(in, SpeechAnswer.class));
            }
        } catch (IOException e) {
            throw failed(e);
        }
    }

    /**
     * What is said in a stretch of sound.
     *
     * @param samples as {@link #RATE} says; half a minute at most is heard well
     * @param from seconds from the beginning of the recording to that of the stretch
     */
    public List<Cue> hear(byte[] samples, double from) throws RecognizerUnusable {
        double length = (double) samples.length / SAMPLE_BYTES / RATE;
        try (DataInputStream in = answer(samples)) {
            require(Wire.kind(in, SpeechAnswer.class));
            int pieces = in.readInt();
            List<Cue> cues = new ArrayList<>();
            for (int i = 0; i < pieces; i++) {
                double begins = Math.max(0, Math.min(length, in.readDouble()));
                double ends = Math.max(begins, Math.min(length, in.readDouble()));
                String text = spoken(Wire.text(in));
                if (!text.isEmpty()) {
                    cues.add(new Cue(from + begins, from + ends, text));
                }
            }
            return cues;
        } catch (IOException e) {
            throw failed(e);
        }
    }

    /** Without what the recognizer remarks in brackets, such as music or a silence. */
    static String spoken(String text) {
        return text.replaceAll("\\[[^]]*]|\\([^)]*\\)", "")
                .replaceAll("[\\s\\p{Cntrl}\\uFFFD]+", " ")
                .strip();
    }

    private void require(SpeechAnswer answer) throws RecognizerUnusable {
        switch (answer) {
            case DONE -> {}
            case NO_LIBRARY -> throw new RecognizerUnusable(NATIVE_PART_MISSING);
            case NO_MODEL -> throw notAModel(model);
            case FAILED -> throw failed(null);
        }
    }

    private RecognizerUnusable failed(Throwable cause) {
        return new RecognizerUnusable(
                "the recognizer failed on this sound with the model " + model.getFileName()
                        + "; name another model, or add captions made elsewhere with words",
                cause);
    }

    /** @throws CancellationException if the progress was cancelled meanwhile */
    private DataInputStream answer(byte[] request) throws RecognizerUnusable {
        progress.checkCancelled();
        var look = watch.scheduleWithFixedDelay(
                () -> {
                    if (progress.cancelled()) {
                        process.stop();
                    }
                },
                CANCEL_LOOK_MS,
                CANCEL_LOOK_MS,
                TimeUnit.MILLISECONDS);
        try {
            return new DataInputStream(new ByteArrayInputStream(process.ask(request, model)));
        } catch (WorkerLost e) {
            progress.checkCancelled();
            throw lost(e);
        } finally {
            look.cancel(false);
        }
    }

    private RecognizerUnusable lost(WorkerLost e) {
        return switch (e.way()) {
            case TIME ->
                new RecognizerUnusable(
                        "the recognizer took more than " + limits.time().toMinutes() + " min with the model "
                                + model.getFileName() + " and was stopped; name a smaller model",
                        e);
            case MEMORY ->
                new RecognizerUnusable(
                        "the recognizer took more than " + limits.memoryMb() + " MB with the model "
                                + model.getFileName() + " and was stopped; name a smaller model",
                        e);
            default ->
                new RecognizerUnusable(
                        "the recognizer ended over the model " + model.getFileName()
                                + ", since it is damaged, is not one that it can read, or takes more than "
                                + limits.memoryMb()
                                + " MB; name a whole ggml model file for whisper.cpp, or a smaller one",
                        e);
        };
    }

    @Override
    public void close() {
        watch.shutdownNow();
        process.stop();
        Path parts = RecognizerMain.parts(process.pixels());
        if (!Files.exists(parts)) {
            return;
        }
        try (Stream<Path> below = Files.walk(parts)) {
            for (Path path : below.sorted(Comparator.reverseOrder()).toList()) {
                Files.delete(path);
            }
        } catch (IOException e) {
            LOG.log(System.Logger.Level.INFO, "the unpacked native part stays behind", e);
        }
    }
}
