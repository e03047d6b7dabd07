package quarterlight.rust.color;

import static quarterlight.language.Sentences.say;

import java.util.List;

/**
 * How much a color looks like rust, 0 to 1, by its hue, chroma and lightness in CIELAB. A suggestion to confirm, never a
 * finding: color alone cannot tell rust from brown paint, leather or dirt.
 * <p>sRGB to CIELAB: IEC 61966-2-1 for the curve and the matrix, CIE 15 for CIELAB, white D65, as printed. The hue window
 * follows the Munsell hues of iron oxides (hematite 10R to 5YR, ferrihydrite 5YR to 7.5YR, lepidocrocite 7.5YR, goethite
 * 7.5YR to 2.5Y; U. Schwertmann, Relations between iron oxides, soil color, and soil formation, SSSA Special Publication
 * 31, 1993, abstract), which lie at about 35 to 83 degrees of CIELAB hue (from memory). Chroma and lightness are
 * judgement: grayer is metal or dust, more vivid is paint, darker has no color and lighter is glare. Each is a ramp up, a
 * flat top and a ramp down; the least of the three counts.
 *
 * @param hue degrees of CIELAB hue
 * @param chroma CIELAB chroma
 * @param lightness CIELAB lightness, 0 to 100
 */
public record RustColor(Window hue, Window chroma, Window lightness) {
    /** First version of the rule. */
    public static final RustColor V1 =
            new RustColor(new Window(28, 42, 72, 88), new Window(8, 20, 70, 86), new Window(8, 16, 62, 78));

    /** From this on a color is taken for rust, unless the inspector moves the threshold. */
    public static final double USUAL_THRESHOLD = 0.8;

    private static final double[] LINEAR = linear();

    /**
     * A ramp from 0 to 1 between {@code from} and {@code full}, 1 up to {@code fullTo}, and down to 0 at {@code to}.
     */
    public record Window(double from, double full, double fullTo, double to) {
        public Window {
            if (!(from < full && full <= fullTo && fullTo < to)) {
                throw new IllegalArgumentException("a window goes up, stays and comes down");
            }
        }

        double at(double value) {
            if (value <= from || value >= to) {
                return 0;
            }
            if (value < full) {
                return (value - from) / (full - from);
            }
            return value <= fullTo ? 1 : (to - value) / (to - fullTo);
        }
    }

    /** What the rule is known to take for rust, to be said beside every share. */
    public static List<String> traps() {
        return List.of(
                say("rust.trap.other-browns"),
                say("rust.trap.dull-paint"),
                say("rust.trap.missed"),
                say("rust.trap.light"));
    }

    /**
     * How much a color looks like rust.
     *
     * @param rgb sRGB color, 0xRRGGBB; higher bits are ignored
     */
    public double likeness(int rgb) {
        double[] lab = lab(rgb);
        double light = lightness.at(lab[0]);
        if (light == 0) {
            return 0;
        }
        double colorful = chroma.at(Math.hypot(lab[1], lab[2]));
        if (colorful == 0) {
            return 0;
        }
        double degrees = Math.toDegrees(Math.atan2(lab[2], lab[1]));
        return Math.min(Math.min(light, colorful), hue.at(degrees < 0 ? degrees + 360 : degrees));
    }

    /**
     * CIELAB of an sRGB color, white D65.
     *
     * @return L (0 to 100), a, b
     */
    public static double[] lab(int rgb) {
        double r = LINEAR[rgb >> 16 & 0xFF];
        double g = LINEAR[rgb >> 8 & 0xFF];
        double b = LINEAR[rgb & 0xFF];
        double fx = curve((0.4124564 * r + 0.3575761 * g + 0.1804375 * b) / 0.95047);
        double fy = curve(0.2126729 * r + 0.7151522 * g + 0.0721750 * b);
        double fz = curve((0.0193339 * r + 0.1191920 * g + 0.9503041 * b) / 1.08883);
        return new double[] {116 * fy - 16, 500 * (fx - fy), 200 * (fy - fz)};
    }

    private static double curve(double t) {
        return t > 216.0 / 24389 ? Math.cbrt(t) : (24389.0 / 27 * t + 16) / 116;
    }

    private static double[] linear() {
        double[] table = new double[256];
        for (int i = 0; i < table.length; i++) {
            double c = i / 255.0;
            table[i] = c <= 0.04045 ? c / 12.92 : Math.pow((c + 0.055) / 1.055, 2.4);
        }
        return table;
    }
}
