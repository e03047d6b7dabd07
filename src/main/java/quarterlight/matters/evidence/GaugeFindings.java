package quarterlight.matters.evidence;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
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
                    MatterRule.GAUGE_FAILED,
                    "The gauge check failed: every thickness of this visit is suspect.",
                    failed));
        }
        return switch (quality.summary()) {
            case NOT_CHECKED -> List.of(unchecked("The gauge was not checked on bare metal or shims."));
            case CANNOT_TELL ->
                List.of(unchecked("The gauge was checked, but with no tolerance stated for all checks."));
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
                "The gauge",
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
                        String.format(
                                Locale.ROOT,
                                "Between before and after it moved by %s%.0f\u2009\u00b5m on %s.",
                                drift.driftUm() < 0 ? "\u2212" : "",
                                Math.abs(drift.driftUm()),
                                surface(drift.on()))));
            }
        }
        return rows;
    }

    private static String sentence(GaugeVerdict verdict) {
        return String.format(
                Locale.ROOT,
                "%s the readings, on %s: nominal %s\u2009%s, shown %s\u2009%s, beyond the tolerance.",
                ZoneLookup.sentence(verdict.check().when().word()).replace(".", ""),
                surface(verdict.check().on()),
                verdict.check().nominal().typed().toPlainString(),
                verdict.check().nominal().unit().word(),
                verdict.check().shown().typed().toPlainString(),
                verdict.check().shown().unit().word());
    }

    private static String surface(GaugeSurface on) {
        return on == GaugeSurface.BARE ? "bare metal" : "a shim";
    }
}
