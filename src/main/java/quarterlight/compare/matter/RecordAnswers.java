package quarterlight.compare.matter;

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
                        ? "No number or date was read there."
                        : "This one was not read; of " + Numerals.count(there, "other mark", "other marks")
                                + " there none contradicts.");
    }

    private static MatterCell read(List<JudgedMark> named) {
        boolean judged = named.stream().anyMatch(JudgedMark::isJudged);
        String text = named.stream()
                .map(mark -> mark.mark().part() + " " + mark.text() + ": " + mark.why())
                .collect(Collectors.joining(" "));
        return MatterCell.of(
                judged ? CellClass.CLEAN : CellClass.NOT_LOOKED_AT,
                judged ? text : "Read, and not to be judged. " + text,
                named.stream().flatMap(mark -> mark.mark().photo().stream()).findFirst());
    }

    MatterCell trial(Optional<String> item) {
        Optional<Trial> last = car.findings().visit().trials().stream()
                .map(Recorded::value)
                .filter(trial -> same(item, trial.item()))
                .reduce((first, second) -> second);
        if (last.isEmpty()) {
            return MatterCell.of(CellClass.NOT_LOOKED_AT, "Not tried.");
        }
        Trial trial = last.get();
        String note = trial.note().map(words -> ": " + words).orElse(".");
        return switch (trial.result()) {
            case WORKS -> MatterCell.of(CellClass.CLEAN, "Works" + value(trial) + note);
            case NONE -> MatterCell.of(CellClass.CLEAN, "None seen" + value(trial) + note);
            case MEASURED -> MatterCell.of(CellClass.CLEAN, "Measured" + value(trial) + note);
            case NOT_TRIED -> MatterCell.of(CellClass.NOT_LOOKED_AT, "Not tried" + note);
            case NOT_FITTED -> MatterCell.of(CellClass.NOT_ON_THIS_CAR, "Not fitted" + note);
            default -> MatterCell.of(CellClass.FOUND, capital(trial.result().word()) + value(trial) + note);
        };
    }

    private static String value(Trial trial) {
        return trial.value()
                .map(value -> ", " + Numerals.trueMinus(value.toPlainString())
                        + trial.unit().map(unit -> "\u202f" + unit).orElse(""))
                .orElse("");
    }

    MatterCell gauge() {
        GaugeQuality quality = GaugeQuality.of(car.findings().visit());
        String checks = Numerals.count(quality.verdicts().size(), "gauge check", "gauge checks");
        boolean measured = !car.findings().visit().readings().isEmpty();
        return switch (quality.summary()) {
            case PASSED -> MatterCell.of(CellClass.CLEAN, checks + ", within the tolerances stated.");
            case FAILED ->
                MatterCell.of(CellClass.FOUND, checks + ", and one at least failed: the readings are suspect.");
            case CANNOT_TELL ->
                MatterCell.of(
                        CellClass.NOT_LOOKED_AT,
                        checks + " without a tolerance: they cannot show that the gauge was right.");
            case NOT_CHECKED ->
                MatterCell.of(
                        CellClass.NOT_LOOKED_AT,
                        measured ? "The gauge was not checked." : "Nothing was measured on this car.");
        };
    }

    MatterCell claim(Optional<String> about) {
        List<ClaimedAndFound> same = ClaimedAndFound.of(car.findings()).stream()
                .filter(one ->
                        same(about, one.claim().about().orElse(one.claim().text())))
                .toList();
        if (same.isEmpty()) {
            return MatterCell.of(CellClass.NOT_ON_THIS_CAR, "No such claim was made.");
        }
        String text = same.stream()
                .map(one -> "Claimed: \u201c" + one.claim().text() + "\u201d; "
                        + one.judgment().word() + ".")
                .collect(Collectors.joining(" "));
        boolean against = same.stream().anyMatch(one -> one.judgment() == Judgment.CONTRADICTED);
        boolean open = same.stream().anyMatch(one -> one.judgment() == Judgment.OPEN);
        return MatterCell.of(against ? CellClass.FOUND : open ? CellClass.NOT_LOOKED_AT : CellClass.CLEAN, text);
    }

    MatterCell odometer() {
        int figures = car.findings().visit().odometer().size();
        return figures == 0
                ? MatterCell.of(CellClass.NOT_LOOKED_AT, "No figure of the odometer is recorded.")
                : figures == 1
                        ? MatterCell.of(
                                CellClass.NOT_LOOKED_AT, "One figure of the odometer: nothing to hold it against.")
                        : MatterCell.of(
                                CellClass.CLEAN, figures + " figures of the odometer, each above the one before.");
    }

    private static boolean same(Optional<String> wanted, String name) {
        return wanted.map(Subject::plain).filter(Subject.plain(name)::equals).isPresent();
    }

    private static String capital(String word) {
        return Character.toUpperCase(word.charAt(0)) + word.substring(1);
    }
}
