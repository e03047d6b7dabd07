package quarterlight.demo;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SplittableRandom;
import org.apache.commons.csv.CSVRecord;

/** The gauge readings of one visit: drawn from the true finish of each zone, in mil, at a pace within the walk. */
final class Readings {
    static final List<String> HEADER =
            List.of("zone", "value", "unit", "time", "spot", "view", "x", "y", "mode", "exclude", "note");
    private static final double WITHIN = 0.075;
    private static final double AT_ONE_PLACE = 0.03;
    private final List<List<String>> rows = new ArrayList<>();
    private final Map<String, String> lastShown = new LinkedHashMap<>();

    private record Touch(String zone, String value, String spot, String exclude, String note) {}

    static Readings of(Story story) throws IOException {
        Readings readings = new Readings();
        SplittableRandom random =
                new SplittableRandom(Long.parseLong(story.car().get("seed")) + 99);
        Map<String, List<Touch>> byShot = new LinkedHashMap<>();
        Map<String, String> excluded = new LinkedHashMap<>();
        Path extra = story.folder().resolve("excluded.csv");
        if (Files.exists(extra)) {
            Story.rows(extra, ';').forEach(r -> excluded.put(r.get("zone"), r.get("value") + ";" + r.get("reason")));
        }
        for (CSVRecord row : Story.rows(story.folder().resolve("finish.csv"), ';')) {
            byShot.computeIfAbsent(row.get("shot"), k -> new ArrayList<>()).addAll(touches(row, random, excluded));
        }
        for (Shot shot : story.shots()) {
            readings.place(shot, byShot.getOrDefault(shot.id(), List.of()));
        }
        return readings;
    }

    private static List<Touch> touches(CSVRecord row, SplittableRandom random, Map<String, String> excluded) {
        String zone = row.get("zone");
        double level = Double.parseDouble(row.get("mil"));
        int spots = Integer.parseInt(row.get("spots"));
        int triples = Integer.parseInt(row.get("triples"));
        List<Touch> touches = new ArrayList<>();
        String reason = excluded.get(zone);
        if (reason != null) {
            String[] parts = reason.split(";");
            touches.add(new Touch(zone, parts[0], "", parts[1], ""));
        }
        for (int i = 0; i < spots; i++) {
            double place = level * Math.exp(WITHIN * normal(random));
            switch (row.get("history")) {
                case "plastic" -> touches.add(new Touch(zone, "none", "", "", "plastic"));
                case "filler" -> touches.addAll(overFiller(zone, i, place));
                default -> {
                    if (i < triples) {
                        for (int j = 0; j < 3; j++) {
                            touches.add(measured(zone, place * Math.exp(AT_ONE_PLACE * normal(random)), "1", ""));
                        }
                    } else {
                        touches.add(measured(zone, place, "", ""));
                    }
                }
            }
        }
        return touches;
    }

    /** On a panel leveled with filler: thick, thicker, beyond the range, and once too thick for the gauge to find steel. */
    private static List<Touch> overFiller(String zone, int i, double place) {
        return switch (i) {
            case 0 ->
                List.of(
                        measured(zone, 23.6, "wheel opening", ""),
                        measured(zone, 26.1, "wheel opening", ""),
                        measured(zone, 24.4, "wheel opening", ""));
            case 1 -> List.of(measured(zone, 41.8, "", "behind the wheel"));
            case 2 -> List.of(new Touch(zone, "none", "", "", "behind the wheel, low"));
            case 3 -> List.of(new Touch(zone, "over", "", "", "behind the wheel"));
            case 6 -> List.of(measured(zone, 31.2, "", "ahead of the lamp"));
            default -> List.of(measured(zone, place, "", "upper third"));
        };
    }

    private static Touch measured(String zone, double mil, String spot, String note) {
        return new Touch(zone, Rows.number(mil, 1), spot, "", note);
    }

    private void place(Shot shot, List<Touch> touches) {
        if (touches.isEmpty()) {
            return;
        }
        double pace = Math.min(6, (shot.gapSeconds() - 4.0) / touches.size());
        for (int i = 0; i < touches.size(); i++) {
            Touch t = touches.get(i);
            LocalDateTime at = shot.truth().minusSeconds(Math.round(2 + pace * (touches.size() - 1 - i)));
            rows.add(List.of(t.zone(), t.value(), "mil", at.toString(), t.spot(), "magnetic", t.exclude(), t.note()));
            if (t.exclude().isEmpty() && !t.value().equals("none") && !t.value().equals("over")) {
                lastShown.put(t.zone(), t.value());
            }
        }
    }

    private static double normal(SplittableRandom random) {
        double sum = 0;
        for (int i = 0; i < 12; i++) {
            sum += random.nextDouble();
        }
        return sum - 6;
    }

    /** The rows, each spot at its point of the diagram. */
    List<List<String>> rows(ZonePoints points) {
        Map<String, Optional<ZonePoints.Spot>> spots = new LinkedHashMap<>();
        List<List<String>> placed = new ArrayList<>();
        for (int i = 0; i < rows.size(); i++) {
            List<String> row = rows.get(i);
            String key = row.get(0) + "/" + (row.get(4).isEmpty() ? "#" + i : row.get(4));
            Optional<ZonePoints.Spot> at = spots.computeIfAbsent(key, k -> points.next(row.get(0)));
            List<String> cells = new ArrayList<>(row.subList(0, 5));
            cells.add(at.map(ZonePoints.Spot::view).orElse(""));
            cells.add(at.map(ZonePoints.Spot::x).orElse(""));
            cells.add(at.map(ZonePoints.Spot::y).orElse(""));
            cells.addAll(row.subList(5, row.size()));
            placed.add(cells);
        }
        return placed;
    }

    /** The last number measured on a zone: what the gauge shows on its photo. */
    String shown(String zone) {
        String value = lastShown.get(zone);
        if (value == null) {
            throw new IllegalArgumentException("no reading on " + zone);
        }
        return value;
    }
}
