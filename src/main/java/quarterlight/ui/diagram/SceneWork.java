package quarterlight.ui.diagram;

import java.awt.image.BufferedImage;
import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.SwingUtilities;
import quarterlight.car.View;
import quarterlight.diagram.ink.DiagramInk;
import quarterlight.diagram.ink.InkPalette;
import quarterlight.diagram.scene.DiagramPainter;
import quarterlight.diagram.scene.DiagramScene;
import quarterlight.diagram.scene.SheetLayout;
import quarterlight.task.LatestWork;
import quarterlight.ui.kit.UiContext;
import quarterlight.ui.kit.visit.OpenVisit;

/** Lays out the scene and paints it into a picture in the background; wishes that were overtaken are left out. */
final class SceneWork {
    /** A legend that would take more than a third of a single view is left out; the whole drawing has it. */
    private static final double LEGEND_SHARE = 3;

    /**
     * What to draw.
     *
     * @param width of the panel, px before scaling
     * @param scale device pixels per px
     * @param view the one view to show large; empty for all
     */
    record Wish(
            OpenVisit.Drawing drawing,
            DiagramInk ink,
            InkPalette palette,
            int width,
            int height,
            double scale,
            Optional<View> view) {}

    /** A scene and its picture in device pixels. */
    record Painted(DiagramScene scene, DiagramPainter painter, BufferedImage picture) {}

    private final UiContext parts;
    private final LatestWork<Wish, Painted> work;

    /** @param painted told on the event thread */
    SceneWork(UiContext parts, Consumer<Painted> painted) {
        this.parts = parts;
        this.work = new LatestWork<>(
                "quarterlight-diagram",
                SwingUtilities::invokeLater,
                (wish, course) -> painted(wish),
                painted,
                parts.problems()::failed);
    }

    void request(Wish wish) {
        work.request(wish);
    }

    private Painted painted(Wish wish) {
        DiagramScene scene = scene(wish);
        DiagramPainter painter = new DiagramPainter(scene);
        BufferedImage picture = painter.picture(
                Math.max(1, (int) Math.ceil(wish.width() * wish.scale())),
                Math.max(1, (int) Math.ceil(wish.height() * wish.scale())),
                wish.scale(),
                wish.scale());
        return new Painted(scene, painter, picture);
    }

    private DiagramScene scene(Wish wish) {
        double band =
                SheetLayout.steadyLegendHeight(wish.ink().legend(), OneView.legendWidth(wish.width()), parts.measure());
        double legend = wish.view().isPresent() && wish.height() < LEGEND_SHARE * band ? 0 : band;
        SheetLayout layout = wish.view()
                .flatMap(view -> OneView.fit(wish.drawing().diagram(), view, wish.width(), wish.height(), legend))
                .orElseGet(() -> SheetLayout.fit(wish.drawing().diagram(), wish.width(), wish.height(), legend));
        return new DiagramScene(
                wish.drawing().diagram(),
                wish.drawing().places(),
                layout,
                wish.ink(),
                wish.palette(),
                parts.ramp(),
                parts.measure());
    }

    void stop() {
        work.stop();
    }
}
