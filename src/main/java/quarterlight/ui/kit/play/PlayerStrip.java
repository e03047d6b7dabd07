package quarterlight.ui.kit.play;

import java.awt.Color;
import java.awt.Dimension;
import java.awt.FontMetrics;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.util.List;
import java.util.OptionalDouble;
import javax.accessibility.AccessibleRole;
import quarterlight.photo.film.Loudness;
import quarterlight.ui.kit.look.DrawnComponent;
import quarterlight.ui.kit.look.Look;
import quarterlight.ui.kit.look.Palette;

/**
 * The sound along its time: at the top the whole recording with its marks and what is in sight, below it the loudness of some seconds with the words under it.
 * A click on a word plays from it, one elsewhere goes there. Event thread only.
 */
public final class PlayerStrip extends DrawnComponent {
    /** A place along the recording. */
    public record Tick(double seconds, boolean open) {}

    private static final int WHOLE = 14;
    private static final double PX_PER_S = 96;
    private static final double NOW_SHARE = 0.3;
    private static final double WORD_GAP = 4;

    private final transient Player player;
    private transient List<StripWord> words = List.of();
    private transient List<Tick> ticks = List.of();
    private transient double spanFrom;
    private transient double spanUntil;
    private transient OptionalDouble spoken = OptionalDouble.empty();

    /** @param name for those who hear the window */
    public PlayerStrip(Player player, String name) {
        this.player = player;
        Look.named(this, name);
        MouseAdapter mouse = new MouseAdapter() {
            @Override
            public void mousePressed(MouseEvent e) {
                pressed(e.getX(), e.getY());
            }

            @Override
            public void mouseDragged(MouseEvent e) {
                if (e.getY() < WHOLE) {
                    pressed(e.getX(), e.getY());
                }
            }
        };
        addMouseListener(mouse);
        addMouseMotionListener(mouse);
        player.onChange(this::repaint);
    }

    @Override
    public Dimension getPreferredSize() {
        return new Dimension(400, WHOLE + loudPx() + wordsPx());
    }

    @Override
    public Dimension getMinimumSize() {
        return new Dimension(160, WHOLE + loudPx() + wordsPx());
    }

    @Override
    protected AccessibleRole role() {
        return AccessibleRole.SLIDER;
    }

    /** Shows the words of the recording, and how long these last where its own length is not known. */
    public void words(List<StripWord> said) {
        words = List.copyOf(said);
        spoken = said.isEmpty()
                ? OptionalDouble.empty()
                : OptionalDouble.of(said.get(said.size() - 1).until());
        repaint();
    }

    /** Marks places along the recording. */
    public void ticks(List<Tick> places) {
        if (!ticks.equals(places)) {
            ticks = List.copyOf(places);
            repaint();
        }
    }

    /** Underlines a stretch, such as that of the draft in hand. */
    public void span(double from, double until) {
        spanFrom = from;
        spanUntil = until;
        repaint();
    }

    private double length() {
        return Double.isInfinite(player.length()) ? spoken.orElse(1) : player.length();
    }

    private double leftmost() {
        return player.position() - NOW_SHARE * getWidth() / PX_PER_S;
    }

    private int x(double seconds) {
        return (int) Math.round((seconds - leftmost()) * PX_PER_S);
    }

    private void pressed(int x, int y) {
        requestFocusInWindow();
        if (y < WHOLE) {
            player.go(length() * Math.max(0, Math.min(1, (double) x / Math.max(1, getWidth()))));
            return;
        }
        double at = leftmost() + x / PX_PER_S;
        words.stream()
                .filter(word -> y >= WHOLE + loudPx() && word.from() <= at && at < word.until())
                .findFirst()
                .ifPresentOrElse(
                        word -> {
                            player.go(word.from());
                            if (!player.isPlaying()) {
                                player.play();
                            }
                        },
                        () -> player.go(at));
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        Graphics2D g = (Graphics2D) graphics.create();
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        Palette palette = Look.palette();
        g.setColor(palette.sheet());
        g.fillRect(0, 0, getWidth(), getHeight());
        whole(g, palette);
        loud(g, palette);
        said(g, palette);
        int now = x(player.position());
        g.setColor(palette.accent());
        g.fillRect(now - 1, WHOLE, 2, loudPx() + wordsPx());
        g.dispose();
    }

    private void whole(Graphics2D g, Palette palette) {
        double length = Math.max(0.1, length());
        g.setColor(palette.paper());
        g.fillRect(0, 0, getWidth(), WHOLE - 1);
        g.setColor(palette.line());
        g.fillRect(0, WHOLE - 1, getWidth(), 1);
        for (Tick tick : ticks) {
            int x = (int) Math.round(getWidth() * tick.seconds() / length);
            g.setColor(tick.open() ? palette.ink() : palette.line());
            g.fillRect(x, tick.open() ? 3 : 5, 1, WHOLE - (tick.open() ? 6 : 9));
        }
        g.setColor(palette.accent());
        g.fillRect((int) Math.round(getWidth() * player.position() / length) - 1, 0, 3, WHOLE - 1);
    }

    private void loud(Graphics2D g, Palette palette) {
        byte[] loud = player.loudness();
        Color faint = Palette.mix(palette.sheet(), palette.ink(), 0.4);
        int middle = WHOLE + loudPx() / 2;
        double step = PX_PER_S / Loudness.PER_SECOND;
        int first = (int) Math.max(0, Math.floor(leftmost() * Loudness.PER_SECOND));
        for (int i = first; i < loud.length && x((double) i / Loudness.PER_SECOND) < getWidth(); i++) {
            double at = (double) i / Loudness.PER_SECOND;
            int half = Math.max(1, (int) Math.round((loud[i] & 0xFF) / 255.0 * (loudPx() / 2 - 2)));
            g.setColor(at >= spanFrom && at < spanUntil ? palette.accent() : faint);
            g.fillRect(x(at), middle - half, (int) Math.max(1, step - 1), 2 * half);
        }
        if (loud.length == 0) {
            g.setColor(palette.line());
            g.fillRect(0, middle, getWidth(), 1);
        }
    }

    private void said(Graphics2D g, Palette palette) {
        g.setFont(getFont() == null ? g.getFont() : getFont());
        FontMetrics metrics = g.getFontMetrics();
        int baseline = WHOLE + loudPx() + metrics.getAscent() + 1;
        double free = Double.NEGATIVE_INFINITY;
        for (StripWord word : words) {
            int width = metrics.stringWidth(word.text());
            double at = Math.max(x(word.from()), free);
            if (at > getWidth()) {
                break;
            }
            if (at + width >= 0) {
                boolean now = player.position() >= word.from() && player.position() < word.until();
                boolean of = word.from() >= spanFrom - 0.01 && word.until() <= spanUntil + 0.3;
                g.setColor(now ? palette.accent() : of ? palette.ink() : palette.secondInk());
                g.drawString(word.text(), (float) at, baseline);
                if (of) {
                    g.fillRect((int) at, baseline + 3, width, 1);
                }
            }
            free = word.until() <= leftmost() ? Double.NEGATIVE_INFINITY : at + width + WORD_GAP;
        }
    }

    private static int loudPx() {
        return Look.px(34);
    }

    private static int wordsPx() {
        return Look.px(22);
    }
}
