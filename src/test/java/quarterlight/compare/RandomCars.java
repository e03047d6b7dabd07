package quarterlight.compare;

import java.util.List;
import java.util.Random;
import quarterlight.car.Zone;
import quarterlight.car.body.BodyStyle;
import quarterlight.visit.statement.Condition;
import quarterlight.visit.statement.Severity;
import quarterlight.visit.trial.TrialResult;

/** Invented cars by chance: bodies, statements of every severity, trials, stamps, readings and gauge checks. */
public final class RandomCars {
    private static final List<Condition> BAD = List.of(
            Condition.RUSTED_THROUGH,
            Condition.PITTED,
            Condition.DAMAGED,
            Condition.LEAKING,
            Condition.WORN,
            Condition.FILLER,
            Condition.REPAIRED,
            Condition.MISSING,
            Condition.NOISE);
    private static final List<Condition> WELL = List.of(Condition.SOUND, Condition.NO_RUST, Condition.NOT_LOOKED_AT);
    private static final List<String> ITEMS =
            List.of("Brake pedal holds", "Steering lock to lock", "Starts from cold", "Horn");
    private static final List<TrialResult> RESULTS = List.of(
            TrialResult.WORKS,
            TrialResult.WORKS_WITH_A_FAULT,
            TrialResult.DOES_NOT,
            TrialResult.BYPASSED,
            TrialResult.NOT_TRIED,
            TrialResult.NOT_FITTED);

    private final Random random;

    public RandomCars(long seed) {
        random = new Random(seed);
    }

    public TestCar next(String name) {
        BodyStyle style = BodyStyle.values()[random.nextInt(BodyStyle.values().length)];
        TestCar car = TestCar.of(style);
        List<Zone> zones = TestCar.CATALOG.all();
        int statements = 2 + random.nextInt(8);
        for (int i = 0; i < statements; i++) {
            // any zone there is: now and then one that the body does not have
            String zone = zones.get(random.nextInt(zones.size())).id().value();
            if (random.nextInt(3) == 0) {
                car.stated(zone, one(WELL), "All well " + name + i + ".", null);
            } else {
                car.stated(zone, one(BAD), "Trouble " + name + i + ".", one(List.of(Severity.values())));
            }
        }
        for (String item : ITEMS) {
            if (random.nextBoolean()) {
                car.tried(item, one(RESULTS));
            }
        }
        if (random.nextBoolean()) {
            car.stamped("Engine stamp", "engine", "R7114C", random.nextBoolean() ? "R7114C" : "R7114D");
        }
        if (random.nextBoolean()) {
            car.measured("hood", 100 + random.nextInt(20), 105, 110 + random.nextInt(900));
            car.measured("roof", 104, 108, 112);
        }
        if (random.nextBoolean()) {
            car.checked(100, random.nextBoolean() ? 101 : 150);
        }
        return car;
    }

    private <T> T one(List<T> values) {
        return values.get(random.nextInt(values.size()));
    }

    public int upTo(int most) {
        return random.nextInt(most);
    }
}
