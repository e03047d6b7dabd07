package quarterlight.matters.evidence;

import static quarterlight.language.Sentences.figure;
import static quarterlight.language.Sentences.say;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import quarterlight.findings.Findings;
import quarterlight.matters.rule.EvidenceRow;
import quarterlight.matters.rule.Finding;
import quarterlight.matters.rule.MatterRule;
import quarterlight.thickness.gauge.GaugeQuality;
import quarterlight.thickness.gauge.GaugeVerdict;
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
            return List.of(finding(
                    MatterRule.GAUGE_FAILED, say("matters.gauge-findings.the-gauge-check-failed-every"), failed));
        }
        return switch (quality.summary()) {
            case NOT_CHECKED -> List.of(unchecked(say("matters.gauge-findings.the-gauge-was-not-checked")));
            case CANNOT_TELL -> List.of(unchecked(say("matters.gauge-findings.the-gauge-was-checked-but")));
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
                say("matters.gauge-findings.the-gauge"),
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
                        TABLE,
                        say(
                                "matters.gauge-findings.between-before-and-after",
                                drift.driftUm() < 0 ? "\u2212" : "",
                                figure("%.0f", Math.abs(drift.driftUm())),
                                surface(drift.on()))));
            }
        }
        return rows;
    }

    private static String sentence(GaugeVerdict verdict) {
        return say(
                "matters.gauge-findings.the-readings-on-nominal-shown",
                ZoneLookup.sentence(verdict.check().when().said()).replace(".", ""),
                surface(verdict.check().on()),
                verdict.check().nominal().typed().toPlainString(),
                verdict.check().nominal().unit().word(),
                verdict.check().shown().typed().toPlainString(),
                verdict.check().shown().unit().word());
    }

    private static String surface(GaugeSurface on) {
        return on == GaugeSurface.BARE
                ? say("matters.gauge-findings.bare-metal")
                : say("matters.gauge-findings.a-shim");
    }
}
