package quarterlight.ui.kit.view;

import java.awt.BasicStroke;
import java.awt.Cursor;
import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.Point;
import java.awt.Rectangle;
import java.awt.RenderingHints;
import java.awt.event.ComponentAdapter;
import java.awt.event.ComponentEvent;
import java.awt.event.FocusEvent;
import java.awt.event.FocusListener;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.util.List;
import java.util.Optional;
import javax.accessibility.AccessibleRole;
import quarterlight.ui.kit.DeferredTask;
import quarterlight.ui.kit.Texts;
import quarterlight.ui.kit.look.DrawnComponent;
import quarterlight.ui.kit.look.DrawnPart;
import quarterlight.ui.kit.look.Look;
import quarterlight.ui.kit.look.Palette;
import quarterlight.ui.kit.visit.OpenVisit;
import quarterlight.visit.photo.Photo;
import quarterlight.visit.photo.PhotoFile;

/** One photo in its frame, with what is drawn on it; zoomed, moved and turned for viewing only. Event thread only. */
public final class PhotoCanvas extends DrawnComponent {
    private static final double EDGE_PX = 40;
    private static final double NUDGE_PX = 40;
    private static final double SHARE_OF_PART = 0.5;

    /** What is painted above the photo and may take the mouse. */
    public interface Overlay {
        /** @param g one unit is one pixel of the photo; {@code scale} is device pixels per pixel of the photo */
        void paint(Graphics2D g, Photo photo, double scale);

        /** What is drawn on the photo and has a name, with its place in pixels of the photo. */
        default List<DrawnPart> parts(Photo photo) {
            return List.of();
        }

        /** True if the pointer belongs to the overlay now and the photo is not moved by it. */
        boolean takesMouse();
    }

    private final transient Texts texts;
    private final transient LargePictures pictures;
    private transient Optional<Photo> photo = Optional.empty();
    private transient Optional<ViewTransform> transform = Optional.empty();
    private transient Optional<Overlay> overlay = Optional.empty();
    private transient Optional<String> problem = Optional.empty();
    private final transient SeenPart seen = new SeenPart();
    private final transient Loupe loupe = new Loupe();
    private transient Tone tone = Tone.RECORDED;
    private transient Optional<Rectangle2D> near = Optional.empty();
    private final transient DeferredTask picture = new DeferredTask(this::repaint);

    public PhotoCanvas(Texts texts, OpenVisit visit) {
        this.texts = texts;
        this.pictures = new LargePictures(visit.images(), this::pictureCame, why -> {
            problem = Optional.of(why);
            repaint();
        });
        setOpaque(true);
        setFocusable(true);
        setMinimumSize(new Dimension(120, 90));
        setPreferredSize(new Dimension(400, 300));
        Look.named(this, texts.get("photos.large.name"));
        CanvasMouse.install(this);
        CanvasMenu.install(this, texts, visit);
        addComponentListener(new ComponentAdapter() {
            @Override
            public void componentResized(ComponentEvent e) {
                transform = transform.map(t -> t.inFrame(deviceWidth(), deviceHeight()));
                near.ifPresent(PhotoCanvas.this::closeTo);
                repaint();
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

    /** Thumbnails of other photos come by the hundred while the sheet is scrolled. */
    private void pictureCame() {
        if (!pictures.best().equals(seen.source())) {
            repaint();
        }
    }

    public void overlay(Overlay above) {
        overlay = Optional.of(above);
        repaint();
    }

    Optional<Overlay> overlay() {
        return overlay;
    }

    /** Shows a photo, fitted; nothing happens if it is the one that is shown, whose file never changes. A picture is much to paint and comes after what stands beside it. */
    public void show(Optional<Photo> item) {
        boolean same = item.map(Photo::id).equals(photo.map(Photo::id));
        photo = item;
        if (same) {
            return;
        }
        pictures.show(item.map(Photo::file));
        problem = Optional.empty();
        transform = Optional.empty();
        seen.forget();
        loupe.toMiddle();
        near = Optional.empty();
        Look.named(
                this,
                item.map(i -> texts.get("photos.large.named", i.file().name())).orElse(texts.get("photos.large.name")));
        picture.ask();
    }

    /** Shows a frame of the film in hand, or the picture that stands for the film if empty. */
    public void frame(Optional<BufferedImage> frame) {
        pictures.frame(frame);
        repaint();
    }

    public Optional<Photo> photo() {
        return photo;
    }

    private double deviceWidth() {
        return Math.max(1, getWidth() * deviceScale());
    }

    private double deviceHeight() {
        return Math.max(1, getHeight() * deviceScale());
    }

    /** How the photo lies; empty while nothing of it is known. */
    Optional<ViewTransform> transform() {
        if (transform.isEmpty() && photo.isPresent()) {
            transform =
                    photoSize().map(size -> ViewTransform.fit(size.width, size.height, deviceWidth(), deviceHeight()));
        }
        return transform;
    }

    private Optional<Dimension> photoSize() {
        PhotoFile file = photo.orElseThrow().file();
        if (file.width().isPresent()
                && file.height().isPresent()
                && file.width().getAsInt() > 0) {
            return Optional.of(
                    new Dimension(file.width().getAsInt(), file.height().getAsInt()));
        }
        return pictures.best().map(picture -> new Dimension(picture.getWidth(), picture.getHeight()));
    }

    void transform(ViewTransform next) {
        near = Optional.empty();
        transform = Optional.of(next);
        pictures.need(next.scale());
        pointer();
        repaint();
    }

    /** Shows by the pointer what dragging does: draws, moves the photo, or nothing. Asked again when the overlay changed its mind. */
    public void pointer() {
        boolean taken = overlay.map(Overlay::takesMouse).orElse(false);
        boolean moves = transform.map(t -> !t.isFit()).orElse(false);
        setCursor(Cursor.getPredefinedCursor(
                taken ? Cursor.CROSSHAIR_CURSOR : moves ? Cursor.MOVE_CURSOR : Cursor.DEFAULT_CURSOR));
    }

    /** Zooms about the middle. */
    public void zoom(double factor) {
        transform().ifPresent(t -> transform(t.zoomed(factor, t.viewWidth() / 2, t.viewHeight() / 2)));
    }

    /** Shows every pixel as one, or the whole photo again. */
    public void toggleWhole() {
        transform().ifPresent(t -> transform(t.isFit() ? t.at(1, t.viewWidth() / 2, t.viewHeight() / 2) : t.fitted()));
    }

    public void turn(int quarters) {
        transform().ifPresent(t -> transform(t.turned(quarters)));
    }

    /** Lays a loupe on the photo, or takes it off. */
    public void loupe(boolean laid) {
        loupe.lay(laid);
        repaint();
    }

    public boolean isLoupe() {
        return loupe.isOn();
    }

    /** The pointer is here; px of the component. */
    void pointer(Point at) {
        if (loupe.isOn()) {
            loupe.at(at);
            repaint();
        }
    }

    /** Shows the photo in another tone; what is stored stays. */
    public void tone(Tone wanted) {
        tone = wanted;
        repaint();
    }

    public Tone tone() {
        return tone;
    }

    /** Moves the loupe, or the zoomed photo, by a step of the arrow keys. */
    public void nudge(int dx, int dy) {
        if (loupe.isOn()) {
            loupe.move(dx, dy, getWidth(), getHeight());
            repaint();
        } else {
            transform()
                    .ifPresent(t -> transform(t.moved(-dx * NUDGE_PX * deviceScale(), -dy * NUDGE_PX * deviceScale())));
        }
    }

    /** Zooms to a part of the photo, with what lies around it, and stays there when the frame changes. */
    public void closeTo(Rectangle2D part) {
        closerTo(part);
        near = Optional.of(part);
    }

    private void closerTo(Rectangle2D part) {
        transform().ifPresent(t -> {
            double wide = Math.max(1e-3, Math.max(part.getWidth() / t.viewWidth(), part.getHeight() / t.viewHeight()));
            ViewTransform close =
                    t.fitted().at(Math.min(2, SHARE_OF_PART / wide), t.viewWidth() / 2, t.viewHeight() / 2);
            Point2D now = close.toView().transform(new Point2D.Double(part.getCenterX(), part.getCenterY()), null);
            transform(close.moved(t.viewWidth() / 2 - now.getX(), t.viewHeight() / 2 - now.getY()));
        });
    }

    /** Moves a zoomed photo so far that a pixel of it is seen. */
    public void bringIntoView(Point2D pixel) {
        transform().filter(t -> !t.isFit()).ifPresent(t -> {
            Point2D seen = t.toView().transform(pixel, null);
            double dx = away(seen.getX(), t.viewWidth());
            double dy = away(seen.getY(), t.viewHeight());
            if (dx != 0 || dy != 0) {
                transform(t.moved(dx, dy));
            }
        });
        repaint();
    }

    private static double away(double at, double size) {
        double edge = Math.min(EDGE_PX, size / 4);
        return at < edge ? edge - at : at > size - edge ? size - edge - at : 0;
    }

    /** Device pixels per pixel of the photo; empty while nothing is shown. */
    public Optional<Double> zoom() {
        return transform().map(ViewTransform::scale);
    }

    /** The pixel of the photo under a point of the component. */
    public Optional<Point2D> photoPoint(Point2D p) {
        double scale = deviceScale();
        return transform().map(t -> t.toPhoto(p.getX() * scale, p.getY() * scale));
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        Graphics2D g = (Graphics2D) graphics.create();
        try {
            Palette p = Look.palette();
            g.setColor(p.sheet());
            g.fillRect(0, 0, getWidth(), getHeight());
            if (photo.filter(one -> one.file().kind().isShown()).isPresent()) {
                paintPhoto(g, p);
            } else if (photo.isPresent()) {
                MediaIcon.paint(g, p, texts, photo.get().file(), new Rectangle(getWidth(), getHeight()));
            }
            if (isFocusOwner()) {
                g.setColor(p.accent());
                g.setStroke(new BasicStroke(2));
                g.drawRect(1, 1, getWidth() - 2, getHeight() - 2);
            }
        } finally {
            g.dispose();
        }
    }

    private void paintPhoto(Graphics2D g, Palette p) {
        Optional<BufferedImage> picture = pictures.best();
        if (picture.isPresent() && transform().isPresent()) {
            ViewTransform t = transform().get();
            Graphics2D device = (Graphics2D) g.create();
            double scale = deviceScale();
            device.scale(1 / scale, 1 / scale);
            seen.draw(device, picture.get(), t, tone);
            device.transform(t.toView());
            device.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
            overlay.ifPresent(above -> above.paint(device, photo.get(), t.scale()));
            device.dispose();
            if (loupe.isOn()) {
                paintLoupe(g, picture.get(), t);
            }
            if (pictures.isFetchingWhole()) {
                line(g, p, texts.get("photos.large.fetching"));
            }
        } else {
            line(
                    g,
                    p,
                    problem.map(why -> texts.get("photos.large.unreadable", why))
                            .orElse(texts.get("photos.large.fetching")));
        }
    }

    private void paintLoupe(Graphics2D g, BufferedImage picture, ViewTransform t) {
        pictures.need(Loupe.zoom(t.scale()));
        Graphics2D device = (Graphics2D) g.create();
        device.scale(1 / deviceScale(), 1 / deviceScale());
        loupe.paint(device, picture, t, tone, deviceScale());
        device.dispose();
    }

    private void line(Graphics2D g, Palette p, String sentence) {
        g.setRenderingHint(RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
        g.setFont(javax.swing.UIManager.getFont("defaultFont"));
        g.setColor(p.sheet());
        int width = g.getFontMetrics().stringWidth(sentence);
        g.fillRect(8, getHeight() - 32, width + 16, 24);
        g.setColor(p.secondInk());
        g.drawString(sentence, 16, getHeight() - 15);
    }

    @Override
    public void updateUI() {
        seen.forget();
        repaint();
    }

    private List<DrawnPart> drawn() {
        return photo.flatMap(one -> overlay.map(above -> above.parts(one))).orElse(List.of());
    }

    @Override
    protected int parts() {
        return drawn().size();
    }

    @Override
    protected DrawnPart part(int place) {
        DrawnPart part = drawn().get(place);
        Rectangle seenAt = transform()
                .map(t -> t.toView().createTransformedShape(part.bounds()).getBounds())
                .orElse(new Rectangle());
        double scale = deviceScale();
        return new DrawnPart(
                part.name(),
                new Rectangle((int) (seenAt.x / scale), (int) (seenAt.y / scale), (int) (seenAt.width / scale), (int)
                        (seenAt.height / scale)),
                part.selected(),
                part.action(),
                part.choose());
    }

    @Override
    protected AccessibleRole role() {
        return AccessibleRole.CANVAS;
    }
}
