package quarterlight.ui.kit.widget;

import java.awt.Component;
import java.awt.Point;
import java.awt.event.ActionEvent;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.awt.font.TextAttribute;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.function.Supplier;
import java.util.stream.IntStream;
import javax.swing.AbstractAction;
import javax.swing.Action;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JTable;
import javax.swing.KeyStroke;
import javax.swing.ListSelectionModel;
import javax.swing.SwingUtilities;
import javax.swing.table.AbstractTableModel;
import javax.swing.table.DefaultTableCellRenderer;
import quarterlight.ui.kit.look.Look;

/** A table of rows of one kind for reading and choosing: a row chosen stays chosen when the rows change. Event thread only. */
public final class FactTable<T> extends JTable {
    /**
     * One column.
     *
     * @param width preferred, px
     * @param text what a row says in it
     */
    public record Column<T>(String title, int width, Function<T, String> text) {}

    private final transient List<Column<T>> columns;
    private final transient Function<T, Object> key;
    private final transient Rows rows = new Rows();
    private transient List<T> values = List.of();
    private transient Predicate<T> struck = row -> false;
    private boolean filling;

    private final class Rows extends AbstractTableModel {
        @Override
        public int getRowCount() {
            return values.size();
        }

        @Override
        public int getColumnCount() {
            return columns.size();
        }

        @Override
        public String getColumnName(int column) {
            return columns.get(column).title();
        }

        @Override
        public Object getValueAt(int row, int column) {
            return columns.get(column).text().apply(values.get(row));
        }
    }

    /**
     * An empty table.
     *
     * @param name for those who hear the window
     * @param key what tells one row from another
     */
    public FactTable(String name, List<Column<T>> columns, Function<T, Object> key) {
        this.columns = List.copyOf(columns);
        this.key = key;
        setModel(rows);
        setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
        setFillsViewportHeight(true);
        setAutoCreateRowSorter(true);
        getTableHeader().setReorderingAllowed(false);
        if (getTableHeader().getDefaultRenderer() instanceof JLabel label) {
            label.setHorizontalAlignment(JLabel.LEADING);
        }
        for (int i = 0; i < columns.size(); i++) {
            getColumnModel().getColumn(i).setPreferredWidth(columns.get(i).width());
        }
        setDefaultRenderer(Object.class, new Renderer());
        setFocusTraversalKeys(java.awt.KeyboardFocusManager.FORWARD_TRAVERSAL_KEYS, null);
        Look.named(this, name);
    }

    /** Words that find no room are cut, and said whole by the tool tip. */
    private final class Renderer extends DefaultTableCellRenderer {
        @Override
        public Component getTableCellRendererComponent(
                JTable table, Object value, boolean selected, boolean focus, int row, int column) {
            super.getTableCellRendererComponent(table, value, selected, focus, row, column);
            setToolTipText(String.valueOf(value).isEmpty() ? null : String.valueOf(value));
            if (struck.test(values.get(convertRowIndexToModel(row)))) {
                setFont(getFont().deriveFont(Map.of(TextAttribute.STRIKETHROUGH, TextAttribute.STRIKETHROUGH_ON)));
            }
            return this;
        }
    }

    /** Shows rows; the one chosen stays chosen if it is among them. */
    public void show(List<T> fresh) {
        Optional<Object> kept = chosen().map(key);
        filling = true;
        values = List.copyOf(fresh);
        rows.fireTableDataChanged();
        kept.ifPresent(old -> choose(row -> key.apply(row).equals(old)));
        filling = false;
    }

    /** Rows that no longer hold are drawn struck through; what they say in words is the column's affair. */
    public void strike(Predicate<T> gone) {
        struck = Objects.requireNonNull(gone, "gone");
    }

    public List<T> rows() {
        return values;
    }

    public Optional<T> chosen() {
        int row = getSelectedRow();
        return row < 0 || convertRowIndexToModel(row) >= values.size()
                ? Optional.empty()
                : Optional.of(values.get(convertRowIndexToModel(row)));
    }

    /** Every row chosen, where several may be. */
    public List<T> allChosen() {
        return IntStream.of(getSelectedRows())
                .map(this::convertRowIndexToModel)
                .filter(row -> row < values.size())
                .mapToObj(values::get)
                .toList();
    }

    /** Chooses the first row that suits; none if none does. */
    public void choose(Predicate<T> wanted) {
        IntStream.range(0, values.size())
                .filter(i -> wanted.test(values.get(i)))
                .findFirst()
                .ifPresentOrElse(
                        i -> {
                            int row = convertRowIndexToView(i);
                            setRowSelectionInterval(row, row);
                            scrollRectToVisible(getCellRect(row, 0, true));
                        },
                        this::clearSelection);
    }

    /** Told when the user chooses another row. */
    public void onChosen(Runnable listener) {
        getSelectionModel().addListSelectionListener(e -> {
            if (!e.getValueIsAdjusting() && !filling) {
                listener.run();
            }
        });
    }

    /** Offers by a right click, the menu key or Shift+F10 what can be done with the row chosen; a right click chooses the row under it. */
    public void menu(Supplier<List<? extends Action>> actions) {
        ContextMenu.on(this, actions);
        addMouseListener(new MouseAdapter() {
            @Override
            public void mousePressed(MouseEvent e) {
                int row = rowAtPoint(e.getPoint());
                if (SwingUtilities.isRightMouseButton(e) && row >= 0 && !isRowSelected(row)) {
                    setRowSelectionInterval(row, row);
                }
            }
        });
    }

    /** By the keyboard the menu opens at the row chosen. */
    @Override
    public Point getPopupLocation(MouseEvent e) {
        int row = getSelectedRow();
        return e == null && row >= 0
                ? new Point(24, getCellRect(row, 0, true).y + getRowHeight())
                : super.getPopupLocation(e);
    }

    /** Does something by a key while the table has the keyboard. */
    public void onKey(String stroke, Runnable work) {
        getInputMap(JComponent.WHEN_ANCESTOR_OF_FOCUSED_COMPONENT).put(KeyStroke.getKeyStroke(stroke), stroke);
        getActionMap().put(stroke, new AbstractAction() {
            @Override
            public void actionPerformed(ActionEvent e) {
                work.run();
            }
        });
    }
}
