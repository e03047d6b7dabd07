package quarterlight.rust;

import static quarterlight.language.Sentences.say;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Stream;
import quarterlight.car.Substrate;
import quarterlight.car.Zone;
import quarterlight.rust.need.Loss;
import quarterlight.rust.need.RepairAdvice;
import quarterlight.rust.need.RepairEvidence;
import quarterlight.rust.need.RepairEvidence.Damage;
import quarterlight.rust.need.RepairRule;
import quarterlight.units.Area;
import quarterlight.visit.VisitRecord;
import quarterlight.visit.annotation.Trace;
import quarterlight.visit.annotation.TraceKind;
import quarterlight.visit.pin.Recorded;
import quarterlight.visit.statement.Condition;
import quarterlight.visit.statement.Severity;
import quarterlight.visit.statement.Statement;

/** Puts together what is known of the rust of one zone. */
final class ZoneJudgment {
    private static final double ALL = 100;

    private final Zone zone;
    private final VisitRecord visit;
    private final List<MeasuredTrace> measured;
    private final Optional<Area> zoneArea;

    private ZoneJudgment(Zone zone, VisitRecord visit, List<MeasuredTrace> measured, Optional<Area> zoneArea) {
        this.zone = zone;
        this.visit = visit;
        this.measured = measured.stream()
                .filter(trace -> trace.trace().zone().equals(zone.id()))
                .toList();
        this.zoneArea = zoneArea.filter(area -> area.mm2() > 0);
    }

    /** @param measured the measurable traces of the whole car */
    static ZoneRust of(Zone zone, VisitRecord visit, List<MeasuredTrace> measured, Optional<Area> zoneArea) {
        return new ZoneJudgment(zone, visit, measured, zoneArea).judge();
    }

    private ZoneRust judge() {
        boolean traced = kinds().stream().anyMatch(RustReport::isRust);
        List<RustByEye> byEye = RustByEye.of(zone, visit);
        boolean clean =
                byEye.isEmpty() && statements(Condition.NO_RUST).findAny().isPresent();
        boolean lookedAt = traced || clean;
        RustPatches rust = together(
                EnumSet.of(TraceKind.SURFACE, TraceKind.SCALE, TraceKind.PITTING, TraceKind.HOLE, TraceKind.ROT));
        RustPatches holes = together(EnumSet.of(TraceKind.HOLE));
        OptionalDouble largest =
                holes.patchesMm2().stream().mapToDouble(Double::doubleValue).max();
        int unmeasured = unmeasured(RustReport::isRust);
        boolean known = lookedAt && !(unmeasured > 0 && rust.patchesMm2().isEmpty());
        OptionalDouble percent = known ? percent(rust.mm2(), traced) : OptionalDouble.empty();
        int holeCount = holes.patchesMm2().size() + unmeasured(kind -> kind == TraceKind.HOLE);
        OptionalInt grade =
                percent.isPresent() ? OptionalInt.of(D610Grade.of(percent.getAsDouble())) : OptionalInt.empty();
        RepairAdvice advice = RepairRule.judge(new RepairEvidence(
                zone,
                visit.facts().car().body().construction(),
                lookedAt,
                traced,
                percent,
                grade,
                holeCount,
                loss(TraceKind.HOLE, TraceKind.ROT),
                loss(TraceKind.SCALE),
                loss(TraceKind.PITTING),
                kinds().contains(TraceKind.CRACK),
                zoneArea.isPresent() ? OptionalDouble.of(zoneArea.get().mm2()) : OptionalDouble.empty(),
                damage()));
        return new ZoneRust(
                zone,
                lookedAt || !byEye.isEmpty(),
                known ? Optional.of(new Area(rust.mm2())) : Optional.empty(),
                known ? OptionalDouble.of(rust.sdMm2()) : OptionalDouble.empty(),
                zoneArea,
                percent,
                grade,
                grade.isPresent() && grade.getAsInt() > 0 && grade.getAsInt() < 10
                        ? RustSpread.suggest(rust.patchesMm2())
                        : Optional.empty(),
                percent.isPresent() ? OptionalInt.of(RiDegree.of(percent.getAsDouble())) : OptionalInt.empty(),
                lookedAt ? OptionalInt.of(holeCount) : OptionalInt.empty(),
                largest.isPresent() ? Optional.of(new Area(largest.getAsDouble())) : Optional.empty(),
                advice,
                byEye,
                remarks(rust, traced, percent));
    }

    private RustPatches together(Set<TraceKind> kinds) {
        return RustPatches.of(measured.stream()
                .filter(trace -> kinds.contains(trace.trace().kind()))
                .toList());
    }

    private Loss loss(TraceKind... kinds) {
        Set<TraceKind> wanted = Set.of(kinds);
        RustPatches patches = together(wanted);
        double largest = patches.patchesMm2().stream()
                .mapToDouble(Double::doubleValue)
                .max()
                .orElse(0);
        return new Loss(largest, Math.max(largest, patches.mm2()), unmeasured(wanted::contains) > 0);
    }

    /** How many traces of some kinds lie on the zone and cannot be measured. */
    private int unmeasured(Predicate<TraceKind> kinds) {
        long all = visit.traces().stream()
                .map(Recorded::value)
                .filter(trace -> trace.zone().equals(zone.id()) && kinds.test(trace.kind()))
                .count();
        long known = measured.stream()
                .filter(trace -> kinds.test(trace.trace().kind()))
                .count();
        return (int) (all - known);
    }

    /** Kinds of all traces on the zone, also of those that cannot be measured: a hole is a hole. */
    private Set<TraceKind> kinds() {
        Set<TraceKind> kinds = EnumSet.noneOf(TraceKind.class);
        for (Recorded<Trace> row : visit.traces()) {
            if (row.value().zone().equals(zone.id())) {
                kinds.add(row.value().kind());
            }
        }
        return kinds;
    }

    private Stream<Statement> statements(Condition condition) {
        return visit.standing().stream().filter(s -> s.is(condition) && s.zone().equals(zone.id()));
    }

    private OptionalDouble percent(double mm2, boolean traced) {
        if (!traced) {
            return OptionalDouble.of(0);
        }
        return zoneArea.isPresent()
                ? OptionalDouble.of(Math.min(ALL, ALL * mm2 / zoneArea.get().mm2()))
                : OptionalDouble.empty();
    }

    private Damage damage() {
        Damage gravest = kinds().contains(TraceKind.DAMAGE) ? Damage.SLIGHT : Damage.NONE;
        for (Statement statement : statements(Condition.DAMAGED).toList()) {
            Damage damage = weight(statement.severity().orElse(Severity.MINOR));
            gravest = damage.compareTo(gravest) > 0 ? damage : gravest;
        }
        return gravest;
    }

    private static Damage weight(Severity severity) {
        return switch (severity) {
            case NOTE, MINOR -> Damage.SLIGHT;
            case MAJOR -> Damage.MAJOR;
            case GRAVE -> Damage.GRAVE;
        };
    }

    private List<String> remarks(RustPatches rust, boolean traced, OptionalDouble percent) {
        List<String> remarks = new ArrayList<>();
        if (traced && statements(Condition.NO_RUST).findAny().isPresent()) {
            remarks.add(say("rust.zone.stated-clean"));
        }
        if (traced && zoneArea.isEmpty()) {
            remarks.add(say("rust.zone.no-area"));
        }
        int unmeasured = unmeasured(RustReport::isRust);
        if (unmeasured > 0) {
            remarks.add(say("rust.zone.unmeasured", unmeasured));
        }
        zoneArea.filter(area -> rust.mm2() > area.mm2()).ifPresent(area -> remarks.add(say("rust.zone.more-than-all")));
        Substrate substrate = visit.facts().car().substrateOf(zone.id());
        if (traced && substrate != Substrate.STEEL) {
            remarks.add(say("rust.zone.does-not-rust", substrate.said()));
        }
        if (traced && percent.isPresent() && zoneArea.isPresent()) {
            openGrade(rust, zoneArea.get()).ifPresent(remarks::add);
        }
        return remarks;
    }

    private static Optional<String> openGrade(RustPatches rust, Area area) {
        double low = Math.max(0, rust.mm2() - 2 * rust.sdMm2());
        double high = rust.mm2() + 2 * rust.sdMm2();
        int worst = D610Grade.of(Math.min(ALL, ALL * high / area.mm2()));
        int best = D610Grade.of(Math.min(ALL, ALL * low / area.mm2()));
        return worst == best ? Optional.empty() : Optional.of(say("rust.zone.open-grade", worst, best));
    }
}
