package quarterlight.rust;

import org.locationtech.jts.geom.Geometry;
import quarterlight.rust.plane.MarkedArea;
import quarterlight.rust.plane.PhotoPlane;
import quarterlight.visit.annotation.Trace;
import quarterlight.visit.pin.RecordId;

/**
 * A trace that can be measured, with its plane, its shape in pixels and its own area.
 *
 * @param shape the outline, drawn back to the edge of the photo
 */
record MeasuredTrace(RecordId id, Trace trace, PhotoPlane plane, Geometry shape, MarkedArea area) {}
