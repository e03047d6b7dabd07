package quarterlight.ui.photos.film;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.lang.reflect.InvocationTargetException;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.atomic.AtomicReference;
import javax.swing.SwingUtilities;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import quarterlight.photo.PictureUnreadable;
import quarterlight.photo.film.FilmFrame;
import quarterlight.photo.film.FilmFrames;
import quarterlight.ui.kit.visit.Selection;
import quarterlight.ui.photos.list.PhotoItem;
import quarterlight.visit.photo.MediaFacts;
import quarterlight.visit.photo.MediaHeader;
import quarterlight.visit.photo.MediaKind;
import quarterlight.visit.photo.Photo;
import quarterlight.visit.photo.PhotoFile;
import quarterlight.visit.photo.PhotoId;
import quarterlight.visit.photo.Sha256;

/** Stepping a film of ten frames a second and eight seconds, its frames made up. */
@Timeout(60)
class FilmDeskTest {
    private static final double FRAME_S = 0.1;
    private static final int FRAMES = 80;

    @TempDir
    Path folder;

    private final Selection selection = new Selection();
    private final AtomicInteger decoded = new AtomicInteger();
    private final AtomicReference<Optional<BufferedImage>> shown = new AtomicReference<>(Optional.empty());
    private Optional<FilmDesk> made = Optional.empty();

    private FilmFrame made(double seconds) {
        decoded.incrementAndGet();
        int number = (int) Math.min(FRAMES - 1, Math.floor(seconds / FRAME_S + 1e-6));
        return new FilmFrame(
                new BufferedImage(4, 3, BufferedImage.TYPE_INT_RGB), number * FRAME_S, FRAME_S, number == FRAMES - 1);
    }

    private FilmDesk desk(FrameSource source) {
        made = Optional.of(new FilmDesk(selection, source, shown::set));
        return made.get();
    }

    @AfterEach
    void stop() {
        made.ifPresent(FilmDesk::stop);
    }

    private static Optional<PhotoItem> film(long id) {
        PhotoFile file = new PhotoFile(
                "VID_" + id + ".MP4",
                "originals/" + id + ".MP4",
                new Sha256(String.format("%064x", id)),
                1,
                MediaKind.FILM,
                "MP4",
                MediaHeader.NONE
                        .withSize(OptionalInt.of(4), OptionalInt.of(3), 1)
                        .withSeconds(OptionalDouble.of(FRAMES * FRAME_S)),
                OptionalDouble.empty(),
                List.of(),
                MediaFacts.NONE);
        return Optional.of(new PhotoItem(
                new Photo(new PhotoId(id), file, Optional.empty()),
                Optional.empty(),
                Optional.empty(),
                OptionalInt.empty(),
                List.of(),
                List.of(),
                false));
    }

    private static void onEvents(Runnable work) throws InterruptedException, InvocationTargetException {
        SwingUtilities.invokeAndWait(work);
    }

    private static void until(java.util.function.BooleanSupplier holds) throws Exception {
        long end = System.nanoTime() + Duration.ofSeconds(20).toNanos();
        while (!holds.getAsBoolean() && System.nanoTime() < end) {
            onEvents(() -> {});
            Thread.sleep(5);
        }
        assertThat(holds.getAsBoolean()).isTrue();
    }

    private boolean isAt(FilmDesk desk, double seconds) {
        return desk.frame()
                .map(frame -> Math.abs(frame.seconds() - seconds) < 1e-9)
                .orElse(false);
    }

    @Test
    void stepsThatComeWhileAFrameIsDecodedAreAllTaken() throws Exception {
        CountDownLatch first = new CountDownLatch(1);
        FilmDesk desk = desk((path, seconds) -> {
            try {
                first.await();
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
            }
            return made(seconds);
        });
        onEvents(() -> {
            desk.show(film(1));
            desk.step(1);
            for (int i = 0; i < 12; i++) {
                desk.step(1);
            }
            desk.step(-2);
        });
        first.countDown();
        until(() -> isAt(desk, 10 * FRAME_S));
        assertThat(selection.moment().orElseThrow()).isEqualTo(10 * FRAME_S);
        assertThat(shown.get()).isPresent();
    }

    @Test
    void secondsAndJumpsAreHeldWithinTheFilmAndOvertakenOnesAreNotDecoded() throws Exception {
        FilmDesk desk = desk((path, seconds) -> made(seconds));
        onEvents(() -> {
            desk.show(film(1));
            for (int i = 0; i <= 60; i++) {
                desk.go(i * FRAME_S);
            }
        });
        until(() -> isAt(desk, 6.0));
        assertThat(decoded.get()).as("of 61 places of a slider").isLessThan(5);
        onEvents(() -> {
            desk.skip(1);
            desk.skip(1);
            desk.skip(1);
        });
        until(() -> isAt(desk, (FRAMES - 1) * FRAME_S));
        onEvents(() -> desk.skip(-100));
        until(() -> isAt(desk, 0));
    }

    @Test
    void anAnswerForAFilmThatIsNoLongerInHandIsDropped() throws Exception {
        CountDownLatch late = new CountDownLatch(1);
        FilmDesk desk = desk((path, seconds) -> {
            try {
                late.await();
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
            }
            return made(seconds);
        });
        onEvents(() -> {
            desk.show(film(1));
            desk.go(3);
            desk.show(film(2));
        });
        late.countDown();
        until(() -> decoded.get() == 1);
        onEvents(() -> {});
        assertThat(desk.frame()).isEmpty();
        assertThat(selection.moment()).isEmpty();
        assertThat(shown.get()).isEmpty();
    }

    @Test
    void aFilmThatCannotBeShownSaysWhyAndIsPinnedAsAWhole() throws Exception {
        FilmDesk desk = desk(this::unreadable);
        onEvents(() -> {
            desk.show(film(1));
            desk.step(1);
        });
        until(() -> desk.problem().isPresent());
        assertThat(desk.problem().get()).isNotBlank().doesNotContain("Exception");
        assertThat(selection.moment()).isEmpty();
        onEvents(() -> desk.show(Optional.empty()));
        assertThat(desk.problem()).isEmpty();
    }

    /** There is no file in the folder, so the true source refuses, with or without the native part. */
    private FilmFrame unreadable(PhotoFile film, double seconds) throws PictureUnreadable {
        return FilmFrames.at(folder.resolve(film.stored()), seconds);
    }

    private static Optional<PhotoItem> paper(int pages) {
        PhotoFile film = film(7).orElseThrow().photo().file();
        PhotoFile file = new PhotoFile(
                "title.pdf",
                "originals/title.pdf",
                film.sha256(),
                1,
                MediaKind.PAPER,
                "PDF",
                MediaHeader.NONE.withSize(OptionalInt.of(3), OptionalInt.of(4), 1),
                OptionalDouble.empty(),
                List.of(),
                MediaFacts.ofPages(pages));
        return Optional.of(new PhotoItem(
                new Photo(new PhotoId(7), file, Optional.empty()),
                Optional.empty(),
                Optional.empty(),
                OptionalInt.empty(),
                List.of(),
                List.of(),
                false));
    }

    /** As {@link quarterlight.ui.kit.visit.PhotoImages#frame} gives a page. */
    private static FilmFrame page(double number, int pages) {
        int page = (int) Math.max(1, Math.min(pages, Math.floor(number)));
        return new FilmFrame(new BufferedImage(3, 4, BufferedImage.TYPE_INT_RGB), page, 1, page == pages);
    }

    @Test
    void aPaperIsSteppedByPagesFromTheFirstToTheLast() throws Exception {
        FilmDesk desk = desk((file, seconds) -> page(seconds, 3));
        onEvents(() -> {
            desk.show(paper(3));
            desk.step(1);
        });
        until(() -> isAt(desk, 1));
        assertThat(selection.moment()).hasValue(1);
        for (int expected : List.of(2, 3, 3)) {
            onEvents(() -> desk.step(1));
            until(() -> isAt(desk, expected));
        }
        for (int expected : List.of(2, 1, 1)) {
            onEvents(() -> desk.step(-1));
            until(() -> isAt(desk, expected));
        }
        onEvents(() -> desk.go(99));
        until(() -> isAt(desk, 3));
        assertThat(desk.length()).hasValue(3);
    }
}
