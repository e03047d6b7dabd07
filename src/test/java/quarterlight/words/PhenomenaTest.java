package quarterlight.words;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import quarterlight.car.body.Body;
import quarterlight.car.body.BodyStyle;
import quarterlight.car.body.DriveSide;
import quarterlight.table.ZoneTable;
import quarterlight.table.list.LexiconTable;
import quarterlight.units.Worded;
import quarterlight.words.lexicon.Lexicon;
import quarterlight.words.place.CarZones;
import quarterlight.words.rule.Listening;
import quarterlight.words.weigh.Weights;

/** Every phenomenon of spoken walks, each with its sentence: {@code phenomena.csv}. */
class PhenomenaTest {
    private static final Lexicon LEXICON = LexiconTable.load();
    private static final Weights WEIGHTS = LexiconTable.weights();
    private static final double SHOWN = 0.5;

    static List<Draft> drafts(String car, String... said) {
        boolean right = car.startsWith("right-");
        BodyStyle style =
                Worded.find(BodyStyle.class, car.replace("right-", "")).orElseThrow();
        List<Cue> cues = new java.util.ArrayList<>();
        for (String text : said) {
            cues.add(new Cue(10 * cues.size(), 10 * cues.size() + 9, text));
        }
        return Listening.drafts(
                List.of(new TimedWords("walk.vtt", cues)),
                new CarZones(ZoneTable.load(), Body.usual(style), right ? DriveSide.RIGHT : DriveSide.LEFT),
                LEXICON,
                WEIGHTS);
    }

    @TestFactory
    List<DynamicTest> eachSentenceIsTakenDown() throws IOException {
        try (InputStream in = PhenomenaTest.class.getResourceAsStream("phenomena.csv");
                Reader reader = new InputStreamReader(in, StandardCharsets.UTF_8)) {
            List<CSVRecord> rows = CSVFormat.DEFAULT
                    .builder()
                    .setHeader()
                    .setSkipHeaderRecord(true)
                    .get()
                    .parse(reader)
                    .getRecords();
            assertThat(rows).hasSizeGreaterThan(60);
            return rows.stream()
                    .map(row ->
                            DynamicTest.dynamicTest(row.get("phenomenon") + ": " + row.get("words"), () -> check(row)))
                    .toList();
        }
    }

    private static void check(CSVRecord row) {
        List<Draft> drafts = drafts(row.get("car"), row.get("words"));
        if (row.get("what").equals("nothing")) {
            assertThat(drafts.stream().filter(d -> d.p() >= SHOWN && !d.withdrawn()))
                    .isEmpty();
            return;
        }
        GoldRow.Form form = new GoldRow.Form(row.get("what"), row.get("zone"), row.get("value"));
        assertThat(drafts.stream().filter(d -> !d.withdrawn()))
                .as(form.toString())
                .anyMatch(draft -> RowFit.full(draft, form));
    }

    /** "Drop on the" may be a leak, but not behind "trunk". */
    @Test
    void theNameOfAPartSaysNothingOfIt() {
        assertThat(drafts("coupe", "Trunk drop on the left is rusted through behind the wheelhouse."))
                .extracting(draft -> draft.facet(Facet.CONDITION).orElse(""))
                .contains("rusted through")
                .doesNotContain("leaking");
        assertThat(drafts("coupe", "Oil pan has a drop on the plug."))
                .extracting(draft -> draft.facet(Facet.CONDITION).orElse(""))
                .contains("leaking");
    }

    @Test
    void whatALaterPartTakesBackIsWithdrawn() {
        List<TimedWords> parts = List.of(
                new TimedWords("memo-1", List.of(new Cue(0, 5, "Left mirror is plastic, should be chrome."))),
                new TimedWords(
                        "memo-2",
                        List.of(new Cue(
                                0,
                                8,
                                "Correction to memo one: the plastic mirror is on the right, it should be chrome."))));
        CarZones car = new CarZones(ZoneTable.load(), Body.usual(BodyStyle.WAGON), DriveSide.LEFT);
        List<Draft> drafts = Listening.drafts(parts, car, LEXICON, WEIGHTS);
        assertThat(drafts)
                .filteredOn(d -> d.source().equals("memo-1") && d.what() == DraftKind.STATEMENT)
                .isNotEmpty()
                .allMatch(Draft::withdrawn);
        assertThat(drafts)
                .filteredOn(d -> d.source().equals("memo-2") && d.what() == DraftKind.STATEMENT && !d.withdrawn())
                .anyMatch(d -> d.zones().toString().equals("[mirror-right]"));
    }

    @Test
    void everyDraftNamesTheWordsItCameFrom() {
        assertThat(drafts("coupe", "Left front fender is dented. Horn works. Hood reads 4 to 5 mils."))
                .hasSizeGreaterThanOrEqualTo(3)
                .allMatch(draft -> draft.because().stream().anyMatch(reason -> reason.contains("\u201c")));
    }

    @Test
    void aConfirmedDraftMakesTheNextOfItsKindLikelierAndADroppedOneLess() {
        Draft draft = drafts("coupe", "Left front fender is dented.").get(0);
        double before = WEIGHTS.p(draft.what(), draft.features());
        assertThat(WEIGHTS.taught(draft, true).p(draft.what(), draft.features()))
                .isGreaterThan(before);
        assertThat(WEIGHTS.taught(draft, false).p(draft.what(), draft.features()))
                .isLessThan(before);
    }
}
