package quarterlight.ui.marks;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Dimension;
import java.awt.Font;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.util.Optional;
import javax.swing.JPanel;
import quarterlight.marks.code.VehicleNumber;
import quarterlight.marks.judge.NumberMatch;
import quarterlight.ui.kit.look.Look;
import quarterlight.ui.kit.look.Palette;

/**
 * Two numbers that should say the same, one above the other, letter by letter: an unread letter stands in a broken frame, a letter that
 * differs in a full one with a stroke between the two. Event thread only.
 */
final class LetterMatch extends JPanel {
    private static final int CELL = 20;
    private static final int ROW = 24;
    private static final int GAP = 8;

    private transient Optional<NumberMatch> match = Optional.empty();
    private String text = "";

    LetterMatch() {
        setFocusable(true);
        setOpaque(false);
        setVisible(false);
    }

    void show(String read, NumberMatch held) {
        text = VehicleNumber.plain(read);
        match = Optional.of(held);
        Look.named(this, read + " " + held.sentence());
        setToolTipText(held.sentence());
        setVisible(true);
        revalidate();
        repaint();
    }

    @Override
    public Dimension getPreferredSize() {
        int letters = Math.max(text.length(), expected().length());
        return new Dimension(letters * CELL + 4, 2 * ROW + GAP + 4);
    }

    private String expected() {
        return match.map(m -> VehicleNumber.plain(m.expected())).orElse("");
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        if (match.isEmpty()) {
            return;
        }
        Graphics2D g = (Graphics2D) graphics.create();
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        g.setRenderingHint(RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
        String below = expected();
        int letters = Math.max(text.length(), below.length());
        double cell = Math.min(CELL, Math.max(8, (getWidth() - 4.0) / Math.max(1, letters)));
        for (int i = 0; i < letters; i++) {
            boolean differs = match.get().differing().contains(i + 1);
            boolean open = match.get().unread().contains(i + 1);
            int x = (int) Math.round(2 + i * cell);
            letter(g, text, i, x, 2, (int) cell, differs, open);
            letter(g, below, i, x, 2 + ROW + GAP, (int) cell, differs, open);
            if (differs) {
                g.setColor(Look.palette().ink());
                g.setStroke(new BasicStroke(2));
                g.drawLine(x + (int) cell / 2, 2 + ROW, x + (int) cell / 2, 2 + ROW + GAP);
            }
        }
        g.dispose();
    }

    private void letter(Graphics2D g, String word, int at, int x, int y, int wide, boolean differs, boolean open) {
        Palette palette = Look.palette();
        String letter = at < word.length() ? word.substring(at, at + 1) : "\u2013";
        Color ink = differs ? palette.caution() : open ? palette.secondInk() : palette.ink();
        g.setColor(palette.sheet());
        g.fillRect(x, y, wide - 2, ROW);
        if (differs || open) {
            g.setColor(ink);
            g.setStroke(
                    differs
                            ? new BasicStroke(1.6f)
                            : new BasicStroke(
                                    1, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER, 4, new float[] {3, 3}, 0));
            g.drawRect(x, y, wide - 3, ROW - 1);
        }
        g.setColor(ink);
        g.setFont(getFont().deriveFont(differs ? Font.BOLD : Font.PLAIN));
        int width = g.getFontMetrics().stringWidth(letter);
        g.drawString(letter, x + (wide - 2 - width) / 2, y + ROW - 7);
    }
}
