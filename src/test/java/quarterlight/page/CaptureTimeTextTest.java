package quarterlight.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import quarterlight.capture.CorrectedTimes;
import quarterlight.capture.Visits;
import quarterlight.visit.photo.PhotoId;

class CaptureTimeTextTest {
    private static final LocalDate VISIT = LocalDate.of(2026, 4, 18);
    private static final PhotoId PHOTO = new PhotoId(1);

    private static String told(String taken, Optional<LocalDate> visit) {
        return CaptureTimeText.words(
                CorrectedTimes.of(
                        Visits.in("America/New_York").photo("", taken, "", "").record()),
                PHOTO,
                visit);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "2026-04-18T00:00:01|Apr 18, 2026, 00:00:01",
                "2026-04-19T09:05:00|Apr 19, 2026, 09:05:00",
                "2026-04-17T23:59:59|Apr 17, 2026, 23:59:59; older than the visit by 1 day",
                "2026-02-19T10:00:00|Feb 19, 2026, 10:00:00; older than the visit by 58 days",
                "2026-02-18T10:00:00|Feb 18, 2026, 10:00:00; older than the visit by 2 months",
                "2024-04-19T10:00:00|Apr 19, 2024, 10:00:00; older than the visit by 23 months",
                "2024-04-18T10:00:00|Apr 18, 2024, 10:00:00; older than the visit by 2 years",
                "2013-04-19T10:00:00|Apr 19, 2013, 10:00:00; older than the visit by 12 years"
            })
    void aPhotoOlderThanTheVisitSaysByHowMuch(String taken, String words) {
        assertThat(told(taken, Optional.of(VISIT))).isEqualTo(words);
    }

    @Test
    void nothingIsOlderThanAVisitWithoutADate() {
        assertThat(told("2013-04-19T10:00:00", Optional.empty())).isEqualTo("Apr 19, 2013, 10:00:00");
    }
}
