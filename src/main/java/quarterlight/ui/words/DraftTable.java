package quarterlight.ui.words;

import java.awt.Rectangle;
import java.awt.event.KeyAdapter;
import java.awt.event.KeyEvent;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import java.util.function.IntConsumer;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import javax.swing.JComponent;
import javax.swing.JScrollPane;
import javax.swing.KeyStroke;
import javax.swing.ListSelectionModel;
import javax.swing.SwingUtilities;
import quarterlight.edit.spoken.DraftLine;
import quarterlight.edit.spoken.SpokenQuote;
import quarterlight.language.Language;
import quarterlight.ui.kit.Texts;
import quarterlight.ui.kit.UiContext;
import quarterlight.ui.kit.look.Look;
import quarterlight.ui.kit.visit.OpenVisit;
import quarterlight.ui.kit.widget.FactTable;
import quarterlight.words.Draft;
import quarterlight.words.DraftKind;

/** The drafts as a list that is gone through by keys. It knows which of them stood whole on the screen. Event thread only. */
final class DraftTable {
    private static final int PERCENT = 100;

    private final Texts texts;
    private final OpenVisit visit;
    private final WordsModel model;
    private final FactTable<DraftRow> table;
    private final JScrollPane scroll;
    private final BooleanSupplier inFront;
    private boolean turning;

    /** @param inFront whether the station is the one that is looked at */
    DraftTable(UiContext parts, OpenVisit visit, WordsModel model, BooleanSupplier inFront) {
        this.inFront = inFront;
        this.texts = parts.texts();
        this.visit = visit;
        this.model = model;
        table = new FactTable<>(
                texts.get("words.drafts"),
                List.of(
                        column("time", 56, row -> SpokenQuote.clock(row.read().atSeconds())),
                        column("what", 78, row -> row.written().what().said()),
                        column("zone", 150, row -> zones(row.written())),
                        column("value", 140, row -> value(row.written())),
                        column("p", 64, this::state),
                        column("words", 260, row -> row.read().words().strip())),
                DraftRow::id);
        table.setName("words-drafts");
        table.setSelectionMode(ListSelectionModel.MULTIPLE_INTERVAL_SELECTION);
        table.getColumnModel().getColumn(0).setMaxWidth(Look.px(64));
        table.getColumnModel().getColumn(4).setMaxWidth(Look.px(96));
        table.strike(row -> row.state() == DraftRow.State.DROPPED || row.state() == DraftRow.State.WITHDRAWN);
        scroll = new JScrollPane(table);
        Look.bare(scroll);
        scroll.setHorizontalScrollBarPolicy(JScrollPane.HORIZONTAL_SCROLLBAR_NEVER);
        scroll.getVerticalScrollBar().setUnitIncrement(26);
        scroll.getViewport().addChangeListener(e -> look());
        table.onChosen(this::chosen);
    }

    private FactTable.Column<DraftRow> column(
            String name, int width, java.util.function.Function<DraftRow, String> text) {
        return new FactTable.Column<>(texts.get("words.column." + name), width, text);
    }

    private String zones(Draft draft) {
        return draft.zones().isEmpty()
                ? texts.get("words.whole-car")
                : draft.zones().stream().map(visit::label).collect(Collectors.joining("; "));
    }

    private String state(DraftRow row) {
        return row.isOpen()
                ? row.isChanged()
                        ? texts.get("words.state.changed")
                        : String.format(
                                        Locale.ROOT,
                                        "%d\u2009%%",
                                        Math.round(row.read().p() * PERCENT))
                                + (row.isSure() ? "" : " ?")
                : texts.get("words.state." + row.state().name().toLowerCase(Locale.ROOT));
    }

    JComponent component() {
        return scroll;
    }

    FactTable<DraftRow> table() {
        return table;
    }

    /** Keys while the list has the keyboard. A letter or digit is handed on, all others are commands. */
    void keys(Runnable keep, Runnable drop, Runnable change, Runnable hear, Runnable hold, IntConsumer letter) {
        table.onKey("ENTER", keep);
        table.onKey("DELETE", drop);
        table.onKey("BACK_SPACE", drop);
        table.onKey("shift ENTER", this::chooseSure);
        table.onKey("TAB", () -> turnToDoubt(1));
        table.onKey("shift TAB", () -> turnToDoubt(-1));
        table.onKey("SPACE", hold);
        table.onKey("ctrl A", () -> {});
        table.onKey("meta A", () -> {});
        table.onKey("RIGHT", hear);
        table.addKeyListener(new KeyAdapter() {
            @Override
            public void keyTyped(KeyEvent e) {
                if (e.getKeyChar() == '/') {
                    e.consume();
                    change.run();
                } else if (Character.isLetterOrDigit(e.getKeyChar())
                        && !e.isControlDown()
                        && !e.isMetaDown()
                        && !e.isAltDown()) {
                    e.consume();
                    letter.accept(e.getKeyChar());
                }
            }
        });
        table.setFocusTraversalKeys(
                java.awt.KeyboardFocusManager.FORWARD_TRAVERSAL_KEYS,
                java.util.Set.of(KeyStroke.getKeyStroke("ctrl TAB")));
        table.setFocusTraversalKeys(
                java.awt.KeyboardFocusManager.BACKWARD_TRAVERSAL_KEYS,
                java.util.Set.of(KeyStroke.getKeyStroke("ctrl shift TAB")));
    }

    List<DraftRow> allChosen() {
        return table.allChosen();
    }

    /** Shows the list as it stands now; the draft in hand stays chosen. */
    void render() {
        turning = true;
        table.show(model.shown());
        Optional<String> inHand = model.inHand().map(DraftRow::id);
        boolean several = table.getSelectedRowCount() > 1;
        if (!several && !table.chosen().map(DraftRow::id).equals(inHand)) {
            inHand.ifPresent(id -> table.choose(row -> row.id().equals(id)));
        }
        turning = false;
        if (table.chosen().isEmpty() && table.getRowCount() > 0) {
            table.setRowSelectionInterval(0, 0);
        }
        SwingUtilities.invokeLater(this::look);
    }

    private void chosen() {
        if (!turning) {
            model.turnTo(table.chosen().map(DraftRow::id));
        }
    }

    /** The rows that stand whole on the screen. */
    private List<Integer> onScreen() {
        if (!inFront.getAsBoolean()) {
            return List.of();
        }
        Rectangle seen = table.getVisibleRect();
        return IntStream.range(0, table.getRowCount())
                .filter(row -> seen.contains(table.getCellRect(row, 0, true)))
                .boxed()
                .toList();
    }

    private void look() {
        model.see(onScreen().stream().map(row -> at(row).id()).toList());
    }

    private DraftRow at(int row) {
        return table.rows().get(table.convertRowIndexToModel(row));
    }

    /** Selects the drafts on the screen that are sure, so that one look and one key keep them together. */
    void chooseSure() {
        look();
        List<Integer> sure = onScreen().stream().filter(row -> at(row).isSure()).toList();
        if (!sure.isEmpty()) {
            turning = true;
            table.clearSelection();
            sure.forEach(row -> table.addRowSelectionInterval(row, row));
            turning = false;
            model.turnTo(Optional.of(at(sure.get(0)).id()));
        }
        table.requestFocusInWindow();
    }

    /** Goes on to the next open draft, after several to the first, since what is selected is about to leave the list. */
    void turnToNext() {
        List<Integer> selected = IntStream.of(table.getSelectedRows()).boxed().toList();
        int from = selected.size() == 1 ? selected.get(0) : -1;
        IntStream.concat(IntStream.range(from + 1, table.getRowCount()), IntStream.range(0, from + 1))
                .filter(row -> at(row).isOpen() && !selected.contains(row))
                .findFirst()
                .ifPresent(this::turnTo);
    }

    /** Goes to the next draft in doubt, round the end. */
    void turnToDoubt(int by) {
        int rows = table.getRowCount();
        int from = table.getSelectedRow();
        for (int i = 1; i <= rows; i++) {
            int row = Math.floorMod(from + by * i, rows);
            if (at(row).isOpen() && !at(row).isSure()) {
                turnTo(row);
                return;
            }
        }
    }

    private void turnTo(int row) {
        table.setRowSelectionInterval(row, row);
        Rectangle cell = table.getCellRect(row, 0, true);
        cell.grow(0, 2 * table.getRowHeight());
        table.scrollRectToVisible(cell);
    }

    /** What a draft says, signs in words as people write them. */
    static String value(Draft draft) {
        String said = DraftLine.value(draft);
        return draft.what() == DraftKind.SIGN && Language.inHand() != Language.GERMAN ? said.replace('-', ' ') : said;
    }
}
