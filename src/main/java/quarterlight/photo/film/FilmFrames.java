package quarterlight.photo.film;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.ByteOrder;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.bytedeco.ffmpeg.avcodec.AVPacketSideData;
import org.bytedeco.ffmpeg.avformat.AVStream;
import org.bytedeco.ffmpeg.avutil.AVFrame;
import org.bytedeco.ffmpeg.avutil.AVRational;
import org.bytedeco.ffmpeg.global.avcodec;
import org.bytedeco.ffmpeg.global.avformat;
import org.bytedeco.ffmpeg.global.avutil;
import quarterlight.photo.PictureUnreadable;
import quarterlight.photo.decode.Pictures;
import quarterlight.photo.header.Orientation;
import quarterlight.photo.pixels.FramePixels;
import quarterlight.photo.pixels.PictureBounds;

/**
 * The frames of films, each exactly the one that is shown at a moment: decoding starts at the key frame before and goes on frame by frame. Of the
 * frames, the one counts that begins last at or before the moment; before the first it is the first, beyond the end the last.
 */
public final class FilmFrames {
    /** Frame times are kept in ticks of the file's own; a moment this close before a frame means the frame. */
    static final double TOLERANCE_S = 0.0005;

    private static final double POSTER_S = 1.0;
    private static final double USUAL_FRAME_S = 1.0 / 30;
    private static final long MAX_NANOS = 4_000_000_000L;
    private static final double[] STEPS_BACK_S = {0, 1, 4, 16, 1e9};

    private FilmFrames() {}

    /** Whether films can be shown on this computer. */
    public static boolean available() {
        return MediaFile.available();
    }

    /**
     * The frame that is shown at a moment.
     *
     * @param seconds from the film's beginning
     * @throws PictureUnreadable if there is no such film, it is damaged before that moment, or films cannot be shown here
     */
    public static FilmFrame at(Path film, double seconds) throws PictureUnreadable {
        if (!available()) {
            throw new PictureUnreadable(
                    film, "films cannot be shown here, since the native part for them is not installed");
        }
        try (MediaFile media = MediaFile.open(film);
                Search search = new Search(media, PictureBounds.USUAL)) {
            return search.at(Math.max(0, seconds));
        } catch (IOException | RuntimeException e) {
            throw new PictureUnreadable(film, "the film is damaged, or of a kind that cannot be shown", e);
        }
    }

    /**
     * Frames of a stretch of a film, to show it in motion: the one at its beginning, then at most so many a second.
     *
     * @param longSide of the pictures, px; smaller ones keep their size
     * @return in the order of time; none beyond the end of the film
     * @throws PictureUnreadable if there is no such film, it is damaged there, or films cannot be shown here
     */
    public static List<FilmFrame> stretch(Path film, double from, double seconds, double perSecond, int longSide)
            throws PictureUnreadable {
        if (!available()) {
            throw new PictureUnreadable(
                    film, "films cannot be shown here, since the native part for them is not installed");
        }
        try (MediaFile media = MediaFile.open(film);
                Search search = new Search(media, PictureBounds.USUAL)) {
            return search.stretch(from, from + seconds, 1 / perSecond, longSide);
        } catch (IOException | RuntimeException e) {
            throw new PictureUnreadable(film, "the film is damaged, or of a kind that cannot be shown", e);
        }
    }

    /** The frame that stands for the film: at one second, or in the middle of a shorter one. */
    public static FilmFrame poster(Path film) throws IOException {
        try (MediaFile media = MediaFile.open(film);
                Search search = new Search(media, PictureBounds.USUAL)) {
            double length = media.context().duration() / (double) avutil.AV_TIME_BASE;
            return search.at(length > 0 ? Math.min(POSTER_S, length / 2) : 0);
        }
    }

    private static final class Search implements AutoCloseable {
        private final MediaFile media;
        private final AVStream stream;
        private final MediaDecoding decoding;
        private final double tick;
        private final long zero;
        private final AVFrame held = avutil.av_frame_alloc();
        private final long deadline = System.nanoTime() + MAX_NANOS;

        Search(MediaFile media, PictureBounds bounds) throws IOException {
            this.media = media;
            this.stream = pictures(media).orElseThrow(() -> new IOException("the film holds no pictures"));
            AVRational base = stream.time_base();
            this.tick = base.den() > 0 && base.num() > 0 ? (double) base.num() / base.den() : USUAL_FRAME_S;
            this.zero = stream.start_time() == avutil.AV_NOPTS_VALUE ? 0 : stream.start_time();
            this.decoding = MediaDecoding.of(stream.codecpar(), bounds.mostPixelsAtOnce());
        }

        private static Optional<AVStream> pictures(MediaFile media) {
            for (int i = 0; i < media.streams(); i++) {
                AVStream stream = media.stream(i);
                boolean cover = (stream.disposition() & avformat.AV_DISPOSITION_ATTACHED_PIC) != 0;
                if (stream.codecpar().codec_type() == avutil.AVMEDIA_TYPE_VIDEO && !cover) {
                    return Optional.of(stream);
                }
            }
            return Optional.empty();
        }

        /** A leap lands on a key frame by its time of decoding, which can lie after the moment; then an earlier one is tried. */
        FilmFrame at(double seconds) throws IOException {
            for (double back : STEPS_BACK_S) {
                double from = Math.max(0, seconds - back);
                long target = zero + (long) Math.floor(from / tick);
                boolean leapt =
                        avformat.av_seek_frame(media.context(), stream.index(), target, avformat.AVSEEK_FLAG_BACKWARD)
                                >= 0;
                decoding.flush();
                Optional<FilmFrame> found = forward(seconds, from <= 0 || !leapt);
                if (found.isPresent()) {
                    return found.get();
                }
            }
            throw new IOException("no frame can be decoded");
        }

        private Optional<FilmFrame> forward(double seconds, boolean fromTheStart) throws IOException {
            boolean holding = false;
            while (next()) {
                double begins = begins(decoding.frame());
                if (begins > seconds + TOLERANCE_S) {
                    if (holding) {
                        return Optional.of(shown(begins - begins(held), false));
                    }
                    if (!fromTheStart) {
                        return Optional.empty();
                    }
                    hold();
                    return Optional.of(shown(next() ? begins(decoding.frame()) - begins(held) : 0, false));
                }
                hold();
                holding = true;
            }
            return holding ? Optional.of(shown(0, true)) : Optional.empty();
        }

        List<FilmFrame> stretch(double from, double until, double gap, int longSide) throws IOException {
            long target = zero + (long) Math.floor(from / tick);
            avformat.av_seek_frame(media.context(), stream.index(), target, avformat.AVSEEK_FLAG_BACKWARD);
            List<FilmFrame> shown = new ArrayList<>();
            double due = from;
            boolean holding = false;
            while (System.nanoTime() < deadline && next()) {
                double begins = begins(decoding.frame());
                if (begins > due + TOLERANCE_S && holding) {
                    shown.add(small(gap, longSide));
                    due = Math.max(due + gap, begins);
                }
                if (begins >= until) {
                    return shown;
                }
                hold();
                holding = true;
            }
            if (holding && begins(held) > due - gap) {
                shown.add(small(gap, longSide));
            }
            return shown;
        }

        private FilmFrame small(double duration, int longSide) throws IOException {
            double scale = Math.min(1, (double) longSide / Math.max(held.width(), shownHeight()));
            BufferedImage stored =
                    FramePixels.of(held, Math.max(1, (int) Math.round(held.width() * scale)), Math.max(1, (int)
                            Math.round(shownHeight() * scale)));
            return new FilmFrame(turned(Pictures.plain(stored)), begins(held), duration, false);
        }

        private void hold() {
            avutil.av_frame_unref(held);
            avutil.av_frame_move_ref(held, decoding.frame());
        }

        /** Decodes up to the next frame; false at the end. Damaged packets are passed over. */
        private boolean next() throws IOException {
            while (true) {
                if (decoding.receive()) {
                    return true;
                }
                if (System.nanoTime() > deadline) {
                    throw new IOException("finding the frame takes too long");
                }
                boolean more = media.read();
                while (more && media.packet().stream_index() != stream.index()) {
                    more = media.read();
                }
                if (!more) {
                    decoding.end();
                    return decoding.receive();
                }
                decoding.send(media.packet());
            }
        }

        private double begins(AVFrame frame) {
            long time = frame.best_effort_timestamp();
            return time == avutil.AV_NOPTS_VALUE ? 0 : Math.max(0, (time - zero) * tick);
        }

        private FilmFrame shown(double gap, boolean last) throws IOException {
            double duration = gap > 0 ? gap : held.duration() > 0 ? held.duration() * tick : usual();
            BufferedImage stored = FramePixels.of(held, held.width(), shownHeight());
            return new FilmFrame(turned(Pictures.plain(stored)), begins(held), duration, last);
        }

        /** Old films have pixels that are not square; the height is stretched. */
        private int shownHeight() {
            AVRational aspect = held.sample_aspect_ratio();
            double stretch = aspect.num() > 0 && aspect.den() > 0 ? (double) aspect.den() / aspect.num() : 1;
            return stretch > 0.25 && stretch < 4 ? (int) Math.round(held.height() * stretch) : held.height();
        }

        private double usual() {
            AVRational rate = stream.avg_frame_rate();
            return rate.num() > 0 && rate.den() > 0 ? (double) rate.den() / rate.num() : USUAL_FRAME_S;
        }

        private BufferedImage turned(BufferedImage picture) {
            AVPacketSideData matrix = avcodec.av_packet_side_data_get(
                    stream.codecpar().coded_side_data(),
                    stream.codecpar().nb_coded_side_data(),
                    avcodec.AV_PKT_DATA_DISPLAYMATRIX);
            if (matrix == null || matrix.isNull() || matrix.size() < 36) {
                return picture;
            }
            int[] numbers = new int[9];
            matrix.data()
                    .capacity(36)
                    .asByteBuffer()
                    .order(ByteOrder.nativeOrder())
                    .asIntBuffer()
                    .get(numbers);
            return Orientation.ofMatrix(numbers[0], numbers[1], numbers[3], numbers[4])
                    .turned(picture);
        }

        @Override
        public void close() {
            avutil.av_frame_free(held);
            decoding.close();
        }
    }
}
