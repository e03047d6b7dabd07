package quarterlight.ui.diagram;

import java.awt.BasicStroke;
import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.awt.RenderingHints;
import java.awt.event.ComponentAdapter;
import java.awt.event.ComponentEvent;
import java.awt.event.FocusEvent;
import java.awt.event.FocusListener;
import java.awt.event.MouseEvent;
import java.awt.geom.AffineTransform;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Point2D;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiConsumer;
import javax.accessibility.AccessibleRole;
import javax.swing.SwingUtilities;
import quarterlight.capture.CorrectedTimes;
import quarterlight.car.View;
import quarterlight.car.ZoneId;
import quarterlight.diagram.ink.DiagramInk;
import quarterlight.diagram.ink.Highlight;
import quarterlight.diagram.ink.InkPalette;
import quarterlight.diagram.scene.DiagramScene;
import quarterlight.page.PinKey;
import quarterlight.task.LatestWork;
import quarterlight.ui.kit.Listeners;
import quarterlight.ui.kit.Texts;
import quarterlight.ui.kit.UiContext;
import quarterlight.ui.kit.look.DrawnComponent;
import quarterlight.ui.kit.look.DrawnPart;
import quarterlight.ui.kit.look.Look;
import quarterlight.ui.kit.look.Palette;
import quarterlight.ui.kit.place.Subject;
import quarterlight.ui.kit.visit.OpenVisit;
import quarterlight.visit.VisitRecord;
import quarterlight.visit.photo.PhotoId;
import quarterlight.visit.pin.ViewPoint;

/**
 * The body diagram in the middle of the window: values, pins, selection. The scene is laid out and painted in the background; the event
 * thread copies the picture and paints what the pointer and the selection mark. Event thread only.
 */
public final class DiagramPanel extends DrawnComponent {
    private static final double CARRIED_PX = 12;
    private static final double SAME_SHAPE = 0.03;

    private final transient UiContext parts;
    private final transient OpenVisit visit;
    private final transient ZoneWords words;
    private final transient SceneWork work;
    private transient BiConsumer<ZoneId, ViewPoint> chosen = (zone, point) -> {};
    private final transient List<Listeners.Registration> registrations = new ArrayList<>();
    private final transient LatestWork<PinWish, FreshPins> pinWork;
    private transient Set<PhotoId> ringed = Set.of();
    private final transient PinLayer pinLayer = new PinLayer();
    private final Set<Layer> layers = EnumSet.of(Layer.THICKNESS, Layer.LIKELIHOOD, Layer.RUST);
    private transient Optional<View> view = Optional.empty();
    private transient Optional<SceneWork.Painted> painted = Optional.empty();
    private transient Optional<FreshPins> numbered = Optional.empty();
    private transient PinKey pins = PinKey.NONE;
    private transient Optional<OpenVisit.Drawing> drawn = Optional.empty();
    private transient Highlight shown = Highlight.NONE;
    private transient Optional<Point2D> carried = Optional.empty();

    public DiagramPanel(UiContext parts, OpenVisit visit) {
        this.parts = parts;
        this.visit = visit;
        this.words = new ZoneWords(parts, visit, this::layers);
        this.work = new SceneWork(parts, this::arrived);
        this.pinWork = new LatestWork<>(
                "quarterlight-pins",
                SwingUtilities::invokeLater,
                (wish, course) -> number(wish),
                this::pinsArrived,
                parts.problems()::failed);
        setName("diagram");
        setOpaque(true);
        setFocusable(true);
        setPreferredSize(new Dimension(560, 640));
        setMinimumSize(new Dimension(260, 200));
        Look.named(this, parts.texts().get("diagram.name"));
        addComponentListener(new ComponentAdapter() {
            @Override
            public void componentResized(ComponentEvent e) {
                redraw();
            }
        });
        addFocusListener(new FocusListener() {
            @Override
            public void focusGained(FocusEvent e) {
                repaint();
            }

            @Override
            public void focusLost(FocusEvent e) {
                repaint();
            }
        });
    }

    @Override
    public void addNotify() {
        super.addNotify();
        registrations.add(visit.onVisit(this::visitChanged));
        registrations.add(visit.onUnderWay(this::showPins));
        visit.afterPainting(this::askForPins);
        registrations.add(visit.onMeasured(this::redraw));
        registrations.add(visit.onFindings(this::redraw));
        registrations.add(visit.selection().onSelected(this::selectionChanged));
        registrations.add(visit.selection().onHovered(this::mark));
        redraw();
    }

    @Override
    public void removeNotify() {
        registrations.forEach(Listeners.Registration::remove);
        registrations.clear();
        super.removeNotify();
    }

    @Override
    public void updateUI() {
        super.updateUI();
        if (work != null) {
            redraw();
        }
    }

    /** Ends the work in the background; the panel is not used after that. */
    public void stop() {
        work.stop();
        pinWork.stop();
    }

    public Set<Layer> layers() {
        return EnumSet.copyOf(layers);
    }

    public void show(Layer layer, boolean on) {
        if ((on ? layers.add(layer) : layers.remove(layer)) && layer != Layer.PINS) {
            redraw();
        }
        repaint();
    }

    /** The view shown large; empty for all eight. */
    public Optional<View> view() {
        return view;
    }

    public void show(Optional<View> one) {
        if (!view.equals(one)) {
            view = one;
            redraw();
        }
    }

    /** The pins as numbered on the diagram, with those that are being stored. */
    public PinKey pins() {
        return pins;
    }

    /** The scene as shown last; empty before the first is painted. */
    public Optional<DiagramScene> scene() {
        return painted.map(SceneWork.Painted::scene);
    }

    Texts texts() {
        return parts.texts();
    }

    OpenVisit visit() {
        return visit;
    }

    /** What the pins are numbered by. */
    private record PinWish(VisitRecord visit, CorrectedTimes times, OpenVisit.Drawing drawing) {}

    private void askForPins() {
        pinWork.request(new PinWish(visit.visit(), visit.times(), visit.drawing()));
    }

    private void visitChanged() {
        showPins();
        visit.afterPainting(this::askForPins);
        if (!drawn.equals(Optional.of(visit.drawing()))) {
            redraw();
        }
    }

    private FreshPins number(PinWish wish) {
        OpenVisit.Drawing drawing = wish.drawing();
        // a pin made next asks for a place on the event thread
        drawing.places().compute();
        return new FreshPins(
                PinKey.of(wish.visit(), wish.times(), parts.catalog(), drawing.diagram(), drawing.places()),
                wish.visit());
    }

    private void pinsArrived(FreshPins fresh) {
        numbered = Optional.of(fresh);
        showPins();
    }

    private void showPins() {
        PinKey fresh = numbered.map(known -> known.with(visit, parts.catalog())).orElse(PinKey.NONE);
        if (fresh.entries().equals(pins.entries())) {
            return;
        }
        pins = fresh;
        boolean wasOpen = pinLayer.isOpen();
        List<Rectangle> changed = pinLayer.pins(fresh.entries());
        openPile();
        if (wasOpen || pinLayer.isOpen()) {
            repaint();
        } else {
            changed.forEach(this::repaint);
        }
    }

    PinLayer pinLayer() {
        return pinLayer;
    }

    private void openPile() {
        pinLayer.openZone(visit.selection().zone().map(visit::label));
    }

    /** Asks for a new picture; the old one stays until it is there. */
    public void redraw() {
        if (getWidth() == 0 || getHeight() == 0) {
            visit.measured().ifPresent(known -> visit.valuesStand());
            return;
        }
        drawn = Optional.of(visit.drawing());
        Map<ZoneId, String> names = new HashMap<>();
        visit.zones().forEach(zone -> names.put(zone, visit.label(zone)));
        DiagramInk ink = LayerInk.of(
                parts.texts(),
                visit.measured(),
                visit.findings(),
                visit.coverage(),
                layers,
                parts.settings().settings().unit(),
                List.of(),
                names);
        SceneWork.Wish wish =
                new SceneWork.Wish(visit.drawing(), ink, inkPalette(), getWidth(), getHeight(), deviceScale(), view);
        visit.afterPainting(() -> work.request(wish));
    }

    private static InkPalette inkPalette() {
        return Look.palette().drawing();
    }

    private void arrived(SceneWork.Painted fresh) {
        painted = Optional.of(fresh);
        pinLayer.scene(fresh.scene());
        openPile();
        shown = Marked.zones(visit.selection());
        repaint();
        visit.measured().ifPresent(known -> visit.valuesStand());
    }

    private void mark() {
        Highlight next = Marked.zones(visit.selection());
        painted.ifPresent(p -> p.painter().dirty(shown, next).forEach(this::repaint));
        shown = next;
        Set<PhotoId> fresh = Marked.photos(visit.selection());
        if (layers.contains(Layer.PINS) && !fresh.equals(ringed)) {
            pinLayer.around(ringed).forEach(this::repaint);
            pinLayer.around(fresh).forEach(this::repaint);
            ringed = fresh;
        }
    }

    private void selectionChanged() {
        boolean wasOpen = pinLayer.isOpen();
        openPile();
        mark();
        if (wasOpen || pinLayer.isOpen()) {
            repaint();
        }
    }

    /** Where a pin that is dragged along is drawn; empty when none is. */
    void carry(Optional<Point2D> at) {
        carried.ifPresent(point -> repaint(Marked.around(point, (int) CARRIED_PX + 3)));
        carried = at;
        carried.ifPresent(point -> repaint(Marked.around(point, (int) CARRIED_PX + 3)));
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        Graphics2D g = (Graphics2D) graphics.create();
        try {
            g.setColor(inkPalette().ground());
            g.fillRect(0, 0, getWidth(), getHeight());
            painted.ifPresent(p -> paint(g, p));
            g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
            g.setColor(Look.palette().accent());
            g.setStroke(new BasicStroke(2));
            if (layers.contains(Layer.PINS)) {
                pinLayer.paint(g, Marked.photos(visit.selection()));
                g.setColor(Palette.mix(Look.palette().accent(), Look.palette().ink(), 0.3));
            }
            carried.ifPresent(center -> g.fill(disc(center, 9)));
            if (isFocusOwner()) {
                g.setStroke(new BasicStroke(2));
                g.drawRect(1, 1, getWidth() - 3, getHeight() - 3);
            }
        } finally {
            g.dispose();
        }
    }

    private static Ellipse2D disc(Point2D center, double r) {
        return new Ellipse2D.Double(center.getX() - r, center.getY() - r, 2 * r, 2 * r);
    }

    private void paint(Graphics2D g, SceneWork.Painted p) {
        AffineTransform before = g.getTransform();
        double scale = before.getScaleX();
        g.scale(1 / scale, 1 / scale);
        int width = (int) Math.ceil(getWidth() * scale);
        int height = (int) Math.ceil(getHeight() * scale);
        double wider = (double) width
                * p.picture().getHeight()
                / ((double) height * p.picture().getWidth());
        if (Math.abs(wider - 1) < SAME_SHAPE) {
            // zoomed: stretched until the drawing of this size has come
            g.drawImage(p.picture(), 0, 0, width, height, null);
        } else {
            g.drawImage(p.picture(), 0, 0, null);
        }
        g.setTransform(before);
        p.painter().paintHighlight(g, shown);
    }

    @Override
    public String getToolTipText(MouseEvent e) {
        return scene().flatMap(s -> s.hit(e.getX(), e.getY()))
                .flatMap(DiagramScene.Hit::zone)
                .flatMap(zone -> visit.glance(new Subject.OfZone(zone)))
                .orElse(null);
    }

    /** What a zone does that is chosen by those who hear the window. */
    void onChosen(BiConsumer<ZoneId, ViewPoint> does) {
        chosen = does;
    }

    /** Zones in the views in which they stand. */
    List<ZoneSteps.Place> places() {
        return scene().map(scene -> ZoneSteps.places(scene, visit.drawing().places()))
                .orElse(List.of());
    }

    /** Tells those who hear the window which zone the arrow keys have come to. */
    void tell(ZoneSteps.Place place) {
        tellInHand(places().indexOf(place));
    }

    @Override
    protected int parts() {
        return places().size();
    }

    @Override
    protected DrawnPart part(int at) {
        ZoneSteps.Place place = places().get(at);
        return new DrawnPart(
                parts.texts()
                        .get(
                                "diagram.part",
                                words.of(place.zone()),
                                parts.texts().get("view." + place.view().word())),
                place.around(),
                visit.selection().zones().contains(place.zone()),
                parts.texts().get("diagram.part.choose"),
                () -> chosen.accept(place.zone(), place.point()));
    }

    @Override
    protected AccessibleRole role() {
        return AccessibleRole.CANVAS;
    }
}
