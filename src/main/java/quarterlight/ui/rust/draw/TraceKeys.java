package quarterlight.ui.rust.draw;

import java.awt.event.ActionEvent;
import java.awt.geom.Point2D;
import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.AbstractAction;
import javax.swing.JComponent;
import javax.swing.KeyStroke;
import quarterlight.ui.kit.view.PhotoCanvas;
import quarterlight.visit.annotation.PixelPoint;
import quarterlight.visit.photo.Photo;
import quarterlight.visit.photo.PhotoFile;

/** Draws by keys: arrows move the cross-hair, Enter sets a point or takes hold of one, Backspace takes the last back. Event thread only. */
public final class TraceKeys {
    private static final double STEP_PX = 8;
    private static final double LEAP_PX = 48;

    private final PhotoCanvas canvas;
    private final RustModel model;
    private final ShareModel share;
    private final TraceDesk desk;
    private final TracePen pen;

    /** @param deleteKept removes the kept outline that is chosen, when no corner is meant */
    public TraceKeys(PhotoCanvas canvas, RustModel model, ShareModel share, TraceDesk desk, Runnable deleteKept) {
        this.canvas = canvas;
        this.model = model;
        this.share = share;
        this.desk = desk;
        this.pen = desk.pen();
        arrows("", STEP_PX);
        arrows("shift ", 1);
        arrows("ctrl ", LEAP_PX);
        key("ENTER", () -> enter(true));
        key("shift ENTER", () -> enter(false));
        key("BACK_SPACE", pen::back);
        key("INSERT", () -> at(pen::take));
        key("DELETE", () -> {
            if (model.draft().isEmpty()) {
                deleteKept.run();
            } else {
                at(pen::remove);
            }
        });
        key("typed c", pen::close);
        key("typed n", () -> corner(1));
        key("typed N", () -> corner(-1));
        key("ESCAPE", this::escape);
    }

    private void key(String stroke, Runnable work) {
        canvas.getInputMap(JComponent.WHEN_FOCUSED).put(KeyStroke.getKeyStroke(stroke), stroke);
        canvas.getActionMap().put(stroke, new AbstractAction() {
            @Override
            public void actionPerformed(ActionEvent e) {
                work.run();
            }
        });
    }

    private void arrows(String with, double px) {
        key(with + "LEFT", () -> move(-px, 0));
        key(with + "RIGHT", () -> move(px, 0));
        key(with + "UP", () -> move(0, -px));
        key(with + "DOWN", () -> move(0, px));
    }

    private Optional<PhotoFile> file() {
        return canvas.photo().map(Photo::file);
    }

    /** Where the cross-hair is; the middle of what is seen until it was moved. */
    private PixelPoint cross() {
        return model.state().cross().orElseGet(() -> canvas.photoPoint(
                        new Point2D.Double(canvas.getWidth() / 2.0, canvas.getHeight() / 2.0))
                .map(p -> new PixelPoint(Math.rint(p.getX()), Math.rint(p.getY())))
                .orElse(new PixelPoint(0, 0)));
    }

    private void at(Consumer<PixelPoint> work) {
        work.accept(cross());
    }

    private void move(double dx, double dy) {
        if (file().isEmpty()) {
            return;
        }
        desk.forgetPointer();
        double zoom = canvas.zoom().orElse(1.0);
        PixelPoint old = cross();
        PixelPoint next = TracePen.within(new PixelPoint(old.x() + dx / zoom, old.y() + dy / zoom), file().get());
        model.cross(next);
        pen.move(next, file().get());
        desk.drag(next);
        canvas.bringIntoView(new Point2D.Double(next.x(), next.y()));
    }

    /** @param snapping false with Shift: a point is set freely, the brush brings back */
    private void enter(boolean snapping) {
        if (file().isEmpty()) {
            return;
        }
        PixelPoint at = cross();
        model.cross(at);
        switch (model.state().tool()) {
            case OUTLINE, SCALE -> pen.set(at, file().get(), snapping);
            case FREEHAND -> desk.pen(at);
            case EDIT -> {
                if (model.state().held().isPresent()) {
                    model.hold(Optional.empty());
                } else {
                    pen.take(at);
                }
            }
            case BRUSH -> share.brush(at, desk.brushPx(), snapping);
            case LOOK -> {}
        }
    }

    private void corner(int by) {
        pen.next(model.state().cross(), by).ifPresent(p -> {
            model.cross(p);
            canvas.bringIntoView(new Point2D.Double(p.x(), p.y()));
        });
    }

    private void escape() {
        desk.forgetStroke();
        pen.leave();
    }
}
