package quarterlight.diagram.ink;

import java.awt.Color;
import java.util.OptionalDouble;

/**
 * Colors that follow from a palette and the ramp.
 *
 * @param palette of the window or page
 * @param ramp of the quantities
 */
public record SceneColors(InkPalette palette, Ramp ramp) {
    /** The look of a zone that nothing is known of. */
    public static final ZoneLook NO_LOOK = new ZoneLook(OptionalDouble.empty(), "", 0, 0);

    private static final double TEXTURE = 0.75;
    private static final double LINE = 0.70;

    /** What a zone is filled with: its place on the ramp, else the ground. */
    public Color fill(ZoneLook look) {
        return look.share().isPresent() ? ramp.at(look.share().getAsDouble()) : palette.ground();
    }

    /** A text color of contrast 4.5 or better on a ground. */
    public Color textOn(Color ground) {
        return Contrast.readable(ground, palette.ink(), palette.ground());
    }

    /** The color of hatching and stipple on a ground. */
    public Color textureOn(Color ground) {
        return InkPalette.mix(textOn(ground), ground, TEXTURE);
    }

    /** The color of a panel gap on a fill. */
    public Color lineOn(Color ground) {
        return InkPalette.mix(textOn(ground), ground, LINE);
    }
}
