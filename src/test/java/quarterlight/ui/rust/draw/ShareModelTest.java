package quarterlight.ui.rust.draw;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.image.BufferedImage;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import java.util.function.BooleanSupplier;
import javax.swing.SwingUtilities;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import quarterlight.language.Language;
import quarterlight.rust.TestVisits;
import quarterlight.ui.kit.Texts;
import quarterlight.ui.kit.look.Palette;
import quarterlight.visit.annotation.Outline;
import quarterlight.visit.annotation.PixelPoint;
import quarterlight.visit.photo.MediaKind;
import quarterlight.visit.photo.Photo;

/** A photo of 800 by 600 pixels, looked at as a picture of half its size: its left half is rust, its right half blue paint. */
class ShareModelTest {
    private static final Photo PHOTO = TestVisits.photo(3, MediaKind.PHOTO, 800, 600);
    private static final int WIDTH = 400;
    private static final int HEIGHT = 300;

    private static Outline box(double x0, double y0, double x1, double y1) {
        return new Outline(
                List.of(new PixelPoint(x0, y0), new PixelPoint(x1, y0), new PixelPoint(x1, y1), new PixelPoint(x0, y1)),
                List.of());
    }

    private static BufferedImage picture() {
        Random random = new Random(9);
        BufferedImage picture = new BufferedImage(WIDTH, HEIGHT, BufferedImage.TYPE_INT_RGB);
        for (int y = 0; y < HEIGHT; y++) {
            for (int x = 0; x < WIDTH; x++) {
                picture.setRGB(x, y, (x < WIDTH / 2 ? 0x8B4513 : 0x2A4D8F) + random.nextInt(4));
            }
        }
        return picture;
    }

    private static ShareModel model() {
        return new ShareModel((photo, done) -> done.accept(picture()), failure -> {
            throw new AssertionError(failure);
        });
    }

    private static void onEvents(Runnable work) throws Exception {
        SwingUtilities.invokeAndWait(work);
    }

    private static void until(BooleanSupplier holds) throws Exception {
        boolean[] held = {false};
        long end = System.nanoTime() + TimeUnit.SECONDS.toNanos(30);
        while (!held[0] && System.nanoTime() < end) {
            onEvents(() -> held[0] = holds.getAsBoolean());
            Thread.sleep(10);
        }
        assertThat(held[0]).isTrue();
    }

    private static double share(ShareModel model) {
        return model.answer().orElseThrow().share().orElseThrow();
    }

    @Test
    void theRegionIsGivenInPixelsOfThePhoto() throws Exception {
        ShareModel model = model();
        onEvents(() -> {
            model.look(Optional.of(PHOTO), Optional.of(box(300, 100, 700, 500)));
            assertThat(model.answer())
                    .as("nothing is counted before it is wanted")
                    .isEmpty();
            model.switchTo(true);
        });
        until(() -> model.answer().isPresent());
        onEvents(() -> {
            assertThat(share(model)).isCloseTo(0.25, within(1e-9));
            ShareModel.Cover cover = model.cover(PHOTO.id()).orElseThrow();
            assertThat(cover.width()).isEqualTo(800);
            assertThat(cover.image().getRGB(160, 100) >>> 24)
                    .as("rust is covered")
                    .isPositive();
            assertThat(cover.image().getRGB(250, 100) >>> 24).as("paint is not").isZero();
            assertThat(cover.image().getRGB(10, 10) >>> 24)
                    .as("nor rust outside the region")
                    .isZero();
        });
        model.stop();
    }

    @Test
    void whatTheBrushTakesAwayIsNotCountedUntilItIsBroughtBack() throws Exception {
        ShareModel model = model();
        onEvents(() -> {
            model.look(Optional.of(PHOTO), Optional.of(box(300, 100, 500, 300)));
            model.switchTo(true);
        });
        until(() -> model.answer().isPresent() && model.answer().get().pixels() == 100 * 100);
        onEvents(() -> model.brush(new PixelPoint(350, 200), 30, true));
        double disc = Math.PI * 15 * 15;
        until(() -> model.answer().orElseThrow().pixels() < 100 * 100);
        onEvents(() -> {
            assertThat(model.isBrushed()).isTrue();
            assertThat((double) model.answer().orElseThrow().pixels()).isCloseTo(100 * 100 - disc, within(0.03 * disc));
            assertThat(share(model)).isCloseTo((5000 - disc) / (10_000 - disc), within(0.003));
            model.brush(new PixelPoint(350, 200), 40, false);
        });
        until(() -> model.answer().orElseThrow().pixels() == 100 * 100);
        onEvents(() -> assertThat(model.isBrushed()).isFalse());
        model.stop();
    }

    @Test
    void anAnswerToAnOlderQuestionIsLeftOut() throws Exception {
        ShareModel model = model();
        onEvents(() -> {
            model.look(Optional.of(PHOTO), Optional.of(box(0, 0, 200, 200)));
            model.switchTo(true);
            model.look(Optional.of(PHOTO), Optional.of(box(500, 0, 700, 200)));
        });
        until(() -> model.answer().isPresent());
        onEvents(() -> assertThat(share(model)).isZero());
        model.stop();
    }

    @Test
    void theThresholdIsTakenIntoTheQuestion() {
        BufferedImage picture = picture();
        ShareWork.Question low =
                new ShareWork.Question(picture, box(0, 0, 400, 300), 1, new BitSet(), 0.05, Palette.LIGHT);
        assertThat(ShareWork.answer(low).share().orElseThrow()).isCloseTo(0.5, within(1e-9));
    }

    /** What the pane says of a region and what is noted with its outlines: no figure, in no language. */
    @ParameterizedTest
    @EnumSource(
            value = Language.class,
            names = {"ENGLISH", "GERMAN"})
    void noShareIsSaidNorNoted(Language language) {
        for (String key : List.of("share.figure", "share.empty", "share.outlines.said")) {
            assertThat(Texts.load(language).get(key)).as(key).isNotBlank().doesNotContainPattern("[0-9%{]");
        }
    }
}
