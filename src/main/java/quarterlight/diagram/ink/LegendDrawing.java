package quarterlight.diagram.ink;

import java.awt.Color;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.function.BiFunction;

/** Draws the legend into its band: the ramp with unit and values, then the keys of hatching and stipple. */
final class LegendDrawing {
    private static final double SIZE = 11;
    private static final double TITLE = 14;
    private static final double BAR_HEIGHT = 14;
    private static final double GAP = 24;
    private static final double SWATCH = 26;

    private final Legend legend;
    private final Rectangle2D band;
    private final SceneColors colors;
    private final TextMeasure measure;
    private final List<Drawn> drawn = new ArrayList<>();

    private LegendDrawing(Legend legend, Rectangle2D band, SceneColors colors, TextMeasure measure) {
        this.legend = legend;
        this.band = band;
        this.colors = colors;
        this.measure = measure;
    }

    static List<Drawn> draw(Legend legend, Rectangle2D band, SceneColors colors, TextMeasure measure) {
        LegendDrawing drawing = new LegendDrawing(legend, band, colors, measure);
        drawing.drawAll();
        return List.copyOf(drawing.drawn);
    }

    private void drawAll() {
        double rampWidth = Math.min(260, Math.max(120, band.getWidth() * 0.26));
        double x = band.getX();
        if (legend.scale().isPresent()) {
            ramp(legend.scale().get(), x, rampWidth);
            x += rampWidth + 2 * GAP;
        }
        x = keys(legend.hatchTitle(), legend.hatches(), x, Texture::hatch);
        keys(legend.stippleTitle(), legend.stipples(), x, Texture::stipple);
    }

    private double titleLine() {
        return band.getY() + TITLE;
    }

    private double barTop() {
        return band.getY() + TITLE + 6;
    }

    private void ramp(ValueScale scale, double x, double width) {
        words(
                scale.title() + ", " + scale.unit() + " (" + Ramp.NAME + ")",
                x,
                titleLine(),
                colors.palette().secondInk());
        int strips = 64;
        for (int i = 0; i < strips; i++) {
            // strips overlap by half a pixel, so that no seam shows
            drawn.add(Drawn.Filled.of(
                    new Rectangle2D.Double(
                            x + width * i / strips, barTop(), width / strips + (i < strips - 1 ? 0.5 : 0), BAR_HEIGHT),
                    colors.ramp().at((i + 0.5) / strips)));
        }
        drawn.add(Drawn.Stroked.of(
                new Rectangle2D.Double(x, barTop(), width, BAR_HEIGHT),
                colors.palette().gap(),
                0.6));
        int last = legend.ticks().size() - 1;
        for (int i = 0; i <= last; i++) {
            String tick = legend.ticks().get(i);
            double at = x + width * i / last;
            double wide = measure.width(tick, SIZE, false);
            double left = i == 0 ? x : i == last ? x + width - wide : at - wide / 2;
            words(tick, left, barTop() + BAR_HEIGHT + SIZE + 2, colors.palette().ink());
        }
    }

    private double keys(
            String title, List<String> texts, double x, BiFunction<Rectangle2D, Integer, java.awt.Shape> texture) {
        if (texts.isEmpty()) {
            return x;
        }
        words(title, x, titleLine(), colors.palette().secondInk());
        Color ink = colors.textureOn(colors.palette().ground());
        double at = x;
        for (int i = 0; i < texts.size(); i++) {
            Rectangle2D swatch = new Rectangle2D.Double(at, barTop(), SWATCH, BAR_HEIGHT);
            java.awt.Shape lines = texture.apply(swatch, i + 1);
            drawn.add(texture(lines, ink, title));
            drawn.add(Drawn.Stroked.of(swatch, colors.palette().gap(), 0.6));
            words(
                    texts.get(i),
                    at,
                    barTop() + BAR_HEIGHT + SIZE + 2,
                    colors.palette().ink());
            at += Math.max(SWATCH, measure.width(texts.get(i), SIZE, false)) + 12;
        }
        return Math.max(at - 12, x + measure.width(title, SIZE, false)) + 2 * GAP;
    }

    private Drawn texture(java.awt.Shape lines, Color ink, String title) {
        return title.equals(legend.stippleTitle())
                ? Drawn.Filled.of(lines, ink)
                : Drawn.Stroked.texture(lines, ink, Texture.LINE);
    }

    private void words(String text, double x, double baseline, Color color) {
        drawn.add(new Drawn.Words(text, x, baseline, SIZE, false, color, measure.width(text, SIZE, false)));
    }
}
