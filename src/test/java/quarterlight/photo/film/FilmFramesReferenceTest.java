package quarterlight.photo.film;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.awt.image.BufferedImage;
import java.net.URISyntaxException;
import java.nio.file.Path;
import java.util.Objects;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import quarterlight.photo.PictureUnreadable;
import quarterlight.photo.RealPhotos;

/** Frames by number and time: a film whose frames carry their number as a gray level, and films of phones as ffprobe 5.1 counts them. */
class FilmFramesReferenceTest {
    private static final int FRAMES = 50;
    private static final double FRAME_S = 0.04;

    @TempDir
    Path folder;

    @BeforeEach
    void needsTheNativePart() {
        Assumptions.assumeTrue(FilmFrames.available(), "built without native parts");
    }

    @Test
    void everyMomentShowsItsFrame() throws PictureUnreadable, URISyntaxException {
        Path film = numbered();
        for (int n = 0; n < FRAMES; n++) {
            for (double within : new double[] {0, 0.01, 0.039}) {
                FilmFrame frame = FilmFrames.at(film, n * FRAME_S + within);
                assertThat(number(frame.picture()))
                        .as("at %f s", n * FRAME_S + within)
                        .isCloseTo(n, within(0.45));
                assertThat(frame.seconds()).isCloseTo(n * FRAME_S, within(1e-6));
                assertThat(frame.durationSeconds()).isCloseTo(FRAME_S, within(1e-6));
                assertThat(frame.last()).isEqualTo(n == FRAMES - 1);
            }
        }
        assertThat(number(FilmFrames.at(film, 1e6).picture())).isCloseTo(FRAMES - 1, within(0.45));
        assertThat(FilmFrames.at(film, -3).seconds()).isZero();
    }

    @Test
    void stepsForwardAndBackFrameByFrame() throws PictureUnreadable, URISyntaxException {
        FilmFrame frame = FilmFrames.at(numbered(), 0);
        int forward = 0;
        for (OptionalDouble next = frame.next(); next.isPresent(); next = frame.next()) {
            frame = FilmFrames.at(numbered(), next.getAsDouble());
            assertThat(number(frame.picture())).isCloseTo(++forward, within(0.45));
        }
        assertThat(forward).isEqualTo(FRAMES - 1);
        for (OptionalDouble back = frame.previous(); back.isPresent(); back = frame.previous()) {
            frame = FilmFrames.at(numbered(), back.getAsDouble());
            assertThat(number(frame.picture())).isCloseTo(--forward, within(0.45));
        }
        assertThat(forward).isZero();
    }

    @ParameterizedTest
    @CsvSource({
        "sample.3gp, 74, 0.066667, 176, 144",
        "small_video.mp4, 20, 0.033333, 216, 384",
        "with-gps.mov, 120, 0.033367, 320, 568",
        "with-gps.mp4, 3, 0.033311, 1920, 1080"
    })
    void phonesFilmsHaveTheFramesThatTheReferenceCounts(String name, int frames, double second, int width, int height)
            throws PictureUnreadable {
        Path film = RealPhotos.folder().resolve("cameras").resolve(name);
        FilmFrame frame = FilmFrames.at(film, 0);
        assertThat(frame.picture().getWidth()).isEqualTo(width);
        assertThat(frame.picture().getHeight()).isEqualTo(height);
        int count = 1;
        for (OptionalDouble next = frame.next(); next.isPresent(); next = frame.next()) {
            frame = FilmFrames.at(film, next.getAsDouble());
            count++;
            if (count == 2) {
                assertThat(frame.seconds()).isCloseTo(second, within(0.0006));
            }
        }
        assertThat(count).isEqualTo(frames);
    }

    @Test
    void whatIsNoFilmIsRefused() {
        assertThatThrownBy(() -> FilmFrames.at(folder.resolve("gone.mp4"), 0)).isInstanceOf(PictureUnreadable.class);
    }

    @Test
    void aPhotoIsNoFilm() {
        Path photo = RealPhotos.folder().resolve("cameras/f1t.jpg");
        assertThatThrownBy(() -> FilmFrames.at(photo, 0)).isInstanceOf(PictureUnreadable.class);
    }

    private static Path numbered() throws URISyntaxException {
        return Path.of(Objects.requireNonNull(RealPhotos.class.getResource("numbered.mp4"))
                .toURI());
    }

    /** Limited range: luma 16 to 235 becomes 0 to 255, so a step of 4 becomes 4.658. */
    private static double number(BufferedImage picture) {
        return (picture.getRGB(picture.getWidth() / 2, picture.getHeight() / 2) >> 8 & 255) * 219 / 255.0 / 4;
    }
}
