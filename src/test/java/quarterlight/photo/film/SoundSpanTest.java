package quarterlight.photo.film;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import javax.sound.sampled.AudioFileFormat;
import javax.sound.sampled.AudioFormat;
import javax.sound.sampled.AudioInputStream;
import javax.sound.sampled.AudioSystem;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import quarterlight.photo.MediaType;

/** Sound is cut to the sample, keeps its pitch at other speeds, and says when there is none. */
class SoundSpanTest {
    private static final int RATE = 44_100;
    private static final int HERTZ = 440;

    @TempDir
    Path folder;

    @BeforeEach
    void needsTheNativePart() {
        assumeTrue(SoundSpan.available(), "sound cannot be decoded on this computer");
    }

    /** Silence for the first second, then a tone, written by the Java platform in two channels. */
    private Path tone(double seconds, int rate) throws IOException {
        byte[] samples = new byte[4 * (int) Math.round(seconds * rate)];
        for (int i = rate; i < samples.length / 4; i++) {
            int value = (int) Math.round(16_000 * Math.sin(2 * Math.PI * HERTZ * i / rate));
            for (int channel = 0; channel < 2; channel++) {
                samples[4 * i + 2 * channel] = (byte) value;
                samples[4 * i + 2 * channel + 1] = (byte) (value >> 8);
            }
        }
        AudioFormat format = new AudioFormat(rate, 16, 2, true, false);
        Path file = folder.resolve("tone.wav");
        AudioSystem.write(
                new AudioInputStream(new ByteArrayInputStream(samples), format, samples.length / 4),
                AudioFileFormat.Type.WAVE,
                file.toFile());
        return file;
    }

    private static byte[] span(Path file, double from, double seconds, double speed) throws IOException {
        return SoundSpan.of(file, MediaType.WAV, from, seconds, speed, RATE).orElseThrow();
    }

    /** By counting how often the sound goes through zero upward. */
    private static double hertz(byte[] samples) {
        int crossings = 0;
        int before = 0;
        for (int i = 0; i < samples.length / 2; i++) {
            int now = samples[2 * i + 1] << 8 | samples[2 * i] & 0xFF;
            crossings += before < 0 && now >= 0 ? 1 : 0;
            before = now;
        }
        return crossings / (samples.length / 2.0 / RATE);
    }

    @Test
    void aStretchBeginsAndEndsAtItsSeconds() throws IOException {
        Path file = tone(4, 48_000);
        byte[] around = span(file, 0.5, 1, 1);
        assertThat(around.length / 2).isCloseTo(RATE, within(RATE / 100));
        byte[] loud = Loudness.of(around, RATE);
        assertThat(loud).hasSizeBetween(24, 26);
        assertThat(loud[5] & 0xFF).isZero();
        assertThat(loud[11] & 0xFF).isZero();
        assertThat(loud[14] & 0xFF).isGreaterThan(180);
        assertThat(loud[20] & 0xFF).isGreaterThan(180);
    }

    @Test
    void theEndIsShortAndBeyondItIsNothing() throws IOException {
        Path file = tone(4, 44_100);
        assertThat(span(file, 3.5, 6, 1).length / 2).isCloseTo(RATE / 2, within(RATE / 50));
        assertThat(span(file, 9, 6, 1)).isEmpty();
    }

    @Test
    void otherSpeedsKeepThePitch() throws IOException {
        Path file = tone(5, 44_100);
        for (double speed : new double[] {0.5, 0.75, 1, 1.5, 2}) {
            byte[] played = span(file, 2, 2, speed);
            assertThat(played.length / 2.0 / RATE).as("length at " + speed).isCloseTo(2 / speed, within(0.15));
            assertThat(hertz(played)).as("pitch at " + speed).isCloseTo(HERTZ, within(15.0));
        }
    }

    @Test
    void whatIsNoSoundIsRefused() throws IOException {
        Path file = folder.resolve("no.wav");
        Files.write(file, "RIFF....WAVE and nothing".getBytes(java.nio.charset.StandardCharsets.US_ASCII));
        assertThatThrownBy(() -> SoundSpan.of(file, MediaType.WAV, 0, 1, 1, RATE))
                .isInstanceOf(IOException.class);
    }
}
