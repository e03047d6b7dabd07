package quarterlight.words.place;

/** A side as it is spoken of. */
public enum SpokenSide {
    LEFT,
    RIGHT,
    BOTH;

    SpokenSide opposite() {
        return switch (this) {
            case LEFT -> RIGHT;
            case RIGHT -> LEFT;
            case BOTH -> BOTH;
        };
    }
}
