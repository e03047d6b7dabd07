package quarterlight.ui.compare;

import java.awt.Dimension;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import javax.swing.BorderFactory;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JSplitPane;
import net.miginfocom.swing.MigLayout;
import quarterlight.car.ZoneId;
import quarterlight.compare.said.ComparisonSheet;
import quarterlight.compare.said.PairSheet;
import quarterlight.compare.said.PlaceText;
import quarterlight.diagram.ink.Highlight;
import quarterlight.page.ThicknessRamp;
import quarterlight.ui.kit.Texts;
import quarterlight.ui.kit.UiContext;
import quarterlight.ui.kit.look.Look;
import quarterlight.ui.kit.look.TallPanel;
import quarterlight.ui.kit.widget.FactTable;

/** Paint of the two cars in detail: both diagrams, how many panels were refinished, and every panel against the level of its own car. Event thread only. */
final class PaintPane extends JPanel {
    private final transient UiContext parts;
    private final transient Texts texts;
    private transient List<CarSheet> sheets = List.of();
    private transient Optional<FactTable<PlaceText>> table = Optional.empty();

    PaintPane(UiContext parts) {
        super(new MigLayout("insets 0, fill", "[grow,fill,0:100:]", "[grow,fill,0:100:]"));
        this.parts = parts;
        this.texts = parts.texts();
    }

    void show(LoadedCars loaded, int first, int second) {
        stop();
        removeAll();
        ComparisonSheet sheet = loaded.sheet();
        LoadedCars.Car a = loaded.cars().get(first);
        LoadedCars.Car b = loaded.cars().get(second);
        ThicknessRamp ramp = ThicknessRamp.of(
                List.of(a.findings(), b.findings()), sheet.unit().unit());
        sheets = List.of(new CarSheet(parts, a, ramp, this::mark), new CarSheet(parts, b, ramp, this::mark));
        JPanel drawings = new JPanel(new MigLayout(
                "insets 0, gap 1 0, fill, wrap 2",
                "[grow,fill,sg,0:100:][grow,fill,sg,0:100:]",
                "[][grow,fill,0:420:]"));
        drawings.add(head(sheet.pair().letters().a(), sheet.pair().nameA()), "wmin 0");
        drawings.add(head(sheet.pair().letters().b(), sheet.pair().nameB()), "wmin 0");
        sheets.forEach(one -> drawings.add(one, "wmin 0"));
        FactTable<PlaceText> panels = table(sheet.pair());
        table = Optional.of(panels);
        JScrollPane rows = new JScrollPane(panels);
        // the drawings get what is left: they are read first, the table scrolls
        rows.setPreferredSize(new Dimension(600, 190));
        JSplitPane left = new JSplitPane(JSplitPane.VERTICAL_SPLIT, true, drawings, rows);
        left.setResizeWeight(0.6);
        Look.bare(left);
        JScrollPane said = new JScrollPane(counts(sheet.pair()));
        said.setHorizontalScrollBarPolicy(JScrollPane.HORIZONTAL_SCROLLBAR_NEVER);
        Look.bare(said);
        JSplitPane all = new JSplitPane(JSplitPane.HORIZONTAL_SPLIT, true, left, said);
        all.setResizeWeight(0.76);
        Look.bare(all);
        add(all, "wmin 0");
        revalidate();
        repaint();
    }

    private static JLabel head(String letter, String name) {
        JLabel head = Look.heading(letter + "  " + name);
        head.setOpaque(true);
        head.setBackground(Look.palette().sheet());
        head.setBorder(BorderFactory.createEmptyBorder(6, 16, 2, 8));
        return head;
    }

    private TallPanel counts(PairSheet pair) {
        TallPanel panel =
                new TallPanel(new MigLayout("insets 12 16 16 16, wrap 1, gapy 6, fillx", "[grow,fill,0:100:]"));
        pair.levels().forEach(level -> panel.add(Sentence.of(level), "wmin 0"));
        panel.add(Sentence.of(pair.compared()), "wmin 0");
        pair.counts().forEach(count -> {
            panel.add(new CountBars(pair.letters(), count), "gaptop 8, wmin 0");
            panel.add(Sentence.of(count.sentence()), "wmin 0");
        });
        return panel;
    }

    private FactTable<PlaceText> table(PairSheet pair) {
        FactTable<PlaceText> made = new FactTable<>(
                texts.get("compare.panels"),
                List.of(
                        new FactTable.Column<>(texts.get("compare.zone"), 150, PlaceText::label),
                        new FactTable.Column<>(pair.letters().a(), 260, place -> place.a()
                                .lines()
                                .get(0)),
                        new FactTable.Column<>(pair.letters().b(), 260, place -> place.b()
                                .lines()
                                .get(0)),
                        new FactTable.Column<>(
                                texts.get("compare.differences"),
                                320,
                                place -> String.join(". ", place.differences()))),
                PlaceText::label);
        made.show(pair.measured());
        made.onChosen(() -> mark(Optional.empty()));
        return made;
    }

    /** Marks the zone of the selected row, and the one under the pointer, on both cars. */
    private void mark(Optional<ZoneId> hovered) {
        Set<ZoneId> selected = table.flatMap(FactTable::chosen)
                .map(row -> java.util.stream.Stream.concat(row.zone().zoneA().stream(), row.zone().zoneB().stream())
                        .map(zone -> zone.id())
                        .collect(java.util.stream.Collectors.toSet()))
                .orElse(Set.of());
        sheets.forEach(one -> one.show(new Highlight(selected, hovered)));
    }

    void stop() {
        sheets.forEach(CarSheet::stop);
    }
}
