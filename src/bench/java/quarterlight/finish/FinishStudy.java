package quarterlight.finish;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import quarterlight.car.FinishProfile;
import quarterlight.car.ZoneId;
import quarterlight.units.Thickness;
import quarterlight.visit.SignKind;

/**
 * Simulation study of the finish history: are its likelihoods calibrated, and do they rank panels better than any
 * thickness threshold? Cars are drawn from the model, and from models that break its assumptions. Run by hand; takes some
 * minutes. Results stand in docs/finish-history-study.md.
 * <p>Arguments: number of cars for each condition (250), seed (1).
 */
public final class FinishStudy {
    private static final int PANELS = 18;
    private static final int SPOTS = 4;
    private static final int BINS = 10;
    private static final List<SignKind> ASKED = List.of(
            SignKind.OVERSPRAY,
            SignKind.TAPE_EDGE,
            SignKind.TEXTURE_DIFFERS,
            SignKind.FASTENER_DISTURBED,
            SignKind.WEAK_MAGNET);

    private final int cars;
    private final long seed;
    private final FinishEngine engine = new FinishEngine(FinishProfile.LACQUER);

    private FinishStudy(int cars, long seed) {
        this.cars = cars;
        this.seed = seed;
    }

    public static void main(String[] arguments) {
        int cars = arguments.length > 0 ? Integer.parseInt(arguments[0]) : 250;
        long seed = arguments.length > 1 ? Long.parseLong(arguments[1]) : 1;
        FinishStudy study = new FinishStudy(cars, seed);
        FinishModel model = FinishModel.V1;
        study.run("as the model, values only", model, FinishProfile.LACQUER, 0, false);
        study.run("as the model, with five signs", model, FinishProfile.LACQUER, 0, true);
        study.run(
                "panels vary more (0.25 for 0.15)", varied(model, 0.25, model.coat()), FinishProfile.LACQUER, 0, false);
        study.run(
                "thinner coats (2.5 mil for 4)",
                varied(model, 0.15, new LogNormal(2.5, 0.6)),
                FinishProfile.LACQUER,
                0,
                false);
        study.run("enamel cars taken for lacquer", model, FinishProfile.ENAMEL, 0, false);
        study.run("stray readings 8 % for 2 %", model, FinishProfile.LACQUER, 0.06, false);
        study.run("stray readings 8 %, with signs", model, FinishProfile.LACQUER, 0.06, true);
    }

    private static FinishModel varied(FinishModel m, double panelLogSd, LogNormal coat) {
        return new FinishModel(
                "varied",
                m.levels(),
                panelLogSd,
                m.withinLogSds(),
                coat,
                m.bareCoat(),
                m.jobLogSd(),
                m.fillerShare(),
                m.filler(),
                m.strayShare(),
                m.strayLowMil(),
                m.strayHighMil(),
                m.noMetal(),
                m.signExponent(),
                m.panels(),
                m.middle(),
                m.low(),
                m.high(),
                m.signs(),
                m.rust());
    }

    private record Panel(
            double likelihood, double repair, double meanUm, double relative, boolean not, boolean filler) {}

    private void run(String name, FinishModel truth, FinishProfile profile, double moreStray, boolean signs) {
        Random random = new Random(seed);
        CarDraw draw = new CarDraw(truth, random);
        List<Panel> panels = new ArrayList<>();
        for (int n = 0; n < cars; n++) {
            draw.car(profile, PANELS);
            panels.addAll(car(draw, random, moreStray, signs));
        }
        report(name, panels);
    }

    private List<Panel> car(CarDraw draw, Random random, double moreStray, boolean signs) {
        List<ZoneEvidence> zones = new ArrayList<>();
        int[] noMetal = new int[PANELS];
        for (int q = 0; q < PANELS; q++) {
            List<Double> um = new ArrayList<>(draw.values(q, SPOTS, noMetal));
            um.replaceAll(v -> random.nextDouble() < moreStray ? 5 * Math.exp(6 * random.nextDouble()) : v);
            um.removeIf(v -> v > 2000);
            int over = SPOTS - noMetal[q] - um.size();
            Map<SignKind, Boolean> seen = signs ? draw.signs(q, ASKED) : new HashMap<>();
            zones.add(new ZoneEvidence(new ZoneId("panel-" + q), true, um, over, noMetal[q], seen, Optional.empty()));
        }
        FinishHistory found = engine.history(new FinishEvidence(FinishProfile.LACQUER, new Thickness(2000), zones));
        double[] means = zones.stream().mapToDouble(FinishStudy::mean).toArray();
        double[] sorted = means.clone();
        Arrays.sort(sorted);
        double median = sorted[PANELS / 2];
        List<Panel> panels = new ArrayList<>();
        for (int q = 0; q < PANELS; q++) {
            ZoneHistory zone = found.zones().get(q);
            int h = draw.histories[q];
            panels.add(
                    new Panel(zone.notFactory(), zone.chances().filler(), means[q], means[q] / median, h != 0, h == 3));
        }
        return panels;
    }

    /** A panel beyond the range or without metal everywhere counts as thickest. */
    private static double mean(ZoneEvidence zone) {
        double sum = zone.spotsUm().stream().mapToDouble(v -> v).sum() + 2000.0 * zone.overRange();
        int n = zone.spotsUm().size() + zone.overRange();
        return n == 0 ? 2000 : sum / n;
    }

    private void report(String name, List<Panel> panels) {
        print("## " + name);
        double brier = 0;
        double right = 0;
        double[] count = new double[BINS];
        double[] said = new double[BINS];
        double[] was = new double[BINS];
        for (Panel p : panels) {
            double hit = p.not() ? 1 : 0;
            brier += (p.likelihood() - hit) * (p.likelihood() - hit) / panels.size();
            right += p.likelihood() > 0.5 == p.not() ? 1.0 / panels.size() : 0;
            int bin = Math.min(BINS - 1, (int) (p.likelihood() * BINS));
            count[bin]++;
            said[bin] += p.likelihood();
            was[bin] += hit;
        }
        double off = 0;
        StringBuilder curve = new StringBuilder();
        for (int b = 0; b < BINS; b++) {
            off += Math.abs(said[b] - was[b]) / panels.size();
            if (count[b] > 0) {
                curve.append(String.format(
                        Locale.ROOT, "| %.3f | %.3f | %.0f |%n", said[b] / count[b], was[b] / count[b], count[b]));
            }
        }
        print(String.format(
                Locale.ROOT,
                "panels %d, not factory %.3f; calibration error %.4f, Brier %.4f, right at 0.5 %.4f",
                panels.size(),
                panels.stream().filter(Panel::not).count() / (double) panels.size(),
                off,
                brier,
                right));
        print(String.format(
                Locale.ROOT,
                "area under curve: likelihood %.4f, mean thickness %.4f, thickness over the car's median %.4f; best"
                        + " threshold right %.4f (thickness), %.4f (over median); filler: repair %.4f, thickness %.4f",
                area(panels, Comparator.comparingDouble(Panel::likelihood), false),
                area(panels, Comparator.comparingDouble(Panel::meanUm), false),
                area(panels, Comparator.comparingDouble(Panel::relative), false),
                best(panels, Comparator.comparingDouble(Panel::meanUm)),
                best(panels, Comparator.comparingDouble(Panel::relative)),
                area(panels, Comparator.comparingDouble(Panel::repair), true),
                area(panels, Comparator.comparingDouble(Panel::meanUm), true)));
        print("| said | was | panels |\n| --- | --- | --- |\n" + curve);
    }

    /** Chance that a panel with the property ranks above one without it. */
    private static double area(List<Panel> panels, Comparator<Panel> order, boolean filler) {
        List<Panel> sorted = panels.stream().sorted(order).toList();
        double ranks = 0;
        double with = 0;
        for (int n = 0; n < sorted.size(); n++) {
            boolean has = filler ? sorted.get(n).filler() : sorted.get(n).not();
            ranks += has ? n + 1 : 0;
            with += has ? 1 : 0;
        }
        return (ranks - with * (with + 1) / 2) / (with * (sorted.size() - with));
    }

    /** Greatest share put right by one threshold, chosen with the truth in view. */
    private static double best(List<Panel> panels, Comparator<Panel> order) {
        List<Panel> sorted = panels.stream().sorted(order).toList();
        double right = sorted.stream().filter(Panel::not).count();
        double most = right;
        for (Panel panel : sorted) {
            right += panel.not() ? -1 : 1;
            most = Math.max(most, right);
        }
        return most / sorted.size();
    }

    private static void print(String line) {
        System.out.println(line);
    }
}
