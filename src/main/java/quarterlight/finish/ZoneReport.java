package quarterlight.finish;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import quarterlight.finish.history.Chances;
import quarterlight.finish.history.FinishReason;
import quarterlight.finish.history.ZoneHistory;
import quarterlight.finish.model.PanelStories;
import quarterlight.finish.number.LifeStory;
import quarterlight.finish.number.ProcessModel;
import quarterlight.finish.place.PanelOutline;
import quarterlight.finish.place.PatchPlaces;
import quarterlight.visit.trial.SignKind;

/** Makes of the stories of one panel what is told of its zone. */
final class ZoneReport {
    private static final double MIN_CHANCE = 1e-12;
    private static final double MAX_LOG = 9;

    private final PanelStories panel;
    private final ZoneEvidence zone;
    private final FinishEvidence evidence;
    private final double[] all;

    ZoneReport(PanelStories panel, ZoneEvidence zone, FinishEvidence evidence) {
        this.panel = panel;
        this.zone = zone;
        this.evidence = evidence;
        this.all = panel.all();
    }

    FinishHistory.ZonePrior prior() {
        double[] rest = panel.fromTheRest();
        return new FinishHistory.ZonePrior(zone.zone(), zone.readable(), notFactory(rest), filler(rest));
    }

    ZoneHistory history() {
        double[] band = panel.band();
        double[] rest = panel.fromTheRest();
        Map<ProcessModel, ZoneHistory.Verdict> jury = new EnumMap<>(ProcessModel.class);
        panel.jury().forEach((model, said) -> jury.put(model, new ZoneHistory.Verdict(said[0], said[1])));
        return new ZoneHistory(
                zone.zone(),
                zone.readable(),
                chances(all),
                all[LifeStory.REPLACED.ordinal()],
                band[0],
                band[1],
                held(logOdds(notFactory(all)) - logOdds(notFactory(rest))),
                held(logOdds(filler(all)) - logOdds(filler(rest))),
                reasons(),
                stories(),
                jury,
                hiddenPatch());
    }

    private static Chances chances(double[] stories) {
        return new Chances(
                stories[LifeStory.FACTORY.ordinal()],
                stories[LifeStory.OVER.ordinal()]
                        + stories[LifeStory.LEVELLED.ordinal()]
                        + stories[LifeStory.PARTLY.ordinal()],
                stories[LifeStory.STRIPPED.ordinal()] + stories[LifeStory.REPLACED.ordinal()],
                filler(stories));
    }

    private List<ZoneHistory.Story> stories() {
        List<ZoneHistory.Story> stories = new ArrayList<>();
        for (LifeStory story : LifeStory.values()) {
            stories.add(new ZoneHistory.Story(story, all[story.ordinal()]));
        }
        stories.sort(Comparator.comparingDouble(ZoneHistory.Story::chance).reversed());
        return stories;
    }

    private List<FinishReason> reasons() {
        ZoneEvidence used = zone.usable();
        List<FinishReason> reasons = new ArrayList<>();
        if (used.hasValues()) {
            reasons.add(reason(FinishReason.Source.VALUES, Optional.empty(), true, panel.withoutValues()));
        }
        if (used.noMetal() > 0) {
            reasons.add(reason(FinishReason.Source.NO_METAL, Optional.empty(), true, panel.withoutNoMetal()));
        }
        panel.withoutEachSign()
                .forEach((sign, without) -> reasons.add(reason(
                        FinishReason.Source.SIGN,
                        Optional.of(sign),
                        used.signs().get(sign),
                        without)));
        if (used.rust().isPresent()) {
            reasons.add(reason(FinishReason.Source.RUST, Optional.empty(), true, panel.withoutRust()));
        }
        reasons.add(new FinishReason(
                FinishReason.Source.REST_OF_CAR,
                Optional.empty(),
                true,
                held(logOdds(notFactory(panel.fromTheRest())) - logOdds(notFactory(panel.fromNothing()))),
                held(logOdds(filler(panel.fromTheRest())) - logOdds(filler(panel.fromNothing())))));
        reasons.sort(Comparator.comparingDouble(ZoneReport::weight).reversed());
        return reasons;
    }

    private FinishReason reason(FinishReason.Source source, Optional<SignKind> sign, boolean seen, double[] without) {
        return new FinishReason(
                source,
                sign,
                seen,
                held(logOdds(notFactory(all)) - logOdds(notFactory(without))),
                held(logOdds(filler(all)) - logOdds(filler(without))));
    }

    private static double weight(FinishReason reason) {
        return Math.max(Math.abs(reason.log10Refinish()), Math.abs(reason.log10Repair()));
    }

    private Optional<ZoneHistory.HiddenPatch> hiddenPatch() {
        return Optional.ofNullable(evidence.sizes().areas().get(zone.zone())).map(area -> {
            ZoneEvidence used = zone.usable();
            Optional<PanelOutline> outline =
                    Optional.ofNullable(evidence.sizes().outlines().get(zone.zone()));
            double missed = PatchPlaces.missed(area, outline, used.spots(), used.places());
            return new ZoneHistory.HiddenPatch(
                    panel.unseenPatch(missed),
                    missed,
                    used.spots(),
                    outline.map(shown -> PatchPlaces.placed(shown, used.places()))
                            .orElse(0));
        });
    }

    private static double notFactory(double[] stories) {
        return 1 - stories[LifeStory.FACTORY.ordinal()];
    }

    private static double filler(double[] stories) {
        return stories[LifeStory.PATCH.ordinal()] + stories[LifeStory.SKIM.ordinal()];
    }

    private static double logOdds(double p) {
        double inside = Math.max(MIN_CHANCE, Math.min(1 - MIN_CHANCE, p));
        return Math.log10(inside / (1 - inside));
    }

    private static double held(double log10) {
        return Math.max(-MAX_LOG, Math.min(MAX_LOG, log10));
    }
}
