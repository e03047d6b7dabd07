package quarterlight.ui.compare;

import java.util.List;
import java.util.Optional;
import javax.swing.JButton;
import javax.swing.JLabel;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;
import quarterlight.compare.said.FactsText;
import quarterlight.ui.compare.zoom.SharedZoom;
import quarterlight.ui.compare.zoom.ZoomedPhoto;
import quarterlight.ui.kit.Texts;
import quarterlight.ui.kit.look.Look;
import quarterlight.visit.photo.PhotoId;

/** One car's side of a place: its photos, one at a time, and what is known there. Event thread only. */
final class PlaceSide extends JPanel {
    private static final int LONG_SIDE = 2400;

    private final transient Texts texts;
    private final transient PhotoSource photos;
    private final ZoomedPhoto photo;
    private final JLabel name = Look.heading("");
    private final JLabel count = Look.secondary(new JLabel());
    private final JButton before = new JButton("\u2039");
    private final JButton after = new JButton("\u203a");
    private final JPanel lines = new JPanel(new MigLayout("insets 0, wrap 1, gapy 2, fillx", "[grow,fill,0:100:]"));
    private transient List<PhotoId> shown = List.of();
    private int car;
    private int at;

    PlaceSide(Texts texts, PhotoSource photos, SharedZoom zoom) {
        super(new MigLayout("insets 0, wrap 1, fill, gapy 6", "[grow,fill,0:100:]", "[][grow,fill,120:100:][]"));
        this.texts = texts;
        this.photos = photos;
        this.photo = new ZoomedPhoto(zoom, texts);
        setOpaque(false);
        lines.setOpaque(false);
        JPanel head = new JPanel(new MigLayout("insets 0, fillx", "[grow,0:100:][][][]"));
        head.setOpaque(false);
        head.add(name, "wmin 0");
        head.add(before);
        head.add(count);
        head.add(after);
        before.addActionListener(e -> step(-1));
        after.addActionListener(e -> step(1));
        add(head);
        add(photo, "wmin 0");
        add(lines, "wmin 0");
    }

    void of(int index, String letter, String car) {
        this.car = index;
        name.setText(letter + "  " + car);
        Look.named(before, texts.get("compare.photo.before", letter));
        Look.named(after, texts.get("compare.photo.after", letter));
    }

    void show(FactsText facts, String place) {
        shown = facts.photos();
        at = 0;
        lines.removeAll();
        facts.lines().forEach(line -> lines.add(Sentence.of(line), "wmin 0"));
        lines.revalidate();
        Look.named(photo, texts.get("compare.photo.name", name.getText(), place));
        fetch();
    }

    /** Shows another photo of the same place. */
    void step(int by) {
        if (!shown.isEmpty()) {
            at = Math.floorMod(at + by, shown.size());
            fetch();
        }
    }

    private void fetch() {
        boolean several = shown.size() > 1;
        before.setVisible(several);
        after.setVisible(several);
        count.setText(several ? texts.get("compare.photo.count", at + 1, shown.size()) : "");
        if (shown.isEmpty()) {
            photo.show(Optional.empty(), Optional.empty());
            return;
        }
        PhotoId wanted = shown.get(at);
        photo.show(Optional.empty(), Optional.of(texts.get("compare.photo.coming")));
        photos.ask(car, wanted, LONG_SIDE, picture -> {
            if (!shown.isEmpty() && shown.get(at).equals(wanted)) {
                photo.show(
                        picture, picture.isEmpty() ? Optional.of(texts.get("compare.photo.cannot")) : Optional.empty());
            }
        });
    }
}
