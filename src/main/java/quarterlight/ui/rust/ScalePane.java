package quarterlight.ui.rust;

import java.util.List;
import java.util.Optional;
import javax.swing.JButton;
import javax.swing.JComboBox;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTextField;
import net.miginfocom.swing.MigLayout;
import quarterlight.rust.plane.KnownThing;
import quarterlight.ui.kit.Command;
import quarterlight.ui.kit.Format;
import quarterlight.ui.kit.Texts;
import quarterlight.ui.kit.field.TypedText;
import quarterlight.ui.kit.look.Look;
import quarterlight.ui.rust.draw.RustModel;
import quarterlight.ui.rust.draw.ScaleKind;
import quarterlight.visit.annotation.PhotoScale;

/** Chooses the thing of known size that lies on the photo: a length, a rectangle, or one of the list with its source. Event thread only. */
final class ScalePane extends JPanel {
    private static final int LENGTH = 0;
    private static final int RECTANGLE = 1;
    private static final int FIRST_THING = 2;

    private final transient Texts texts;
    private final transient RustModel model;
    private final transient List<KnownThing> things = KnownThing.all();
    private final JComboBox<String> thing = new JComboBox<>();
    private final JTextField width = new JTextField(5);
    private final JTextField height = new JTextField(5);
    private final JLabel times = new JLabel("\u00d7");
    private final JLabel source = new JLabel(" ");
    private boolean rendering;

    /** @param mark begins to mark the thing on the photo */
    ScalePane(Texts texts, RustModel model, Command mark) {
        super(new MigLayout("insets 0, gap 6, wrap 1, fillx", "[grow,fill]", "[26!][26!][16!]"));
        this.texts = texts;
        this.model = model;
        thing.addItem(texts.get("trace.scale.length"));
        thing.addItem(texts.get("trace.scale.rectangle"));
        things.forEach(one -> thing.addItem(one.name()));
        thing.setMaximumRowCount(24);
        thing.setName("trace-thing");
        thing.setPrototypeDisplayValue(texts.get("trace.scale.widest"));
        Look.named(thing, texts.get("trace.scale.thing"));
        Look.named(width, texts.get("trace.scale.width"));
        Look.named(height, texts.get("trace.scale.height"));
        width.setName("trace-width");
        height.setName("trace-height");
        thing.addActionListener(e -> chosen());
        width.addActionListener(e -> typed());
        height.addActionListener(e -> typed());
        TypedText.keeping(width, this::typed);
        TypedText.keeping(height, this::typed);
        JPanel size = new JPanel(new MigLayout("insets 0, gap 6", "[][][][][grow,right]", "[26!]"));
        size.add(width);
        size.add(times, "hidemode 3");
        size.add(height, "hidemode 3");
        size.add(Look.secondary(new JLabel("mm")));
        size.add(new JButton(mark));
        add(thing, "wmin 0");
        add(size);
        add(Look.secondary(source), "wmin 0");
        thing.setSelectedIndex(FIRST_THING);
    }

    private void chosen() {
        if (rendering) {
            return;
        }
        int at = thing.getSelectedIndex();
        ScaleKind old = model.state().wish();
        if (at >= FIRST_THING) {
            model.wish(ScaleKind.of(things.get(at - FIRST_THING)));
        } else {
            model.wish(new ScaleKind(
                    at == LENGTH ? ScaleKind.Shape.LENGTH : ScaleKind.Shape.RECTANGLE, old.widthMm(), old.heightMm()));
        }
        render();
    }

    /** What is typed counts at once; what is no number above 0 is put back. */
    private void typed() {
        if (rendering) {
            return;
        }
        ScaleKind old = model.state().wish();
        double w = millimeters(width).orElse(old.widthMm());
        double h =
                old.shape() == ScaleKind.Shape.RECTANGLE ? millimeters(height).orElse(old.heightMm()) : w;
        ScaleKind fresh = new ScaleKind(old.shape(), w, h);
        model.wish(fresh);
        resize(fresh);
        render();
    }

    /** A scale that is marked already takes the other size. */
    private void resize(ScaleKind fresh) {
        model.draft().ifPresent(draft -> draft.scale()
                .filter(scale -> ScaleKind.of(scale).shape() == fresh.shape())
                .flatMap(scale -> fresh.at(scale.marks()))
                .ifPresent(scale -> model.write(draft.with(Optional.of(scale), draft.marks()))));
    }

    private static Optional<Double> millimeters(JTextField field) {
        try {
            double mm =
                    Double.parseDouble(field.getText().replace("mm", "").strip().replace(',', '.'));
            return mm > 0 && Double.isFinite(mm) ? Optional.of(mm) : Optional.empty();
        } catch (NumberFormatException e) {
            return Optional.empty();
        }
    }

    /** The thing that a scale is, so that it can be marked anew. */
    void take(PhotoScale scale) {
        model.wish(ScaleKind.of(scale));
        render();
    }

    void render() {
        rendering = true;
        ScaleKind wish = model.state().wish();
        int listed = listed(wish);
        boolean own = thing.getSelectedIndex() < FIRST_THING
                && wish.shape() != ScaleKind.Shape.COIN
                && (thing.getSelectedIndex() == LENGTH) == (wish.shape() == ScaleKind.Shape.LENGTH);
        if (!own) {
            thing.setSelectedIndex(
                    listed >= 0 ? FIRST_THING + listed : wish.shape() == ScaleKind.Shape.LENGTH ? LENGTH : RECTANGLE);
        }
        boolean isThing = thing.getSelectedIndex() >= FIRST_THING;
        boolean two = wish.shape() == ScaleKind.Shape.RECTANGLE;
        if (!width.isFocusOwner() && !height.isFocusOwner()) {
            width.setText(size(wish.widthMm()));
            height.setText(size(wish.heightMm()));
        }
        width.setEnabled(!isThing);
        height.setEnabled(!isThing);
        height.setVisible(two);
        times.setVisible(two);
        source.setText(
                isThing
                        ? texts.get(
                                "trace.scale.source",
                                things.get(thing.getSelectedIndex() - FIRST_THING)
                                        .source())
                        : texts.get(two ? "trace.scale.own-rectangle" : "trace.scale.own-length"));
        source.setToolTipText(source.getText());
        rendering = false;
    }

    private int listed(ScaleKind wish) {
        for (int i = 0; i < things.size(); i++) {
            if (ScaleKind.of(things.get(i)).equals(wish)) {
                return i;
            }
        }
        return -1;
    }

    private static String size(double mm) {
        return Format.number(mm, mm == Math.rint(mm) ? 0 : 2);
    }
}
