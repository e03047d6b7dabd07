package quarterlight.ui.gauge.check;

import java.awt.Component;
import java.awt.event.ActionEvent;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import javax.swing.AbstractAction;
import javax.swing.DefaultCellEditor;
import javax.swing.JLabel;
import javax.swing.JTable;
import javax.swing.JTextField;
import javax.swing.KeyStroke;
import javax.swing.ListSelectionModel;
import javax.swing.table.AbstractTableModel;
import javax.swing.table.DefaultTableCellRenderer;
import javax.swing.table.TableCellRenderer;
import quarterlight.edit.EditRefused;
import quarterlight.thickness.gauge.GaugeQuality;
import quarterlight.thickness.gauge.GaugeVerdict;
import quarterlight.ui.kit.Format;
import quarterlight.ui.kit.Texts;
import quarterlight.ui.kit.UiContext;
import quarterlight.ui.kit.look.Look;
import quarterlight.ui.kit.visit.OpenVisit;
import quarterlight.units.Numerals;
import quarterlight.units.Thickness;
import quarterlight.units.ThicknessUnit;
import quarterlight.visit.pin.Recorded;
import quarterlight.visit.reading.GaugeCheck;
import quarterlight.visit.reading.GaugeMoment;
import quarterlight.visit.reading.GaugeSurface;
import quarterlight.visit.reading.GaugeValue;

/** What the gauge showed, typed into the sheet cell by cell, with deviation, tolerance, verdict and drift. Event thread only. */
final class CheckTable extends JTable {
    private static final List<String> COLUMNS =
            List.of("on", "shim-tolerance", "before", "before.verdict", "after", "after.verdict", "tolerance", "drift");
    private static final int[] WIDTHS = {130, 58, 64, 108, 64, 108, 70, 60};
    private static final int SHIM_TOLERANCE = 1;
    private static final int BEFORE = 2;
    private static final int AFTER = 4;

    private final transient UiContext parts;
    private final transient OpenVisit visit;
    private final transient Texts texts;
    private final transient CheckActions actions;
    private final transient Runnable refused;
    private final transient Sheet model = new Sheet();
    private transient CheckSheet sheet = new CheckSheet(List.of());
    private transient GaugeQuality quality = new GaugeQuality(List.of(), List.of());
    private transient ThicknessUnit unit = ThicknessUnit.MIL;

    private final class Sheet extends AbstractTableModel {
        @Override
        public int getRowCount() {
            return sheet.rows().size();
        }

        @Override
        public int getColumnCount() {
            return COLUMNS.size();
        }

        @Override
        public String getColumnName(int column) {
            return texts.get("check.column." + COLUMNS.get(column));
        }

        @Override
        public Object getValueAt(int row, int column) {
            return text(sheet.rows().get(row), column);
        }

        @Override
        public boolean isCellEditable(int row, int column) {
            boolean shim = sheet.rows().get(row).on() == GaugeSurface.SHIM;
            return visit.isEditable() && (column == BEFORE || column == AFTER || column == SHIM_TOLERANCE && shim);
        }

        @Override
        public void setValueAt(Object value, int row, int column) {
            put(sheet.rows().get(row), column, String.valueOf(value));
        }
    }

    /** Numbers stand at the right; words that find no room are said by the tool tip. */
    private static final class Cell extends DefaultTableCellRenderer {
        @Override
        public Component getTableCellRendererComponent(
                JTable table, Object value, boolean selected, boolean focus, int row, int column) {
            super.getTableCellRendererComponent(table, value, selected, focus, row, column);
            setHorizontalAlignment(isWords(column) ? LEADING : TRAILING);
            setToolTipText(String.valueOf(value).isEmpty() ? null : String.valueOf(value));
            return this;
        }
    }

    private static boolean isWords(int column) {
        return column == 0 || column == BEFORE + 1 || column == AFTER + 1;
    }

    /** The heads stand as their columns do. */
    private static Component head(TableCellRenderer usual, JTable table, Object value, int column) {
        Component head = usual.getTableCellRendererComponent(table, value, false, false, -1, column);
        if (head instanceof JLabel label) {
            label.setHorizontalAlignment(isWords(column) ? JLabel.LEADING : JLabel.TRAILING);
        }
        return head;
    }

    /** @param refused shows what is kept again after something was refused */
    CheckTable(UiContext parts, OpenVisit visit, CheckActions actions, Runnable refused) {
        this.parts = parts;
        this.visit = visit;
        this.texts = parts.texts();
        this.actions = actions;
        this.refused = refused;
        setModel(model);
        setName("gauge-checks");
        putClientProperty("FlatLaf.style", "cellMargins: 2,8,2,3");
        setCellSelectionEnabled(true);
        setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
        setFillsViewportHeight(true);
        setSurrendersFocusOnKeystroke(true);
        putClientProperty("terminateEditOnFocusLost", true);
        getTableHeader().setReorderingAllowed(false);
        getTableHeader().putClientProperty("FlatLaf.style", "cellMargins: 2,8,2,3");
        setDefaultRenderer(Object.class, new Cell());
        TableCellRenderer usual = getTableHeader().getDefaultRenderer();
        getTableHeader()
                .setDefaultRenderer((table, value, selected, focus, row, column) -> head(usual, table, value, column));
        JTextField field = new JTextField();
        field.setHorizontalAlignment(JTextField.TRAILING);
        DefaultCellEditor editor = new DefaultCellEditor(field);
        editor.setClickCountToStart(1);
        setDefaultEditor(Object.class, editor);
        for (int i = 0; i < WIDTHS.length; i++) {
            getColumnModel().getColumn(i).setPreferredWidth(WIDTHS[i]);
        }
        setFocusTraversalKeys(java.awt.KeyboardFocusManager.FORWARD_TRAVERSAL_KEYS, null);
        Look.named(this, texts.get("check.table"));
        getInputMap(WHEN_ANCESTOR_OF_FOCUSED_COMPONENT).put(KeyStroke.getKeyStroke("DELETE"), "take back");
        getActionMap().put("take back", new AbstractAction() {
            @Override
            public void actionPerformed(ActionEvent e) {
                takeBack();
            }
        });
    }

    /** Takes what stands in the cell back. */
    private void takeBack() {
        if (getSelectedRow() >= 0 && isCellEditable(getSelectedRow(), getSelectedColumn())) {
            put(sheet.rows().get(getSelectedRow()), getSelectedColumn(), "");
        }
    }

    void show(CheckSheet fresh, GaugeQuality judged, ThicknessUnit shown) {
        if (isEditing()) {
            return;
        }
        boolean same = fresh.rows().size() == sheet.rows().size();
        int row = getSelectedRow();
        int column = getSelectedColumn();
        sheet = fresh;
        quality = judged;
        unit = shown;
        if (same) {
            model.fireTableRowsUpdated(0, Math.max(0, sheet.rows().size() - 1));
        } else {
            model.fireTableDataChanged();
        }
        if (row >= 0 && row < getRowCount() && column >= 0) {
            changeSelection(row, column, false, false);
        } else if (getRowCount() > 0 && getSelectedRow() < 0) {
            changeSelection(0, BEFORE, false, false);
        }
    }

    /** Goes to what is to be typed for a shim. */
    void go(GaugeValue.Measured nominal) {
        for (int i = 0; i < sheet.rows().size(); i++) {
            if (sheet.rows().get(i).on() == GaugeSurface.SHIM
                    && sheet.rows().get(i).nominal().equals(nominal)) {
                changeSelection(i, BEFORE, false, false);
                requestFocusInWindow();
            }
        }
    }

    private void put(CheckSheet.Row row, int column, String typed) {
        try {
            switch (column) {
                case SHIM_TOLERANCE ->
                    actions.shimTolerance(
                            row,
                            typed.isBlank()
                                    ? OptionalDouble.empty()
                                    : OptionalDouble.of(Math.abs(
                                            actions.thickness(typed).thickness().um())));
                case BEFORE -> actions.shown(row, GaugeMoment.BEFORE, typed);
                case AFTER -> actions.shown(row, GaugeMoment.AFTER, typed);
                default -> refused.run();
            }
        } catch (EditRefused e) {
            parts.problems().remark(e.getMessage());
            refused.run();
        }
    }

    private String text(CheckSheet.Row row, int column) {
        return switch (column) {
            case 0 ->
                row.on() == GaugeSurface.BARE
                        ? texts.get("check.bare")
                        : texts.get("check.shim.of", typed(row.nominal()));
            case SHIM_TOLERANCE ->
                row.toleranceUm().isPresent() ? fine(row.toleranceUm().getAsDouble(), unit) : "";
            case BEFORE -> shown(row, GaugeMoment.BEFORE);
            case BEFORE + 1 -> verdict(row, GaugeMoment.BEFORE);
            case AFTER -> shown(row, GaugeMoment.AFTER);
            case AFTER + 1 -> verdict(row, GaugeMoment.AFTER);
            case AFTER + 2 ->
                row.before()
                        .or(row::after)
                        .flatMap(this::verdict)
                        .filter(GaugeVerdict::canTell)
                        .map(found -> "\u00b1\u2009" + fine(found.toleranceUm().getAsDouble(), unit))
                        .orElse("");
            default -> drift(row);
        };
    }

    private static String typed(GaugeValue.Measured value) {
        return Numerals.typed(value.typed()) + "\u2009" + Format.unit(value.unit());
    }

    private String shown(CheckSheet.Row row, GaugeMoment moment) {
        return row.at(moment)
                .map(check -> check.value().shown())
                .map(value -> value.unit() == unit ? Numerals.typed(value.typed()) : typed(value))
                .orElse("");
    }

    private Optional<GaugeVerdict> verdict(Recorded<GaugeCheck> check) {
        return quality.verdicts().stream()
                .filter(found -> found.row().equals(check.id()))
                .findFirst();
    }

    private String verdict(CheckSheet.Row row, GaugeMoment moment) {
        return row.at(moment)
                .flatMap(this::verdict)
                .map(found -> signed(found.deviationUm(), unit) + ", "
                        + texts.get(
                                !found.canTell()
                                        ? "check.cannot-tell"
                                        : found.passes() ? "check.within" : "check.beyond"))
                .orElse("");
    }

    private String drift(CheckSheet.Row row) {
        if (row.before().isEmpty() || row.after().isEmpty()) {
            return "";
        }
        double before = row.before().get().value().shown().thickness().um();
        return signed(row.after().get().value().shown().thickness().um() - before, unit);
    }

    /** One digit more than a mean: these are small. */
    static String fine(double um, ThicknessUnit unit) {
        return Format.number(new Thickness(um).in(unit), unit == ThicknessUnit.MIL ? 2 : 1);
    }

    static String signed(double um, ThicknessUnit unit) {
        String number = fine(um, unit);
        return number.chars().anyMatch(c -> c >= '1' && c <= '9') && um > 0 ? "+" + number : number;
    }
}
