package quarterlight.page;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import quarterlight.findings.Findings;
import quarterlight.page.print.Paper;
import quarterlight.units.ThicknessUnit;

/**
 * What is asked of the pages of one visit.
 *
 * @param unit of every thickness on them; empty for the one in which most readings were typed
 * @param brief true for the short form whatever the inspector chose for the visit; else that choice holds
 */
public record PagesChoice(Paper paper, Optional<ThicknessUnit> unit, boolean brief) {
    public PagesChoice {
        Objects.requireNonNull(paper, "paper");
        Objects.requireNonNull(unit, "unit");
    }

    /** Nothing asked but the paper. */
    public static PagesChoice on(Paper paper) {
        return new PagesChoice(paper, Optional.empty(), false);
    }

    public PagesChoice with(Paper other) {
        return new PagesChoice(other, unit, brief);
    }

    public PagesChoice in(Optional<ThicknessUnit> other) {
        return new PagesChoice(paper, other, brief);
    }

    /** The scale of thickness for a car, in the unit asked for. */
    public ThicknessRamp ramp(Findings car) {
        return ThicknessRamp.of(List.of(car), unit.orElseGet(() -> ThicknessRamp.usualUnit(car)));
    }
}
