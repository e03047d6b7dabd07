package quarterlight.matters;

import static quarterlight.language.Sentences.say;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import quarterlight.car.Zone;
import quarterlight.car.ZoneId;
import quarterlight.findings.Findings;
import quarterlight.matters.rule.EvidenceRow;
import quarterlight.matters.rule.Finding;
import quarterlight.matters.rule.MatterRule;
import quarterlight.visit.MatterDecision;
import quarterlight.visit.photo.PhotoId;
import quarterlight.visit.pin.Recorded;
import quarterlight.visit.statement.Severity;

/** Puts findings about the same together, and lays the inspector's decisions on them. */
final class MatterGrouping {
    private static final String PANELS = "finish:panels";
    private static final Comparator<Finding> DECIDING = Comparator.comparing(Finding::severity)
            .reversed()
            .thenComparing(finding -> !finding.typed())
            .thenComparing(Finding::rule);

    private final Findings car;
    private final Map<ZoneId, Integer> order;
    private final Map<String, MatterDecision> decisions;

    private MatterGrouping(Findings car) {
        this.car = car;
        List<Zone> zones = car.catalog().all();
        this.order = zones.stream().collect(Collectors.toMap(Zone::id, zones::indexOf));
        this.decisions = car.visit().decisions().stream()
                .map(Recorded::value)
                .collect(Collectors.toMap(MatterDecision::matter, Function.identity(), (first, last) -> last));
    }

    /** Every matter, in the order of the zone table, those without a zone last. */
    static List<Matter> of(Findings car, List<Finding> findings) {
        return new MatterGrouping(car).matters(findings);
    }

    private List<Matter> matters(List<Finding> findings) {
        Set<ZoneId> leftOut = car.visit().zonesLeftOut();
        Map<String, List<Finding>> groups = new LinkedHashMap<>();
        findings.stream()
                .filter(finding -> finding.zones().isEmpty() || !leftOut.containsAll(finding.zones()))
                .forEach(finding -> groups.computeIfAbsent(finding.matter(), id -> new ArrayList<>())
                        .add(finding));
        joinPanels(groups);
        List<Matter> matters = new ArrayList<>();
        groups.forEach((id, group) -> matters.add(matter(id, group)));
        matters.sort(Comparator.comparingInt(this::place));
        return matters;
    }

    /** Panels that were refinished and no more are one matter together, so that a repaint does not crowd out the rest. */
    private void joinPanels(Map<String, List<Finding>> groups) {
        List<String> alike = groups.entrySet().stream()
                .filter(group -> isRefinishedOnly(group.getValue()))
                .map(Map.Entry::getKey)
                .filter(id -> !decisions.containsKey(id))
                .toList();
        if (alike.size() > 1) {
            List<Finding> together = new ArrayList<>();
            alike.forEach(id -> together.addAll(groups.remove(id)));
            groups.put(PANELS, together);
        }
    }

    private static boolean isRefinishedOnly(List<Finding> group) {
        return group.stream().anyMatch(finding -> finding.rule() == MatterRule.REFINISHED)
                && group.stream().noneMatch(finding -> finding.severity().compareTo(Severity.MINOR) > 0);
    }

    private int place(Matter matter) {
        return matter.zones().stream()
                .mapToInt(zone -> order.getOrDefault(zone, order.size()))
                .min()
                .orElse(order.size());
    }

    private Matter matter(String id, List<Finding> group) {
        List<Finding> deciding = group.stream().sorted(DECIDING).toList();
        List<ZoneId> zones = group.stream()
                .flatMap(finding -> finding.zones().stream())
                .distinct()
                .sorted(Comparator.comparingInt(zone -> order.getOrDefault(zone, order.size())))
                .toList();
        boolean panels = id.equals(PANELS);
        List<Finding> all = panels ? headedTogether(deciding, zones) : deciding;
        return new Matter(
                id,
                Optional.empty(),
                panels ? names(zones) : deciding.get(0).place(),
                zones,
                deciding.get(0).severity(),
                Optional.ofNullable(decisions.get(id)),
                all,
                photos(all, zones));
    }

    /** One sentence for all panels before those of each. */
    private List<Finding> headedTogether(List<Finding> findings, List<ZoneId> zones) {
        String sentence = say("matters.panels-refinished", zones.size());
        List<EvidenceRow> evidence = findings.stream()
                .flatMap(finding -> finding.evidence().stream()
                        .map(row -> new EvidenceRow(
                                row.table(), row.row(), finding.place() + ": " + row.text(), row.photos())))
                .toList();
        return List.of(new Finding(
                PANELS,
                MatterRule.REFINISHED,
                zones,
                names(zones),
                findings.get(0).severity(),
                Optional.empty(),
                sentence,
                false,
                evidence));
    }

    private String names(List<ZoneId> zones) {
        return zones.stream()
                .map(zone -> car.catalog().find(zone).map(Zone::label).orElse(zone.value()))
                .collect(Collectors.joining("; "));
    }

    /** Those that the evidence names, else those pinned to its zones; of many zones only what the evidence names. */
    private List<PhotoId> photos(List<Finding> findings, List<ZoneId> zones) {
        List<PhotoId> named = findings.stream()
                .flatMap(finding -> finding.evidence().stream())
                .flatMap(row -> row.photos().stream())
                .distinct()
                .toList();
        boolean anywhere = zones.stream().anyMatch(zone -> zone.value().equals("whole-car"));
        boolean unseen = findings.get(0).rule() == MatterRule.STRUCTURE_NOT_SEEN
                || findings.get(0).rule() == MatterRule.SHELL_NOT_SEEN;
        Stream<PhotoId> pinned = anywhere || unseen
                ? Stream.empty()
                : car.visit().pins().stream()
                        .map(Recorded::value)
                        .filter(pin -> zones.contains(pin.zone()) && isKept(pin.photo()))
                        .map(pin -> pin.photo());
        return named.isEmpty() ? pinned.distinct().toList() : named;
    }

    private boolean isKept(PhotoId id) {
        Set<PhotoId> leftOut = car.visit().photosLeftOut();
        return car.visit()
                .photo(id)
                .filter(photo -> photo.setAside().isEmpty() && !leftOut.contains(id))
                .isPresent();
    }
}
