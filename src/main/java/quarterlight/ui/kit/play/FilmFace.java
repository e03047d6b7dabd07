package quarterlight.ui.kit.play;

import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.awt.image.BufferedImage;
import java.util.Optional;
import javax.accessibility.AccessibleRole;
import quarterlight.ui.kit.look.DrawnComponent;
import quarterlight.ui.kit.look.Look;
import quarterlight.ui.kit.look.Palette;

/** The picture of a player, fitted into its room; a click plays and holds. Event thread only. */
public final class FilmFace extends DrawnComponent {
    private final transient Player player;
    private transient Optional<BufferedImage> shown = Optional.empty();

    /** @param name for those who hear the window */
    public FilmFace(Player player, String name) {
        this.player = player;
        setPreferredSize(new Dimension(320, 180));
        setMinimumSize(new Dimension(120, 68));
        Look.named(this, name);
        addMouseListener(new MouseAdapter() {
            @Override
            public void mousePressed(MouseEvent e) {
                player.toggle();
            }
        });
        player.onChange(() -> {
            if (!player.picture().equals(shown)) {
                shown = player.picture();
                repaint();
            }
        });
    }

    @Override
    protected AccessibleRole role() {
        return AccessibleRole.CANVAS;
    }

    @Override
    protected void paintComponent(Graphics g) {
        Palette palette = Look.palette();
        g.setColor(Palette.mix(palette.paper(), palette.ink(), 0.08));
        g.fillRect(0, 0, getWidth(), getHeight());
        player.picture().ifPresent(picture -> {
            double scale =
                    Math.min((double) getWidth() / picture.getWidth(), (double) getHeight() / picture.getHeight());
            int w = (int) Math.round(picture.getWidth() * scale);
            int h = (int) Math.round(picture.getHeight() * scale);
            ((Graphics2D) g)
                    .setRenderingHint(RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BILINEAR);
            g.drawImage(picture, (getWidth() - w) / 2, (getHeight() - h) / 2, w, h, null);
        });
    }
}
