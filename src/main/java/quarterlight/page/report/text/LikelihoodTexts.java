package quarterlight.page.report.text;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import quarterlight.findings.Findings;
import quarterlight.finish.history.EvidenceStrength;
import quarterlight.finish.history.FinishReason;
import quarterlight.finish.history.ZoneHistory;
import quarterlight.finish.model.HeldNumbers;
import quarterlight.page.ThicknessRamp;
import quarterlight.units.Numerals;
import quarterlight.units.ThicknessUnit;

/** The likelihoods of a panel in words, with every reason that moved them. */
public final class LikelihoodTexts {
    private static final double TOO_SMALL = 0.05;
    private static final int STORIES = 3;
    private static final double MIN_STORY_CHANCE = 0.03;

    private LikelihoodTexts() {}

    static ReportContent.LikelihoodText of(ZoneHistory zone) {
        String figures = String.format(
                Locale.US,
                "Refinish likelihood %s of 100 (band %s), repair likelihood %s. Factory finish %s\u2009%%, refinished over it"
                        + " %s\u2009%%, stripped and refinished or replaced %s\u2009%%, over filler %s\u2009%%.",
                ZoneHistory.shown(zone.refinishScore()),
                zone.shownBand(),
                ZoneHistory.shown(zone.repairScore()),
                ZoneHistory.shown(zone.chances().factory()),
                ZoneHistory.shown(zone.chances().over()),
                ZoneHistory.shown(zone.chances().stripped()),
                ZoneHistory.shown(zone.chances().filler()));
        String strength = "The zone's own evidence: " + zone.strength().phrase() + "."
                + (zone.readable() ? "" : " The gauge cannot read this material, so only signs and rust count.");
        List<ReportContent.Fact> reasons = new ArrayList<>();
        zone.reasons().stream()
                .filter(reason ->
                        Math.abs(reason.log10Refinish()) >= TOO_SMALL || Math.abs(reason.log10Repair()) >= TOO_SMALL)
                .forEach(reason -> reasons.add(new ReportContent.Fact(what(reason), effect(reason))));
        return new ReportContent.LikelihoodText(plain(zone), figures, strength, reasons);
    }

    /** What the likelihoods come to, in one sentence. */
    static String plain(ZoneHistory zone) {
        int of = zone.refinishScore();
        String shown = " (" + ZoneHistory.shown(zone.refinishScore()) + " of 100)";
        String refinish = of >= 80
                ? "Very likely refinished" + shown
                : of >= 60
                        ? "Likely refinished" + shown
                        : of >= 40
                                ? "Whether it was refinished is open" + shown
                                : of >= 20
                                        ? "Probably in its factory finish" + shown + " for refinishing"
                                        : "Nothing speaks for refinishing" + shown;
        String filler = zone.repairScore() >= 50
                ? "; filler is likely (" + ZoneHistory.shown(zone.repairScore()) + " of 100)"
                : "";
        return refinish + filler + ".";
    }

    /** The same as sentences: the figures, the strength of the zone's own evidence, each reason. */
    public static List<String> sentences(ZoneHistory zone) {
        ReportContent.LikelihoodText text = of(zone);
        List<String> sentences = new ArrayList<>(List.of(text.figures(), text.strength()));
        sentences.addAll(more(zone, Optional.empty()));
        text.reasons().forEach(reason -> sentences.add(reason.label() + ": " + reason.text()));
        return sentences;
    }

    /** Life stories that fit, the jury, what it hangs on if that is known, and the filler that no spot stood on; full sentences. */
    public static List<String> more(ZoneHistory zone, Optional<HeldNumbers.Sway> hangsOn) {
        List<String> sentences = new ArrayList<>();
        sentences.add("What fits best: "
                + zone.stories().stream()
                        .limit(STORIES)
                        .filter(story -> story.chance() >= MIN_STORY_CHANCE)
                        .map(story -> story.story().words() + " (" + ZoneHistory.shown(story.chance()) + " of 100)")
                        .collect(Collectors.joining("; "))
                + ".");
        double least = zone.jury().values().stream()
                .mapToDouble(ZoneHistory.Verdict::notFactory)
                .min()
                .orElse(zone.notFactory());
        double most = zone.jury().values().stream()
                .mapToDouble(ZoneHistory.Verdict::notFactory)
                .max()
                .orElse(zone.notFactory());
        sentences.add("Four views of how cars come about put the refinish likelihood at " + ZoneHistory.shown(least)
                + " to " + ZoneHistory.shown(most) + ".");
        hangsOn.map(LikelihoodTexts::hangs).ifPresent(sentences::add);
        zone.hiddenPatch().map(LikelihoodTexts::hidden).ifPresent(sentences::add);
        return sentences;
    }

    static String hangs(HeldNumbers.Sway sway) {
        return "The assumption that moves it most is " + sway.number().meaning() + ": at its low end "
                + ZoneHistory.shown(sway.low()) + ", at its high end " + ZoneHistory.shown(sway.high())
                + (sway.turns() ? ". If that is wrong, the finding is wrong." : ".");
    }

    /** What is to be feared of filler that no spot stands on, and how much of the panel the spots leave open. */
    static String hidden(ZoneHistory.HiddenPatch patch) {
        String chance = "Chance of a 10\u2009cm patch of filler that no spot stands on: "
                + ZoneHistory.shown(patch.chance()) + " of 100";
        if (patch.spots() == 0) {
            return chance + ".";
        }
        return chance + "; the " + Numerals.count(patch.spots(), "spot", "spots") + " would miss such a patch in "
                + ZoneHistory.shown(patch.missed()) + " of 100 places"
                + (patch.placed() == 0
                        ? ", wherever they lie."
                        : patch.placed() < patch.spots() ? ", as far as their places are known." : ".");
    }

    /** The model, the profile and the priors that the likelihoods of a car rest on. */
    public static List<String> basis(Findings car, ThicknessUnit unit) {
        return MethodTexts.finish(car, ThicknessRamp.of(List.of(car), unit)).sentences();
    }

    /** What a reason is about: {@code Tape edge, seen}. */
    public static String what(FinishReason reason) {
        return switch (reason.source()) {
            case VALUES -> "Thickness values";
            case NO_METAL -> "Spots without metal";
            case SIGN ->
                words(reason.sign().orElseThrow().word()) + (reason.seen() ? ", seen" : ", looked for and not seen");
            case RUST -> "Rust found or not found";
            case REST_OF_CAR -> "The rest of the car";
        };
    }

    /** {@code tape-edge} as "Tape edge". */
    static String words(String word) {
        String plain = word.replace('-', ' ');
        return plain.substring(0, 1).toUpperCase(Locale.US) + plain.substring(1);
    }

    private static String effect(FinishReason reason) {
        EvidenceStrength strength = EvidenceStrength.ofLog10(reason.log10Refinish());
        String toward = strength.band() == EvidenceStrength.Band.NONE
                ? "hardly moves it"
                : strength.band().words() + (strength.forRefinishing() ? " for refinishing" : " for factory finish");
        return toward + " (" + signed(reason.log10Refinish()) + "; filler " + signed(reason.log10Repair()) + ")";
    }

    private static String signed(double log10) {
        return Numerals.trueMinus(String.format(Locale.US, "%+.1f", log10));
    }
}
