package quarterlight.demo;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.awt.RenderingHints;
import java.awt.Shape;
import java.awt.image.BufferedImage;
import java.awt.image.DataBufferByte;

/**
 * How much of each pixel a shape covers, 0 to 1, over the part of the sheet that it touches.
 */
final class Mask {
    private final int x;
    private final int y;
    private final int w;
    private final int h;
    private final float[] a;

    private Mask(int x, int y, int w, int h, float[] a) {
        this.x = x;
        this.y = y;
        this.w = w;
        this.h = h;
        this.a = a;
    }

    int x() {
        return x;
    }

    int y() {
        return y;
    }

    int w() {
        return w;
    }

    int h() {
        return h;
    }

    /** At a place of the mask counted row by row. */
    float at(int i) {
        return a[i];
    }

    /** The shape, softened by a blur of about {@code soft} px. */
    static Mask of(Shape shape, double soft, int sheetW, int sheetH) {
        int margin = (int) Math.ceil(soft * 3) + 2;
        Rectangle box = shape.getBounds();
        box.grow(margin, margin);
        Rectangle cut = box.intersection(new Rectangle(-margin, -margin, sheetW + 2 * margin, sheetH + 2 * margin));
        if (cut.isEmpty()) {
            return new Mask(0, 0, 0, 0, new float[0]);
        }
        BufferedImage image = new BufferedImage(cut.width, cut.height, BufferedImage.TYPE_BYTE_GRAY);
        Graphics2D g = image.createGraphics();
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        g.translate(-cut.x, -cut.y);
        g.setColor(Color.WHITE);
        g.fill(shape);
        g.dispose();
        byte[] grey = ((DataBufferByte) image.getRaster().getDataBuffer()).getData();
        float[] a = new float[grey.length];
        for (int i = 0; i < a.length; i++) {
            a[i] = (grey[i] & 255) / 255f;
        }
        if (soft > 0.3) {
            Blur.box3(a, cut.width, cut.height, soft);
        }
        return new Mask(cut.x, cut.y, cut.width, cut.height, a);
    }
}
