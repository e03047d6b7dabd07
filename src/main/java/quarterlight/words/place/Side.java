package quarterlight.words.place;

/** A side as it is spoken of. */
public enum Side {
    LEFT,
    RIGHT,
    BOTH;

    Side opposite() {
        return switch (this) {
            case LEFT -> RIGHT;
            case RIGHT -> LEFT;
            case BOTH -> BOTH;
        };
    }
}
