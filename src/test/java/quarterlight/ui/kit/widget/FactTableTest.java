package quarterlight.ui.kit.widget;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import javax.swing.JLabel;
import javax.swing.JScrollPane;
import javax.swing.SwingUtilities;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import quarterlight.ui.WindowParts;
import quarterlight.ui.kit.look.Look;
import quarterlight.ui.kit.look.Palette;

/** What a table of facts shows first, and how heavily. */
class FactTableTest {
    private record Fact(String word, int figure, Weight weight) {}

    private FactTable<Fact> table;

    @BeforeEach
    void fill() {
        Look.install(Palette.LIGHT);
        table = new FactTable<>(
                "facts",
                List.of(
                        new FactTable.Column<Fact>("Word", 80, Fact::word).weighed(Fact::weight),
                        new FactTable.Column<Fact>("Figure", 40, fact -> Integer.toString(fact.figure())).numbers()),
                Fact::word);
        table.order(Comparator.comparing(Fact::weight, Comparator.reverseOrder()));
        table.show(List.of(
                new Fact("quiet", 1, Weight.QUIET),
                new Fact("plain", 2, Weight.PLAIN),
                new Fact("grave", 3, Weight.GRAVE),
                new Fact("second plain", 4, Weight.PLAIN),
                new Fact("caution", 5, Weight.CAUTION)));
    }

    @Test
    void graveRowsStandFirstAndRowsOfOneWeightAsTheyCame() {
        assertThat(table.rows())
                .extracting(Fact::word)
                .containsExactly("grave", "caution", "plain", "second plain", "quiet");
    }

    @Test
    void everyWeightLooksDifferentAndKeepsItsWord() {
        List<JLabel> cells = new java.util.ArrayList<>();
        for (int row : new int[] {0, 1, 2, 4}) {
            JLabel cell = (JLabel) table.prepareRenderer(table.getCellRenderer(row, 0), row, 0);
            JLabel seen = new JLabel(cell.getText(), cell.getIcon(), cell.getHorizontalAlignment());
            seen.setForeground(cell.getForeground());
            seen.setFont(cell.getFont());
            cells.add(seen);
        }
        assertThat(cells).extracting(JLabel::getText).containsExactly("grave", "caution", "plain", "quiet");
        assertThat(cells).extracting(JLabel::getForeground).doesNotHaveDuplicates();
        assertThat(cells).extracting(cell -> cell.getFont().isBold()).containsExactly(true, true, false, false);
        assertThat(cells).extracting(cell -> cell.getIcon() != null).containsExactly(true, true, false, false);
    }

    @Test
    void figuresStandAtTheRightWithTheirHead() {
        JLabel cell = (JLabel) table.prepareRenderer(table.getCellRenderer(0, 1), 0, 1);
        assertThat(cell.getHorizontalAlignment()).isEqualTo(JLabel.TRAILING);
        JLabel head = (JLabel) table.getTableHeader()
                .getDefaultRenderer()
                .getTableCellRendererComponent(table, "Figure", false, false, -1, 1);
        assertThat(head.getHorizontalAlignment()).isEqualTo(JLabel.TRAILING);
        JLabel words = (JLabel) table.prepareRenderer(table.getCellRenderer(0, 0), 0, 0);
        assertThat(words.getHorizontalAlignment()).isEqualTo(JLabel.LEADING);
    }

    @Test
    void aRowThatIsChosenAsItComesIsBroughtIntoSight() throws Exception {
        JScrollPane scroll = new JScrollPane(table);
        List<Fact> many = IntStream.range(0, 40)
                .mapToObj(i -> new Fact("row " + i, i, Weight.PLAIN))
                .toList();
        SwingUtilities.invokeAndWait(() -> {
            scroll.setSize(200, 120);
            WindowParts.layOut(scroll);
            table.show(many);
            table.choose(fact -> fact.figure() == 39);
            WindowParts.layOut(scroll);
        });
        // what was put off until the new rows have their room
        SwingUtilities.invokeAndWait(() -> {});
        SwingUtilities.invokeAndWait(() -> assertThat(table.getVisibleRect())
                .as("the last row is seen")
                .satisfies(seen -> assertThat(seen.contains(table.getCellRect(39, 0, false)))
                        .isTrue()));
    }
}
