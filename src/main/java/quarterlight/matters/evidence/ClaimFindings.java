package quarterlight.matters.evidence;

import static quarterlight.language.Sentences.say;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import quarterlight.findings.ClaimedAndFound;
import quarterlight.findings.Findings;
import quarterlight.matters.rule.EvidenceRow;
import quarterlight.matters.rule.Finding;
import quarterlight.matters.rule.MatterRule;
import quarterlight.visit.pin.Recorded;
import quarterlight.visit.statement.Claim;
import quarterlight.visit.statement.Judgment;

/** Claims that what was found contradicts, and those that stay open. */
final class ClaimFindings {
    private static final String TABLE = "claims";

    private final Findings car;
    private final ZoneLookup places;

    ClaimFindings(Findings car) {
        this.car = car;
        this.places = new ZoneLookup(car);
    }

    List<Finding> all() {
        List<ClaimedAndFound> laid = ClaimedAndFound.of(car);
        List<Finding> found = new ArrayList<>();
        Map<String, Integer> named = new HashMap<>();
        for (int n = 0; n < laid.size(); n++) {
            ClaimedAndFound claim = laid.get(n);
            String id = id(claim.claim(), named);
            if (claim.judgment() != Judgment.SUPPORTED) {
                found.add(finding(car.visit().claims().get(n), claim, id));
            }
        }
        return found;
    }

    /** Two claims of the same first words are told apart by their order. */
    private static String id(Claim claim, Map<String, Integer> named) {
        String slug = ZoneLookup.slug(claim.text());
        int times = named.merge(slug, 1, Integer::sum);
        return "claim:" + slug + (times == 1 ? "" : "-" + times);
    }

    private Finding finding(Recorded<Claim> row, ClaimedAndFound laid, String id) {
        Claim claim = laid.claim();
        boolean contradicted = laid.judgment() == Judgment.CONTRADICTED;
        MatterRule rule = contradicted ? MatterRule.CLAIM_CONTRADICTED : MatterRule.CLAIM_OPEN;
        String by = claim.by().said();
        String words = claim.text().strip();
        String first = laid.found().stream()
                .findFirst()
                .map(one -> " " + ZoneLookup.sentence(one))
                .orElse("");
        String sentence = contradicted
                ? say("matters.claim.contradicted", words, by) + first
                : say("matters.claim.open", words, by);
        List<EvidenceRow> evidence = new ArrayList<>();
        evidence.add(EvidenceRow.of(
                TABLE,
                row.id(),
                say("matters.claim.row", by, ZoneLookup.sentence(claim.text()))
                        + (claim.judged().isPresent() ? " " + say("matters.claim.judged") : ""),
                places.shown(claim.photo())));
        laid.found().forEach(one -> evidence.add(EvidenceRow.workedOut("claims", ZoneLookup.sentence(one))));
        return new Finding(
                id,
                rule,
                claim.zone().stream().toList(),
                claim.zone().map(places::label).orElse(say("matters.whole-car")),
                rule.severity().orElseThrow(),
                Optional.empty(),
                sentence,
                false,
                evidence);
    }
}
