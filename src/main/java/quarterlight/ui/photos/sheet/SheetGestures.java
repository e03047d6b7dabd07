package quarterlight.ui.photos.sheet;

import java.awt.Point;
import java.awt.Rectangle;
import java.awt.datatransfer.Transferable;
import java.awt.event.ActionEvent;
import java.awt.event.InputEvent;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import javax.swing.AbstractAction;
import javax.swing.JComponent;
import javax.swing.KeyStroke;
import javax.swing.SwingUtilities;
import javax.swing.TransferHandler;
import quarterlight.ui.kit.PhotoTransfer;
import quarterlight.ui.photos.list.PhotosModel;
import quarterlight.visit.photo.PhotoId;

/** Selecting on the contact sheet by mouse and keys, and dragging photos away from it. Event thread only. */
final class SheetGestures {
    private static final int DRAG_PX = 5;

    private final ContactSheet sheet;
    private final PhotosModel model;
    private OptionalInt anchor = OptionalInt.empty();

    private SheetGestures(ContactSheet sheet, PhotosModel model) {
        this.sheet = sheet;
        this.model = model;
    }

    static void install(ContactSheet sheet, PhotosModel model) {
        SheetGestures gestures = new SheetGestures(sheet, model);
        Mouse mouse = gestures.new Mouse();
        sheet.addMouseListener(mouse);
        sheet.addMouseMotionListener(mouse);
        sheet.setTransferHandler(new Carry(model));
        gestures.bindKeys();
    }

    private static final class Carry extends TransferHandler {
        private final transient PhotosModel model;

        Carry(PhotosModel model) {
            this.model = model;
        }

        @Override
        public int getSourceActions(JComponent c) {
            return COPY;
        }

        @Override
        protected Transferable createTransferable(JComponent c) {
            return new PhotoTransfer(model.visit().selection().photos());
        }
    }

    private PhotoId photo(int place) {
        return sheet.photos().items().get(place).id();
    }

    private void only(int place) {
        anchor = OptionalInt.of(place);
        model.select(photo(place));
    }

    /** Selects from the anchor to a place; the place is in hand. */
    private void extend(int place) {
        int from = anchor.orElse(sheet.inHand().orElse(place));
        if (from >= sheet.photos().size()) {
            from = place;
        }
        anchor = OptionalInt.of(from);
        List<PhotoId> chosen = new ArrayList<>();
        int step = place <= from ? 1 : -1;
        for (int i = place; i != from + step; i += step) {
            chosen.add(photo(i));
        }
        sheet.selection().photos(chosen);
    }

    private void toggle(int place) {
        anchor = OptionalInt.of(place);
        List<PhotoId> chosen = new ArrayList<>(sheet.selection().photos());
        if (!chosen.remove(photo(place))) {
            chosen.add(0, photo(place));
        }
        sheet.selection().photos(chosen);
    }

    private final class Mouse extends MouseAdapter {
        private Point start = new Point();
        private OptionalInt pressed = OptionalInt.empty();
        private boolean banding;
        private boolean carried;
        private Set<PhotoId> before = Set.of();

        @Override
        public void mousePressed(MouseEvent e) {
            sheet.requestFocusInWindow();
            start = e.getPoint();
            banding = false;
            carried = false;
            pressed = sheet.geometry().at(start);
            before = e.isShiftDown() || isMenuKey(e)
                    ? new LinkedHashSet<>(sheet.selection().photos())
                    : Set.of();
            if (!SwingUtilities.isLeftMouseButton(e)) {
                pressed.ifPresent(place -> {
                    if (!sheet.selection().photos().contains(photo(place))) {
                        only(place);
                    }
                });
                return;
            }
            pressed.ifPresent(place -> {
                if (e.isShiftDown()) {
                    extend(place);
                } else if (isMenuKey(e)) {
                    toggle(place);
                } else if (!sheet.selection().photos().contains(photo(place))) {
                    only(place);
                }
            });
        }

        @Override
        public void mouseDragged(MouseEvent e) {
            if (!SwingUtilities.isLeftMouseButton(e) || start.distance(e.getPoint()) < DRAG_PX) {
                return;
            }
            if (pressed.isPresent() && !banding) {
                if (!carried) {
                    carried = true;
                    sheet.getTransferHandler().exportAsDrag(sheet, e, TransferHandler.COPY);
                }
                return;
            }
            banding = true;
            Rectangle box = new Rectangle(start);
            box.add(e.getPoint());
            sheet.band(Optional.of(box));
            sheet.scrollRectToVisible(new Rectangle(e.getX(), e.getY(), 1, 1));
            Set<PhotoId> chosen = new LinkedHashSet<>(before);
            sheet.geometry().within(box).forEach(place -> chosen.add(photo(place)));
            sheet.selection().photos(List.copyOf(chosen));
        }

        @Override
        public void mouseReleased(MouseEvent e) {
            if (banding) {
                sheet.band(Optional.empty());
            } else if (SwingUtilities.isLeftMouseButton(e) && e.getClickCount() == 2 && pressed.isPresent()) {
                sheet.large();
            } else if (SwingUtilities.isLeftMouseButton(e) && !carried && !e.isShiftDown() && !isMenuKey(e)) {
                pressed.ifPresentOrElse(
                        SheetGestures.this::only, () -> sheet.selection().photos(List.of()));
            }
            banding = false;
        }

        @Override
        public void mouseMoved(MouseEvent e) {
            OptionalInt place = sheet.geometry().at(e.getPoint());
            Optional<PhotoId> over = place.isPresent() ? Optional.of(photo(place.getAsInt())) : Optional.empty();
            sheet.selection().hover(Optional.empty(), over);
        }

        @Override
        public void mouseExited(MouseEvent e) {
            sheet.selection().hover(Optional.empty(), Optional.empty());
        }

        private boolean isMenuKey(MouseEvent e) {
            return (e.getModifiersEx() & (InputEvent.CTRL_DOWN_MASK | InputEvent.META_DOWN_MASK)) != 0;
        }
    }

    private interface Step {
        int from(int place);
    }

    private void bindKeys() {
        move("LEFT", place -> place - 1);
        move("RIGHT", place -> place + 1);
        move("UP", place -> sheet.geometry().vertical(place, -1));
        move("DOWN", place -> sheet.geometry().vertical(place, 1));
        move("PAGE_UP", place -> sheet.geometry().vertical(place, -rowsSeen()));
        move("PAGE_DOWN", place -> sheet.geometry().vertical(place, rowsSeen()));
        move("HOME", place -> 0);
        move("END", place -> sheet.photos().size() - 1);
        bind("ctrl A", () -> sheet.selection()
                .photos(sheet.photos().items().stream().map(item -> item.id()).toList()));
        bind("meta A", () -> sheet.selection()
                .photos(sheet.photos().items().stream().map(item -> item.id()).toList()));
        bind("ESCAPE", () -> sheet.selection().photo().ifPresent(model::select));
    }

    private int rowsSeen() {
        return Math.max(1, sheet.getVisibleRect().height / sheet.geometry().rowHeight() - 1);
    }

    private void move(String key, Step step) {
        bind(key, () -> go(step, false));
        bind("shift " + key, () -> go(step, true));
    }

    private void go(Step step, boolean extending) {
        int size = sheet.photos().size();
        if (size == 0) {
            return;
        }
        OptionalInt here = sheet.inHand();
        int to = here.isPresent() ? step.from(here.getAsInt()) : 0;
        int place = Math.max(0, Math.min(size - 1, to));
        if (extending) {
            extend(place);
        } else {
            only(place);
        }
    }

    private void bind(String key, Runnable work) {
        sheet.getInputMap(JComponent.WHEN_FOCUSED).put(KeyStroke.getKeyStroke(key), key);
        sheet.getActionMap().put(key, new AbstractAction() {
            @Override
            public void actionPerformed(ActionEvent e) {
                work.run();
            }
        });
    }
}
