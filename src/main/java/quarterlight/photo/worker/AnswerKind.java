package quarterlight.photo.worker;

/** How a worker answers. */
enum AnswerKind {
    /** The result follows. */
    DONE,
    /** The picture cannot be shown; the reason follows. */
    NOT_SHOWN,
    /** The file cannot be read; the reason follows. */
    UNREADABLE,
    /** More memory is needed than the worker may have; it ends. */
    TOO_LARGE
}
