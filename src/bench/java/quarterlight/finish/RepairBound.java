package quarterlight.finish;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import quarterlight.car.ZoneId;

/**
 * The best log score of repair that readers with part of the truth could reach on drawn cars: one that knows the share of panels with
 * filler in its world; one that knows besides of which panels a spot stood on filler; one that knows besides which panels were
 * refinished. Each says of a panel the share that holds in its group, which no one without the truth can. What the last one still
 * loses is filler that no spot stood on among refinished panels. Prints a table for docs/finish-history-study.md.
 * Argument: the folder of the cars, each a folder of facts.txt, readings.csv, signs.csv and truth.csv named world-seed-number.
 */
public final class RepairBound {
    private static final List<String> WORLDS = List.of("usual", "rough", "modern");
    private static final double MIN_CHANCE = 5e-4;

    private record Truth(boolean filler, boolean touched, boolean refinished) {}

    private RepairBound() {}

    public static void main(String[] arguments) throws IOException {
        List<Path> folders;
        try (Stream<Path> all = Files.list(Path.of(arguments[0]))) {
            folders = all.filter(Files::isDirectory).sorted().toList();
        }
        System.out.println("| reader knows | usual | rough | modern | mean |\n| --- | --- | --- | --- | --- |");
        Map<String, Function<Truth, Object>> readers = new java.util.LinkedHashMap<>();
        readers.put("the share with filler", truth -> 0);
        readers.put("and whose filler a spot touched", Truth::touched);
        readers.put("and which panels were refinished", truth -> List.of(truth.touched(), truth.refinished()));
        for (Map.Entry<String, Function<Truth, Object>> reader : readers.entrySet()) {
            StringBuilder row = new StringBuilder("| " + reader.getKey());
            double mean = 0;
            for (String world : WORLDS) {
                List<Truth> panels = new ArrayList<>();
                for (Path folder : folders) {
                    if (folder.getFileName().toString().startsWith(world + "-")) {
                        panels.addAll(panels(DrawnCar.read(folder)));
                    }
                }
                double score = best(panels, reader.getValue());
                mean += score / WORLDS.size();
                row.append(String.format(Locale.ROOT, " | %.3f", score));
            }
            System.out.println(row + String.format(Locale.ROOT, " | %.3f |", mean));
        }
    }

    /** Of the panels with a reading or a sign. */
    private static List<Truth> panels(DrawnCar car) {
        return car.evidence().zones().stream()
                .filter(ZoneEvidence::isJudged)
                .map(ZoneEvidence::zone)
                .map(zone -> truth(car, zone))
                .toList();
    }

    private static Truth truth(DrawnCar car, ZoneId zone) {
        boolean filler = car.filler().get(zone);
        return new Truth(
                filler, filler && car.touched().contains(zone), car.truth().get(zone));
    }

    private static double best(List<Truth> panels, Function<Truth, Object> group) {
        double sum = 0;
        for (List<Truth> alike :
                panels.stream().collect(Collectors.groupingBy(group)).values()) {
            double with = alike.stream().filter(Truth::filler).count();
            double share = Math.max(MIN_CHANCE, Math.min(1 - MIN_CHANCE, with / alike.size()));
            sum -= with * Math.log(share) + (alike.size() - with) * Math.log(1 - share);
        }
        return sum / panels.size();
    }
}
