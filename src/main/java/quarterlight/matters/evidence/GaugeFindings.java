package quarterlight.matters.evidence;

import static quarterlight.language.Sentences.say;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import quarterlight.findings.Findings;
import quarterlight.language.Sentences;
import quarterlight.matters.rule.EvidenceRow;
import quarterlight.matters.rule.Finding;
import quarterlight.matters.rule.MatterRule;
import quarterlight.thickness.gauge.GaugeQuality;
import quarterlight.thickness.gauge.GaugeVerdict;
import quarterlight.units.Numerals;
import quarterlight.visit.reading.GaugeCheck;
import quarterlight.visit.reading.GaugeSurface;

/** Whether the readings of the day can be relied on. */
final class GaugeFindings {
    private static final String TABLE = "gauge";

    private final Findings car;

    GaugeFindings(Findings car) {
        this.car = car;
    }

    List<Finding> all() {
        if (car.visit().readings().isEmpty()) {
            return List.of();
        }
        GaugeQuality quality = GaugeQuality.of(car.visit());
        List<EvidenceRow> failed = failed(quality);
        if (!failed.isEmpty()) {
            return List.of(finding(MatterRule.GAUGE_FAILED, say("matters.gauge.failed"), failed));
        }
        return switch (quality.summary()) {
            case NOT_CHECKED -> List.of(unchecked(say("matters.gauge.not-checked")));
            case CANNOT_TELL -> List.of(unchecked(say("matters.gauge.no-tolerance")));
            case PASSED, FAILED -> List.of();
        };
    }

    private static Finding unchecked(String sentence) {
        return finding(MatterRule.READINGS_NOT_CHECKED, sentence, List.of(EvidenceRow.workedOut(TABLE, sentence)));
    }

    private static Finding finding(MatterRule rule, String sentence, List<EvidenceRow> evidence) {
        return new Finding(
                "gauge:check",
                rule,
                List.of(),
                say("matters.gauge"),
                rule.severity().orElseThrow(),
                Optional.empty(),
                sentence,
                false,
                evidence);
    }

    private static List<EvidenceRow> failed(GaugeQuality quality) {
        List<EvidenceRow> rows = new ArrayList<>();
        for (GaugeVerdict verdict : quality.verdicts()) {
            if (verdict.canTell() && !verdict.passes()) {
                rows.add(new EvidenceRow(TABLE, Optional.of(verdict.row()), sentence(verdict), List.of()));
            }
        }
        for (GaugeQuality.Drift drift : quality.drifts()) {
            if (drift.isBeyond()) {
                rows.add(EvidenceRow.workedOut(
                        TABLE, say("matters.gauge.drift", drift(drift.driftUm()), surface(drift.on()))));
            }
        }
        return rows;
    }

    private static String sentence(GaugeVerdict verdict) {
        GaugeCheck check = verdict.check();
        return say(
                "matters.gauge.beyond." + check.when().word(),
                surface(check.on()),
                Numerals.typed(check.nominal().typed()),
                check.nominal().unit().word(),
                Numerals.typed(check.shown().typed()),
                check.shown().unit().word());
    }

    private static String drift(double um) {
        return (um < 0 ? "\u2212" : "") + Sentences.figure("%.0f", Math.abs(um));
    }

    private static String surface(GaugeSurface on) {
        return on == GaugeSurface.BARE ? say("matters.gauge.bare") : say("matters.gauge.shim");
    }
}
