package quarterlight.diagram;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import quarterlight.car.View;
import quarterlight.car.ZoneId;
import quarterlight.car.body.Body;
import quarterlight.diagram.file.DiagramFile;

/**
 * The body diagram of one body: its views with the zones that this construction and engine place have. Immutable.
 * {@link DiagramFile} reads one; {@link ZoneHits} says which zone is at a point.
 */
public final class BodyDiagram {
    private final Body body;
    private final StyleSize size;
    private final List<ViewDrawing> views;
    private final Set<ZoneId> zones;
    private final ZonePlaces places;

    public BodyDiagram(Body body, StyleSize size, List<ViewDrawing> views) {
        this.body = Objects.requireNonNull(body, "body");
        this.size = Objects.requireNonNull(size, "size");
        this.views = List.copyOf(views);
        Set<ZoneId> drawn = new LinkedHashSet<>();
        for (ViewDrawing view : views) {
            view.zones().forEach(shape -> drawn.add(shape.zone().orElseThrow()));
        }
        zones = drawn;
        places = new ZonePlaces(this);
    }

    public Body body() {
        return body;
    }

    /** The dimensions it is drawn with. */
    public StyleSize size() {
        return size;
    }

    /** The views in the order of {@link View}. */
    public List<ViewDrawing> views() {
        return views;
    }

    public Optional<ViewDrawing> view(View view) {
        return views.stream().filter(drawing -> drawing.view() == view).findFirst();
    }

    /** Where the middle of each zone is; worked out when it is first asked for. */
    ZonePlaces places() {
        return places;
    }

    /** Every zone drawn somewhere, in drawing order. */
    public Set<ZoneId> zones() {
        return new LinkedHashSet<>(zones);
    }

    /** The same drawing without the outlines of some zones, for instance of strips that lie across panels. */
    public BodyDiagram without(Set<ZoneId> unwanted) {
        return new BodyDiagram(
                body,
                size,
                views.stream()
                        .map(view -> new ViewDrawing(
                                view.view(),
                                view.title(),
                                view.widthMm(),
                                view.heightMm(),
                                view.shapes().stream()
                                        .filter(shape -> shape.zone()
                                                .filter(unwanted::contains)
                                                .isEmpty())
                                        .toList()))
                        .toList());
    }

    /** The views that show a zone, in the order of {@link View}. */
    public List<View> viewsOf(ZoneId zone) {
        List<View> found = new ArrayList<>();
        for (ViewDrawing view : views) {
            if (!view.outlinesOf(zone).isEmpty()) {
                found.add(view.view());
            }
        }
        return found;
    }
}
