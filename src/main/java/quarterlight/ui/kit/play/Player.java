package quarterlight.ui.kit.play;

import java.awt.image.BufferedImage;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import javax.swing.SwingUtilities;
import javax.swing.Timer;
import quarterlight.photo.PictureUnreadable;
import quarterlight.photo.SoundUnreadable;
import quarterlight.photo.film.FilmFrame;
import quarterlight.photo.film.Loudness;
import quarterlight.task.LatestWork;
import quarterlight.ui.kit.Listeners;

/**
 * Plays one film or memo: to and fro, at half to double speed, to a moment or a stretch of it. Where the computer has no sound device, or the recording no sound, it
 * says so and goes on by a clock. Event thread only.
 */
public final class Player {
    /** Half to double. */
    public static final List<Double> SPEEDS = List.of(0.5, 0.75, 1.0, 1.25, 1.5, 2.0);

    private static final int TICK_MS = 40;
    private static final double PICTURE_S = 1 / 25.0;
    private static final double LOUDNESS_SPAN_S = 120;
    private static final double MOST_LOUDNESS_S = 6 * 3600;

    /** What the player can say about the sound. */
    public enum Said {
        NOTHING,
        NO_RECORDING,
        NO_SOUND,
        NO_DEVICE
    }

    private final SoundDevice device;
    private final Listeners changed = new Listeners();
    private final Timer timer = new Timer(TICK_MS, e -> tick());
    private final LatestWork<Still, Optional<BufferedImage>> stills;
    private final LatestWork<RecordingSource, byte[]> hearing;
    private Optional<RecordingSource> source = Optional.empty();
    private Optional<PlayRun> run = Optional.empty();
    private Optional<BufferedImage> picture = Optional.empty();
    private OptionalDouble until = OptionalDouble.empty();
    private Optional<String> problem = Optional.empty();
    private Said said = Said.NO_RECORDING;
    private double length = Double.POSITIVE_INFINITY;
    private double position;
    private double speed = 1;
    private byte[] loudness = {};

    /** The wish for one picture. */
    private record Still(RecordingSource of, double seconds) {}

    public Player(SoundDevice device) {
        this.device = Objects.requireNonNull(device, "device");
        stills = new LatestWork<>(
                "quarterlight-still",
                SwingUtilities::invokeLater,
                (wish, course) -> still(wish),
                this::arrived,
                failure -> problem = Optional.of(String.valueOf(failure.getMessage())));
        hearing = new LatestWork<>(
                "quarterlight-loudness",
                SwingUtilities::invokeLater,
                Player::heard,
                this::heard,
                failure -> problem = Optional.of(String.valueOf(failure.getMessage())));
    }

    private static Optional<BufferedImage> still(Still wish) {
        try {
            return wish.of().frames(wish.seconds(), PICTURE_S, 1 / PICTURE_S).stream()
                    .findFirst()
                    .map(FilmFrame::picture);
        } catch (PictureUnreadable e) {
            return Optional.empty();
        }
    }

    private static byte[] heard(RecordingSource of, LatestWork.Course<byte[]> course) {
        byte[] all = {};
        try {
            for (double at = 0; at < MOST_LOUDNESS_S && !course.cancelled(); at += LOUDNESS_SPAN_S) {
                byte[] next = of.loudness(at, LOUDNESS_SPAN_S).orElse(new byte[0]);
                int before = all.length;
                all = Arrays.copyOf(all, before + next.length);
                System.arraycopy(next, 0, all, before, next.length);
                if (next.length < LOUDNESS_SPAN_S * Loudness.PER_SECOND - 1) {
                    break;
                }
                course.soFar(all.clone());
            }
        } catch (SoundUnreadable e) {
            return all;
        }
        return all;
    }

    private void heard(byte[] loud) {
        loudness = loud;
        changed.tell();
    }

    private void arrived(Optional<BufferedImage> still) {
        if (run.isEmpty() && still.isPresent()) {
            picture = still;
            changed.tell();
        }
    }

    /**
     * Takes another recording in hand, or none.
     *
     * @param seconds its length, if that is known
     */
    public void load(Optional<RecordingSource> recording, OptionalDouble seconds) {
        halt();
        source = recording;
        length = seconds.orElse(Double.POSITIVE_INFINITY);
        position = 0;
        picture = Optional.empty();
        problem = Optional.empty();
        loudness = new byte[0];
        said = recording.isPresent() ? Said.NOTHING : Said.NO_RECORDING;
        hearing.cancel();
        recording.ifPresent(hearing::request);
        changed.tell();
    }

    public boolean isLoaded() {
        return source.isPresent();
    }

    /** Whether there is anything to see. */
    public boolean hasPictures() {
        return source.filter(RecordingSource::hasPictures).isPresent();
    }

    public boolean isPlaying() {
        return run.isPresent();
    }

    /** Seconds from the beginning. */
    public double position() {
        return position;
    }

    /** Seconds, infinite where it is not known. */
    public double length() {
        return length;
    }

    public double speed() {
        return speed;
    }

    /** The picture of now, if there is one. */
    public Optional<BufferedImage> picture() {
        return picture;
    }

    /** How loud the recording is, 25 stretches a second, as far as that is known. */
    byte[] loudness() {
        return loudness;
    }

    public Said said() {
        return said;
    }

    /** What is wrong with the recording, in words. */
    public Optional<String> problem() {
        return problem;
    }

    /** Plays from here, or holds. */
    public void toggle() {
        if (isPlaying()) {
            pause();
        } else {
            play();
        }
    }

    /** Plays on from here; from the beginning if it stands at the end. */
    public void play() {
        until = OptionalDouble.empty();
        begin(position >= length - PICTURE_S ? 0 : position);
    }

    /** Plays a stretch. */
    public void play(double from, double to) {
        begin(from);
        until = OptionalDouble.of(to);
    }

    private void begin(double from) {
        halt();
        position = held(from);
        if (source.isPresent()) {
            PlayRun next = new PlayRun(source.get(), device, position, length, speed);
            run = Optional.of(next);
            next.start();
            timer.start();
        }
        changed.tell();
    }

    public void pause() {
        halt();
        changed.tell();
    }

    private void halt() {
        run.ifPresent(PlayRun::stop);
        run = Optional.empty();
        until = OptionalDouble.empty();
        timer.stop();
    }

    private double held(double seconds) {
        return Math.max(0, Math.min(length, seconds));
    }

    /** Goes to a moment; plays on there if it was playing. */
    public void go(double seconds) {
        if (isPlaying()) {
            begin(seconds);
        } else {
            position = held(seconds);
            showStill();
            changed.tell();
        }
    }

    /** Goes on by so many seconds, back if below 0. */
    public void skip(double seconds) {
        go(position + seconds);
    }

    /** Holds, and goes by one picture. */
    public void step(int pictures) {
        halt();
        go(position + pictures * PICTURE_S);
    }

    private void showStill() {
        source.filter(RecordingSource::hasPictures).ifPresent(of -> stills.request(new Still(of, position)));
    }

    /** Plays faster or slower from now on, with the pitch kept. */
    public void speed(double times) {
        speed = times;
        if (isPlaying()) {
            OptionalDouble end = until;
            begin(position);
            until = end;
        }
        changed.tell();
    }

    private void tick() {
        if (run.isEmpty()) {
            return;
        }
        PlayRun now = run.get();
        position = now.position();
        now.picture().ifPresent(fresh -> picture = Optional.of(fresh));
        said = switch (now.sound()) {
            case COMING, HEARD -> Said.NOTHING;
            case NONE -> Said.NO_SOUND;
            case NO_DEVICE -> Said.NO_DEVICE;
        };
        problem = now.problem();
        if (now.ended() || until.isPresent() && position >= until.getAsDouble()) {
            halt();
        }
        changed.tell();
    }

    /** Told at every change, and many times a second while it plays. */
    public Listeners.Registration onChange(Runnable listener) {
        return changed.add(listener);
    }

    /** Ends everything; the player is not used after that. */
    public void close() {
        halt();
        stills.stop();
        hearing.stop();
    }
}
