package quarterlight.finish;

import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.function.ToIntFunction;
import quarterlight.car.ZoneId;
import quarterlight.edit.EditRefused;
import quarterlight.edit.fact.FactEdits;
import quarterlight.findings.Findings;
import quarterlight.table.ZoneTable;
import quarterlight.table.list.DatePatternTable;
import quarterlight.thickness.ThicknessSurvey;
import quarterlight.units.ThicknessUnit;
import quarterlight.visit.VisitFacts;
import quarterlight.visit.VisitParts;
import quarterlight.visit.VisitRecord;
import quarterlight.visit.pin.RecordId;
import quarterlight.visit.pin.Recorded;
import quarterlight.visit.reading.GaugeValue;
import quarterlight.visit.reading.Reading;

/** How long a car with 300 readings over all zones that carry finish takes: statistics and finish history, and everything that follows a reading. */
public final class ReadingsBench {
    private static final int READINGS = 300;
    private static final double LEVEL_UM = 100;
    private static final int WARM_UP = 20;
    private static final int ROUNDS = 41;
    private static final ThreadMXBean THREAD = ManagementFactory.getThreadMXBean();

    private ReadingsBench() {}

    public static void main(String[] args) throws EditRefused {
        VisitRecord[] cars = new VisitRecord[1 + WARM_UP + ROUNDS];
        for (int i = 0; i < cars.length; i++) {
            cars[i] = visit(7 + i);
        }
        report("statistics and finish history", cars, visit -> {
            ThicknessSurvey survey = ThicknessSurvey.of(visit, ZoneTable.load());
            FinishEvidence evidence = FinishEvidence.of(visit, ZoneTable.load(), survey, Map.of());
            return new FinishEngine(evidence.profile())
                    .history(evidence)
                    .zones()
                    .size();
        });
        for (int i = 0; i < cars.length; i++) {
            cars[i] = visit(1007 + i);
        }
        report("all findings", cars, visit -> Findings.of(visit, ZoneTable.load(), Map.of(), DatePatternTable.load())
                .history()
                .zones()
                .size());
    }

    /** Each round has a car of its own: one that was worked out before is known. */
    private static void report(String name, VisitRecord[] cars, ToIntFunction<VisitRecord> work) {
        long start = System.nanoTime();
        int zones = work.applyAsInt(cars[0]);
        double cold = (System.nanoTime() - start) / 1e6;
        for (int i = 0; i < WARM_UP; i++) {
            zones = work.applyAsInt(cars[1 + i]);
        }
        double[] ms = new double[ROUNDS];
        double[] processor = new double[ROUNDS];
        for (int i = 0; i < ROUNDS; i++) {
            long begun = System.nanoTime();
            long used = THREAD.getCurrentThreadCpuTime();
            zones = work.applyAsInt(cars[1 + WARM_UP + i]);
            processor[i] = (THREAD.getCurrentThreadCpuTime() - used) / 1e6;
            ms[i] = (System.nanoTime() - begun) / 1e6;
        }
        Arrays.sort(ms);
        Arrays.sort(processor);
        System.out.printf(
                Locale.ROOT,
                "%s: %d zones, first %.0f ms; warm median %.1f ms, least %.1f, most %.1f of %d; thread's processor time %.1f%n",
                name,
                zones,
                cold,
                ms[ROUNDS / 2],
                ms[0],
                ms[ROUNDS - 1],
                ROUNDS,
                processor[ROUNDS / 2]);
    }

    private static VisitRecord visit(long seed) throws EditRefused {
        VisitFacts facts = new FactEdits(ZoneTable.load())
                .start(Map.of("car", "Tamarisk", "style", "wagon", "finish", "lacquer"), ZoneOffset.UTC);
        List<ZoneId> zones = ZoneTable.load().zonesOf(facts.car().body()).stream()
                .filter(zone -> zone.finish())
                .map(zone -> zone.id())
                .toList();
        Random random = new Random(seed);
        List<Recorded<Reading>> readings = new ArrayList<>();
        for (int i = 0; i < READINGS; i++) {
            double level = LEVEL_UM * (1 + i % zones.size() % 5);
            double um = level * Math.exp(0.12 * random.nextGaussian());
            readings.add(new Recorded<>(
                    new RecordId(i + 1L),
                    new Reading(
                            zones.get(i % zones.size()),
                            new GaugeValue.Measured(
                                    BigDecimal.valueOf(um).setScale(0, RoundingMode.HALF_UP), ThicknessUnit.UM),
                            Optional.empty(),
                            Optional.empty(),
                            Optional.empty(),
                            Optional.empty(),
                            Optional.empty(),
                            Optional.empty())));
        }
        return new VisitParts(facts).readings(readings).record();
    }
}
