package quarterlight.finish;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import quarterlight.finish.history.ZoneHistory;

/**
 * Thirty cars drawn by physical processes that are not the model: ten of each of three worlds (see the README beside
 * them). The limits are looser than the aims in docs/finish-history-study.md: thirty cars scatter.
 */
class DrawnCarsTest {
    private static final Path CARS =
            Path.of(System.getProperty("quarterlight.basedir", "."), "src/test/resources/quarterlight/finish/cars");
    private static final double MIN_CHANCE = 5e-4;
    private static final List<Said> REFINISH = new ArrayList<>();
    private static final List<Said> REPAIR = new ArrayList<>();
    private static final List<Said> THICKNESS = new ArrayList<>();

    /** What was said of a panel, and what was so. */
    private record Said(double chance, boolean so) {}

    @BeforeAll
    static void judgeEveryCar() throws IOException {
        List<Path> folders;
        try (Stream<Path> all = Files.list(CARS)) {
            folders = all.filter(Files::isDirectory).sorted().toList();
        }
        assertThat(folders).hasSize(30);
        for (Path folder : folders) {
            DrawnCar car = DrawnCar.read(folder);
            for (ZoneHistory zone : FinishHistory.of(car.evidence()).zones()) {
                REFINISH.add(new Said(zone.notFactory(), car.truth().get(zone.zone())));
                REPAIR.add(new Said(zone.chances().filler(), car.filler().get(zone.zone())));
                car.evidence().zone(zone.zone()).orElseThrow().spotsUm().stream()
                        .mapToDouble(um -> um)
                        .average()
                        .ifPresent(
                                mean -> THICKNESS.add(new Said(mean, car.truth().get(zone.zone()))));
            }
        }
    }

    @Test
    void refinishedPanelsRankAboveOthersBetterThanByThickness() {
        assertThat(area(REFINISH)).isGreaterThan(.88).isGreaterThan(area(THICKNESS) + .03);
    }

    @Test
    void panelsWithFillerRankAboveOthers() {
        assertThat(area(REPAIR)).isGreaterThan(.82);
    }

    @Test
    void whatIsSaidIsWorthMoreThanTheBaseRate() {
        assertThat(logScore(REFINISH)).isLessThan(.75 * baseRate(REFINISH));
        assertThat(logScore(REPAIR)).isLessThan(.85 * baseRate(REPAIR));
    }

    @Test
    void whatIsSaidHappensAboutAsOften() {
        assertThat(calibrationError(REFINISH)).isLessThan(.11);
        assertThat(calibrationError(REPAIR)).isLessThan(.08);
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

    private static double logScore(List<Said> said) {
        return said.stream()
                .mapToDouble(one -> {
                    double p = Math.max(MIN_CHANCE, Math.min(1 - MIN_CHANCE, one.chance()));
                    return -Math.log(one.so() ? p : 1 - p);
                })
                .average()
                .orElseThrow();
    }

    private static double baseRate(List<Said> said) {
        double rate =
                said.stream().mapToDouble(one -> one.so() ? 1 : 0).average().orElseThrow();
        return -rate * Math.log(rate) - (1 - rate) * Math.log(1 - rate);
    }

    private static double calibrationError(List<Said> said) {
        double error = 0;
        for (int bin = 0; bin < 10; bin++) {
            int wanted = bin;
            List<Said> in = said.stream()
                    .filter(one -> Math.min(9, (int) (10 * one.chance())) == wanted)
                    .toList();
            double promised = in.stream().mapToDouble(Said::chance).sum();
            double kept = in.stream().filter(Said::so).count();
            error += Math.abs(promised - kept) / said.size();
        }
        return error;
    }
}
