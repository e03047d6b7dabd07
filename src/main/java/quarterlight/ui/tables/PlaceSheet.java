package quarterlight.ui.tables;

import java.awt.Window;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import javax.swing.JButton;
import javax.swing.JDialog;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.ListSelectionModel;
import net.miginfocom.swing.MigLayout;
import quarterlight.car.Zone;
import quarterlight.car.ZoneGroup;
import quarterlight.car.ZoneId;
import quarterlight.edit.gauge.ForeignReadings.WithoutZone;
import quarterlight.edit.row.RowEdits;
import quarterlight.ui.kit.Format;
import quarterlight.ui.kit.Texts;
import quarterlight.ui.kit.UiContext;
import quarterlight.ui.kit.look.Look;
import quarterlight.ui.kit.visit.OpenVisit;
import quarterlight.ui.kit.visit.ZoneField;
import quarterlight.ui.kit.widget.FactTable;
import quarterlight.visit.reading.GaugeValue;
import quarterlight.visit.reading.Reading;
import quarterlight.visit.row.RecordKind;
import quarterlight.walk.ReadingPlaces;

/**
 * Readings with times and no zones, each with the zone that the pinned photos around it suggest. Only what the user accepts is kept. Event
 * thread only.
 */
final class PlaceSheet {
    private final UiContext parts;
    private final Texts texts;
    private final OpenVisit visit;
    private final FactTable<WithoutZone> table;
    private final ZoneField zone;
    private final JLabel head = new JLabel(" ");
    private final JButton acceptAll;
    private final JButton acceptChosen;
    private final JButton setZone;
    private List<WithoutZone> left;
    private Map<WithoutZone, ReadingPlaces.Place> places = Map.of();

    PlaceSheet(UiContext parts, OpenVisit visit, List<WithoutZone> rows) {
        this.parts = parts;
        this.texts = parts.texts();
        this.visit = visit;
        this.left = List.copyOf(rows);
        this.zone = new ZoneField(parts, visit);
        this.table = new FactTable<>(texts.get("place.table"), columns(), WithoutZone::line);
        table.setName("place-table");
        table.setSelectionMode(ListSelectionModel.MULTIPLE_INTERVAL_SELECTION);
        acceptAll = button("place.accept-all", () -> accept(left, Optional.empty()));
        acceptChosen = button("place.accept", () -> accept(table.allChosen(), Optional.empty()));
        setZone = button(
                "place.set",
                () -> accept(table.allChosen(), zone.zones().stream().findFirst()));
        table.onKey("ENTER", () -> accept(table.allChosen(), Optional.empty()));
        table.getSelectionModel().addListSelectionListener(e -> enable());
        zone.onChange(this::enable);
        zone.then(setZone);
    }

    private JButton button(String key, Runnable work) {
        JButton button = new JButton(texts.get(key));
        button.setName(key);
        button.addActionListener(e -> work.run());
        return button;
    }

    private List<FactTable.Column<WithoutZone>> columns() {
        return List.of(
                new FactTable.Column<>(texts.get("place.time"), 80, row -> Format.clock(row.time())),
                new FactTable.Column<>(texts.get("place.value"), 80, row -> value(row.value())),
                new FactTable.Column<>(texts.get("place.zone"), 190, row -> place(row)
                        .map(place -> visit.label(place.zone()))
                        .orElse(texts.get("place.unknown"))),
                new FactTable.Column<>(texts.get("place.share"), 60, row -> place(row)
                        .map(place -> Format.withUnit(100 * place.share(), 0, "%"))
                        .orElse("")),
                new FactTable.Column<>(texts.get("place.why"), 240, row -> place(row)
                        .map(this::why)
                        .orElse("")));
    }

    private String value(GaugeValue value) {
        return value instanceof GaugeValue.Measured measured
                ? Format.thicknessWithUnit(
                        measured.thickness(), parts.settings().settings().unit())
                : texts.get(value instanceof GaugeValue.NoMetal ? "gauge.no-metal" : "gauge.beyond");
    }

    private String why(ReadingPlaces.Place place) {
        String photo =
                visit.visit().photo(place.photo()).map(one -> one.file().name()).orElse("");
        return texts.get("place.by", place.away().toSeconds(), photo);
    }

    private Optional<ReadingPlaces.Place> place(WithoutZone row) {
        return Optional.ofNullable(places.get(row));
    }

    void show(Window owner) {
        JDialog dialog = new JDialog(owner, texts.get("place.title"), java.awt.Dialog.ModalityType.MODELESS);
        dialog.setName("places");
        dialog.setDefaultCloseOperation(JDialog.DO_NOTHING_ON_CLOSE);
        JPanel panel =
                new JPanel(new MigLayout("insets 16, gapy 8, wrap 1, fill", "[680::,grow,fill]", "[][grow,fill][][]"));
        panel.add(head, "wmin 0");
        panel.add(new JScrollPane(table), "h 200:320:");
        panel.add(zone, "split 2, growx, wmin 200");
        panel.add(setZone, "growx 0, aligny top");
        JButton close = new JButton(texts.get("place.close"));
        close.setName("place.close");
        close.addActionListener(e -> leave(dialog));
        panel.add(new JLabel(texts.get("place.hint")), "split 4, growx, wmin 0");
        panel.add(close, "growx 0");
        panel.add(acceptChosen, "growx 0");
        panel.add(acceptAll, "growx 0");
        Look.secondary((JLabel) panel.getComponent(panel.getComponentCount() - 4));
        table.onKey("ESCAPE", () -> leave(dialog));
        dialog.setContentPane(panel);
        dialog.addWindowListener(new java.awt.event.WindowAdapter() {
            @Override
            public void windowClosing(java.awt.event.WindowEvent e) {
                leave(dialog);
            }
        });
        var registration = visit.onVisit(this::suggest);
        dialog.addWindowListener(new java.awt.event.WindowAdapter() {
            @Override
            public void windowClosed(java.awt.event.WindowEvent e) {
                registration.remove();
            }
        });
        suggest();
        dialog.pack();
        dialog.setLocationRelativeTo(owner);
        dialog.setVisible(true);
        table.requestFocusInWindow();
    }

    private void leave(JDialog dialog) {
        if (left.isEmpty()
                || parts.problems().confirm(texts.get("place.leave", left.size()), texts.get("place.leave.do"))) {
            dialog.dispose();
        }
    }

    /** Works the suggestions out anew; pins made meanwhile count. */
    private void suggest() {
        Set<ZoneId> readable = parts
                .catalog()
                .zonesOf(visit.visit().facts().car().body())
                .stream()
                .filter(one -> one.group() == ZoneGroup.OUTER)
                .map(Zone::id)
                .collect(Collectors.toSet());
        List<LocalDateTime> times = left.stream().map(WithoutZone::time).toList();
        Map<WithoutZone, ReadingPlaces.Place> fresh = new HashMap<>();
        ReadingPlaces.of(visit.visit(), visit.times(), times, readable)
                .forEach(place -> fresh.put(left.get(place.reading()), place));
        places = fresh;
        table.show(left);
        table.repaint();
        head.setText(texts.get("place.head", left.size(), places.size()));
        enable();
    }

    private void enable() {
        boolean chosen = visit.isEditable() && table.getSelectedRowCount() > 0;
        acceptAll.setEnabled(visit.isEditable() && !places.isEmpty());
        acceptChosen.setEnabled(
                chosen && table.allChosen().stream().anyMatch(row -> place(row).isPresent()));
        setZone.setEnabled(chosen && zone.zones().size() == 1);
    }

    /** Keeps rows in the zone given, else where each is suggested; rows without a suggestion stay. */
    private void accept(List<WithoutZone> rows, Optional<ZoneId> given) {
        List<WithoutZone> accepted = new ArrayList<>();
        List<Reading> readings = new ArrayList<>();
        for (WithoutZone row : rows) {
            given.or(() -> place(row).map(ReadingPlaces.Place::zone)).ifPresent(where -> {
                accepted.add(row);
                readings.add(row.in(where));
            });
        }
        if (readings.isEmpty()) {
            return;
        }
        left = left.stream().filter(row -> !accepted.contains(row)).toList();
        suggest();
        visit.edit(store -> new RowEdits(store).add(RecordKind.READINGS, readings), added -> {}, failure -> {
            List<WithoutZone> back = new ArrayList<>(left);
            back.addAll(accepted);
            back.sort(java.util.Comparator.comparingInt(WithoutZone::line));
            left = List.copyOf(back);
            suggest();
            parts.problems().failed(failure);
        });
    }
}
