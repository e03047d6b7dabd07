package quarterlight.marks.judge;

import static quarterlight.language.Sentences.say;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import quarterlight.units.Days;
import quarterlight.visit.mark.Feature;

/**
 * One feature against the car's build.
 *
 * @param why the reason in one sentence
 * @param instead for one that does not belong: features of the same zone that would
 */
public record JudgedFeature(Feature feature, FeatureVerdict verdict, String why, List<String> instead) {
    public JudgedFeature {
        Objects.requireNonNull(feature, "feature");
        Objects.requireNonNull(verdict, "verdict");
        Objects.requireNonNull(why, "why");
        instead = List.copyOf(instead);
    }

    /** Every feature of a visit, in its order. */
    public static List<JudgedFeature> of(List<Feature> features, Optional<BuildWindow> window) {
        return features.stream().map(feature -> of(feature, features, window)).toList();
    }

    private static JudgedFeature of(Feature feature, List<Feature> all, Optional<BuildWindow> window) {
        String range = Days.span(feature.from().first(), feature.to().last());
        if (window.isEmpty() || feature.fitted().isEmpty()) {
            String lacks = window.isEmpty() ? say("marks.date.no-build") : say("marks.feature.not-looked-for");
            return new JudgedFeature(feature, FeatureVerdict.CANNOT_TELL, said(range, lacks), List.of());
        }
        String build = say("marks.feature.built", DateText.of(window.get()));
        boolean fitted = feature.fitted().get();
        if (!reaches(feature, window.get())) {
            if (!fitted) {
                return new JudgedFeature(feature, FeatureVerdict.RIGHTLY_ABSENT, said(range, build), List.of());
            }
            List<String> instead = all.stream()
                    .filter(other -> feature.zone().isPresent() && other.zone().equals(feature.zone()))
                    .filter(other -> reaches(other, window.get()))
                    .map(Feature::feature)
                    .toList();
            return new JudgedFeature(feature, FeatureVerdict.DOES_NOT_BELONG, said(range, build), instead);
        }
        if (fitted) {
            return new JudgedFeature(feature, FeatureVerdict.BELONGS, said(range, build), List.of());
        }
        boolean whole = !feature.from().first().isAfter(window.get().first())
                && !feature.to().last().isBefore(window.get().last());
        return new JudgedFeature(
                feature,
                whole ? FeatureVerdict.MISSING : FeatureVerdict.CANNOT_TELL,
                said(range, whole ? build : say("marks.feature.partly", build)),
                List.of());
    }

    private static boolean reaches(Feature feature, BuildWindow window) {
        return !feature.to().last().isBefore(window.first())
                && !feature.from().first().isAfter(window.last());
    }

    private static String said(String range, String rest) {
        return say("marks.feature.range", range, rest);
    }
}
