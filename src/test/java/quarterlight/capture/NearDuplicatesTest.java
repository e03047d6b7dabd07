package quarterlight.capture;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import quarterlight.visit.VisitRecord;
import quarterlight.visit.photo.PhotoId;

/** Pictures that look alike are a set only if they can be of one moment. */
class NearDuplicatesTest {
    private static final PhotoId ONE = new PhotoId(1);
    private static final PhotoId TWO = new PhotoId(2);
    private static final DifferenceHash SAME = new DifferenceHash(0x0F0F_3C3C_55AAL);

    private static List<List<PhotoId>> sets(VisitRecord visit, DifferenceHash other) {
        return NearDuplicates.of(visit.photos(), CorrectedTimes.of(visit), Map.of(ONE, SAME, TWO, other))
                .sets();
    }

    @ParameterizedTest(name = "{0} and {1}, 10:00:00 on May 2 and {2}: {3}")
    @CsvSource({
        "a, b, 2026-05-02T10:10:00, true",
        "a, b, 2026-05-02T10:10:01, false",
        "a, b, 2026-05-02T09:50:00, true",
        "a, b, 2026-05-02T09:49:59, false",
        "a, a, 2026-05-03T10:00:00, true",
        "a, a, 2026-05-03T10:00:01, false",
        "a, a, 2019-05-02T10:00:00, false"
    })
    void nearnessInTimeOrOneCameraOfOneDay(String first, String second, String time, boolean alike) {
        VisitRecord visit = Visits.in("UTC")
                .photo(first, "2026-05-02T10:00:00", "", "")
                .photo(second, time, "", "")
                .record();
        assertThat(sets(visit, SAME)).isEqualTo(alike ? List.of(List.of(ONE, TWO)) : List.of());
    }

    @ParameterizedTest(name = "{0} bits of 64 differ: {1}")
    @CsvSource({"0, true", "10, true", "11, false"})
    void soManyBitsMayDiffer(int bits, boolean alike) {
        VisitRecord visit = Visits.in("UTC")
                .photo("a", "2026-05-02T10:00:00", "", "")
                .photo("a", "2026-05-02T10:00:30", "", "")
                .record();
        DifferenceHash other = new DifferenceHash(SAME.bits() ^ ((1L << bits) - 1));
        assertThat(sets(visit, other).isEmpty()).isEqualTo(!alike);
    }

    @Test
    void whereATimeIsNotKnownOneCameraCounts() {
        CorrectedTimes none = CorrectedTimes.of(Visits.in("UTC").record());
        Map<PhotoId, DifferenceHash> hashes = Map.of(ONE, SAME, TWO, SAME);
        VisitRecord one = Visits.in("UTC")
                .photo("a", "2026-05-02T10:00:00", "", "")
                .photo("a", "2026-05-02T10:00:30", "", "")
                .record();
        VisitRecord two = Visits.in("UTC")
                .photo("a", "2026-05-02T10:00:00", "", "")
                .photo("b", "2026-05-02T10:00:30", "", "")
                .record();
        assertThat(NearDuplicates.of(one.photos(), none, hashes).sets()).hasSize(1);
        assertThat(NearDuplicates.of(two.photos(), none, hashes).sets()).isEmpty();
    }
}
