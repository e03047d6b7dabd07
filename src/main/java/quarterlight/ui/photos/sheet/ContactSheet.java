package quarterlight.ui.photos.sheet;

import java.awt.BasicStroke;
import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.awt.RenderingHints;
import java.awt.event.FocusEvent;
import java.awt.event.FocusListener;
import java.awt.event.MouseEvent;
import java.time.Duration;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import javax.accessibility.AccessibleRole;
import javax.swing.Scrollable;
import javax.swing.SwingUtilities;
import javax.swing.ToolTipManager;
import quarterlight.ui.kit.Format;
import quarterlight.ui.kit.Texts;
import quarterlight.ui.kit.look.DrawnComponent;
import quarterlight.ui.kit.look.DrawnPart;
import quarterlight.ui.kit.look.Look;
import quarterlight.ui.kit.look.Palette;
import quarterlight.ui.kit.visit.Selection;
import quarterlight.ui.photos.list.PhotoItem;
import quarterlight.ui.photos.list.PhotoList;
import quarterlight.ui.photos.list.PhotosModel;
import quarterlight.visit.BuyerRelease;
import quarterlight.visit.photo.PhotoId;
import quarterlight.visit.pin.Recorded;

/** The photos of a visit as one sheet, painted cell by cell where it is seen; there is no component for a photo. Event thread only. */
public final class ContactSheet extends DrawnComponent implements Scrollable {
    private static final int USUAL_CELL = 136;

    private transient Runnable large = () -> {};
    private final transient PhotosModel model;
    private final transient Texts texts;
    private final transient CellPictures pictures;
    private final transient CellPainter painter;
    private transient PhotoList list;
    private transient SheetGeometry geometry;
    private transient Optional<Rectangle> band = Optional.empty();
    private transient List<Recorded<BuyerRelease>> released = List.of();
    private transient Set<PhotoId> selectedBefore = Set.of();
    private transient Optional<PhotoId> hoveredBefore = Optional.empty();
    private int cell = USUAL_CELL;
    private int laidOutWidth;
    private boolean following;

    public ContactSheet(Texts texts, PhotosModel model) {
        this.model = model;
        this.texts = texts;
        this.list = model.shown();
        this.geometry = SheetGeometry.of(list.items(), 600, cell);
        this.pictures = new CellPictures(model.visit().images(), this::repaint);
        this.painter = new CellPainter(texts, model.visit(), pictures);
        setOpaque(true);
        setFocusable(true);
        setFont(javax.swing.UIManager.getFont("defaultFont"));
        setName("photos-sheet");
        Look.named(this, texts.get("photos.sheet.name"));
        ToolTipManager.sharedInstance().registerComponent(this);
        SheetGestures.install(this, model);
        FocusListener focus = new FocusListener() {
            @Override
            public void focusGained(FocusEvent e) {
                repaint();
            }

            @Override
            public void focusLost(FocusEvent e) {
                repaint();
            }
        };
        addFocusListener(focus);
        model.onList(this::listChanged);
        model.visit().onVisit(this::visitChanged);
        model.onHints(this::repaint);
        model.visit().images().onReady(this::repaint);
        selection().onSelected(this::selectionChanged);
        selection().onHovered(this::hoverChanged);
    }

    Selection selection() {
        return model.visit().selection();
    }

    PhotoList photos() {
        return list;
    }

    SheetGeometry geometry() {
        return geometry;
    }

    /** About how wide a cell is, px. */
    public int cell() {
        return cell;
    }

    public void cell(int wanted) {
        if (wanted != cell) {
            cell = wanted;
            following = true;
            layOut();
        }
    }

    /** Ends the work in the background. */
    public void stop() {
        pictures.stop();
    }

    /** A new width makes a new layout; the photo in hand stays in view. */
    @Override
    public void setBounds(int x, int y, int width, int height) {
        super.setBounds(x, y, width, height);
        if (width != laidOutWidth && width > 0) {
            laidOutWidth = width;
            following = true;
            layOut();
        }
        if (following && height >= geometry.height()) {
            following = false;
            SwingUtilities.invokeLater(() -> inHand().ifPresent(this::reveal));
        }
    }

    /** Only what tells something else is painted anew, and everything if photos moved. */
    private void listChanged() {
        PhotoList before = list;
        list = model.shown();
        list.changes(before).ifPresentOrElse(places -> places.forEach(this::repaintCell), this::layOut);
    }

    /** What is released is told in the cells, and is no part of the items. */
    private void visitChanged() {
        List<Recorded<BuyerRelease>> now = model.visit().visit().released();
        if (!now.equals(released)) {
            released = now;
            repaint();
        }
    }

    private void layOut() {
        geometry = SheetGeometry.of(list.items(), Math.max(80, getWidth()), cell);
        revalidate();
        repaint();
    }

    /** Place of the photo in hand on the sheet. */
    OptionalInt inHand() {
        return selection().photo().map(list::placeOf).orElse(OptionalInt.empty());
    }

    private void selectionChanged() {
        Set<PhotoId> now = new HashSet<>(selection().photos());
        Set<PhotoId> changed = new HashSet<>(now);
        changed.addAll(selectedBefore);
        changed.forEach(this::repaintCell);
        selectedBefore = now;
        inHand().ifPresent(place -> {
            reveal(place);
            tellInHand(place);
        });
    }

    private void hoverChanged() {
        Optional<PhotoId> now = selection().hoveredPhoto();
        hoveredBefore.ifPresent(this::repaintCell);
        now.ifPresent(this::repaintCell);
        hoveredBefore = now;
    }

    private void repaintCell(PhotoId photo) {
        list.placeOf(photo).ifPresent(this::repaintCell);
    }

    private void repaintCell(int place) {
        Rectangle r = geometry.cell(place);
        repaint(r.x - 6, r.y - 6, r.width + 12, r.height + 12);
    }

    /** Scrolls so that a photo is seen whole, with the pause above it. */
    void reveal(int place) {
        if (place < geometry.size()) {
            Rectangle r = geometry.cell(place);
            scrollRectToVisible(new Rectangle(0, r.y - SheetGeometry.pause(), 1, r.height + SheetGeometry.pause() + 8));
        }
    }

    /** What a double click on a photo does. */
    public void onLarge(Runnable shown) {
        large = shown;
    }

    void large() {
        large.run();
    }

    /** Where a menu for the photo in hand stands. */
    public int anchorX() {
        return inHand().isPresent() ? geometry.cell(inHand().getAsInt()).x + 12 : 12;
    }

    public int anchorY() {
        return inHand().isPresent() ? geometry.cell(inHand().getAsInt()).y + 24 : getVisibleRect().y + 24;
    }

    void band(Optional<Rectangle> box) {
        band = box;
        repaint();
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        Graphics2D g = (Graphics2D) graphics.create();
        try {
            g.setRenderingHint(RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
            g.setRenderingHint(RenderingHints.KEY_FRACTIONALMETRICS, RenderingHints.VALUE_FRACTIONALMETRICS_ON);
            Rectangle clip = g.getClipBounds();
            Palette p = Look.palette();
            g.setColor(p.paper());
            g.fill(clip);
            Set<PhotoId> selected = new HashSet<>(selection().photos());
            for (SheetGeometry.Row row : geometry.rows(clip.y, clip.y + clip.height)) {
                row.pause().ifPresent(pause -> pause(g, p, pause, row));
                for (int place = row.first(); place < row.first() + row.count(); place++) {
                    Rectangle r = geometry.cell(place);
                    if (r.x - 6 < clip.x + clip.width && r.x + r.width + 6 > clip.x) {
                        paint(g, place, r, selected);
                    }
                }
            }
            band.ifPresent(box -> {
                g.setColor(p.accent());
                g.setStroke(new BasicStroke(1));
                g.draw(box);
            });
        } finally {
            g.dispose();
        }
    }

    private void paint(Graphics2D g, int place, Rectangle r, Set<PhotoId> selected) {
        PhotoItem item = list.items().get(place);
        painter.paint(
                g,
                item,
                model.hints(),
                r,
                geometry.pictureHeight(),
                new CellPainter.State(
                        selected.contains(item.id()),
                        selection().photo().equals(Optional.of(item.id())),
                        selection().hoveredPhoto().equals(Optional.of(item.id())) || isHoveredZone(item),
                        isFocusOwner()));
    }

    /** Photos pinned to the zone under the pointer light up with it. */
    private boolean isHoveredZone(PhotoItem item) {
        return selection().hoveredPhoto().isEmpty()
                && selection()
                        .hoveredZone()
                        .map(zone -> item.allPins().anyMatch(pin -> pin.zone().equals(zone)))
                        .orElse(false);
    }

    private void pause(Graphics2D g, Palette p, SheetGeometry.Pause pause, SheetGeometry.Row row) {
        PhotoItem first = list.items().get(row.first());
        String time = first.local().map(Format::clock).orElse(texts.get("photos.pause.no-time"));
        String length = pause.length()
                .map(gap -> texts.get("photos.pause.after", words(gap)))
                .orElse(first.local().map(Format::day).orElse(""));
        g.setFont(getFont());
        int base = pause.top() + Look.px(19);
        g.setColor(p.ink());
        g.drawString(time, SheetGeometry.GAP, base);
        int x = SheetGeometry.GAP + g.getFontMetrics().stringWidth(time) + 8;
        g.setColor(p.secondInk());
        g.drawString(length, x, base);
        x += g.getFontMetrics().stringWidth(length) + 8;
        g.setColor(p.line());
        g.drawLine(x, base - 4, getWidth() - SheetGeometry.GAP, base - 4);
    }

    private String words(Duration gap) {
        long s = gap.toSeconds();
        if (s < 3600) {
            return texts.get("photos.pause.minutes", s / 60, String.format("%02d", s % 60));
        }
        return s < 86_400
                ? texts.get("photos.pause.hours", s / 3600, String.format("%02d", s / 60 % 60))
                : texts.get("photos.pause.days", s / 86_400);
    }

    /** Another size of text makes another layout. */
    @Override
    public void updateUI() {
        super.updateUI();
        setFont(javax.swing.UIManager.getFont("defaultFont"));
        if (model != null) {
            layOut();
        }
    }

    @Override
    public String getToolTipText(MouseEvent e) {
        OptionalInt place = geometry.at(e.getPoint());
        return place.isPresent()
                ? HintWords.of(texts, model.hints(), list.items().get(place.getAsInt()))
                : null;
    }

    @Override
    public Dimension getPreferredSize() {
        return new Dimension(320, geometry.height());
    }

    @Override
    public Dimension getPreferredScrollableViewportSize() {
        return new Dimension(420, 400);
    }

    @Override
    public int getScrollableUnitIncrement(Rectangle visible, int orientation, int direction) {
        return 48;
    }

    @Override
    public int getScrollableBlockIncrement(Rectangle visible, int orientation, int direction) {
        return Math.max(48, visible.height - geometry.rowHeight());
    }

    @Override
    public boolean getScrollableTracksViewportWidth() {
        return true;
    }

    @Override
    public boolean getScrollableTracksViewportHeight() {
        return getParent() != null && getParent().getHeight() > geometry.height();
    }

    @Override
    protected int parts() {
        return Math.min(list.size(), geometry.size());
    }

    @Override
    protected DrawnPart part(int place) {
        PhotoItem item = list.items().get(place);
        return new DrawnPart(
                HintWords.heard(texts, model.visit()::label, model.hints(), item),
                geometry.cell(place),
                selection().photos().contains(item.id()),
                texts.get("photos.part.take"),
                () -> selection().photos(List.of(item.id())));
    }

    @Override
    protected AccessibleRole role() {
        return AccessibleRole.LIST;
    }
}
