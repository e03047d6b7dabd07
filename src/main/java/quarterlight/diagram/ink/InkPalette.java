package quarterlight.diagram.ink;

import java.awt.Color;

/**
 * The colors a diagram is drawn with.
 *
 * @param ground what lies behind the drawing
 * @param ink the drawing and its text
 * @param secondInk units, titles and leaders
 * @param line hairlines
 * @param accent selection, hover and pins
 * @param grave what cannot wait: rusted through, a grave matter
 */
public record InkPalette(Color ground, Color ink, Color secondInk, Color line, Color accent, Color grave) {
    /** For the light window and for pages. */
    public static final InkPalette LIGHT = new InkPalette(
            new Color(0xFFFFFF),
            new Color(0x20262B),
            new Color(0x59636B),
            new Color(0xCFC9BD),
            new Color(0x0B6472),
            new Color(0x9B1C31));
    /** For the dark window. */
    public static final InkPalette DARK = new InkPalette(
            new Color(0x24292D),
            new Color(0xECE8DF),
            new Color(0xA9B1B6),
            new Color(0x444C52),
            new Color(0x5CC3D1),
            new Color(0xF08A98));

    /** One without a grave color: that of the ink stands in. */
    public InkPalette(Color ground, Color ink, Color secondInk, Color line, Color accent) {
        this(ground, ink, secondInk, line, accent, ink);
    }

    public boolean isDark() {
        return ColorContrast.luminance(ground) < ColorContrast.luminance(ink);
    }

    /** Where hairlines are as strong as words, nothing of the drawing is faint. */
    private boolean isStrong() {
        return ColorContrast.ratio(line, ground) >= ColorContrast.TEXT;
    }

    public Color silhouette() {
        return ink;
    }

    public Color gap() {
        return mix(ink, ground, isStrong() ? 0.95 : 0.70);
    }

    public Color detail() {
        return mix(ink, ground, isStrong() ? 0.85 : 0.45);
    }

    public Color wheel() {
        return mix(ink, ground, 0.15);
    }

    public Color shade() {
        return mix(ink, ground, 0.30);
    }

    public Color glass() {
        return mix(ink, ground, 0.08);
    }

    /** A share of one color over the rest of another. */
    public static Color mix(Color over, Color under, double share) {
        return new Color(
                channel(over.getRed(), under.getRed(), share),
                channel(over.getGreen(), under.getGreen(), share),
                channel(over.getBlue(), under.getBlue(), share));
    }

    /** A color that lets what lies under it through; alpha 0 to 255. */
    public static Color faint(Color color, int alpha) {
        return new Color(color.getRed(), color.getGreen(), color.getBlue(), alpha);
    }

    /** A color as pages and styles write it: {@code #20262b}. */
    public static String hex(Color color) {
        return "#%06x".formatted(color.getRGB() & 0xFFFFFF);
    }

    private static int channel(int over, int under, double share) {
        return (int) Math.round(over * share + under * (1 - share));
    }
}
