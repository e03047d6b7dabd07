package quarterlight.ui.gauge;

import java.awt.BasicStroke;
import java.awt.Dimension;
import java.awt.FontMetrics;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.swing.JPanel;
import quarterlight.findings.Findings;
import quarterlight.page.ThicknessRamp;
import quarterlight.thickness.ZoneThickness;
import quarterlight.thickness.spot.Spot;
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
    private static final double BAND_SD = 1;

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
        List<ZoneThickness> rows = rows();
        level(g, findings.get(), ramp, headPx() + rowPx() * rows.size());
        axis(g, ramp, headPx() + rowPx() * rows.size());
        for (int i = 0; i < rows.size(); i++) {
            row(g, rows.get(i), ramp, headPx() + rowPx() * i);
        }
        g.dispose();
    }

    private double x(ThicknessRamp ramp, double um) {
        return namesPx() + ASIDE + ramp.share(Math.max(1e-6, um)) * (getWidth() - namesPx() - 2 * ASIDE);
    }

    private void level(Graphics2D g, Findings car, ThicknessRamp ramp, int bottom) {
        double level = car.history().carLevel().um();
        double sd = car.history().carLevelSd().um();
        Palette palette = Look.palette();
        int from = (int) x(ramp, Math.max(1, level - BAND_SD * sd));
        int to = (int) x(ramp, level + BAND_SD * sd);
        g.setColor(Palette.mix(palette.paper(), palette.accent(), 0.16));
        g.fillRect(from, headPx() - 4, Math.max(2, to - from), bottom - headPx() + 8);
        g.setColor(palette.accent());
        g.drawLine((int) x(ramp, level), headPx() - 4, (int) x(ramp, level), bottom + 4);
    }

    private void axis(Graphics2D g, ThicknessRamp ramp, int bottom) {
        Palette palette = Look.palette();
        g.setFont(getFont().deriveFont(getFont().getSize2D() - 2));
        FontMetrics metrics = g.getFontMetrics();
        for (double value : ticks(ramp)) {
            int x = (int) x(ramp, ramp.unit().toUm(value));
            g.setColor(palette.line());
            g.drawLine(x, headPx() - 4, x, bottom);
            String text = Format.number(value, 0);
            g.setColor(palette.secondInk());
            g.drawString(text, x - metrics.stringWidth(text) / 2, headPx() - 8);
        }
        g.drawString(ramp.unitName(), namesPx() - metrics.stringWidth(ramp.unitName()), headPx() - 8);
    }

    private static List<Double> ticks(ThicknessRamp ramp) {
        List<Double> ticks = new ArrayList<>();
        for (int i = 0; i <= ramp.doublings(); i++) {
            ticks.add(ramp.low() * (1 << i));
        }
        return ticks;
    }

    private void row(Graphics2D g, ZoneThickness zone, ThicknessRamp ramp, int top) {
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
        g.drawLine(namesPx() + ASIDE, middle, getWidth() - ASIDE, middle);
        interval(g, zone, ramp, middle);
        int none = 0;
        int over = 0;
        g.setStroke(new BasicStroke(1.2f));
        for (Spot spot : zone.spots()) {
            g.setColor(Palette.mix(palette.paper(), palette.ink(), 0.6));
            switch (spot.kind()) {
                case NO_METAL -> g.draw(new Rectangle2D.Double(namesPx() + 2 + 9.0 * none++, middle - 3.5, 7, 7));
                case OVER -> over(g, getWidth() - 9 - 9 * over++, middle);
                case VALUE ->
                    value(
                            g,
                            x(ramp, spot.um().orElse(0)),
                            middle,
                            isApart(zone, spot.um().orElse(0)));
            }
        }
        g.setColor(palette.ink());
        zone.meanUm().ifPresent(mean -> {
            int x = (int) x(ramp, mean);
            g.drawLine(x, middle - 7, x, middle + 7);
        });
    }

    /** The 95 % interval of the mean as a bar. */
    private void interval(Graphics2D g, ZoneThickness zone, ThicknessRamp ramp, int middle) {
        if (zone.showsInterval()) {
            double from = x(ramp, zone.ci95LowUm().getAsDouble());
            double to = x(ramp, zone.ci95HighUm().getAsDouble());
            g.setColor(Palette.mix(Look.palette().paper(), Look.palette().accent(), 0.55));
            g.fill(new Rectangle2D.Double(from, middle - 1.5, Math.max(1, to - from), 3));
        }
    }

    private static boolean isApart(ZoneThickness zone, double um) {
        return zone.outliers().stream().anyMatch(outlier -> outlier.um() == um);
    }

    /** A spot; crossed if it stands apart from the others. */
    private static void value(Graphics2D g, double x, int middle, boolean apart) {
        g.fill(new Ellipse2D.Double(x - 3, middle - 3, 6, 6));
        if (apart) {
            g.draw(new Line2D.Double(x - 6, middle + 6, x + 6, middle - 6));
        }
    }

    /** An arrow for a spot beyond the range. */
    private static void over(Graphics2D g, int x, int middle) {
        Path2D head = new Path2D.Double();
        head.moveTo(x, middle - 4.5);
        head.lineTo(x + 8, middle);
        head.lineTo(x, middle + 4.5);
        head.closePath();
        g.fill(head);
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
