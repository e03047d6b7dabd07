package quarterlight.ui.photos.film;

import java.awt.image.BufferedImage;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Consumer;
import javax.swing.SwingUtilities;
import quarterlight.photo.PictureUnreadable;
import quarterlight.photo.film.FilmFrame;
import quarterlight.task.LatestWork;
import quarterlight.ui.kit.Listeners;
import quarterlight.ui.kit.visit.Selection;
import quarterlight.ui.photos.list.PhotoItem;
import quarterlight.visit.photo.PhotoFile;
import quarterlight.visit.photo.PhotoId;

/**
 * The moment of the film in hand, or the page of the paper: stepped by frame and by second, decoded in the background. One frame is kept at a time; steps that come
 * while one is decoded are put together. Event thread only.
 */
public final class FilmDesk {
    /** What is wanted: the frame some steps away from the one at a moment. */
    private record Question(PhotoId film, PhotoFile file, double seconds, int steps) {}

    private record Answer(Question question, Optional<FilmFrame> frame, String problem) {}

    private final Selection selection;
    private final FrameSource source;
    private final Consumer<Optional<BufferedImage>> shown;
    private final LatestWork<Question, Answer> work;
    private final Listeners changed = new Listeners();
    private Optional<PhotoItem> film = Optional.empty();
    private Optional<FilmFrame> frame = Optional.empty();
    private Optional<String> problem = Optional.empty();
    private Optional<Question> asked = Optional.empty();
    private OptionalDouble target = OptionalDouble.empty();
    private int pending;

    /**
     * @param selection is told which moment is shown
     * @param shown takes the frame to show; empty for the picture that stands for the film
     */
    public FilmDesk(Selection selection, FrameSource source, Consumer<Optional<BufferedImage>> shown) {
        this.selection = Objects.requireNonNull(selection, "selection");
        this.source = Objects.requireNonNull(source, "source");
        this.shown = Objects.requireNonNull(shown, "shown");
        this.work = new LatestWork<>(
                "quarterlight-film",
                SwingUtilities::invokeLater,
                (question, course) -> answer(question),
                this::arrived,
                failure -> {
                    throw new IllegalStateException("a frame could not be read", failure);
                });
    }

    /** Takes another photo in hand; a film is shown as a whole until it is stepped. */
    public void show(Optional<PhotoItem> item) {
        Optional<PhotoItem> next = item.filter(PhotoItem::hasPlaces);
        boolean other = !next.map(PhotoItem::id).equals(film.map(PhotoItem::id));
        film = next;
        if (other) {
            problem = Optional.empty();
            forget();
        }
        changed.tell();
    }

    private void forget() {
        frame = Optional.empty();
        asked = Optional.empty();
        target = OptionalDouble.empty();
        pending = 0;
    }

    /** Shows the film as a whole again: what is pinned then concerns all of it. */
    public void whole() {
        forget();
        selection.moment(OptionalDouble.empty());
        shown.accept(Optional.empty());
        changed.tell();
    }

    /** Goes by frames; from the whole film to its first frame. */
    public void step(int frames) {
        if (film.isPresent()) {
            if (frame.isEmpty() && asked.isEmpty()) {
                go(0);
            } else {
                pending += frames;
                ask();
            }
        }
    }

    /** Goes by seconds. */
    public void skip(double seconds) {
        if (film.isPresent()) {
            double here = asked.map(Question::seconds)
                    .or(() -> frame.map(FilmFrame::seconds))
                    .orElse(-seconds);
            go(target.orElse(here) + seconds);
        }
    }

    /** Goes to a moment, in seconds from the beginning; held within the film. */
    public void go(double seconds) {
        if (film.isPresent()) {
            target = OptionalDouble.of(Math.max(0, Math.min(seconds, length().orElse(Double.MAX_VALUE))));
            pending = 0;
            ask();
        }
    }

    private void ask() {
        if (asked.isPresent() || film.isEmpty()) {
            return;
        }
        double seconds = target.orElseGet(() -> frame.map(FilmFrame::seconds).orElse(0.0));
        PhotoFile file = film.get().photo().file();
        Question question = new Question(film.get().id(), file, seconds, pending);
        asked = Optional.of(question);
        target = OptionalDouble.empty();
        pending = 0;
        work.request(question);
        changed.tell();
    }

    /** On the thread of the films. */
    private Answer answer(Question question) {
        try {
            FilmFrame found = source.at(question.file(), question.seconds());
            for (int i = 0; i < Math.abs(question.steps()); i++) {
                OptionalDouble next = question.steps() > 0 ? found.next() : found.previous();
                if (next.isEmpty()) {
                    break;
                }
                found = source.at(question.file(), next.getAsDouble());
            }
            return new Answer(question, Optional.of(found), "");
        } catch (PictureUnreadable e) {
            return new Answer(question, Optional.empty(), e.reason());
        }
    }

    private void arrived(Answer answer) {
        if (!asked.equals(Optional.of(answer.question()))) {
            return;
        }
        asked = Optional.empty();
        if (answer.frame().isPresent()) {
            frame = answer.frame();
            problem = Optional.empty();
            selection.moment(OptionalDouble.of(frame.get().seconds()));
            shown.accept(frame.map(FilmFrame::picture));
        } else {
            problem = Optional.of(answer.problem());
        }
        if (target.isPresent() || pending != 0) {
            ask();
        }
        changed.tell();
    }

    public Optional<PhotoItem> film() {
        return film;
    }

    /** The frame shown; empty for the film as a whole. */
    public Optional<FilmFrame> frame() {
        return frame;
    }

    /** Why the moment cannot be shown. */
    public Optional<String> problem() {
        return problem;
    }

    /** Length of the film in seconds, of a paper in pages. */
    public OptionalDouble length() {
        return film.map(item -> item.photo().file().extent()).orElse(OptionalDouble.empty());
    }

    /** Told when another film or moment is shown. */
    public Listeners.Registration onChanged(Runnable listener) {
        return changed.add(listener);
    }

    public void stop() {
        work.stop();
    }
}
