package quarterlight.units;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Days, months and years in the shortest words that lose nothing. */
class DaysTest {
    @ParameterizedTest(name = "{0} to {1} is {2}")
    @CsvSource(
            delimiter = '|',
            value = {
                "2026-04-18 | 2026-04-18 | Apr 18, 2026",
                "2026-04-18 | 2026-04-30 | Apr 18, 2026 to Apr 30, 2026",
                "2026-04-01 | 2026-04-29 | Apr 1, 2026 to Apr 29, 2026",
                "2026-04-02 | 2026-04-30 | Apr 2, 2026 to Apr 30, 2026",
                "2026-04-01 | 2026-04-30 | Apr 2026",
                "2024-02-01 | 2024-02-29 | Feb 2024",
                "1970-08-01 | 1971-07-31 | Aug 1970 to Jul 1971",
                "1971-04-01 | 1972-04-30 | Apr 1971 to Apr 1972",
                "1971-01-01 | 1971-12-31 | 1971",
                "1971-01-01 | 1971-11-30 | Jan 1971 to Nov 1971",
                "1971-02-01 | 1971-12-31 | Feb 1971 to Dec 1971",
                "1971-01-01 | 1972-12-31 | Jan 1971 to Dec 1972"
            })
    void spansAreSaidInTheShortestWords(LocalDate first, LocalDate last, String words) {
        assertThat(Days.span(first, last)).isEqualTo(words);
    }
}
