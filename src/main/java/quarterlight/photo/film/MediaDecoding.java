package quarterlight.photo.film;

import java.io.IOException;
import org.bytedeco.ffmpeg.avcodec.AVCodec;
import org.bytedeco.ffmpeg.avcodec.AVCodecContext;
import org.bytedeco.ffmpeg.avcodec.AVCodecParameters;
import org.bytedeco.ffmpeg.avcodec.AVPacket;
import org.bytedeco.ffmpeg.avutil.AVDictionary;
import org.bytedeco.ffmpeg.avutil.AVFrame;
import org.bytedeco.ffmpeg.global.avcodec;
import org.bytedeco.ffmpeg.global.avutil;

/** One stream of coded pictures being decoded by ffmpeg, packet by packet. No frame larger than the bound is made. For one thread. */
public final class MediaDecoding implements AutoCloseable {
    /** The error ENOMEM, 12 on every system, as ffmpeg gives it. */
    private static final int NO_ROOM = -12;

    private final AVCodecContext context;
    private final AVFrame frame = avutil.av_frame_alloc();

    private MediaDecoding(AVCodecContext context) {
        this.context = context;
    }

    /**
     * A decoder for a stream.
     *
     * @throws IOException if ffmpeg has none, or refuses the stream
     */
    public static MediaDecoding of(AVCodecParameters stream, long mostPixels) throws IOException {
        return open(stream.codec_id(), stream, mostPixels);
    }

    /** A decoder for packets that need no stream. */
    public static MediaDecoding of(int codec, long mostPixels) throws IOException {
        return open(codec, null, mostPixels);
    }

    private static MediaDecoding open(int codecId, AVCodecParameters stream, long mostPixels) throws IOException {
        AVCodec codec = avcodec.avcodec_find_decoder(codecId);
        if (codec == null || codec.isNull()) {
            throw new IOException("its coding is one that cannot be shown here");
        }
        MediaDecoding decoding = new MediaDecoding(avcodec.avcodec_alloc_context3(codec));
        boolean ready = stream == null || avcodec.avcodec_parameters_to_context(decoding.context, stream) >= 0;
        decoding.context.thread_count(1);
        decoding.context.max_pixels(mostPixels);
        if (!ready || avcodec.avcodec_open2(decoding.context, codec, (AVDictionary) null) < 0) {
            decoding.close();
            throw new IOException("its coding is damaged, or one that cannot be shown here");
        }
        return decoding;
    }

    /** Gives a packet; false if it is damaged. */
    public boolean send(AVPacket packet) {
        return roomFor(avcodec.avcodec_send_packet(context, packet)) >= 0;
    }

    /** Says that no packet follows. */
    public void end() {
        avcodec.avcodec_send_packet(context, null);
    }

    /** Forgets what came before a leap. */
    public void flush() {
        avcodec.avcodec_flush_buffers(context);
    }

    /** Whether there is a next frame now; it is then at {@link #frame()}. */
    public boolean receive() {
        return roomFor(avcodec.avcodec_receive_frame(context, frame)) >= 0;
    }

    /**
     * What ffmpeg answered.
     *
     * @throws OutOfMemoryError if it had no room, which says nothing against the file: a process that may have more can decode it
     */
    private static int roomFor(int status) {
        if (status == NO_ROOM) {
            throw new OutOfMemoryError("ffmpeg has no room for a frame");
        }
        return status;
    }

    public AVFrame frame() {
        return frame;
    }

    @Override
    public void close() {
        avutil.av_frame_free(frame);
        avcodec.avcodec_free_context(context);
    }
}
