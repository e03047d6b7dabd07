package quarterlight.ui.gauge.bars;

import java.awt.FontMetrics;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.stream.Collectors;
import quarterlight.finish.history.EvidenceStrength;
import quarterlight.finish.history.FinishReason;
import quarterlight.page.report.text.LikelihoodTexts;
import quarterlight.ui.kit.Format;
import quarterlight.ui.kit.Texts;
import quarterlight.ui.kit.look.Look;
import quarterlight.ui.kit.look.Palette;

/**
 * What moved a zone's likelihood, heaviest first: bars to the right speak for refinishing or filler, to the left against it. The
 * length is the base-10 logarithm of how far the odds move without that evidence, cut at three. Event thread only.
 */
public final class ReasonBars extends Bars {
    private static final double MAX_LOG = 3;
    private static final int GAP = 16;

    private final transient Texts texts;
    private transient List<FinishReason> reasons = List.of();

    public ReasonBars(Texts texts) {
        super(texts.get("history.reasons"));
        this.texts = texts;
    }

    public void show(List<FinishReason> fresh) {
        reasons = fresh;
        getAccessibleContext()
                .setAccessibleDescription(
                        reasons.stream().map(ReasonBars::words).collect(Collectors.joining("; ")));
        revalidate();
        repaint();
    }

    private static String words(FinishReason reason) {
        return LikelihoodTexts.what(reason) + ": " + strength(reason.log10Refinish());
    }

    private static String strength(double log10) {
        return EvidenceStrength.ofLog10(log10).phrase();
    }

    @Override
    int rowsHeight() {
        return headPx() + rowPx() * Math.max(1, reasons.size());
    }

    @Override
    void draw(Graphics2D g) {
        int names = Math.min(Look.px(290), getWidth() * 2 / 5);
        int column = (getWidth() - names - 2 * GAP) / 2;
        Palette palette = Look.palette();
        g.setFont(getFont().deriveFont(getFont().getSize2D() - 2));
        g.setColor(palette.secondInk());
        FontMetrics small = g.getFontMetrics();
        int base = small.getAscent();
        g.drawString(fitted(small, texts.get("history.for-refinish"), column), names + GAP, base);
        g.drawString(fitted(small, texts.get("history.for-filler"), column), names + 2 * GAP + column, base);
        g.setFont(getFont());
        for (int i = 0; i < reasons.size(); i++) {
            int top = headPx() + rowPx() * i;
            FontMetrics metrics = g.getFontMetrics();
            g.setColor(palette.ink());
            g.drawString(
                    fitted(metrics, LikelihoodTexts.what(reasons.get(i)), names),
                    0,
                    top + (rowPx() + metrics.getAscent()) / 2 - 2);
            bar(g, reasons.get(i).log10Refinish(), names + GAP, top, column);
            bar(g, reasons.get(i).log10Repair(), names + 2 * GAP + column, top, column);
        }
    }

    private static void bar(Graphics2D g, double log10, int left, int top, int width) {
        Palette palette = Look.palette();
        double space = width - Look.px(44);
        double zero = left + space / 2;
        double length = Math.min(MAX_LOG, Math.abs(log10)) / MAX_LOG * space / 2;
        g.setColor(palette.line());
        g.fill(new Rectangle2D.Double(zero - 0.5, top, 1, rowPx()));
        g.setColor(log10 > 0 ? palette.accent() : Palette.mix(palette.paper(), palette.ink(), 0.55));
        g.fill(new Rectangle2D.Double(log10 > 0 ? zero : zero - length, top + (rowPx() - 10) / 2.0, length, 10));
        FontMetrics metrics = g.getFontMetrics();
        String number = (log10 > 0.05 ? "+" : "") + Format.number(log10, 1);
        g.setColor(palette.ink());
        g.drawString(number, left + width - metrics.stringWidth(number), top + (rowPx() + metrics.getAscent()) / 2 - 2);
    }

    static String fitted(FontMetrics metrics, String text, int width) {
        String shown = text;
        while (metrics.stringWidth(shown) > width && shown.length() > 2) {
            shown = shown.substring(0, shown.length() - 2) + "\u2026";
        }
        return shown;
    }

    private static int rowPx() {
        return Look.px(24);
    }

    private static int headPx() {
        return Look.px(20);
    }
}
