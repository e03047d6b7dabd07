package quarterlight.store.rows;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.DateTimeException;
import java.time.LocalDateTime;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class IsoTimeTest {
    @Test
    void readsWhatTheLibraryReads() {
        Random random = new Random(62);
        for (int i = 0; i < 10_000; i++) {
            LocalDateTime time = LocalDateTime.of(1 + random.nextInt(9999), 1, 1, 0, 0)
                    .plusSeconds(random.nextInt(365 * 86_400))
                    .plusNanos(random.nextInt(4) == 0 ? random.nextInt(1_000_000_000) : 0);
            assertThat(IsoTime.read(time.toString()))
                    .as("seed 62, number %d", i)
                    .isEqualTo(time);
        }
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "2026-02-30T08:00:00",
                "2026-13-01T08:00:00",
                "2026-01-01T24:00:00",
                "2026-01-01 08:00:00",
                "2026-1-01T08:00:00",
                "\u0662026-01-01T08:00:0",
                ""
            })
    void refusesWhatTheLibraryRefuses(String text) {
        assertThatThrownBy(() -> LocalDateTime.parse(text)).isInstanceOf(DateTimeException.class);
        assertThatThrownBy(() -> IsoTime.read(text)).isInstanceOf(DateTimeException.class);
    }
}
