package quarterlight.words;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import quarterlight.units.Worded;

/** Figures, dates and comparisons as they are spoken, each with its sentence: {@code spoken-forms.csv}. */
class SpokenFormsTest {
    private static List<CSVRecord> rows() throws IOException {
        try (InputStream in = SpokenFormsTest.class.getResourceAsStream("spoken-forms.csv");
                Reader reader = new InputStreamReader(in, StandardCharsets.UTF_8)) {
            return CSVFormat.DEFAULT
                    .builder()
                    .setHeader()
                    .setSkipHeaderRecord(true)
                    .get()
                    .parse(reader)
                    .getRecords();
        }
    }

    @TestFactory
    List<DynamicTest> eachFormIsTakenDown() throws IOException {
        assertThat(rows()).hasSizeGreaterThan(40);
        return rows().stream()
                .map(row -> DynamicTest.dynamicTest(row.get("form") + ": " + row.get("words"), () -> {
                    List<Draft> drafts = PhenomenaTest.drafts(row.get("car"), row.get("words"));
                    assertThat(drafts).anyMatch(draft -> says(draft, row));
                }))
                .toList();
    }

    private static boolean says(Draft draft, CSVRecord row) {
        List<String> zones =
                draft.zones().stream().map(Object::toString).sorted().toList();
        List<String> wanted = Arrays.stream(row.get("zones").split(" "))
                .filter(zone -> !zone.isEmpty())
                .sorted()
                .toList();
        return !draft.withdrawn()
                && draft.what().word().equals(row.get("what"))
                && (wanted.isEmpty() || zones.equals(wanted))
                && Arrays.stream(row.get("says").split("; "))
                        .map(one -> one.split("=", 2))
                        .allMatch(one -> draft.facet(facet(one[0])).equals(Optional.of(one[1])));
    }

    private static Facet facet(String word) {
        return Worded.find(Facet.class, word).orElseThrow();
    }

    /** A number that counts something else is no figure of what is tried. */
    @Test
    void whatIsNoFigureIsNotTakenForOne() {
        for (String words : List.of(
                "Battery is two years old.",
                "It starts on the third try.",
                "Headlamps, two of the four work.",
                "Compression was never measured.",
                "The tread is worn on two of them.")) {
            assertThat(PhenomenaTest.drafts("coupe", words))
                    .as(words)
                    .filteredOn(draft -> draft.what() == DraftKind.TRIAL)
                    .allMatch(draft -> draft.facet(Facet.VALUE).isEmpty());
        }
        for (String words : List.of(
                "I was here in March of last year.",
                "The seller had it painted in May of nineteen ninety-two.",
                "It may be ninety-two.")) {
            assertThat(PhenomenaTest.drafts("coupe", words))
                    .as(words)
                    .noneMatch(draft -> draft.what() == DraftKind.MARK);
        }
    }
}
