package quarterlight.ui.photos.pins;

import java.awt.BorderLayout;
import java.awt.Dimension;
import java.awt.event.ActionEvent;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
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
import javax.swing.KeyStroke;
import javax.swing.ListSelectionModel;
import javax.swing.SwingUtilities;
import javax.swing.table.AbstractTableModel;
import net.miginfocom.swing.MigLayout;
import quarterlight.table.ShownTable;
import quarterlight.task.LatestWork;
import quarterlight.ui.kit.DeskParts;
import quarterlight.ui.kit.Format;
import quarterlight.ui.kit.Texts;
import quarterlight.ui.kit.look.Look;
import quarterlight.ui.photos.list.PhotoItem;
import quarterlight.ui.photos.list.PhotosModel;
import quarterlight.visit.ShownWords;
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
    private transient ShownWords words = new ShownWords(List.of());
    private final Rows rows;
    private final JTable table;
    private final JLabel heading = new JLabel(" ");
    private final JButton remove;
    private transient List<Recorded<Pin>> pins = List.of();

    public PinTable(DeskParts parts, PhotosModel model, PinWork work) {
        super(new BorderLayout());
        this.texts = parts.texts();
        this.model = model;
        this.work = work;
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
                progress -> ShownTable.load(),
                loaded -> words = loaded,
                parts.problems()::failed);
        model.onList(this::refresh);
        model.visit().selection().onSelected(this::refresh);
        refresh();
    }

    private void setUpTable() {
        table.setName("photos-pins");
        Look.named(table, texts.get("photos.pins.name"));
        table.setSelectionMode(ListSelectionModel.MULTIPLE_INTERVAL_SELECTION);
        table.putClientProperty("terminateEditOnFocusLost", true);
        table.getTableHeader().setReorderingAllowed(false);
        table.getTableHeader().putClientProperty("FlatLaf.style", "font: -2; foreground: $quarterlight.secondInk");
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
        table.getInputMap(JComponent.WHEN_FOCUSED).put(KeyStroke.getKeyStroke("DELETE"), "remove");
        table.getActionMap().put("remove", new AbstractAction() {
            @Override
            public void actionPerformed(ActionEvent e) {
                removeSelected();
            }
        });
    }

    private void removeSelected() {
        List<RecordId> chosen = Arrays.stream(table.getSelectedRows())
                .mapToObj(row -> pins.get(row).id())
                .toList();
        work.remove(chosen);
    }

    /** Goes to what the last pin shows, to be written at once. */
    public void editLast() {
        if (!pins.isEmpty()) {
            int row = pins.size() - 1;
            table.changeSelection(row, SHOWS, false, false);
            if (table.editCellAt(row, SHOWS)) {
                table.getEditorComponent().requestFocusInWindow();
            }
        }
    }

    private void refresh() {
        Optional<PhotoItem> hand = model.inHand();
        List<Recorded<Pin>> fresh = hand.map(PhotoItem::pins).orElse(List.of());
        if (!fresh.equals(pins)) {
            if (table.isEditing()) {
                table.getCellEditor().cancelCellEditing();
            }
            pins = fresh;
            rows.fireTableDataChanged();
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
