package quarterlight.ui.kit.widget;

import java.awt.Component;
import java.awt.Dialog;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import javax.swing.DefaultCellEditor;
import javax.swing.JButton;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JDialog;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTable;
import javax.swing.JTextArea;
import javax.swing.KeyStroke;
import javax.swing.ListSelectionModel;
import javax.swing.SwingUtilities;
import javax.swing.event.TableModelEvent;
import javax.swing.table.DefaultTableModel;
import net.miginfocom.swing.MigLayout;
import quarterlight.coverage.EvidenceKind;
import quarterlight.coverage.TrialGroup;
import quarterlight.edit.EditRefused;
import quarterlight.edit.list.UserLists;
import quarterlight.table.list.UserList;
import quarterlight.ui.kit.Texts;
import quarterlight.ui.kit.UiContext;
import quarterlight.ui.kit.look.Look;
import quarterlight.units.Worded;

/**
 * One of the user's own lists as a grid: rows are changed, added and removed, and checked when the list is kept; or the program's list is taken up
 * again. Event thread only; files are read and written in the background.
 */
public final class UserListDialog {
    private static final Set<String> YES_OR_NO = Set.of("finish", "structural", "running");
    private static final Set<String> SENTENCES = Set.of("why", "item", "reading");
    private static final Set<String> WORDS = Set.of("zones", "groups", "wants", "form");
    private static final int SENTENCE_PX = 280;
    private static final int WORDS_PX = 136;
    private static final int WORD_PX = 92;

    private final UiContext parts;
    private final Texts texts;
    private final UserList list;
    private final Runnable changed;
    private final JDialog dialog;
    private final DefaultTableModel rows;
    private final JTable table;
    private final JTextArea said = new JTextArea(2, 40);
    private final List<JButton> buttons = new ArrayList<>();

    private UserListDialog(
            Component parent, UiContext parts, UserList list, List<List<String>> cells, boolean own, Runnable changed) {
        this.parts = parts;
        this.texts = parts.texts();
        this.list = list;
        this.changed = changed;
        dialog = new JDialog(
                SwingUtilities.getWindowAncestor(parent),
                texts.get("list.title." + list.word()),
                Dialog.ModalityType.DOCUMENT_MODAL);
        dialog.setName("user-list");
        rows = new DefaultTableModel(
                list.columns().stream()
                        .map(name -> texts.get("list.column." + name))
                        .toArray(),
                0);
        cells.forEach(row -> rows.addRow(row.toArray()));
        table = grid();
        JPanel panel =
                new JPanel(new MigLayout("insets 16, gap 8, wrap 1, fill", "[grow,fill]", "[][][grow,fill][][]"));
        panel.add(Look.secondary(new JLabel(texts.get("list.head." + list.word()))), "wmin 0");
        panel.add(
                Look.secondary(new JLabel(texts.get(
                        own ? "list.own" : "list.shipped",
                        new UserLists(parts.settings().folder()).file(list)))),
                "wmin 0");
        JScrollPane scroll = new JScrollPane(table);
        Look.bare(scroll);
        panel.add(scroll, "w 1180::, h 440::");
        said.setEditable(false);
        said.setFocusable(false);
        said.setOpaque(false);
        said.setLineWrap(true);
        said.setWrapStyleWord(true);
        said.setName("list-said");
        Look.named(said, texts.get("list.said"));
        panel.add(said, "wmin 0");
        panel.add(foot(own));
        dialog.add(panel);
        dialog.getRootPane()
                .registerKeyboardAction(
                        e -> dialog.dispose(),
                        KeyStroke.getKeyStroke("ESCAPE"),
                        JComponent.WHEN_ANCESTOR_OF_FOCUSED_COMPONENT);
        dialog.pack();
        dialog.setLocationRelativeTo(parent);
    }

    /**
     * Reads the list in use and shows it for changing.
     *
     * @param changed told when another list holds from now on
     */
    public static void open(Component parent, UiContext parts, UserList list, Runnable changed) {
        UserLists lists = new UserLists(parts.settings().folder());
        parts.jobs()
                .start(
                        parts.texts().get("list.reading"),
                        progress -> new Read(lists.cells(list), lists.isOwn(list)),
                        read -> new UserListDialog(parent, parts, list, read.cells(), read.own(), changed)
                                .dialog.setVisible(true),
                        parts.problems()::failed);
    }

    private record Read(List<List<String>> cells, boolean own) {}

    private JTable grid() {
        JTable grid = new JTable(rows);
        grid.setName("list-rows");
        Look.named(grid, texts.get("list.title." + list.word()));
        grid.setSelectionMode(ListSelectionModel.MULTIPLE_INTERVAL_SELECTION);
        grid.putClientProperty("terminateEditOnFocusLost", true);
        grid.getTableHeader().setReorderingAllowed(false);
        if (grid.getTableHeader().getDefaultRenderer() instanceof JLabel label) {
            label.setHorizontalAlignment(JLabel.LEADING);
        }
        for (int i = 0; i < list.columns().size(); i++) {
            String name = list.columns().get(i);
            choices(name).ifPresent(box -> grid.getColumn(texts.get("list.column." + name))
                    .setCellEditor(new DefaultCellEditor(box)));
            grid.getColumnModel().getColumn(i).setPreferredWidth(width(name));
        }
        rows.addTableModelListener(e -> {
            if (e.getType() == TableModelEvent.UPDATE) {
                said.setText("");
            }
        });
        return grid;
    }

    private static int width(String column) {
        return SENTENCES.contains(column) ? SENTENCE_PX : WORDS.contains(column) ? WORDS_PX : WORD_PX;
    }

    /** The words to choose from, where a column takes only those. */
    private static Optional<JComboBox<String>> choices(String column) {
        Stream<String> words = column.equals("wants")
                ? Worded.list(EvidenceKind.class).stream()
                : column.equals("group")
                        ? Worded.list(TrialGroup.class).stream()
                        : YES_OR_NO.contains(column) ? Stream.of("", "yes", "no") : Stream.empty();
        String[] all = words.toArray(String[]::new);
        return all.length == 0 ? Optional.empty() : Optional.of(new JComboBox<>(all));
    }

    private JComponent foot(boolean own) {
        JPanel foot = new JPanel(new MigLayout("insets 8 0 0 0, gap 8, fillx", "[][]push[][][]"));
        foot.add(button("add", this::add));
        foot.add(button("remove", this::remove));
        JButton back = button("back", () -> work(lists -> lists.giveUp(list)));
        back.setEnabled(own);
        foot.add(back);
        foot.add(button("cancel", dialog::dispose));
        JButton keep = button("keep", this::keep);
        foot.add(keep);
        dialog.getRootPane().setDefaultButton(keep);
        return foot;
    }

    private JButton button(String name, Runnable work) {
        JButton button = new JButton(texts.get("list.do." + name));
        button.setName("list-" + name);
        button.addActionListener(e -> work.run());
        buttons.add(button);
        return button;
    }

    private void add() {
        int at = table.getSelectedRow() < 0 ? rows.getRowCount() : table.getSelectedRow() + 1;
        rows.insertRow(at, list.columns().stream().map(name -> "").toArray());
        table.changeSelection(at, 0, false, false);
        table.requestFocusInWindow();
    }

    private void remove() {
        int[] chosen = table.getSelectedRows();
        IntStream.range(0, chosen.length)
                .map(i -> chosen[chosen.length - 1 - i])
                .forEach(rows::removeRow);
    }

    private List<List<String>> cells() {
        return IntStream.range(0, rows.getRowCount())
                .mapToObj(row -> IntStream.range(0, rows.getColumnCount())
                        .mapToObj(column ->
                                String.valueOf(rows.getValueAt(row, column)).strip())
                        .toList())
                .filter(row -> row.stream().anyMatch(cell -> !cell.isEmpty()))
                .toList();
    }

    private void keep() {
        if (table.isEditing()) {
            table.getCellEditor().stopCellEditing();
        }
        List<List<String>> fresh = cells();
        work(lists -> lists.keep(list, fresh));
    }

    @FunctionalInterface
    private interface Work {
        void on(UserLists lists) throws Exception;
    }

    private void work(Work work) {
        buttons.forEach(button -> button.setEnabled(false));
        parts.jobs()
                .start(
                        texts.get("list.keeping"),
                        progress -> {
                            work.on(new UserLists(parts.settings().folder()));
                            return list;
                        },
                        done -> {
                            dialog.dispose();
                            changed.run();
                        },
                        this::refused);
    }

    private void refused(Throwable failure) {
        buttons.forEach(button -> button.setEnabled(true));
        if (failure instanceof EditRefused refused) {
            said.setText(refused.getMessage());
        } else {
            parts.problems().failed(failure);
        }
    }
}
