package quarterlight.ui.kit.play;

import java.util.Optional;
import javax.sound.sampled.AudioFormat;
import javax.sound.sampled.AudioSystem;
import javax.sound.sampled.LineUnavailableException;
import javax.sound.sampled.SourceDataLine;

/** What makes sound heard; a seam that tests replace. */
@FunctionalInterface
public interface SoundDevice {
    /** Samples a second, one channel of 16 bits, low byte first. */
    int RATE = 44_100;

    /** A way to the loudspeaker; empty where this computer has none. */
    Optional<Line> open();

    /** A way to the loudspeaker. */
    interface Line extends AutoCloseable {
        /** Hands over samples; waits while there is no room for them. */
        void write(byte[] samples, int from, int length);

        /** Seconds of sound that were heard so far. */
        double heard();

        /** Ends it at once; what was not heard yet is dropped. */
        @Override
        void close();
    }

    /** The device of the Java platform. */
    static SoundDevice ofPlatform() {
        return () -> {
            AudioFormat format = new AudioFormat(RATE, 16, 1, true, false);
            try {
                SourceDataLine line = AudioSystem.getSourceDataLine(format);
                line.open(format, RATE * 2 * 2);
                line.start();
                return Optional.of(new PlatformLine(line));
            } catch (LineUnavailableException | IllegalArgumentException | SecurityException e) {
                System.getLogger(SoundDevice.class.getName())
                        .log(System.Logger.Level.INFO, "no sound: " + e.getMessage());
                return Optional.empty();
            }
        };
    }

    /** A line of the Java platform. */
    record PlatformLine(SourceDataLine line) implements Line {
        @Override
        public void write(byte[] samples, int from, int length) {
            line.write(samples, from, length);
        }

        @Override
        public double heard() {
            return line.getLongFramePosition() / (double) RATE;
        }

        @Override
        public void close() {
            line.stop();
            line.flush();
            line.close();
        }
    }
}
