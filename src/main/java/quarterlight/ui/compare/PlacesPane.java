package quarterlight.ui.compare;

import java.awt.event.ActionEvent;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import javax.swing.AbstractAction;
import javax.swing.DefaultListModel;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.KeyStroke;
import javax.swing.ListSelectionModel;
import net.miginfocom.swing.MigLayout;
import quarterlight.compare.place.Place;
import quarterlight.compare.said.ComparisonSheet;
import quarterlight.compare.said.PairSheet;
import quarterlight.compare.said.PlaceText;
import quarterlight.ui.compare.zoom.SharedZoom;
import quarterlight.ui.kit.Texts;
import quarterlight.ui.kit.look.Look;

/** The same place of both cars: photos side by side with one zoom, and the numbers of both; stepped through by key. Event thread only. */
final class PlacesPane extends JPanel {
    private final transient Texts texts;
    private final DefaultListModel<String> names = new DefaultListModel<>();
    /** As wide as its column: a longer name is shortened, and stands whole over the photos. */
    private final JList<String> list = new JList<>(names) {
        @Override
        public boolean getScrollableTracksViewportWidth() {
            return true;
        }
    };

    private final transient SharedZoom zoom = new SharedZoom();
    private final PlaceSide left;
    private final PlaceSide right;
    private final JLabel title = Look.heading("");
    private final JPanel said = new JPanel(new MigLayout("insets 0, wrap 1, gapy 2, fillx", "[grow,fill,0:100:]"));
    private transient List<PlaceText> places = List.of();

    PlacesPane(Texts texts, PhotoSource photos) {
        super(new MigLayout("insets 0, fill, gap 0", "[230!,fill][grow,fill,0:100:]", "[grow,fill]"));
        this.texts = texts;
        this.left = new PlaceSide(texts, photos, zoom);
        this.right = new PlaceSide(texts, photos, zoom);
        said.setOpaque(false);
        list.setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
        list.setName("places");
        Look.named(list, texts.get("compare.places.list"));
        list.addListSelectionListener(e -> {
            if (!e.getValueIsAdjusting()) {
                chosen().ifPresent(this::showPlace);
            }
        });
        add(Look.bare(new JScrollPane(list)));
        add(detail(), "wmin 0");
        key("PAGE_DOWN", () -> step(1));
        key("PAGE_UP", () -> step(-1));
        key("ctrl 0", zoom::fit);
        key("ctrl EQUALS", () -> zoom.zoom(1.5, 0, 0));
        key("ctrl PLUS", () -> zoom.zoom(1.5, 0, 0));
        key("ctrl MINUS", () -> zoom.zoom(1 / 1.5, 0, 0));
    }

    private JPanel detail() {
        JPanel detail = new JPanel(new MigLayout(
                "insets 12 16 12 16, fill, gap 16 6", "[grow,fill,sg,0:100:][grow,fill,sg,0:100:]", "[][][grow,fill]"));
        JPanel head = new JPanel(new MigLayout("insets 0, fillx", "[grow,0:100:][][]"));
        head.setOpaque(false);
        head.add(title, "wmin 0");
        head.add(stepper("compare.place.before", -1));
        head.add(stepper("compare.place.after", 1));
        detail.add(head, "span 2, wrap");
        detail.add(said, "span 2, wmin 0, wrap");
        detail.add(left, "wmin 0, aligny top");
        detail.add(right, "wmin 0, aligny top");
        return detail;
    }

    private JButton stepper(String text, int by) {
        JButton button = new JButton(texts.get(text));
        button.setName(text);
        button.setToolTipText(texts.get("compare.places.keys"));
        button.addActionListener(e -> step(by));
        return button;
    }

    private void key(String stroke, Runnable work) {
        getInputMap(WHEN_IN_FOCUSED_WINDOW).put(KeyStroke.getKeyStroke(stroke), stroke);
        list.getInputMap(JComponent.WHEN_FOCUSED).put(KeyStroke.getKeyStroke(stroke), "none");
        getActionMap().put(stroke, new AbstractAction() {
            @Override
            public boolean isEnabled() {
                return isShowing();
            }

            @Override
            public void actionPerformed(ActionEvent e) {
                work.run();
            }
        });
    }

    void show(ComparisonSheet sheet, int first, int second) {
        PairSheet pair = sheet.pair();
        Optional<String> kept = chosen().map(PlaceText::label);
        left.of(first, pair.letters().a(), pair.nameA());
        right.of(second, pair.letters().b(), pair.nameB());
        places = Stream.concat(pair.places().stream(), pair.apart().stream())
                .filter(PlaceText::isKnown)
                .sorted(java.util.Comparator.comparingInt(place -> rank(sheet, place)))
                .toList();
        names.clear();
        places.forEach(place -> names.addElement(place.label()));
        int at = places.stream().map(PlaceText::label).toList().indexOf(kept.orElse(""));
        if (!places.isEmpty()) {
            list.setSelectedIndex(Math.max(0, at));
        }
    }

    /** Places of grave and major matters come first, in the order of their rows. */
    private static int rank(ComparisonSheet sheet, PlaceText place) {
        for (int i = 0; i < sheet.heavy().size(); i++) {
            if (sheet.heavy()
                    .get(i)
                    .row()
                    .subject()
                    .places()
                    .contains(place.zone().place())) {
                return i;
            }
        }
        return sheet.heavy().size();
    }

    private Optional<PlaceText> chosen() {
        int at = list.getSelectedIndex();
        return at < 0 || at >= places.size() ? Optional.empty() : Optional.of(places.get(at));
    }

    private void showPlace(PlaceText place) {
        title.setText(place.label());
        said.removeAll();
        place.why().ifPresent(why -> said.add(Sentence.of(why, Look.palette().secondInk()), "wmin 0"));
        place.differences()
                .forEach(one ->
                        said.add(Sentence.strong(one + ".", Look.palette().ink()), "wmin 0"));
        said.revalidate();
        zoom.fit();
        left.show(place.a(), place.label());
        right.show(place.b(), place.label());
    }

    /** Goes to the next or the one before. */
    void step(int by) {
        if (!places.isEmpty()) {
            int next = Math.max(0, Math.min(places.size() - 1, list.getSelectedIndex() + by));
            list.setSelectedIndex(next);
            list.ensureIndexIsVisible(next);
        }
    }

    /** Shows the first of some places that is known here; false if none is. */
    boolean open(List<Place> wanted) {
        for (int i = 0; i < places.size(); i++) {
            if (wanted.contains(places.get(i).zone().place())) {
                list.setSelectedIndex(i);
                list.ensureIndexIsVisible(i);
                return true;
            }
        }
        return false;
    }
}
