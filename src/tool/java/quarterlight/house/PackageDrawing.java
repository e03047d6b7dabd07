package quarterlight.house;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * Draws the packages of the program and what they import, and counts their lines: {@code PackageDrawing src/main/java out.svg}. The drawing goes
 * into the file; the counts are printed as a table.
 */
final class PackageDrawing {
    private static final Pattern IMPORT = Pattern.compile("(?m)^import (?:static )?quarterlight\\.([a-z]+)[.;]");
    private static final List<List<String>> LAYERS = List.of(
            List.of("Main"),
            List.of("cli", "ui"),
            List.of("edit"),
            List.of("photo", "caption", "diagram", "table", "store", "page", "archive", "settings"),
            List.of(
                    "findings",
                    "compare",
                    "coverage",
                    "finish",
                    "thickness",
                    "rust",
                    "marks",
                    "walk",
                    "words",
                    "capture"),
            List.of("visit", "car", "units", "task", "file"));
    private static final int WIDTH = 1280;
    private static final int ROW = 130;

    /** What one package and all below it hold. */
    private static final class Size {
        private final Map<Path, Integer> classesIn = new HashMap<>();
        private int lines;
        private final Map<String, Integer> imports = new TreeMap<>();

        private int classes() {
            return classesIn.values().stream().mapToInt(Integer::intValue).sum();
        }

        private int largest() {
            return classesIn.values().stream().mapToInt(Integer::intValue).max().orElse(0);
        }
    }

    private PackageDrawing() {}

    public static void main(String[] args) throws IOException {
        Map<String, Size> sizes = sizes(Path.of(args[0]).resolve("quarterlight"));
        Files.writeString(Path.of(args[1]), svg(sizes));
        System.out.println("| package | packages | classes | most in one | lines |");
        System.out.println("| --- | --- | --- | --- | --- |");
        sizes.forEach((name, size) -> System.out.println("| " + name + " | " + size.classesIn.size() + " | "
                + size.classes() + " | " + size.largest() + " | " + size.lines + " |"));
        System.out.println("| all | "
                + sizes.values().stream().mapToInt(s -> s.classesIn.size()).sum() + " | "
                + sizes.values().stream().mapToInt(Size::classes).sum() + " | "
                + sizes.values().stream().mapToInt(Size::largest).max().orElse(0) + " | "
                + sizes.values().stream().mapToInt(s -> s.lines).sum() + " |");
    }

    private static Map<String, Size> sizes(Path root) throws IOException {
        Map<String, Size> sizes = new TreeMap<>();
        try (Stream<Path> files = Files.walk(root)) {
            files.filter(file -> file.toString().endsWith(".java")).forEach(file -> {
                Path within = root.relativize(file);
                String name =
                        within.getNameCount() == 1 ? "Main" : within.getName(0).toString();
                Size size = sizes.computeIfAbsent(name, key -> new Size());
                String source = text(file);
                size.lines += (int) source.lines().count();
                size.classesIn.merge(file.getParent(), file.endsWith("package-info.java") ? 0 : 1, Integer::sum);
                Matcher imported = IMPORT.matcher(source);
                while (imported.find()) {
                    if (!imported.group(1).equals(name)) {
                        size.imports.merge(imported.group(1), 1, Integer::sum);
                    }
                }
            });
        }
        return sizes;
    }

    private static String svg(Map<String, Size> sizes) {
        Map<String, double[]> places = places(sizes);
        StringBuilder svg = new StringBuilder(
                "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 %d %d\" font-family=\"sans-serif\" font-size=\"14\">\n"
                        .formatted(WIDTH, LAYERS.size() * ROW));
        svg.append("<title>Packages and their imports; the thicker a line, the more imports</title>\n");
        svg.append("<rect width=\"100%\" height=\"100%\" fill=\"#fff\"/>\n");
        sizes.forEach((name, size) -> size.imports.forEach((other, count) -> {
            if (places.containsKey(other)) {
                svg.append(line(places.get(name), places.get(other), count));
            }
        }));
        places.forEach((name, place) -> svg.append(box(name, sizes.get(name), place)));
        return svg.append("</svg>\n").toString();
    }

    private static Map<String, double[]> places(Map<String, Size> sizes) {
        Map<String, double[]> places = new TreeMap<>();
        List<String> left = new ArrayList<>(sizes.keySet());
        for (int row = 0; row < LAYERS.size(); row++) {
            List<String> names = new ArrayList<>(LAYERS.get(row));
            if (row == LAYERS.size() - 1) {
                LAYERS.forEach(left::removeAll);
                names.addAll(left);
            }
            names.retainAll(sizes.keySet());
            for (int i = 0; i < names.size(); i++) {
                places.put(names.get(i), new double[] {(i + 0.5) * WIDTH / names.size(), (row + 0.5) * ROW});
            }
        }
        return places;
    }

    private static String line(double[] from, double[] to, int count) {
        boolean level = from[1] == to[1];
        double bend = level ? from[1] - 60 : (from[1] + to[1]) / 2;
        return String.format(
                Locale.ROOT,
                "<path d=\"M%.0f %.0f C%.0f %.0f %.0f %.0f %.0f %.0f\" fill=\"none\" stroke=\"%s\" stroke-opacity=\".35\" stroke-width=\"%.1f\"/>%n",
                from[0],
                from[1],
                from[0],
                bend,
                to[0],
                bend,
                to[0],
                to[1],
                from[1] > to[1] ? "#c00" : level ? "#06c" : "#333",
                0.5 + Math.sqrt(count) / 3);
    }

    private static String box(String name, Size size, double[] at) {
        return String.format(
                Locale.ROOT,
                "<g transform=\"translate(%.0f %.0f)\"><rect x=\"-52\" y=\"-24\" width=\"104\" height=\"48\" rx=\"4\" fill=\"#f4f1ea\" stroke=\"#333\"/>"
                        + "<text text-anchor=\"middle\" y=\"-5\">%s</text><text text-anchor=\"middle\" y=\"13\" font-size=\"11\">%d in %d, most %d</text></g>%n",
                at[0],
                at[1],
                name,
                size.classes(),
                size.classesIn.size(),
                size.largest());
    }

    private static String text(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException e) {
            throw new UncheckedIOException("cannot read " + file, e);
        }
    }
}
