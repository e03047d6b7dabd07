package quarterlight.ui.photos.view;

import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import javax.swing.JPanel;
import javax.swing.JToggleButton;
import net.miginfocom.swing.MigLayout;
import quarterlight.ui.kit.Texts;
import quarterlight.ui.kit.look.Look;

/** The tools that draw on the photo. Event thread only. */
final class NoteBar extends JPanel {
    private final transient NoteOverlay desk;
    private final JToggleButton draw;
    private final Map<NoteTool, JToggleButton> tools = new EnumMap<>(NoteTool.class);

    NoteBar(Texts texts, NoteOverlay desk) {
        super(new MigLayout("insets 0 6 2 6, gap 2", "", "[26!]"));
        this.desk = desk;
        draw = button(texts.get("photos.tool.draw"), texts.get("photos.tool.draw.tip"));
        draw.addActionListener(e -> {
            if (draw.isSelected()) {
                desk.begin(Optional.empty());
            } else {
                desk.end();
            }
        });
        add(draw);
        for (NoteTool tool : NoteTool.values()) {
            JToggleButton button = button(
                    texts.get(tool.textKey()),
                    texts.get("photos.tool.tip", String.valueOf(tool.key()).toUpperCase(java.util.Locale.ROOT)));
            button.addActionListener(e -> desk.begin(button.isSelected() ? Optional.of(tool) : Optional.empty()));
            tools.put(tool, button);
            add(button);
        }
        desk.onChanged(this::refresh);
        refresh();
    }

    private static JToggleButton button(String name, String tip) {
        JToggleButton button = new JToggleButton(name);
        Look.toggle(button);
        button.setToolTipText(tip);
        button.setFocusable(true);
        return Look.named(button, name);
    }

    private void refresh() {
        draw.setSelected(desk.isDrawing());
        tools.forEach((tool, button) -> button.setSelected(desk.tool().equals(Optional.of(tool))));
    }
}
