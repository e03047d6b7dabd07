package quarterlight.ui.rust;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTable;
import javax.swing.JTextArea;
import javax.swing.ListSelectionModel;
import net.miginfocom.swing.MigLayout;
import quarterlight.rust.TraceArea;
import quarterlight.rust.ZoneRust;
import quarterlight.ui.kit.Command;
import quarterlight.ui.kit.DeskParts;
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
    private final RustRowsModel rows;
    private final JTable table;
    private final JLabel head = new JLabel(" ");
    private final JTextArea words = new JTextArea();
    private boolean showing;

    public RustScreen(DeskParts parts, OpenVisit visit) {
        this.visit = visit;
        this.texts = parts.texts();
        rows = new RustRowsModel(texts, visit);
        table = new JTable(rows);
        table.setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
        Look.named(table, texts.get("rust.table"));
        table.getColumnModel().getColumn(0).setPreferredWidth(180);
        words.setEditable(false);
        words.setLineWrap(true);
        words.setWrapStyleWord(true);
        words.setOpaque(false);
        words.setFont(new JLabel().getFont());
        Look.named(words, texts.get("rust.words"));
        side.add(head);
        side.add(new JScrollPane(table));
        JScrollPane said = new JScrollPane(words);
        said.setBorder(null);
        side.add(said);
        table.getSelectionModel().addListSelectionListener(e -> chosen());
        visit.onFindings(this::render);
        visit.onVisit(this::render);
        visit.selection().onSelected(this::render);
        render();
    }

    private void chosen() {
        int row = table.getSelectedRow();
        if (!showing && row >= 0) {
            visit.selection().zones(Set.of(rows.row(row).zone().id()));
        }
    }

    private void render() {
        showing = true;
        rows.refresh();
        int row = visit.selection().zone().map(rows::indexOf).orElse(-1);
        if (row >= 0) {
            table.setRowSelectionInterval(row, row);
        } else {
            table.clearSelection();
        }
        head.setText(
                rows.getRowCount() == 0
                        ? texts.get("rust.none")
                        : texts.get("rust.head", visit.visit().traces().size(), rows.getRowCount()));
        words.setText(row >= 0 ? sentences(rows.row(row)) : texts.get("rust.choose"));
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
