package quarterlight.ui.rust;

import java.awt.BorderLayout;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import javax.swing.JButton;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import net.miginfocom.swing.MigLayout;
import quarterlight.car.ZoneId;
import quarterlight.rust.TraceArea;
import quarterlight.ui.kit.Texts;
import quarterlight.ui.kit.look.Look;
import quarterlight.ui.kit.visit.OpenVisit;
import quarterlight.ui.kit.widget.FactTable;
import quarterlight.ui.kit.widget.Weight;
import quarterlight.visit.annotation.Trace;
import quarterlight.visit.pin.RecordId;
import quarterlight.visit.pin.Recorded;

/** All outlines by zone: choosing one brings its photo, Enter changes it, Delete removes it. Event thread only. */
final class TracesPane extends JPanel {
    /** An outline with its area, once that is worked out. */
    private record Row(Recorded<Trace> trace, Optional<TraceArea> area) {}

    private final transient Texts texts;
    private final transient OpenVisit visit;
    private final FactTable<Row> table;
    private final JLabel head = new JLabel(" ");
    private boolean showing;

    TracesPane(Texts texts, OpenVisit visit, RustActions actions) {
        super(new BorderLayout());
        this.texts = texts;
        this.visit = visit;
        table = new FactTable<>(
                texts.get("trace.table"),
                List.of(
                        column(
                                "trace.zone",
                                150,
                                row -> visit.label(row.trace().value().zone())),
                        column(
                                        "trace.kind",
                                        100,
                                        row -> row.trace().value().kind().said())
                                .weighed(row -> switch (row.trace().value().kind()) {
                                    case HOLE, ROT, CRACK -> Weight.CAUTION;
                                    case SURFACE, SCALE, PITTING, DAMAGE -> Weight.PLAIN;
                                }),
                        column("trace.area", 110, row -> row.area()
                                        .map(TraceWords::measure)
                                        .orElse(""))
                                .numbers(),
                        column("trace.photo", 110, this::photo),
                        column(
                                "trace.patch",
                                70,
                                row -> row.trace().value().patch().orElse("")),
                        column("trace.remarks", 210, TracesPane::remarks)),
                row -> row.trace().id());
        table.setName("rust-traces");
        table.onChosen(() -> table.chosen().filter(row -> !showing).ifPresent(row -> {
            actions.chosen(Optional.of(row.trace().id()));
            actions.show(row.trace());
        }));
        table.onKey("ENTER", actions::change);
        table.onKey("DELETE", actions::remove);
        JPanel tools = new JPanel(new MigLayout("insets 8 16 8 16, gap 8, fillx", "[][][grow,fill]"));
        tools.add(new JButton(actions.changeIt()));
        tools.add(new JButton(actions.removeIt()));
        tools.add(Look.secondary(head), "wmin 0");
        add(tools, BorderLayout.NORTH);
        add(Look.bare(new JScrollPane(table)), BorderLayout.CENTER);
    }

    private FactTable.Column<Row> column(String key, int width, Function<Row, String> text) {
        return new FactTable.Column<>(texts.get(key), width, text);
    }

    private String photo(Row row) {
        return visit.visit()
                .photo(row.trace().value().photo())
                .map(photo -> photo.file().name())
                .orElse("");
    }

    private static String remarks(Row row) {
        return row.area().map(area -> String.join(" ", area.remarks())).orElse("");
    }

    void render(Optional<RecordId> chosen) {
        showing = true;
        List<TraceArea> areas =
                visit.findings().map(found -> found.rust().traces()).orElse(List.of());
        List<ZoneId> order = visit.zones();
        List<Row> rows = visit.visit().traces().stream()
                .sorted(Comparator.comparingInt(row -> order.indexOf(row.value().zone())))
                .map(row -> new Row(
                        row,
                        areas.stream()
                                .filter(area -> area.id().equals(row.id()))
                                .findFirst()))
                .toList();
        if (!rows.equals(table.rows())) {
            table.show(rows);
        }
        table.choose(row -> chosen.equals(Optional.of(row.trace().id())));
        head.setText(rows.isEmpty() ? texts.get("trace.none") : texts.get("trace.count", rows.size()));
        showing = false;
    }
}
