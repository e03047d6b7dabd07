package quarterlight.capture;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.Year;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.time.zone.ZoneOffsetTransition;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class SatelliteOffsetTest {
    private static final LocalDateTime NOON = LocalDateTime.parse("2026-07-01T12:00:00");

    @Test
    void withoutPairsThereIsNoOffset() {
        assertThat(SatelliteOffset.of(List.of())).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"-11:00", "-09:30", "-03:30", "Z", "+05:30", "+05:45", "+12:45", "+14:00"})
    void driftOfMinutesStaleFixesAndADayOffDoNotFoolIt(String offset) {
        ZoneOffset truth = ZoneOffset.of(offset);
        for (long seed = 1; seed <= 50; seed++) {
            Random random = new Random(seed);
            int driftSeconds = random.nextInt(400) - 200;
            List<SatelliteOffset.Pair> pairs = new ArrayList<>();
            for (int i = 0; i < 20; i++) {
                LocalDateTime utc = NOON.plusSeconds(90L * i);
                LocalDateTime recorded = utc.plusSeconds(truth.getTotalSeconds() + driftSeconds);
                boolean stale = i % 3 == 2;
                pairs.add(new SatelliteOffset.Pair(recorded, stale ? utc.minusSeconds(random.nextInt(20_000)) : utc));
            }
            SatelliteOffset found = SatelliteOffset.of(pairs).orElseThrow();
            assertThat(found.offset()).as("seed %d", seed).isEqualTo(truth);
            assertThat(found.agreeing()).as("seed %d", seed).isGreaterThanOrEqualTo(14);
        }
    }

    @Test
    void aSatelliteDateThatIsADayOffIsBroughtBack() {
        SatelliteOffset found = SatelliteOffset.of(List.of(new SatelliteOffset.Pair(
                        LocalDateTime.parse("2008-10-22T16:28:39"), LocalDateTime.parse("2008-10-23T14:27:07.240"))))
                .orElseThrow();
        assertThat(found.offset()).isEqualTo(ZoneOffset.ofHours(2));
        assertThat(found.drift()).isEqualTo(Duration.ofMillis(91_760));
    }

    @Test
    void knowsEveryOffsetThatClocksOnEarthHadSince2000() {
        TreeSet<ZoneOffset> offsets = new TreeSet<>();
        Instant from = Year.of(2000).atDay(1).atStartOfDay(ZoneOffset.UTC).toInstant();
        Instant to = Year.of(2026).atDay(1).atStartOfDay(ZoneOffset.UTC).toInstant();
        for (String id : ZoneId.getAvailableZoneIds()) {
            if (id.startsWith("Etc/") || id.startsWith("SystemV/")) {
                continue;
            }
            ZoneId zone = ZoneId.of(id);
            offsets.add(zone.getRules().getOffset(from));
            ZoneOffsetTransition next = zone.getRules().nextTransition(from);
            while (next != null && next.getInstant().isBefore(to)) {
                offsets.add(next.getOffsetAfter());
                next = zone.getRules().nextTransition(next.getInstant());
            }
        }
        assertThat(offsets).hasSizeGreaterThan(30);
        for (ZoneOffset offset : offsets) {
            if (offset.getTotalSeconds() % 900 != 0) {
                continue; // one country kept its local mean time, to the second, until 1972
            }
            SatelliteOffset found = SatelliteOffset.of(
                            List.of(new SatelliteOffset.Pair(NOON.plusSeconds(offset.getTotalSeconds()), NOON)))
                    .orElseThrow();
            assertThat(found.offset()).isEqualTo(offset);
        }
    }

    @Test
    void aKnownOffsetLeavesADriftOfHalfAnHourAtMost() {
        long half = Duration.ofMinutes(30).toNanos();
        assertThat(driftOf(half)).contains(Duration.ofMinutes(30));
        assertThat(driftOf(-half)).contains(Duration.ofMinutes(-30));
        assertThat(driftOf(half + 1_000_000)).isEmpty();
        assertThat(driftOf(-half - 1_000_000)).isEmpty();
    }

    private static java.util.Optional<Duration> driftOf(long nanos) {
        return SatelliteOffset.drift(
                List.of(new SatelliteOffset.Pair(NOON.plusHours(2).plusNanos(nanos), NOON)), ZoneOffset.ofHours(2));
    }
}
