package quarterlight.photo.worker;

import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import quarterlight.capture.Sharpness;
import quarterlight.photo.MediaType;
import quarterlight.photo.PictureUnreadable;
import quarterlight.photo.beside.SidecarFile;
import quarterlight.photo.beside.SoundFile;
import quarterlight.photo.decode.Pictures;
import quarterlight.photo.exif.Preview;
import quarterlight.photo.film.FilmFrame;
import quarterlight.photo.film.FilmFrames;
import quarterlight.photo.film.Loudness;
import quarterlight.photo.film.SoundSpan;
import quarterlight.photo.header.FileFacts;
import quarterlight.photo.header.MetadataReader;
import quarterlight.photo.paper.PaperFile;
import quarterlight.photo.pixels.PictureMeasures;
import quarterlight.photo.pixels.Thumbnail;
import quarterlight.photo.wire.AnswerKind;
import quarterlight.photo.wire.FactsWire;
import quarterlight.photo.wire.PixelFile;
import quarterlight.photo.wire.RequestKind;
import quarterlight.photo.wire.Wire;
import quarterlight.photo.worker.RequestLoop.Answered;
import quarterlight.visit.photo.MediaFacts;
import quarterlight.visit.photo.MediaKind;

/** What a worker does for each kind of request. One thread. */
final class WorkerTasks {
    /** Enough for what is drawn of speech. */
    private static final int LOUDNESS_RATE = 8000;

    private final Pictures pictures;
    private final Path pixels;

    /**
     * @param pixels the file through which pixels go back
     * @param roomBytes what a picture may take
     */
    WorkerTasks(Path pixels, long roomBytes) {
        this.pixels = pixels;
        this.pictures = Pictures.within(roomBytes);
    }

    Answered answer(byte[] request) throws IOException {
        try (DataInputStream in = new DataInputStream(new ByteArrayInputStream(request))) {
            return new Answered(result(in), false);
        } catch (PictureUnreadable e) {
            return new Answered(told(AnswerKind.NOT_SHOWN, e.reason()), false);
        } catch (OutOfMemoryError e) {
            return new Answered(told(AnswerKind.TOO_LARGE, ""), true);
        } catch (IOException e) {
            return new Answered(told(AnswerKind.UNREADABLE, String.valueOf(e.getMessage())), false);
        }
    }

    private static byte[] told(AnswerKind kind, String reason) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (DataOutputStream out = new DataOutputStream(bytes)) {
            Wire.kind(out, kind);
            Wire.text(out, reason);
        }
        return bytes.toByteArray();
    }

    private byte[] result(DataInputStream in) throws IOException, PictureUnreadable {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (DataOutputStream out = new DataOutputStream(bytes)) {
            Wire.kind(out, AnswerKind.DONE);
            RequestKind kind = Wire.kind(in, RequestKind.class);
            switch (kind) {
                case LOOK -> look(in, out);
                case FACTS -> FactsWire.write(out, facts(file(in), type(in), in));
                case PICTURE -> pixels(out, pictures.upright(file(in), type(in), in.readInt(), in.readInt()));
                case PREVIEW -> pixels(out, pictures.upright(new Preview(Wire.bytes(in)), in.readInt()));
                case FRAME -> frame(in, out);
                case STRETCH -> stretch(in, out);
                case SOUND -> Wire.optional(out, sound(in, in.readInt()), Wire::bytes);
                case LOUDNESS ->
                    Wire.optional(
                            out,
                            sound(in, LOUDNESS_RATE).map(samples -> Loudness.of(samples, LOUDNESS_RATE)),
                            Wire::bytes);
                case PAGE -> pixels(out, Pictures.page(file(in), in.readInt(), in.readInt()));
            }
        }
        return bytes.toByteArray();
    }

    private static Path file(DataInputStream in) throws IOException {
        return Path.of(Wire.text(in));
    }

    private static MediaType type(DataInputStream in) throws IOException {
        return Wire.kind(in, MediaType.class);
    }

    private static FileFacts facts(Path file, MediaType type, DataInputStream in) throws IOException {
        Instant now = Wire.instant(in);
        return switch (type) {
            case PDF -> PaperFile.facts(file);
            case MP3, WAV, OGG, AMR -> SoundFile.facts(file, type, now);
            case XMP -> SidecarFile.facts(file);
            case VTT, SRT, TIMED_TEXT -> FileFacts.of(type, MediaFacts.NONE, List.of());
            default -> new MetadataReader(Clock.fixed(now, ZoneOffset.UTC)).read(file, type);
        };
    }

    private void look(DataInputStream in, DataOutputStream out) throws IOException {
        Path file = file(in);
        MediaProbe looked = looked(file, facts(file, type(in), in));
        FactsWire.write(out, looked.facts());
        out.writeDouble(looked.sharpness().orElse(Double.NaN));
        Wire.texts(out, looked.notes());
        Wire.optional(out, looked.thumbnail().map(Thumbnail::jpeg), Wire::bytes);
    }

    private MediaProbe looked(Path file, FileFacts facts) {
        if (!facts.type().kind().isShown()) {
            return new MediaProbe(facts, OptionalDouble.empty(), List.of(), Optional.empty());
        }
        try {
            BufferedImage picture =
                    pictures.uprightRoughly(file, facts.type(), facts.header().orientation(), Sharpness.LONG_SIDE);
            OptionalDouble sharpness = facts.type().kind() == MediaKind.PHOTO
                    ? OptionalDouble.of(PictureMeasures.sharpness(picture))
                    : OptionalDouble.empty();
            BufferedImage small = Pictures.fitted(picture, Pictures.THUMBNAIL);
            return new MediaProbe(facts, sharpness, List.of(), Optional.of(Thumbnail.of(small)));
        } catch (PictureUnreadable e) {
            List<String> notes =
                    facts.damageTold() ? List.of() : List.of("The file is kept, but not shown: " + e.reason() + ".");
            return new MediaProbe(facts, OptionalDouble.empty(), notes, previewOf(facts));
        }
    }

    private Optional<Thumbnail> previewOf(FileFacts facts) {
        try {
            return facts.preview().isEmpty()
                    ? Optional.empty()
                    : Optional.of(Thumbnail.of(pictures.upright(
                            facts.preview().get(), facts.header().orientation())));
        } catch (PictureUnreadable e) {
            return Optional.empty();
        }
    }

    private void frame(DataInputStream in, DataOutputStream out) throws IOException, PictureUnreadable {
        FilmFrame frame = FilmFrames.at(file(in), in.readDouble());
        out.writeDouble(frame.seconds());
        out.writeDouble(frame.durationSeconds());
        out.writeBoolean(frame.last());
        pixels(out, frame.picture());
    }

    private static Optional<byte[]> sound(DataInputStream in, int rate) throws IOException {
        return SoundSpan.of(file(in), type(in), in.readDouble(), in.readDouble(), in.readDouble(), rate);
    }

    /** All frames have the size of the first. */
    private void stretch(DataInputStream in, DataOutputStream out) throws IOException, PictureUnreadable {
        List<FilmFrame> frames =
                FilmFrames.stretch(file(in), in.readDouble(), in.readDouble(), in.readDouble(), in.readInt());
        out.writeInt(frames.size());
        if (frames.isEmpty()) {
            return;
        }
        int width = frames.get(0).picture().getWidth();
        int height = frames.get(0).picture().getHeight();
        BufferedImage all = new BufferedImage(width, height * frames.size(), BufferedImage.TYPE_INT_RGB);
        Graphics2D g = all.createGraphics();
        for (int i = 0; i < frames.size(); i++) {
            out.writeDouble(frames.get(i).seconds());
            out.writeDouble(frames.get(i).durationSeconds());
            g.drawImage(frames.get(i).picture(), 0, i * height, width, height, null);
        }
        g.dispose();
        pixels(out, all);
    }

    private void pixels(DataOutputStream out, BufferedImage picture) throws IOException {
        out.writeInt(picture.getWidth());
        out.writeInt(picture.getHeight());
        PixelFile.write(pixels, picture);
    }
}
