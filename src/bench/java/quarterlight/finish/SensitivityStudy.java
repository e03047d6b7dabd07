package quarterlight.finish;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import quarterlight.car.ZoneId;
import quarterlight.finish.history.ZoneHistory;
import quarterlight.finish.model.Draws;
import quarterlight.finish.model.HeldNumbers;
import quarterlight.finish.number.JudgedNumber;

/**
 * Which judged numbers move a finding most, and by how much: every number is held at its low and at its high end in turn, all others as
 * uncertain as before, and every car worked out anew. Writes docs/methods/finish-sensitivity.md.
 * <p>Arguments: the page to write; of how many drawn cars one is taken (1); with {@code table} after it also a line for each panel on standard output.
 */
public final class SensitivityStudy {
    private static final double EVEN = .5;
    private static final int SEVERAL = 3;

    /** One panel: the likelihood, and with each number held low and high. */
    private record Row(ZoneHistory said, HeldNumbers.Sway sway, Map<JudgedNumber, double[]> held) {
        double reach(JudgedNumber number) {
            return Math.abs(held.get(number)[1] - held.get(number)[0]);
        }

        List<JudgedNumber> order() {
            return Stream.of(JudgedNumber.values())
                    .sorted(Comparator.comparingDouble(this::reach).reversed())
                    .toList();
        }

        boolean turns(JudgedNumber number) {
            double[] ends = held.get(number);
            return Math.min(ends[0], ends[1]) < EVEN && Math.max(ends[0], ends[1]) >= EVEN;
        }
    }

    private SensitivityStudy() {}

    public static void main(String[] arguments) throws IOException {
        List<Path> folders;
        try (Stream<Path> all = Files.list(Path.of("src/test/resources/quarterlight/finish/cars"))) {
            folders = all.filter(Files::isDirectory).sorted().toList();
        }
        int every = arguments.length > 1 ? Integer.parseInt(arguments[1]) : 1;
        List<Path> kept = IntStream.range(0, folders.size())
                .filter(n -> n % every == 0)
                .mapToObj(folders::get)
                .toList();
        Map<JudgedNumber, Draws[]> draws = new EnumMap<>(JudgedNumber.class);
        for (JudgedNumber number : JudgedNumber.values()) {
            draws.put(number, new Draws[] {
                Draws.USUAL.holding(number, -HeldNumbers.END), Draws.USUAL.holding(number, HeldNumbers.END)
            });
        }
        List<Row> rows = new ArrayList<>();
        for (Path folder : kept) {
            rows.addAll(rows(DrawnCar.read(folder).evidence(), draws));
        }
        Files.writeString(Path.of(arguments[0]), page(rows, kept.size()));
        if (arguments.length > 2) {
            rows.forEach(SensitivityStudy::print);
        }
    }

    private static List<Row> rows(FinishEvidence evidence, Map<JudgedNumber, Draws[]> draws) {
        JointHistory joint = new FinishEngine(evidence.profile()).joint(evidence);
        FinishHistory usual = joint.history();
        Map<ZoneId, HeldNumbers.Sway> hangsOn = joint.hangsOn();
        Map<ZoneId, Map<JudgedNumber, double[]>> held = new HashMap<>();
        for (JudgedNumber number : JudgedNumber.values()) {
            for (int end = 0; end < 2; end++) {
                FinishHistory one = new FinishEngine(evidence.profile(), draws.get(number)[end]).history(evidence);
                for (ZoneHistory zone : one.zones()) {
                    held.computeIfAbsent(zone.zone(), id -> new EnumMap<>(JudgedNumber.class))
                                    .computeIfAbsent(number, n -> new double[2])[end] =
                            zone.notFactory();
                }
            }
        }
        return usual.zones().stream()
                .map(zone -> new Row(zone, hangsOn.get(zone.zone()), held.get(zone.zone())))
                .toList();
    }

    private static void print(Row row) {
        JudgedNumber first = row.order().get(0);
        System.out.printf(
                Locale.ROOT,
                "%s %.3f | held %s %.3f %.3f | said %s %.3f %.3f%n",
                row.said().zone(),
                row.said().notFactory(),
                first.word(),
                row.held().get(first)[0],
                row.held().get(first)[1],
                row.sway().number().word(),
                row.sway().low(),
                row.sway().high());
    }

    private static String page(List<Row> rows, int cars) {
        long turned = rows.stream().filter(row -> row.turns(row.order().get(0))).count();
        long named = rows.stream().filter(row -> row.sway().turns()).count();
        long both = rows.stream()
                .filter(row ->
                        row.sway().turns() && Stream.of(JudgedNumber.values()).anyMatch(row::turns))
                .count();
        long any = rows.stream()
                .filter(row -> Stream.of(JudgedNumber.values()).anyMatch(row::turns))
                .count();
        long same = rows.stream()
                .filter(row -> row.order().get(0) == row.sway().number())
                .count();
        long near = rows.stream()
                .filter(row ->
                        row.order().subList(0, SEVERAL).contains(row.sway().number()))
                .count();
        List<Row> moved =
                rows.stream().filter(row -> row.reach(row.order().get(0)) >= .1).toList();
        long movedNear = moved.stream()
                .filter(row ->
                        row.order().subList(0, SEVERAL).contains(row.sway().number()))
                .count();
        double off = rows.stream()
                .mapToDouble(row ->
                        Math.abs(row.sway().reach() - row.reach(row.sway().number())))
                .average()
                .orElseThrow();
        StringBuilder out = new StringBuilder();
        out.append(String.format(
                Locale.ROOT,
                """
                # Which judged numbers move a finding most

                Written by `quarterlight.finish.SensitivityStudy` in `src/bench`; do not edit by hand. Each judged number of the [finish model](finish-history.md) is held at
                its low and at its high end in turn (the 5th and 95th percentile of its range), all others as uncertain as before, and the finish history is worked out anew:
                %d drawn cars of the tests ([where from](../finish-history-study.md)), %d panels with a reading or a sign, %d times each.

                | number | moves a panel's refinish likelihood, points: mean | 90 of 100 panels within | at most | moves it most, of 100 panels | turns a finding, of 100 panels |
                | --- | --- | --- | --- | --- | --- |
                """,
                cars,
                rows.size(),
                2 * JudgedNumber.values().length));
        Stream.of(JudgedNumber.values())
                .sorted(Comparator.comparingDouble((JudgedNumber number) -> mean(rows, number))
                        .reversed())
                .forEach(number -> out.append(line(rows, number)));
        out.append(String.format(
                Locale.ROOT,
                """

                A finding turns if the refinish likelihood goes from under 50 to 50 and more, or back. Of the %d panels %d turn with the number that moves them most and %d with any
                single number; all others stay on their side whichever one of the judged numbers lies at either end of its range. Several wrong at once can turn more: that is what the band is for.

                ## What `history` says of a panel
                `history` (`hangs_on`) and the window name for each panel the number that moves it most, with the score at both ends and whether the finding would turn. They do what
                the table does with 24 of the 192 draws, and move the log odds of the full answer as far. Against the table:

                | what `history` says | of %d panels |
                | --- | --- |
                | the number named is the one that moves the panel most | %d |
                | the number named is among the three that do | %d |
                | the same, of the %d panels that some number moves by 10 points and more | %d |
                | named as one whose finding would turn | %d |
                | of these, some number does turn it | %d |
                | by how many points the reach said is off, mean | %.1f |
                """,
                rows.size(),
                turned,
                any,
                rows.size(),
                same,
                near,
                moved.size(),
                movedNear,
                named,
                both,
                100 * off));
        return out.toString();
    }

    private static double mean(List<Row> rows, JudgedNumber number) {
        return rows.stream().mapToDouble(row -> row.reach(number)).average().orElseThrow();
    }

    private static String line(List<Row> rows, JudgedNumber number) {
        double[] reach =
                rows.stream().mapToDouble(row -> row.reach(number)).sorted().toArray();
        long first = rows.stream().filter(row -> row.order().get(0) == number).count();
        long turns = rows.stream().filter(row -> row.turns(number)).count();
        return String.format(
                Locale.ROOT,
                "| %s | %.1f | %.0f | %.0f | %.1f | %.1f |%n",
                number.word(),
                100 * mean(rows, number),
                100 * reach[(int) Math.ceil(.9 * reach.length) - 1],
                100 * reach[reach.length - 1],
                100.0 * first / rows.size(),
                100.0 * turns / rows.size());
    }
}
