package quarterlight.finish;

import static quarterlight.language.Sentences.say;

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
                remarks.add(
                        say("finish.remarks.of-measured-panels-read-above", thick, medians.length, (int) THICK_MIL));
            }
            if (thin >= MAX_PANELS * medians.length) {
                remarks.add(say("finish.remarks.of-measured-panels-read-below", thin, medians.length, (int) THIN_MIL));
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
