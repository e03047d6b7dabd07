package quarterlight.ui.rust;

import java.awt.BorderLayout;
import java.util.EnumMap;
import java.util.Map;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JToggleButton;
import javax.swing.SwingUtilities;
import net.miginfocom.swing.MigLayout;
import quarterlight.ui.kit.look.Look;
import quarterlight.ui.kit.view.PhotoCanvas;
import quarterlight.ui.rust.draw.RustTool;

/** The photo with the tools above it, and below it what the outline comes to and what to do next. Event thread only. */
final class PhotoPane extends JPanel {
    private final PhotoCanvas canvas;
    private final JLabel name = new JLabel(" ");
    private final JLabel figure = Look.heading(" ");
    private final JLabel next = new JLabel(" ");
    private final Map<RustTool, JToggleButton> tools = new EnumMap<>(RustTool.class);
    private RustTool taken = RustTool.LOOK;

    PhotoPane(PhotoCanvas canvas, RustActions actions) {
        super(new BorderLayout());
        this.canvas = canvas;
        JPanel bar =
                new JPanel(new MigLayout("insets 6 10 6 10, gap 2", "[][][][][][]push[grow 1,right,0::]", "[26!]"));
        for (RustTool tool : RustTool.values()) {
            JToggleButton button = new JToggleButton(actions.tool(tool));
            Look.toggle(button);
            button.setName("rust-tool-" + tool.key());
            button.addActionListener(e -> SwingUtilities.invokeLater(this::select));
            tools.put(tool, button);
            bar.add(button);
        }
        bar.add(Look.secondary(name), "wmin 0");
        JPanel foot =
                new JPanel(new MigLayout("insets 6 16 6 16, gapy 2, fillx, wrap 1", "[grow,fill,0::]", "[22!][16!]"));
        figure.setName("rust-figure");
        foot.add(figure, "wmin 0");
        foot.add(Look.secondary(next), "wmin 0");
        add(bar, BorderLayout.NORTH);
        add(canvas, BorderLayout.CENTER);
        add(foot, BorderLayout.SOUTH);
    }

    /** A click on a tool that cannot be taken now leaves its button as it was. */
    private void select() {
        tools.forEach((one, button) -> button.setSelected(one == taken));
    }

    void name(String words) {
        name.setText(words);
    }

    /**
     * Says where the work stands.
     *
     * @param area what the outline comes to, or a space
     * @param hint what to do next
     */
    void say(RustTool tool, String area, String hint) {
        taken = tool;
        select();
        figure.setText(area);
        next.setText(hint);
        next.setToolTipText(hint);
        canvas.getAccessibleContext().setAccessibleDescription(area + " " + hint);
    }
}
