package quarterlight.ui.gauge.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import javax.swing.JButton;
import javax.swing.JCheckBox;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTextArea;
import javax.swing.JTextField;
import net.miginfocom.swing.MigLayout;
import quarterlight.edit.EditRefused;
import quarterlight.thickness.gauge.GaugeCorrection;
import quarterlight.thickness.gauge.GaugeQuality;
import quarterlight.ui.gauge.entry.GaugeEntry;
import quarterlight.ui.kit.Format;
import quarterlight.ui.kit.Texts;
import quarterlight.ui.kit.UiContext;
import quarterlight.ui.kit.field.TypedText;
import quarterlight.ui.kit.look.Look;
import quarterlight.ui.kit.look.Prose;
import quarterlight.ui.kit.look.TallPanel;
import quarterlight.ui.kit.visit.OpenVisit;
import quarterlight.units.Thickness;
import quarterlight.units.ThicknessUnit;
import quarterlight.visit.pin.Recorded;
import quarterlight.visit.reading.GaugeCheck;
import quarterlight.visit.reading.GaugeSurface;
import quarterlight.visit.reading.GaugeValue;

/** The gauge check: what it showed on bare metal and shims, how far that can be trusted, the correction, and what it can read. Event thread only. */
public final class CheckPane extends JPanel {
    private final transient UiContext parts;
    private final transient OpenVisit visit;
    private final transient Texts texts;
    private final transient CheckActions actions;
    private final transient List<CheckSheet.Row> planned = new ArrayList<>();
    private final JTextField percent = field("check.percent");
    private final JTextField um = field("check.um");
    private final CheckTable table;
    private final JTextField nominal;
    private final JTextField tolerance;
    private final JButton add;
    private final JLabel verdict = new JLabel(" ");
    private final JTextArea said = Prose.area();
    private final JCheckBox correct;
    private final ModesPane modes;

    public CheckPane(UiContext parts, OpenVisit visit, GaugeEntry entry) {
        super(new MigLayout("insets 0, fill", "[grow,fill]", "[grow,fill]"));
        this.parts = parts;
        this.visit = visit;
        this.texts = parts.texts();
        actions = new CheckActions(parts, visit);
        table = new CheckTable(parts, visit, actions, this::refresh);
        nominal = field("check.nominal");
        tolerance = field("check.tolerance");
        add = new JButton(texts.get("check.add"));
        correct = new JCheckBox(texts.get("check.correct"));
        modes = new ModesPane(parts, visit, actions, entry);
        Look.named(percent, texts.get("check.percent"));
        Look.named(um, texts.get("check.um"));
        Look.named(nominal, texts.get("check.nominal"));
        Look.named(tolerance, texts.get("check.tolerance"));
        wire();
        lay();
        refresh();
    }

    private static JTextField field(String name) {
        JTextField field = new JTextField(5);
        field.setName(name);
        field.setHorizontalAlignment(JTextField.TRAILING);
        return field;
    }

    private void wire() {
        List.of(percent, um).forEach(field -> {
            field.addActionListener(e -> accuracy());
            TypedText.keeping(field, this::accuracy);
        });
        nominal.addActionListener(e -> plan());
        tolerance.addActionListener(e -> plan());
        add.addActionListener(e -> plan());
        correct.setName("check.correct");
        correct.addActionListener(e -> actions.correct(correct.isSelected()));
        Look.named(said, texts.get("check.words"));
        verdict.putClientProperty("FlatLaf.styleClass", "h3");
        verdict.setName("check.verdict");
    }

    private void lay() {
        TallPanel all = new TallPanel(
                new MigLayout("insets 12 16 12 16, gapy 8, wrap 1", "[grow,fill,0::]", "[][][][]16[][]24[][]"));
        all.add(verdict, "wmin 0");
        JPanel accuracy = row();
        accuracy.add(new JLabel(texts.get("check.accuracy")));
        accuracy.add(percent);
        accuracy.add(new JLabel(texts.get("check.percent.and")));
        accuracy.add(um);
        accuracy.add(Look.secondary(new JLabel(texts.get("check.um.unit"))));
        all.add(accuracy, "wmin 0");
        JScrollPane rows = new JScrollPane(table);
        all.add(rows, "wmin 0, h 190!");
        JPanel shim = row();
        shim.add(new JLabel(texts.get("check.shim")));
        shim.add(nominal);
        shim.add(new JLabel("\u00b1"));
        shim.add(tolerance);
        shim.add(add);
        all.add(shim, "wmin 0");
        all.add(said, "wmin 0");
        all.add(correct, "wmin 0");
        all.add(Look.heading(texts.get("check.modes")));
        all.add(modes, "wmin 0");
        JScrollPane scroll = new JScrollPane(all);
        Look.bare(scroll);
        scroll.setHorizontalScrollBarPolicy(JScrollPane.HORIZONTAL_SCROLLBAR_NEVER);
        add(scroll);
    }

    private static JPanel row() {
        return new JPanel(new MigLayout("insets 0, gap 8"));
    }

    public JComponent first() {
        return table;
    }

    private void accuracy() {
        try {
            actions.accuracy(actions.number(percent.getText()), actions.number(um.getText()));
        } catch (EditRefused refused) {
            parts.problems().remark(refused.getMessage());
        }
    }

    /** A further shim stands in the table, ready for what the gauge shows on it. */
    private void plan() {
        try {
            GaugeValue.Measured thickness = actions.thickness(nominal.getText());
            if (thickness.typed().signum() <= 0) {
                parts.problems().remark(texts.get("check.shim.needs"));
                return;
            }
            OptionalDouble stated = tolerance.getText().isBlank()
                    ? OptionalDouble.empty()
                    : OptionalDouble.of(Math.abs(
                            actions.thickness(tolerance.getText()).thickness().um()));
            planned.add(CheckSheet.surface(GaugeSurface.SHIM, thickness, stated));
            nominal.setText("");
            tolerance.setText("");
            refresh();
            table.go(thickness);
        } catch (EditRefused refused) {
            parts.problems().remark(refused.getMessage());
        }
    }

    /** The visit has changed. */
    public void refresh() {
        ThicknessUnit unit = parts.settings().settings().unit();
        GaugeQuality quality = GaugeQuality.of(visit.visit());
        table.show(CheckSheet.of(visit.visit(), planned, unit), quality, unit);
        verdict.setText(texts.get("gauge.check." + quality.summary().name().toLowerCase(Locale.ROOT)));
        verdict.setToolTipText(verdict.getText());
        text(percent, actions.percent());
        text(um, actions.um());
        said.setText(String.join("\n", sentences(quality, unit)));
        boolean editable = visit.isEditable();
        correct.setSelected(visit.visit().facts().choices().gaugeCorrection());
        correct.setEnabled(editable && (quality.correction().isPresent() || correct.isSelected()));
        percent.setEnabled(editable);
        um.setEnabled(editable);
        nominal.setEnabled(editable);
        tolerance.setEnabled(editable);
        add.setEnabled(editable);
        modes.refresh();
    }

    private static void text(JTextField field, OptionalDouble value) {
        if (!field.hasFocus()) {
            field.setText(value.isPresent() ? CheckActions.plain(value.getAsDouble()) : "");
        }
    }

    private List<String> sentences(GaugeQuality quality, ThicknessUnit unit) {
        List<String> lines = new ArrayList<>();
        for (GaugeQuality.Drift drift : quality.drifts()) {
            if (drift.isBeyond()) {
                lines.add(texts.get(
                        "check.drift.beyond", surface(drift, unit), CheckTable.signed(drift.driftUm(), unit)));
            }
        }
        quality.correction()
                .ifPresentOrElse(
                        line -> lines.add(texts.get("check.line", line(line, unit), Format.number(line.factor(), 3))),
                        () -> lines.add(GaugeCorrection.refusal(checks()).orElse(texts.get("check.no-line"))));
        lines.add(texts.get("check.rule"));
        return lines;
    }

    private List<GaugeCheck> checks() {
        return visit.visit().gaugeChecks().stream().map(Recorded::value).toList();
    }

    private String surface(GaugeQuality.Drift drift, ThicknessUnit unit) {
        return drift.on() == GaugeSurface.BARE
                ? texts.get("check.bare")
                : texts.get("check.shim.of", Format.thicknessWithUnit(new Thickness(drift.nominalUm()), unit));
    }

    private static String line(GaugeCorrection line, ThicknessUnit unit) {
        return CheckTable.fine(line.zeroUm(), unit) + "\u2009" + Format.unit(unit);
    }
}
