package quarterlight.coverage;

import static quarterlight.language.Sentences.say;

import java.util.List;
import java.util.Optional;
import quarterlight.car.Zone;
import quarterlight.car.ZoneId;
import quarterlight.car.body.Body;
import quarterlight.visit.CoverageOverride;

/**
 * What a visit must bring, and the order in which one walks round a car. Immutable. Common practice without a published
 * source; the inspector may edit both.
 *
 * @param rules rows, any order; of several that ask the same of a zone the one that asks most holds
 * @param walk zones in the order of the walk, each once; a zone that is not in it comes last
 */
public record CoverageRules(List<CoverageRule> rules, List<ZoneId> walk) {
    public CoverageRules {
        rules = List.copyOf(rules);
        walk = List.copyOf(walk);
        if (walk.stream().distinct().count() != walk.size()) {
            throw new IllegalArgumentException("a zone stands twice in the walk round the car");
        }
    }

    /** The rule that asks most of this kind of evidence of a zone, if one asks. */
    Optional<CoverageRule> most(EvidenceKind want, Zone zone, Body body) {
        CoverageRule most = null;
        for (CoverageRule rule : rules) {
            if (rule.want() == want && rule.asksOf(zone, body) && (most == null || rule.number() > most.number())) {
                most = rule;
            }
        }
        return Optional.ofNullable(most);
    }

    /**
     * How much of a kind of evidence this visit must bring of a zone: a wish for the zone itself, else a wish for every zone that the
     * usual rule asks, else the usual rule; of wishes for the same the last one holds.
     *
     * @return empty if nothing is asked for
     */
    Optional<Asked> asked(EvidenceKind want, Zone zone, Body body, List<CoverageOverride> wishes) {
        Optional<Asked> usual = most(want, zone, body).map(rule -> new Asked(rule.number(), rule.why()));
        Optional<Asked> wished = Optional.empty();
        boolean own = false;
        for (CoverageOverride wish : wishes) {
            boolean here = wish.zone().filter(zone.id()::equals).isPresent();
            boolean everywhere = wish.zone().isEmpty() && usual.isPresent() && !own;
            if (wish.evidence().equals(want.word()) && (here || everywhere)) {
                own |= here;
                wished = Optional.of(new Asked(wish.want(), say("coverage.coverage-rules.asked-for-by-the-inspector")));
            }
        }
        return wished.or(() -> usual).filter(asked -> asked.number() > 0);
    }

    /** What is asked of a zone. */
    record Asked(int number, String why) {}

    /** Place of a zone in the walk; those that are not in it come last. */
    int place(ZoneId zone) {
        int at = walk.indexOf(zone);
        return at < 0 ? walk.size() : at;
    }
}
