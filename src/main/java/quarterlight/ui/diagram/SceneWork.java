package quarterlight.ui.diagram;

import java.awt.image.BufferedImage;
import java.util.Optional;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Consumer;
import javax.swing.SwingUtilities;
import quarterlight.car.View;
import quarterlight.diagram.ink.DiagramInk;
import quarterlight.diagram.ink.DiagramPainter;
import quarterlight.diagram.ink.DiagramScene;
import quarterlight.diagram.ink.InkPalette;
import quarterlight.diagram.ink.SheetLayout;
import quarterlight.ui.kit.DeskParts;
import quarterlight.ui.kit.OpenVisit;

/** Lays out the scene and paints it into a picture in the background; wishes that were overtaken are left out. */
final class SceneWork {
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

    private final DeskParts parts;
    private final Consumer<Painted> painted;
    private final AtomicReference<Optional<Wish>> wanted = new AtomicReference<>(Optional.empty());
    private final ExecutorService worker = Executors.newSingleThreadExecutor(work -> {
        Thread thread = new Thread(work, "quarterlight-diagram");
        thread.setDaemon(true);
        return thread;
    });

    /** @param painted told on the event thread */
    SceneWork(DeskParts parts, Consumer<Painted> painted) {
        this.parts = parts;
        this.painted = painted;
    }

    void request(Wish wish) {
        if (wanted.getAndSet(Optional.of(wish)).isEmpty()) {
            worker.execute(() -> wanted.getAndSet(Optional.empty()).ifPresent(this::work));
        }
    }

    private void work(Wish wish) {
        try {
            DiagramScene scene = scene(wish);
            DiagramPainter painter = new DiagramPainter(scene);
            BufferedImage picture = painter.picture(
                    Math.max(1, (int) Math.ceil(wish.width() * wish.scale())),
                    Math.max(1, (int) Math.ceil(wish.height() * wish.scale())),
                    wish.scale(),
                    wish.scale());
            SwingUtilities.invokeLater(() -> painted.accept(new Painted(scene, painter, picture)));
        } catch (RuntimeException e) {
            SwingUtilities.invokeLater(() -> parts.problems().failed(e));
        }
    }

    private DiagramScene scene(Wish wish) {
        boolean legend = wish.ink().legend().isPresent();
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
        worker.shutdownNow();
    }
}
