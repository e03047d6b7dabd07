package quarterlight.finish;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import quarterlight.car.FinishProfile;
import quarterlight.car.View;
import quarterlight.car.ZoneId;
import quarterlight.units.Thickness;
import quarterlight.units.Worded;
import quarterlight.visit.pin.ViewPoint;
import quarterlight.visit.trial.SignKind;

/**
 * A car drawn by physical processes, from a folder with facts.txt, readings.csv, signs.csv and truth.csv.
 *
 * @param truth by zone: true if it was refinished
 * @param filler by zone: true if it holds filler
 * @param touched zones on whose filler a reading was taken
 */
record DrawnCar(
        String name,
        FinishEvidence evidence,
        Map<ZoneId, Boolean> truth,
        Map<ZoneId, Boolean> filler,
        Set<ZoneId> touched) {
    static DrawnCar read(Path folder) throws IOException {
        Map<ZoneId, Boolean> truth = new LinkedHashMap<>();
        Map<ZoneId, Boolean> filler = new LinkedHashMap<>();
        Set<ZoneId> touched = new HashSet<>();
        for (Map<String, String> row : rows(folder.resolve("truth.csv"))) {
            ZoneId zone = new ZoneId(row.get("zone"));
            truth.put(zone, row.get("finish").equals("refinished"));
            filler.put(zone, row.get("filler").equals("yes"));
            if (!row.get("places_on_filler").equals("0")) {
                touched.add(zone);
            }
        }
        Map<String, String> facts = new LinkedHashMap<>();
        for (String line : Files.readAllLines(folder.resolve("facts.txt"))) {
            facts.put(line.substring(0, line.indexOf('=')), line.substring(line.indexOf('=') + 1));
        }
        Map<ZoneId, Map<String, List<String>>> spots = new LinkedHashMap<>();
        Map<ZoneId, Map<String, ViewPoint>> points = new LinkedHashMap<>();
        int alone = 0;
        for (Map<String, String> row : rows(folder.resolve("readings.csv"))) {
            String spot = row.get("spot").isEmpty() ? "alone " + alone++ : row.get("spot");
            String value = row.get("value");
            if (!row.get("x").isEmpty()) {
                points.computeIfAbsent(new ZoneId(row.get("zone")), z -> new LinkedHashMap<>())
                        .putIfAbsent(
                                spot,
                                new ViewPoint(
                                        Worded.find(View.class, row.get("view")).orElseThrow(),
                                        Double.parseDouble(row.get("x")),
                                        Double.parseDouble(row.get("y"))));
            }
            boolean number = !value.equals("none") && !value.equals("over");
            spots.computeIfAbsent(new ZoneId(row.get("zone")), z -> new LinkedHashMap<>())
                    .computeIfAbsent(spot, s -> new ArrayList<>())
                    .add(
                            number && row.get("unit").equals("mil")
                                    ? Double.toString(Double.parseDouble(value) * 25.4)
                                    : value);
        }
        Map<ZoneId, Map<SignKind, Boolean>> signs = new LinkedHashMap<>();
        for (Map<String, String> row : rows(folder.resolve("signs.csv"))) {
            signs.computeIfAbsent(new ZoneId(row.get("zone")), z -> new EnumMap<>(SignKind.class))
                    .merge(
                            Worded.find(SignKind.class, row.get("sign")).orElseThrow(),
                            row.get("seen").equals("yes"),
                            Boolean::logicalOr);
        }
        List<ZoneEvidence> zones = new ArrayList<>();
        truth.keySet()
                .forEach(zone -> zones.add(zone(
                        zone,
                        spots.getOrDefault(zone, Map.of()),
                        points.getOrDefault(zone, Map.of()),
                        signs.getOrDefault(zone, Map.of()))));
        FinishProfile profile =
                Worded.find(FinishProfile.class, facts.get("finish")).orElseThrow();
        double range = Double.parseDouble(facts.getOrDefault("gauge-range", "2000"));
        FinishEvidence evidence = new FinishEvidence(profile, new Thickness(range), zones);
        return new DrawnCar(folder.getFileName().toString(), evidence, truth, filler, touched);
    }

    private static ZoneEvidence zone(
            ZoneId id, Map<String, List<String>> spots, Map<String, ViewPoint> points, Map<SignKind, Boolean> signs) {
        List<Double> um = new ArrayList<>();
        List<String> ofValues = new ArrayList<>();
        List<String> ofOver = new ArrayList<>();
        int none = 0;
        for (Map.Entry<String, List<String>> spot : spots.entrySet()) {
            double[] numbers = spot.getValue().stream()
                    .filter(value -> !value.equals("none") && !value.equals("over"))
                    .mapToDouble(Double::parseDouble)
                    .toArray();
            if (numbers.length > 0) {
                um.add(java.util.Arrays.stream(numbers).average().orElseThrow());
                ofValues.add(spot.getKey());
            } else if (spot.getValue().contains("over")) {
                ofOver.add(spot.getKey());
            } else {
                none++;
            }
        }
        int over = ofOver.size();
        ofValues.addAll(ofOver);
        List<ViewPoint> places =
                ofValues.stream().filter(points::containsKey).map(points::get).toList();
        return new ZoneEvidence(
                id, true, um, over, none, signs, Optional.empty(), Boolean.getBoolean("noplaces") ? List.of() : places);
    }

    private static List<Map<String, String>> rows(Path file) throws IOException {
        List<String> lines = Files.readAllLines(file);
        String[] head = lines.get(0).split(",", -1);
        List<Map<String, String>> rows = new ArrayList<>();
        for (String line : lines.subList(1, lines.size())) {
            String[] cells = line.split(",", -1);
            Map<String, String> row = new LinkedHashMap<>();
            for (int n = 0; n < head.length; n++) {
                row.put(head[n], cells[n]);
            }
            rows.add(row);
        }
        return rows;
    }
}
