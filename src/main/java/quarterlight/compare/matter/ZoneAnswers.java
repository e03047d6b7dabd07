package quarterlight.compare.matter;

import static quarterlight.language.Sentences.say;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;
import quarterlight.car.ZoneId;
import quarterlight.findings.StatementConflict;
import quarterlight.finish.ZoneEvidence;
import quarterlight.finish.history.ZoneHistory;
import quarterlight.rust.RustByEye;
import quarterlight.rust.ZoneRust;
import quarterlight.rust.need.RepairNeed;
import quarterlight.thickness.ZoneThickness;
import quarterlight.thickness.gauge.GaugeQuality;
import quarterlight.units.ThicknessText;
import quarterlight.visit.annotation.Trace;
import quarterlight.visit.photo.PhotoId;
import quarterlight.visit.statement.Condition;
import quarterlight.visit.statement.Origin;
import quarterlight.visit.statement.Statement;

/** What a car shows in one zone, in one respect, where nothing that matters was found there. */
public final class ZoneAnswers {
    /** At or above this a panel counts as likely refinished, as in what matters; at or below the other it counts as its first finish. */
    private static final int LIKELY = 60;

    private static final int UNLIKELY = 20;
    private static final Set<Condition> WELL = EnumSet.of(Condition.SOUND, Condition.PRESENT);
    private static final Set<Condition> NOTHING_SAID =
            EnumSet.of(Condition.SOUND, Condition.PRESENT, Condition.NO_RUST, Condition.NOT_LOOKED_AT);

    private final CarEvidence car;
    private final ThicknessText unit;

    public ZoneAnswers(CarEvidence car, ThicknessText unit) {
        this.car = car;
        this.unit = unit;
    }

    public MatterCell of(Topic topic, ZoneId zone, Optional<String> part) {
        Optional<String> missing = car.missing(zone);
        if (missing.isPresent() && topic != Topic.CONDITION) {
            return MatterCell.of(CellClass.NOT_ON_THIS_CAR, say("compare.zone-answers.missing", missing.get()));
        }
        return switch (topic) {
            case RUST -> rust(zone);
            case FINISH -> finish(zone);
            case ORIGIN -> origin(zone, part);
            case CONFLICT -> conflict(zone);
            default -> condition(zone, part);
        };
    }

    private MatterCell rust(ZoneId zone) {
        Optional<ZoneRust> looked = car.findings().rust().zone(zone).filter(ZoneRust::lookedAt);
        if (looked.isEmpty()) {
            return notLookedAt(zone, say("compare.zone-answers.nobody-looked-for-rust-there"));
        }
        ZoneRust rust = looked.get();
        boolean none = rust.byEye().isEmpty()
                && rust.rust().map(area -> area.mm2() == 0).orElse(true);
        if (none) {
            return MatterCell.of(
                    CellClass.CLEAN,
                    say("compare.zone-answers.looked-at-for-rust-none"),
                    said(zone, Condition.NO_RUST));
        }
        List<String> parts = new ArrayList<>();
        rust.need()
                .filter(need -> need != RepairNeed.NONE)
                .ifPresent(need -> parts.add(say("compare.zone-answers.repair-need", need.said())));
        rust.holes().stream().filter(n -> n > 0).forEach(n -> parts.add(say("compare.zone-answers.holes", n)));
        rust.gradeInWords().ifPresent(grade -> parts.add(say("compare.zone-answers.grade-by-astm-d610", grade)));
        String measured = parts.isEmpty() ? "" : say("compare.zone-answers.rust", String.join(", ", parts));
        String seen = rust.byEye().stream()
                .map(RustByEye::statement)
                .map(Statement::text)
                .collect(Collectors.joining(" "));
        String text = (measured + " " + seen).strip();
        return MatterCell.of(
                CellClass.FOUND,
                text.isEmpty() ? say("compare.zone-answers.rust-is-outlined-there") : text,
                traced(zone));
    }

    private Optional<PhotoId> traced(ZoneId zone) {
        return car.findings().visit().traces().stream()
                .map(row -> row.value())
                .filter(trace -> trace.zone().equals(zone))
                .map(Trace::photo)
                .findFirst()
                .or(() -> car.statements(zone)
                        .flatMap(one -> one.photo().stream())
                        .findFirst());
    }

    private Optional<PhotoId> said(ZoneId zone, Condition condition) {
        return car.statements(zone)
                .filter(one -> one.is(condition))
                .flatMap(one -> one.photo().stream())
                .findFirst()
                .or(() -> pinned(zone));
    }

    private Optional<PhotoId> pinned(ZoneId zone) {
        return car.photos(zone).stream().findFirst();
    }

    private MatterCell finish(ZoneId zone) {
        boolean panel =
                car.findings().catalog().find(zone).filter(one -> one.finish()).isPresent();
        Optional<Statement> stated = car.statements(zone)
                .filter(one -> one.is(Condition.REFINISHED) || one.is(Condition.FILLER))
                .findFirst();
        if (stated.isPresent()) {
            return MatterCell.of(
                    CellClass.FOUND, stated.get().text(), stated.get().photo());
        }
        if (!panel) {
            return condition(zone, Optional.empty());
        }
        Optional<ZoneHistory> history = car.findings().history().zone(zone);
        boolean own = car.findings()
                .evidence()
                .zone(zone)
                .filter(ZoneEvidence::isJudged)
                .isPresent();
        if (history.isEmpty() || !own) {
            return notLookedAt(zone, say("compare.zone-answers.not-measured"));
        }
        return judged(zone, history.get());
    }

    private MatterCell judged(ZoneId zone, ZoneHistory history) {
        String measured = mean(zone).map(mean -> mean + "; ").orElse("");
        String text = say(
                "compare.zone-answers.refinish-likelihood-repair",
                measured,
                ZoneHistory.shown(history.refinishScore()),
                ZoneHistory.shown(history.repairScore()));
        boolean likely = history.refinishScore() >= LIKELY || history.repairScore() >= LIKELY;
        boolean unlikely = history.refinishScore() <= UNLIKELY && history.repairScore() <= UNLIKELY;
        if (mean(zone).isPresent()
                && GaugeQuality.of(car.findings().visit()).summary() == GaugeQuality.Summary.FAILED) {
            return MatterCell.of(
                    likely ? CellClass.FOUND : CellClass.NOT_LOOKED_AT,
                    say("compare.zone-answers.measured-with-a-gauge-whose", text),
                    pinned(zone));
        }
        if (unlikely) {
            return MatterCell.of(CellClass.CLEAN, say("compare.zone-answers.as-first-finished", text), pinned(zone));
        }
        return MatterCell.of(
                CellClass.FOUND,
                (likely ? say("compare.zone-answers.likely-refinished") : say("compare.zone-answers.left-open")) + text,
                pinned(zone));
    }

    private Optional<String> mean(ZoneId zone) {
        OptionalDouble mean = car.findings()
                .thickness()
                .zone(zone)
                .filter(ZoneThickness::readable)
                .map(ZoneThickness::meanUm)
                .orElse(OptionalDouble.empty());
        return mean.isPresent() ? Optional.of(unit.of(mean.getAsDouble())) : Optional.empty();
    }

    private MatterCell condition(ZoneId zone, Optional<String> part) {
        List<Statement> here = about(zone, part);
        Optional<Statement> bad = here.stream()
                .filter(one -> one.what()
                        .condition()
                        .filter(c -> !NOTHING_SAID.contains(c))
                        .isPresent())
                .findFirst();
        if (bad.isPresent()) {
            return MatterCell.of(CellClass.FOUND, bad.get().text(), bad.get().photo());
        }
        Optional<Statement> well = here.stream()
                .filter(one -> one.what().condition().filter(WELL::contains).isPresent())
                .findFirst();
        return well.map(one ->
                        MatterCell.of(CellClass.CLEAN, one.text(), one.photo().or(() -> pinned(zone))))
                .orElseGet(() -> nothingRecorded(zone, say("compare.zone-answers.nothing-is-recorded-of-its")));
    }

    private MatterCell origin(ZoneId zone, Optional<String> part) {
        List<Statement> here = about(zone, part);
        Optional<Statement> other = here.stream()
                .filter(one -> one.is(Origin.REPLACED) || one.is(Origin.DOES_NOT_BELONG))
                .findFirst();
        if (other.isPresent()) {
            return MatterCell.of(
                    CellClass.FOUND, other.get().text(), other.get().photo());
        }
        return here.stream()
                .filter(one -> one.is(Origin.ORIGINAL))
                .findFirst()
                .map(one ->
                        MatterCell.of(CellClass.CLEAN, one.text(), one.photo().or(() -> pinned(zone))))
                .orElseGet(() -> nothingRecorded(zone, say("compare.zone-answers.nothing-is-recorded-of-its-2")));
    }

    /** What is said of the same part, or of the zone as a whole. */
    private List<Statement> about(ZoneId zone, Optional<String> part) {
        Optional<String> wanted = part.map(Subject::plain);
        return car.statements(zone)
                .filter(one -> wanted.isEmpty()
                        || one.details().part().isEmpty()
                        || one.details().part().map(Subject::plain).equals(wanted))
                .toList();
    }

    private MatterCell conflict(ZoneId zone) {
        List<StatementConflict> conflicts =
                StatementConflict.of(car.findings().visit().standing(), zone);
        if (!conflicts.isEmpty()) {
            return MatterCell.of(CellClass.FOUND, conflicts.get(0).sentence());
        }
        return car.statements(zone).findAny().isPresent()
                ? MatterCell.of(CellClass.CLEAN, say("compare.zone-answers.what-is-stated-there-goes"), pinned(zone))
                : nothingRecorded(zone, say("compare.zone-answers.nothing-is-stated-there"));
    }

    private MatterCell nothingRecorded(ZoneId zone, String text) {
        int photos = car.photos(zone).size();
        return notLookedAt(zone, photos == 0 ? text : say("compare.zone-answers.photos-show-the-place", text, photos));
    }

    private MatterCell notLookedAt(ZoneId zone, String text) {
        String why = car.excuse(zone).map(excuse -> " " + excuse).orElse("");
        return MatterCell.of(CellClass.NOT_LOOKED_AT, text + why, pinned(zone));
    }
}
