package quarterlight.ui.rust.draw;

import java.util.Locale;

/** What a click or Enter on the photo does. */
public enum RustTool {
    /** Nothing: dragging moves the photo, a click chooses an outline. */
    LOOK('v'),
    /** Sets the corners of a ring one by one. */
    OUTLINE('o'),
    /** Draws a ring along the pointer. */
    FREEHAND('f'),
    /** Moves, adds and removes corners and marks. */
    EDIT('e'),
    /** Sets the marks of the thing of known size. */
    SCALE('s'),
    /** Takes pixels out of the color share. */
    BRUSH('b');

    private final char key;

    RustTool(char key) {
        this.key = key;
    }

    /** The letter that takes the tool. */
    public char key() {
        return key;
    }

    /** Text key of the name. */
    public String textKey() {
        return "trace.tool." + name().toLowerCase(Locale.ROOT);
    }

    /** Text key of what to do next with the tool. */
    public String hintKey() {
        return "trace.next." + name().toLowerCase(Locale.ROOT);
    }

    public boolean draws() {
        return this == OUTLINE || this == FREEHAND;
    }
}
