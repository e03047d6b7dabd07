package quarterlight.ui.gauge.bars;

import java.awt.Color;
import java.awt.FontMetrics;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import quarterlight.finish.history.ZoneHistory;
import quarterlight.ui.kit.Texts;
import quarterlight.ui.kit.look.Look;
import quarterlight.ui.kit.look.Palette;

/**
 * The histories of a zone's finish as bars from 0 to 100, with the band of the refinish likelihood; below each the same with what is
 * supposed, in outline. Event thread only.
 */
public final class ChanceBars extends Bars {

    private final transient Texts texts;
    private transient Optional<ZoneHistory> kept = Optional.empty();
    private transient Optional<ZoneHistory> ifSo = Optional.empty();

    /** @param low and high: the band, equal to {@code now} where there is none */
    private record Row(String name, double now, double low, double high, Optional<Double> then) {}

    public ChanceBars(Texts texts) {
        super(texts.get("history.chances"));
        this.texts = texts;
    }

    public void show(Optional<ZoneHistory> now, Optional<ZoneHistory> then) {
        kept = now;
        ifSo = then;
        getAccessibleContext().setAccessibleDescription(words());
        revalidate();
        repaint();
    }

    /** What the bars say. */
    String words() {
        return rows().stream().map(row -> row.name() + " " + number(row)).collect(Collectors.joining("; "));
    }

    private List<Row> rows() {
        List<Row> rows = new ArrayList<>();
        kept.ifPresent(zone -> {
            rows.add(new Row(
                    texts.get("history.refinish"),
                    zone.notFactory(),
                    zone.notFactoryLow(),
                    zone.notFactoryHigh(),
                    ifSo.map(ZoneHistory::notFactory)));
            rows.add(plain("history.repair", zone.chances().filler(), ifSo.map(then -> then.chances()
                    .filler())));
            rows.add(plain("history.factory", zone.chances().factory(), ifSo.map(then -> then.chances()
                    .factory())));
            rows.add(plain("history.over", zone.chances().over(), ifSo.map(then -> then.chances()
                    .over())));
            rows.add(plain("history.stripped", zone.chances().stripped(), ifSo.map(then -> then.chances()
                    .stripped())));
        });
        return rows;
    }

    private Row plain(String key, double now, Optional<Double> then) {
        return new Row(texts.get(key), now, now, now, then);
    }

    private static String number(Row row) {
        String band = row.low() == row.high()
                ? ""
                : " (" + ZoneHistory.shown(row.low()) + "\u2013" + ZoneHistory.shown(row.high()) + ")";
        return ZoneHistory.shown(row.now())
                + band
                + row.then().map(then -> " \u2192 " + ZoneHistory.shown(then)).orElse("");
    }

    @Override
    int rowsHeight() {
        return Math.max(1, rowPx() * rows().size());
    }

    @Override
    void draw(Graphics2D g) {
        List<Row> rows = rows();
        for (int i = 0; i < rows.size(); i++) {
            row(g, rows.get(i), rowPx() * i);
        }
    }

    private void row(Graphics2D g, Row row, int top) {
        Palette palette = Look.palette();
        g.setFont(getFont());
        FontMetrics metrics = g.getFontMetrics();
        int base = top + (rowPx() + metrics.getAscent()) / 2 - 2;
        int names = namesPx(metrics);
        int width = Math.max(40, getWidth() - names - numbersPx());
        Color bar = Palette.mix(palette.paper(), palette.ink(), 0.55);
        g.setColor(palette.ink());
        g.drawString(row.name(), 0, base);
        g.setColor(Palette.mix(palette.paper(), palette.line(), 0.6));
        int at = top + (rowPx() - 10) / 2;
        g.fill(new Rectangle2D.Double(names, at, width, 10));
        g.setColor(bar);
        g.fill(new Rectangle2D.Double(names, at, width * row.now(), 10));
        if (row.low() < row.high()) {
            g.setColor(palette.ink());
            double from = names + width * row.low();
            double to = names + width * row.high();
            g.fill(new Rectangle2D.Double(from, at + 12, Math.max(1, to - from), 1.4));
            g.fill(new Rectangle2D.Double(from, at + 10, 1.2, 5));
            g.fill(new Rectangle2D.Double(to - 1.2, at + 10, 1.2, 5));
        }
        row.then().ifPresent(then -> {
            g.setColor(palette.accent());
            g.draw(new Rectangle2D.Double(names, at - 2, Math.max(1, width * then), 13));
        });
        g.setColor(palette.ink());
        String number = number(row);
        g.drawString(number, getWidth() - metrics.stringWidth(number), base);
    }

    private static int rowPx() {
        return Look.px(24);
    }

    /** As wide as the longest name, so that none runs into its bar. */
    private int namesPx(FontMetrics metrics) {
        return rows().stream()
                        .mapToInt(row -> metrics.stringWidth(row.name()))
                        .max()
                        .orElse(0)
                + Look.px(16);
    }

    private static int numbersPx() {
        return Look.px(120);
    }
}
