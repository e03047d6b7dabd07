package quarterlight.ui.tables;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import javax.swing.JComboBox;
import javax.swing.JLabel;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;
import quarterlight.table.foreign.ForeignTable;
import quarterlight.table.foreign.ReadingProfile;
import quarterlight.table.text.LenientDateTime;
import quarterlight.ui.kit.Texts;
import quarterlight.ui.kit.look.Look;
import quarterlight.units.ThicknessUnit;

/** Says which column of a table is what, by choice. Event thread only. */
final class ColumnChoice extends JPanel {
    private final transient Texts texts;
    private final transient ForeignTable table;
    private final transient ReadingProfile begun;
    private final JComboBox<String> value = new JComboBox<>();
    private final JComboBox<String> zone = new JComboBox<>();
    private final JComboBox<String> unit = new JComboBox<>();
    private final JComboBox<String> time = new JComboBox<>();
    private final JComboBox<String> date = new JComboBox<>();
    private final JComboBox<String> spot = new JComboBox<>();
    private final JComboBox<String> order = new JComboBox<>();
    private final transient Runnable changed;
    private boolean filling = true;

    /** @param changed told when the user chose another */
    ColumnChoice(Texts texts, ForeignTable table, ReadingProfile begun, Runnable changed) {
        super(new MigLayout("insets 0, gapx 8, gapy 6, fillx", "[][grow 1,fill,sg a]24[][grow 1,fill,sg a]"));
        this.texts = texts;
        this.table = table;
        this.begun = begun;
        this.changed = Objects.requireNonNull(changed, "changed");
        table.columns().forEach(value::addItem);
        columns(zone, "tables.by-time");
        unit.addItem(texts.get("tables.unit.mil"));
        unit.addItem(texts.get("tables.unit.um"));
        table.columns().forEach(unit::addItem);
        columns(time, "tables.none");
        columns(date, "tables.none");
        columns(spot, "tables.none");
        for (LenientDateTime.Order one : LenientDateTime.Order.values()) {
            order.addItem(texts.get("tables.order." + one.word()));
        }
        put(value, "tables.value", "");
        put(zone, "tables.zone", "wrap");
        put(unit, "tables.unit", "");
        put(time, "tables.time", "wrap");
        put(spot, "tables.spot", "");
        put(date, "tables.date", "wrap");
        put(order, "tables.order", "skip 2");
        choose();
        filling = false;
    }

    private void columns(JComboBox<String> box, String noneKey) {
        box.addItem(texts.get(noneKey));
        table.columns().forEach(box::addItem);
    }

    private void put(JComboBox<String> box, String key, String place) {
        JLabel label = new JLabel(texts.get(key));
        label.setLabelFor(box);
        Look.named(box, texts.get(key));
        box.setName(key);
        box.setMaximumRowCount(16);
        box.addActionListener(e -> {
            if (!filling) {
                changed.run();
            }
        });
        if (place.startsWith("skip")) {
            add(label, place);
            add(box, "wmin 80");
        } else {
            add(label);
            add(box, "wmin 80" + (place.isEmpty() ? "" : ", " + place));
        }
    }

    private void choose() {
        value.setSelectedIndex(table.place(begun.value()).orElse(0));
        pick(zone, begun.zone(), 1);
        pick(time, begun.time(), 1);
        pick(date, begun.date(), 1);
        pick(spot, begun.spot(), 1);
        pick(unit, begun.unit(), 2);
        if (begun.unit().isEmpty()) {
            unit.setSelectedIndex(begun.usual() == ThicknessUnit.MIL ? 0 : 1);
        }
        order.setSelectedItem(texts.get("tables.order." + begun.order().word()));
    }

    private void pick(JComboBox<String> box, Optional<String> column, int before) {
        column.ifPresent(name -> table.place(name).ifPresent(place -> box.setSelectedIndex(place + before)));
    }

    private Optional<String> picked(JComboBox<String> box, int before) {
        int at = box.getSelectedIndex() - before;
        return at < 0 ? Optional.empty() : Optional.of(table.columns().get(at));
    }

    /** The profile as chosen now, with the names of zones known before. */
    ReadingProfile profile() {
        ThicknessUnit usual =
                switch (unit.getSelectedIndex()) {
                    case 0 -> ThicknessUnit.MIL;
                    case 1 -> ThicknessUnit.UM;
                    default -> begun.usual();
                };
        return new ReadingProfile(
                table.columns(),
                picked(value, 0).orElseThrow(),
                picked(zone, 1),
                picked(unit, 2),
                usual,
                picked(time, 1),
                picked(date, 1),
                picked(spot, 1),
                List.of(LenientDateTime.Order.values()).get(order.getSelectedIndex()),
                begun.zones());
    }
}
