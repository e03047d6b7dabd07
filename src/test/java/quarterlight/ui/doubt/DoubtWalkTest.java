package quarterlight.ui.doubt;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import quarterlight.car.ZoneId;
import quarterlight.coverage.EvidenceKind;
import quarterlight.coverage.Gap;
import quarterlight.table.ZoneTable;
import quarterlight.ui.doubt.DoubtWalk.Correction;
import quarterlight.ui.kit.Texts;
import quarterlight.ui.kit.place.ChangedRows;
import quarterlight.ui.kit.visit.Doubt;
import quarterlight.ui.kit.visit.Station;
import quarterlight.visit.photo.PhotoId;
import quarterlight.visit.pin.RecordId;
import quarterlight.visit.row.RecordKind;

class DoubtWalkTest {
    private static final Texts TEXTS = Texts.load();
    private static final Doubt FIRST = photo(1);
    private static final Doubt SECOND = photo(2);
    private static final Doubt THIRD = photo(3);

    private final DoubtWalk walk = new DoubtWalk(TEXTS);

    private static Doubt photo(long id) {
        return new Doubt(
                Station.PHOTOS,
                new ChangedRows(Optional.empty(), List.of(), Set.of(), List.of(new PhotoId(id))),
                Optional.empty(),
                "photo " + id);
    }

    private static Doubt mark(String verdict) {
        return new Doubt(
                Station.MARKS,
                new ChangedRows(Optional.of(RecordKind.MARKS), List.of(new RecordId(7)), Set.of(), List.of()),
                Optional.empty(),
                "Engine block: " + verdict);
    }

    private static Doubt gap(int have) {
        Gap gap = new Gap(
                ZoneTable.load().get(new ZoneId("hood")),
                EvidenceKind.SPOTS,
                5,
                have,
                Optional.empty(),
                Optional.empty(),
                "");
        return new Doubt(
                Station.NOTES,
                new ChangedRows(Optional.of(RecordKind.COVERAGE), List.of(), Set.of(new ZoneId("hood")), List.of()),
                Optional.of(gap),
                "Hood: " + have + " of 5");
    }

    private String said(Doubt... open) {
        walk.next(List.of(open));
        return walk.say(true);
    }

    @Test
    void theFootNoLongerClaimsADoubtThatWasSettled() {
        said(FIRST, SECOND, THIRD);
        String before = said(FIRST, SECOND, THIRD);
        assertThat(before).isEqualTo(TEXTS.get("doubt.open", 3, "photo 2"));
        assertThat(walk.follow(List.of(FIRST, SECOND, THIRD), true))
                .as("nothing changed")
                .isEmpty();

        String settled = TEXTS.get("doubt.settled", 2, "photo 2");
        assertThat(walk.follow(List.of(FIRST, THIRD), true)).contains(new Correction(before, settled));
        assertThat(walk.follow(List.of(FIRST, THIRD), true)).as("said already").isEmpty();
        assertThat(walk.follow(List.of(FIRST, SECOND, THIRD), true))
                .as("taken back")
                .contains(new Correction(settled, before));
        assertThat(walk.follow(List.of(), true)).contains(new Correction(before, TEXTS.get("doubt.none")));
    }

    @Test
    void theCountGoesDownThoughAnotherDoubtIsSettled() {
        String before = said(FIRST, SECOND);
        assertThat(walk.follow(List.of(FIRST), true))
                .contains(new Correction(before, TEXTS.get("doubt.open", 1, "photo 1")));
    }

    @Test
    void nothingIsCorrectedBeforeAnythingWasSaid() {
        assertThat(walk.follow(List.of(FIRST), true)).isEmpty();
    }

    @Test
    void afterASettledDoubtComesTheOneThatFollowedIt() {
        said(FIRST, SECOND, THIRD);
        said(FIRST, SECOND, THIRD);
        walk.follow(List.of(FIRST, THIRD), true);
        said(FIRST, THIRD);
        assertThat(walk.inHand()).contains(THIRD);
        said(FIRST);
        assertThat(walk.inHand()).as("from the last to the first").contains(FIRST);
        said();
        assertThat(walk.inHand()).isEmpty();
    }

    @Test
    void oneThatWasLeftDoesNotComeBack() {
        said(FIRST, SECOND);
        walk.leave(List.of(FIRST, SECOND));
        assertThat(walk.inHand()).contains(SECOND);
        assertThat(said(FIRST, SECOND)).isEqualTo(TEXTS.get("doubt.open", 1, "photo 2"));
        walk.leave(List.of(FIRST, SECOND));
        assertThat(walk.inHand()).isEmpty();
    }

    @Test
    void aGapHalfFilledAndAMarkReadAnewAreStillTheSameMatter() {
        String before = said(gap(0), mark("malformed"));
        assertThat(walk.follow(List.of(gap(1), mark("malformed")), true))
                .contains(new Correction(before, TEXTS.get("doubt.open", 2, "Hood: 1 of 5")));
        said(gap(1), mark("malformed"));
        walk.leave(List.of(gap(1), mark("malformed")));
        said(gap(1), mark("too late"));
        assertThat(walk.inHand()).contains(gap(1));
    }
}
