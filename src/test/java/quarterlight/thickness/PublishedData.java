package quarterlight.thickness;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** Reads the published data sets that the tests use. */
final class PublishedData {
    private PublishedData() {}

    static List<double[]> groups(String file) {
        List<double[]> groups = new ArrayList<>();
        for (String line : lines(file)) {
            if (!line.startsWith("#") && !line.isBlank()) {
                groups.add(Arrays.stream(line.strip().split(" +"))
                        .mapToDouble(Double::parseDouble)
                        .toArray());
            }
        }
        return groups;
    }

    static double[] sample(String file) {
        return groups(file).stream().flatMapToDouble(Arrays::stream).toArray();
    }

    /** A univariate set of NIST StRD: the numbers after the 60 lines of its header. */
    static double[] strd(String name) {
        return lines("/org/apache/commons/math3/stat/data/" + name + ".txt").stream()
                .skip(60)
                .filter(line -> !line.isBlank())
                .mapToDouble(line -> Double.parseDouble(line.strip()))
                .toArray();
    }

    private static List<String> lines(String resource) {
        try (BufferedReader in = new BufferedReader(
                new InputStreamReader(PublishedData.class.getResourceAsStream(resource), StandardCharsets.UTF_8))) {
            return in.lines().toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
