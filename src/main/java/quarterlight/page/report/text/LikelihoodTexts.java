package quarterlight.page.report.text;

import static quarterlight.language.Sentences.figure;
import static quarterlight.language.Sentences.say;

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
        String figures = say(
                "report.likelihood-texts.refinish-likelihood-of-100-band",
                ZoneHistory.shown(zone.refinishScore()),
                zone.shownBand(),
                ZoneHistory.shown(zone.repairScore()),
                ZoneHistory.shown(zone.chances().factory()),
                ZoneHistory.shown(zone.chances().over()),
                ZoneHistory.shown(zone.chances().stripped()),
                ZoneHistory.shown(zone.chances().filler()));
        String strength = say(
                "report.likelihood-texts.the-zone-s-own-evidence",
                zone.strength().phrase(),
                zone.readable() ? "" : say("report.likelihood-texts.the-gauge-cannot-read-this"));
        List<ReportContent.Fact> reasons = new ArrayList<>();
        zone.reasons().stream()
                .filter(reason ->
                        Math.abs(reason.log10Refinish()) >= TOO_SMALL || Math.abs(reason.log10Repair()) >= TOO_SMALL)
                .forEach(reason -> reasons.add(new ReportContent.Fact(what(reason), effect(reason))));
        String untouched = zone.hiddenPatch().map(LikelihoodTexts::hidden).orElse("");
        return new ReportContent.LikelihoodText(plain(zone), figures, strength, reasons, untouched);
    }

    /** What the likelihoods come to, in one sentence. */
    static String plain(ZoneHistory zone) {
        int of = zone.refinishScore();
        String shown = say("report.likelihood-texts.of-100", ZoneHistory.shown(zone.refinishScore()));
        String refinish = of >= 80
                ? say("report.likelihood-texts.very-likely-refinished", shown)
                : of >= 60
                        ? say("report.likelihood-texts.likely-refinished", shown)
                        : of >= 40
                                ? say("report.likelihood-texts.whether-it-was-refinished-is", shown)
                                : of >= 20
                                        ? say("report.likelihood-texts.probably-in-its-factory-finish", shown)
                                        : say("report.likelihood-texts.nothing-speaks-for-refinishing", shown);
        String filler = zone.repairScore() >= 50
                ? say("report.likelihood-texts.filler-is-likely-of-100", ZoneHistory.shown(zone.repairScore()))
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
        sentences.add(say(
                "report.likelihood-texts.what-fits-best",
                zone.stories().stream()
                        .limit(STORIES)
                        .filter(story -> story.chance() >= MIN_STORY_CHANCE)
                        .map(story -> say(
                                "report.likelihood-texts.of-100-2",
                                story.story().words(),
                                ZoneHistory.shown(story.chance())))
                        .collect(Collectors.joining("; "))));
        double least = zone.jury().values().stream()
                .mapToDouble(ZoneHistory.Verdict::notFactory)
                .min()
                .orElse(zone.notFactory());
        double most = zone.jury().values().stream()
                .mapToDouble(ZoneHistory.Verdict::notFactory)
                .max()
                .orElse(zone.notFactory());
        sentences.add(say("report.likelihood-texts.four-views-of-how-cars", ZoneHistory.shownBand(least, most)));
        hangsOn.map(LikelihoodTexts::hangs).ifPresent(sentences::add);
        zone.hiddenPatch().map(LikelihoodTexts::hidden).ifPresent(sentences::add);
        return sentences;
    }

    static String hangs(HeldNumbers.Sway sway) {
        return say(
                "report.likelihood-texts.the-assumption-that-moves-it",
                sway.number().meaning(),
                ZoneHistory.shown(sway.low()),
                ZoneHistory.shown(sway.high()),
                sway.turns() ? say("report.likelihood-texts.if-that-is-wrong-the") : ".");
    }

    /** What is to be feared of filler that no spot stands on, and how much of the panel the spots leave open. */
    static String hidden(ZoneHistory.HiddenPatch patch) {
        String chance = say("report.likelihood-texts.chance-of-a-10-cm", ZoneHistory.shown(patch.chance()));
        if (patch.spots() == 0) {
            return chance + ".";
        }
        return say(
                "report.likelihood-texts.the-spots-would-miss-such",
                chance,
                patch.spots(),
                ZoneHistory.shown(patch.missed()),
                patch.placed() == 0
                        ? say("report.likelihood-texts.wherever-they-lie")
                        : patch.placed() < patch.spots() ? say("report.likelihood-texts.as-far-as-their-places") : ".");
    }

    /** The model, the profile and the priors that the likelihoods of a car rest on. */
    public static List<String> basis(Findings car, ThicknessUnit unit) {
        return MethodTexts.finish(car, ThicknessRamp.of(List.of(car), unit)).sentences();
    }

    /** What a reason is about: {@code Tape edge, seen}. */
    public static String what(FinishReason reason) {
        return switch (reason.source()) {
            case VALUES -> say("report.likelihood-texts.thickness-values");
            case NO_METAL -> say("report.likelihood-texts.spots-without-metal");
            case SIGN ->
                words(reason.sign().orElseThrow().said())
                        + (reason.seen()
                                ? say("report.likelihood-texts.seen")
                                : say("report.likelihood-texts.looked-for-and-not-seen"));
            case RUST -> say("report.likelihood-texts.rust-found-or-not-found");
            case REST_OF_CAR -> say("report.likelihood-texts.the-rest-of-the-car");
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
                ? say("report.likelihood-texts.hardly-moves-it")
                : strength.band().words()
                        + (strength.forRefinishing()
                                ? say("report.likelihood-texts.for-refinishing")
                                : say("report.likelihood-texts.for-factory-finish"));
        return say(
                "report.likelihood-texts.filler", toward, signed(reason.log10Refinish()), signed(reason.log10Repair()));
    }

    private static String signed(double log10) {
        return Numerals.trueMinus(figure("%+.1f", log10));
    }
}
