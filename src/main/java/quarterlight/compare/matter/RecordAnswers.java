package quarterlight.compare.matter;

import static quarterlight.language.Sentences.say;

import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import quarterlight.car.ZoneId;
import quarterlight.findings.ClaimedAndFound;
import quarterlight.marks.Contradiction;
import quarterlight.marks.judge.FeatureVerdict;
import quarterlight.marks.judge.JudgedFeature;
import quarterlight.marks.judge.JudgedMark;
import quarterlight.thickness.gauge.GaugeQuality;
import quarterlight.units.Numerals;
import quarterlight.visit.pin.Recorded;
import quarterlight.visit.statement.Judgment;
import quarterlight.visit.trial.Trial;

/** What a car shows of a number, a function tried, the gauge, a claim or the odometer, where nothing that matters was found. */
final class RecordAnswers {
    private final CarEvidence car;

    RecordAnswers(CarEvidence car) {
        this.car = car;
    }

    /** @param zones the subject's zones on this car */
    MatterCell number(Optional<String> part, Collection<ZoneId> zones) {
        List<Contradiction> against = car.findings().marks().contradictions().stream()
                .filter(one -> same(part, one.what()))
                .toList();
        if (!against.isEmpty()) {
            return MatterCell.of(
                    CellClass.FOUND,
                    against.stream().map(Contradiction::sentence).collect(Collectors.joining(" ")));
        }
        List<JudgedMark> named = car.findings().marks().marks().stream()
                .filter(mark -> same(part, mark.mark().part()))
                .toList();
        Optional<JudgedFeature> feature = car.findings().marks().features().stream()
                .filter(one -> same(part, one.feature().feature()))
                .findFirst();
        if (feature.isPresent()) {
            return MatterCell.of(
                    feature.get().verdict() == FeatureVerdict.CANNOT_TELL ? CellClass.NOT_LOOKED_AT : CellClass.CLEAN,
                    feature.get().why());
        }
        return named.isEmpty() ? others(zones) : read(named);
    }

    /** Another number or date of the same place is no look at this one, unless it contradicts. */
    private MatterCell others(Collection<ZoneId> zones) {
        String against = car.findings().marks().contradictions().stream()
                .filter(one -> one.zone().filter(zones::contains).isPresent())
                .map(Contradiction::sentence)
                .collect(Collectors.joining(" "));
        long there = car.findings().marks().marks().stream()
                .filter(mark -> mark.mark().zone().filter(zones::contains).isPresent())
                .count();
        if (!against.isEmpty()) {
            return MatterCell.of(CellClass.FOUND, against);
        }
        return MatterCell.of(
                CellClass.NOT_LOOKED_AT,
                there == 0
                        ? say("compare.record-answers.no-number-or-date-was")
                        : say("compare.record-answers.this-one-was-not-read", there));
    }

    private static MatterCell read(List<JudgedMark> named) {
        boolean judged = named.stream().anyMatch(JudgedMark::isJudged);
        String text = named.stream()
                .map(mark -> mark.mark().part() + " " + mark.text() + ": " + mark.why())
                .collect(Collectors.joining(" "));
        return MatterCell.of(
                judged ? CellClass.CLEAN : CellClass.NOT_LOOKED_AT,
                judged ? text : say("compare.record-answers.read-and-not-to-be", text),
                named.stream().flatMap(mark -> mark.mark().photo().stream()).findFirst());
    }

    MatterCell trial(Optional<String> item) {
        Optional<Trial> last = car.findings().visit().trials().stream()
                .map(Recorded::value)
                .filter(trial -> same(item, trial.item()))
                .reduce((first, second) -> second);
        if (last.isEmpty()) {
            return MatterCell.of(CellClass.NOT_LOOKED_AT, say("compare.record-answers.not-tried"));
        }
        Trial trial = last.get();
        String note = trial.note().map(words -> ": " + words).orElse(".");
        return switch (trial.result()) {
            case WORKS -> MatterCell.of(CellClass.CLEAN, say("compare.record-answers.works", value(trial), note));
            case NONE -> MatterCell.of(CellClass.CLEAN, say("compare.record-answers.none-seen", value(trial), note));
            case MEASURED -> MatterCell.of(CellClass.CLEAN, say("compare.record-answers.measured", value(trial), note));
            case NOT_TRIED -> MatterCell.of(CellClass.NOT_LOOKED_AT, say("compare.record-answers.not-tried-2", note));
            case NOT_FITTED -> MatterCell.of(CellClass.NOT_ON_THIS_CAR, say("compare.record-answers.not-fitted", note));
            default -> MatterCell.of(CellClass.FOUND, capital(trial.result().said()) + value(trial) + note);
        };
    }

    private static String value(Trial trial) {
        return trial.value()
                .map(value -> ", " + Numerals.trueMinus(Numerals.typed(value))
                        + trial.unit().map(unit -> "\u202f" + unit).orElse(""))
                .orElse("");
    }

    MatterCell gauge() {
        GaugeQuality quality = GaugeQuality.of(car.findings().visit());
        String checks =
                say("compare.record-answers.gauge-checks", quality.verdicts().size());
        boolean measured = !car.findings().visit().readings().isEmpty();
        return switch (quality.summary()) {
            case PASSED ->
                MatterCell.of(CellClass.CLEAN, say("compare.record-answers.within-the-tolerances-stated", checks));
            case FAILED ->
                MatterCell.of(CellClass.FOUND, say("compare.record-answers.and-one-at-least-failed", checks));
            case CANNOT_TELL ->
                MatterCell.of(
                        CellClass.NOT_LOOKED_AT, say("compare.record-answers.without-a-tolerance-they-cannot", checks));
            case NOT_CHECKED ->
                MatterCell.of(
                        CellClass.NOT_LOOKED_AT,
                        measured
                                ? say("compare.record-answers.the-gauge-was-not-checked")
                                : say("compare.record-answers.nothing-was-measured-on-this"));
        };
    }

    MatterCell claim(Optional<String> about) {
        List<ClaimedAndFound> same = ClaimedAndFound.of(car.findings()).stream()
                .filter(one ->
                        same(about, one.claim().about().orElse(one.claim().text())))
                .toList();
        if (same.isEmpty()) {
            return MatterCell.of(CellClass.NOT_ON_THIS_CAR, say("compare.record-answers.no-such-claim-was-made"));
        }
        String text = same.stream()
                .map(one -> say(
                        "compare.record-answers.claimed",
                        one.claim().text(),
                        one.judgment().said()))
                .collect(Collectors.joining(" "));
        boolean against = same.stream().anyMatch(one -> one.judgment() == Judgment.CONTRADICTED);
        boolean open = same.stream().anyMatch(one -> one.judgment() == Judgment.OPEN);
        return MatterCell.of(against ? CellClass.FOUND : open ? CellClass.NOT_LOOKED_AT : CellClass.CLEAN, text);
    }

    MatterCell odometer() {
        int figures = car.findings().visit().odometer().size();
        return figures == 0
                ? MatterCell.of(CellClass.NOT_LOOKED_AT, say("compare.record-answers.no-figure-of-the-odometer"))
                : figures == 1
                        ? MatterCell.of(
                                CellClass.NOT_LOOKED_AT, say("compare.record-answers.one-figure-of-the-odometer"))
                        : MatterCell.of(
                                CellClass.CLEAN, say("compare.record-answers.figures-of-the-odometer-each", figures));
    }

    private static boolean same(Optional<String> wanted, String name) {
        return wanted.map(Subject::plain).filter(Subject.plain(name)::equals).isPresent();
    }

    private static String capital(String word) {
        return Character.toUpperCase(word.charAt(0)) + word.substring(1);
    }
}
