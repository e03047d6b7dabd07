package quarterlight.ui.compare;

import java.util.List;
import java.util.Optional;
import javax.swing.JTextArea;
import javax.swing.text.DefaultCaret;
import net.miginfocom.swing.MigLayout;
import quarterlight.compare.CarSummary;
import quarterlight.compare.ComparedZone;
import quarterlight.compare.Comparison;
import quarterlight.compare.Side;
import quarterlight.finish.FinishCautions;
import quarterlight.ui.kit.Texts;
import quarterlight.ui.kit.look.Look;
import quarterlight.ui.kit.look.TallPanel;

/** In sentences: what speaks for each car, what one side lacks, dates and trials. No car is declared the better one. Event thread only. */
final class SaidPane extends TallPanel {
    private final transient Texts texts;

    SaidPane(Texts texts, Comparison comparison) {
        super(new MigLayout("insets 12 16 16 16, wrap 1, gapy 4, fillx", "[grow,fill,0::]"));
        this.texts = texts;
        add(new CountBars(
                texts, texts.get("compare.refinished", comparison.counted().size()), comparison.refinished()));
        add(new CountBars(texts, texts.get("compare.repaired"), comparison.repaired()), "gaptop 8");
        for (Side side : Side.values()) {
            CarSummary car = side == Side.A ? comparison.a() : comparison.b();
            section(texts.get("compare.speaks", side.name(), car.name()), sentences(comparison, Optional.of(side)));
        }
        section(texts.get("compare.other"), sentences(comparison, Optional.empty()));
        for (Side side : Side.values()) {
            CarSummary car = side == Side.A ? comparison.a() : comparison.b();
            section(
                    texts.get("compare.dates", side.name(), car.datesJudged()),
                    car.dateContradictions().stream().map(one -> one.sentence()).toList());
        }
        section(
                texts.get("compare.trials"),
                comparison.trials().stream()
                        .map(trial -> trial.item() + ": A "
                                + trial.a().map(t -> t.result().word()).orElse("\u2013") + ", B "
                                + trial.b().map(t -> t.result().word()).orElse("\u2013"))
                        .toList());
        JTextArea caution = line(FinishCautions.texts().get(0));
        caution.setForeground(Look.palette().caution());
        add(caution, "gaptop 12");
    }

    private static List<String> sentences(Comparison comparison, Optional<Side> side) {
        return comparison.zones().stream()
                .flatMap(zone -> said(zone, side).stream())
                .toList();
    }

    private static List<String> said(ComparedZone zone, Optional<Side> side) {
        return zone.contrasts().stream()
                .filter(contrast -> contrast.speaksFor().equals(side))
                .map(contrast -> zone.zone().label() + ": " + contrast.text())
                .toList();
    }

    private void section(String title, List<String> sentences) {
        add(Look.heading(title), "gaptop 12");
        if (sentences.isEmpty()) {
            add(Look.secondary(line(texts.get("compare.nothing"))));
        }
        sentences.forEach(sentence -> add(line(sentence)));
    }

    private static JTextArea line(String sentence) {
        JTextArea area = new JTextArea(sentence);
        area.setLineWrap(true);
        area.setWrapStyleWord(true);
        area.setEditable(false);
        area.setOpaque(false);
        if (area.getCaret() instanceof DefaultCaret caret) {
            caret.setUpdatePolicy(DefaultCaret.NEVER_UPDATE);
        }
        Look.bare(area);
        area.setFont(new javax.swing.JLabel().getFont());
        Look.named(area, sentence);
        return area;
    }
}
