package quarterlight.ui.compare;

import java.awt.Color;
import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import javax.swing.JPanel;
import quarterlight.compare.CountComparison;
import quarterlight.compare.CountSummary;
import quarterlight.compare.Letters;
import quarterlight.compare.said.CountText;
import quarterlight.ui.kit.look.Look;
import quarterlight.ui.kit.look.Palette;

/** How many panels of each car are refinished, or repaired: the chance of every count, A above the line and B below. Event thread only. */
final class CountBars extends JPanel {
    private static final int AXIS = 18;
    private static final int TOP = 22;

    private final transient CountComparison counts;
    private final transient Letters letters;
    private final String title;

    CountBars(Letters letters, CountText text) {
        this.letters = letters;
        this.counts = text.counts();
        this.title = Character.toUpperCase(text.what().charAt(0)) + text.what().substring(1);
        setOpaque(false);
        setPreferredSize(new Dimension(300, 130));
        setMinimumSize(new Dimension(0, 130));
        Look.named(this, text.sentence());
        setToolTipText(text.sentence());
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        super.paintComponent(graphics);
        Graphics2D g = (Graphics2D) graphics.create();
        g.setRenderingHint(RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
        Palette palette = Look.palette();
        g.setFont(getFont());
        g.setColor(palette.ink());
        g.drawString(title, 0, 14);
        int most = counts.a().distribution().chances().size() - 1;
        int middle = TOP + (getHeight() - TOP) / 2;
        int room = (getHeight() - TOP - AXIS) / 2;
        double step = (getWidth() - 24.0) / (most + 1);
        double tallest = Math.max(tallest(counts.a(), most), tallest(counts.b(), most));
        g.setColor(palette.secondInk());
        g.drawString(letters.a(), 0, middle - room / 2 + 4);
        g.drawString(letters.b(), 0, middle + room / 2 + 8);
        g.setFont(getFont().deriveFont(getFont().getSize2D() - 2));
        for (int n = 0; n <= most; n++) {
            int x = 20 + (int) (n * step);
            int width = Math.max(2, (int) step - 2);
            bar(g, x, middle - AXIS / 2, width, -height(counts.a(), n, tallest, room), palette.accent());
            bar(g, x, middle + AXIS / 2, width, height(counts.b(), n, tallest, room), palette.secondInk());
            if (most <= 12 || n % 5 == 0) {
                String number = Integer.toString(n);
                g.setColor(palette.ink());
                g.drawString(number, x + (width - g.getFontMetrics().stringWidth(number)) / 2, middle + 4);
            }
        }
        g.dispose();
    }

    private static double tallest(CountSummary side, int most) {
        double tallest = 0;
        for (int n = 0; n <= most; n++) {
            tallest = Math.max(tallest, chance(side, n));
        }
        return tallest;
    }

    private static double chance(CountSummary side, int n) {
        return n < side.distribution().chances().size()
                ? side.distribution().chances().get(n)
                : 0;
    }

    private static int height(CountSummary side, int n, double tallest, int room) {
        return (int) Math.round(chance(side, n) / tallest * (room - 2));
    }

    private static void bar(Graphics2D g, int x, int base, int width, int height, Color color) {
        g.setColor(color);
        if (height < 0) {
            g.fillRect(x, base + height, width, -height);
        } else {
            g.fillRect(x, base, width, height);
        }
    }
}
