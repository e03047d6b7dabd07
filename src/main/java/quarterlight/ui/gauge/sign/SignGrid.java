package quarterlight.ui.gauge.sign;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Component;
import java.awt.Dimension;
import java.awt.FontMetrics;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.event.ActionEvent;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import javax.accessibility.AccessibleRole;
import javax.swing.AbstractAction;
import javax.swing.JComponent;
import javax.swing.JTable;
import javax.swing.KeyStroke;
import javax.swing.ListSelectionModel;
import javax.swing.table.AbstractTableModel;
import javax.swing.table.DefaultTableCellRenderer;
import javax.swing.table.TableCellRenderer;
import javax.swing.table.TableColumn;
import quarterlight.car.ZoneId;
import quarterlight.edit.gauge.FinishEdits;
import quarterlight.ui.kit.Texts;
import quarterlight.ui.kit.look.DrawnComponent;
import quarterlight.ui.kit.look.Look;
import quarterlight.ui.kit.look.Palette;
import quarterlight.visit.trial.SignKind;

/**
 * Zones by signs: a full disc is seen, a short line is looked for and not seen, an empty cell is not looked for; a corner mark is a photo, a
 * small dot speaks from another zone. Each sign has a letter, written below its name. Event thread only.
 */
final class SignGrid extends JTable {
    private static final List<SignKind> KINDS = List.of(SignKind.values());

    private final transient Texts texts;
    private final transient Function<ZoneId, String> label;
    private final transient Sheet model = new Sheet();
    private transient SignSheet sheet = new SignSheet(List.of(), List.of());

    private final class Sheet extends AbstractTableModel {
        @Override
        public int getRowCount() {
            return sheet.rows().size();
        }

        @Override
        public int getColumnCount() {
            return 1 + KINDS.size();
        }

        @Override
        public String getColumnName(int column) {
            return column == 0 ? texts.get("signs.zone") : words(KINDS.get(column - 1));
        }

        @Override
        public Object getValueAt(int row, int column) {
            return column == 0 ? label.apply(sheet.rows().get(row).zone()) : said(row, column);
        }
    }

    SignGrid(Texts texts, Function<ZoneId, String> label) {
        this.texts = texts;
        this.label = label;
        setModel(model);
        setName("sign-grid");
        setCellSelectionEnabled(true);
        setSelectionMode(ListSelectionModel.MULTIPLE_INTERVAL_SELECTION);
        setAutoResizeMode(AUTO_RESIZE_LAST_COLUMN);
        getTableHeader().setReorderingAllowed(false);
        getTableHeader().setResizingAllowed(false);
        for (int i = 0; i <= KINDS.size(); i++) {
            TableColumn column = getColumnModel().getColumn(i);
            column.setHeaderRenderer(new Head());
            column.setCellRenderer(i == 0 ? new Names() : new Cells());
        }
        setFocusTraversalKeys(java.awt.KeyboardFocusManager.FORWARD_TRAVERSAL_KEYS, null);
        Look.named(this, texts.get("signs.grid"));
        widths();
    }

    /** As wide as the words are large. */
    private void widths() {
        getTableHeader().setPreferredSize(new Dimension(namesPx() + cellPx() * KINDS.size(), headPx()));
        for (int i = 0; i <= KINDS.size(); i++) {
            TableColumn column = getColumnModel().getColumn(i);
            int width = i == 0 ? namesPx() : cellPx();
            column.setMinWidth(0);
            column.setMaxWidth(i == 0 || i == KINDS.size() ? Look.px(400) : width);
            column.setMinWidth(width);
            column.setPreferredWidth(width);
        }
    }

    @Override
    public void updateUI() {
        super.updateUI();
        if (sheet != null) {
            widths();
        }
    }

    /** {@code tape-edge} as words. */
    static String words(SignKind kind) {
        return kind.said().replace('-', ' ');
    }

    private String said(int row, int column) {
        SignSheet.Row zone = sheet.rows().get(row);
        SignSheet.Cell cell = sheet.cell(zone.zone(), KINDS.get(column - 1));
        return texts.get(
                cell.seen().isEmpty() ? "signs.not-looked" : cell.seen().get() ? "signs.seen" : "signs.not-seen");
    }

    void show(SignSheet fresh) {
        if (fresh.equals(sheet)) {
            return;
        }
        boolean same = fresh.rows().equals(sheet.rows());
        int[] rows = getSelectedRows();
        int[] columns = getSelectedColumns();
        sheet = fresh;
        if (same) {
            repaint();
            return;
        }
        model.fireTableDataChanged();
        if (rows.length > 0
                && columns.length > 0
                && rows[rows.length - 1] < sheet.rows().size()) {
            setRowSelectionInterval(rows[0], rows[rows.length - 1]);
            setColumnSelectionInterval(columns[0], columns[columns.length - 1]);
        }
    }

    SignSheet sheet() {
        return sheet;
    }

    /** The zones of the rows chosen. */
    Set<ZoneId> zones() {
        Set<ZoneId> zones = new LinkedHashSet<>();
        for (int row : getSelectedRows()) {
            if (row < sheet.rows().size()) {
                zones.add(sheet.rows().get(row).zone());
            }
        }
        return zones;
    }

    /** The signs of the columns chosen; none if only the names are. */
    Set<SignKind> kinds() {
        Set<SignKind> kinds = new LinkedHashSet<>();
        for (int column : getSelectedColumns()) {
            if (column > 0) {
                kinds.add(KINDS.get(column - 1));
            }
        }
        return kinds;
    }

    /** The cells chosen. */
    Set<FinishEdits.Place> places() {
        Set<FinishEdits.Place> places = new LinkedHashSet<>();
        for (SignSheet.Row row : sheet.rows()) {
            if (zones().contains(row.zone())) {
                kinds().forEach(kind -> places.add(new FinishEdits.Place(row.zone(), kind, row.speaksFor())));
            }
        }
        return places;
    }

    /** Chooses the rows of zones in the columns chosen before, the first sign if none was. */
    void choose(Set<ZoneId> zones) {
        clearRowsOnly();
        for (int i = 0; i < sheet.rows().size(); i++) {
            if (zones.contains(sheet.rows().get(i).zone())) {
                addRowSelectionInterval(i, i);
                scrollRectToVisible(getCellRect(i, 0, true));
            }
        }
        if (getSelectedRow() >= 0 && getSelectedColumn() <= 0) {
            setColumnSelectionInterval(1, 1);
        }
    }

    /** A click on a name chooses the row in the column in hand: names hold no sign. */
    @Override
    public void changeSelection(int row, int column, boolean toggle, boolean extend) {
        super.changeSelection(row, column == 0 ? Math.max(1, getSelectedColumn()) : column, toggle, extend);
    }

    /** The letter of a sign. */
    char letter(SignKind kind) {
        return texts.get("signs.letters").charAt(kind.ordinal());
    }

    /** Goes to a sign of the zone in hand; false if there is none. */
    boolean goTo(SignKind kind) {
        boolean there = getSelectedRow() >= 0;
        if (there) {
            changeSelection(getSelectedRow(), 1 + kind.ordinal(), false, false);
        }
        return there;
    }

    /** Goes on to the same sign of the next zone; false at the last one. */
    boolean goOn() {
        int next = getSelectedRow() + 1;
        boolean more = next < sheet.rows().size();
        if (more) {
            changeSelection(next, getSelectedColumn(), false, false);
        }
        return more;
    }

    private void clearRowsOnly() {
        getSelectionModel().clearSelection();
    }

    void onKey(String stroke, Runnable work) {
        getInputMap(JComponent.WHEN_ANCESTOR_OF_FOCUSED_COMPONENT).put(KeyStroke.getKeyStroke(stroke), stroke);
        getActionMap().put(stroke, new AbstractAction() {
            @Override
            public void actionPerformed(ActionEvent e) {
                work.run();
            }
        });
    }

    /** The zone's name, tinted while its row is chosen. */
    private static final class Names extends DefaultTableCellRenderer {
        @Override
        public Component getTableCellRendererComponent(
                JTable table, Object value, boolean selected, boolean focus, int row, int column) {
            return super.getTableCellRendererComponent(table, value, table.isRowSelected(row), focus, row, column);
        }
    }

    /** Names of signs, written upward. */
    private final class Head extends DrawnComponent implements TableCellRenderer {
        private String name = "";
        private String letter = "";
        private boolean upward;

        @Override
        public Component getTableCellRendererComponent(
                JTable table, Object value, boolean selected, boolean focus, int row, int column) {
            name = String.valueOf(value);
            upward = column > 0;
            letter = upward ? String.valueOf(letter(KINDS.get(column - 1))) : "";
            return Look.named(this, upward ? name + ", " + letter : name);
        }

        @Override
        protected AccessibleRole role() {
            return AccessibleRole.LABEL;
        }

        @Override
        protected void paintComponent(Graphics graphics) {
            Graphics2D g = (Graphics2D) graphics.create();
            g.setRenderingHint(RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
            Palette palette = Look.palette();
            g.setColor(palette.paper());
            g.fillRect(0, 0, getWidth(), getHeight());
            g.setColor(palette.line());
            g.fillRect(0, getHeight() - 1, getWidth(), 1);
            g.setFont(SignGrid.this.getFont());
            g.setColor(palette.ink());
            FontMetrics metrics = g.getFontMetrics();
            if (upward) {
                g.setColor(palette.secondInk());
                g.drawString(letter, (cellPx() - metrics.stringWidth(letter)) / 2, getHeight() - 8);
                g.setColor(palette.ink());
                g.translate(cellPx() / 2.0 + metrics.getAscent() / 2.0 - 2, getHeight() - 12.0 - metrics.getHeight());
                g.rotate(-Math.PI / 2);
                g.drawString(name, 0, 0);
            } else {
                g.drawString(name, 4, getHeight() - 10);
            }
            g.dispose();
        }
    }

    /** One cell. */
    private final class Cells extends DrawnComponent implements TableCellRenderer {
        private SignSheet.Cell cell =
                new SignSheet.Cell(Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty());
        private boolean chosen;
        private boolean lead;

        @Override
        public Component getTableCellRendererComponent(
                JTable table, Object value, boolean selected, boolean focus, int row, int column) {
            cell = sheet.cell(sheet.rows().get(row).zone(), KINDS.get(column - 1));
            chosen = selected;
            lead = focus;
            setToolTipText(label.apply(sheet.rows().get(row).zone()) + ", " + words(KINDS.get(column - 1)) + ": "
                    + value + cell.note().map(note -> ". " + note).orElse(""));
            return Look.named(this, getToolTipText());
        }

        @Override
        protected AccessibleRole role() {
            return AccessibleRole.LABEL;
        }

        @Override
        protected void paintComponent(Graphics graphics) {
            Graphics2D g = (Graphics2D) graphics.create();
            g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
            Palette palette = Look.palette();
            g.setColor(chosen ? Palette.mix(palette.sheet(), palette.accent(), 0.22) : palette.sheet());
            g.fillRect(0, 0, getWidth(), getHeight());
            g.setColor(Palette.mix(palette.sheet(), palette.line(), 0.6));
            g.fillRect(0, getHeight() - 1, getWidth(), 1);
            double x = cellPx() / 2.0;
            double y = getHeight() / 2.0;
            g.setStroke(new BasicStroke(1.4f));
            Color faint = Palette.mix(palette.sheet(), palette.ink(), 0.5);
            if (cell.seen().isPresent() && cell.seen().get()) {
                g.setColor(palette.ink());
                g.fill(new Ellipse2D.Double(x - 6, y - 6, 12, 12));
            } else if (cell.seen().isPresent()) {
                g.setColor(faint);
                g.draw(new Line2D.Double(x - 5, y, x + 5, y));
            }
            if (cell.photo().isPresent()) {
                g.setColor(palette.accent());
                g.fill(new Rectangle2D.Double(x + 7, y - 11, 5, 5));
            }
            cell.elsewhere().ifPresent(seen -> {
                g.setColor(faint);
                Ellipse2D dot =
                        new Ellipse2D.Double(x - 2.5, y - 2.5 + (cell.seen().isPresent() ? 9 : 0), 5, 5);
                if (seen) {
                    g.fill(dot);
                } else {
                    g.draw(dot);
                }
            });
            if (lead) {
                g.setColor(palette.accent());
                g.draw(new Rectangle2D.Double(1, 1, getWidth() - 3.0, getHeight() - 3.0));
            }
            g.dispose();
        }
    }

    private static int namesPx() {
        return Look.px(168);
    }

    private static int cellPx() {
        return Look.px(30);
    }

    /** As high as the longest name. */
    private int headPx() {
        FontMetrics metrics = getFontMetrics(getFont());
        int longest = KINDS.stream()
                .mapToInt(kind -> metrics.stringWidth(words(kind)))
                .max()
                .orElse(0);
        return 12 + metrics.getHeight() + longest + Look.px(8);
    }
}
