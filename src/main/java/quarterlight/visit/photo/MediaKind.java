package quarterlight.visit.photo;

import quarterlight.units.Worded;

/** What a file in the originals is. */
public enum MediaKind implements Worded {
    PHOTO,
    FILM,
    /** A document of one or more pages. */
    PAPER,
    /** A voice memo or other sound. */
    SOUND,
    /** Timed words that lay beside a film or a sound. */
    WORDS,
    /** What a program wrote about a photo into a file beside it. */
    SIDECAR;

    /** Whether it has a picture of its own. */
    public boolean isShown() {
        return this == PHOTO || this == FILM || this == PAPER;
    }

    /** Whether it was taken with a camera on the walk around the car. */
    public boolean isCameras() {
        return this == PHOTO || this == FILM;
    }

    /** Whether it goes to a buyer only once it is released. */
    public boolean isHeldBack() {
        return !isCameras();
    }

    /** Whether a place within it is named by seconds from its beginning. */
    public boolean hasMoments() {
        return this == FILM || this == SOUND || this == WORDS;
    }
}
