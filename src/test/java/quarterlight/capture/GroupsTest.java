package quarterlight.capture;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import quarterlight.visit.VisitRecord;
import quarterlight.visit.photo.PhotoId;

class GroupsTest {
    @Test
    void aPauseBeginsANewGroupOverAllCameras() {
        VisitRecord visit = Visits.in("UTC")
                .photo("a", "2026-07-01T12:00:00", "", "")
                .photo("a", "2026-07-01T12:03:00", "", "")
                .photo("b", "2026-07-01T14:01:00", "+02:00", "")
                .photo("b", "2026-07-01T14:02:00", "+02:00", "")
                .photo("a", "2026-07-01T13:00:00", "", "")
                .record();
        CorrectedTimes times = CorrectedTimes.of(visit);
        PhotoGroups groups = PhotoGroups.of(visit, times);
        assertThat(visit.photos())
                .extracting(photo -> groups.of(photo.id()).orElse(0))
                .containsExactly(1, 1, 1, 1, 2);
        assertThat(PhotoGroups.of(visit, times, Duration.ofSeconds(59)).count()).isEqualTo(5);
        assertThat(groups.of(new PhotoId(99))).isEmpty();
    }

    @Test
    void photosThatLookAlikeFormSetsWithTheirDistances() {
        Map<PhotoId, DifferenceHash> hashes = Map.of(
                id(1), new DifferenceHash(0L),
                id(2), new DifferenceHash(0b111L),
                id(3), new DifferenceHash(0b1111111111111L),
                id(4), new DifferenceHash(-1L),
                id(5), new DifferenceHash(0x0123456789abcdefL));
        NearDuplicates found = NearDuplicates.of(hashes, (a, b) -> true);
        assertThat(found.sets()).containsExactly(List.of(id(1), id(2), id(3)));
        assertThat(found.nearest().get(id(3))).isEqualTo(new NearDuplicates.Match(id(2), 10));
        assertThat(found.nearest().get(id(1))).isEqualTo(new NearDuplicates.Match(id(2), 3));
        assertThat(found.nearest()).doesNotContainKey(id(4));
    }

    @Test
    void tenBitsOf64ApartAreAlikeAndElevenAreNot() {
        assertThat(setsAtDistance(0b11_1111_1111L)).hasSize(1);
        assertThat(setsAtDistance(0b111_1111_1111L)).isEmpty();
    }

    private static List<List<PhotoId>> setsAtDistance(long bits) {
        return NearDuplicates.of(Map.of(id(1), new DifferenceHash(0L), id(2), new DifferenceHash(bits)), (a, b) -> true)
                .sets();
    }

    @Test
    void picturesOfAnotherMomentAreNotAlikeHoweverLikeTheyLook() {
        VisitRecord visit = Visits.in("UTC")
                .photo("a", "2026-07-01T16:00:00", "", "")
                .photo("b", "2026-07-01T16:10:00", "", "")
                .photo("b", "2026-07-01T16:20:01", "", "")
                .photo("a", "2026-07-02T15:59:59", "", "")
                .photo("a", "2019-07-01T16:00:00", "", "")
                .record();
        Map<PhotoId, DifferenceHash> same = Map.of(
                id(1), new DifferenceHash(0L),
                id(2), new DifferenceHash(0L),
                id(5), new DifferenceHash(0L));
        assertThat(NearDuplicates.of(visit.photos(), CorrectedTimes.of(visit), same)
                        .sets())
                .as("ten minutes apart by two cameras; years apart by one")
                .containsExactly(List.of(id(1), id(2)));
        Map<PhotoId, DifferenceHash> later = Map.of(
                id(1), new DifferenceHash(0L),
                id(3), new DifferenceHash(0L),
                id(4), new DifferenceHash(0L));
        assertThat(NearDuplicates.of(visit.photos(), CorrectedTimes.of(visit), later)
                        .sets())
                .as("a day by one camera; more than ten minutes by two")
                .containsExactly(List.of(id(1), id(4)));
    }

    private static PhotoId id(long value) {
        return new PhotoId(value);
    }
}
