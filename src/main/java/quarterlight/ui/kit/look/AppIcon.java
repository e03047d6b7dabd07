package quarterlight.ui.kit.look;

import java.awt.BasicStroke;
import java.awt.Graphics2D;
import java.awt.Image;
import java.awt.RenderingHints;
import java.awt.Window;
import java.awt.geom.Path2D;
import java.awt.geom.RoundRectangle2D;
import java.awt.image.BufferedImage;
import java.util.List;
import java.util.stream.Stream;
import javax.swing.SwingUtilities;
import quarterlight.task.Threads;

/** The sign of the program, drawn as the diagrams are: a roof line on paper, and below it the small side window of which it has its name. */
public final class AppIcon {
    private static final double UNITS = 32;

    private AppIcon() {}

    /** Puts it on a window, soon: it is drawn on a thread of its own, so that no window waits for it. */
    public static void on(Window window) {
        Threads.startDaemon("quarterlight-sign", () -> {
            List<Image> images = images();
            SwingUtilities.invokeLater(() -> window.setIconImages(images));
        });
    }

    /** In the sizes that systems ask for. */
    static List<Image> images() {
        return Stream.of(16, 24, 32, 48, 64, 128)
                .map(size -> (Image) drawn(size))
                .toList();
    }

    static BufferedImage drawn(int size) {
        BufferedImage image = new BufferedImage(size, size, BufferedImage.TYPE_INT_ARGB);
        Graphics2D g = image.createGraphics();
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        g.scale(size / UNITS, size / UNITS);
        Palette p = Palette.LIGHT;
        g.setColor(p.paper());
        g.fill(new RoundRectangle2D.Double(0, 0, UNITS, UNITS, 7, 7));
        Path2D glass = new Path2D.Double();
        glass.moveTo(18.5, 10.5);
        glass.curveTo(22, 10.8, 24.5, 14, 26.5, 19);
        glass.lineTo(18.5, 19);
        glass.closePath();
        g.setColor(p.accent());
        g.fill(glass);
        g.setColor(p.ink());
        g.setStroke(new BasicStroke(2.2f, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
        Path2D roof = new Path2D.Double();
        roof.moveTo(3.5, 19.5);
        roof.curveTo(7, 9.5, 11, 7, 16, 7);
        roof.curveTo(23, 7, 26, 11, 29, 19.5);
        g.draw(roof);
        g.setStroke(new BasicStroke(1.5f, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
        Path2D body = new Path2D.Double();
        body.moveTo(3.5, 19.5);
        body.lineTo(29, 19.5);
        body.moveTo(15.5, 7.5);
        body.lineTo(15.5, 25);
        body.moveTo(3.5, 25);
        body.lineTo(29, 25);
        g.draw(body);
        g.dispose();
        return image;
    }
}
