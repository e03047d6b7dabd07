package quarterlight.table.rows;

import java.util.Optional;
import quarterlight.table.cell.CellRefused;
import quarterlight.visit.PhotoFile;
import quarterlight.visit.Trace;

/** What the geometry of a trace must keep to; the science of rust knows it, the caller passes it in. */
@FunctionalInterface
public interface TraceRule {
    /** Takes every trace. */
    TraceRule NONE = (trace, photo) -> Optional.empty();

    /** The cell at fault and why, or empty if the trace can be measured on the photo. */
    Optional<CellRefused> problem(Trace trace, PhotoFile photo);
}
