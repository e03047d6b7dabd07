package quarterlight.table.list;

import static quarterlight.language.Sentences.say;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import quarterlight.file.CsvShape;
import quarterlight.file.PlainFile;
import quarterlight.table.TableUnreadable;
import quarterlight.table.text.Quoted;
import quarterlight.units.Worded;
import quarterlight.visit.trial.SignKind;
import quarterlight.words.lexicon.Lexicon;
import quarterlight.words.lexicon.LexiconRow;
import quarterlight.words.lexicon.MisheardTerms;
import quarterlight.words.lexicon.PartName;
import quarterlight.words.lexicon.TermKind;
import quarterlight.words.weigh.Weights;

/**
 * The lists from which words are read: parts and their names, phrases and what they mean, what captions mishear, and the weights. The
 * program carries them; rows of the user's own, in files of the same names in the folder of settings, are read beside ours and go first.
 */
public final class LexiconTable {
    private static final int MAX_BYTES = 8 << 20;
    public static final String PARTS = "words-parts.csv";
    public static final String CUES = "words-cues.csv";
    /** How far confirmed and dropped drafts have moved the weights. */
    public static final String LEARNED = "words-learned.csv";

    public static final String HOMOPHONES = "words-homophones.csv";
    private static final List<String> PART_COLUMNS = List.of("part", "zones", "names", "region", "when");
    private static final List<String> CUE_COLUMNS = List.of("kind", "value", "phrases", "weight");
    private static final List<String> HEARD_COLUMNS = List.of("heard", "meant");
    private static final List<String> WEIGHT_COLUMNS = List.of("feature", "weight");

    /** What the phrases of these kinds may stand for. */
    private static final Map<TermKind, Set<String>> VALUES = Map.of(
            TermKind.CONDITION,
            Set.of(
                    "sound",
                    "present",
                    "no rust",
                    "surface rust",
                    "scale",
                    "pitted",
                    "rusted through",
                    "worn",
                    "damaged",
                    "leaking",
                    "missing",
                    "repaired",
                    "refinished",
                    "filler",
                    "replated",
                    "added coating",
                    "blocked",
                    "noise",
                    "smell"),
            TermKind.ORIGIN,
            Set.of("original", "replaced", "does not belong"),
            TermKind.SIGN,
            Set.copyOf(Worded.list(SignKind.class)),
            TermKind.SIGNNO,
            Set.copyOf(Worded.list(SignKind.class)),
            TermKind.SUBJECT,
            Set.copyOf(Worded.list(SignKind.class)));

    private LexiconTable() {}

    /** The lexicon that the program carries. */
    public static Lexicon load() {
        List<LexiconRow> rows = new ArrayList<>();
        shipped("parts.csv", PART_COLUMNS).forEach(row -> rows.add(part(row)));
        shipped("cues.csv", CUE_COLUMNS).forEach(row -> rows.add(cue(row)));
        List<String[]> heard = new ArrayList<>();
        shipped("homophones.csv", HEARD_COLUMNS).forEach(row -> heard.add(heard(row)));
        return new Lexicon(rows, new MisheardTerms(heard));
    }

    /**
     * The program's lexicon with the rows of the user's own files before it.
     *
     * @throws TableUnreadable if one of them cannot be used; the message says the line and what to do
     */
    public static Lexicon load(Path settings) throws TableUnreadable {
        List<LexiconRow> rows = new ArrayList<>();
        shipped("parts.csv", PART_COLUMNS).forEach(row -> rows.add(part(row)));
        shipped("cues.csv", CUE_COLUMNS).forEach(row -> rows.add(cue(row)));
        List<String[]> heard = new ArrayList<>();
        shipped("homophones.csv", HEARD_COLUMNS).forEach(row -> heard.add(heard(row)));
        own(settings.resolve(PARTS), PART_COLUMNS, row -> rows.add(part(row)));
        own(settings.resolve(CUES), CUE_COLUMNS, row -> rows.add(cue(row)));
        own(settings.resolve(HOMOPHONES), HEARD_COLUMNS, row -> heard.add(heard(row)));
        return new Lexicon(rows, new MisheardTerms(heard));
    }

    /** The weights that the program carries. */
    public static Weights weights() {
        Map<String, Double> weights = new TreeMap<>();
        shipped("weights.csv", WEIGHT_COLUMNS)
                .forEach(row -> weights.put(row.cell("feature"), Double.parseDouble(row.cell("weight"))));
        return new Weights(weights);
    }

    /**
     * The program's weights with what was learned from confirmed and dropped drafts.
     *
     * @throws TableUnreadable if what was learned cannot be used; the message says the line and what to do
     */
    public static Weights weights(Path settings) throws TableUnreadable {
        return weights().plus(learned(settings));
    }

    /**
     * What was learned, by feature: how far each weight was moved. Empty if nothing was.
     *
     * @throws TableUnreadable if it cannot be used; the message says the line and what to do
     */
    public static Map<String, Double> learned(Path settings) throws TableUnreadable {
        Map<String, Double> learned = new TreeMap<>();
        own(settings.resolve(LEARNED), WEIGHT_COLUMNS, row -> learned.put(row.required("feature"), weight(row)));
        return learned;
    }

    private static double weight(ListRow row) {
        String weight = row.required("weight");
        if (!weight.matches("-?\\d{1,2}(\\.\\d{1,6})?")) {
            throw row.refused("weight", say("cell.list.weight", Quoted.of(weight)));
        }
        return Double.parseDouble(weight);
    }

    private static LexiconRow part(ListRow row) {
        List<List<String>> zones = Arrays.stream(row.required("zones").split(";"))
                .map(together ->
                        Arrays.stream(together.split("\\+")).map(String::strip).toList())
                .toList();
        PartName part = new PartName(row.required("part"), zones, row.cell("region"), row.cell("when"));
        return new LexiconRow(TermKind.PART, part.name(), row.required("names"), 1, part);
    }

    private static LexiconRow cue(ListRow row) {
        TermKind kind = Worded.find(TermKind.class, row.required("kind"))
                .orElseThrow(() -> row.refused(
                        "kind", say("cell.none-of", Quoted.of(row.cell("kind")), Worded.words(TermKind.class))));
        Set<String> known = VALUES.getOrDefault(kind, Set.of());
        if (!known.isEmpty() && !known.contains(row.required("value"))) {
            throw row.refused(
                    "value",
                    say("cell.none-of", Quoted.of(row.cell("value")), String.join(", ", new TreeSet<>(known))));
        }
        String weight = row.cell("weight");
        if (!weight.isEmpty() && !weight.matches("0(\\.\\d{1,4})?|1(\\.0{1,4})?")) {
            throw row.refused("weight", say("cell.list.share", Quoted.of(weight)));
        }
        return new LexiconRow(
                kind,
                row.required("value"),
                row.required("phrases"),
                weight.isEmpty() ? 1 : Double.parseDouble(weight),
                PartName.NONE);
    }

    private static String[] heard(ListRow row) {
        return new String[] {row.required("heard"), row.required("meant")};
    }

    private static List<ListRow> shipped(String file, List<String> columns) {
        try (InputStream in = LexiconTable.class.getResourceAsStream("/quarterlight/words/" + file);
                Reader reader = new InputStreamReader(in, StandardCharsets.UTF_8)) {
            return rows(reader, columns);
        } catch (IOException e) {
            throw new UncheckedIOException(file + " cannot be read", e);
        }
    }

    private interface Taking {
        void take(ListRow row);
    }

    private static void own(Path file, List<String> columns, Taking taking) throws TableUnreadable {
        if (!Files.exists(file)) {
            return;
        }
        try {
            rows(new StringReader(PlainFile.text(file, MAX_BYTES)), columns).forEach(taking::take);
        } catch (IllegalArgumentException e) {
            throw new TableUnreadable(file, e.getMessage());
        } catch (PlainFile.Unsuitable e) {
            throw new TableUnreadable(file, e.getReason());
        } catch (IOException | UncheckedIOException e) {
            throw new TableUnreadable(file, say("cell.list.utf8"));
        }
    }

    private static List<ListRow> rows(Reader text, List<String> columns) throws IOException {
        List<ListRow> rows = new ArrayList<>();
        CSVFormat format = CsvShape.withHeader();
        for (CSVRecord record : format.parse(text)) {
            Map<String, String> cells = new TreeMap<>();
            columns.forEach(column -> cells.put(
                    column,
                    Optional.ofNullable(record.isMapped(column) && record.isSet(column) ? record.get(column) : null)
                            .orElse("")
                            .strip()));
            rows.add(new ListRow(record.getParser().getCurrentLineNumber(), cells));
        }
        return rows;
    }
}
