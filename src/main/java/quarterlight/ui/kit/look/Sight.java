package quarterlight.ui.kit.look;

import java.awt.GraphicsEnvironment;
import java.awt.Toolkit;

/**
 * How the window is seen: light or dark, with strong contrast, in which size of text, and whether things move. Immutable.
 *
 * @param textPercent size of all text, 100 to 200
 * @param still nothing blinks, glides or runs to and fro
 */
public record Sight(boolean dark, boolean contrast, int textPercent, boolean still) {
    public static final int USUAL_PERCENT = 100;
    public static final int MOST_PERCENT = 200;
    public static final int STEP_PERCENT = 25;

    private static final int USUAL_DPI = 96;
    /** X settings give the resolution in parts of 1024. */
    private static final int DPI_PARTS = 1024;

    public Sight {
        textPercent = Math.max(USUAL_PERCENT, Math.min(MOST_PERCENT, textPercent));
    }

    /** Plain light or dark. */
    public static Sight of(Palette palette) {
        return new Sight(palette.dark(), false, USUAL_PERCENT, false);
    }

    Palette palette() {
        if (contrast) {
            return dark ? Palette.DARK_CONTRAST : Palette.LIGHT_CONTRAST;
        }
        return dark ? Palette.DARK : Palette.LIGHT;
    }

    /** The size of text that the system asks for, in steps of 25; 100 where it says nothing, or scales whole windows itself. */
    public static int systemPercent() {
        if (desktop("gnome.Xft/DPI") instanceof Integer parts) {
            return stepped(parts * 100 / (DPI_PARTS * USUAL_DPI));
        }
        return USUAL_PERCENT;
    }

    /** Whether the system asks for strong contrast. */
    public static boolean systemContrast() {
        return Boolean.TRUE.equals(desktop("win.highContrast.on"));
    }

    static int stepped(int percent) {
        int steps = Math.round((float) percent / STEP_PERCENT);
        return Math.max(USUAL_PERCENT, Math.min(MOST_PERCENT, steps * STEP_PERCENT));
    }

    private static Object desktop(String property) {
        return GraphicsEnvironment.isHeadless()
                ? null
                : Toolkit.getDefaultToolkit().getDesktopProperty(property);
    }
}
