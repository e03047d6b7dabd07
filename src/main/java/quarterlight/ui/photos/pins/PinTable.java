package quarterlight.ui.photos.pins;

import java.awt.BorderLayout;
import java.awt.Component;
import java.awt.Dimension;
import java.awt.KeyboardFocusManager;
import java.awt.event.ActionEvent;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import javax.swing.AbstractAction;
import javax.swing.DefaultCellEditor;
import javax.swing.DefaultComboBoxModel;
import javax.swing.JButton;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTable;
import javax.swing.JTextField;
import javax.swing.KeyStroke;
import javax.swing.ListSelectionModel;
import javax.swing.SwingUtilities;
import javax.swing.table.AbstractTableModel;
import net.miginfocom.swing.MigLayout;
import quarterlight.car.ZoneId;
import quarterlight.table.PinSubjectTable;
import quarterlight.task.LatestWork;
import quarterlight.ui.kit.Format;
import quarterlight.ui.kit.Texts;
import quarterlight.ui.kit.UiContext;
import quarterlight.ui.kit.field.TypedText;
import quarterlight.ui.kit.look.Look;
import quarterlight.ui.photos.list.PhotoItem;
import quarterlight.ui.photos.list.PhotosModel;
import quarterlight.visit.PinSubjects;
import quarterlight.visit.photo.PhotoId;
import quarterlight.visit.pin.Pin;
import quarterlight.visit.pin.RecordId;
import quarterlight.visit.pin.Recorded;

/** The pins of the photo in hand: where, what each shows, and its caption, both to be written in place. Event thread only. */
public final class PinTable extends JPanel {
    private static final int SHOWS = 1;
    private static final int CAPTION = 2;

    private final transient Texts texts;
    private final transient PhotosModel model;
    private final transient PinWork work;
    private transient PinSubjects words = new PinSubjects(List.of());
    private final Rows rows;
    private final JTable table;
    private final JLabel heading = new JLabel(" ");
    private final JButton remove;
    private final transient Runnable leave;
    private transient List<Recorded<Pin>> pins = List.of();
    private transient Optional<PhotoId> photo = Optional.empty();
    private transient Optional<ZoneId> wanted = Optional.empty();
    private boolean onTheWay;

    /** @param leave gives the keyboard back to where it was */
    public PinTable(UiContext parts, PhotosModel model, PinWork work, Runnable leave) {
        super(new BorderLayout());
        this.texts = parts.texts();
        this.model = model;
        this.work = work;
        this.leave = leave;
        this.rows = new Rows();
        this.table = new JTable(rows);
        this.remove = new JButton(texts.get("photos.pins.remove"));
        remove.putClientProperty("JButton.buttonType", "toolBarButton");
        remove.addActionListener(e -> removeSelected());
        JPanel head = new JPanel(new MigLayout("insets 6 10 2 10, fillx", "[grow][]", "[24!]"));
        head.add(Look.secondary(heading), "wmin 0");
        head.add(remove);
        add(head, BorderLayout.NORTH);
        setUpTable();
        JScrollPane scroll = new JScrollPane(table);
        Look.bare(scroll);
        scroll.setPreferredSize(new Dimension(300, 112));
        scroll.setMinimumSize(new Dimension(100, 54));
        add(scroll, BorderLayout.CENTER);
        LatestWork.once(
                "quarterlight-words",
                SwingUtilities::invokeLater,
                progress -> PinSubjectTable.load(),
                loaded -> words = loaded,
                parts.problems()::failed);
        model.onList(this::refresh);
        model.visit().selection().onSelected(this::refresh);
        refresh();
    }

    private void setUpTable() {
        table.setName("photos-pins");
        table.putClientProperty("FlatLaf.style", "cellMargins: 2,10,2,3");
        Look.named(table, texts.get("photos.pins.name"));
        table.setSelectionMode(ListSelectionModel.MULTIPLE_INTERVAL_SELECTION);
        table.putClientProperty("terminateEditOnFocusLost", true);
        table.getTableHeader().setReorderingAllowed(false);
        table.getTableHeader()
                .putClientProperty(
                        "FlatLaf.style", "font: -2; foreground: $quarterlight.secondInk; cellMargins: 2,10,2,3");
        if (table.getTableHeader().getDefaultRenderer() instanceof JLabel label) {
            label.setHorizontalAlignment(JLabel.LEADING);
        }
        table.getSelectionModel().addListSelectionListener(e -> remove.setEnabled(table.getSelectedRowCount() > 0));
        JComboBox<String> shows = new JComboBox<>();
        shows.setEditable(true);
        table.getColumnModel().getColumn(SHOWS).setCellEditor(new DefaultCellEditor(shows) {
            @Override
            public java.awt.Component getTableCellEditorComponent(
                    JTable t, Object value, boolean selected, int row, int column) {
                shows.setModel(new DefaultComboBoxModel<>(
                        words.offered(model.visit().visit()).toArray(String[]::new)));
                return super.getTableCellEditorComponent(t, value, selected, row, column);
            }
        });
        JTextField caption = new JTextField();
        table.getColumnModel().getColumn(CAPTION).setCellEditor(new DefaultCellEditor(caption));
        bind(table, "DELETE", this::removeSelected);
        bind(table, "F2", () -> write(Math.max(0, table.getSelectedRow()), Math.max(SHOWS, table.getSelectedColumn())));
        bind(
                table,
                "ENTER",
                () -> write(Math.max(0, table.getSelectedRow()), Math.max(SHOWS, table.getSelectedColumn())));
        writing(caption);
        if (shows.getEditor().getEditorComponent() instanceof JTextField typed) {
            writing(typed);
        }
    }

    private static void bind(JComponent component, String stroke, Runnable task) {
        component.getInputMap(JComponent.WHEN_FOCUSED).put(KeyStroke.getKeyStroke(stroke), stroke);
        component.getActionMap().put(stroke, new AbstractAction() {
            @Override
            public void actionPerformed(ActionEvent e) {
                task.run();
            }
        });
    }

    /** Tab goes on to the next field, Enter is done with the photo if it was on the way, Shift+Enter stays, Escape takes back what was typed. */
    private void writing(JTextField field) {
        TypedText.ownEscape(field);
        field.setFocusTraversalKeys(KeyboardFocusManager.FORWARD_TRAVERSAL_KEYS, Set.of());
        field.setFocusTraversalKeys(KeyboardFocusManager.BACKWARD_TRAVERSAL_KEYS, Set.of());
        bind(field, "TAB", () -> writeNext(1));
        bind(field, "shift TAB", () -> writeNext(-1));
        bind(field, "ENTER", () -> done(onTheWay));
        bind(field, "shift ENTER", () -> done(false));
        bind(field, "ESCAPE", () -> {
            table.getCellEditor().cancelCellEditing();
            leave.run();
        });
    }

    private void writeNext(int by) {
        int place = table.getEditingRow() * 2 + table.getEditingColumn() - SHOWS + by;
        stop();
        if (place >= 0 && place < 2 * pins.size()) {
            write(place / 2, SHOWS + place % 2);
        } else {
            leave.run();
        }
    }

    private void done(boolean goOn) {
        stop();
        onTheWay = false;
        leave.run();
        if (goOn) {
            model.goOnAfter(model.visit().selection().photos());
        }
    }

    private void stop() {
        if (table.isEditing() && !table.getCellEditor().stopCellEditing()) {
            table.getCellEditor().cancelCellEditing();
        }
    }

    private void removeSelected() {
        List<RecordId> chosen = Arrays.stream(table.getSelectedRows())
                .mapToObj(row -> pins.get(row).id())
                .toList();
        work.remove(chosen);
    }

    /** Takes pins of the photo in hand in hand, to be seen. */
    public void choose(List<RecordId> wantedPins) {
        table.clearSelection();
        for (int row = 0; row < pins.size(); row++) {
            if (wantedPins.contains(pins.get(row).id())) {
                table.addRowSelectionInterval(row, row);
                table.scrollRectToVisible(table.getCellRect(row, 0, true));
            }
        }
    }

    /** Goes to what the last pin shows, to be written at once. */
    public void editLast() {
        write(pins.size() - 1, SHOWS);
    }

    /** Goes to what the pin to a zone shows, once the visit holds it; Enter goes on to the next photo then. */
    public void writeOf(ZoneId zone) {
        wanted = Optional.of(zone);
        writeWanted();
    }

    private void writeWanted() {
        wanted.ifPresent(zone -> {
            for (int row = pins.size() - 1; row >= 0; row--) {
                if (pins.get(row).value().zone().equals(zone)) {
                    wanted = Optional.empty();
                    onTheWay = true;
                    write(row, SHOWS);
                    return;
                }
            }
        });
    }

    private void write(int row, int column) {
        if (row >= 0 && row < pins.size()) {
            table.changeSelection(row, column, false, false);
            if (table.editCellAt(row, column)) {
                Component field = table.getEditorComponent();
                (field instanceof JComboBox<?> box ? box.getEditor().getEditorComponent() : field)
                        .requestFocusInWindow();
            }
        }
    }

    private void refresh() {
        Optional<PhotoItem> hand = model.inHand();
        List<Recorded<Pin>> fresh = hand.map(PhotoItem::pins).orElse(List.of());
        Optional<PhotoId> now = hand.map(PhotoItem::id);
        if (!now.equals(photo)) {
            stop();
            photo = now;
            wanted = Optional.empty();
            onTheWay = false;
        }
        if (!fresh.equals(pins)) {
            replace(fresh);
            writeWanted();
        }
        remove.setEnabled(table.getSelectedRowCount() > 0);
        heading.setText(
                hand.isEmpty()
                        ? " "
                        : hand.get()
                                .photo()
                                .setAside()
                                .map(why -> texts.get("photos.pins.aside", why))
                                .orElse(texts.get("photos.pins.count", pins.size())));
    }

    /** What is being written is not touched while its pin is there. */
    private void replace(List<Recorded<Pin>> fresh) {
        boolean same = fresh.stream()
                .map(Recorded::id)
                .toList()
                .equals(pins.stream().map(Recorded::id).toList());
        if (!same) {
            stop();
        }
        pins = fresh;
        if (same) {
            table.repaint();
        } else {
            rows.fireTableDataChanged();
        }
    }

    private final class Rows extends AbstractTableModel {
        @Override
        public int getRowCount() {
            return pins.size();
        }

        @Override
        public int getColumnCount() {
            return 3;
        }

        @Override
        public String getColumnName(int column) {
            return switch (column) {
                case SHOWS -> texts.get("photos.pins.shows");
                case CAPTION -> texts.get("photos.pins.caption");
                default -> texts.get("photos.pins.zone");
            };
        }

        @Override
        public Object getValueAt(int row, int column) {
            Pin pin = pins.get(row).value();
            return switch (column) {
                case SHOWS -> pin.shows().orElse("");
                case CAPTION -> pin.caption().orElse("");
                default -> zone(pin);
            };
        }

        private String zone(Pin pin) {
            String label = model.visit().label(pin.zone());
            return pin.at().isPresent()
                    ? texts.get(
                            "photos.pins.moment",
                            label,
                            Format.withUnit(pin.at().getAsDouble(), 1, "s"))
                    : label;
        }

        @Override
        public boolean isCellEditable(int row, int column) {
            return column != 0 && model.visit().isEditable();
        }

        @Override
        public void setValueAt(Object value, int row, int column) {
            if (row < pins.size()) {
                Recorded<Pin> pin = pins.get(row);
                String text = value == null ? "" : value.toString();
                String shows = column == SHOWS ? text : pin.value().shows().orElse("");
                String caption =
                        column == CAPTION ? text : pin.value().caption().orElse("");
                work.word(pin.id(), shows, caption);
            }
        }
    }
}
