package quarterlight.diagram.ink;

import java.awt.Color;

/**
 * Contrast of two opaque sRGB colors.
 * <p>Source: W3C, Web Content Accessibility Guidelines (WCAG) 2.2, definitions of relative luminance and contrast ratio, as printed.
 */
public final class ColorContrast {
    /** Least ratio for text (WCAG 2.2, 1.4.3, level AA). */
    public static final double TEXT = 4.5;

    private ColorContrast() {}

    /** (L1 + 0.05) / (L2 + 0.05) with the lighter color first; 1 to 21. */
    public static double ratio(Color a, Color b) {
        double la = luminance(a);
        double lb = luminance(b);
        return (Math.max(la, lb) + 0.05) / (Math.min(la, lb) + 0.05);
    }

    /** A ratio for display, rounded down to hundredths, so that 4.478 never shows as 4.5. */
    public static double shown(double ratio) {
        return Math.floor(ratio * 100) / 100;
    }

    /** 0.2126 R + 0.7152 G + 0.0722 B of the linear channels; 0 to 1. */
    static double luminance(Color c) {
        return 0.2126 * linear(c.getRed()) + 0.7152 * linear(c.getGreen()) + 0.0722 * linear(c.getBlue());
    }

    private static double linear(int channel) {
        double c = channel / 255.0;
        return c <= 0.04045 ? c / 12.92 : Math.pow((c + 0.055) / 1.055, 2.4);
    }

    /** The first of the wished colors that can be read on a ground, else black or white, whichever reads better (one of them always does). */
    public static Color readable(Color ground, Color... wished) {
        for (Color color : wished) {
            if (ratio(color, ground) >= TEXT) {
                return color;
            }
        }
        return ratio(Color.BLACK, ground) >= ratio(Color.WHITE, ground) ? Color.BLACK : Color.WHITE;
    }
}
