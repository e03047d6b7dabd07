package quarterlight.ui.photos.pins;

import java.awt.FontMetrics;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.util.Optional;
import java.util.OptionalDouble;
import javax.swing.JButton;
import quarterlight.car.ZoneId;
import quarterlight.ui.kit.Format;
import quarterlight.ui.kit.look.Look;
import quarterlight.ui.kit.look.Palette;

/** One zone to choose: its key, its name, how likely it is. Event thread only. */
final class ZoneRow extends JButton {
    private static final String DOTS = "\u2026";
    /** So many letters wide a row shows its percentage, too. */
    private static final int WIDE = 17;

    private final int key;
    private transient Optional<ZoneId> zone = Optional.empty();
    private String label = "";
    private transient OptionalDouble likely = OptionalDouble.empty();
    private boolean first;

    ZoneRow(int key) {
        this.key = key;
        putClientProperty("JButton.buttonType", "toolBarButton");
        setName("photos-row-" + key);
        setEnabled(false);
        Look.named(this, "\u2013");
    }

    Optional<ZoneId> zone() {
        return zone;
    }

    /**
     * Shows a zone, or nothing.
     *
     * @param taken true if Enter takes this one
     */
    void show(Optional<ZoneId> fresh, String name, OptionalDouble p, boolean taken) {
        if (fresh.equals(zone)
                && name.equals(label)
                && p.equals(likely)
                && taken == first
                && isEnabled() == fresh.isPresent()) {
            return;
        }
        zone = fresh;
        label = name;
        likely = p;
        first = taken;
        setEnabled(fresh.isPresent());
        String percent = percent();
        Look.named(this, fresh.isEmpty() ? "\u2013" : key + " " + name + (percent.isEmpty() ? "" : ", " + percent));
        setToolTipText(name.isEmpty() ? null : name);
        repaint();
    }

    /** In a narrow row the name has the room. */
    private String shownPercent() {
        return getWidth() < getFontMetrics(getFont()).stringWidth("m") * WIDE ? "" : percent();
    }

    /** The name, cut with three dots where it finds no room. */
    private static String cut(String name, FontMetrics metrics, int room) {
        if (metrics.stringWidth(name) <= room) {
            return name;
        }
        int length = name.length();
        while (length > 0 && metrics.stringWidth(name.substring(0, length) + DOTS) > room) {
            length--;
        }
        return name.substring(0, length).strip() + DOTS;
    }

    private String percent() {
        if (likely.isEmpty()) {
            return "";
        }
        double percent = 100 * likely.getAsDouble();
        return percent < 1 ? "< 1\u2009%" : percent > 99 ? "> 99\u2009%" : Format.withUnit(percent, 0, "%");
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        super.paintComponent(graphics);
        if (zone.isEmpty()) {
            return;
        }
        Graphics2D g = (Graphics2D) graphics.create();
        try {
            Palette p = Look.palette();
            g.setRenderingHint(RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
            g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
            g.setFont(getFont());
            FontMetrics metrics = g.getFontMetrics();
            int base = (getHeight() + metrics.getAscent() - metrics.getDescent()) / 2;
            g.setColor(first ? p.accent() : p.line());
            g.drawRoundRect(4, 3, 17, getHeight() - 7, 4, 4);
            g.setColor(first ? p.accent() : p.secondInk());
            String digit = Integer.toString(key);
            g.drawString(digit, 13 - metrics.stringWidth(digit) / 2, base);
            String percent = shownPercent();
            int right = getWidth() - 8 - metrics.stringWidth(percent);
            g.setColor(p.secondInk());
            g.drawString(percent, right, base);
            g.setColor(p.ink());
            g.drawString(cut(label, metrics, right - 36), 30, base);
        } finally {
            g.dispose();
        }
    }
}
