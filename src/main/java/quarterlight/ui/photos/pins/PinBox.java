package quarterlight.ui.photos.pins;

import java.awt.KeyboardFocusManager;
import java.awt.Rectangle;
import java.awt.event.ActionEvent;
import java.awt.event.FocusAdapter;
import java.awt.event.FocusEvent;
import java.awt.event.KeyAdapter;
import java.awt.event.KeyEvent;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Consumer;
import javax.swing.AbstractAction;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTextField;
import javax.swing.KeyStroke;
import javax.swing.event.DocumentEvent;
import javax.swing.event.DocumentListener;
import net.miginfocom.swing.MigLayout;
import quarterlight.car.Zone;
import quarterlight.car.ZoneFinder;
import quarterlight.car.ZoneId;
import quarterlight.ui.kit.Texts;
import quarterlight.ui.kit.UiContext;
import quarterlight.ui.kit.field.TypedText;
import quarterlight.ui.kit.look.Look;
import quarterlight.ui.photos.list.PhotoItem;
import quarterlight.ui.photos.list.PhotosModel;
import quarterlight.visit.photo.PhotoId;
import quarterlight.walk.Suggestion;

/**
 * Where a photo is pinned from: a field that finds zones by a few letters, and nine rows in two columns that show what was found, or the likely
 * zones while nothing is typed. The digits 1 to 9 take a row, Enter the marked one. Event thread only.
 */
public final class PinBox extends JPanel {
    /** One for each digit. */
    public static final int ROWS = 9;

    private static final int FIRST_COLUMN = 5;
    /** Below this width rows stand in one column, px. */
    private static final int TWO_COLUMNS = 330;

    private final transient UiContext parts;
    private final transient Texts texts;
    private final transient PhotosModel model;
    private final transient PinWork work;
    private final transient Runnable leave;
    private final transient Consumer<ZoneId> words;
    private final JTextField finder = new JTextField();
    private final List<ZoneRow> rows = new ArrayList<>();
    private final JLabel hint = new JLabel(" ");
    private int marked;
    private int columns;

    /**
     * @param leave gives the keyboard back to where it was
     * @param words brings it to what the pin to a zone shows, once that is there
     */
    public PinBox(UiContext parts, PhotosModel model, PinWork work, Runnable leave, Consumer<ZoneId> words) {
        super(new MigLayout("insets 6 10 6 10, gap 4 0, fillx, hidemode 3", "[55,grow 55,fill][45,grow 45,fill]"));
        this.parts = parts;
        this.texts = parts.texts();
        this.model = model;
        this.work = work;
        this.leave = leave;
        this.words = words;
        TypedText.ownEscape(finder).setName("photos-finder");
        finder.putClientProperty("JTextField.placeholderText", texts.get("photos.pin.find"));
        finder.putClientProperty("JTextField.showClearButton", true);
        add(Look.named(finder, texts.get("photos.pin.find")), "cell 0 0 2 1, h 28!, gapbottom 4");
        add(Look.secondary(hint), "cell 0 1 2 1, h 24!, wmin 0, gapleft 4");
        for (int i = 0; i < ROWS; i++) {
            ZoneRow row = new ZoneRow(i + 1);
            int at = i;
            row.addActionListener(e -> take(at));
            rows.add(row);
            add(row);
        }
        inColumns(2);
        listen();
        model.onSuggestions(this::fill);
        model.onList(this::fill);
        model.visit().selection().onSelected(this::fill);
        fill();
    }

    /** With large text two columns would be wider than what is seen of the pane. */
    @Override
    public void setBounds(int x, int y, int width, int height) {
        super.setBounds(x, y, width, height);
        inColumns(width < Look.px(TWO_COLUMNS) ? 1 : 2);
    }

    private void inColumns(int wanted) {
        if (columns == wanted) {
            return;
        }
        columns = wanted;
        MigLayout layout = (MigLayout) getLayout();
        for (int i = 0; i < ROWS; i++) {
            int down = wanted == 1 ? i : i % FIRST_COLUMN;
            int across = wanted == 1 ? 0 : i / FIRST_COLUMN;
            layout.setComponentConstraints(
                    rows.get(i), "cell %d %d %d 1, h 24!, wmin 0".formatted(across, 2 + down, wanted == 1 ? 2 : 1));
        }
        rows.get(FIRST_COLUMN).setVisible(wanted == 1 || rows.get(0).isVisible());
        revalidate();
    }

    private void listen() {
        finder.getDocument().addDocumentListener(new DocumentListener() {
            @Override
            public void insertUpdate(DocumentEvent e) {
                marked = 0;
                fill();
            }

            @Override
            public void removeUpdate(DocumentEvent e) {
                insertUpdate(e);
            }

            @Override
            public void changedUpdate(DocumentEvent e) {
                insertUpdate(e);
            }
        });
        finder.addFocusListener(new FocusAdapter() {
            @Override
            public void focusGained(FocusEvent e) {
                // with large text the rows may be out of sight
                scrollRectToVisible(new Rectangle(getSize()));
            }
        });
        finder.addKeyListener(new KeyAdapter() {
            @Override
            public void keyTyped(KeyEvent e) {
                int digit = e.getKeyChar() - '0';
                if (digit >= 1 && digit <= ROWS) {
                    e.consume();
                    take(digit - 1);
                }
            }
        });
        bind("ENTER", () -> take(marked));
        bind("shift ENTER", () -> takeAndStay(marked));
        bind("TAB", this::goOnToWords);
        finder.setFocusTraversalKeys(
                KeyboardFocusManager.FORWARD_TRAVERSAL_KEYS, Set.of(KeyStroke.getKeyStroke("ctrl TAB")));
        bind("ESCAPE", this::clear);
        bind("DOWN", () -> mark(marked + 1));
        bind("UP", () -> mark(marked - 1));
    }

    private void bind(String key, Runnable task) {
        finder.getInputMap(JComponent.WHEN_FOCUSED).put(KeyStroke.getKeyStroke(key), key);
        finder.getActionMap().put(key, new AbstractAction() {
            @Override
            public void actionPerformed(ActionEvent e) {
                task.run();
            }
        });
    }

    private void mark(int row) {
        marked = Math.max(0, Math.min(ROWS - 1, row));
        fill();
    }

    /** A letter typed elsewhere in the station begins a search. */
    public void type(char letter) {
        finder.requestFocusInWindow();
        finder.setText(finder.getText() + letter);
        finder.setCaretPosition(finder.getText().length());
    }

    /** The field that finds zones. */
    public JTextField finder() {
        return finder;
    }

    /** Pins the selected photos to the zone of a row, from 0; nothing if the row is empty. */
    public void take(int row) {
        rows.get(row).zone().ifPresent(zone -> {
            boolean typed = !finder.getText().isEmpty() || finder.isFocusOwner();
            finder.setText("");
            work.pinSelected(zone, Optional.empty());
            if (typed) {
                leave.run();
            }
        });
    }

    /** Pins the selected photos to the zone of a row; they stay in hand for another pin. */
    public void takeAndStay(int row) {
        rows.get(row).zone().ifPresent(zone -> {
            finder.setText("");
            work.pinAndStay(zone);
        });
    }

    /** Tab takes the zone that Enter would take, and goes on to what it shows; without one it goes to the next control. */
    private void goOnToWords() {
        Optional<ZoneId> zone =
                finder.getText().isBlank() ? Optional.empty() : rows.get(marked).zone();
        if (zone.isPresent()) {
            finder.setText("");
            work.pinAndStay(zone.get());
            words.accept(zone.get());
        } else {
            finder.transferFocus();
        }
    }

    private void clear() {
        finder.setText("");
        leave.run();
    }

    private void fill() {
        Optional<PhotoId> hand = model.visit().selection().photo();
        List<Suggestion> suggested = hand.map(model::suggestions).orElse(List.of());
        String typed = finder.getText().strip();
        if (typed.isEmpty()) {
            for (int i = 0; i < ROWS; i++) {
                boolean there = i < suggested.size();
                show(
                        i,
                        there ? Optional.of(suggested.get(i).zone()) : Optional.empty(),
                        there ? OptionalDouble.of(suggested.get(i).p()) : OptionalDouble.empty(),
                        false);
            }
            say(
                    hand.isEmpty()
                            ? "photos.pin.none-selected"
                            : !suggested.isEmpty()
                                    ? ""
                                    : model.inHand().map(PhotoItem::isPinned).orElse(false)
                                            ? "photos.pin.pinned"
                                            : model.isSuggested() ? "photos.pin.no-suggestion" : "photos.pin.looking");
        } else {
            Map<ZoneId, Double> likely = new HashMap<>();
            suggested.forEach(one -> likely.put(one.zone(), one.p()));
            List<Zone> found = finderOf().matches(typed, zone -> likely.getOrDefault(zone, 0.0));
            for (int i = 0; i < ROWS; i++) {
                Optional<ZoneId> zone =
                        i < found.size() ? Optional.of(found.get(i).id()) : Optional.empty();
                Double p = zone.map(likely::get).orElse(-1.0);
                show(i, zone, p == null || p < 0 ? OptionalDouble.empty() : OptionalDouble.of(p), i == marked);
            }
            say(found.isEmpty() ? "photos.pin.not-found" : "");
        }
    }

    private ZoneFinder finderOf() {
        var car = model.visit().visit().facts().car();
        return new ZoneFinder(parts.catalog().zonesOf(car.body()), car.drive());
    }

    private void show(int row, Optional<ZoneId> zone, OptionalDouble p, boolean taken) {
        rows.get(row).show(zone, zone.map(model.visit()::label).orElse(""), p, taken);
    }

    private void say(String key) {
        hint.setVisible(!key.isEmpty());
        // what is said takes the place of the first line
        rows.get(0).setVisible(key.isEmpty());
        rows.get(FIRST_COLUMN).setVisible(key.isEmpty() || columns == 1);
        hint.setText(key.isEmpty() ? " " : texts.get(key));
        hint.setToolTipText(hint.getText());
    }
}
