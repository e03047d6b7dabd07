package quarterlight.ui.rust;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTextArea;
import net.miginfocom.swing.MigLayout;
import quarterlight.car.ZoneId;
import quarterlight.rust.TraceArea;
import quarterlight.rust.ZoneRust;
import quarterlight.ui.kit.Command;
import quarterlight.ui.kit.DeskParts;
import quarterlight.ui.kit.FactTable;
import quarterlight.ui.kit.Format;
import quarterlight.ui.kit.Look;
import quarterlight.ui.kit.OpenVisit;
import quarterlight.ui.kit.Station;
import quarterlight.ui.kit.StationScreen;
import quarterlight.ui.kit.Texts;
import quarterlight.visit.PhotoId;

/**
 * The Rust station: every zone that was looked at with extent, grade and repair need, the reasons, and the outlines they rest on. It shows
 * what the visit holds; outlines come in by CSV. Event thread only.
 */
public final class RustScreen implements StationScreen {
    private final OpenVisit visit;
    private final Texts texts;
    private final JPanel side = new JPanel(
            new MigLayout("insets 12 16 12 16, gapy 8, wrap 1", "[grow,fill,0::]", "[][grow,fill][grow,fill]"));
    private final FactTable<ZoneRust> table;
    private final JLabel head = new JLabel(" ");
    private final JTextArea words = new JTextArea();
    private boolean showing;

    public RustScreen(DeskParts parts, OpenVisit visit) {
        this.visit = visit;
        this.texts = parts.texts();
        table = new FactTable<>(texts.get("rust.table"), RustColumns.of(texts), ZoneRust::zone);
        words.setEditable(false);
        words.setLineWrap(true);
        words.setWrapStyleWord(true);
        words.setOpaque(false);
        words.setFont(new JLabel().getFont());
        Look.named(words, texts.get("rust.words"));
        side.add(head);
        side.add(new JScrollPane(table));
        JScrollPane said = new JScrollPane(words);
        Look.bare(said);
        side.add(said);
        table.onChosen(this::chosen);
        visit.onFindings(this::render);
        visit.onVisit(this::render);
        visit.selection().onSelected(this::render);
        render();
    }

    private void chosen() {
        table.chosen().filter(zone -> !showing).ifPresent(zone -> visit.selection()
                .zones(Set.of(zone.zone().id())));
    }

    private void render() {
        showing = true;
        List<ZoneRust> zones = visit.findings()
                .map(found -> found.rust().zones().stream()
                        .filter(zone -> zone.lookedAt() || zone.need().isPresent())
                        .toList())
                .orElse(List.of());
        if (!zones.equals(table.rows())) {
            table.show(zones);
        }
        Optional<ZoneId> selected = visit.selection().zone();
        table.choose(zone -> selected.filter(zone.zone().id()::equals).isPresent());
        head.setText(
                zones.isEmpty()
                        ? texts.get("rust.none")
                        : texts.get("rust.head", visit.visit().traces().size(), zones.size()));
        words.setText(table.chosen().map(this::sentences).orElse(texts.get("rust.choose")));
        words.setCaretPosition(0);
        showing = false;
    }

    private String sentences(ZoneRust zone) {
        List<String> lines = new ArrayList<>();
        zone.need().ifPresent(need -> lines.add(texts.get("rust.needs", need.word())));
        lines.addAll(zone.advice().reasons());
        lines.addAll(zone.advice().cautions());
        lines.addAll(zone.remarks());
        visit.findings().ifPresent(found -> found.rust().traces().stream()
                .filter(trace -> trace.zone().equals(zone.zone().id()))
                .forEach(trace -> lines.add(trace(trace))));
        return String.join("\n", lines);
    }

    private String trace(TraceArea area) {
        String size = area.area()
                .map(known -> Format.withUnit(known.mm2(), 0, "mm\u00b2")
                        + (area.sdMm2().isPresent()
                                ? " \u00b1 " + Format.number(area.sdMm2().getAsDouble(), 0)
                                : ""))
                .orElse(texts.get("rust.no-area"));
        return texts.get("rust.trace", area.kind().word(), file(area.photo()), size);
    }

    private String file(PhotoId photo) {
        return visit.visit().photo(photo).map(p -> p.file().name()).orElse("");
    }

    @Override
    public Station station() {
        return Station.RUST;
    }

    @Override
    public JComponent side() {
        return side;
    }

    @Override
    public JComponent first() {
        return table;
    }

    @Override
    public List<Command> commands() {
        return List.of();
    }

    @Override
    public Optional<String> hint() {
        return Optional.of(texts.get("rust.hint"));
    }
}
