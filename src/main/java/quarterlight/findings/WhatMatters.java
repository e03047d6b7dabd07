package quarterlight.findings;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import quarterlight.car.Zone;
import quarterlight.car.ZoneId;

/**
 * Puts what is the matter with a car in order, so that the buyer reads the heaviest first: from the severity of statements, the
 * repair need, the likelihoods and the contradictions of dates and numbers. All that concerns one zone is one matter; panels
 * that were refinished and no more are one matter together. Zones that
 * the inspector left out of the pages are left out here. Rule and weights: docs/methods/what-matters.md.
 */
public final class WhatMatters {
    private final Findings car;
    private final MatterWeights weights;

    private WhatMatters(Findings car, MatterWeights weights) {
        this.car = car;
        this.weights = weights;
    }

    /**
     * Everything that matters, heaviest first. Of equal weight, the one with more evidence comes first, then the one that comes
     * first in the zone table, then in the order of the contradictions.
     */
    public static List<Matter> of(Findings car, MatterWeights weights) {
        return new WhatMatters(car, weights).inOrder();
    }

    private List<Matter> inOrder() {
        Set<ZoneId> leftOut = car.visit().leftOut().stream()
                .flatMap(row -> row.value().zone().stream())
                .collect(Collectors.toSet());
        List<ZonePieces> zones = car.catalog().all().stream()
                .filter(zone -> !leftOut.contains(zone.id()))
                .map(zone -> ZonePieces.of(car, zone, weights))
                .filter(zone -> !zone.pieces().isEmpty())
                .toList();
        List<ZonePieces> panels = zones.stream().filter(ZonePieces::refinished).toList();
        int together = Math.min(weights.refinishedMost(), weights.refinished() + weights.perPanel() * panels.size());
        List<ZonePieces> group = panels.stream()
                .filter(zone -> zone.weightBesideRefinish(weights) < together)
                .toList();
        List<Matter> matters = new ArrayList<>();
        zones.stream()
                .filter(zone -> group.size() < 2 || !group.contains(zone))
                .forEach(zone -> matters.add(ofZone(zone)));
        if (group.size() >= 2) {
            matters.add(ofPanels(group, together));
        }
        matters.addAll(ofParts());
        // a stable sort: what is equal stays in the order of the zone table
        matters.sort(Comparator.comparingInt((Matter matter) -> -matter.weight())
                .thenComparingInt(matter -> -matter.evidence().size()));
        return List.copyOf(matters);
    }

    private Matter ofZone(ZonePieces zone) {
        return new Matter(
                zone.zone().label(),
                List.of(zone.zone().id()),
                zone.headline(weights),
                evidence(zone),
                weight(zone.pieces()),
                zone.structural());
    }

    private Matter ofPanels(List<ZonePieces> group, int together) {
        List<Zone> zones = group.stream().map(ZonePieces::zone).toList();
        List<String> evidence = group.stream()
                .flatMap(panel ->
                        panel.pieces().stream().map(piece -> panel.zone().label() + ": " + piece.evidence()))
                .toList();
        return new Matter(
                zones.stream().map(Zone::label).collect(Collectors.joining("; ")),
                zones.stream().map(Zone::id).toList(),
                zones.size() + " panels were likely refinished.",
                evidence,
                together,
                false);
    }

    /** Parts whose mark names no zone: one matter each. */
    private List<Matter> ofParts() {
        Map<String, List<ZonePieces.Piece>> byPart = new LinkedHashMap<>();
        car.marks().contradictions().stream()
                .filter(c ->
                        c.zone().isEmpty() || car.catalog().find(c.zone().get()).isEmpty())
                .forEach(c -> byPart.computeIfAbsent(c.what(), part -> new ArrayList<>())
                        .add(ZonePieces.ofContradiction(c, weights)));
        List<Matter> matters = new ArrayList<>();
        byPart.forEach((part, pieces) -> {
            pieces.sort(Comparator.comparingInt(ZonePieces.Piece::weight).reversed());
            List<String> evidence =
                    pieces.stream().map(ZonePieces.Piece::evidence).toList();
            matters.add(new Matter(part, List.of(), pieces.get(0).headline(), evidence, weight(pieces), false));
        });
        return matters;
    }

    private int weight(List<ZonePieces.Piece> pieces) {
        return pieces.get(0).weight() + Math.min(weights.furtherMost(), weights.further() * (pieces.size() - 1));
    }

    private static List<String> evidence(ZonePieces zone) {
        return zone.pieces().stream().map(ZonePieces.Piece::evidence).toList();
    }
}
