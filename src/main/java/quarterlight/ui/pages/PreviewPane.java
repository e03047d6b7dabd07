package quarterlight.ui.pages;

import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Rectangle;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.util.Optional;
import javax.swing.JPanel;
import javax.swing.Scrollable;
import javax.swing.SwingUtilities;
import quarterlight.page.print.PagePreview;
import quarterlight.task.LatestWork;
import quarterlight.ui.kit.UiContext;
import quarterlight.ui.kit.look.Look;

/** One page as it will be on paper, as wide as the room. Drawn in the background. Event thread only. */
final class PreviewPane extends JPanel implements Scrollable {
    private static final int EDGE = 16;

    private final transient PagesModel model;
    private final transient LatestWork<Asked, Drawn> work;
    private transient Optional<Asked> asked = Optional.empty();

    private record Asked(MadeFile file, int page, int width) {}

    private record Drawn(Asked asked, int pages, BufferedImage picture) {}

    PreviewPane(UiContext parts, PagesModel model) {
        this.model = model;
        this.work = new LatestWork<>(
                "quarterlight-preview",
                SwingUtilities::invokeLater,
                (one, course) -> draw(one),
                drawn -> model.drawn(drawn.asked().file(), drawn.asked().page(), drawn.pages(), drawn.picture()),
                parts.problems()::failed);
        setFocusable(true);
        Look.named(this, parts.texts().get("pages.preview"));
    }

    /** Asks for the page of the state shown if it is not drawn yet at this width. */
    void refresh() {
        PagesModel.State state = model.state();
        int width = Math.max(200, visibleWidth() - 2 * EDGE);
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
            return new Drawn(one, pages, preview.page(Math.min(one.page(), pages - 1), one.width()));
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
            int x = Math.max(EDGE, (getWidth() - picture.getWidth()) / 2);
            g.drawImage(picture, x, EDGE, null);
            g.setColor(isFocusOwner() ? Look.palette().accent() : Look.palette().line());
            g.drawRect(x - 1, EDGE - 1, picture.getWidth() + 1, picture.getHeight() + 1);
        });
    }

    @Override
    public Dimension getPreferredSize() {
        return model.state()
                .picture()
                .map(picture -> new Dimension(picture.getWidth() + 2 * EDGE, picture.getHeight() + 2 * EDGE))
                .orElse(new Dimension(300, 400));
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
        return visible.height - 24;
    }

    @Override
    public boolean getScrollableTracksViewportWidth() {
        return true;
    }

    @Override
    public boolean getScrollableTracksViewportHeight() {
        return false;
    }
}
