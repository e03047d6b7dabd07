package quarterlight.ui.kit.look;

import java.awt.Rectangle;

/**
 * One thing that a drawn component shows, as those hear it who cannot see it: a zone of the drawing, a photo of the sheet, an outline on a photo. Immutable.
 *
 * @param name what it is, and what is known of it
 * @param bounds where it stands in its component, px
 * @param selected whether it is in hand
 * @param action what choosing it does, in words
 * @param choose does it
 */
public record DrawnPart(String name, Rectangle bounds, boolean selected, String action, Runnable choose) {
    public DrawnPart {
        bounds = new Rectangle(bounds);
    }

    @Override
    public Rectangle bounds() {
        return new Rectangle(bounds);
    }
}
