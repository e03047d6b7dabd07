package quarterlight.visit.photo;

import quarterlight.units.Worded;

/** Where a recorded time was read: the Exif original or digitized time, the creation time of a film's or sound's container, or a tag of a sound. */
public enum CaptureSource implements Worded {
    ORIGINAL,
    DIGITIZED,
    FILM,
    TAG
}
