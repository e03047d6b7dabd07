package quarterlight.rust;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import quarterlight.car.Zone;
import quarterlight.car.body.Construction;
import quarterlight.rust.need.NeedByEye;
import quarterlight.rust.need.RepairAdvice;
import quarterlight.visit.VisitRecord;
import quarterlight.visit.annotation.TraceKind;
import quarterlight.visit.statement.Condition;
import quarterlight.visit.statement.SaidSize;
import quarterlight.visit.statement.Statement;

/**
 * Rust that a statement tells of, without an outline: what the zone needs by the same rule, but by eye. It is never an area, a share or a
 * grade.
 *
 * @param advice what the zone needs for this one thing seen
 */
public record RustByEye(Statement statement, RepairAdvice advice) {
    private static final Map<Condition, TraceKind> KINDS = Map.of(
            Condition.SURFACE_RUST, TraceKind.SURFACE,
            Condition.SCALE, TraceKind.SCALE,
            Condition.PITTED, TraceKind.PITTING,
            Condition.RUSTED_THROUGH, TraceKind.HOLE);

    public RustByEye {
        Objects.requireNonNull(statement, "statement");
        Objects.requireNonNull(advice, "advice");
    }

    /** What the statements of a visit tell of the rust of a zone, in their order; none of those that were taken back. */
    static List<RustByEye> of(Zone zone, VisitRecord visit) {
        Construction construction = visit.facts().car().body().construction();
        return visit.standing().stream()
                .filter(statement -> statement.zone().equals(zone.id()))
                .flatMap(statement -> kind(statement)
                        .map(kind ->
                                new RustByEye(statement, NeedByEye.of(zone, construction, kind, sizeMm2(statement))))
                        .stream())
                .toList();
    }

    private static Optional<TraceKind> kind(Statement statement) {
        return statement.what().condition().flatMap(condition -> Optional.ofNullable(KINDS.get(condition)));
    }

    /** A size said as a length is taken as the diameter of a round patch. */
    private static OptionalDouble sizeMm2(Statement statement) {
        OptionalDouble mm = statement.details().size().map(SaidSize::mm).orElseGet(OptionalDouble::empty);
        return mm.isPresent() && mm.getAsDouble() > 0
                ? OptionalDouble.of(Math.PI / 4 * mm.getAsDouble() * mm.getAsDouble())
                : OptionalDouble.empty();
    }
}
