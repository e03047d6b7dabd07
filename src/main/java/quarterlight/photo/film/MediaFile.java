package quarterlight.photo.film;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import org.bytedeco.ffmpeg.avcodec.AVPacket;
import org.bytedeco.ffmpeg.avformat.AVFormatContext;
import org.bytedeco.ffmpeg.avformat.AVStream;
import org.bytedeco.ffmpeg.avutil.AVDictionary;
import org.bytedeco.ffmpeg.avutil.AVDictionaryEntry;
import org.bytedeco.ffmpeg.global.avcodec;
import org.bytedeco.ffmpeg.global.avformat;
import org.bytedeco.ffmpeg.global.avutil;
import org.bytedeco.javacpp.BytePointer;
import quarterlight.photo.MediaType;
import quarterlight.photo.pixels.NativeLibraries;

/**
 * A film, HEIC, AVIF or sound file opened by ffmpeg. The container is read as the one format that its first bytes told: nothing in the file can lead to another
 * format, another file or the network. For one thread.
 */
public final class MediaFile implements AutoCloseable {
    private static final int MAX_TAGS = 200;

    private final AVFormatContext context;
    private final AVPacket packet;

    private MediaFile(AVFormatContext context) {
        this.context = context;
        this.packet = avcodec.av_packet_alloc();
    }

    /** Whether the native part is there. */
    public static boolean available() {
        return Native.LOADED;
    }

    private static final class Native {
        static final boolean LOADED = load();

        private static boolean load() {
            boolean loaded = NativeLibraries.loads("org.bytedeco.ffmpeg.global.avformat")
                    && NativeLibraries.loads("org.bytedeco.ffmpeg.global.swscale");
            if (loaded) {
                avutil.av_log_set_level(avutil.AV_LOG_QUIET);
            }
            return loaded;
        }
    }

    /** @throws IOException if the container cannot be read */
    public static MediaFile open(Path file) throws IOException {
        return open(file, "mov");
    }

    /**
     * A film or sound for what is heard in it, with its streams looked into.
     *
     * @throws IOException if it cannot be read
     */
    public static MediaFile openSound(Path file, MediaType type) throws IOException {
        MediaFile media = open(file, format(type));
        if (avformat.avformat_find_stream_info(media.context, (AVDictionary) null) < 0 || media.streams() == 0) {
            media.close();
            throw new IOException("the sound cannot be read");
        }
        return media;
    }

    private static String format(MediaType type) {
        return switch (type) {
            case MP3 -> "mp3";
            case WAV -> "wav";
            case OGG -> "ogg";
            case AMR -> "amr";
            case MP4, MOV, THREE_GP, M4A, THREE_GP_SOUND -> "mov";
            default -> throw new IllegalArgumentException(type + " has no sound");
        };
    }

    private static MediaFile open(Path file, String format) throws IOException {
        AVFormatContext context = avformat.avformat_alloc_context();
        AVDictionary options = new AVDictionary(null);
        try (BytePointer name = new BytePointer("file:" + file.toAbsolutePath(), StandardCharsets.UTF_8)) {
            avutil.av_dict_set(options, "protocol_whitelist", "file", 0);
            int opened = avformat.avformat_open_input(context, name, avformat.av_find_input_format(format), options);
            if (opened < 0) {
                throw new IOException("the container cannot be read (" + opened + ")");
            }
            return new MediaFile(context);
        } finally {
            avutil.av_dict_free(options);
        }
    }

    /** Length as the container says or its streams show. */
    public OptionalDouble seconds() {
        long length = context.duration();
        return length <= 0 ? OptionalDouble.empty() : OptionalDouble.of((double) length / avutil.AV_TIME_BASE);
    }

    /** The named texts of the file and of its first stream, by their names in lower case. */
    public Map<String, String> tags() {
        Map<String, String> tags = new HashMap<>();
        if (streams() > 0) {
            addAll(stream(0).metadata(), tags);
        }
        addAll(context.metadata(), tags);
        return tags;
    }

    private static void addAll(AVDictionary from, Map<String, String> tags) {
        AVDictionaryEntry entry = from == null ? null : avutil.av_dict_iterate(from, null);
        for (int i = 0; entry != null && !entry.isNull() && i < MAX_TAGS; i++) {
            tags.put(
                    entry.key().getString().toLowerCase(Locale.ROOT),
                    entry.value().getString());
            entry = avutil.av_dict_iterate(from, entry);
        }
    }

    public AVFormatContext context() {
        return context;
    }

    public int streams() {
        return context.nb_streams();
    }

    public AVStream stream(int index) {
        return context.streams(index);
    }

    /** The packet that was read last. */
    public AVPacket packet() {
        return packet;
    }

    /** Reads the next packet; false at the end, or where the data breaks off. */
    public boolean read() {
        avcodec.av_packet_unref(packet);
        return avformat.av_read_frame(context, packet) >= 0;
    }

    @Override
    public void close() {
        avcodec.av_packet_free(packet);
        avformat.avformat_close_input(context);
    }
}
