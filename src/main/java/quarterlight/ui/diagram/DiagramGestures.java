package quarterlight.ui.diagram;

import java.awt.Point;
import java.awt.datatransfer.UnsupportedFlavorException;
import java.awt.event.ActionEvent;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.awt.geom.Point2D;
import java.io.IOException;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import javax.swing.AbstractAction;
import javax.swing.JComponent;
import javax.swing.KeyStroke;
import javax.swing.TransferHandler;
import quarterlight.car.View;
import quarterlight.car.ZoneId;
import quarterlight.diagram.scene.DiagramScene;
import quarterlight.page.PinKey;
import quarterlight.ui.kit.Command;
import quarterlight.ui.kit.PhotoTransfer;
import quarterlight.ui.kit.place.Subject;
import quarterlight.ui.kit.visit.Selection;
import quarterlight.ui.kit.visit.StationScreen;
import quarterlight.ui.kit.widget.ContextMenu;
import quarterlight.visit.photo.PhotoId;
import quarterlight.visit.pin.RecordId;

/** What mouse, keys and drops on the diagram do: hover, select, choose for the station in front, move pins. Event thread only. */
public final class DiagramGestures {
    private static final int DRAG_PX = 4;

    private final DiagramPanel panel;
    private final Supplier<Optional<StationScreen>> front;
    private Optional<ZoneSteps.Place> at = Optional.empty();
    private Optional<ZoneId> pointed = Optional.empty();
    private Optional<PhotoId> pointedPhoto = Optional.empty();

    private DiagramGestures(DiagramPanel panel, Supplier<Optional<StationScreen>> front) {
        this.panel = panel;
        this.front = front;
    }

    /** @param front the station in front */
    public static void install(DiagramPanel panel, Supplier<Optional<StationScreen>> front) {
        DiagramGestures gestures = new DiagramGestures(panel, front);
        Mouse mouse = gestures.new Mouse();
        panel.addMouseListener(mouse);
        panel.addMouseMotionListener(mouse);
        gestures.bindKeys();
        panel.onChosen((zone, point) -> gestures.choose(zone, new DiagramScene.Hit(point, Optional.of(zone))));
        panel.setTransferHandler(gestures.new Drop());
        gestures.menu();
    }

    /** What can be done with the zone or pin under the pointer, or chosen by the keys. */
    private void menu() {
        Command grounds = panel.visit().grounds(() -> zoneInHand().map(Subject.OfZone::new));
        Command photos = Command.of(
                panel.texts(), "diagram.do.photos", () -> zoneInHand().ifPresent(this::takePhotos));
        Command photo = Command.of(
                panel.texts(),
                "diagram.do.photo",
                () -> pointedPhoto.ifPresent(id -> selection().photos(List.of(id))));
        Command large = Command.of(panel.texts(), "diagram.do.large", this::enlarge);
        ContextMenu.on(panel, () -> {
            pointed = selection().hoveredZone();
            pointedPhoto = selection().hoveredPhoto();
            grounds.setEnabled(zoneInHand().isPresent());
            photos.setEnabled(zoneInHand().isPresent());
            photo.setEnabled(pointedPhoto.isPresent());
            return List.of(grounds, photos, photo, large);
        });
    }

    private Optional<ZoneId> zoneInHand() {
        return pointed.or(() -> selection().hoveredZone()).or(selection()::zone);
    }

    private void takePhotos(ZoneId zone) {
        selection().zones(Set.of(zone));
        selection()
                .photos(panel.visit().visit().pins().stream()
                        .map(row -> row.value())
                        .filter(pin -> pin.zone().equals(zone))
                        .map(pin -> pin.photo())
                        .distinct()
                        .toList());
    }

    private void enlarge() {
        Optional<View> view = at.map(ZoneSteps.Place::view)
                .or(() -> Optional.ofNullable(panel.getMousePosition())
                        .flatMap(p -> panel.scene().flatMap(scene -> scene.viewAt(p.getX(), p.getY()))))
                .or(() -> Optional.of(View.LEFT));
        panel.show(panel.view().isPresent() ? Optional.empty() : view);
    }

    private Selection selection() {
        return panel.visit().selection();
    }

    private Optional<DiagramScene.Hit> hit(Point p) {
        return panel.scene().flatMap(scene -> scene.hit(p.getX(), p.getY()));
    }

    private Optional<PinKey.Entry> pin(Point p) {
        return panel.layers().contains(Layer.PINS) ? panel.pinLayer().pinAt(p) : Optional.empty();
    }

    /** The photos of a pile of pins under a point. */
    private List<PhotoId> pile(Point p) {
        return panel.layers().contains(Layer.PINS) ? panel.pinLayer().pileAt(p) : List.of();
    }

    private void choose(ZoneId zone, DiagramScene.Hit hit) {
        selection().zones(Set.of(zone));
        front.get().ifPresent(station -> station.zoneChosen(zone, hit.point()));
    }

    private final class Mouse extends MouseAdapter {
        private Optional<PinKey.Entry> pressed = Optional.empty();
        private Point start = new Point();
        private boolean dragging;

        @Override
        public void mouseMoved(MouseEvent e) {
            if (panel.layers().contains(Layer.PINS) && panel.pinLayer().pointer(e.getPoint())) {
                panel.repaint();
            }
            Optional<PinKey.Entry> pin = pin(e.getPoint());
            Optional<ZoneId> zone = hit(e.getPoint()).flatMap(DiagramScene.Hit::zone);
            selection().hover(zone, pin.map(PinKey.Entry::photo));
        }

        @Override
        public void mouseExited(MouseEvent e) {
            selection().hover(Optional.empty(), Optional.empty());
        }

        @Override
        public void mousePressed(MouseEvent e) {
            panel.requestFocusInWindow();
            start = e.getPoint();
            dragging = false;
            pressed = e.getButton() == MouseEvent.BUTTON1 ? pin(e.getPoint()) : Optional.empty();
        }

        @Override
        public void mouseDragged(MouseEvent e) {
            if (pressed.isPresent() && (dragging || start.distance(e.getPoint()) > DRAG_PX)) {
                dragging = true;
                panel.carry(Optional.of(new Point2D.Double(e.getX(), e.getY())));
                selection().hover(hit(e.getPoint()).flatMap(DiagramScene.Hit::zone), pressed.map(PinKey.Entry::photo));
            }
        }

        @Override
        public void mouseReleased(MouseEvent e) {
            panel.carry(Optional.empty());
            if (e.getButton() != MouseEvent.BUTTON1) {
                return;
            }
            Optional<DiagramScene.Hit> hit = hit(e.getPoint());
            Optional<ZoneId> zone = hit.flatMap(DiagramScene.Hit::zone);
            if (dragging && pressed.isPresent()) {
                RecordId moved = pressed.get().pin();
                zone.ifPresent(to -> front.get()
                        .ifPresent(
                                station -> station.pinMoved(moved, to, hit.get().point())));
            } else if (pressed.isPresent()) {
                selection().photos(List.of(pressed.get().photo()));
            } else if (!pile(e.getPoint()).isEmpty()) {
                selection().photos(pile(e.getPoint()));
            } else if (e.getClickCount() == 2 && zone.isEmpty()) {
                enlarge(e.getPoint());
            } else if (zone.isPresent()) {
                clicked(zone.get(), hit.get(), e);
            }
            pressed = Optional.empty();
            dragging = false;
        }

        private void clicked(ZoneId zone, DiagramScene.Hit hit, MouseEvent e) {
            if (e.isControlDown() || e.isMetaDown() || e.isShiftDown()) {
                Set<ZoneId> zones = new LinkedHashSet<>(selection().zones());
                if (!zones.remove(zone)) {
                    zones.add(zone);
                }
                selection().zones(zones);
            } else {
                choose(zone, hit);
            }
        }

        private void enlarge(Point p) {
            Optional<View> view = panel.scene().flatMap(scene -> scene.viewAt(p.getX(), p.getY()));
            panel.show(panel.view().isPresent() ? Optional.empty() : view);
        }
    }

    private void bindKeys() {
        bind("LEFT", () -> step(-1, 0));
        bind("RIGHT", () -> step(1, 0));
        bind("UP", () -> step(0, -1));
        bind("DOWN", () -> step(0, 1));
        bind("ENTER", this::chooseHere);
        bind("SPACE", this::chooseHere);
        bind("ESCAPE", () -> {
            panel.show(Optional.empty());
            selection().zones(Set.of());
        });
    }

    private void bind(String key, Runnable work) {
        panel.getInputMap(JComponent.WHEN_FOCUSED).put(KeyStroke.getKeyStroke(key), key);
        panel.getActionMap().put(key, new AbstractAction() {
            @Override
            public void actionPerformed(ActionEvent e) {
                work.run();
            }
        });
    }

    private void step(int dx, int dy) {
        panel.scene().ifPresent(scene -> {
            List<ZoneSteps.Place> places =
                    ZoneSteps.places(scene, panel.visit().drawing().places());
            Optional<ZoneSteps.Place> here = at.flatMap(place -> places.stream()
                    .filter(p -> p.view() == place.view() && p.zone().equals(place.zone()))
                    .findFirst());
            Point2D from = here.map(ZoneSteps.Place::px).orElse(new Point2D.Double(0, 0));
            Optional<ZoneSteps.Place> next =
                    here.isEmpty() ? places.stream().findFirst() : ZoneSteps.next(places, from, dx, dy);
            next.ifPresent(place -> {
                at = next;
                selection().hover(Optional.of(place.zone()), Optional.empty());
                panel.tell(place);
            });
        });
    }

    private void chooseHere() {
        at.ifPresent(place -> choose(place.zone(), new DiagramScene.Hit(place.point(), Optional.of(place.zone()))));
    }

    private final class Drop extends TransferHandler {
        @Override
        public boolean canImport(TransferSupport support) {
            if (!support.isDataFlavorSupported(PhotoTransfer.FLAVOR) || !support.isDrop()) {
                return false;
            }
            Optional<ZoneId> zone =
                    hit(support.getDropLocation().getDropPoint()).flatMap(DiagramScene.Hit::zone);
            selection().hover(zone, Optional.empty());
            return zone.isPresent();
        }

        @Override
        public boolean importData(TransferSupport support) {
            Optional<DiagramScene.Hit> hit = hit(support.getDropLocation().getDropPoint());
            Optional<ZoneId> zone = hit.flatMap(DiagramScene.Hit::zone);
            if (zone.isEmpty() || front.get().isEmpty()) {
                return false;
            }
            try {
                List<PhotoId> photos =
                        ((PhotoTransfer) support.getTransferable().getTransferData(PhotoTransfer.FLAVOR)).photos();
                front.get().get().photosDropped(photos, zone.get(), hit.get().point());
                return true;
            } catch (UnsupportedFlavorException | IOException e) {
                return false;
            }
        }
    }
}
