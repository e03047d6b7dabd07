package quarterlight.page;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import quarterlight.findings.Findings;
import quarterlight.language.Language;
import quarterlight.page.print.Paper;
import quarterlight.units.ThicknessUnit;

/**
 * What is asked of the pages of one visit.
 *
 * @param unit of every thickness on them; empty for the one in which most readings were typed
 * @param brief true for the short form whatever the inspector chose for the visit; else that choice holds
 * @param language of the sentences on them
 */
public record PagesChoice(Paper paper, Optional<ThicknessUnit> unit, boolean brief, Language language) {
    public PagesChoice {
        Objects.requireNonNull(paper, "paper");
        Objects.requireNonNull(unit, "unit");
        Objects.requireNonNull(language, "language");
    }

    /** Nothing asked but the paper; in English. */
    public static PagesChoice on(Paper paper) {
        return new PagesChoice(paper, Optional.empty(), false, Language.ENGLISH);
    }

    public PagesChoice with(Paper other) {
        return new PagesChoice(other, unit, brief, language);
    }

    public PagesChoice in(Optional<ThicknessUnit> other) {
        return new PagesChoice(paper, other, brief, language);
    }

    public PagesChoice said(Language other) {
        return new PagesChoice(paper, unit, brief, other);
    }

    /** The scale of thickness for a car, in the unit asked for. */
    public ThicknessRamp ramp(Findings car) {
        return ThicknessRamp.of(List.of(car), unit.orElseGet(() -> ThicknessRamp.usualUnit(car)));
    }
}
