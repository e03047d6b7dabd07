package quarterlight.ui.gauge;

import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JSpinner;
import javax.swing.JTextArea;
import javax.swing.JTextField;
import javax.swing.KeyStroke;
import javax.swing.ListSelectionModel;
import javax.swing.SpinnerNumberModel;
import net.miginfocom.swing.MigLayout;
import quarterlight.car.ZoneId;
import quarterlight.diagram.ViewScale;
import quarterlight.edit.EditRefused;
import quarterlight.edit.gauge.TypedReading;
import quarterlight.edit.row.PointReading;
import quarterlight.edit.row.RowEdits;
import quarterlight.thickness.ThicknessSurvey;
import quarterlight.thickness.gauge.GaugeQuality;
import quarterlight.ui.gauge.entry.GaugeEntry;
import quarterlight.ui.gauge.entry.ReadingColumns;
import quarterlight.ui.gauge.entry.Route;
import quarterlight.ui.gauge.panel.ZoneWords;
import quarterlight.ui.kit.Command;
import quarterlight.ui.kit.Format;
import quarterlight.ui.kit.Texts;
import quarterlight.ui.kit.UiContext;
import quarterlight.ui.kit.field.TypedText;
import quarterlight.ui.kit.look.Look;
import quarterlight.ui.kit.place.ChangedRows;
import quarterlight.ui.kit.visit.OpenVisit;
import quarterlight.ui.kit.visit.Station;
import quarterlight.ui.kit.visit.StationScreen;
import quarterlight.ui.kit.widget.FactTable;
import quarterlight.visit.pin.Recorded;
import quarterlight.visit.pin.ViewPoint;
import quarterlight.visit.reading.GaugeValue;
import quarterlight.visit.reading.Reading;
import quarterlight.visit.row.RecordKind;

/**
 * The Gauge station: readings typed at the pace of the gauge, zone after zone, with the statistics and the finish history of the zone
 * beside them and every zone on one axis. Event thread only.
 */
public final class GaugeScreen implements StationScreen {
    private static final String LAST_OF_ZONE = "last-of-zone";

    private final UiContext parts;
    private final OpenVisit visit;
    private final Texts texts;
    private final GaugeEntry entry = new GaugeEntry();
    private final JPanel side = new JPanel(new MigLayout(
            "insets 12 16 12 16, gapx 16, gapy 6, wrap 2",
            "[300!,fill][grow,fill,0::]",
            "[][][][120:210:230,fill][grow,fill]"));
    private final JLabel zone = new JLabel(" ");
    private final JTextField field = new JTextField();
    private final JLabel unit = new JLabel(" ");
    private final JLabel trouble = new JLabel(" ");
    private final JLabel check = new JLabel(" ");
    private final JSpinner atEachPlace = new JSpinner(new SpinnerNumberModel(1, 1, 9, 1));
    private final FactTable<Recorded<Reading>> table;
    private final JTextArea words = new JTextArea();
    private final StripChart chart;
    private final List<Command> commands = new ArrayList<>();
    private final Command next;
    private final Command exclude;
    private final Command remove;
    private final Command route;
    private final GaugeTabs tabs;

    public GaugeScreen(UiContext parts, OpenVisit visit) {
        this.parts = parts;
        this.visit = visit;
        this.texts = parts.texts();
        table = new FactTable<>(texts.get("gauge.table"), ReadingColumns.of(texts), Recorded::id);
        table.setSelectionMode(ListSelectionModel.MULTIPLE_INTERVAL_SELECTION);
        chart = new StripChart(parts, visit);
        next = add("gauge.next", this::nextZone).menuKey("ENTER");
        exclude = add("gauge.exclude", this::exclude).menuKey("X").begins();
        remove = add("gauge.remove", this::remove).menuKey("BACK_SPACE");
        route = add("gauge.route", this::keepRoute).begins();
        lay();
        tabs = new GaugeTabs(parts, visit, side, field, entry);
        commands.addAll(tabs.commands());
        visit.onVisit(this::render);
        visit.onFindings(this::render);
        visit.selection().onSelected(this::selected);
        table.getSelectionModel().addListSelectionListener(e -> enable());
        render();
    }

    private Command add(String key, Runnable work) {
        Command command = Command.of(texts, key, work);
        commands.add(command);
        return command;
    }

    private void lay() {
        zone.putClientProperty("FlatLaf.styleClass", "h3");
        field.setName("gauge-entry");
        field.putClientProperty("FlatLaf.style", "font: +9");
        field.setHorizontalAlignment(JTextField.TRAILING);
        field.addActionListener(e -> typed());
        for (String last : List.of("DOWN", "shift ENTER")) {
            field.getInputMap().put(KeyStroke.getKeyStroke(last), LAST_OF_ZONE);
        }
        field.getActionMap().put(LAST_OF_ZONE, Command.of(texts, "gauge.last", this::typedLast));
        TypedText.keeping(field, this::takeTyped);
        Look.named(field, texts.get("gauge.entry"));
        Look.named(atEachPlace, texts.get("gauge.at-each-place"));
        atEachPlace.addChangeListener(e -> entry.takeAtEachPlace((Integer) atEachPlace.getValue()));
        trouble.setForeground(Look.palette().caution());
        words.setEditable(false);
        words.setLineWrap(true);
        words.setWrapStyleWord(true);
        words.setOpaque(false);
        words.setFont(new JLabel().getFont());
        Look.named(words, texts.get("gauge.words"));
        side.add(zone);
        side.add(check, "wmin 0");
        side.add(entryRow());
        side.add(trouble, "wmin 0");
        side.add(tools(), "span 2, wmin 0");
        side.add(new JScrollPane(table));
        JScrollPane said = new JScrollPane(words);
        Look.bare(said);
        said.setHorizontalScrollBarPolicy(JScrollPane.HORIZONTAL_SCROLLBAR_NEVER);
        side.add(said, "wmin 0");
        JScrollPane strip = new JScrollPane(chart);
        Look.bare(strip);
        strip.getVerticalScrollBar().setUnitIncrement(20);
        chart.setToolTipText("");
        side.add(strip, "span 2, wmin 0");
    }

    private JPanel entryRow() {
        JPanel row = new JPanel(new MigLayout("insets 0, gap 8", "[grow,fill][]"));
        row.add(field, "h 40!");
        row.add(Look.secondary(unit));
        return row;
    }

    private JPanel tools() {
        JPanel row = new JPanel(new MigLayout("insets 0, gap 8, nogrid"));
        row.add(new JButton(next));
        row.add(new JButton(exclude));
        row.add(new JButton(remove));
        row.add(new JButton(route));
        JLabel label = new JLabel(texts.get("gauge.at-each-place"));
        label.setLabelFor(atEachPlace);
        row.add(label, "newline");
        row.add(atEachPlace);
        return row;
    }

    /** A value that still stands there belongs to the zone in hand. */
    private void takeTyped() {
        if (!field.getText().isBlank()) {
            typed();
        }
    }

    /** What was typed is the last value of its zone; one that is refused stays there. */
    private void typedLast() {
        boolean value = !field.getText().isBlank();
        typed();
        if (value && field.getText().isBlank()) {
            nextZone();
        }
    }

    /** Takes what was typed: a value, or nothing, which goes on to the next zone. */
    private void typed() {
        String text = field.getText();
        if (text.isBlank()) {
            nextZone();
            return;
        }
        if (!visit.isEditable()) {
            trouble.setText(texts.get("visit.reading.only"));
            return;
        }
        try {
            GaugeValue value = TypedReading.of(
                    text,
                    parts.settings().settings().unit(),
                    visit.visit().facts().gaugeRange());
            LocalDateTime now = LocalDateTime.ofInstant(
                            parts.clock().instant(), visit.visit().facts().timezone())
                    .withNano(0);
            Optional<Reading> reading = entry.next(value, visit.visit(), now);
            if (reading.isEmpty()) {
                trouble.setText(texts.get("gauge.no-zone"));
                return;
            }
            field.setText("");
            trouble.setText(" ");
            visit.edit(
                    store -> new PointReading(
                                    store, new ViewScale(visit.drawing().diagram()))
                            .add(reading.get()),
                    added -> {},
                    failure -> {
                        field.setText(text);
                        parts.problems().failed(failure);
                    });
        } catch (EditRefused refused) {
            trouble.setText(refused.getMessage());
            trouble.setToolTipText(refused.getMessage());
            field.selectAll();
        }
    }

    private void nextZone() {
        List<ZoneId> way =
                Route.of(visit.visit(), parts.catalog(), parts.settings().settings());
        Optional<ZoneId> after = Route.after(way, entry.zone());
        if (after.isEmpty()) {
            trouble.setText(texts.get("gauge.route.end"));
        } else {
            trouble.setText(" ");
            entry.go(after.get(), Optional.empty());
            visit.selection().zones(Set.of(after.get()));
            render();
        }
        field.requestFocusInWindow();
    }

    private void keepRoute() {
        parts.settings().change(settings -> Route.asRead(visit.visit(), settings));
        trouble.setText(texts.get("gauge.route.kept"));
    }

    private void exclude() {
        List<Recorded<Reading>> readings = table.allChosen();
        boolean back = readings.stream().allMatch(row -> row.value().exclude().isPresent());
        Optional<String> reason = back
                ? Optional.empty()
                : parts.problems()
                        .ask(
                                texts.get("gauge.exclude.why"),
                                texts.get("gauge.exclude"),
                                texts.get("gauge.exclude.usual"));
        if (back || reason.isPresent()) {
            List<Recorded<Reading>> changed = readings.stream()
                    .map(row -> new Recorded<>(row.id(), with(row.value(), reason)))
                    .toList();
            visit.edit(
                    store -> {
                        new RowEdits(store).updateAll(RecordKind.READINGS, changed);
                        return changed;
                    },
                    done -> {});
        }
    }

    private static Reading with(Reading r, Optional<String> exclude) {
        return new Reading(r.zone(), r.value(), r.time(), r.spot(), r.point(), r.mode(), exclude, r.note());
    }

    private void remove() {
        List<Recorded<Reading>> readings = table.allChosen();
        visit.edit(
                store -> {
                    new RowEdits(store)
                            .remove(
                                    RecordKind.READINGS,
                                    readings.stream().map(Recorded::id).toList());
                    return true;
                },
                done -> {});
    }

    private void selected() {
        visit.selection()
                .zone()
                .filter(chosen -> entry.zone().filter(chosen::equals).isEmpty())
                .ifPresent(chosen -> {
                    takeTyped();
                    entry.go(chosen, Optional.empty());
                });
        render();
    }

    private void render() {
        zone.setText(entry.zone()
                .map(visit::label)
                .map(label -> entry.atPoint() ? texts.get("entry.at-point", label) : label)
                .orElse(texts.get("gauge.choose-zone")));
        unit.setText(Format.unit(parts.settings().settings().unit()));
        field.setEnabled(visit.isEditable());
        List<Recorded<Reading>> readings = entry.here(visit.visit());
        if (!readings.equals(table.rows())) {
            table.show(readings);
        }
        check.setText(ThicknessSurvey.correctionRefused(visit.visit())
                .orElseGet(() -> texts.get("gauge.check."
                        + GaugeQuality.of(visit.visit()).summary().name().toLowerCase(java.util.Locale.ROOT))));
        check.setToolTipText(check.getText());
        words.setText(entry.zone()
                .map(here -> visit.findings()
                        .map(found -> String.join(
                                "\n",
                                ZoneWords.of(
                                        texts,
                                        found,
                                        here,
                                        parts.settings().settings().unit())))
                        .orElse(texts.get("working.out")))
                .orElse(""));
        words.setCaretPosition(0);
        chart.revalidate();
        chart.repaint();
        enable();
    }

    private void enable() {
        boolean some = visit.isEditable() && table.getSelectedRowCount() > 0;
        exclude.setEnabled(some);
        remove.setEnabled(some);
        route.setEnabled(!visit.visit().readings().isEmpty());
    }

    @Override
    public void zoneChosen(ZoneId chosen, ViewPoint point) {
        takeTyped();
        entry.go(chosen, Optional.of(point));
        render();
        field.requestFocusInWindow();
    }

    @Override
    public Station station() {
        return Station.GAUGE;
    }

    @Override
    public JComponent side() {
        return tabs.component();
    }

    @Override
    public JComponent first() {
        return tabs.first();
    }

    @Override
    public void reveal(ChangedRows changed) {
        tabs.reveal(changed);
        table.choose(row -> changed.rows().contains(row.id()));
    }

    @Override
    public void shown() {
        tabs.refresh();
    }

    @Override
    public void closed() {
        tabs.closed();
    }

    @Override
    public List<Command> commands() {
        return List.copyOf(commands);
    }

    @Override
    public void unitChanged() {
        render();
        tabs.refresh();
    }

    @Override
    public Optional<String> hint() {
        return Optional.of(texts.get("gauge.hint"));
    }
}
