package quarterlight.rust.need;

import java.util.OptionalDouble;
import java.util.OptionalInt;
import quarterlight.car.Zone;
import quarterlight.car.body.Construction;
import quarterlight.visit.annotation.TraceKind;

/**
 * What a zone needs by what was seen or said of it without an outline: the same {@linkplain RepairRule rule} as for
 * traces, with the size that was said, if one was.
 */
public final class NeedByEye {
    private NeedByEye() {}

    /**
     * The need of one zone for one thing seen.
     *
     * @param seen surface rust, scale, pitting, a hole (rusted through), rot, a crack, or damage
     * @param sizeMm2 how large it was said to be, mm2; empty if not said
     * @return never without a need
     */
    public static RepairAdvice of(Zone zone, Construction construction, TraceKind seen, OptionalDouble sizeMm2) {
        if (sizeMm2.isPresent() && !(sizeMm2.getAsDouble() > 0)) {
            throw new IllegalArgumentException("a size is above 0 mm2, not " + sizeMm2.getAsDouble());
        }
        Loss loss = sizeMm2.isPresent()
                ? new Loss(sizeMm2.getAsDouble(), sizeMm2.getAsDouble(), false)
                : new Loss(0, 0, true);
        boolean through = seen == TraceKind.HOLE || seen == TraceKind.ROT;
        boolean rust = seen != TraceKind.CRACK && seen != TraceKind.DAMAGE;
        return RepairRule.judge(new RepairEvidence(
                zone,
                construction,
                true,
                rust,
                OptionalDouble.empty(),
                OptionalInt.empty(),
                seen == TraceKind.HOLE ? 1 : 0,
                through ? loss : Loss.NONE,
                seen == TraceKind.SCALE ? loss : Loss.NONE,
                seen == TraceKind.PITTING ? loss : Loss.NONE,
                seen == TraceKind.CRACK,
                OptionalDouble.empty(),
                seen == TraceKind.DAMAGE ? RepairEvidence.Damage.SLIGHT : RepairEvidence.Damage.NONE));
    }
}
