package quarterlight.demo;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/**
 * What happened at one visit, as told in {@code src/tool/story/<visit>}: the car, the walk shot by shot, the true finish.
 *
 * @param folder where it is told
 * @param car key and value pairs of {@code car.txt}
 * @param shift what must be added to the compact camera's clock
 */
record Story(
        Path folder,
        Map<String, String> car,
        Palette palette,
        LocalDateTime start,
        Duration shift,
        ZoneOffset offset,
        List<Shot> shots) {

    static Story read(Path folder) throws IOException {
        Map<String, String> car = new LinkedHashMap<>();
        for (String line : Files.readAllLines(folder.resolve("car.txt"), StandardCharsets.UTF_8)) {
            int eq = line.indexOf('=');
            if (eq > 0) {
                car.put(line.substring(0, eq), line.substring(eq + 1));
            }
        }
        Palette palette = new Palette(
                car.get("body"),
                Double.parseDouble(car.get("gloss")),
                car.get("primer"),
                car.get("trim"),
                car.get("engine"));
        LocalDateTime start = LocalDateTime.parse(car.get("start"));
        Duration shift = shift(car.get("shift"));
        ZoneOffset offset = ZoneOffset.of(car.get("offset"));
        return new Story(folder, car, palette, start, shift, offset, shots(folder, car, start, shift));
    }

    private static List<Shot> shots(Path folder, Map<String, String> car, LocalDateTime start, Duration shift)
            throws IOException {
        List<Shot> shots = new ArrayList<>();
        LocalDateTime now = start;
        int number = Integer.parseInt(car.get("first"));
        long seed = Long.parseLong(car.get("seed"));
        for (CSVRecord row : rows(folder.resolve("shots.csv"), ';')) {
            now = now.plusSeconds(Long.parseLong(row.get("after")));
            Camera camera = row.get("cam").equals("C") ? Camera.COMPACT : Camera.PHONE;
            int count = camera == Camera.COMPACT ? number++ : 0;
            shots.add(Shot.of(row, camera, now, count, shift, seed * 1000 + shots.size()));
        }
        return shots;
    }

    static List<CSVRecord> rows(Path file, char delimiter) throws IOException {
        CSVFormat format = CSVFormat.DEFAULT
                .builder()
                .setDelimiter(delimiter)
                .setHeader()
                .setSkipHeaderRecord(true)
                .get();
        try (CSVParser parser = CSVParser.parse(file, StandardCharsets.UTF_8, format)) {
            return parser.getRecords();
        }
    }

    private static Duration shift(String text) {
        String[] parts = text.substring(1).split(":");
        Duration d = Duration.ofHours(Long.parseLong(parts[0]))
                .plusMinutes(Long.parseLong(parts[1]))
                .plusSeconds(Long.parseLong(parts[2]));
        return text.startsWith("-") ? d.negated() : d;
    }

    Shot shot(String id) {
        return shots.stream()
                .filter(s -> s.id().equals(id))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException(folder + ": there is no shot " + id));
    }
}
