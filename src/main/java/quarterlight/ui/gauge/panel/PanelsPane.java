package quarterlight.ui.gauge.panel;

import java.awt.event.FocusEvent;
import java.awt.event.FocusListener;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import javax.swing.BorderFactory;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTextArea;
import javax.swing.SwingUtilities;
import net.miginfocom.swing.MigLayout;
import quarterlight.car.ZoneId;
import quarterlight.findings.Findings;
import quarterlight.page.panel.PanelProfile;
import quarterlight.thickness.CarThickness;
import quarterlight.thickness.MeanUncertainty;
import quarterlight.thickness.ZoneThickness;
import quarterlight.thickness.statistics.VarianceComponents;
import quarterlight.ui.gauge.bars.DifferenceBars;
import quarterlight.ui.kit.Format;
import quarterlight.ui.kit.Texts;
import quarterlight.ui.kit.UiContext;
import quarterlight.ui.kit.look.Look;
import quarterlight.ui.kit.look.Prose;
import quarterlight.ui.kit.look.TallPanel;
import quarterlight.ui.kit.visit.OpenVisit;
import quarterlight.units.Thickness;
import quarterlight.units.ThicknessUnit;
import quarterlight.visit.pin.Recorded;

/** The zone in hand seen from its edge, and the panels set against one another. Event thread only. */
public final class PanelsPane extends JPanel {
    private final transient UiContext parts;
    private final transient OpenVisit visit;
    private final transient Texts texts;
    private final JScrollPane scroll = new JScrollPane();
    private final TallPanel all;
    private final JLabel zone = Look.heading(" ");
    private final JTextArea figures = words("panels.figures");
    private final PanelPlot plot;
    private final JLabel sidesHead;
    private final JLabel againstHead;
    private final DifferenceBars sides;
    private final DifferenceBars against;
    private final JTextArea scatter = words("panels.scatter");
    private transient Optional<ZoneId> shown = Optional.empty();
    private transient Optional<Findings> compared = Optional.empty();
    private transient Optional<CarThickness> car = Optional.empty();

    public PanelsPane(UiContext parts, OpenVisit visit) {
        super(new MigLayout("insets 0, fill", "[grow,fill]", "[grow,fill]"));
        this.parts = parts;
        this.visit = visit;
        this.texts = parts.texts();
        Look.named(figures, texts.get("panels.figures"));
        Look.named(scatter, texts.get("panels.scatter"));
        plot = new PanelPlot(parts);
        sidesHead = Look.heading(texts.get("panels.sides"));
        againstHead = Look.heading(texts.get("panels.against"));
        sides = new DifferenceBars(
                texts, texts.get("panels.sides"), zones -> visit.selection().zones(zones));
        against = new DifferenceBars(
                texts, texts.get("panels.against"), zones -> visit.selection().zones(zones));
        all = new TallPanel(new MigLayout(
                "insets 12 16 12 16, gapy 8, wrap 1, hidemode 3", "[grow,fill,0::]", "[][][]20[][]20[][]20[][]"));
        all.setFocusable(true);
        Look.named(all, texts.get("gauge.tab.panels"));
        all.addFocusListener(new FocusListener() {
            @Override
            public void focusGained(FocusEvent e) {
                scroll.setBorder(BorderFactory.createLineBorder(Look.palette().accent()));
            }

            @Override
            public void focusLost(FocusEvent e) {
                scroll.setBorder(BorderFactory.createEmptyBorder(1, 1, 1, 1));
            }
        });
        all.add(zone);
        all.add(plot, "wmin 0");
        all.add(figures, "wmin 0");
        all.add(sidesHead);
        all.add(sides, "wmin 0");
        all.add(againstHead);
        all.add(against, "wmin 0");
        all.add(Look.heading(texts.get("panels.scatter")));
        all.add(scatter, "wmin 0");
        scroll.setViewportView(all);
        scroll.setBorder(BorderFactory.createEmptyBorder(1, 1, 1, 1));
        scroll.setHorizontalScrollBarPolicy(JScrollPane.HORIZONTAL_SCROLLBAR_NEVER);
        add(scroll);
    }

    /** What takes the keyboard: Page Up and Page Down scroll. */
    public JComponent first() {
        return all;
    }

    private static JTextArea words(String name) {
        JTextArea area = Prose.area();
        area.setName(name);
        return area;
    }

    /** The findings, the zone in hand or the unit have changed. */
    public void refresh() {
        Optional<Findings> findings = visit.findings();
        if (!findings.equals(compared)) {
            compared = findings;
            car = findings.map(found -> CarThickness.of(found.thickness(), parts.catalog()));
        }
        ThicknessUnit unit = parts.settings().settings().unit();
        Optional<ZoneId> here = visit.selection().zone();
        if (!here.equals(shown)) {
            shown = here;
            SwingUtilities.invokeLater(() -> scroll.getVerticalScrollBar().setValue(0));
        }
        zone.setText(here.map(visit::label).orElse(texts.get("history.choose")));
        plot.show(here.flatMap(id ->
                findings.flatMap(found -> PanelProfile.of(found, visit.drawing().diagram(), id))));
        figures.setText(here.map(id -> figures(findings, id, unit)).orElse(texts.get("panels.choose")));
        sides.show(
                car.map(found -> found.sides().stream()
                                .map(pair -> new DifferenceBars.Line(
                                        side(pair), pair.difference(), Set.of(pair.left(), pair.right())))
                                .toList())
                        .orElse(List.of()),
                unit);
        against.show(
                car.map(found -> found.against().stream()
                                .map(one -> new DifferenceBars.Line(
                                        visit.label(one.zone()), one.difference(), Set.of(one.zone())))
                                .toList())
                        .orElse(List.of()),
                unit);
        sidesHead.setText(texts.get(
                car.isEmpty()
                        ? "working.out"
                        : car.map(found -> found.sides().isEmpty()).orElse(true) ? "panels.sides.none" : "panels.sides",
                Format.unit(unit)));
        againstHead.setText(texts.get(
                car.isEmpty()
                        ? "working.out"
                        : car.map(found -> found.against().isEmpty()).orElse(true)
                                ? "panels.against.none"
                                : "panels.against",
                Format.unit(unit)));
        scatter.setText(car.flatMap(CarThickness::components)
                .map(found -> scatter(found, unit))
                .orElse(texts.get(car.isEmpty() ? "working.out" : "panels.scatter.none")));
    }

    /** {@code Front door, left} as "Front door". */
    private String side(CarThickness.Pair pair) {
        return visit.label(pair.left()).replace(", left", "");
    }

    private String figures(Optional<Findings> findings, ZoneId id, ThicknessUnit unit) {
        Optional<ZoneThickness> thickness =
                findings.flatMap(found -> found.thickness().zone(id));
        if (findings.isEmpty()) {
            return texts.get("working.out");
        }
        if (thickness.isEmpty()) {
            return texts.get("gauge.no-readings");
        }
        List<String> lines = new ArrayList<>(ZoneWords.statistics(texts, thickness.get(), unit));
        findings.flatMap(found -> MeanUncertainty.of(
                        thickness.get(),
                        found.thickness().correction(),
                        found.visit().gaugeChecks().stream()
                                .map(Recorded::value)
                                .toList()))
                .ifPresent(known -> lines.add(
                        texts.get("panels.uncertainty", shown(known.meanUm(), unit), shown(known.expandedUm(), unit))));
        lines.add(texts.get(plot.isVisible() ? "panels.key" : "panels.no-places"));
        return String.join("\n", lines);
    }

    private String scatter(VarianceComponents found, ThicknessUnit unit) {
        return texts.get(
                        "panels.components",
                        shown(found.sdBetween(), unit),
                        shown(found.sdWithin(), unit),
                        found.groups(),
                        found.values())
                + (found.between() == 0 ? "\n" + texts.get("panels.components.zero") : "");
    }

    private static String shown(double um, ThicknessUnit unit) {
        return Format.number(new Thickness(um).in(unit), unit == ThicknessUnit.MIL ? 2 : 0) + "\u2009"
                + Format.unit(unit);
    }
}
