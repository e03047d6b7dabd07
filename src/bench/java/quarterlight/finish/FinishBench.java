package quarterlight.finish;

import java.lang.management.ManagementFactory;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import quarterlight.car.FinishProfile;
import quarterlight.car.ZoneId;
import quarterlight.units.Thickness;
import quarterlight.visit.trial.SignKind;

/** Time of one finish history: 300 readings in 24 zones, every sign looked for. Processor time, so that load does not count. */
final class FinishBench {
    private FinishBench() {}

    public static void main(String[] args) {
        Random random = new Random(1);
        List<ZoneEvidence> zones = new ArrayList<>();
        for (int z = 0; z < 24; z++) {
            List<Double> spots = new ArrayList<>();
            for (int n = 0; n < (z % 2 == 0 ? 12 : 13); n++) {
                spots.add(130 * Math.exp(.1 * random.nextGaussian()));
            }
            Map<SignKind, Boolean> signs = new EnumMap<>(SignKind.class);
            for (SignKind sign : SignKind.values()) {
                signs.put(sign, random.nextInt(10) == 0);
            }
            zones.add(new ZoneEvidence(new ZoneId("panel-" + z), true, spots, 0, 0, signs, Optional.empty()));
        }
        FinishEvidence evidence = new FinishEvidence(FinishProfile.LACQUER, new Thickness(2000), zones);
        for (int round = 0; round < 15; round++) {
            long start = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
            JointHistory joint = new FinishEngine(evidence.profile()).joint(evidence);
            long history = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
            joint.next();
            long next = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
            joint.hangsOn();
            long hangsOn = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
            System.out.printf(
                    "round %d: history %d ms, where to measure next %d ms, what it hangs on %d ms%n",
                    round, (history - start) / 1_000_000, (next - history) / 1_000_000, (hangsOn - next) / 1_000_000);
        }
    }
}
