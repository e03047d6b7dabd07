package quarterlight.visit;

import java.util.Objects;
import java.util.Optional;

/**
 * What the inspector chose for the work and the pages of one visit.
 *
 * @param gaugeCorrection whether thickness is computed with the correction that the gauge checks allow
 * @param diagram name of the body diagram in place of the one that comes with the program
 * @param terms the inspector's own terms, as the report prints them
 * @param brief what the first page says of the inspector, and in the inspector's words
 * @param limits the inspector's own words on the limits of this visit, as the report prints them
 */
public record VisitChoices(
        boolean gaugeCorrection,
        Optional<String> diagram,
        Optional<String> terms,
        Optional<String> limits,
        ReportLength length,
        BriefWords brief) {
    /** The word for the program's own diagram. */
    public static final String SHIPPED = "shipped";

    /** Nothing chosen. */
    public static final VisitChoices USUAL =
            new VisitChoices(false, Optional.empty(), Optional.empty(), Optional.empty(), ReportLength.FULL);

    public VisitChoices {
        Objects.requireNonNull(diagram, "diagram");
        Objects.requireNonNull(terms, "terms");
        Objects.requireNonNull(limits, "limits");
        Objects.requireNonNull(length, "length");
        Objects.requireNonNull(brief, "brief");
    }

    /** Choices without words for the brief. */
    public VisitChoices(
            boolean gaugeCorrection,
            Optional<String> diagram,
            Optional<String> terms,
            Optional<String> limits,
            ReportLength length) {
        this(gaugeCorrection, diagram, terms, limits, length, BriefWords.NONE);
    }
}
