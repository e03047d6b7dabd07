package quarterlight.matters;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import quarterlight.car.ZoneId;
import quarterlight.coverage.Gap;
import quarterlight.coverage.TrialList;
import quarterlight.findings.Findings;
import quarterlight.matters.evidence.FoundFindings;
import quarterlight.matters.rule.Safety;
import quarterlight.visit.statement.Severity;

/**
 * What matters about a car: the one model that the pages, the window, the comparison and the JSON show. Rule: docs/methods/what-matters.md.
 * <p>A buyer's is made of the findings from what a buyer may see. Immutable.
 *
 * @param all most severe first; of equal severity what can hurt someone, then by the order of the rule table, then what rests on more
 *     evidence, then by the zone table
 * @param checked how much of the car was looked at
 * @param next what to look at in person, what would change the picture most first
 */
public record Matters(List<Matter> all, Checked checked, List<NextLook> next) {
    /** So many have a letter and stand on the first page. */
    public static final int MAX_LETTERS = 7;

    /** Least severity of a matter with a letter. */
    private static final Severity LEAST_LETTERED = Severity.MINOR;

    private static final Comparator<Matter> ORDER = Comparator.comparing(Matter::severity)
            .reversed()
            .thenComparing(matter -> matter.safety().isEmpty())
            .thenComparing(Matter::rule)
            .thenComparing(matter -> -matter.evidence().size());

    public Matters {
        all = List.copyOf(all);
        Objects.requireNonNull(checked, "checked");
        next = List.copyOf(next);
    }

    /**
     * What matters about a visit's car. Zones that the inspector left out are no matter.
     *
     * @param gaps evidence that the visit lacks
     * @param trials functions worth trying, with the limits of their values
     */
    public static Matters of(Findings car, List<Gap> gaps, TrialList trials) {
        // a stable sort: what is equal stays in the order of the zone table
        List<Matter> sorted = MatterGrouping.of(car, FoundFindings.of(car, trials)).stream()
                .sorted(ORDER)
                .toList();
        Checked checked = Checked.of(car);
        return new Matters(lettered(sorted), checked, new NextLooks(car, sorted, gaps, trials).all());
    }

    private static List<Matter> lettered(List<Matter> sorted) {
        List<Matter> named = new ArrayList<>();
        for (Matter matter : sorted) {
            boolean shown = named.size() < MAX_LETTERS && matter.severity().compareTo(LEAST_LETTERED) >= 0;
            named.add(shown ? matter.lettered((char) ('A' + named.size())) : matter);
        }
        return named;
    }

    /** Those of the first page, A first. */
    public List<Matter> lettered() {
        return all.stream().filter(matter -> matter.letter().isPresent()).toList();
    }

    /** Those of one severity. */
    public List<Matter> of(Severity severity) {
        return all.stream().filter(matter -> matter.severity() == severity).toList();
    }

    /** Grave and major ones: none of them may be missing where cars are compared. */
    public List<Matter> weighty() {
        return all.stream()
                .filter(matter -> matter.severity().compareTo(Severity.MAJOR) >= 0)
                .toList();
    }

    /** What can hurt someone, in the order of {@link Safety}: what stands under "Before anyone drives or lifts it". */
    public List<Matter> safety() {
        return all.stream()
                .filter(matter -> matter.safety().isPresent())
                .sorted(Comparator.comparing(matter -> matter.safety().orElseThrow()))
                .toList();
    }

    /** Those about a zone. */
    public List<Matter> about(ZoneId zone) {
        return all.stream().filter(matter -> matter.zones().contains(zone)).toList();
    }

    public Optional<Matter> find(String id) {
        return all.stream().filter(matter -> matter.id().equals(id)).findFirst();
    }
}
