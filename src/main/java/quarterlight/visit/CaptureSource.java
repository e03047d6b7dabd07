package quarterlight.visit;

import quarterlight.units.Worded;

/** Where a capture time was read: the Exif original or digitized time, or the creation time of a film's container. */
public enum CaptureSource implements Worded {
    ORIGINAL,
    DIGITIZED,
    FILM
}
