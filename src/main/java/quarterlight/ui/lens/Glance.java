package quarterlight.ui.lens;

import java.util.List;
import quarterlight.ui.kit.Texts;
import quarterlight.ui.kit.look.Look;
import quarterlight.units.XmlText;

/** The grounds of one thing in short, as a tool tip says them. Event thread only. */
final class Glance {
    /** Judgment: what is read while a pointer rests. */
    private static final int MOST = 4;

    private static final int WIDTH_PX = 340;

    private Glance() {}

    /** The weightiest grounds, how many more there are, and the key that shows all. */
    static String of(Texts texts, String title, List<Ground> grounds) {
        StringBuilder html = new StringBuilder("<html><body style='width:" + Look.px(WIDTH_PX) + "px'><b>")
                .append(XmlText.escaped(texts.get("lens.of", title)))
                .append("</b>");
        for (Ground ground : grounds.subList(0, Math.min(MOST, grounds.size()))) {
            html.append("<br>")
                    .append(XmlText.escaped(ground.head()))
                    .append(": ")
                    .append(XmlText.escaped(ground.text()));
        }
        return html.append("<br><i>")
                .append(XmlText.escaped(texts.get("lens.glance.more", Math.max(0, grounds.size() - MOST))))
                .append("</i>")
                .toString();
    }
}
