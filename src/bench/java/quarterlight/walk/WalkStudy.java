package quarterlight.walk;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import quarterlight.car.ZoneId;
import quarterlight.visit.photo.PhotoId;

/**
 * Study of the suggestions on simulated walks, and how long they take. Run by hand; results stand in docs/performance.md.
 * <p>Arguments: inspectors a kind (40), first seed (1), photos a visit (220), and {@code words} for walks with words.
 */
public final class WalkStudy {
    private WalkStudy() {}

    public static void main(String[] arguments) {
        int inspectors = arguments.length > 0 ? Integer.parseInt(arguments[0]) : 40;
        long seed = arguments.length > 1 ? Long.parseLong(arguments[1]) : 1;
        int photos = arguments.length > 2 ? Integer.parseInt(arguments[2]) : 220;
        WalkScores.Place coupe = WalkScores.Place.coupe();
        if (arguments.length > 3 && arguments[3].equals("words")) {
            words(inspectors, seed, photos, coupe);
            return;
        }
        System.out.println("kind, then first and first three: rule | model | model after three visits");
        for (WalkKind kind : WalkKind.values()) {
            WalkScores scores = WalkScores.of(kind, inspectors, seed, photos, coupe);
            System.out.printf("%-12s %s | %s | %s%n", kind, scores.rule(), scores.fresh(), scores.learnt());
        }
        System.out.println("photos pinned in order, the next one, once two steps of a kind were pinned:");
        for (WalkKind kind : List.of(WalkKind.SUBJECTS, WalkKind.SUBJECTS_THOROUGH, WalkKind.PAIRS)) {
            System.out.printf("%-12s %s%n", kind, InOrder.of(kind, Math.min(10, inspectors), seed, coupe));
        }
        time(coupe, 1000);
        time(coupe, 5000);
    }

    private static void words(int inspectors, long seed, int photos, WalkScores.Place coupe) {
        System.out.println(
                "kind, then first and first three: silent | few words | words | words and no pin | words after three visits");
        for (WalkKind kind : WalkKind.values()) {
            SpokenWalkScores scores = SpokenWalkScores.of(kind, inspectors, seed, photos, coupe);
            System.out.printf(
                    "%-20s %s | %s | %s | %s | %s%n",
                    kind, scores.silent(), scores.terse(), scores.spoken(), scores.unpinned(), scores.learnt());
        }
    }

    /** All at once, and pin by pin in the order of the photos and at random places. */
    private static void time(WalkScores.Place coupe, int photos) {
        List<Snap> snaps = WalkKind.NEXT_DOOR
                .inspector(photos, coupe.nextDoor(), 1)
                .visit(new Random(1))
                .subList(0, photos);
        ZoneSuggestions suggestions = coupe.suggestions(WalkHabits.NONE);
        for (int run = 0; run < 3; run++) {
            long start = System.nanoTime();
            suggestions.suggest(Yardstick.pinned(snaps));
            report(photos + " photos at once", List.of(System.nanoTime() - start));
        }
        for (boolean inOrder : new boolean[] {true, false}) {
            List<Shot> open = new ArrayList<>();
            for (int i = 0; i < photos; i++) {
                open.add(new Shot(new PhotoId(i + 1L), snaps.get(i).seconds(), List.of(), Optional.empty()));
            }
            WalkLine line = suggestions.line(open);
            Map<PhotoId, List<ZoneId>> pins = new HashMap<>();
            Random random = new Random(2);
            List<Long> times = new ArrayList<>();
            List<Long> shown = new ArrayList<>();
            for (int k = 0; k < 300; k++) {
                int i = inOrder ? k : random.nextInt(photos);
                pins.put(new PhotoId(i + 1L), List.of(snaps.get(i).zone()));
                long start = System.nanoTime();
                line.pins(pins);
                line.suggestions(new PhotoId(Math.min(photos, i + 2L)));
                shown.add(System.nanoTime() - start);
                line.suggestions();
                times.add(System.nanoTime() - start);
            }
            String where = photos + " photos, a pin " + (inOrder ? "in order" : "anywhere");
            report(where + ", the next photo", shown);
            report(where + ", all photos", times);
        }
    }

    private static void report(String what, List<Long> nanos) {
        double[] ms = nanos.stream().mapToDouble(n -> n / 1e6).sorted().toArray();
        System.out.printf(
                Locale.ROOT,
                "%s: median %.1f ms, 95 of 100 within %.1f ms, most %.1f ms%n",
                what,
                ms[ms.length / 2],
                ms[(int) (ms.length * 0.95)],
                Arrays.stream(ms).max().orElse(0));
    }
}
