package quarterlight.marks;

import static quarterlight.language.Sentences.say;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import quarterlight.marks.Contradiction.Kind;
import quarterlight.marks.judge.FeatureVerdict;
import quarterlight.marks.judge.JudgedFeature;
import quarterlight.marks.judge.JudgedMark;
import quarterlight.marks.judge.MarkJudgment;
import quarterlight.marks.judge.NumberJudge;
import quarterlight.marks.judge.NumberMatch;
import quarterlight.marks.judge.Verdict;
import quarterlight.visit.mark.Mark;
import quarterlight.visit.mark.MarkKind;
import quarterlight.visit.statement.Origin;

/** Collects what does not go together. Tires are renewed in service, and a part that is noted as replaced says so
 * itself: that they are too young is no contradiction. */
final class Contradictions {
    private final List<JudgedMark> marks;
    private final DateOrder order;
    private final List<JudgedFeature> features;
    private final NumberJudge numbers;
    private final List<Contradiction> found = new ArrayList<>();

    Contradictions(List<JudgedMark> marks, DateOrder order, List<JudgedFeature> features, NumberJudge numbers) {
        this.marks = marks;
        this.order = order;
        this.features = features;
        this.numbers = numbers;
    }

    List<Contradiction> all() {
        dates();
        found.addAll(order.contradictions());
        numbers();
        features();
        return List.copyOf(found);
    }

    private void dates() {
        Set<String> said = new HashSet<>();
        for (JudgedMark mark : marks) {
            boolean off = mark.verdict() == Verdict.TOO_LATE || mark.verdict() == Verdict.UNUSUALLY_EARLY;
            boolean expected = mark.mark().kind() == MarkKind.TIRE
                    || mark.mark().origin().filter(Origin.REPLACED::equals).isPresent();
            if (off && !expected && said.add(key(mark))) {
                add(
                        Kind.DATE,
                        mark,
                        mark.mark().part() + ", " + mark.text() + ": "
                                + mark.verdict().said() + ". " + mark.why());
            }
        }
    }

    private void numbers() {
        Set<String> said = new HashSet<>();
        for (JudgedMark mark : marks) {
            Mark read = mark.mark();
            boolean breaksRule = mark.verdict() == Verdict.MALFORMED && read.kind() == MarkKind.VIN;
            boolean otherYear = mark.verdict() != Verdict.TOO_LATE
                    && mark.verdict() != Verdict.UNUSUALLY_EARLY
                    && numbers.otherYear(new MarkJudgment(mark.verdict(), "", mark.candidates(), List.of()))
                            .isPresent();
            boolean differs = mark.matches().stream().anyMatch(match -> match.state() == NumberMatch.State.DIFFERS);
            if ((breaksRule || otherYear || differs) && said.add(key(mark))) {
                add(Kind.NUMBER, mark, read.part() + ", " + mark.text() + ": " + mark.why());
            }
        }
    }

    private static String key(JudgedMark mark) {
        return mark.mark().part() + "\n" + mark.mark().kind() + "\n" + mark.text();
    }

    private void add(Kind kind, JudgedMark mark, String sentence) {
        found.add(new Contradiction(kind, mark.mark().part(), mark.mark().zone(), List.of(mark.row()), sentence));
    }

    private void features() {
        Set<String> named = new HashSet<>();
        for (JudgedFeature feature : features) {
            if (feature.verdict() == FeatureVerdict.DOES_NOT_BELONG) {
                String would = feature.instead().isEmpty()
                        ? ""
                        : " " + say("marks.feature.instead", String.join(", ", feature.instead()));
                add(feature, say("marks.feature.foreign", feature.feature().feature(), feature.why()) + would);
                named.addAll(feature.instead());
            }
        }
        for (JudgedFeature feature : features) {
            if (feature.verdict() == FeatureVerdict.MISSING
                    && !named.contains(feature.feature().feature())) {
                add(feature, say("marks.feature.missing", feature.feature().feature(), feature.why()));
            }
        }
    }

    private void add(JudgedFeature feature, String sentence) {
        found.add(new Contradiction(
                Kind.FEATURE, feature.feature().feature(), feature.feature().zone(), List.of(), sentence));
    }
}
