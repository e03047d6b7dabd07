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
import quarterlight.diagram.ink.DiagramPainter;
import quarterlight.diagram.ink.DiagramScene;
import quarterlight.diagram.ink.Highlight;
import quarterlight.diagram.ink.InkPalette;
import quarterlight.diagram.ink.SheetLayout;
import quarterlight.page.FindingsInk;
import quarterlight.page.ThicknessRamp;
import quarterlight.ui.kit.DeskParts;
import quarterlight.ui.kit.Look;

/** The diagram of one of two cars, on the scale that both share. Event thread only; the scene is laid out in the background. */
final class CarSheet extends JPanel {
    private final transient DeskParts parts;
    private final transient Pair.Car car;
    private final transient ThicknessRamp ramp;
    private transient Optional<DiagramPainter> painter = Optional.empty();
    private transient Optional<DiagramScene> scene = Optional.empty();
    private transient Highlight highlight = Highlight.NONE;
    private Dimension laid = new Dimension();

    /** @param hovered told which zone the pointer is over */
    CarSheet(DeskParts parts, Pair.Car car, ThicknessRamp ramp, Consumer<Optional<ZoneId>> hovered) {
        this.parts = parts;
        this.car = car;
        this.ramp = ramp;
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
            lay(laid);
        }
        painter.ifPresent(p -> p.paint((Graphics2D) g, highlight));
    }

    private void lay(Dimension size) {
        InkPalette palette = Look.palette().dark() ? InkPalette.DARK : InkPalette.LIGHT;
        Thread thread = new Thread(
                () -> {
                    DiagramScene made = new DiagramScene(
                            car.diagram(),
                            car.places(),
                            SheetLayout.fit(car.diagram(), size.width, size.height, true),
                            FindingsInk.of(car.findings(), ramp, List.of()),
                            palette,
                            parts.ramp(),
                            parts.measure());
                    SwingUtilities.invokeLater(() -> laid(made, size));
                },
                "quarterlight-two-cars");
        thread.setDaemon(true);
        thread.start();
    }

    private void laid(DiagramScene made, Dimension size) {
        if (size.equals(getSize())) {
            scene = Optional.of(made);
            painter = Optional.of(new DiagramPainter(made));
            repaint(new Rectangle(size));
        }
    }

    @Override
    public void updateUI() {
        super.updateUI();
        laid = new Dimension();
    }
}
