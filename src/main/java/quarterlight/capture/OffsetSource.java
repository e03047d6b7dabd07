package quarterlight.capture;

import quarterlight.units.Worded;

/** From where the offset of a photo's clock is known. */
public enum OffsetSource implements Worded {
    /** The file, or other photos of its camera, give it. */
    RECORDED,
    /** The camera's times against the satellite times in its photos. */
    GPS,
    /** The zone of the visit, or the zone that the visit gives this camera's clock. */
    VISIT
}
