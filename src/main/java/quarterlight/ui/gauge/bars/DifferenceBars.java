package quarterlight.ui.gauge.bars;

import java.awt.BasicStroke;
import java.awt.FontMetrics;
import java.awt.Graphics2D;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.Set;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import quarterlight.car.ZoneId;
import quarterlight.thickness.statistics.MeanDifference;
import quarterlight.ui.kit.Format;
import quarterlight.ui.kit.Texts;
import quarterlight.ui.kit.look.Look;
import quarterlight.ui.kit.look.Palette;
import quarterlight.units.Thickness;
import quarterlight.units.ThicknessUnit;

/** Differences of means with their 95 % intervals about zero; those that leave zero outside are drawn full. Event thread only. */
public final class DifferenceBars extends Bars {
    private static final double ROOM = 1.25;

    private final transient Texts texts;
    private transient List<Line> lines = List.of();
    private transient ThicknessUnit unit = ThicknessUnit.MIL;

    /**
     * One difference.
     *
     * @param zones selected by a click
     */
    public record Line(String name, MeanDifference difference, Set<ZoneId> zones) {
        public Line {
            zones = Set.copyOf(zones);
        }
    }

    /** @param chosen told of the zones of a line that was clicked */
    public DifferenceBars(Texts texts, String name, Consumer<Set<ZoneId>> chosen) {
        super(name);
        this.texts = texts;
        addMouseListener(new MouseAdapter() {
            @Override
            public void mousePressed(MouseEvent e) {
                int row = e.getY() / rowPx();
                if (row >= 0 && row < lines.size()) {
                    chosen.accept(lines.get(row).zones());
                }
            }
        });
    }

    public void show(List<Line> fresh, ThicknessUnit shown) {
        lines = List.copyOf(fresh);
        unit = shown;
        getAccessibleContext()
                .setAccessibleDescription(lines.stream()
                        .map(line -> line.name() + " " + number(line.difference()))
                        .collect(Collectors.joining("; ")));
        revalidate();
        repaint();
    }

    private String number(MeanDifference found) {
        String interval =
                texts.get("panels.interval", signed(found.difference()), signed(found.low()), signed(found.high()));
        return found.isClear() ? interval : interval + ", " + texts.get("panels.unclear");
    }

    private String signed(double um) {
        String text = Format.thickness(new Thickness(um), unit);
        return um > 0 && text.chars().anyMatch(c -> c >= '1' && c <= '9') ? "+" + text : text;
    }

    @Override
    int rowsHeight() {
        return rowPx() * Math.max(1, lines.size());
    }

    @Override
    void draw(Graphics2D g) {
        double most = ROOM
                * lines.stream()
                        .mapToDouble(line -> Math.abs(line.difference().difference()))
                        .max()
                        .orElse(1);
        double half = Math.max(20, (getWidth() - namesPx() - numbersPx()) / 2.0);
        double zero = namesPx() + half;
        g.setColor(Look.palette().line());
        g.fill(new Rectangle2D.Double(zero - 0.5, 0, 1, rowPx() * (double) lines.size()));
        for (int i = 0; i < lines.size(); i++) {
            row(g, lines.get(i), rowPx() * i, zero, half, half / Math.max(1e-9, most));
        }
    }

    private void row(Graphics2D g, Line line, int top, double zero, double half, double scale) {
        Palette palette = Look.palette();
        FontMetrics metrics = g.getFontMetrics(getFont());
        g.setFont(getFont());
        double middle = top + rowPx() / 2.0;
        int base = top + (rowPx() + metrics.getAscent()) / 2 - 2;
        MeanDifference found = line.difference();
        g.setColor(palette.ink());
        g.drawString(ReasonBars.fitted(metrics, line.name(), namesPx() - 8), 0, base);
        double from = zero + Math.max(-half, scale * found.low());
        double to = zero + Math.min(half, scale * found.high());
        double at = zero + scale * found.difference();
        g.setStroke(new BasicStroke(found.isClear() ? 2.4f : 1.2f));
        g.setColor(found.isClear() ? palette.accent() : Palette.mix(palette.paper(), palette.ink(), 0.55));
        g.draw(new Line2D.Double(from, middle, to, middle));
        Ellipse2D dot = new Ellipse2D.Double(at - 4, middle - 4, 8, 8);
        g.setStroke(new BasicStroke(1.4f));
        if (found.isClear()) {
            g.fill(dot);
        } else {
            g.setColor(palette.paper());
            g.fill(dot);
            g.setColor(Palette.mix(palette.paper(), palette.ink(), 0.55));
            g.draw(dot);
        }
        g.setColor(found.isClear() ? palette.ink() : palette.secondInk());
        String number = number(found);
        g.drawString(number, getWidth() - metrics.stringWidth(number), base);
    }

    private static int rowPx() {
        return Look.px(22);
    }

    private static int namesPx() {
        return Look.px(170);
    }

    private static int numbersPx() {
        return Look.px(190);
    }
}
