package quarterlight.photo.wire;

/** How a worker answers. */
public enum AnswerKind {
    /** The result follows. */
    DONE,
    /** The picture cannot be shown; the reason follows. */
    NOT_SHOWN,
    /** The file cannot be read; the reason follows. */
    UNREADABLE,
    /** More memory is needed than the worker may have; it ends. */
    TOO_LARGE
}
