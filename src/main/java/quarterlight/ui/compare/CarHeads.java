package quarterlight.ui.compare;

import javax.swing.BorderFactory;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;
import quarterlight.compare.said.CarHead;
import quarterlight.compare.said.ComparisonSheet;
import quarterlight.ui.kit.Texts;
import quarterlight.ui.kit.look.Look;

/** The cars at the head of the comparison, one column each: what each is, what can hurt someone, what was not looked at. Event thread only. */
final class CarHeads extends JPanel {
    /** With more cars a column is too narrow for a paragraph beside the picture. */
    private static final int MAX_BESIDE = 2;

    CarHeads(Texts texts, ComparisonSheet sheet, CarPortraits portraits) {
        super(new MigLayout(
                "insets 0, gap 24 0, fillx, wrap " + sheet.cars().size(),
                "[grow,fill,sg,0:100:]".repeat(sheet.cars().size()),
                "[top]"));
        setOpaque(false);
        boolean beside = sheet.cars().size() <= MAX_BESIDE;
        for (int car = 0; car < sheet.cars().size(); car++) {
            add(
                    head(texts, sheet.cars().get(car), about(sheet.cars().get(car), portraits, car, beside)),
                    "wmin 0, aligny top");
        }
    }

    private static JPanel head(Texts texts, CarHead car, JPanel about) {
        JPanel head = new JPanel(new MigLayout("insets 6 0 8 0, wrap 1, gapy 4, fillx", "[grow,fill,0:100:]"));
        head.setOpaque(false);
        head.setBorder(
                BorderFactory.createMatteBorder(2, 0, 0, 0, Look.palette().ink()));
        head.add(Look.heading(car.letter() + "  " + car.name()), "wmin 0");
        head.add(about, "wmin 0");
        if (!car.safety().isEmpty()) {
            head.add(danger(texts, car), "wmin 0");
        }
        head.add(Sentence.strong(car.checked(), Look.palette().ink()), "wmin 0");
        if (!car.unseen().isEmpty()) {
            head.add(Look.secondary(Sentence.of(String.join(" ", car.unseen()))), "wmin 0");
        }
        return head;
    }

    /** The picture of the car with what it is, the paragraph beside it or below. */
    private static JPanel about(CarHead car, CarPortraits portraits, int index, boolean beside) {
        boolean picture = car.picture().isPresent();
        JPanel about = new JPanel(new MigLayout(
                "insets 0, gap 12 4, fillx", picture ? "[][grow,fill,0:100:]" : "[grow,fill,0:100:]", "[top]"));
        about.setOpaque(false);
        car.picture().ifPresent(photo -> about.add(portraits.of(index, photo), "w 112!, h 84!"));
        JPanel words = new JPanel(new MigLayout("insets 0, wrap 1, gapy 4, fillx", "[grow,fill,0:100:]"));
        words.setOpaque(false);
        words.add(Sentence.of(car.facts(), Look.palette().secondInk()), "wmin 0");
        about.add(words, "wmin 0, wrap");
        if (!car.paragraph().isBlank() && beside) {
            words.add(Sentence.of(car.paragraph()), "wmin 0");
        } else if (!car.paragraph().isBlank()) {
            about.add(Sentence.of(car.paragraph()), "span, growx, wmin 0");
        }
        return about;
    }

    private static JPanel danger(Texts texts, CarHead car) {
        JPanel box = new JPanel(new MigLayout("insets 6 8 6 8, wrap 1, gapy 2, fillx", "[grow,fill,0:100:]"));
        box.setOpaque(false);
        box.setBorder(BorderFactory.createLineBorder(Look.palette().grave(), 1));
        box.add(Sentence.strong(texts.get("compare.danger"), Look.palette().grave()), "wmin 0");
        car.safety()
                .forEach(danger -> box.add(Sentence.of(danger, Look.palette().grave()), "wmin 0"));
        box.add(Look.secondary(Sentence.of(String.join(" ", car.cautions()))), "wmin 0");
        return box;
    }
}
