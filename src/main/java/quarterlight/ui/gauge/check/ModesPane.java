package quarterlight.ui.gauge.check;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import javax.swing.JButton;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.ListSelectionModel;
import net.miginfocom.swing.MigLayout;
import quarterlight.car.Substrate;
import quarterlight.car.ZoneId;
import quarterlight.thickness.ZoneThickness;
import quarterlight.thickness.gauge.GaugeReach;
import quarterlight.ui.gauge.entry.GaugeEntry;
import quarterlight.ui.kit.Texts;
import quarterlight.ui.kit.UiContext;
import quarterlight.ui.kit.visit.OpenVisit;
import quarterlight.ui.kit.widget.FactTable;
import quarterlight.ui.kit.widget.WordChoice;
import quarterlight.visit.VisitRecord;
import quarterlight.visit.pin.Recorded;
import quarterlight.visit.reading.GaugeMode;
import quarterlight.visit.reading.Reading;

/** What each zone is made of, the mode its readings were taken in, and whether the gauge reads it. Event thread only. */
final class ModesPane extends JPanel {
    private final transient OpenVisit visit;
    private final transient Texts texts;
    private final FactTable<Line> table;
    private final WordChoice<Substrate> substrate;
    private final WordChoice<GaugeMode> mode;
    private final WordChoice<GaugeMode> typed;
    private final JButton setSubstrate;
    private final JButton setMode;

    /**
     * One measured zone.
     *
     * @param modes noted with its readings
     * @param wrong readings noted in a mode that cannot read the zone
     */
    record Line(ZoneId zone, Substrate substrate, Set<GaugeMode> modes, int readings, int wrong, boolean reads) {
        public Line {
            modes = Set.copyOf(modes);
        }
    }

    ModesPane(UiContext parts, OpenVisit visit, CheckActions actions, GaugeEntry entry) {
        super(new MigLayout("insets 0, gapy 8, wrap 1, fillx", "[grow,fill,0::]"));
        this.visit = visit;
        this.texts = parts.texts();
        Optional<String> unknown = Optional.of(texts.get("check.mode.unknown"));
        table = new FactTable<>(texts.get("check.modes"), columns(), Line::zone);
        table.setSelectionMode(ListSelectionModel.MULTIPLE_INTERVAL_SELECTION);
        table.setName("gauge-modes");
        substrate = new WordChoice<>(Substrate.class, texts.get("check.substrate"), Optional.empty());
        mode = new WordChoice<>(GaugeMode.class, texts.get("check.mode"), unknown);
        typed = new WordChoice<>(GaugeMode.class, texts.get("check.mode.next"), unknown);
        typed.choose(entry.mode());
        typed.addActionListener(e -> entry.mode(typed.chosen()));
        setSubstrate = new JButton(texts.get("check.substrate.set"));
        setSubstrate.addActionListener(e -> substrate.chosen().ifPresent(chosen -> actions.substrate(zones(), chosen)));
        setMode = new JButton(texts.get("check.mode.set"));
        setMode.addActionListener(e -> actions.mode(zones(), mode.chosen()));
        JPanel next = new JPanel(new MigLayout("insets 0, gap 8"));
        JLabel nextLabel = new JLabel(texts.get("check.mode.next"));
        nextLabel.setLabelFor(typed);
        next.add(nextLabel);
        next.add(typed);
        JPanel set = new JPanel(new MigLayout("insets 0, gap 8"));
        set.add(substrate);
        set.add(setSubstrate);
        set.add(mode, "gapleft 16");
        set.add(setMode);
        add(next, "wmin 0");
        add(new JScrollPane(table), "wmin 0, h 200!");
        add(set, "wmin 0");
        table.getSelectionModel().addListSelectionListener(e -> enableButtons());
        enableButtons();
    }

    private List<FactTable.Column<Line>> columns() {
        return List.of(
                column("zone", 170, line -> visit.label(line.zone())),
                column("substrate", 90, line -> line.substrate().said()),
                column(
                        "mode",
                        140,
                        line -> line.modes().isEmpty()
                                ? texts.get("check.mode.unknown")
                                : line.modes().stream()
                                        .map(GaugeMode::said)
                                        .sorted()
                                        .collect(Collectors.joining(", "))),
                column("readings", 76, line -> Integer.toString(line.readings())),
                column("reads", 240, this::reads));
    }

    private FactTable.Column<Line> column(String name, int width, java.util.function.Function<Line, String> words) {
        return new FactTable.Column<>(texts.get("check.column." + name), width, words);
    }

    private String reads(Line line) {
        if (!line.reads()) {
            return texts.get("check.reads.no");
        }
        return line.wrong() == 0 ? texts.get("check.reads.yes") : texts.get("check.reads.some", line.wrong());
    }

    private Set<ZoneId> zones() {
        return table.allChosen().stream()
                .map(Line::zone)
                .collect(Collectors.toCollection(() -> new TreeSet<>(java.util.Comparator.comparing(ZoneId::value))));
    }

    private void enableButtons() {
        boolean some = visit.isEditable() && table.getSelectedRowCount() > 0;
        setSubstrate.setEnabled(some);
        setMode.setEnabled(some);
    }

    void refresh() {
        List<Line> lines = lines(visit.visit());
        if (!lines.equals(table.rows())) {
            table.show(lines);
        }
        enableButtons();
    }

    private List<Line> lines(VisitRecord record) {
        Map<ZoneId, List<Reading>> zones = new LinkedHashMap<>();
        for (Recorded<Reading> row : record.readings()) {
            zones.computeIfAbsent(row.value().zone(), id -> new ArrayList<>()).add(row.value());
        }
        List<Line> lines = new ArrayList<>();
        zones.forEach((zone, readings) -> {
            Substrate made = record.facts().car().substrateOf(zone);
            Set<GaugeMode> modes = EnumSet.noneOf(GaugeMode.class);
            readings.forEach(reading -> reading.mode().ifPresent(modes::add));
            int wrong = (int) readings.stream()
                    .filter(reading -> reading.mode()
                            .filter(noted -> !GaugeReach.reads(made, Set.of(noted)))
                            .isPresent())
                    .count();
            boolean reads = visit.findings()
                    .flatMap(found -> found.thickness().zone(zone))
                    .map(ZoneThickness::readable)
                    .orElse(GaugeReach.reads(made, modes));
            lines.add(new Line(zone, made, modes, readings.size(), wrong, reads));
        });
        return lines;
    }
}
