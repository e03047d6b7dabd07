package quarterlight.ui.tables;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javax.swing.JComboBox;
import javax.swing.JLabel;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;
import quarterlight.car.ZoneId;
import quarterlight.edit.gauge.ForeignReadings;
import quarterlight.ui.kit.Texts;
import quarterlight.ui.kit.look.Look;
import quarterlight.ui.kit.visit.OpenVisit;

/** Matches the zone names of some other program with the zones of the car, a guess chosen before. Event thread only. */
final class ZoneMatches extends JPanel {
    private final transient Texts texts;
    private final transient OpenVisit visit;
    private final transient List<ZoneId> zones;
    private final transient Map<String, JComboBox<String>> boxes = new LinkedHashMap<>();
    private transient Map<String, ForeignReadings.Unknown> shown = Map.of();

    ZoneMatches(Texts texts, OpenVisit visit) {
        super(new MigLayout("insets 0, gapx 8, gapy 4, wrap 2, fillx", "[grow 1,fill][grow 1,fill,::280]"));
        this.texts = texts;
        this.visit = visit;
        this.zones = visit.zones();
    }

    /** Shows names; those shown before keep what was chosen. */
    void show(Map<String, ForeignReadings.Unknown> unknown) {
        if (unknown.equals(shown)) {
            return;
        }
        shown = unknown;
        Map<String, JComboBox<String>> before = new LinkedHashMap<>(boxes);
        boxes.clear();
        removeAll();
        unknown.forEach((name, row) -> {
            JComboBox<String> box = before.computeIfAbsent(name, fresh -> box(fresh, row));
            boxes.put(name, box);
            JLabel label = new JLabel(texts.get("tables.zone-name", name, row.rows()));
            label.setLabelFor(box);
            add(label, "wmin 0");
            add(box, "h 24!");
        });
        setVisible(!boxes.isEmpty());
        revalidate();
        repaint();
    }

    private JComboBox<String> box(String name, ForeignReadings.Unknown row) {
        JComboBox<String> box = new JComboBox<>();
        box.addItem(texts.get("tables.zone-left-out"));
        zones.forEach(zone -> box.addItem(visit.label(zone)));
        box.setMaximumRowCount(20);
        box.setSelectedIndex(row.guess().map(zone -> zones.indexOf(zone) + 1).orElse(0));
        return Look.named(box, texts.get("tables.zone-is", name));
    }

    /** The names that were matched; those left out are not among them. */
    Map<String, ZoneId> matched() {
        Map<String, ZoneId> matched = new LinkedHashMap<>();
        boxes.forEach((name, box) -> chosen(box).ifPresent(zone -> matched.put(name, zone)));
        return matched;
    }

    private Optional<ZoneId> chosen(JComboBox<String> box) {
        return box.getSelectedIndex() < 1 ? Optional.empty() : Optional.of(zones.get(box.getSelectedIndex() - 1));
    }

    /** The names shown, for the sentence about them. */
    List<String> names() {
        return new ArrayList<>(boxes.keySet());
    }
}
