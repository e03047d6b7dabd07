package quarterlight.ui.compare;

import java.awt.datatransfer.StringSelection;
import java.util.List;
import java.util.stream.Collectors;
import javax.swing.JButton;
import javax.swing.JCheckBox;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import net.miginfocom.swing.MigLayout;
import quarterlight.compare.hour.HourLook;
import quarterlight.compare.said.CarHead;
import quarterlight.compare.said.ComparisonSheet;
import quarterlight.ui.kit.Texts;
import quarterlight.ui.kit.look.Look;
import quarterlight.ui.kit.look.TallPanel;

/** What to do with one hour more at each car, as a list to send to whoever goes there next. Event thread only. */
final class HoursPane extends JScrollPane {
    private final transient Texts texts;
    private final TallPanel content = new TallPanel(
            new MigLayout("insets 12 16 24 16, gap 32 16, fillx, wrap 2", "[grow,fill,sg,0:100:]".repeat(2), "[top]"));

    HoursPane(Texts texts) {
        this.texts = texts;
        setViewportView(content);
        setHorizontalScrollBarPolicy(HORIZONTAL_SCROLLBAR_NEVER);
        getVerticalScrollBar().setUnitIncrement(16);
        Look.bare(this);
    }

    void show(ComparisonSheet sheet) {
        content.removeAll();
        content.add(Sentence.of(texts.get("compare.hour.lead"), Look.palette().secondInk()), "span 2, wmin 0");
        for (int car = 0; car < sheet.cars().size(); car++) {
            content.add(list(sheet.cars().get(car), sheet.hours().get(car)), "wmin 0, aligny top");
        }
        content.revalidate();
        content.repaint();
    }

    private JPanel list(CarHead car, List<HourLook> looks) {
        JPanel list = new JPanel(new MigLayout("insets 0, wrap 2, gap 8 8, fillx", "[][grow,fill,0:100:]", "[top]"));
        list.setOpaque(false);
        list.add(Look.heading(car.letter() + "  " + car.name()), "span 2, wmin 0");
        if (looks.isEmpty()) {
            list.add(Sentence.of(texts.get("compare.hour.none")), "span 2, wmin 0, growx");
            return list;
        }
        for (HourLook look : looks) {
            JCheckBox done = new JCheckBox();
            Look.named(done, look.what());
            list.add(done);
            JPanel words = new JPanel(new MigLayout("insets 2 0 0 0, wrap 1, gapy 2, fillx", "[grow,fill,0:100:]"));
            words.setOpaque(false);
            words.add(Sentence.strong(look.what(), Look.palette().ink()), "wmin 0");
            words.add(Sentence.of(look.why(), Look.palette().secondInk()), "wmin 0");
            look.caution()
                    .ifPresent(caution ->
                            words.add(Sentence.of(caution, Look.palette().caution()), "wmin 0"));
            list.add(words, "wmin 0, growx");
        }
        JButton copy = new JButton(texts.get("compare.hour.copy"));
        Look.named(copy, texts.get("compare.hour.copy.name", car.letter()));
        copy.addActionListener(
                e -> getToolkit().getSystemClipboard().setContents(new StringSelection(text(car, looks)), null));
        list.add(copy, "span 2, split, gaptop 8");
        return list;
    }

    static String text(CarHead car, List<HourLook> looks) {
        return looks.stream()
                .map(look -> "- " + look.what() + " " + look.why()
                        + look.caution().map(caution -> " " + caution).orElse(""))
                .collect(Collectors.joining("\n", car.name() + "\n", "\n"));
    }
}
