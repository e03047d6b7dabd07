package quarterlight.finish;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import quarterlight.finish.history.ZoneHistory;

/**
 * Judges every drawn car of a folder and writes history.json beside its truth, in one process, in the program's form, for a
 * scoring program to read. Argument: the folder.
 */
final class FinishWorlds {
    private FinishWorlds() {}

    public static void main(String[] args) throws IOException {
        List<Path> folders;
        try (Stream<Path> all = Files.list(Path.of(args[0]))) {
            folders = all.filter(Files::isDirectory).sorted().toList();
        }
        long busy = 0;
        for (Path folder : folders) {
            DrawnCar car = DrawnCar.read(folder);
            long start = System.nanoTime();
            FinishHistory history = FinishHistory.of(car.evidence());
            busy += System.nanoTime() - start;
            Files.writeString(
                    folder.resolve("history.json"),
                    history.zones().stream()
                            .map(FinishWorlds::zone)
                            .collect(Collectors.joining(",", "{\"zones\":[", "]}")));
        }
        System.out.println(folders.size() + " cars, " + busy / 1_000_000 / folders.size() + " ms a car");
    }

    private static String zone(ZoneHistory zone) {
        return String.format(
                Locale.ROOT,
                "{\"zone\":\"%s\",\"factory\":%.6f,\"filler\":%.6f,\"not_factory_low\":%.6f,\"not_factory_high\":%.6f}",
                zone.zone(),
                zone.chances().factory(),
                zone.chances().filler(),
                zone.notFactoryLow(),
                zone.notFactoryHigh());
    }
}
