package quarterlight.car;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import quarterlight.language.Language;

class WrittenDateTest {
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "1971 | 1971",
                "1971-03 | 1971-03",
                "1971-03-14 | 1971-03-14",
                "March 1971 | 1971-03",
                "mar 1971 | 1971-03",
                "Sept. 1968 | 1968-09",
                "14 June 2025 | 2025-06-14",
                "June 14, 2025 | 2025-06-14",
                "the 14th of June 2025 | 2025-06-14",
                "June 2nd 2025 | 2025-06-02",
                "6/14/2025 | 2025-06-14",
                "14.6.2025 | 2025-06-14",
                "14/06/2025 | 2025-06-14",
                "14. Juni 2025 | 2025-06-14",
                "M\u00e4rz 1971 | 1971-03",
                "Maerz 1971 | 1971-03",
                "Dez. 1968 | 1968-12",
                "Okt 1968 | 1968-10",
                "1. Mai 1970 | 1970-05-01",
                "5/5/2025 | 2025-05-05",
                "3/1971 | 1971-03",
                "2025/6/14 | 2025-06-14",
                "2025 June 14 | 2025-06-14",
            })
    void datesAreReadAsPeopleWriteThem(String typed, String date) {
        assertThat(WrittenDate.parse(typed).map(PartialDate::text)).contains(date);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "3/4/2025",
                "4.3.2025",
                "31 June 2025",
                "June 31, 2025",
                "13/13/2025",
                "Ju 1971",
                "March",
                "June 14",
                "March '71",
                "March April 1971",
                "14 June 2025 1971",
                "1971-13",
                "yesterday",
                "6/14/25",
                "0/1971"
            })
    void whatIsNoDateOrCouldBeTwoIsNone(String typed) {
        assertThat(WrittenDate.parse(typed)).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"3.4.2025, 2025-04-03", "14.06.2025, 2025-06-14", "3. 4. 2025, 2025-04-03"})
    void withGermanInHandTheDayStandsBeforeTheFirstPoint(String typed, String date) throws Exception {
        assertThat(Language.GERMAN.during(() -> WrittenDate.parse(typed).map(PartialDate::text)))
                .contains(date);
    }

    @ParameterizedTest
    @ValueSource(strings = {"3/4/2025", "3-4-2025", "3.13.2025", "31.6.2025"})
    void germanGuessesNothingElse(String typed) throws Exception {
        assertThat(Language.GERMAN.during(() -> WrittenDate.parse(typed))).isEmpty();
    }
}
