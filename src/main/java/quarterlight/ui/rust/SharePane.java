package quarterlight.ui.rust;

import java.util.Optional;
import javax.swing.JButton;
import javax.swing.JCheckBox;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JSlider;
import javax.swing.JTextArea;
import net.miginfocom.swing.MigLayout;
import quarterlight.rust.color.RustColor;
import quarterlight.ui.kit.Command;
import quarterlight.ui.kit.Format;
import quarterlight.ui.kit.Texts;
import quarterlight.ui.kit.look.Look;
import quarterlight.ui.kit.look.Prose;
import quarterlight.ui.kit.look.TallPanel;
import quarterlight.ui.rust.draw.RustTool;
import quarterlight.ui.rust.draw.ShareModel;
import quarterlight.ui.rust.draw.ShareWork;

/** The color brush: what of the region looks like rust, with the traps beside it, to be corrected and outlined. Event thread only. */
final class SharePane extends TallPanel {
    private static final int PERCENT = 100;

    private final transient Texts texts;
    private final transient ShareModel share;
    private final JCheckBox on;
    private final JSlider threshold = new JSlider(5, 95, (int) (PERCENT * RustColor.USUAL_THRESHOLD));
    private final JLabel least = new JLabel(" ");
    private final JLabel figure = Look.heading(" ");
    private final JTextArea traps = Prose.area();
    private final transient Command nothing;
    private final transient Command outlines;
    private boolean rendering;

    /**
     * @param outlines makes outlines of what was found
     */
    SharePane(Texts texts, ShareModel share, RustActions actions, Runnable outlines) {
        super(new MigLayout("insets 12 16 12 16, gapx 12, gapy 8, fillx, wrap 1", "[grow,fill,0::]", ""));
        this.texts = texts;
        this.share = share;
        this.on = new JCheckBox(actions.colorIt());
        this.nothing = Command.of(texts, "share.unbrush", share::brushNothing);
        this.outlines = Command.of(texts, "share.outlines", outlines);
        threshold.setName("share-threshold");
        figure.setName("share-figure");
        Look.named(threshold, texts.get("share.threshold"));
        Look.named(traps, texts.get("share.traps"));
        threshold.addChangeListener(e -> {
            if (!rendering) {
                share.threshold(threshold.getValue() / (double) PERCENT);
            }
        });
        JPanel tools = new JPanel(new MigLayout("insets 0, gap 8", "[][][grow,fill][48!]"));
        tools.add(on);
        tools.add(Look.secondary(new JLabel(texts.get("share.threshold"))));
        tools.add(threshold, "wmin 80");
        tools.add(Look.secondary(least));
        add(tools);
        JPanel buttons = new JPanel(new MigLayout("insets 0, gap 8"));
        buttons.add(new JButton(actions.tool(RustTool.BRUSH)));
        buttons.add(new JButton(nothing));
        JButton confirm = new JButton(this.outlines);
        confirm.setName("share-outlines");
        buttons.add(confirm);
        add(buttons);
        add(figure, "wmin 0");
        add(traps, "wmin 0");
        share.onChange(this::render);
        render();
    }

    private void render() {
        rendering = true;
        on.setSelected(share.isOn());
        threshold.setValue((int) Math.round(PERCENT * share.threshold()));
        least.setText(Format.withUnit(PERCENT * share.threshold(), 0, "%"));
        Optional<ShareWork.Answer> answer = share.answer();
        boolean known = answer.map(ShareWork.Answer::isKnown).orElse(false);
        nothing.setEnabled(share.isBrushed());
        outlines.setEnabled(known && !answer.get().found().isEmpty());
        figure.setText(words(answer));
        traps.setText(texts.get("share.why") + "\n" + String.join("\n", RustColor.traps()));
        rendering = false;
    }

    private String words(Optional<ShareWork.Answer> answer) {
        if (!share.hasRegion()) {
            return texts.get("share.none");
        }
        if (!share.isOn()) {
            return texts.get("share.off");
        }
        if (answer.isEmpty()) {
            return texts.get("share.working");
        }
        return texts.get(answer.get().found().isEmpty() ? "share.empty" : "share.figure");
    }
}
