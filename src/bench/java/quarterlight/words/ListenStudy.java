package quarterlight.words;

import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import quarterlight.caption.CaptionFile;
import quarterlight.caption.WordsUnreadable;
import quarterlight.car.body.Body;
import quarterlight.car.body.BodyStyle;
import quarterlight.car.body.Construction;
import quarterlight.car.body.DriveSide;
import quarterlight.car.body.EnginePlace;
import quarterlight.table.ZoneTable;
import quarterlight.table.json.DraftsJson;
import quarterlight.table.list.LexiconTable;
import quarterlight.units.Worded;
import quarterlight.words.lexicon.Lexicon;
import quarterlight.words.place.CarZones;
import quarterlight.words.rule.Listening;
import quarterlight.words.weigh.Weights;

/** Reads every narration of a folder and writes the drafts of all as one document: {@code ListenStudy DIR OUT.json}; {@code warm} tells the time, 20 times over. */
final class ListenStudy {
    private ListenStudy() {}

    public static void main(String[] args) throws IOException, WordsUnreadable {
        Lexicon lexicon = LexiconTable.load();
        Weights weights = LexiconTable.weights();
        Map<String, TreeMap<Integer, TimedWords>> walks = new TreeMap<>();
        Map<String, Map<String, String>> facts = new HashMap<>();
        try (var files = Files.list(Path.of(args[0]))) {
            for (Path gold : files.filter(f -> f.toString().endsWith(".gold.csv"))
                    .sorted()
                    .toList()) {
                String name = gold.getFileName().toString().replace(".gold.csv", "");
                Map<String, String> known = new HashMap<>();
                for (String line :
                        Files.readAllLines(gold.resolveSibling(name + ".facts.txt"), StandardCharsets.UTF_8)) {
                    String[] pair = line.split("=", 2);
                    if (pair.length == 2) {
                        known.put(pair[0].strip(), pair[1].strip());
                    }
                }
                String walk = known.getOrDefault("walk", name);
                int part = Integer.parseInt(known.getOrDefault("part", "1").split("/")[0]);
                walks.computeIfAbsent(walk, k -> new TreeMap<>())
                        .put(part, CaptionFile.read(words(gold, name)).words());
                facts.put(walk, known);
            }
        }
        List<Draft> all = new ArrayList<>();
        for (int round = 0; round < (args.length > 2 ? 20 : 1); round++) {
            all.clear();
            for (var walk : walks.entrySet()) {
                long start = System.nanoTime();
                long cpu = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
                List<Draft> drafts = Listening.drafts(
                        List.copyOf(walk.getValue().values()), car(facts.get(walk.getKey())), lexicon, weights);
                if (args.length > 2) {
                    System.out.printf(
                            "%d %s %d drafts %.1f ms, %.1f ms of the processor%n",
                            round,
                            walk.getKey(),
                            drafts.size(),
                            (System.nanoTime() - start) / 1e6,
                            (ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime() - cpu) / 1e6);
                }
                all.addAll(drafts);
            }
        }
        Files.writeString(Path.of(args[1]), DraftsJson.of(all).text());
    }

    private static Path words(Path gold, String name) {
        return List.of(".vtt", ".srt", ".txt", ".json").stream()
                .map(ending -> gold.resolveSibling(name + ending))
                .filter(Files::exists)
                .findFirst()
                .orElseThrow();
    }

    private static CarZones car(Map<String, String> facts) {
        BodyStyle style = Worded.find(BodyStyle.class, facts.get("style")).orElseThrow();
        Construction construction = Worded.find(Construction.class, facts.getOrDefault("construction", ""))
                .orElse(Construction.usualFor(style));
        EnginePlace engine = Worded.find(EnginePlace.class, facts.getOrDefault("engine", "front"))
                .orElse(EnginePlace.FRONT);
        DriveSide drive = Worded.find(DriveSide.class, facts.getOrDefault("drive", "left"))
                .orElse(DriveSide.LEFT);
        return new CarZones(ZoneTable.load(), new Body(style, construction, engine), drive);
    }
}
