package quarterlight.walk;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import quarterlight.car.ZoneId;

/** The lists of zones by which simulated inspectors walk: by where one stands, or by subject. */
final class PlaceList {
    private PlaceList() {}

    /** Lists of zones in the order of the file, {@code name: zone zone ...} a line. */
    static List<List<ZoneId>> read(String file) {
        try (BufferedReader in = new BufferedReader(
                new InputStreamReader(PlaceList.class.getResourceAsStream(file), StandardCharsets.UTF_8))) {
            List<List<ZoneId>> lists = new ArrayList<>();
            in.lines()
                    .filter(line -> !line.startsWith("#"))
                    .forEach(line -> lists.add(Stream.of(
                                    line.substring(line.indexOf(':') + 1).trim().split(" "))
                            .map(ZoneId::new)
                            .toList()));
            return lists;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
