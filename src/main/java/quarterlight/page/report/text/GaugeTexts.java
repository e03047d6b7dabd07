package quarterlight.page.report.text;

import static quarterlight.language.Sentences.figure;
import static quarterlight.language.Sentences.say;

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
                    case NOT_CHECKED -> say("report.gauge-texts.no-gauge-check-was-made");
                    case CANNOT_TELL -> say("report.gauge-texts.checks-were-made-but-not");
                    case PASSED -> say("report.gauge-texts.every-check-is-within-the");
                    case FAILED -> say("report.gauge-texts.a-check-failed-the-readings");
                });
        for (GaugeQuality.Drift drift : quality.drifts()) {
            sentences.add(say(
                    "report.gauge-texts.from-before-to-after-on",
                    surface(drift.on()),
                    on(drift),
                    signed(drift.driftUm()),
                    drift.isBeyond() ? say("report.gauge-texts.beyond-the-tolerance") : "",
                    drift.toleranceUm().isPresent()
                            ? say(
                                    "report.gauge-texts.tolerance",
                                    number(drift.toleranceUm().getAsDouble()))
                            : ""));
        }
        boolean corrected = !car.thickness().correction().equals(GaugeCorrection.NONE);
        quality.correction()
                .ifPresent(line -> sentences.add(say(
                        "report.gauge-texts.two-point-correction-from-the",
                        number(line.zeroUm()),
                        figure("%.3f", line.factor()),
                        corrected
                                ? say("report.gauge-texts.thickness-in-this-report-is")
                                : say("report.gauge-texts.it-was-not-applied-thickness"))));
        GaugeCorrection.refusal(
                        car.visit().gaugeChecks().stream().map(Recorded::value).toList())
                .ifPresent(sentences::add);
        sentences.add(say(
                "report.gauge-texts.gauge-range-used",
                number(car.visit().facts().gaugeRange().um())));
        return new ReportContent.GaugeText(
                quality.verdicts().stream().map(this::row).toList(), sentences);
    }

    private String on(GaugeQuality.Drift drift) {
        return drift.on() == GaugeSurface.BARE ? "" : say("report.gauge-texts.of", number(drift.nominalUm()));
    }

    private List<String> row(GaugeVerdict verdict) {
        GaugeCheck check = verdict.check();
        return List.of(
                check.when().said(),
                check.on() == GaugeSurface.BARE ? say("report.gauge-texts.bare-metal") : say("report.gauge-texts.shim"),
                ramp.typed(check.nominal()),
                ramp.typed(check.shown()),
                signed(verdict.deviationUm()),
                tolerance(verdict.toleranceUm()),
                verdict.canTell()
                        ? verdict.passes() ? say("report.gauge-texts.within") : say("report.gauge-texts.beyond")
                        : say("report.gauge-texts.cannot-tell"),
                check.note().orElse(""));
    }

    private String tolerance(OptionalDouble um) {
        return um.isPresent() ? "\u00b1\u2009" + number(um.getAsDouble()) : say("report.gauge-texts.not-stated");
    }

    private static String surface(GaugeSurface on) {
        return on == GaugeSurface.BARE ? say("report.gauge-texts.bare-metal") : say("report.gauge-texts.the-shim");
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
