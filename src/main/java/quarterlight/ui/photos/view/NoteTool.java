package quarterlight.ui.photos.view;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** What dragging on a photo draws while drawing is on. */
public enum NoteTool {
    ARROW('a'),
    BOX('b'),
    TEXT('t'),
    MEASURE('m'),
    HIDE('h');

    private final char key;

    NoteTool(char key) {
        this.key = key;
    }

    /** The letter that takes the tool while drawing is on. */
    public char key() {
        return key;
    }

    /** Text key of the name. */
    public String textKey() {
        return "photos.tool." + name().toLowerCase(Locale.ROOT);
    }

    static Optional<NoteTool> of(char typed) {
        return Arrays.stream(values())
                .filter(tool -> tool.key == Character.toLowerCase(typed))
                .findFirst();
    }
}
