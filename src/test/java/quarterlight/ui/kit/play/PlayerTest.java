package quarterlight.ui.kit.play;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.atomic.AtomicLong;
import javax.swing.SwingUtilities;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import quarterlight.photo.film.FilmFrame;
import quarterlight.ui.kit.OpenedVisit;

/** The sound tells the time and pictures follow it; where there is none a clock does, and it is said. */
@Timeout(60)
class PlayerTest {
    private static final double LENGTH = 30;

    private final AtomicLong heardSamples = new AtomicLong();
    private final List<Double> asked = Collections.synchronizedList(new ArrayList<>());
    private Player player;

    /** A recording whose picture at a second is as wide as that second. */
    private final class Made implements RecordingSource {
        private final boolean sound;

        Made(boolean sound) {
            this.sound = sound;
        }

        @Override
        public List<FilmFrame> frames(double from, double seconds, double perSecond) {
            List<FilmFrame> frames = new ArrayList<>();
            for (double at = from; at < Math.min(LENGTH, from + seconds); at += 1 / perSecond) {
                frames.add(new FilmFrame(
                        new BufferedImage(1 + (int) at, 1, BufferedImage.TYPE_INT_RGB), at, 1 / perSecond, false));
            }
            return frames;
        }

        @Override
        public Optional<byte[]> sound(double from, double seconds, double speed) {
            asked.add(from);
            double length = Math.max(0, Math.min(seconds, LENGTH - from));
            return sound
                    ? Optional.of(new byte[2 * (int) Math.round(length / speed * SoundDevice.RATE)])
                    : Optional.empty();
        }

        @Override
        public Optional<byte[]> loudness(double from, double seconds) {
            return sound ? Optional.of(new byte[(int) (25 * Math.min(seconds, LENGTH))]) : Optional.empty();
        }

        @Override
        public boolean hasPictures() {
            return true;
        }
    }

    /** A device that hears as much as the test lets it. */
    private final class Device implements SoundDevice.Line {
        @Override
        public void write(byte[] samples, int from, int length) {
            // there is always room
        }

        @Override
        public double heard() {
            return heardSamples.get() / (double) SoundDevice.RATE;
        }

        @Override
        public void close() {
            // nothing to close
        }
    }

    private void open(boolean sound, SoundDevice device) throws Exception {
        player = OpenedVisit.asked(() -> new Player(device));
        SwingUtilities.invokeAndWait(() -> player.load(Optional.of(new Made(sound)), OptionalDouble.of(LENGTH)));
    }

    @AfterEach
    void close() {
        if (player != null) {
            SwingUtilities.invokeLater(player::close);
        }
    }

    private void hear(double seconds) {
        heardSamples.set((long) (seconds * SoundDevice.RATE));
    }

    @Test
    void picturesFollowTheSoundThatIsHeard() throws Exception {
        open(true, () -> Optional.of(new Device()));
        SwingUtilities.invokeAndWait(() -> player.play(4, 20));
        OpenedVisit.until(() -> asked.size() > 1);
        assertThat(OpenedVisit.asked(() -> player.position())).isCloseTo(4, within(0.01));
        hear(3.5);
        OpenedVisit.until(() ->
                player.picture().filter(picture -> picture.getWidth() == 8).isPresent());
        assertThat(OpenedVisit.asked(() -> player.position())).isCloseTo(7.5, within(0.01));
        assertThat(asked).startsWith(4.0, 5.5);
        hear(16.5);
        OpenedVisit.until(() -> !player.isPlaying());
        assertThat(OpenedVisit.asked(() -> player.said())).isEqualTo(Player.Said.NOTHING);
    }

    @Test
    void atDoubleSpeedTwoSecondsPassWhileOneIsHeard() throws Exception {
        open(true, () -> Optional.of(new Device()));
        SwingUtilities.invokeAndWait(() -> {
            player.speed(2);
            player.play(4, 20);
        });
        hear(3);
        OpenedVisit.until(() -> Math.abs(player.position() - 10) < 0.01);
    }

    @Test
    void withoutADeviceItSaysSoAndGoesOn() throws Exception {
        open(true, Optional::empty);
        SwingUtilities.invokeAndWait(player::play);
        OpenedVisit.until(() -> player.said() == Player.Said.NO_DEVICE && player.position() > 0.2);
        assertThat(OpenedVisit.asked(() -> player.isPlaying())).isTrue();
        SwingUtilities.invokeAndWait(player::pause);
        double held = OpenedVisit.asked(() -> player.position());
        Thread.sleep(120);
        assertThat(OpenedVisit.asked(() -> player.position())).isEqualTo(held);
    }

    @Test
    void aFilmWithoutSoundSaysSoAndGoesOn() throws Exception {
        open(false, () -> Optional.of(new Device()));
        SwingUtilities.invokeAndWait(player::play);
        OpenedVisit.until(() -> player.said() == Player.Said.NO_SOUND && player.position() > 0.2);
    }

    @Test
    void momentsAreHeldWithinTheRecording() throws Exception {
        open(true, () -> Optional.of(new Device()));
        SwingUtilities.invokeAndWait(() -> player.go(99));
        assertThat(OpenedVisit.asked(() -> player.position())).isEqualTo(LENGTH);
        SwingUtilities.invokeAndWait(() -> player.skip(-200));
        assertThat(OpenedVisit.asked(() -> player.position())).isZero();
        SwingUtilities.invokeAndWait(() -> player.go(12));
        OpenedVisit.until(() ->
                player.picture().filter(picture -> picture.getWidth() == 13).isPresent());
    }

    @Test
    void wordsAreSpreadOverTheirCueByTheirLength() {
        List<StripWord> words = StripWord.of(10, 20, "a longer  word\nhere");
        assertThat(words).extracting(StripWord::text).containsExactly("a", "longer", "word", "here");
        assertThat(words.get(0).from()).isEqualTo(10);
        assertThat(words.get(3).until()).isCloseTo(20, within(1e-9));
        assertThat(words.get(1).until() - words.get(1).from())
                .isGreaterThan(words.get(0).until() - words.get(0).from());
    }
}
