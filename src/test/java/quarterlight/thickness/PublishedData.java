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
public final class PublishedData {
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

    public static double[] sample(String file) {
        return groups(file).stream().flatMapToDouble(Arrays::stream).toArray();
    }

    /** A univariate set of NIST StRD: the lines that hold one number and nothing else. */
    public static double[] strd(String name) {
        return lines("/org/apache/commons/math3/stat/data/" + name + ".txt").stream()
                .map(String::strip)
                .filter(line -> line.matches("-?[0-9]+([.][0-9]+)?"))
                .mapToDouble(Double::parseDouble)
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
