package quarterlight.rust;

import static quarterlight.language.Sentences.say;

import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.stream.Stream;
import quarterlight.car.Zone;
import quarterlight.rust.need.RepairAdvice;
import quarterlight.rust.need.RepairNeed;
import quarterlight.units.Area;

/**
 * The rust of one zone. A zone never looked at has no area of rust, no share and no grade: it is not a clean zone.
 *
 * @param lookedAt true if the zone has a rust trace, the statement {@code no rust}, or a statement that tells of rust
 * @param rust united area of its rust; 0 if looked at and clean
 * @param rustSdMm2 standard deviation of it, from the marking and from a tilt that the scale cannot see, mm2
 * @param zoneArea nominal area of the zone, if known
 * @param percent rusted share, 0 to 100; empty if rust is there and the zone's area is not known
 * @param gradeD610 grade of ASTM D610
 * @param spread suggested type of ASTM D610; none for grades 10 and 0
 * @param ri degree of ISO 4628-3 by {@link RiDegree#rule}
 * @param holes number of holes, if looked at
 * @param largestHole the largest of them
 * @param advice what the zone needs by its traces, with reasons and cautions
 * @param byEye what statements tell of its rust without an outline
 * @param remarks what to beware of, in sentences
 */
public record ZoneRust(
        Zone zone,
        boolean lookedAt,
        Optional<Area> rust,
        OptionalDouble rustSdMm2,
        Optional<Area> zoneArea,
        OptionalDouble percent,
        OptionalInt gradeD610,
        Optional<RustSpread> spread,
        OptionalInt ri,
        OptionalInt holes,
        Optional<Area> largestHole,
        RepairAdvice advice,
        List<RustByEye> byEye,
        List<String> remarks) {
    /** Grades of the extents: light is grade 6 or better, moderate 5 and 4. */
    private static final int LIGHT_GRADE = 6;

    private static final int MODERATE_GRADE = 4;

    public ZoneRust {
        Objects.requireNonNull(zone, "zone");
        Objects.requireNonNull(advice, "advice");
        byEye = List.copyOf(byEye);
        remarks = List.copyOf(remarks);
    }

    /** The gravest need by eye, if statements tell of rust; never to be shown as a measured one. */
    public Optional<RepairNeed> needByEye() {
        return byEye.stream().flatMap(seen -> seen.advice().need().stream()).max(Comparator.naturalOrder());
    }

    /** The need, if one can be told. */
    public Optional<RepairNeed> need() {
        return advice.need();
    }

    /** Why the zone needs what it needs, the gravest first; what was only seen says so, and stands alone where nothing was outlined. */
    public List<String> reasons() {
        Stream<String> measured = byEye.isEmpty() || need().isPresent() ? advice.reasons().stream() : Stream.of();
        Stream<String> seen = byEye.stream()
                .sorted(Comparator.comparing(
                                (RustByEye one) -> one.advice().need().orElse(RepairNeed.NONE))
                        .reversed())
                .flatMap(one -> one.advice().reasons().stream())
                .map(reason -> say("rust.reason.by-eye", reason));
        return Stream.concat(measured, seen).distinct().toList();
    }

    /** What to take care of, measured or seen. */
    public List<String> cautions() {
        return Stream.concat(Stream.of(advice), byEye.stream().map(RustByEye::advice))
                .flatMap(one -> one.cautions().stream())
                .distinct()
                .toList();
    }

    /** The grade as the standard writes it, {@code 6-G}; the type is a suggestion. */
    public Optional<String> gradeInWords() {
        if (gradeD610.isEmpty()) {
            return Optional.empty();
        }
        String grade = Integer.toString(gradeD610.getAsInt());
        return Optional.of(spread.map(type -> grade + "-" + type.letter()).orElse(grade));
    }

    /** The extent for the finish history; empty if not looked at, or if there is rust and its share is not known. */
    public Optional<RustExtent> extent() {
        if (!lookedAt) {
            return Optional.empty();
        }
        if (holes.orElse(0) > 0) {
            return Optional.of(RustExtent.HEAVY);
        }
        if (rust.isPresent() && rust.get().mm2() == 0) {
            return Optional.of(RustExtent.NONE);
        }
        if (gradeD610.isEmpty()) {
            return Optional.empty();
        }
        int grade = gradeD610.getAsInt();
        if (grade >= LIGHT_GRADE) {
            return Optional.of(RustExtent.LIGHT);
        }
        return Optional.of(grade >= MODERATE_GRADE ? RustExtent.MODERATE : RustExtent.HEAVY);
    }
}
