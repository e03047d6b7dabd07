package quarterlight.photo.wire;

/** What a worker can be asked, a kind for each medium and each wish. */
public enum RequestKind {
    /** All that intake wants of a file: what it says of itself, its sharpness and its thumbnail. */
    LOOK,
    /** What a file says of itself. */
    FACTS,
    /** The pixels of a picture, upright. */
    PICTURE,
    /** The pixels of the small picture that a camera put into a file. */
    PREVIEW,
    /** The pixels of one frame of a film. */
    FRAME,
    /** The pixels of one page of a paper. */
    PAGE,
    /** The pixels of a stretch of film, some frames a second, below one another. */
    STRETCH,
    /** The samples of a stretch of film or memo. */
    SOUND,
    /** How loud a stretch of film or memo is. */
    LOUDNESS
}
