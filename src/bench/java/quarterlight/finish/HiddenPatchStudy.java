package quarterlight.finish;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import quarterlight.car.body.Body;
import quarterlight.car.body.BodyStyle;
import quarterlight.car.body.Dimensions;
import quarterlight.diagram.NominalAreas;
import quarterlight.diagram.file.DiagramFile;
import quarterlight.diagram.file.DiagramRefused;
import quarterlight.finish.history.ZoneHistory;
import quarterlight.units.Worded;

/**
 * What is said of filler that no spot stands on, against drawn cars whose truth is known: folders of facts.txt, readings.csv, signs.csv and
 * truth.csv. Prints a table for docs/finish-history-study.md. Argument: the folder of the cars.
 */
public final class HiddenPatchStudy {
    private record Said(double chance, boolean so) {}

    private HiddenPatchStudy() {}

    public static void main(String[] arguments) throws IOException, DiagramRefused {
        List<Path> folders;
        try (Stream<Path> all = Files.list(Path.of(arguments[0]))) {
            folders = all.filter(Files::isDirectory).sorted().toList();
        }
        for (String world : List.of("usual", "rough", "modern", "")) {
            List<Said> said = new ArrayList<>();
            for (Path folder : folders) {
                if (folder.getFileName().toString().startsWith(world)) {
                    said.addAll(said(folder));
                }
            }
            report(world.isEmpty() ? "all" : world, said);
        }
    }

    private static List<Said> said(Path folder) throws IOException, DiagramRefused {
        DrawnCar car = DrawnCar.read(folder);
        String style = Files.readAllLines(folder.resolve("facts.txt")).stream()
                .filter(line -> line.startsWith("style="))
                .map(line -> line.substring(6))
                .findFirst()
                .orElseThrow();
        Body body = Body.usual(Worded.find(BodyStyle.class, style).orElseThrow());
        FinishEvidence evidence =
                car.evidence().with(NominalAreas.sizes(DiagramFile.shipped(body), Dimensions.NOT_GIVEN));
        List<Said> said = new ArrayList<>();
        for (ZoneHistory zone : FinishHistory.of(evidence).zones()) {
            boolean hidden = car.filler().get(zone.zone()) && !car.touched().contains(zone.zone());
            zone.hiddenPatch().ifPresent(patch -> said.add(new Said(patch.chance(), hidden)));
        }
        return said;
    }

    private static void report(String world, List<Said> said) {
        double rate =
                said.stream().mapToDouble(one -> one.so() ? 1 : 0).average().orElse(0);
        double mean = said.stream().mapToDouble(Said::chance).average().orElse(0);
        double log = said.stream()
                .mapToDouble(one -> -Math.log(Math.max(1e-6, one.so() ? one.chance() : 1 - one.chance())))
                .average()
                .orElse(0);
        double base = -rate * Math.log(rate) - (1 - rate) * Math.log(1 - rate);
        System.out.printf(
                Locale.ROOT,
                "%s: %d panels, so %.3f, said %.3f, log score %.3f, base rate %.3f, area %.3f%n",
                world,
                said.size(),
                rate,
                mean,
                log,
                base,
                area(said));
        double[] edges = {0, .02, .05, .1, .2, .35, 1.01};
        for (int n = 0; n + 1 < edges.length; n++) {
            double from = edges[n];
            double to = edges[n + 1];
            List<Said> bin = said.stream()
                    .filter(one -> one.chance() >= from && one.chance() < to)
                    .toList();
            if (!bin.isEmpty()) {
                System.out.printf(
                        Locale.ROOT,
                        "| %.0f to %.0f | %d | %.1f | %.1f |%n",
                        100 * from,
                        Math.min(100, 100 * to),
                        bin.size(),
                        100 * bin.stream().mapToDouble(Said::chance).average().orElseThrow(),
                        100
                                * bin.stream()
                                        .mapToDouble(one -> one.so() ? 1 : 0)
                                        .average()
                                        .orElseThrow());
            }
        }
    }

    private static double area(List<Said> said) {
        double above = 0;
        double pairs = 0;
        for (Said yes : said) {
            for (Said no : said) {
                if (yes.so() && !no.so()) {
                    above += yes.chance() > no.chance() ? 1 : yes.chance() == no.chance() ? .5 : 0;
                    pairs++;
                }
            }
        }
        return above / pairs;
    }
}
