package quarterlight.visit;

import quarterlight.units.Worded;

/** What a file in the originals is. */
public enum MediaKind implements Worded {
    PHOTO,
    FILM
}
