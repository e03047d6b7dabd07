package quarterlight.matters.evidence;

import static quarterlight.language.Sentences.say;

import java.util.ArrayList;
import java.util.List;
import quarterlight.findings.Findings;
import quarterlight.finish.history.EvidenceStrength;
import quarterlight.finish.history.ZoneHistory;
import quarterlight.matters.rule.EvidenceRow;
import quarterlight.matters.rule.Finding;
import quarterlight.matters.rule.MatterRule;

/** Panels that were likely repaired or refinished; only those with a reading or a sign of their own, for a prior is never a finding. */
final class FinishFindings {
    private static final String TABLE = "history";

    private final Findings car;
    private final ZoneLookup places;

    FinishFindings(Findings car) {
        this.car = car;
        this.places = new ZoneLookup(car);
    }

    List<Finding> all() {
        List<Finding> found = new ArrayList<>();
        for (ZoneHistory zone : car.history().zones()) {
            if (zone.reasons().isEmpty()) {
                continue;
            }
            if (zone.repairScore() >= Findings.LIKELY_SCORE) {
                found.add(finding(zone, MatterRule.FILLER_LIKELY, "matters.finish.filler"));
            } else if (isRefinished(zone)) {
                found.add(finding(zone, MatterRule.REFINISHED, "matters.finish.refinished"));
            }
        }
        return found;
    }

    private static boolean isRefinished(ZoneHistory zone) {
        EvidenceStrength strength = zone.strength();
        return zone.refinishScore() >= Findings.LIKELY_SCORE
                && strength.forRefinishing()
                && strength.band().compareTo(EvidenceStrength.Band.MODERATE) >= 0;
    }

    private Finding finding(ZoneHistory zone, MatterRule rule, String key) {
        String figures = say(
                "matters.finish.figures",
                ZoneHistory.shown(zone.refinishScore()),
                zone.shownBand(),
                ZoneHistory.shown(zone.repairScore()));
        return new Finding(
                "finish:" + zone.zone().value(),
                rule,
                List.of(zone.zone()),
                places.label(zone.zone()),
                rule.severity().orElseThrow(),
                rule.safety(),
                say(key) + ".",
                false,
                List.of(EvidenceRow.workedOut(TABLE, say(key) + ": " + figures + ".")));
    }
}
