package quarterlight.ui.kit.play;

import java.awt.image.BufferedImage;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.ConcurrentLinkedDeque;
import java.util.concurrent.locks.LockSupport;
import quarterlight.photo.PictureUnreadable;
import quarterlight.photo.SoundUnreadable;
import quarterlight.photo.film.FilmFrame;
import quarterlight.task.Threads;

/**
 * One run of playing, from the key that begins it to the one that ends it: a thread that feeds the sound, a thread that fetches pictures ahead. The sound tells the
 * time; where none is heard a clock does. Asked from the event thread.
 */
final class PlayRun {
    private static final double FIRST_S = 1.5;
    private static final double CHUNK_S = 6;
    private static final int SLICE_BYTES = SoundDevice.RATE / 10 * 2;
    private static final double PICTURES_S = 2;
    private static final double PICTURES_PER_S = 12.5;
    private static final long PAUSE_NANOS = 30_000_000L;
    private static final double NANOS_PER_S = 1e9;
    private static final double SAMPLES_END_S = 0.05;

    /** How the sound fares. */
    enum Sound {
        COMING,
        HEARD,
        NONE,
        NO_DEVICE
    }

    private final RecordingSource source;
    private final SoundDevice device;
    private final double from;
    private final double length;
    private final double speed;
    private final ConcurrentLinkedDeque<FilmFrame> frames = new ConcurrentLinkedDeque<>();
    private volatile Sound sound = Sound.COMING;
    private volatile Optional<SoundDevice.Line> line = Optional.empty();
    private volatile Optional<String> problem = Optional.empty();
    private volatile long clockBegan;
    private volatile boolean stopped;
    private volatile boolean ended;

    /** @param length of the recording in seconds, infinite where it is not known */
    PlayRun(RecordingSource source, SoundDevice device, double from, double length, double speed) {
        this.source = source;
        this.device = device;
        this.from = from;
        this.length = length;
        this.speed = speed;
    }

    void start() {
        Threads.startDaemon("quarterlight-sound", this::feed);
        if (source.hasPictures()) {
            Threads.startDaemon("quarterlight-film-run", this::fetch);
        }
    }

    /** Ends it at once. */
    void stop() {
        stopped = true;
        line.ifPresent(SoundDevice.Line::close);
    }

    /** Seconds from the beginning of the recording. */
    double position() {
        double played =
                switch (sound) {
                    case COMING -> 0;
                    case HEARD -> line.map(SoundDevice.Line::heard).orElse(0.0);
                    case NONE, NO_DEVICE -> (System.nanoTime() - clockBegan) / NANOS_PER_S;
                };
        return Math.min(length, from + played * speed);
    }

    Sound sound() {
        return sound;
    }

    /** Why there is no sound, if that is a fault of the file. */
    Optional<String> problem() {
        return problem;
    }

    boolean ended() {
        return ended || sound != Sound.COMING && position() >= length;
    }

    /** The picture of now; those before are let go. */
    Optional<BufferedImage> picture() {
        double now = position();
        FilmFrame last = null;
        while (!frames.isEmpty() && frames.getFirst().seconds() <= now + SAMPLES_END_S) {
            last = frames.removeFirst();
        }
        return Optional.ofNullable(last).map(FilmFrame::picture);
    }

    private void clock(Sound why) {
        clockBegan = System.nanoTime();
        sound = why;
    }

    private void feed() {
        try {
            Optional<byte[]> first = source.sound(from, FIRST_S, speed);
            if (first.isEmpty()) {
                clock(Sound.NONE);
                return;
            }
            line = device.open();
            if (line.isEmpty()) {
                clock(Sound.NO_DEVICE);
                return;
            }
            if (stopped) {
                line.get().close();
                return;
            }
            sound = Sound.HEARD;
            double at = from + FIRST_S;
            long written = write(line.get(), first.get());
            while (!stopped && at < length) {
                byte[] next = source.sound(at, CHUNK_S, speed).orElse(new byte[0]);
                if (next.length == 0) {
                    break;
                }
                written += write(line.get(), next);
                at += CHUNK_S;
            }
            double all = written / 2.0 / SoundDevice.RATE;
            while (!stopped && line.get().heard() < all - SAMPLES_END_S) {
                LockSupport.parkNanos(PAUSE_NANOS);
            }
            ended = true;
        } catch (SoundUnreadable e) {
            problem = Optional.of(e.reason());
            clock(Sound.NONE);
        }
    }

    private int write(SoundDevice.Line to, byte[] samples) {
        for (int i = 0; i < samples.length && !stopped; i += SLICE_BYTES) {
            to.write(samples, i, Math.min(SLICE_BYTES, samples.length - i));
        }
        return samples.length;
    }

    private void fetch() {
        double next = from;
        try {
            while (!stopped && !ended()) {
                double now = position();
                if (next > now + PICTURES_S) {
                    LockSupport.parkNanos(PAUSE_NANOS);
                    continue;
                }
                double begin = Math.max(next, now);
                List<FilmFrame> more =
                        source.frames(begin, PICTURES_S, Math.max(PICTURES_PER_S / 2, PICTURES_PER_S / speed));
                if (more.isEmpty()) {
                    return;
                }
                frames.addAll(more);
                next = begin + PICTURES_S;
            }
        } catch (PictureUnreadable e) {
            problem = Optional.of(e.reason());
        }
    }
}
