package quarterlight.ui.compare;

import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.JPanel;
import javax.swing.SwingUtilities;
import quarterlight.car.ZoneId;
import quarterlight.diagram.ink.DiagramInk;
import quarterlight.diagram.ink.Highlight;
import quarterlight.diagram.ink.InkPalette;
import quarterlight.diagram.scene.DiagramPainter;
import quarterlight.diagram.scene.DiagramScene;
import quarterlight.diagram.scene.SheetLayout;
import quarterlight.page.FindingsInk;
import quarterlight.page.ThicknessRamp;
import quarterlight.task.LatestWork;
import quarterlight.ui.kit.UiContext;
import quarterlight.ui.kit.look.Look;

/** The diagram of one of two cars, on the scale that both share. Event thread only; the scene is laid out in the background. */
final class CarSheet extends JPanel {
    private final transient UiContext parts;
    private final transient LoadedCars.Car car;
    private final transient ThicknessRamp ramp;
    private final transient LatestWork<Wish, Laid> work;
    private transient Optional<DiagramPainter> painter = Optional.empty();
    private transient Optional<DiagramScene> scene = Optional.empty();
    private transient Highlight highlight = Highlight.NONE;
    private Dimension laid = new Dimension();

    private record Wish(Dimension size, InkPalette palette) {}

    private record Laid(Wish wish, DiagramScene scene) {}

    /** @param hovered told which zone the pointer is over */
    CarSheet(UiContext parts, LoadedCars.Car car, ThicknessRamp ramp, Consumer<Optional<ZoneId>> hovered) {
        this.parts = parts;
        this.car = car;
        this.ramp = ramp;
        this.work = new LatestWork<>(
                "quarterlight-two-cars",
                SwingUtilities::invokeLater,
                (wish, course) -> new Laid(wish, lay(wish)),
                this::laid,
                parts.problems()::failed);
        setPreferredSize(new Dimension(520, 400));
        Look.named(this, parts.texts().get("compare.diagram", car.name()));
        addMouseMotionListener(new java.awt.event.MouseMotionAdapter() {
            @Override
            public void mouseMoved(java.awt.event.MouseEvent e) {
                hovered.accept(scene.flatMap(s -> s.hit(e.getX(), e.getY())).flatMap(DiagramScene.Hit::zone));
            }
        });
    }

    void show(Highlight marked) {
        painter.ifPresent(p -> p.dirty(highlight, marked).forEach(this::repaint));
        highlight = marked;
    }

    @Override
    protected void paintComponent(Graphics g) {
        g.setColor(Look.palette().sheet());
        g.fillRect(0, 0, getWidth(), getHeight());
        if (!laid.equals(getSize())) {
            laid = getSize();
            work.request(wish());
        }
        painter.ifPresent(p -> p.paint((Graphics2D) g, highlight));
    }

    private DiagramScene lay(Wish wish) {
        DiagramInk ink = FindingsInk.of(car.findings(), ramp, List.of());
        return new DiagramScene(
                car.diagram(),
                car.places(),
                SheetLayout.fit(car.diagram(), wish.size().width, wish.size().height, ink.legend(), parts.measure()),
                ink,
                wish.palette(),
                parts.ramp(),
                parts.measure());
    }

    private void laid(Laid made) {
        if (made.wish().equals(wish())) {
            scene = Optional.of(made.scene());
            painter = Optional.of(new DiagramPainter(made.scene()));
            repaint(new Rectangle(getSize()));
        }
    }

    private Wish wish() {
        return new Wish(getSize(), Look.palette().drawing());
    }

    void stop() {
        work.stop();
    }

    @Override
    public void updateUI() {
        super.updateUI();
        laid = new Dimension();
    }
}
