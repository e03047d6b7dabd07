package quarterlight.diagram;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import quarterlight.car.View;
import quarterlight.car.ZoneId;
import quarterlight.language.Sentences;

/**
 * One view of a body diagram.
 *
 * @param title name for readers
 * @param widthMm width of the view; points run from 0 to it, left to right
 * @param heightMm height of the view; points run from 0 to it, downward
 * @param shapes every shape in drawing order, later on top
 */
public record ViewDrawing(View view, String title, double widthMm, double heightMm, List<DiagramShape> shapes) {
    /** Its name for readers in the language in hand. */
    @Override
    public String title() {
        return Sentences.sayOr("words.viewtitle." + view.word(), title);
    }

    public ViewDrawing {
        Objects.requireNonNull(view, "view");
        Objects.requireNonNull(title, "title");
        if (!(widthMm > 0 && heightMm > 0)) {
            throw new IllegalArgumentException("the " + view.word() + " view needs a width and a height");
        }
        shapes = List.copyOf(shapes);
    }

    /** The zone outlines in drawing order. */
    public List<DiagramShape> zones() {
        return shapes.stream().filter(shape -> shape.zone().isPresent()).toList();
    }

    /** The outlines of one zone in drawing order; none if the view does not show it. */
    public List<DiagramShape> outlinesOf(ZoneId zone) {
        Optional<ZoneId> wanted = Optional.of(zone);
        return shapes.stream().filter(shape -> shape.zone().equals(wanted)).toList();
    }
}
