package quarterlight.photo.worker;

/** What a worker can be asked; the kind's place in this list goes over the wire, so new kinds are added at the end. */
enum RequestKind {
    /** All that intake wants of a photo or film: what it says of itself, its sharpness and its thumbnail. */
    LOOK,
    /** What a file says of itself. */
    FACTS,
    /** The pixels of a picture, upright. */
    PICTURE,
    /** The pixels of the small picture that a camera put into a file. */
    PREVIEW,
    /** The pixels of one frame of a film. */
    FRAME
}
