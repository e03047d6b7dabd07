package quarterlight.cli;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.commons.csv.CSVRecord;
import quarterlight.units.Worded;
import quarterlight.visit.mark.MarkKind;

/**
 * The rows of a narrated walk as tables that {@code add} takes, by rules alone and the same for every row. Of acceptable values the
 * first is taken; of zones the first of {@code a / b} and all of {@code a | b}; no zone is the whole car. The gold has no words for
 * rust, refinishing and filler and lists several where they are meant, by the conventions of its README; the rules below give each
 * the one word of the program's own.
 */
final class GoldRows {
    /** A kind of {@code add}, and one row of it by its columns. */
    record Entry(String kind, Map<String, String> cells) {}

    private static final Pattern FILLER = Pattern.compile("\\b(?:mud|filler|filled|skim|bogged|foam)\\b");
    private static final Pattern CHROME = Pattern.compile("\\brechrom");
    private static final Pattern PAPERS =
            Pattern.compile("\\b(?:paper|invoice|sheet|service book|sticker|slip|it lists)\\b");
    private static final Pattern RANGE = Pattern.compile("([0-9.]+)-([0-9.]+) (mil|um)");

    private final String distance;

    /** @param distance the unit of the car's odometer, which no row says */
    GoldRows(String distance) {
        this.distance = distance;
    }

    /** The rows that one gold row makes; none where nothing is there to be taken down. */
    List<Entry> of(CSVRecord row) {
        return switch (row.get("what")) {
            case "nothing" -> List.of();
            case "statement", "not-looked-at" -> statements(row);
            case "sign" -> perZone(row, "signs", twoParts(first(row), "sign", "seen"));
            case "thickness" -> perZone(row, "readings", reading(first(row)));
            case "mark" -> perZone(row, "marks", mark(row));
            case "trial" -> List.of(new Entry("trials", trial(row)));
            case "claim" -> perZone(row, "claims", claim(row));
            case "odometer" ->
                List.of(new Entry("odometer", cells("figure", first(row), "unit", distance, "source", "read")));
            default -> throw new AssertionError("the gold has no rule for " + row.get("what"));
        };
    }

    private static List<Entry> statements(CSVRecord row) {
        Map<String, String> said = cells("text", row.get("text"));
        Optional<String> own = oneWord(row);
        String value = row.get("what").equals("not-looked-at") ? "not looked at" : first(row);
        // one table cannot have both columns; those of the earlier kinds go in as earlier tables did
        said.put(own.isPresent() ? "condition" : "kind", own.orElse(value));
        List<Entry> entries = perZone(row, own.isPresent() ? "statements" : "statements by kind", said);
        entries.forEach(entry -> entry.cells().putIfAbsent("zone", "whole-car"));
        return entries;
    }

    /** The word for what the gold says in several: rust, refinishing, filler, new chrome. */
    static Optional<String> oneWord(CSVRecord row) {
        if (!row.get("what").equals("statement")) {
            return Optional.empty();
        }
        List<String> accepted = accepted(row);
        String text = row.get("text").toLowerCase(Locale.ROOT);
        boolean rust =
                accepted.contains("pitted") && List.of("pitted", "missing").contains(accepted.get(0));
        if (rust) {
            boolean through = accepted.contains("damaged") || accepted.contains("missing");
            String kept = text.contains("scal") ? "scale" : text.contains("pit") ? "pitted" : "surface rust";
            return Optional.of(through ? "rusted through" : kept);
        }
        if (!accepted.get(0).equals("repaired")) {
            return Optional.empty();
        }
        if (CHROME.matcher(text).find()) {
            return Optional.of("replated");
        }
        if (FILLER.matcher(text).find()) {
            return Optional.of("filler");
        }
        return accepted.contains("added coating") ? Optional.of("refinished") : Optional.empty();
    }

    private static Map<String, String> reading(String value) {
        Matcher range = RANGE.matcher(value);
        if (!range.matches()) {
            return cells("value", value, "unit", "mil");
        }
        String low = range.group(1);
        return cells("value", low.equals(range.group(2)) ? low : low + "-" + range.group(2), "unit", range.group(3));
    }

    /** The first acceptable one whose kind there is, if any; the date it should mean is left to the program. */
    private static Map<String, String> mark(CSVRecord row) {
        String[] parts = accepted(row).stream()
                .map(value -> value.split(": "))
                .filter(words -> Worded.find(MarkKind.class, words[1]).isPresent())
                .findFirst()
                .orElseGet(() -> first(row).split(": "));
        return cells("part", parts[0], "kind", parts[1], "text", parts[2]);
    }

    private static Map<String, String> trial(CSVRecord row) {
        String[] parts = first(row).split(": ");
        Map<String, String> cells = cells("item", parts[0], "result", parts[1], "note", row.get("text"));
        if (parts.length > 2) {
            String[] figure = parts[2].split(" ");
            boolean range = figure[0].contains("-");
            // a trial has one number; a needle that hunts between two stands in the words
            cells.put(range ? "note" : "value", range ? row.get("text") + ": " + parts[2] : figure[0]);
            if (!range) {
                cells.put("unit", figure[1]);
            }
        }
        List<String> zones = zones(row);
        if (zones.size() == 1) {
            cells.put("zone", zones.get(0));
        }
        return cells;
    }

    private static Map<String, String> claim(CSVRecord row) {
        String by = PAPERS.matcher(row.get("text").toLowerCase(Locale.ROOT)).find() ? "papers" : "seller";
        return cells("text", row.get("text"), "by", by, "about", row.get("value"));
    }

    private static Map<String, String> twoParts(String value, String one, String other) {
        String[] parts = value.split(": ");
        return cells(one, parts[0], other, parts[1]);
    }

    private static List<Entry> perZone(CSVRecord row, String kind, Map<String, String> cells) {
        List<String> zones = zones(row);
        if (zones.isEmpty()) {
            return List.of(new Entry(kind, cells));
        }
        List<Entry> entries = new ArrayList<>();
        for (String zone : zones) {
            Map<String, String> one = new LinkedHashMap<>(cells);
            one.put("zone", zone);
            entries.add(new Entry(kind, one));
        }
        return entries;
    }

    private static List<String> zones(CSVRecord row) {
        String zone = row.get("zone");
        if (zone.isEmpty()) {
            return List.of();
        }
        return zone.contains("|") ? Arrays.asList(zone.split(" \\| ")) : List.of(zone.split(" / ")[0]);
    }

    private static List<String> accepted(CSVRecord row) {
        return Arrays.asList(row.get("value").split(" / "));
    }

    private static String first(CSVRecord row) {
        return accepted(row).get(0);
    }

    private static Map<String, String> cells(String... pairs) {
        Map<String, String> cells = new LinkedHashMap<>();
        for (int i = 0; i < pairs.length; i += 2) {
            cells.put(pairs[i], pairs[i + 1]);
        }
        return cells;
    }
}
