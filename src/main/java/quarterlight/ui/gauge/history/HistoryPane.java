package quarterlight.ui.gauge.history;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import javax.swing.JButton;
import javax.swing.JCheckBox;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTextArea;
import javax.swing.JTextField;
import javax.swing.SwingUtilities;
import net.miginfocom.swing.MigLayout;
import quarterlight.edit.EditRefused;
import quarterlight.finish.FinishCautions;
import quarterlight.finish.NextMeasurement;
import quarterlight.finish.history.ZoneHistory;
import quarterlight.page.report.text.LikelihoodTexts;
import quarterlight.ui.gauge.bars.ChanceBars;
import quarterlight.ui.gauge.bars.ReasonBars;
import quarterlight.ui.kit.Command;
import quarterlight.ui.kit.Format;
import quarterlight.ui.kit.Texts;
import quarterlight.ui.kit.UiContext;
import quarterlight.ui.kit.look.Look;
import quarterlight.ui.kit.look.Prose;
import quarterlight.ui.kit.look.TallPanel;
import quarterlight.ui.kit.visit.OpenVisit;
import quarterlight.ui.kit.widget.FactTable;
import quarterlight.ui.kit.widget.WordChoice;
import quarterlight.units.Numerals;
import quarterlight.visit.reading.GaugeMode;
import quarterlight.visit.reading.GaugeValue;
import quarterlight.visit.trial.SignKind;

/** The finish history of the zone in hand: how likely, why, what if, where to measure next, and what it rests on. Event thread only. */
public final class HistoryPane extends JPanel {
    private static final int NEXT_ROWS = 4;

    private final transient UiContext parts;
    private final transient OpenVisit visit;
    private final transient Texts texts;
    private final transient HistoryModel model = new HistoryModel();
    private final transient HistoryActions actions;
    private final JScrollPane scroll = new JScrollPane();
    private final JLabel zone = Look.heading(" ");
    private final JTextArea strength;
    private final JCheckBox prior = new JCheckBox();
    private final ChanceBars chances;
    private final ReasonBars reasons;
    private final JTextField reading = new JTextField(8);
    private final WordChoice<SignKind> sign;
    private final JTextArea supposed;
    private final JTextArea basis;
    private final JTextArea nextWords;
    private final FactTable<NextMeasurement> next;
    private final Command seen;
    private final Command notSeen;
    private final Command keep;
    private final Command drop;

    /** @param mode the mode that readings kept from here bear */
    public HistoryPane(UiContext parts, OpenVisit visit, Supplier<Optional<GaugeMode>> mode) {
        super(new MigLayout("insets 0, fill", "[grow,fill]", "[grow,fill]"));
        this.parts = parts;
        this.visit = visit;
        this.texts = parts.texts();
        actions = new HistoryActions(parts, visit, model);
        strength = words("history.strength");
        supposed = words("history.supposed");
        basis = words("history.basis");
        nextWords = words("history.next.words");
        chances = new ChanceBars(texts);
        reasons = new ReasonBars(texts);
        sign = new WordChoice<>(SignKind.class, texts.get("history.sign"), Optional.empty());
        seen = Command.of(texts, "history.seen", () -> suppose(true));
        notSeen = Command.of(texts, "history.not-seen", () -> suppose(false));
        keep = Command.of(texts, "history.keep", () -> actions.keep(mode.get()));
        drop = Command.of(texts, "history.drop", actions::drop);
        next = new FactTable<>(texts.get("history.next"), columns(), NextMeasurement::zone);
        next.setName("history-next");
        next.onKey("ENTER", this::go);
        next.onChosen(this::go);
        lay();
        model.onChange(this::render);
        render();
    }

    private List<FactTable.Column<NextMeasurement>> columns() {
        return List.of(
                new FactTable.Column<NextMeasurement>(
                        texts.get("history.next.zone"), 150, one -> visit.label(one.zone())),
                new FactTable.Column<NextMeasurement>(
                                texts.get("history.next.spots"),
                                60,
                                one -> texts.get("history.next.count", one.spots()))
                        .numbers(),
                new FactTable.Column<NextMeasurement>(texts.get("history.next.why"), 240, NextMeasurement::about),
                new FactTable.Column<NextMeasurement>(
                                texts.get("history.next.bits"), 90, one -> Format.number(100 * one.expectedBits(), 0))
                        .numbers());
    }

    private JTextArea words(String key) {
        return Look.named(Prose.area(), texts.get(key));
    }

    private void lay() {
        TallPanel all = new TallPanel(new MigLayout(
                "insets 12 16 12 16, gapy 8, wrap 1, hidemode 3",
                "[grow,fill,0::]",
                "[][][][]16[][]16[][][]16[][][]16[]"));
        all.add(zone);
        all.add(chances, "wmin 0");
        all.add(strength, "wmin 0");
        prior.setText(texts.get("history.prior"));
        prior.setName("history-prior");
        prior.addActionListener(e -> render());
        all.add(prior, "wmin 0");
        all.add(Look.heading(texts.get("history.reasons")));
        all.add(reasons, "wmin 0");
        all.add(Look.heading(texts.get("history.what-if")));
        all.add(entry(), "wmin 0");
        all.add(supposed, "wmin 0");
        all.add(Look.heading(texts.get("history.next")));
        JScrollPane list = new JScrollPane(next);
        all.add(list, "wmin 0, h " + (26 * (NEXT_ROWS + 1) + 6) + "!");
        all.add(Look.secondary(nextWords), "wmin 0");
        all.add(Look.secondary(basis), "wmin 0");
        scroll.setViewportView(all);
        Look.bare(scroll);
        scroll.setHorizontalScrollBarPolicy(JScrollPane.HORIZONTAL_SCROLLBAR_NEVER);
        add(scroll);
    }

    private JComponent entry() {
        JPanel entry = new JPanel(new MigLayout("insets 0, gap 8", "[][100!][grow,fill,::220][][]push[][]"));
        JLabel label = new JLabel(texts.get("history.reading"));
        label.setLabelFor(reading);
        reading.setName("what-if-reading");
        reading.setHorizontalAlignment(JTextField.TRAILING);
        reading.addActionListener(e -> supposeReading());
        Look.named(reading, texts.get("history.reading"));
        sign.setName("what-if-sign");
        entry.add(label);
        entry.add(reading);
        entry.add(sign, "wmin 100");
        entry.add(button(seen, "what-if-seen"));
        entry.add(button(notSeen, "what-if-not-seen"));
        entry.add(button(keep, "what-if-keep"), "newline, span, split 2");
        entry.add(button(drop, "what-if-drop"));
        return entry;
    }

    private static JButton button(Command command, String name) {
        JButton button = new JButton(command);
        button.setName(name);
        return button;
    }

    private void supposeReading() {
        try {
            actions.supposeReading(reading.getText());
            reading.setText("");
        } catch (EditRefused refused) {
            parts.problems().remark(refused.getMessage());
            reading.selectAll();
        }
    }

    private void suppose(boolean isSeen) {
        sign.chosen().ifPresent(kind -> actions.supposeSign(kind, isSeen));
    }

    private void go() {
        next.chosen().ifPresent(one -> actions.go(one.zone()));
    }

    public JComponent first() {
        return reading;
    }

    /** The pane has come to the front, or what it rests on has changed while it is there. */
    public void refresh() {
        if (!visit.selection().zone().equals(model.whatIf().map(WhatIf::zone))) {
            SwingUtilities.invokeLater(() -> scroll.getVerticalScrollBar().setValue(0));
        }
        model.zone(visit.selection().zone());
        visit.findings().ifPresent(model::kept);
        actions.ask();
        actions.look();
    }

    public void closed() {
        actions.stop();
    }

    private void render() {
        Optional<ZoneHistory> known = model.asKept();
        boolean unmeasured = known.filter(one -> one.reasons().isEmpty()).isPresent()
                && model.ifSo().isEmpty();
        prior.setVisible(unmeasured);
        Optional<ZoneHistory> kept = unmeasured && !prior.isSelected() ? Optional.empty() : known;
        zone.setText(model.whatIf().map(some -> visit.label(some.zone())).orElse(texts.get("history.choose")));
        chances.show(kept, model.ifSo());
        reasons.show(model.ifSo().or(() -> kept).map(ZoneHistory::reasons).orElse(List.of()));
        strength.setText(sentence(kept));
        supposed.setText(model.whatIf()
                .filter(some -> !some.isNothing())
                .map(this::supposedWords)
                .orElse(texts.get("history.suppose")));
        boolean some = model.takesPart();
        boolean more = model.whatIf().filter(one -> !one.isNothing()).isPresent();
        reading.setEnabled(some);
        sign.setEnabled(some);
        seen.setEnabled(some);
        notSeen.setEnabled(some);
        keep.setEnabled(more && visit.isEditable());
        drop.setEnabled(more);
        List<NextMeasurement> best = model.next().orElse(List.of()).stream()
                .filter(one -> one.why() == NextMeasurement.Why.READ_AGAIN || one.expectedBits() >= 0.005)
                .limit(NEXT_ROWS)
                .toList();
        if (!best.equals(next.rows())) {
            next.show(best);
        }
        nextWords.setText(texts.get(
                model.next().isEmpty()
                        ? "history.next.working"
                        : best.isEmpty() ? "history.next.none" : "history.next.meaning"));
        basis.setText(basisWords());
    }

    private String sentence(Optional<ZoneHistory> kept) {
        if (kept.isEmpty()) {
            return texts.get(
                    model.kept().isEmpty()
                            ? "working.out"
                            : prior.isVisible()
                                    ? "history.unmeasured"
                                    : model.whatIf().isEmpty()
                                            ? "history.choose.why"
                                            : model.takesPart() ? "history.no-evidence" : "history.no-finish");
        }
        List<String> lines = new ArrayList<>();
        lines.add(texts.get("history.own", kept.get().strength().phrase(), log(kept.get())));
        model.ifSo()
                .ifPresent(then ->
                        lines.add(texts.get("history.own.if", then.strength().phrase(), log(then))));
        if (!kept.get().readable()) {
            lines.add(texts.get("gauge.not-readable"));
        }
        lines.addAll(LikelihoodTexts.more(kept.get(), model.hangsOn()));
        return String.join("\n", lines);
    }

    private static String log(ZoneHistory zone) {
        return Format.number(zone.log10LrOwn(), 1);
    }

    private String supposedWords(WhatIf some) {
        List<String> things = new ArrayList<>();
        some.values()
                .forEach(value -> things.add(
                        value instanceof GaugeValue.Measured measured
                                ? Numerals.typed(measured.typed()) + "\u2009" + Format.unit(measured.unit())
                                : texts.get(value instanceof GaugeValue.NoMetal ? "gauge.no-metal" : "gauge.beyond")));
        some.signs()
                .forEach((kind, isSeen) ->
                        things.add(texts.get(isSeen ? "history.sign.seen" : "history.sign.not-seen", kind.said())));
        return texts.get("history.supposed.these", String.join(", ", things));
    }

    private String basisWords() {
        return model.kept()
                .map(found -> {
                    List<String> lines = new ArrayList<>(LikelihoodTexts.basis(
                            found, parts.settings().settings().unit()));
                    lines.addAll(FinishCautions.texts());
                    return String.join("\n", lines);
                })
                .orElse("");
    }
}
