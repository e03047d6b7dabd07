package quarterlight.ui.pages;

import java.awt.Cursor;
import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.Point;
import java.awt.Rectangle;
import java.awt.RenderingHints;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import javax.swing.JPanel;
import javax.swing.Scrollable;
import javax.swing.SwingUtilities;
import javax.swing.Timer;
import quarterlight.car.ZoneId;
import quarterlight.page.print.PageLine;
import quarterlight.page.print.PagePreview;
import quarterlight.task.LatestWork;
import quarterlight.ui.kit.UiContext;
import quarterlight.ui.kit.look.Look;
import quarterlight.ui.kit.place.Subject;
import quarterlight.ui.kit.view.ZoomScroll;
import quarterlight.ui.kit.visit.OpenVisit;

/**
 * One page as it will be on paper, as wide as the room or several times that. A click asks what stands behind the words there, a double click
 * shows it twice as large. Drawn in the background. Event thread only.
 */
final class PreviewPane extends JPanel implements Scrollable {
    private static final int EDGE = 16;
    /** The room that is asked for, whatever the size of the page. */
    private static final Dimension ROOM = new Dimension(300, 400);

    private static final int DOUBLE_CLICK_MS = 280;

    private final transient PagesModel model;
    private final transient LatestWork<Asked, Drawn> work;
    private final transient OpenVisit visit;
    private final Map<String, ZoneId> labels = new HashMap<>();
    private final transient Timer single;
    private transient Point clicked = new Point();
    private transient Optional<Asked> asked = Optional.empty();
    private transient List<PageLine> lines = List.of();
    private double factor = 1;

    private record Asked(MadeFile file, int page, int width) {}

    private record Drawn(Asked asked, int pages, BufferedImage picture, List<PageLine> lines) {}

    PreviewPane(UiContext parts, OpenVisit visit, PagesModel model) {
        this.model = model;
        this.visit = visit;
        visit.zones().forEach(zone -> labels.put(visit.label(zone).toLowerCase(Locale.ROOT), zone));
        this.single = new Timer(DOUBLE_CLICK_MS, e -> evidence().ifPresent(visit::ask));
        single.setRepeats(false);
        this.work = new LatestWork<>(
                "quarterlight-preview",
                SwingUtilities::invokeLater,
                (one, course) -> draw(one),
                this::arrived,
                parts.problems()::failed);
        setFocusable(true);
        setName("pages-preview");
        setCursor(Cursor.getPredefinedCursor(Cursor.HAND_CURSOR));
        setToolTipText(parts.texts().get("pages.preview.tip"));
        addMouseListener(new MouseAdapter() {
            @Override
            public void mouseClicked(MouseEvent e) {
                requestFocusInWindow();
                clicked = e.getPoint();
                if (e.getClickCount() == 1) {
                    single.restart();
                } else {
                    single.stop();
                    scroll().ifPresent(scroll ->
                            scroll.toggle(SwingUtilities.convertPoint(PreviewPane.this, e.getPoint(), scroll)));
                }
            }
        });
        Look.named(this, parts.texts().get("pages.preview"));
    }

    private Optional<ZoomScroll> scroll() {
        return SwingUtilities.getAncestorOfClass(ZoomScroll.class, this) instanceof ZoomScroll scroll
                ? Optional.of(scroll)
                : Optional.empty();
    }

    private void arrived(Drawn drawn) {
        lines = drawn.lines();
        model.drawn(drawn.asked().file(), drawn.asked().page(), drawn.pages(), drawn.picture());
    }

    /** Shows the page so many times as wide as the room. */
    void factor(double times) {
        factor = times;
        refresh();
    }

    /** What stands behind the place that was clicked last. */
    Optional<Subject> evidence() {
        Dimension page = page();
        double x = (clicked.x - left()) / (double) page.width;
        double y = (clicked.y - EDGE) / (double) page.height;
        return new PageEvidence(visit.visit(), labels, visit::zonesOf).at(lines, x, y);
    }

    /** Takes the place under the pointer as the one that was clicked; what stands behind it. */
    Optional<Subject> point() {
        Optional.ofNullable(getMousePosition()).ifPresent(at -> clicked = at);
        return evidence();
    }

    /** Where words stand on the page shown; empty while it is drawn, or if they do not stand there. */
    Optional<Point> placeOf(String words) {
        Dimension page = page();
        return lines.stream()
                .filter(line -> line.text().contains(words))
                .findFirst()
                .map(line -> new Point(
                        left() + (int) ((line.x() + line.width() / 2) * page.width),
                        EDGE + (int) ((line.y() + line.height() / 2) * page.height)));
    }

    private int left() {
        return Math.max(EDGE, (getWidth() - page().width) / 2);
    }

    /** As large as the page is shown: the picture of another width is stretched until its own has come. */
    private Dimension page() {
        int width = wanted();
        return model.state()
                .picture()
                .map(picture -> new Dimension(width, width * picture.getHeight() / Math.max(1, picture.getWidth())))
                .orElse(new Dimension(300 - 2 * EDGE, 400 - 2 * EDGE));
    }

    /** Whether the page stands there at the width that it was drawn at, so that no letter loses a line. */
    boolean isSharp() {
        return model.state()
                .picture()
                .filter(picture -> picture.getWidth() == wanted())
                .isPresent();
    }

    private int wanted() {
        return (int) Math.round(Math.max(200, visibleWidth() - 2 * EDGE) * factor);
    }

    /** Asks for the page of the state shown if it is not drawn yet at this width. */
    void refresh() {
        PagesModel.State state = model.state();
        int width = wanted();
        Optional<Asked> next = state.file().map(file -> new Asked(file, state.page(), width));
        if (!next.equals(asked)) {
            asked = next;
            next.ifPresentOrElse(work::request, work::cancel);
        }
        revalidate();
        repaint();
    }

    private int visibleWidth() {
        return getParent() == null ? getWidth() : getParent().getWidth();
    }

    private static Drawn draw(Asked one) throws IOException {
        try (PagePreview preview = PagePreview.open(one.file().path())) {
            int pages = preview.count();
            int page = Math.min(one.page(), pages - 1);
            return new Drawn(one, pages, preview.page(page, one.width()), preview.lines(page));
        }
    }

    void stop() {
        work.stop();
    }

    @Override
    protected void paintComponent(Graphics g) {
        g.setColor(Look.palette().paper());
        g.fillRect(0, 0, getWidth(), getHeight());
        model.state().picture().ifPresent(picture -> {
            int x = left();
            Dimension page = page();
            ((Graphics2D) g)
                    .setRenderingHint(RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BILINEAR);
            g.drawImage(picture, x, EDGE, page.width, page.height, null);
            g.setColor(isFocusOwner() ? Look.palette().accent() : Look.palette().line());
            g.drawRect(x - 1, EDGE - 1, page.width + 1, page.height + 1);
        });
    }

    @Override
    public Dimension getPreferredSize() {
        Dimension page = page();
        return new Dimension(page.width + 2 * EDGE, page.height + 2 * EDGE);
    }

    @Override
    public Dimension getPreferredScrollableViewportSize() {
        return ROOM;
    }

    @Override
    public int getScrollableUnitIncrement(Rectangle visible, int orientation, int direction) {
        return 24;
    }

    @Override
    public int getScrollableBlockIncrement(Rectangle visible, int orientation, int direction) {
        return visible.height - 24;
    }

    @Override
    public boolean getScrollableTracksViewportWidth() {
        return factor == 1;
    }

    @Override
    public boolean getScrollableTracksViewportHeight() {
        return false;
    }
}
