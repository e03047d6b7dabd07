package quarterlight.ui.diagram;

import java.util.Locale;

/** What can be laid over the drawing. */
public enum Layer {
    THICKNESS,
    LIKELIHOOD,
    RUST,
    COVERAGE,
    PINS;

    /** Text key of the name. */
    public String textKey() {
        return "layer." + name().toLowerCase(Locale.ROOT);
    }
}
