package quarterlight.ui.kit.widget;

import java.awt.Component;
import java.awt.Font;
import java.awt.Point;
import java.awt.event.ActionEvent;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.awt.font.TextAttribute;
import java.util.Comparator;
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
import javax.swing.BorderFactory;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JTable;
import javax.swing.KeyStroke;
import javax.swing.ListSelectionModel;
import javax.swing.SwingUtilities;
import javax.swing.table.AbstractTableModel;
import javax.swing.table.DefaultTableCellRenderer;
import javax.swing.table.TableCellRenderer;
import quarterlight.ui.kit.look.Look;

/** A table of rows of one kind for reading and choosing: a row chosen stays chosen when the rows change. Event thread only. */
public final class FactTable<T> extends JTable {
    /**
     * One column.
     *
     * @param width preferred, px
     * @param text what a row says in it
     * @param number whether it holds figures, which stand at the right
     * @param weight how heavily a row weighs in it
     */
    public record Column<T>(
            String title, int width, Function<T, String> text, boolean number, Function<T, Weight> weight) {
        /** A column of plain words. */
        public Column(String title, int width, Function<T, String> text) {
            this(title, width, text, false, row -> Weight.PLAIN);
        }

        /** The same, of figures. */
        public Column<T> numbers() {
            return new Column<>(title, width, text, true, weight);
        }

        /** The same, each row with its weight. */
        public Column<T> weighed(Function<T, Weight> by) {
            return new Column<>(title, width, text, number, by);
        }
    }

    private static final int INDENT = 6;

    private final transient List<Column<T>> columns;
    private final transient Function<T, Object> key;
    private final transient Rows rows = new Rows();
    private transient List<T> values = List.of();
    private transient Predicate<T> struck = row -> false;
    private transient Function<T, Optional<String>> tip = row -> Optional.empty();
    private transient Optional<Comparator<T>> order = Optional.empty();
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
        alignHeads();
        widths();
        setDefaultRenderer(Object.class, new Renderer());
        setFocusTraversalKeys(java.awt.KeyboardFocusManager.FORWARD_TRAVERSAL_KEYS, null);
        Look.named(this, name);
    }

    /** As wide as the words are large. */
    private void widths() {
        for (int i = 0; i < columns.size(); i++) {
            getColumnModel()
                    .getColumn(i)
                    .setPreferredWidth(Look.px(columns.get(i).width()));
        }
    }

    @Override
    public void updateUI() {
        super.updateUI();
        if (columns != null) {
            widths();
        }
    }

    /** Heads stand as their columns do. */
    private void alignHeads() {
        TableCellRenderer usual = getTableHeader().getDefaultRenderer();
        getTableHeader().setDefaultRenderer((table, value, selected, focus, row, column) -> {
            Component head = usual.getTableCellRendererComponent(table, value, selected, focus, row, column);
            if (head instanceof JLabel label) {
                label.setHorizontalAlignment(side(column));
                indent(label, column);
            }
            return head;
        });
    }

    private int side(int column) {
        return columns.get(convertColumnIndexToModel(column)).number() ? JLabel.TRAILING : JLabel.LEADING;
    }

    /** Words keep off the edge of the table, and off figures that end where they begin. */
    private void indent(JLabel cell, int column) {
        boolean afterNumbers = column > 0 && side(column - 1) == JLabel.TRAILING && side(column) == JLabel.LEADING;
        if (column == 0 || afterNumbers) {
            cell.setBorder(BorderFactory.createCompoundBorder(
                    cell.getBorder(), BorderFactory.createEmptyBorder(0, Look.px(INDENT), 0, 0)));
        }
    }

    /** Words that find no room are cut, and said whole by the tool tip. */
    private final class Renderer extends DefaultTableCellRenderer {
        @Override
        public Component getTableCellRendererComponent(
                JTable table, Object value, boolean selected, boolean focus, int row, int column) {
            super.getTableCellRendererComponent(table, value, selected, focus, row, column);
            setToolTipText(String.valueOf(value).isEmpty() ? null : String.valueOf(value));
            T shown = values.get(convertRowIndexToModel(row));
            Weight weight =
                    columns.get(convertColumnIndexToModel(column)).weight().apply(shown);
            setHorizontalAlignment(side(column));
            indent(this, column);
            setForeground(weight.ink());
            setIcon(weight.isHeavy() ? weight.sign() : null);
            if (weight.isHeavy()) {
                setFont(getFont().deriveFont(Font.BOLD));
            }
            if (struck.test(shown)) {
                setFont(getFont().deriveFont(Map.of(TextAttribute.STRIKETHROUGH, TextAttribute.STRIKETHROUGH_ON)));
            }
            return this;
        }
    }

    /** Shows rows; the one chosen stays chosen if it is among them. */
    public void show(List<T> fresh) {
        Optional<Object> kept = chosen().map(key);
        filling = true;
        values = order.map(by -> fresh.stream().sorted(by).toList()).orElse(List.copyOf(fresh));
        rows.fireTableDataChanged();
        kept.ifPresent(old -> choose(row -> key.apply(row).equals(old)));
        filling = false;
    }

    /** Rows that no longer hold are drawn struck through; what they say in words is the column's affair. */
    public void strike(Predicate<T> gone) {
        struck = Objects.requireNonNull(gone, "gone");
    }

    /** What a row says when the pointer rests on it; where it is empty, a cell says its own words. */
    public void tips(Function<T, Optional<String>> ofRow) {
        tip = Objects.requireNonNull(ofRow, "ofRow");
    }

    @Override
    public String getToolTipText(MouseEvent e) {
        int row = rowAtPoint(e.getPoint());
        return Optional.of(row)
                .filter(at -> at >= 0)
                .map(at -> values.get(convertRowIndexToModel(at)))
                .flatMap(tip)
                .orElseGet(() -> super.getToolTipText(e));
    }

    /** In which order rows stand until the user asks for another; equals as they come. */
    public void order(Comparator<T> first) {
        order = Optional.of(first);
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
                            bringIntoSight(row);
                        },
                        this::clearSelection);
    }

    /** At once, and again once rows that came with it have their room: until then the table ends above them. */
    private void bringIntoSight(int row) {
        scrollRectToVisible(getCellRect(row, 0, true));
        if (!isValid()) {
            SwingUtilities.invokeLater(() -> {
                if (isRowSelected(row)) {
                    scrollRectToVisible(getCellRect(row, 0, true));
                }
            });
        }
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
