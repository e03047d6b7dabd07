package quarterlight.finish;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import quarterlight.units.ThicknessUnit;

/** What is said of readings that no usual history explains. Limits: judgement. */
final class Remarks {
    /** Few cars carry three jobs; those are about this thick. */
    private static final double THICK_MIL = 20;

    private static final double THIN_MIL = 1;
    private static final double MAX_PANELS = .7;
    private static final int MIN_PANELS = 4;

    private Remarks() {}

    static List<String> of(FinishEvidence evidence) {
        double[] medians = evidence.zones().stream()
                .map(ZoneEvidence::usable)
                .filter(ZoneEvidence::hasValues)
                .mapToDouble(zone -> median(zone, evidence.gaugeRange().um()))
                .toArray();
        List<String> remarks = new ArrayList<>();
        if (medians.length >= MIN_PANELS) {
            long thick = Arrays.stream(medians).filter(mil -> mil > THICK_MIL).count();
            long thin = Arrays.stream(medians).filter(mil -> mil < THIN_MIL).count();
            if (thick >= MAX_PANELS * medians.length) {
                remarks.add(thick + " of " + medians.length + " measured panels read above " + (int) THICK_MIL
                        + " mil (508 um). No factory finish is that thick. Before several paint jobs or filler are"
                        + " believed, ask whether the gauge was right, the unit was noted right, and the panels are of"
                        + " the metal that was stated.");
            }
            if (thin >= MAX_PANELS * medians.length) {
                remarks.add(thin + " of " + medians.length + " measured panels read below " + (int) THIN_MIL
                        + " mil (25 um). Hardly a finish is that thin: ask whether the gauge was right and the unit was"
                        + " noted right.");
            }
        }
        return remarks;
    }

    private static double median(ZoneEvidence zone, double rangeUm) {
        double[] um = new double[zone.spotsUm().size() + zone.overRange()];
        Arrays.fill(um, rangeUm);
        for (int n = 0; n < zone.spotsUm().size(); n++) {
            um[n] = zone.spotsUm().get(n);
        }
        Arrays.sort(um);
        return ThicknessUnit.MIL.fromUm((um[(um.length - 1) / 2] + um[um.length / 2]) / 2);
    }
}
