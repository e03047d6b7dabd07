package quarterlight.ui.kit.beside;

import java.awt.BorderLayout;
import java.awt.Dimension;
import java.awt.GridLayout;
import java.awt.event.ActionEvent;
import java.util.List;
import java.util.Optional;
import javax.swing.AbstractAction;
import javax.swing.AbstractButton;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JToggleButton;
import javax.swing.KeyStroke;
import net.miginfocom.swing.MigLayout;
import quarterlight.ui.kit.Texts;
import quarterlight.ui.kit.view.PhotoCanvas;
import quarterlight.ui.kit.view.Tone;
import quarterlight.ui.kit.visit.OpenVisit;
import quarterlight.ui.kit.visit.PhotoSteps;
import quarterlight.visit.photo.Photo;
import quarterlight.visit.photo.PhotoId;

/**
 * The photo in hand, large, beside the fields that are read off it: stepped through, under a loupe, in another tone, turned, or next to a
 * second one. All of it is for looking only. Event thread only.
 */
public final class PhotoBeside extends JPanel {
    private final transient Texts texts;
    private final transient OpenVisit visit;
    private final transient PhotoSteps steps;
    private final PhotoCanvas first;
    private final PhotoCanvas second;
    private final JPanel frames = new JPanel(new GridLayout(1, 0, 4, 0));
    private final JLabel name = new JLabel(" ");
    private final JToggleButton loupe;
    private final JToggleButton two;
    private final JButton tone;
    private transient Optional<PhotoId> held = Optional.empty();

    public PhotoBeside(Texts texts, OpenVisit visit) {
        super(new BorderLayout());
        this.texts = texts;
        this.visit = visit;
        this.steps = new PhotoSteps(visit);
        this.first = canvas("beside");
        this.second = canvas("beside-second");
        this.loupe = tool(new JToggleButton(texts.get("beside.loupe")), "loupe", this::toggleLoupe);
        this.tone = tool(new JButton(texts.get("beside.tone.recorded")), "tone", this::nextTone);
        this.two = tool(new JToggleButton(texts.get("beside.two")), "two", this::toggleTwo);
        JPanel head = new JPanel(new MigLayout("insets 4 10 4 6, gap 2, fillx", "[grow,fill,0::][][][][]", "[26!]"));
        head.add(name, "wmin 0");
        head.add(loupe);
        head.add(tone);
        head.add(tool(new JButton(texts.get("beside.turn")), "turn", () -> turn(1)));
        head.add(two);
        add(head, BorderLayout.NORTH);
        frames.add(first);
        add(frames, BorderLayout.CENTER);
        setMinimumSize(new Dimension(160, 120));
        visit.selection().onSelected(this::render);
        visit.onVisit(this::render);
        render();
    }

    private PhotoCanvas canvas(String named) {
        PhotoCanvas canvas = new PhotoCanvas(texts, visit);
        canvas.setName(named);
        arrow(canvas, "LEFT", -1, 0);
        arrow(canvas, "RIGHT", 1, 0);
        arrow(canvas, "UP", 0, -1);
        arrow(canvas, "DOWN", 0, 1);
        return canvas;
    }

    private static void arrow(PhotoCanvas canvas, String key, int dx, int dy) {
        canvas.getInputMap(JComponent.WHEN_FOCUSED).put(KeyStroke.getKeyStroke(key), key);
        canvas.getActionMap().put(key, new AbstractAction() {
            @Override
            public void actionPerformed(ActionEvent e) {
                canvas.nudge(dx, dy);
            }
        });
    }

    private <B extends AbstractButton> B tool(B button, String key, Runnable work) {
        button.putClientProperty("JButton.buttonType", "toolBarButton");
        button.setName("beside-" + key);
        button.setToolTipText(texts.get("beside." + key + ".tip"));
        button.setFocusable(false);
        button.addActionListener(e -> work.run());
        return button;
    }

    /** The frame of the photo in hand. */
    public PhotoCanvas canvas() {
        return first;
    }

    /** Brings the next photo into hand: of the selected zone if it has any, else of all. */
    public void step(int by) {
        steps.step(by);
    }

    public void toggleLoupe() {
        boolean laid = !first.isLoupe();
        first.loupe(laid);
        second.loupe(laid);
        loupe.setSelected(laid);
    }

    /** As recorded, stretched, edges, and round again. */
    public void nextTone() {
        Tone next = first.tone().next();
        first.tone(next);
        second.tone(next);
        tone.setText(texts.get("beside.tone." + next.word()));
    }

    public void turn(int quarters) {
        first.turn(quarters);
    }

    /** Puts a second photo beside the first, or away: the second one selected, else the one in hand now, which stays while the first is stepped. */
    public void toggleTwo() {
        held = held.isPresent() ? Optional.empty() : visit.selection().photo();
        render();
    }

    private void render() {
        List<PhotoId> selected = visit.selection().photos();
        Optional<Photo> hand = selected.stream().findFirst().flatMap(visit.visit()::photo);
        first.show(hand);
        Optional<PhotoId> other =
                held.isEmpty() ? Optional.empty() : selected.size() > 1 ? Optional.of(selected.get(1)) : held;
        second.show(other.flatMap(visit.visit()::photo));
        two.setSelected(held.isPresent());
        if (other.isPresent() != (second.getParent() == frames)) {
            if (other.isPresent()) {
                frames.add(second);
            } else {
                frames.remove(second);
            }
            frames.revalidate();
            frames.repaint();
        }
        name.setText(hand.map(photo -> photo.file().name()).orElse(texts.get("beside.none")));
        name.setToolTipText(hand.map(photo -> title(photo.id())).orElse(texts.get("beside.none.tip")));
    }

    /** {@code 3 of 7}. */
    private String title(PhotoId photo) {
        List<PhotoId> all = steps.all();
        return texts.get("beside.place", all.indexOf(photo) + 1, all.size());
    }
}
