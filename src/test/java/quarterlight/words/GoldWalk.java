package quarterlight.words;

import java.io.IOException;
import java.io.InputStream;
import java.io.Reader;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import quarterlight.caption.CaptionFile;
import quarterlight.caption.WordsUnreadable;
import quarterlight.car.body.Body;
import quarterlight.car.body.BodyStyle;
import quarterlight.car.body.Construction;
import quarterlight.car.body.DriveSide;
import quarterlight.car.body.EnginePlace;
import quarterlight.table.ZoneTable;
import quarterlight.units.Worded;
import quarterlight.words.place.CarZones;

/** A narrated walk of the test resources with its gold rows. */
final class GoldWalk {
    private static final double SLACK_S = 8;
    private static final Pattern WORD = Pattern.compile("[a-z0-9]+");

    final String name;
    final List<TimedWords> words = new ArrayList<>();
    final List<GoldRow> rows = new ArrayList<>();
    final List<GoldRow> nothing = new ArrayList<>();
    final List<GoldRow> extra = new ArrayList<>();
    private Map<String, String> facts = Map.of();

    private GoldWalk(String name) {
        this.name = name;
    }

    /** @param parts the names of its files without their endings, in order */
    static GoldWalk of(String name, List<String> parts) throws IOException, WordsUnreadable {
        GoldWalk walk = new GoldWalk(name);
        for (String part : parts) {
            walk.facts = facts(part);
            TimedWords words = CaptionFile.read(part, timed(part)).words();
            walk.words.add(words);
            walk.gold(part, words, parts.size());
        }
        return walk;
    }

    CarZones car() {
        BodyStyle style = Worded.find(BodyStyle.class, facts.get("style")).orElseThrow();
        Construction construction = Worded.find(Construction.class, facts.getOrDefault("construction", ""))
                .orElse(Construction.usualFor(style));
        EnginePlace engine = Worded.find(EnginePlace.class, facts.getOrDefault("engine", ""))
                .orElse(Body.usual(style).engine());
        DriveSide drive = Worded.find(DriveSide.class, facts.getOrDefault("drive", "left"))
                .orElse(DriveSide.LEFT);
        return new CarZones(ZoneTable.load(), new Body(style, construction, engine), drive);
    }

    static List<String> tokens(String text) {
        List<String> tokens = new ArrayList<>();
        Matcher m = WORD.matcher(text.toLowerCase(java.util.Locale.ROOT).replace("'", ""));
        while (m.find()) {
            tokens.add(m.group());
        }
        return tokens;
    }

    private void gold(String part, TimedWords words, int parts) throws IOException {
        double[] lengths = words.cues().stream()
                .mapToDouble(cue -> cue.untilSeconds() - cue.fromSeconds())
                .sorted()
                .toArray();
        int n = lengths.length;
        double window = (n % 2 == 1 ? lengths[n / 2] : (lengths[n / 2 - 1] + lengths[n / 2]) / 2) + SLACK_S;
        List<GoldRow> numbered = new ArrayList<>();
        for (CSVRecord row : csv(part + ".gold.csv")) {
            GoldRow gold = row(part, words, window, row, row.get("hard").equals("1"));
            numbered.add(gold);
            (row.get("what").equals("nothing") ? nothing : rows).add(gold);
        }
        for (CSVRecord row : csv(part + ".also.csv")) {
            if (!row.get("row").isEmpty()) {
                numbered.get(Integer.parseInt(row.get("row")) - 1).forms.add(form(row));
            } else if (!row.get("what").equals("superseded") || parts == 1) {
                extra.add(row(part, words, window, row, false));
            }
        }
    }

    private static GoldRow row(String part, TimedWords words, double window, CSVRecord row, boolean hard) {
        String[] clock = row.get("at").split(":");
        double at = Integer.parseInt(clock[0]) * 60 + Integer.parseInt(clock[1]);
        double end = Math.max(at, end(row.get("text"), at, words));
        return new GoldRow(part, at, end, window, row.get("text"), hard, form(row));
    }

    private static GoldRow.Form form(CSVRecord row) {
        return new GoldRow.Form(row.get("what"), row.get("zone"), row.get("value"));
    }

    /** When the clause of a row has been said: words are spread evenly over their cue. */
    private static double end(String text, double at, TimedWords words) {
        List<String> said = new ArrayList<>();
        List<Double> times = new ArrayList<>();
        for (Cue cue : words.cues()) {
            List<String> tokens = tokens(cue.text());
            for (int i = 0; i < tokens.size(); i++) {
                said.add(tokens.get(i));
                times.add(
                        cue.fromSeconds() + (cue.untilSeconds() - cue.fromSeconds()) * i / Math.max(1, tokens.size()));
            }
        }
        List<String> want = tokens(text);
        int best = -1;
        for (int i = 0; !want.isEmpty() && i + want.size() <= said.size(); i++) {
            boolean here = Math.abs(times.get(i) - at) <= 25
                    && said.subList(i, i + want.size()).equals(want);
            if (here && (best < 0 || Math.abs(times.get(i) - at) < Math.abs(times.get(best) - at))) {
                best = i;
            }
        }
        return best < 0 ? at + 4 : Math.min(times.get(best + want.size() - 1) + 0.5, at + 40);
    }

    private static List<CSVRecord> csv(String file) throws IOException {
        String text = text(file);
        if (text.isEmpty()) {
            return List.of();
        }
        Reader reader = new StringReader(text);
        return CSVFormat.DEFAULT
                .builder()
                .setHeader()
                .setSkipHeaderRecord(true)
                .get()
                .parse(reader)
                .getRecords();
    }

    private static Map<String, String> facts(String part) throws IOException {
        Map<String, String> facts = new HashMap<>();
        Arrays.stream(text(part + ".facts.txt").split("\n"))
                .filter(line -> line.contains("="))
                .forEach(line -> facts.put(line.split("=", 2)[0].strip(), line.split("=", 2)[1].strip()));
        return new TreeMap<>(facts);
    }

    private static byte[] timed(String part) throws IOException {
        for (String ending : List.of(".vtt", ".srt", ".txt")) {
            try (InputStream in = GoldWalk.class.getResourceAsStream("walks/" + part + ending)) {
                if (in != null) {
                    return in.readAllBytes();
                }
            }
        }
        throw new IOException("no words of " + part);
    }

    private static String text(String file) throws IOException {
        try (InputStream in = GoldWalk.class.getResourceAsStream("walks/" + file)) {
            return in == null
                    ? ""
                    : new String(in.readAllBytes(), StandardCharsets.UTF_8)
                            .replace("\r\n", "\n")
                            .replace("\ufeff", "");
        }
    }
}
