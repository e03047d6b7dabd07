package quarterlight.ui.gauge;

import java.awt.BasicStroke;
import java.awt.Dimension;
import java.awt.FontMetrics;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.Optional;
import javax.swing.JPanel;
import quarterlight.findings.Findings;
import quarterlight.page.ThicknessRamp;
import quarterlight.page.panel.StripScale;
import quarterlight.page.panel.StripScale.MarkKind;
import quarterlight.thickness.ZoneThickness;
import quarterlight.ui.kit.Format;
import quarterlight.ui.kit.UiContext;
import quarterlight.ui.kit.look.Look;
import quarterlight.ui.kit.look.Palette;
import quarterlight.ui.kit.place.Subject;
import quarterlight.ui.kit.visit.OpenVisit;
import quarterlight.units.Thickness;

/** Every zone's spots on one axis, with the car's level and its band: what stands apart is seen at a glance. Event thread only. */
final class StripChart extends JPanel {
    private static final int ASIDE = 36;

    private final transient UiContext parts;
    private final transient OpenVisit visit;

    StripChart(UiContext parts, OpenVisit visit) {
        this.parts = parts;
        this.visit = visit;
        Look.named(this, parts.texts().get("gauge.strip"));
        addMouseListener(new MouseAdapter() {
            @Override
            public void mousePressed(MouseEvent e) {
                int row = (e.getY() - headPx()) / rowPx();
                List<ZoneThickness> rows = rows();
                if (e.getY() >= headPx() && row < rows.size()) {
                    visit.selection().zones(java.util.Set.of(rows.get(row).zone()));
                }
            }
        });
    }

    private List<ZoneThickness> rows() {
        return visit.findings()
                .map(found -> found.thickness().zones().stream()
                        .filter(zone -> zone.readable() && !zone.spots().isEmpty())
                        .toList())
                .orElse(List.of());
    }

    @Override
    public Dimension getPreferredSize() {
        return new Dimension(480, headPx() + rowPx() * rows().size() + 8);
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        super.paintComponent(graphics);
        Optional<Findings> findings = visit.findings();
        if (findings.isEmpty()) {
            graphics.setColor(Look.palette().secondInk());
            graphics.drawString(parts.texts().get("working.out"), 0, headPx());
            return;
        }
        Graphics2D g = (Graphics2D) graphics.create();
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        g.setRenderingHint(RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
        ThicknessRamp ramp = ThicknessRamp.of(
                        List.of(findings.get()), parts.settings().settings().unit())
                .holdingSpots(findings.get());
        StripScale scale = scale(ramp);
        List<ZoneThickness> rows = rows();
        level(g, findings.get(), scale, headPx() + rowPx() * rows.size());
        axis(g, scale, headPx() + rowPx() * rows.size());
        for (int i = 0; i < rows.size(); i++) {
            row(g, rows.get(i), scale, headPx() + rowPx() * i);
        }
        g.dispose();
    }

    private StripScale scale(ThicknessRamp ramp) {
        return new StripScale(ramp, namesPx(), getWidth(), Look.px(ASIDE));
    }

    private void level(Graphics2D g, Findings car, StripScale scale, int bottom) {
        StripScale.Level level = scale.level(car);
        Palette palette = Look.palette();
        g.setColor(Palette.mix(palette.paper(), palette.accent(), 0.16));
        g.fill(new Rectangle2D.Double(
                level.low(), headPx() - 4, Math.max(2, level.high() - level.low()), bottom - headPx() + 8));
        g.setColor(palette.accent());
        g.draw(new Line2D.Double(level.at(), headPx() - 4, level.at(), bottom + 4));
    }

    private void axis(Graphics2D g, StripScale scale, int bottom) {
        Palette palette = Look.palette();
        g.setFont(getFont().deriveFont(getFont().getSize2D() - 2));
        FontMetrics metrics = g.getFontMetrics();
        for (double value : scale.ticks()) {
            int x = (int) scale.tick(value);
            g.setColor(palette.line());
            g.drawLine(x, headPx() - 4, x, bottom);
            String text = scale.label(value);
            g.setColor(palette.secondInk());
            g.drawString(text, x - metrics.stringWidth(text) / 2, headPx() - 8);
        }
        String unit = scale.ramp().unitName();
        g.drawString(unit, namesPx() - metrics.stringWidth(unit), headPx() - 8);
    }

    private void row(Graphics2D g, ZoneThickness zone, StripScale scale, int top) {
        Palette palette = Look.palette();
        boolean chosen = visit.selection().zones().contains(zone.zone());
        if (chosen) {
            g.setColor(Palette.mix(palette.paper(), palette.accent(), 0.12));
            g.fillRect(0, top, getWidth(), rowPx());
        }
        g.setFont(getFont());
        g.setColor(palette.ink());
        FontMetrics metrics = g.getFontMetrics();
        g.drawString(
                fitted(metrics, visit.label(zone.zone()), namesPx()), 0, top + (rowPx() + metrics.getAscent()) / 2 - 2);
        int middle = top + rowPx() / 2;
        g.setColor(palette.line());
        g.drawLine(namesPx() + Look.px(ASIDE), middle, getWidth() - Look.px(ASIDE), middle);
        scale.marks(zone, middle).forEach(mark -> mark(g, mark));
    }

    private static void mark(Graphics2D g, StripScale.Mark mark) {
        Palette palette = Look.palette();
        g.setStroke(new BasicStroke(mark.kind() == MarkKind.MEAN ? 2 : 1.2f));
        if (mark.kind() == MarkKind.INTERVAL) {
            g.setColor(Palette.mix(palette.paper(), palette.accent(), 0.55));
            g.fill(mark.shape());
        } else if (mark.kind() == MarkKind.BEYOND_RANGE) {
            g.setColor(palette.ink());
            g.fill(mark.shape());
        } else {
            g.setColor(mark.kind() == MarkKind.MEAN ? palette.accent() : palette.ink());
            g.draw(mark.shape());
        }
    }

    private static String fitted(FontMetrics metrics, String text, int width) {
        String shown = text;
        while (metrics.stringWidth(shown) > width && shown.length() > 2) {
            shown = shown.substring(0, shown.length() - 2) + "\u2026";
        }
        return shown;
    }

    /** The mean of a zone in words, for the tool tip. */
    @Override
    public String getToolTipText(MouseEvent e) {
        int row = (e.getY() - headPx()) / rowPx();
        List<ZoneThickness> rows = rows();
        if (e.getY() < headPx() || row >= rows.size() || rows.get(row).meanUm().isEmpty()) {
            return null;
        }
        ZoneThickness zone = rows.get(row);
        Optional<String> grounds = visit.glance(new Subject.OfZone(zone.zone()));
        return grounds.isPresent()
                ? grounds.get()
                : visit.label(zone.zone()) + "  "
                        + Format.thicknessWithUnit(
                                new Thickness(zone.meanUm().getAsDouble()),
                                parts.settings().settings().unit());
    }

    private static int rowPx() {
        return Look.px(20);
    }

    private static int headPx() {
        return Look.px(26);
    }

    private static int namesPx() {
        return Look.px(150);
    }
}
