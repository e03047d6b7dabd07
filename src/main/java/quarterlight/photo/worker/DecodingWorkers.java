package quarterlight.photo.worker;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import quarterlight.photo.MediaType;
import quarterlight.photo.PictureUnreadable;
import quarterlight.photo.exif.Preview;
import quarterlight.photo.film.FilmFrame;
import quarterlight.photo.header.FileFacts;
import quarterlight.photo.pixels.Thumbnail;
import quarterlight.photo.wire.FactsWire;
import quarterlight.photo.wire.PixelFile;
import quarterlight.photo.wire.RequestKind;
import quarterlight.photo.wire.Wire;
import quarterlight.photo.worker.WorkerPool.Call;
import quarterlight.photo.worker.WorkerPool.Part;

/**
 * Reads and decodes files of unknown origin in processes of their own, so that the worst file costs no more than itself: memory and time are limited, and
 * a worker that is brought down is replaced. Safe for several threads; as many files are in the works at once as there are workers.
 */
public final class DecodingWorkers implements AutoCloseable {
    private static final int MAX_FRAMES = 200;

    private final WorkerPool pool;

    public DecodingWorkers() {
        this(WorkerLimits.USUAL, WorkerLimits.ALONE);
    }

    /**
     * @param usual limits of the two workers
     * @param alone limits of the one that tries again what needed more memory, while the two are stopped
     */
    public DecodingWorkers(WorkerLimits usual, WorkerLimits alone) {
        this.pool = new WorkerPool(usual, alone);
    }

    /** Lets workers start before it is known what for; the next who needs some takes them over. Does not wait. */
    public static void makeReady() {
        try (DecodingWorkers ready = new DecodingWorkers()) {
            ready.start();
        }
    }

    /** Lets the workers start, so that the first request need not wait for that; does not wait itself. */
    public void start() {
        pool.start();
    }

    /**
     * All that intake wants of a photo or film.
     *
     * @param now says when a recorded time lies in the future
     * @throws WorkerLost if the file brought its worker down
     * @throws IOException if the file cannot be read
     */
    public MediaProbe look(Path file, MediaType type, Instant now) throws WorkerLost, IOException {
        return answer(file, lookAt(file, type, now), DecodingWorkers::looked);
    }

    private static Part lookAt(Path file, MediaType type, Instant now) {
        return out -> {
            about(out, RequestKind.LOOK, file, type);
            Wire.instant(out, now);
        };
    }

    /**
     * Does in this process what a worker does with a photo, so that a start that records which classes are needed records those of the workers too.
     *
     * @param photo of the program's own, since nothing stands between it and this process
     */
    public static void rehearse(Path photo, MediaType type, Instant now) throws IOException {
        new WorkerTasks(photo, Long.MAX_VALUE).answer(bytes(lookAt(photo, type, now)));
    }

    private static MediaProbe looked(DataInputStream in, Path pixels) throws IOException {
        FileFacts facts = FactsWire.read(in);
        double sharpness = in.readDouble();
        return new MediaProbe(
                facts,
                Double.isNaN(sharpness) ? OptionalDouble.empty() : OptionalDouble.of(sharpness),
                Wire.texts(in),
                Wire.optional(in, from -> Thumbnail.ofJpeg(Wire.bytes(from))));
    }

    /**
     * What a file says of itself.
     *
     * @throws WorkerLost if the file brought its worker down
     * @throws IOException if the file cannot be read
     */
    public FileFacts facts(Path file, MediaType type, Instant now) throws WorkerLost, IOException {
        return answer(
                file,
                out -> {
                    about(out, RequestKind.FACTS, file, type);
                    Wire.instant(out, now);
                },
                (in, pixels) -> FactsWire.read(in));
    }

    /** See {@link quarterlight.photo.decode.Pictures#upright(Path, MediaType, int, int)}. */
    public BufferedImage upright(Path file, MediaType type, int orientation, int longSide) throws PictureUnreadable {
        return shown(
                file,
                out -> {
                    about(out, RequestKind.PICTURE, file, type);
                    out.writeInt(orientation);
                    out.writeInt(longSide);
                },
                (in, pixels) -> PixelFile.read(pixels, in.readInt(), in.readInt()));
    }

    /** The camera's own small picture, upright; a quick first look. */
    public BufferedImage upright(Preview preview, int orientation) throws PictureUnreadable {
        return shown(
                Path.of(""),
                out -> {
                    Wire.kind(out, RequestKind.PREVIEW);
                    Wire.bytes(out, preview.jpeg());
                    out.writeInt(orientation);
                },
                (in, pixels) -> PixelFile.read(pixels, in.readInt(), in.readInt()));
    }

    /** See {@link quarterlight.photo.film.FilmFrames#at}. */
    public FilmFrame frame(Path film, double seconds) throws PictureUnreadable {
        return shown(
                film,
                out -> {
                    Wire.kind(out, RequestKind.FRAME);
                    Wire.text(out, film.toAbsolutePath().toString());
                    out.writeDouble(seconds);
                },
                DecodingWorkers::frame);
    }

    /** See {@link quarterlight.photo.decode.Pictures#page}. */
    public BufferedImage page(Path paper, int number, int longSide) throws PictureUnreadable {
        return shown(
                paper,
                out -> {
                    Wire.kind(out, RequestKind.PAGE);
                    Wire.text(out, paper.toAbsolutePath().toString());
                    out.writeInt(number);
                    out.writeInt(longSide);
                },
                (in, pixels) -> PixelFile.read(pixels, in.readInt(), in.readInt()));
    }

    /** See {@link quarterlight.photo.film.FilmFrames#stretch}. */
    public List<FilmFrame> stretch(Path film, double from, double seconds, double perSecond, int longSide)
            throws PictureUnreadable {
        return shown(
                film,
                out -> {
                    Wire.kind(out, RequestKind.STRETCH);
                    Wire.text(out, film.toAbsolutePath().toString());
                    out.writeDouble(from);
                    out.writeDouble(seconds);
                    out.writeDouble(perSecond);
                    out.writeInt(longSide);
                },
                DecodingWorkers::frames);
    }

    /** See {@link quarterlight.photo.film.SoundSpan#of}. */
    public Optional<byte[]> sound(Path file, MediaType type, double from, double seconds, double speed, int rate)
            throws WorkerLost, IOException {
        return answer(
                file,
                out -> {
                    Wire.kind(out, RequestKind.SOUND);
                    out.writeInt(rate);
                    heard(out, file, type, from, seconds, speed);
                },
                (in, pixels) -> Wire.optional(in, Wire::bytes));
    }

    /** How loud a stretch is, {@link quarterlight.photo.film.Loudness#PER_SECOND} bytes a second; empty for a film without sound. */
    public Optional<byte[]> loudness(Path file, MediaType type, double from, double seconds)
            throws WorkerLost, IOException {
        return answer(
                file,
                out -> {
                    Wire.kind(out, RequestKind.LOUDNESS);
                    heard(out, file, type, from, seconds, 1);
                },
                (in, pixels) -> Wire.optional(in, Wire::bytes));
    }

    private static void heard(
            DataOutputStream out, Path file, MediaType type, double from, double seconds, double speed)
            throws IOException {
        Wire.text(out, file.toAbsolutePath().toString());
        Wire.kind(out, type);
        out.writeDouble(from);
        out.writeDouble(seconds);
        out.writeDouble(speed);
    }

    private static List<FilmFrame> frames(DataInputStream in, Path pixels) throws IOException {
        int count = in.readInt();
        if (count < 0 || count > MAX_FRAMES) {
            throw new IOException(count + " frames");
        }
        double[] times = new double[2 * count];
        for (int i = 0; i < times.length; i++) {
            times[i] = in.readDouble();
        }
        List<FilmFrame> frames = new ArrayList<>();
        if (count > 0) {
            BufferedImage all = PixelFile.read(pixels, in.readInt(), in.readInt());
            int height = all.getHeight() / count;
            for (int i = 0; i < count; i++) {
                BufferedImage one = all.getSubimage(0, i * height, all.getWidth(), height);
                frames.add(new FilmFrame(one, times[2 * i], times[2 * i + 1], false));
            }
        }
        return frames;
    }

    private static FilmFrame frame(DataInputStream in, Path pixels) throws IOException {
        double begins = in.readDouble();
        double duration = in.readDouble();
        boolean last = in.readBoolean();
        return new FilmFrame(PixelFile.read(pixels, in.readInt(), in.readInt()), begins, duration, last);
    }

    private static void about(DataOutputStream out, RequestKind kind, Path file, MediaType type) throws IOException {
        Wire.kind(out, kind);
        Wire.text(out, file.toAbsolutePath().toString());
        Wire.kind(out, type);
    }

    private <T> T shown(Path file, Part request, Call.Reading<T> reading) throws PictureUnreadable {
        try {
            return pool.run(new Call<>(file, bytes(request), reading));
        } catch (WorkerLost e) {
            throw new PictureUnreadable(file, e.reason(), e);
        } catch (IOException e) {
            throw new PictureUnreadable(file, "the file cannot be read", e);
        }
    }

    private <T> T answer(Path file, Part request, Call.Reading<T> reading) throws WorkerLost, IOException {
        try {
            return pool.run(new Call<>(Objects.requireNonNull(file, "file"), bytes(request), reading));
        } catch (PictureUnreadable e) {
            throw new IOException(e.reason(), e);
        }
    }

    private static byte[] bytes(Part request) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (DataOutputStream out = new DataOutputStream(bytes)) {
            request.write(out);
        }
        return bytes.toByteArray();
    }

    /** Breaks off what the workers are at; they are started again when they are needed. */
    public void breakOff() {
        pool.breakOff();
    }

    /** Ends all workers at once; what they were asked is broken off. */
    @Override
    public void close() {
        pool.close();
    }
}
