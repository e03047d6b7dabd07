package quarterlight.capture;

import static org.assertj.core.api.Assertions.assertThat;
import static quarterlight.capture.Exposure.Hint.BRIGHT;
import static quarterlight.capture.Exposure.Hint.DARK;
import static quarterlight.capture.Exposure.Hint.NONE;

import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.Map;
import java.util.Optional;
import java.util.function.IntUnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import quarterlight.visit.photo.PhotoId;

/** Every limit of what is said of times and pictures, from both sides. */
class CaptureLimitsTest {
    private static final Instant NOW = Instant.parse("2026-05-02T12:00:00Z");

    @ParameterizedTest(name = "all pixels {0}: {1}")
    @CsvSource({"40,DARK", "41,NONE", "214,NONE", "215,BRIGHT"})
    void theMeanDecides(int grey, Exposure.Hint hint) {
        assertThat(hint(place -> grey)).isEqualTo(hint);
    }

    @Test
    void halfInBlackIsDark() {
        assertThat(hint(place -> place < 50 ? 10 : 128)).isEqualTo(DARK);
        assertThat(hint(place -> place < 49 ? 10 : 128)).isEqualTo(NONE);
        assertThat(hint(place -> place < 50 ? 11 : 128)).isEqualTo(NONE);
    }

    @Test
    void aThirdInWhiteIsBright() {
        assertThat(hint(place -> place < 35 ? 245 : 128)).isEqualTo(BRIGHT);
        assertThat(hint(place -> place < 34 ? 245 : 128)).isEqualTo(NONE);
        assertThat(hint(place -> place < 35 ? 244 : 128)).isEqualTo(NONE);
    }

    @ParameterizedTest(name = "{0} of 64 bits differ: {1}")
    @CsvSource({"10,1", "11,0"})
    void tenBitsApartIsAlike(int bits, int sets) {
        Map<PhotoId, DifferenceHash> hashes =
                Map.of(new PhotoId(1), new DifferenceHash(0), new PhotoId(2), new DifferenceHash((1L << bits) - 1));
        assertThat(NearDuplicates.of(hashes, (a, b) -> true).sets()).hasSize(sets);
    }

    @ParameterizedTest(name = "recorded as {0}, doubted: {1}")
    @CsvSource({
        "2026-05-02T12:10:00,false",
        "2026-05-02T12:10:01,true",
        "1994-12-31T23:59:59,true",
        "1995-01-01T01:00:00,false",
        "2025-01-01T00:59:59,true",
        "2025-01-01T01:00:00,false",
        "2025-01-02T00:30:00,false",
        "2025-02-01T00:30:00,false"
    })
    void clocksThatWereResetAreDoubted(LocalDateTime time, boolean doubted) {
        assertThat(Plausibility.doubt(time, Optional.of(ZoneOffset.UTC), NOW).isPresent())
                .isEqualTo(doubted);
    }

    @ParameterizedTest(name = "recorded as {0} without an offset, doubted: {1}")
    @CsvSource({"2026-05-03T02:10:00,false", "2026-05-03T02:10:01,true"})
    void withoutAnOffsetTheFuturePastTheDateLineCounts(LocalDateTime time, boolean doubted) {
        assertThat(Plausibility.doubt(time, Optional.empty(), NOW).isPresent()).isEqualTo(doubted);
    }

    private static Exposure.Hint hint(IntUnaryOperator greyAt) {
        return Exposure.of(PictureQualityReferenceTest.picture(10, 10, (x, y) -> greyAt.applyAsInt(10 * y + x)))
                .hint();
    }
}
