package quarterlight.ui.photos;

import java.awt.AWTException;
import java.awt.Point;
import java.awt.Rectangle;
import java.awt.Robot;
import java.awt.Toolkit;
import java.awt.image.BufferedImage;
import java.util.Optional;
import java.util.OptionalLong;
import javax.swing.RepaintManager;
import quarterlight.ui.diagram.DiagramPanel;
import quarterlight.ui.kit.look.Look;
import quarterlight.ui.photos.sheet.ContactSheet;
import quarterlight.visit.photo.PhotoId;

/**
 * Tells when the first frame stands on the screen that shows a fresh pin, both on the diagram and by the dot in the photo's cell, and when
 * the last frame was painted. After each frame the display is asked to finish and the cell is read back from it. Event thread only.
 */
final class PinFrames extends RepaintManager {
    private static final int DOT = 7;
    private static final int CELL = 135;
    private static final int WITHIN_X = 12;
    private static final int WITHIN_Y = 24;

    private final Robot robot;
    private final ContactSheet sheet;
    private final DiagramPanel diagram;
    private Optional<PhotoId> awaited = Optional.empty();
    private Point cell = new Point();
    private OptionalLong shown = OptionalLong.empty();
    private long processorBefore;
    private long processor;
    private long last;

    PinFrames(ContactSheet sheet, DiagramPanel diagram) throws AWTException {
        this.robot = new Robot();
        this.sheet = sheet;
        this.diagram = diagram;
    }

    /** Begins to wait for the pin of the photo in hand. */
    void await(PhotoId photo) {
        cell = new Point(sheet.anchorX() - WITHIN_X, sheet.anchorY() - WITHIN_Y);
        awaited = Optional.of(photo);
        shown = OptionalLong.empty();
        processorBefore = ManyPhotosBench.threadNanos();
        last = System.nanoTime();
    }

    /** Processor time of the event thread from {@link #await} to the first frame with the pin, ns. */
    long processor() {
        return processor;
    }

    /** When the pin was first seen, by {@link System#nanoTime}; empty if it was not. */
    OptionalLong shown() {
        return shown;
    }

    /** When the last frame was painted. */
    long last() {
        return last;
    }

    @Override
    public void paintDirtyRegions() {
        super.paintDirtyRegions();
        if (awaited.isPresent()) {
            if (shown.isEmpty()) {
                processor = ManyPhotosBench.threadNanos() - processorBefore;
                Toolkit.getDefaultToolkit().sync();
                if (isOnDiagram(awaited.get()) && isInCell()) {
                    shown = OptionalLong.of(System.nanoTime());
                }
            }
            last = System.nanoTime();
        }
    }

    private boolean isOnDiagram(PhotoId photo) {
        return diagram.pins().entries().stream().anyMatch(entry -> entry.photo().equals(photo));
    }

    private boolean isInCell() {
        Point at = sheet.getLocationOnScreen();
        BufferedImage strip = robot.createScreenCapture(new Rectangle(at.x + cell.x, at.y + cell.y, DOT, CELL));
        int accent = Look.palette().accent().getRGB();
        for (int y = 0; y < strip.getHeight(); y++) {
            for (int x = 0; x < strip.getWidth(); x++) {
                if ((strip.getRGB(x, y) | 0xFF000000) == accent) {
                    return true;
                }
            }
        }
        return false;
    }
}
