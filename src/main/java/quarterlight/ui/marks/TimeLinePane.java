package quarterlight.ui.marks;

import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import javax.swing.JPanel;
import javax.swing.Scrollable;
import quarterlight.marks.MarksReport;
import quarterlight.marks.TimeLine;
import quarterlight.marks.judge.DateText;
import quarterlight.page.line.TimeLineDrawing;
import quarterlight.ui.kit.UiContext;
import quarterlight.ui.kit.look.Look;

/** The dates of the car on one line of time, as wide as there is room. Event thread only. */
final class TimeLinePane extends JPanel implements Scrollable {
    private static final int EDGE = 16;
    private static final int MIN_WIDTH = 420;

    private final transient UiContext parts;
    private transient Optional<TimeLine> line = Optional.empty();

    TimeLinePane(UiContext parts) {
        this.parts = parts;
        setFocusable(true);
    }

    void show(MarksReport report) {
        line = TimeLine.of(report);
        Look.named(this, parts.texts().get("marks.line.name"));
        getAccessibleContext().setAccessibleDescription(words());
        revalidate();
        repaint();
    }

    private String words() {
        return line.map(shown -> shown.rows().stream()
                        .map(row -> row.part() + ", " + row.text() + ": "
                                + DateText.of(row.shown().get(0)) + ", "
                                + row.verdict().said())
                        .collect(Collectors.joining("; ")))
                .orElse(parts.texts().get("marks.line.none"));
    }

    private Optional<TimeLineDrawing> drawing(int width) {
        return line.map(shown -> new TimeLineDrawing(
                shown, Look.palette().drawing(), parts.measure(), Math.max(MIN_WIDTH, width - 2 * EDGE)));
    }

    @Override
    public Dimension getPreferredSize() {
        int width = Math.max(
                MIN_WIDTH + 2 * EDGE, getParent() == null ? 0 : getParent().getWidth());
        double height = drawing(width).map(TimeLineDrawing::heightPx).orElse(24.0);
        return new Dimension(
                width, (int) height + 2 * EDGE + linePx() * undated().size());
    }

    private List<String> undated() {
        return line.map(TimeLine::undated).orElse(List.of());
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        super.paintComponent(graphics);
        Graphics2D g = (Graphics2D) graphics.create();
        g.setColor(Look.palette().sheet());
        g.fillRect(0, 0, getWidth(), getHeight());
        g.translate(EDGE, EDGE);
        Optional<TimeLineDrawing> drawing = drawing(getWidth());
        drawing.ifPresent(shown -> shown.draw(g));
        g.setFont(getFont());
        g.setColor(Look.palette().secondInk());
        g.setRenderingHint(
                java.awt.RenderingHints.KEY_TEXT_ANTIALIASING, java.awt.RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
        if (drawing.isEmpty()) {
            g.drawString(parts.texts().get("marks.line.none"), 0, linePx());
        }
        int y = drawing.map(TimeLineDrawing::heightPx).orElse(24.0).intValue() + linePx();
        for (String part : undated()) {
            g.drawString(part, 0, y);
            y += linePx();
        }
        g.dispose();
    }

    @Override
    public Dimension getPreferredScrollableViewportSize() {
        return getPreferredSize();
    }

    @Override
    public int getScrollableUnitIncrement(Rectangle visible, int orientation, int direction) {
        return 24;
    }

    @Override
    public int getScrollableBlockIncrement(Rectangle visible, int orientation, int direction) {
        return 240;
    }

    @Override
    public boolean getScrollableTracksViewportWidth() {
        return getParent() != null && getParent().getWidth() >= MIN_WIDTH;
    }

    @Override
    public boolean getScrollableTracksViewportHeight() {
        return getParent() != null && getParent().getHeight() > getPreferredSize().height;
    }

    private static int linePx() {
        return Look.px(18);
    }
}
