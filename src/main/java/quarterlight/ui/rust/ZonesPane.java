package quarterlight.ui.rust;

import java.awt.BorderLayout;
import java.awt.Dimension;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import javax.swing.JButton;
import javax.swing.JComboBox;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JSplitPane;
import javax.swing.JTextArea;
import net.miginfocom.swing.MigLayout;
import quarterlight.car.ZoneId;
import quarterlight.rust.RiDegree;
import quarterlight.rust.ZoneRust;
import quarterlight.rust.need.RepairNeed;
import quarterlight.ui.kit.Texts;
import quarterlight.ui.kit.look.Hairline;
import quarterlight.ui.kit.look.Look;
import quarterlight.ui.kit.look.Prose;
import quarterlight.ui.kit.look.TallPanel;
import quarterlight.ui.kit.visit.OpenVisit;
import quarterlight.ui.kit.widget.FactTable;

/** Every zone with extent, grades and repair need, and why; those never looked at stand apart. Event thread only. */
final class ZonesPane extends JPanel {
    private static final int USUAL_WIDTH = 420;

    private final transient Texts texts;
    private final transient OpenVisit visit;
    private final FactTable<ZoneRust> table;
    private final JComboBox<String> which = new JComboBox<>();
    private final JLabel need = Look.heading(" ");
    private final JTextArea reasons = Prose.area();
    private final JTextArea cautions = Prose.area();
    private final JTextArea details = Prose.area();
    private final JLabel head = new JLabel(" ");
    private boolean showing;

    ZonesPane(Texts texts, OpenVisit visit, RustActions actions) {
        super(new BorderLayout());
        this.texts = texts;
        this.visit = visit;
        table = new FactTable<>(texts.get("rust.table"), RustColumns.of(texts), ZoneRust::zone);
        table.setName("rust-zones");
        table.order(RustColumns.graveFirst());
        table.setPreferredScrollableViewportSize(new Dimension(USUAL_WIDTH, USUAL_WIDTH));
        which.addItem(texts.get("rust.which.looked"));
        which.addItem(texts.get("rust.which.never"));
        which.addItem(texts.get("rust.which.all"));
        which.setName("rust-which");
        Look.named(which, texts.get("rust.which"));
        Look.named(reasons, texts.get("rust.words"));
        Look.named(cautions, texts.get("rust.cautions"));
        Look.named(details, texts.get("rust.details"));
        JPanel tools = new JPanel(new MigLayout("insets 8 16 8 16, gap 8, fillx", "[][][grow,fill]"));
        tools.add(which);
        tools.add(new JButton(actions.cleanIt()));
        tools.add(Look.secondary(head), "wmin 0");
        add(tools, BorderLayout.NORTH);
        JPanel said =
                new TallPanel(new MigLayout("insets 8 16 12 16, gapy 8, wrap 1, hidemode 3", "[grow,fill,0::]", "[]"));
        said.add(need, "wmin 0");
        said.add(reasons, "wmin 0");
        said.add(cautions, "wmin 0");
        said.add(Look.secondary(details), "wmin 0");
        JScrollPane side = bare(new JScrollPane(said));
        side.setBorder(new Hairline(Hairline.Side.LEFT));
        side.setHorizontalScrollBarPolicy(JScrollPane.HORIZONTAL_SCROLLBAR_NEVER);
        JSplitPane split = new JSplitPane(JSplitPane.HORIZONTAL_SPLIT, true, bare(new JScrollPane(table)), side);
        Look.bare(split);
        split.setDividerSize(5);
        split.setResizeWeight(0.58);
        add(split, BorderLayout.CENTER);
        table.onChosen(this::chosen);
        which.addActionListener(e -> render());
    }

    private static JScrollPane bare(JScrollPane scroll) {
        scroll.getVerticalScrollBar().setUnitIncrement(16);
        return Look.bare(scroll);
    }

    private void chosen() {
        table.chosen().filter(zone -> !showing).ifPresent(zone -> visit.selection()
                .zones(Set.of(zone.zone().id())));
    }

    private boolean shown(ZoneRust zone) {
        boolean known = zone.lookedAt() || zone.need().isPresent();
        return switch (which.getSelectedIndex()) {
            case 0 -> known;
            case 1 -> !known;
            default -> true;
        };
    }

    void render() {
        showing = true;
        List<ZoneRust> all = visit.findings().map(found -> found.rust().zones()).orElse(List.of());
        List<ZoneRust> zones = all.stream().filter(this::shown).toList();
        if (!zones.stream().sorted(RustColumns.graveFirst()).toList().equals(table.rows())) {
            table.show(zones);
        }
        Optional<ZoneId> selected = visit.selection().zone();
        table.choose(zone -> selected.filter(zone.zone().id()::equals).isPresent());
        long looked = all.stream().filter(ZoneRust::lookedAt).count();
        head.setText(
                visit.findings().isEmpty()
                        ? texts.get("working.out")
                        : texts.get("rust.count", looked, all.size() - looked));
        head.setToolTipText(head.getText());
        Optional<ZoneRust> zone = selected.flatMap(
                id -> all.stream().filter(one -> one.zone().id().equals(id)).findFirst());
        say(zone);
        showing = false;
    }

    private void say(Optional<ZoneRust> zone) {
        need.setVisible(zone.isPresent());
        if (zone.isEmpty()) {
            reasons.setText(texts.get(
                    visit.findings().isEmpty()
                            ? "working.out"
                            : table.rows().isEmpty() && which.getSelectedIndex() == 0 ? "rust.none" : "rust.choose"));
            cautions.setVisible(false);
            details.setVisible(false);
            return;
        }
        ZoneRust rust = zone.get();
        need.setText(rust.need()
                .map(known -> texts.get("rust.needs", known.said()))
                .or(() -> rust.needByEye().map(seen -> texts.get("rust.needs.by-eye", seen.said())))
                .orElse(texts.get("rust.not-looked")));
        boolean grave = rust.need().or(rust::needByEye).equals(Optional.of(RepairNeed.STRUCTURAL));
        need.putClientProperty(
                "FlatLaf.style", grave ? "foreground: $quarterlight.grave" : "foreground: $Label.foreground");
        List<String> why = new ArrayList<>(List.of(rust.zone().label()));
        why.addAll(rust.reasons().stream().map(ZonesPane::sentence).toList());
        rust.byEye()
                .forEach(seen ->
                        why.add(texts.get("rust.by-eye", seen.statement().text())));
        why.addAll(rust.remarks());
        if (!rust.lookedAt()) {
            why.add(texts.get("rust.not-looked.why"));
        }
        reasons.setText(String.join("\n", why));
        cautions.setText(String.join("\n", rust.cautions()));
        cautions.putClientProperty(
                "FlatLaf.style", "foreground: " + (grave ? "$quarterlight.grave" : "$quarterlight.caution"));
        cautions.setVisible(!rust.cautions().isEmpty());
        details.setText(String.join("\n", details(rust)));
        details.setVisible(!details.getText().isEmpty());
    }

    private List<String> details(ZoneRust rust) {
        List<String> lines = new ArrayList<>();
        rust.largestHole().ifPresent(hole -> lines.add(texts.get("rust.largest", TraceWords.area(hole))));
        rust.zoneArea().ifPresent(area -> lines.add(texts.get("rust.zone-area", TraceWords.area(area))));
        if (rust.lookedAt()) {
            lines.add(texts.get("rust.rule"));
        }
        if (rust.ri().isPresent()) {
            lines.add(texts.get("rust.ri", rust.ri().getAsInt(), RiDegree.rule()));
        }
        return lines;
    }

    private static String sentence(String reason) {
        String shown = reason.replace(" mm2", " mm\u00b2");
        return shown.endsWith(".") ? shown : TraceWords.sentence(shown);
    }
}
