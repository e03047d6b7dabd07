package quarterlight.matters;

import static quarterlight.language.Sentences.say;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import quarterlight.car.Zone;
import quarterlight.car.ZoneId;
import quarterlight.coverage.EvidenceKind;
import quarterlight.coverage.Gap;
import quarterlight.coverage.TrialGroup;
import quarterlight.coverage.TrialItem;
import quarterlight.coverage.TrialList;
import quarterlight.findings.Findings;
import quarterlight.findings.NotLookedAt;
import quarterlight.matters.rule.MatterRule;
import quarterlight.matters.rule.Safety;
import quarterlight.rust.need.Load;
import quarterlight.rust.need.LoadTable;
import quarterlight.rust.need.RepairRule;
import quarterlight.visit.statement.Severity;
import quarterlight.visit.trial.TrialNames;
import quarterlight.visit.trial.TrialResult;

/**
 * What to look at next in person: first what could turn up something grave, then what could turn up something major. Within that in the
 * order of the questions here, which is the order in which one would ask them; docs/methods/what-matters.md lists them.
 */
final class NextLooks {
    private static final int NAMED = 5;
    private static final int NAMED_IN_SHORT = 2;

    private final Findings car;
    private final List<Matter> matters;
    private final List<Gap> gaps;
    private final TrialList trials;
    private final List<NextLook> looks = new ArrayList<>();

    NextLooks(Findings car, List<Matter> matters, List<Gap> gaps, TrialList trials) {
        this.car = car;
        this.matters = matters;
        this.gaps = gaps;
        this.trials = trials;
    }

    List<NextLook> all() {
        judged();
        structure();
        untriedSafety();
        fuel();
        identity();
        gauge();
        paint();
        untriedEngine();
        claims();
        looks.sort(Comparator.comparing(NextLook::turns).reversed());
        return List.copyOf(looks);
    }

    private void judged() {
        List<Matter> doubtful = ruled(MatterRule.STRUCTURE_IN_QUESTION);
        if (!doubtful.isEmpty()) {
            add(
                    "matters.look.judge",
                    places(doubtful),
                    say("matters.look.judge-why"),
                    zones(doubtful),
                    Severity.GRAVE,
                    Optional.of(RepairRule.liftCaution()));
        }
        List<Matter> numbers = ruled(MatterRule.IDENTITY_CONTRADICTS);
        if (!numbers.isEmpty()) {
            add(
                    "matters.look.number",
                    places(numbers),
                    say("matters.look.number-why"),
                    zones(numbers),
                    Severity.GRAVE,
                    Optional.empty());
        }
    }

    private void structure() {
        List<Zone> unseen = NotLookedAt.of(car).structural();
        List<Zone> main =
                unseen.stream().filter(zone -> load(zone) == Load.MAIN).toList();
        if (!main.isEmpty()) {
            addUnseen("matters.look.main", main, say("matters.look.main-why"), Severity.GRAVE);
        }
        List<Zone> shell =
                unseen.stream().filter(zone -> load(zone) != Load.MAIN).toList();
        if (!shell.isEmpty()) {
            addUnseen("matters.look.shell", shell, say("matters.look.shell-why"), Severity.MAJOR);
        }
    }

    /** @param key says what the zones do, so that the main parts and the sheet metal around them do not read as one entry twice */
    private void addUnseen(String key, List<Zone> zones, String why, Severity turns) {
        add(
                key,
                zones.stream().map(Zone::label).toList(),
                why,
                zones.stream().map(Zone::id).toList(),
                turns,
                Optional.of(RepairRule.liftCaution()));
    }

    private Load load(Zone zone) {
        return LoadTable.of(zone, car.visit().facts().car().body().construction());
    }

    private void untriedSafety() {
        addUntried(
                item -> item.group() == TrialGroup.BRAKES && item.unit().isEmpty()
                        || item.item().startsWith("Brakes")
                        || item.item().startsWith("Tracks"),
                say("matters.look.stops-why"),
                Severity.GRAVE);
    }

    private void untriedEngine() {
        addUntried(
                item -> item.group() == TrialGroup.ENGINE
                        || item.group() == TrialGroup.RUNNING
                                && !item.item().startsWith("Brakes")
                                && !item.item().startsWith("Tracks"),
                say("matters.look.drives-why"),
                Severity.MAJOR);
    }

    private void addUntried(Predicate<TrialItem> wanted, String why, Severity turns) {
        Set<ZoneId> there = car.zones().stream().map(Zone::id).collect(Collectors.toSet());
        Set<String> noted = car.visit().trials().stream()
                .map(row -> row.value())
                .filter(trial -> trial.result() == TrialResult.NOT_TRIED)
                .map(trial -> key(trial.item()))
                .collect(Collectors.toSet());
        Set<String> spoken = car.visit().trials().stream()
                .map(row -> key(row.value().item()))
                .collect(Collectors.toSet());
        List<TrialItem> open = trials.items().stream()
                .filter(wanted)
                .filter(item -> there.contains(item.zone()))
                .filter(item -> noted.contains(key(item.item())) || !spoken.contains(key(item.item())))
                .toList();
        if (!open.isEmpty()) {
            List<String> names =
                    open.stream().map(item -> TrialNames.said(item.item())).toList();
            add("matters.look.try", names, why, List.of(), turns, Optional.of(TrialList.caution()));
        }
    }

    private static String key(String item) {
        return item.strip().toLowerCase(java.util.Locale.ROOT);
    }

    private void fuel() {
        List<Matter> unseen = ruled(MatterRule.FUEL_NOT_SEEN);
        if (!unseen.isEmpty()) {
            add(
                    "matters.look.leaks",
                    places(unseen),
                    say("matters.look.leaks-why"),
                    zones(unseen),
                    Severity.GRAVE,
                    Optional.of(Safety.FUEL.caution()));
        }
    }

    private void identity() {
        if (gaps.stream().anyMatch(gap -> gap.lacks() == EvidenceKind.IDENTITY_MARK)) {
            add(
                    "matters.look.identity",
                    List.of(),
                    say("matters.look.identity-why"),
                    List.of(),
                    Severity.GRAVE,
                    Optional.empty());
        }
    }

    private void gauge() {
        if (!ruled(MatterRule.GAUGE_FAILED).isEmpty()
                || !ruled(MatterRule.READINGS_NOT_CHECKED).isEmpty()) {
            add(
                    "matters.look.gauge",
                    List.of(),
                    say("matters.look.gauge-why"),
                    List.of(),
                    Severity.MAJOR,
                    Optional.empty());
        }
    }

    private void paint() {
        NotLookedAt missing = NotLookedAt.of(car);
        if (!missing.unmeasured().isEmpty()) {
            List<Zone> zones = missing.unmeasured();
            add(
                    "matters.look.paint",
                    zones.stream().map(Zone::label).toList(),
                    say("matters.look.paint-why"),
                    zones.stream().map(Zone::id).toList(),
                    Severity.MAJOR,
                    Optional.empty());
        }
    }

    private void claims() {
        List<Matter> open = ruled(MatterRule.CLAIM_OPEN);
        if (!open.isEmpty()) {
            String what = say("matters.look.claims", open.size());
            looks.add(new NextLook(
                    what, what, say("matters.look.claims-why"), zones(open), Severity.MAJOR, Optional.empty()));
        }
    }

    private List<Matter> ruled(MatterRule rule) {
        return matters.stream()
                .filter(matter -> matter.findings().stream().anyMatch(finding -> finding.rule() == rule))
                .toList();
    }

    private static List<String> places(List<Matter> matters) {
        return matters.stream().map(Matter::place).toList();
    }

    private static List<ZoneId> zones(List<Matter> matters) {
        return matters.stream()
                .flatMap(matter -> matter.zones().stream())
                .distinct()
                .toList();
    }

    /**
     * @param key of the sentence that says what to do
     * @param names in it, the first of them named and the others counted; none if the sentence is whole without
     */
    private void add(
            String key, List<String> names, String why, List<ZoneId> zones, Severity turns, Optional<String> caution) {
        looks.add(new NextLook(
                say(key, named(names, NAMED)), say(key, named(names, NAMED_IN_SHORT)), why, zones, turns, caution));
    }

    private static String named(List<String> names, int most) {
        String first = names.stream().limit(most).collect(Collectors.joining("; "));
        return names.size() > most ? say("matters.look.more", first, names.size() - most) : first;
    }
}
