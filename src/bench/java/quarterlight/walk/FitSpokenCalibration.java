package quarterlight.walk;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.stream.Collectors;
import quarterlight.visit.photo.PhotoId;
import quarterlight.walk.said.PlaceSaid;

/**
 * Fits the chances said of suggestions on walks with words to how often they are right: a logistic regression on {@link Calibration#grounds}, with a weak pull
 * to "as said", on walks with many words, with few, and with nothing pinned. Judged on other seeds by {@code WalkStudy ... words}.
 * <p>Arguments: inspectors a kind (12), first seed (501), photos a visit (220); {@code known} for those whose three earlier visits are known, without words and
 * with many ({@link Calibration#groundsOfKnown}). Prints the weights.
 */
public final class FitSpokenCalibration {
    private static final double PULL = 3;
    private static final int ROUNDS = 12;
    private static final double SMALLEST = 1e-4;

    private FitSpokenCalibration() {}

    public static void main(String[] arguments) {
        int inspectors = arguments.length > 0 ? Integer.parseInt(arguments[0]) : 12;
        long seed = arguments.length > 1 ? Long.parseLong(arguments[1]) : 501;
        int photos = arguments.length > 2 ? Integer.parseInt(arguments[2]) : 220;
        WalkScores.Place place = WalkScores.Place.coupe();
        boolean known = arguments.length > 3 && arguments[3].equals("known");
        List<double[]> examples = new ArrayList<>();
        for (WalkKind kind : WalkKind.values()) {
            for (int i = 0; i < inspectors; i++) {
                Walker walker = kind.inspector(photos, place.nextDoor(), seed + i);
                Random random = new Random(1000 + seed + i);
                WalkHabits habits = known ? WalkScores.afterThreeVisits(walker, random) : WalkHabits.NONE;
                List<Snap> snaps = walker.visit(random);
                List<Shot> pinned = Yardstick.pinned(snaps);
                List<PlaceSaid> said = new Narrator(place, 0.9, 0.5, 2000 + seed + i).says(snaps);
                ZoneSuggestions suggestions = place.suggestions(habits);
                if (known) {
                    gather(snaps, suggestions.line(pinned), examples);
                    gather(snaps, suggestions.line(pinned, said), examples);
                    continue;
                }
                List<PlaceSaid> little = new Narrator(place, 0.75, 0.3, 3000 + seed + i).says(snaps);
                gather(snaps, suggestions.line(pinned, said), examples);
                gather(snaps, suggestions.line(pinned, little), examples);
                gather(snaps, suggestions.line(SpokenWalkScores.open(pinned), said), examples);
            }
        }
        System.out.println(examples.size() + " photos");
        System.out.println(Arrays.stream(fit(examples))
                .mapToObj(weight -> String.format(Locale.ROOT, "%.2f", weight))
                .collect(Collectors.joining(", ")));
    }

    private static void gather(List<Snap> snaps, WalkLine line, List<double[]> examples) {
        for (int i = 0; i < snaps.size(); i++) {
            PhotoId photo = new PhotoId(i + 1);
            List<Suggestion> best = line.suggestions(photo);
            if (i % Yardstick.PIN_EVERY != Yardstick.PIN_EVERY / 2 && !best.isEmpty()) {
                boolean right = best.get(0).zone().equals(snaps.get(i).zone());
                double[] grounds = line.grounds(photo);
                double[] example = Arrays.copyOf(grounds, grounds.length + 1);
                example[grounds.length] = right ? 1 : 0;
                examples.add(example);
            }
        }
    }

    /** Newton steps on the penalized log-likelihood, each halved until it gains. */
    private static double[] fit(List<double[]> examples) {
        int n = examples.get(0).length - 1;
        double[] usual = new double[n];
        usual[1] = 1;
        double[] weight = usual.clone();
        for (int round = 0; round < ROUNDS; round++) {
            double[][] system = new double[n][n + 1];
            for (int k = 0; k < n; k++) {
                system[k][k] = PULL;
                system[k][n] = -PULL * (weight[k] - usual[k]);
            }
            for (double[] x : examples) {
                double sum = 0;
                for (int k = 0; k < n; k++) {
                    sum += weight[k] * x[k];
                }
                double p = 1 / (1 + Math.exp(-sum));
                for (int k = 0; k < n; k++) {
                    system[k][n] += (x[n] - p) * x[k];
                    for (int j = 0; j < n; j++) {
                        system[k][j] += p * (1 - p) * x[k] * x[j];
                    }
                }
            }
            double[] step = solved(system);
            double before = likelihood(examples, weight, usual);
            double[] next = moved(weight, step, 1);
            for (double size = 0.5; size > SMALLEST && !(likelihood(examples, next, usual) > before); size /= 2) {
                next = moved(weight, step, size);
            }
            weight = next;
        }
        return weight;
    }

    private static double[] moved(double[] weight, double[] step, double size) {
        double[] moved = weight.clone();
        for (int k = 0; k < moved.length; k++) {
            moved[k] += size * step[k];
        }
        return moved;
    }

    private static double likelihood(List<double[]> examples, double[] weight, double[] usual) {
        double log = 0;
        for (int k = 0; k < weight.length; k++) {
            log -= PULL / 2 * (weight[k] - usual[k]) * (weight[k] - usual[k]);
        }
        for (double[] x : examples) {
            double sum = 0;
            for (int k = 0; k < weight.length; k++) {
                sum += weight[k] * x[k];
            }
            log -= Math.log1p(Math.exp(x[weight.length] > 0 ? -sum : sum));
        }
        return log;
    }

    /** Gauss elimination of a positive definite system, the right side in the last column. */
    private static double[] solved(double[][] rows) {
        int n = rows.length;
        for (int k = 0; k < n; k++) {
            for (int i = 0; i < n; i++) {
                double factor = i == k ? 0 : rows[i][k] / rows[k][k];
                for (int j = k; factor != 0 && j <= n; j++) {
                    rows[i][j] -= factor * rows[k][j];
                }
            }
        }
        double[] answer = new double[n];
        for (int k = 0; k < n; k++) {
            answer[k] = rows[k][n] / rows[k][k];
        }
        return answer;
    }
}
