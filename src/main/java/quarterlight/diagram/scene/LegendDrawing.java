package quarterlight.diagram.scene;

import java.awt.Color;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.function.BiFunction;
import quarterlight.diagram.ink.Legend;
import quarterlight.diagram.ink.Ramp;
import quarterlight.diagram.ink.SceneColors;
import quarterlight.diagram.ink.TextMeasure;
import quarterlight.diagram.ink.ValueScale;

/** Draws the legend into its band: the ramp with unit and values, then the keys of hatching and stipple. */
final class LegendDrawing {
    private static final double SIZE = 11;
    private static final double TITLE = 14;
    private static final double BAR_HEIGHT = 14;
    private static final double GAP = 40;
    private static final double KEY_GAP = 12;
    private static final double ROW = 52;
    private static final double SWATCH = 26;

    private final Legend legend;
    private final Rectangle2D band;
    private final SceneColors colors;
    private final TextMeasure measure;
    private final List<Drawn> drawn = new ArrayList<>();
    private double x;
    private double y;

    private LegendDrawing(Legend legend, Rectangle2D band, SceneColors colors, TextMeasure measure) {
        this.legend = legend;
        this.band = band;
        this.colors = colors;
        this.measure = measure;
        x = band.getX();
        y = band.getY();
    }

    static List<Drawn> draw(Legend legend, Rectangle2D band, SceneColors colors, TextMeasure measure) {
        LegendDrawing drawing = new LegendDrawing(legend, band, colors, measure);
        drawing.drawAll();
        return List.copyOf(drawing.drawn);
    }

    private void drawAll() {
        legend.scale().ifPresent(this::ramp);
        Color ink = colors.textureOn(colors.palette().ground());
        keys(
                legend.hatchTitle(),
                legend.hatches(),
                (swatch, density) -> Drawn.Stroked.texture(Texture.hatch(swatch, density), ink, Texture.LINE));
        keys(
                legend.stippleTitle(),
                legend.stipples(),
                (swatch, density) -> new Drawn.Dots(Texture.stipple(swatch, density), ink));
    }

    /** Takes room for a block and gives its left edge; begins a second row where the first is full. */
    private double take(double width) {
        if (x > band.getX() && x + width > band.getMaxX()) {
            x = band.getX();
            y += ROW;
        }
        double left = x;
        x += width + GAP;
        return left;
    }

    private double titleLine() {
        return y + TITLE;
    }

    private double barTop() {
        return y + TITLE + 6;
    }

    private void ramp(ValueScale scale) {
        double width = Math.min(260, Math.max(120, band.getWidth() * 0.26));
        String title = scale.title() + ", " + scale.unit() + " (" + Ramp.NAME + ")";
        double left = take(Math.max(width, measure.width(title, SIZE, false)));
        words(title, left, titleLine(), colors.palette().secondInk());
        int strips = 64;
        for (int i = 0; i < strips; i++) {
            // strips overlap by half a pixel, so that no seam shows
            drawn.add(Drawn.Filled.of(
                    new Rectangle2D.Double(
                            left + width * i / strips,
                            barTop(),
                            width / strips + (i < strips - 1 ? 0.5 : 0),
                            BAR_HEIGHT),
                    colors.ramp().at((i + 0.5) / strips)));
        }
        drawn.add(Drawn.Stroked.of(
                new Rectangle2D.Double(left, barTop(), width, BAR_HEIGHT),
                colors.palette().gap(),
                0.6));
        int last = legend.ticks().size() - 1;
        for (int i = 0; i <= last; i++) {
            String tick = legend.ticks().get(i);
            double at = left + width * i / last;
            double wide = measure.width(tick, SIZE, false);
            double start = i == 0 ? left : i == last ? left + width - wide : at - wide / 2;
            words(
                    tick,
                    start,
                    barTop() + BAR_HEIGHT + SIZE + 2,
                    colors.palette().ink());
        }
    }

    private void keys(String title, List<String> texts, BiFunction<Rectangle2D, Integer, Drawn> texture) {
        if (texts.isEmpty()) {
            return;
        }
        double width = -KEY_GAP;
        for (String text : texts) {
            width += keyWidth(text) + KEY_GAP;
        }
        double at = take(Math.max(width, measure.width(title, SIZE, false)));
        words(title, at, titleLine(), colors.palette().secondInk());
        for (int i = 0; i < texts.size(); i++) {
            Rectangle2D swatch = new Rectangle2D.Double(at, barTop(), SWATCH, BAR_HEIGHT);
            drawn.add(texture.apply(swatch, i + 1));
            drawn.add(Drawn.Stroked.of(swatch, colors.palette().gap(), 0.6));
            words(
                    texts.get(i),
                    at,
                    barTop() + BAR_HEIGHT + SIZE + 2,
                    colors.palette().ink());
            at += keyWidth(texts.get(i)) + KEY_GAP;
        }
    }

    private double keyWidth(String text) {
        return Math.max(SWATCH, measure.width(text, SIZE, false));
    }

    private void words(String text, double x, double baseline, Color color) {
        drawn.add(new Drawn.Words(text, x, baseline, SIZE, false, color, measure.width(text, SIZE, false)));
    }
}
