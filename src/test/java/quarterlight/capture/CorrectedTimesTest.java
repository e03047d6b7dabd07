package quarterlight.capture;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.TimeZone;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedClass;
import org.junit.jupiter.params.provider.ValueSource;
import quarterlight.visit.VisitRecord;
import quarterlight.visit.photo.CameraId;
import quarterlight.visit.photo.ClockSetting;
import quarterlight.visit.photo.PhotoId;

/** The same under every default zone of the computer. */
@ParameterizedClass
@ValueSource(strings = {"UTC", "America/Los_Angeles", "Asia/Kathmandu", "Pacific/Chatham"})
class CorrectedTimesTest {
    private static final PhotoId FIRST = new PhotoId(1);
    private static final PhotoId SECOND = new PhotoId(2);

    private final TimeZone computers;
    private TimeZone before;

    CorrectedTimesTest(String computers) {
        this.computers = TimeZone.getTimeZone(computers);
    }

    @BeforeEach
    void moveTheComputer() {
        before = TimeZone.getDefault();
        TimeZone.setDefault(computers);
    }

    @AfterEach
    void moveItBack() {
        TimeZone.setDefault(before);
    }

    @Test
    void withNothingElseTheVisitsZoneStandsIn() {
        VisitRecord visit = Visits.in("America/New_York")
                .photo("", "2026-07-01T10:00:00", "", "")
                .photo("", "2026-01-01T10:00:00", "", "")
                .record();
        assertThat(told(visit, FIRST)).isEqualTo("2026-07-01T10:00-04:00 = 2026-07-01T14:00Z, -04:00 VISIT");
        assertThat(told(visit, SECOND)).isEqualTo("2026-01-01T10:00-05:00 = 2026-01-01T15:00Z, -05:00 VISIT");
    }

    @Test
    void aRecordedOffsetIsUsedAndToldInTheVisitsZone() {
        VisitRecord visit = Visits.in("America/New_York")
                .photo("phone", "2026-07-01T16:00:00", "+02:00", "")
                .record();
        assertThat(told(visit, FIRST)).isEqualTo("2026-07-01T10:00-04:00 = 2026-07-01T14:00Z, +02:00 RECORDED");
    }

    @Test
    void aPhotoWithoutOffsetTakesTheOneItsCameraRecordsElsewhere() {
        VisitRecord visit = Visits.in("America/New_York")
                .photo("phone", "2026-07-01T16:00:00", "+02:00", "")
                .photo("phone", "2026-07-01T16:05:00", "", "2026-07-01T15:05:00")
                .record();
        assertThat(told(visit, SECOND)).isEqualTo("2026-07-01T10:05-04:00 = 2026-07-01T14:05Z, +02:00 RECORDED");
    }

    @Test
    void aShiftMovesEveryInstantByItself() {
        for (String offset : new String[] {"", "+02:00"}) {
            for (String gps : new String[] {"", "2026-07-01T13:58:30"}) {
                Visits visits = Visits.in("America/New_York").photo("c", "2026-07-01T16:00:00", offset, gps);
                CorrectedTime without =
                        CorrectedTimes.of(visits.record()).of(FIRST).orElseThrow();
                Duration shift = Duration.ofSeconds(-3725);
                visits.clock(new ClockSetting(new CameraId("c"), shift, Optional.empty()));
                CorrectedTime with =
                        CorrectedTimes.of(visits.record()).of(FIRST).orElseThrow();
                assertThat(with.utc()).isEqualTo(without.utc().plus(shift));
                assertThat(with.source()).isEqualTo(without.source());
            }
        }
    }

    @Test
    void aZoneThatTheVisitGivesACameraOverrulesTheFile() {
        VisitRecord visit = Visits.in("America/New_York")
                .photo("c", "2026-07-01T16:00:00", "+09:00", "2026-07-01T07:00:00")
                .clock(new ClockSetting(new CameraId("c"), Duration.ZERO, Optional.of(ZoneId.of("Europe/Berlin"))))
                .record();
        assertThat(told(visit, FIRST)).isEqualTo("2026-07-01T10:00-04:00 = 2026-07-01T14:00Z, +02:00 VISIT");
    }

    @Test
    void aFilmsTimeIsUtcAndItsCamerasClockShiftsIt() {
        VisitRecord visit = Visits.in("America/New_York")
                .film("c", "2026-07-01T14:00:00")
                .photo("c", "2026-07-01T10:00:00", "", "")
                .clock(new ClockSetting(new CameraId("c"), Duration.ofMinutes(2), Optional.empty()))
                .record();
        assertThat(told(visit, FIRST)).isEqualTo("2026-07-01T10:02-04:00 = 2026-07-01T14:02Z, Z RECORDED");
        assertThat(told(visit, SECOND)).isEqualTo("2026-07-01T10:02-04:00 = 2026-07-01T14:02Z, -04:00 VISIT");
    }

    @Test
    void aPhotoOfAClockSetsTheCameraSoThatBothAgree() {
        for (String offset : new String[] {"", "+02:00"}) {
            for (String gps : new String[] {"", "2026-07-01T13:58:30"}) {
                for (Optional<ZoneId> zone :
                        List.of(Optional.<ZoneId>empty(), Optional.of(ZoneId.of("Europe/Berlin")))) {
                    Visits visits = Visits.in("America/New_York").photo("c", "2026-07-01T16:17:05", offset, gps);
                    LocalDateTime shown = LocalDateTime.parse("2026-07-01T10:20:00");
                    ClockSetting setting = CorrectedTimes.shownOn(visits.record(), FIRST, shown, zone)
                            .orElseThrow();
                    CorrectedTime time = CorrectedTimes.of(visits.clock(setting).record())
                            .of(FIRST)
                            .orElseThrow();
                    ZoneId readIn = zone.orElse(ZoneId.of("America/New_York"));
                    assertThat(time.utc().atZoneSameInstant(readIn).toLocalDateTime())
                            .isEqualTo(shown);
                }
            }
        }
    }

    @Test
    void clocksThatSkipAnHourDoNotStopIt() {
        VisitRecord visit = Visits.in("Europe/Berlin")
                .photo("", "2026-03-29T02:30:00", "", "")
                .photo("", "2026-10-25T02:30:00", "", "")
                .record();
        assertThat(told(visit, FIRST)).isEqualTo("2026-03-29T03:30+02:00 = 2026-03-29T01:30Z, +01:00 VISIT");
        assertThat(told(visit, SECOND)).isEqualTo("2026-10-25T02:30+02:00 = 2026-10-25T00:30Z, +02:00 VISIT");
    }

    @Test
    void driftIsReportedAndNotRemoved() {
        Visits visits = Visits.in("Europe/Berlin")
                .photo("c", "2026-07-01T16:01:32", "", "2026-07-01T14:00:00")
                .photo("c", "2026-07-01T16:11:32", "", "2026-07-01T14:10:00")
                .photo("c", "2026-07-01T16:30:00", "", "2026-07-01T14:10:00");
        CameraClock clock = CorrectedTimes.of(visits.record()).cameras().get(0);
        assertThat(clock.source()).isEqualTo(OffsetSource.GPS);
        assertThat(clock.drift()).hasValue(Duration.ofSeconds(92));
        assertThat(clock.satellitePhotos()).isEqualTo(3);
        assertThat(told(visits.record(), FIRST))
                .isEqualTo("2026-07-01T16:01:32+02:00 = 2026-07-01T14:01:32Z, +02:00 GPS");
        visits.clock(new ClockSetting(new CameraId("c"), Duration.ofSeconds(-92), Optional.empty()));
        assertThat(CorrectedTimes.of(visits.record()).cameras().get(0).drift()).hasValue(Duration.ZERO);
        assertThat(told(visits.record(), FIRST)).isEqualTo("2026-07-01T16:00+02:00 = 2026-07-01T14:00Z, +02:00 GPS");
    }

    @Test
    void aCameraThatRecordsItsOffsetHasDriftToo() {
        VisitRecord visit = Visits.in("America/New_York")
                .photo("c", "2026-07-01T16:01:00", "+02:00", "2026-07-01T14:00:00")
                .record();
        assertThat(CorrectedTimes.of(visit).cameras().get(0).drift()).hasValue(Duration.ofMinutes(1));
    }

    private static String told(VisitRecord visit, PhotoId photo) {
        CorrectedTime time = CorrectedTimes.of(visit).of(photo).orElseThrow();
        return time.local() + " = " + time.utc() + ", " + time.offset() + " " + time.source();
    }
}
