package quarterlight.matters.evidence;

import java.util.List;
import java.util.stream.Stream;
import quarterlight.coverage.TrialList;
import quarterlight.findings.Findings;
import quarterlight.matters.rule.Finding;

/** Every finding of a visit. */
public final class FoundFindings {
    private FoundFindings() {}

    /**
     * Every finding; what is sound is none.
     *
     * @param trials the list whose limits measured values are held against
     */
    public static List<Finding> of(Findings car, TrialList trials) {
        return Stream.of(
                        new StatementFindings(car).all(),
                        new RustFindings(car).all(),
                        new TrialFindings(car, trials).all(),
                        new MarkFindings(car).all(),
                        new ClaimFindings(car).all(),
                        new GaugeFindings(car).all(),
                        new FinishFindings(car).all(),
                        new UnseenFindings(car).all())
                .flatMap(List::stream)
                .toList();
    }
}
