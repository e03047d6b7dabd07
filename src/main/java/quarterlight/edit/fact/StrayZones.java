package quarterlight.edit.fact;

import static quarterlight.language.Sentences.say;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;
import quarterlight.car.Zone;
import quarterlight.car.ZoneCatalog;
import quarterlight.car.ZoneId;
import quarterlight.visit.VisitRecord;

/** Rows recorded in zones that a car of the visit's body does not have, as can happen when the body is set anew. */
final class StrayZones {
    private StrayZones() {}

    /** One sentence a zone, in the order of ids; empty if every row has its place. */
    static List<String> of(VisitRecord visit, ZoneCatalog catalog) {
        Set<ZoneId> known = new HashSet<>();
        catalog.zonesOf(visit.facts().car().body()).stream().map(Zone::id).forEach(known::add);
        Map<ZoneId, Integer> strays = new TreeMap<>();
        zones(visit).filter(zone -> !known.contains(zone)).forEach(zone -> strays.merge(zone, 1, Integer::sum));
        List<String> sentences = new ArrayList<>();
        strays.forEach((zone, count) -> sentences.add(say("refused.stray", count, zone)));
        return sentences;
    }

    private static Stream<ZoneId> zones(VisitRecord visit) {
        return Stream.of(
                        visit.facts().car().substrates().keySet().stream(),
                        visit.pins().stream().map(row -> row.value().zone()),
                        visit.readings().stream().map(row -> row.value().zone()),
                        visit.signs().stream().map(row -> row.value().zone()),
                        visit.traces().stream().map(row -> row.value().zone()),
                        visit.statements().stream().map(row -> row.value().zone()),
                        visit.marks().stream().map(row -> row.value().zone()).flatMap(Optional::stream),
                        visit.trials().stream().map(row -> row.value().zone()).flatMap(Optional::stream),
                        visit.features().stream().map(row -> row.value().zone()).flatMap(Optional::stream),
                        visit.coverage().stream().map(row -> row.value().zone()).flatMap(Optional::stream),
                        visit.leftOut().stream().map(row -> row.value().zone()).flatMap(Optional::stream))
                .flatMap(zones -> zones);
    }
}
