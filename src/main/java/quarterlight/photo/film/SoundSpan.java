package quarterlight.photo.film;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.bytedeco.ffmpeg.avfilter.AVFilterContext;
import org.bytedeco.ffmpeg.avfilter.AVFilterGraph;
import org.bytedeco.ffmpeg.avformat.AVStream;
import org.bytedeco.ffmpeg.avutil.AVChannelLayout;
import org.bytedeco.ffmpeg.avutil.AVFrame;
import org.bytedeco.ffmpeg.avutil.AVRational;
import org.bytedeco.ffmpeg.global.avfilter;
import org.bytedeco.ffmpeg.global.avformat;
import org.bytedeco.ffmpeg.global.avutil;
import org.bytedeco.javacpp.BytePointer;
import org.bytedeco.javacpp.Pointer;
import quarterlight.photo.MediaType;
import quarterlight.photo.pixels.NativeLibraries;

/**
 * What is heard in a stretch of a film or memo: one channel of 16-bit samples, low byte first, at a rate that is asked for, at its own speed or faster or slower
 * with its pitch kept (ffmpeg's filter atempo).
 */
public final class SoundSpan {
    private static final int CHANNEL_WORDS = 64;
    private static final int SAMPLE_BYTES = 2;
    /** A leap lands a little before the wish, so that a coding that needs what came before has it. */
    private static final double RUN_UP_S = 0.2;

    private SoundSpan() {}

    /** Whether sound can be decoded on this computer. */
    public static boolean available() {
        return MediaFile.available() && Native.LOADED;
    }

    private static final class Native {
        static final boolean LOADED = NativeLibraries.loads("org.bytedeco.ffmpeg.global.avfilter");
    }

    /**
     * The samples of a stretch.
     *
     * @param speed 1 for its own, 0.5 to 2
     * @param rate samples a second
     * @return empty if the film has no sound; shorter than wished at its end
     * @throws IOException if it cannot be decoded
     */
    public static Optional<byte[]> of(Path file, MediaType type, double from, double seconds, double speed, int rate)
            throws IOException {
        if (!available()) {
            throw new IOException("sound cannot be played here, since the native part for it is not installed");
        }
        try (MediaFile media = MediaFile.openSound(file, type)) {
            Optional<AVStream> heard = heard(media);
            if (heard.isEmpty()) {
                return Optional.empty();
            }
            try (Decoding decoding = new Decoding(media, heard.get(), new Wish(from, seconds, speed, rate))) {
                return Optional.of(decoding.samples());
            }
        }
    }

    private record Wish(double from, double seconds, double speed, int rate) {
        /** Silence before a sound that begins later than the film. */
        int silentBytes(double begins) {
            double lead = Math.max(0, Math.min(seconds, begins - from));
            return SAMPLE_BYTES * (int) Math.round(lead / speed * rate);
        }
    }

    private static Optional<AVStream> heard(MediaFile media) {
        for (int i = 0; i < media.streams(); i++) {
            if (media.stream(i).codecpar().codec_type() == avutil.AVMEDIA_TYPE_AUDIO) {
                return Optional.of(media.stream(i));
            }
        }
        return Optional.empty();
    }

    private static final class Decoding implements AutoCloseable {
        private final MediaFile media;
        private final AVStream stream;
        private final Wish wish;
        private final MediaDecoding decoding;
        private final double tick;
        private final AVFrame filtered = avutil.av_frame_alloc();
        private final ByteArrayOutputStream samples = new ByteArrayOutputStream();
        private Optional<Chain> chain = Optional.empty();

        Decoding(MediaFile media, AVStream stream, Wish wish) throws IOException {
            this.media = media;
            this.stream = stream;
            this.wish = wish;
            AVRational base = stream.time_base();
            this.tick = base.den() > 0 && base.num() > 0 ? (double) base.num() / base.den() : 1.0 / wish.rate();
            this.decoding = MediaDecoding.of(stream.codecpar(), 1);
        }

        byte[] samples() throws IOException {
            long target = (long) Math.floor(Math.max(0, wish.from() - RUN_UP_S) / tick);
            avformat.av_seek_frame(media.context(), stream.index(), target, avformat.AVSEEK_FLAG_BACKWARD);
            boolean more = true;
            while (more) {
                more = media.read();
                if (!more) {
                    decoding.end();
                } else if (media.packet().stream_index() == stream.index()) {
                    decoding.send(media.packet());
                }
                while (decoding.receive()) {
                    if (!take(decoding.frame())) {
                        more = false;
                        break;
                    }
                }
            }
            if (chain.isPresent()) {
                avfilter.av_buffersrc_add_frame(chain.get().source(), null);
                drain(chain.get());
            }
            return samples.toByteArray();
        }

        /** False once the stretch is over. */
        private boolean take(AVFrame frame) throws IOException {
            long time = frame.best_effort_timestamp();
            double begins = time == avutil.AV_NOPTS_VALUE ? wish.from() : time * tick;
            if (begins >= wish.from() + wish.seconds()) {
                return false;
            }
            if (begins + (double) frame.nb_samples() / Math.max(1, frame.sample_rate()) <= wish.from()) {
                return true;
            }
            if (chain.isEmpty()) {
                chain = Optional.of(new Chain(frame, stream.time_base(), wish));
                samples.write(new byte[wish.silentBytes(begins)]);
            }
            frame.pts(time);
            if (avfilter.av_buffersrc_add_frame(chain.get().source(), frame) < 0) {
                return true;
            }
            drain(chain.get());
            return true;
        }

        private void drain(Chain through) {
            while (avfilter.av_buffersink_get_frame(through.sink(), filtered) >= 0) {
                byte[] bytes = new byte[filtered.nb_samples() * SAMPLE_BYTES];
                filtered.data(0).get(bytes);
                samples.writeBytes(bytes);
                avutil.av_frame_unref(filtered);
            }
        }

        @Override
        public void close() {
            chain.ifPresent(Chain::close);
            avutil.av_frame_free(filtered);
            decoding.close();
        }
    }

    /** The filters through which the samples go. */
    private static final class Chain implements AutoCloseable {
        private final AVFilterGraph graph = avfilter.avfilter_graph_alloc();
        private final List<AVFilterContext> filters = new ArrayList<>();

        Chain(AVFrame first, AVRational base, Wish wish) throws IOException {
            try {
                add("abuffer", source(first, base));
                add("atrim", text("start=%.6f:end=%.6f", wish.from(), wish.from() + wish.seconds()));
                add("asetpts", "PTS-STARTPTS");
                add("aresample", text("%d", wish.rate()));
                add("aformat", "sample_fmts=s16:channel_layouts=mono");
                if (wish.speed() != 1) {
                    add("atempo", text("%.4f", wish.speed()));
                    add("aformat", "sample_fmts=s16:channel_layouts=mono");
                }
                add("abuffersink", "");
                check(avfilter.avfilter_graph_config(graph, (Pointer) null));
            } catch (IOException e) {
                close();
                throw e;
            }
        }

        private static String text(String form, Object... numbers) {
            return String.format(Locale.ROOT, form, numbers);
        }

        private static String source(AVFrame first, AVRational base) throws IOException {
            try (BytePointer name = new BytePointer(CHANNEL_WORDS)) {
                AVChannelLayout layout = first.ch_layout();
                check(avutil.av_channel_layout_describe(layout, name, CHANNEL_WORDS));
                return text(
                        "time_base=%d/%d:sample_rate=%d:sample_fmt=%s:channel_layout=%s",
                        base.num(),
                        base.den(),
                        first.sample_rate(),
                        avutil.av_get_sample_fmt_name(first.format()).getString(),
                        name.getString());
            }
        }

        private void add(String kind, String options) throws IOException {
            AVFilterContext made = new AVFilterContext(null);
            check(avfilter.avfilter_graph_create_filter(
                    made, avfilter.avfilter_get_by_name(kind), kind + filters.size(), options, null, graph));
            if (!filters.isEmpty()) {
                check(avfilter.avfilter_link(filters.get(filters.size() - 1), 0, made, 0));
            }
            filters.add(made);
        }

        private static void check(int status) throws IOException {
            if (status < 0) {
                throw new IOException("its sound is of a kind that cannot be played here");
            }
        }

        AVFilterContext source() {
            return filters.get(0);
        }

        AVFilterContext sink() {
            return filters.get(filters.size() - 1);
        }

        @Override
        public void close() {
            avfilter.avfilter_graph_free(graph);
        }
    }
}
