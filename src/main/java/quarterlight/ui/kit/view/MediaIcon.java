package quarterlight.ui.kit.view;

import java.awt.BasicStroke;
import java.awt.Font;
import java.awt.FontMetrics;
import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.awt.RenderingHints;
import java.awt.geom.Line2D;
import java.util.Locale;
import javax.swing.UIManager;
import quarterlight.ui.kit.Texts;
import quarterlight.ui.kit.look.Palette;
import quarterlight.visit.photo.MediaKind;
import quarterlight.visit.photo.PhotoFile;

/** What stands in place of a picture: a wave for a sound, lines for words and sidecars, with its length or kind below. Pure drawing. */
public final class MediaIcon {
    private static final double[] WAVE = {.18, .35, .7, .45, .95, .6, .8, .3, .55, .9, .4, .65, .25, .5, .2};
    private static final double[] LINES = {1, .85, .95, .6};
    private static final int MAX_PX = 220;

    private MediaIcon() {}

    /** Draws it in the middle of a box, as large as the box allows. */
    public static void paint(Graphics2D graphics, Palette p, Texts texts, PhotoFile file, Rectangle box) {
        Graphics2D g = (Graphics2D) graphics.create();
        try {
            g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
            g.setRenderingHint(RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
            double width = Math.min(MAX_PX, box.width * 0.6);
            double height = Math.min(width * 0.5, box.height * 0.45);
            double left = box.getCenterX() - width / 2;
            double middle = box.getCenterY() - box.height * 0.08;
            g.setColor(p.accent());
            if (file.kind() == MediaKind.SOUND) {
                wave(g, left, middle, width, height);
            } else {
                lines(g, left, middle - height / 2, width, height);
            }
            g.setColor(p.secondInk());
            Font font = UIManager.getFont("defaultFont");
            g.setFont(font == null ? g.getFont() : font.deriveFont(font.getSize2D() - 1));
            FontMetrics metrics = g.getFontMetrics();
            String words = words(texts, file);
            g.drawString(words, (int) (box.getCenterX() - metrics.stringWidth(words) / 2.0), (int)
                    (middle + height / 2 + metrics.getHeight()));
        } finally {
            g.dispose();
        }
    }

    private static void wave(Graphics2D g, double left, double middle, double width, double height) {
        double step = width / WAVE.length;
        g.setStroke(new BasicStroke((float) (step * 0.45), BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
        for (int i = 0; i < WAVE.length; i++) {
            double x = left + (i + 0.5) * step;
            double half = WAVE[i] * height / 2;
            g.draw(new Line2D.Double(x, middle - half, x, middle + half));
        }
    }

    private static void lines(Graphics2D g, double left, double top, double width, double height) {
        double step = height / LINES.length;
        g.setStroke(new BasicStroke((float) (step * 0.28), BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
        for (int i = 0; i < LINES.length; i++) {
            double y = top + (i + 0.5) * step;
            g.draw(new Line2D.Double(left, y, left + LINES[i] * width, y));
        }
    }

    /** A sound's length, such as 1:05; else what the file is. */
    public static String words(Texts texts, PhotoFile file) {
        String kind = texts.get("media." + file.kind().word());
        return file.seconds().isPresent() ? kind + " " + length(file.seconds().getAsDouble()) : kind;
    }

    static String length(double seconds) {
        long whole = Math.round(seconds);
        return String.format(Locale.ROOT, "%d:%02d", whole / 60, whole % 60);
    }
}
