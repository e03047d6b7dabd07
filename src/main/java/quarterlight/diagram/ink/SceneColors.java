package quarterlight.diagram.ink;

import java.awt.Color;

/**
 * Colors that follow from a palette and the ramp.
 *
 * @param palette of the window or page
 * @param ramp of the quantities
 */
public record SceneColors(InkPalette palette, Ramp ramp) {
    private static final double COMPLETE = 0.16;
    private static final double MISSING = 0.48;
    private static final double TEXTURE = 0.75;
    private static final double LINE = 0.70;

    /** What a zone is filled with: its step, else the tone of its evidence, else the ground. */
    public Color fill(ZoneLook look) {
        if (look.step().isPresent()) {
            return ramp.at(look.step().getAsInt(), palette);
        }
        return switch (look.surface()) {
            case COMPLETE -> InkPalette.mix(palette.accent(), palette.ground(), COMPLETE);
            case MISSING -> missing();
            default -> palette.ground();
        };
    }

    /** The tone of a zone without any evidence, and of the bands on one that lacks some. */
    public Color missing() {
        return InkPalette.mix(palette.ink(), palette.ground(), MISSING);
    }

    /** A text color of contrast 4.5 or better on a ground. */
    public Color textOn(Color ground) {
        return ColorContrast.readable(ground, palette.ink(), palette.ground());
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
