package quarterlight.page.report.text;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import quarterlight.findings.Findings;
import quarterlight.page.ThicknessRamp;
import quarterlight.thickness.gauge.GaugeCorrection;
import quarterlight.thickness.gauge.GaugeQuality;
import quarterlight.thickness.gauge.GaugeVerdict;
import quarterlight.units.Numerals;
import quarterlight.visit.pin.Recorded;
import quarterlight.visit.reading.GaugeCheck;
import quarterlight.visit.reading.GaugeSurface;

/** The gauge check in full: every look with its verdict, the drift, what all of it comes to, and the correction. */
public final class GaugeTexts {
    private final Findings car;
    private final ThicknessRamp ramp;

    public GaugeTexts(Findings car, ThicknessRamp ramp) {
        this.car = car;
        this.ramp = ramp;
    }

    public ReportContent.GaugeText text() {
        GaugeQuality quality = GaugeQuality.of(car.visit());
        List<String> sentences = new ArrayList<>();
        sentences.add(
                switch (quality.summary()) {
                    case NOT_CHECKED ->
                        "No gauge check was made: nothing shows how far the gauge can be trusted on that day.";
                    case CANNOT_TELL ->
                        "Checks were made, but not all state a tolerance, so they cannot show that the gauge was"
                                + " right.";
                    case PASSED -> "Every check is within the tolerances stated for gauge and shim.";
                    case FAILED ->
                        "A check failed: the readings since the last good check are suspect, and the likelihoods with"
                                + " them.";
                });
        for (GaugeQuality.Drift drift : quality.drifts()) {
            sentences.add("From before to after, on " + surface(drift.on()) + on(drift) + ", the gauge moved by "
                    + signed(drift.driftUm()) + (drift.isBeyond() ? ", beyond the tolerance" : "")
                    + (drift.toleranceUm().isPresent()
                            ? " (tolerance " + number(drift.toleranceUm().getAsDouble()) + ")"
                            : "")
                    + ".");
        }
        boolean corrected = !car.thickness().correction().equals(GaugeCorrection.NONE);
        quality.correction()
                .ifPresent(line -> sentences.add(String.format(
                        Locale.US,
                        "Two-point correction from the checks: (shown value \u2212 %s) \u00d7 %.3f. %s",
                        number(line.zeroUm()),
                        line.factor(),
                        corrected
                                ? "Thickness in this report is computed with it; readings are printed" + " as entered."
                                : "It was not applied: thickness in this report is computed from the"
                                        + " readings as entered.")));
        GaugeCorrection.refusal(
                        car.visit().gaugeChecks().stream().map(Recorded::value).toList())
                .ifPresent(sentences::add);
        sentences.add(
                "Gauge range used: " + number(car.visit().facts().gaugeRange().um()) + ".");
        return new ReportContent.GaugeText(
                quality.verdicts().stream().map(this::row).toList(), sentences);
    }

    private String on(GaugeQuality.Drift drift) {
        return drift.on() == GaugeSurface.BARE ? "" : " of " + number(drift.nominalUm());
    }

    private List<String> row(GaugeVerdict verdict) {
        GaugeCheck check = verdict.check();
        return List.of(
                check.when().word(),
                check.on() == GaugeSurface.BARE ? "bare metal" : "shim",
                ramp.typed(check.nominal()),
                ramp.typed(check.shown()),
                signed(verdict.deviationUm()),
                tolerance(verdict.toleranceUm()),
                verdict.canTell() ? verdict.passes() ? "within" : "beyond" : "cannot tell",
                check.note().orElse(""));
    }

    private String tolerance(OptionalDouble um) {
        return um.isPresent() ? "\u00b1\u2009" + number(um.getAsDouble()) : "not stated";
    }

    private static String surface(GaugeSurface on) {
        return on == GaugeSurface.BARE ? "bare metal" : "the shim";
    }

    /** Small differences: one digit more than a mean. */
    private String number(double um) {
        double value = ramp.unit().fromUm(um);
        String digits = ramp.unitName().equals("mil") ? "%.2f" : "%.1f";
        return Numerals.trueMinus(String.format(Locale.US, digits, value)) + "\u2009" + ramp.unitName();
    }

    private String signed(double um) {
        return (um > 0 ? "+" : "") + number(um);
    }
}
