package quarterlight.diagram.ink;

import java.awt.Color;
import java.util.List;
import java.util.stream.Stream;
import quarterlight.finish.scale.ThicknessSteps;

/**
 * The colors of the steps of thickness: a diverging scheme that readers with and without color deficiency tell apart. In the light the middle
 * is near white, what is thin turns violet and what is thick turns dark brown; in the dark the middle is near the ground and both ends
 * turn light. So a sound car looks like the paper it is drawn on.
 * <p>Source: Cynthia A. Brewer, ColorBrewer, scheme PuOr with eleven classes; this product includes color specifications and designs
 * developed by Cynthia Brewer. Which classes the steps take is ours.
 */
public final class Ramp {
    private static final List<Color> LIGHT =
            colors("#8073ac", "#d8daeb", "#f7f7f7", "#fee0b6", "#fdb863", "#e08214", "#7f3b08");
    private static final List<Color> DARK =
            colors("#b2abd2", "#542788", "#2b3034", "#7f3b08", "#b35806", "#fdb863", "#fee0b6");

    private static final Ramp RAMP = new Ramp();

    private Ramp() {}

    /** The ramp of the program. */
    public static Ramp load() {
        return RAMP;
    }

    private static List<Color> colors(String... codes) {
        return Stream.of(codes).map(Color::decode).toList();
    }

    /** The color of a step. */
    public Color at(int step, InkPalette palette) {
        return steps(palette).get(step - ThicknessSteps.LOWEST);
    }

    /** All, from the lowest step. */
    public List<Color> steps(InkPalette palette) {
        return palette.isDark() ? DARK : LIGHT;
    }
}
