package quarterlight.ui.doubt;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import quarterlight.car.ZoneId;
import quarterlight.edit.row.RowEdits;
import quarterlight.store.SampleVisit;
import quarterlight.ui.kit.OpenedVisit;
import quarterlight.ui.kit.Texts;
import quarterlight.ui.kit.visit.Doubt;
import quarterlight.ui.kit.visit.Station;
import quarterlight.visit.VisitParts;
import quarterlight.visit.VisitRecord;
import quarterlight.visit.photo.PhotoId;
import quarterlight.visit.row.RecordKind;

@Timeout(60)
class DoubtsTest {
    @TempDir
    Path folder;

    private static List<Doubt> of(VisitRecord visit) {
        return Doubts.of(Texts.load(), ZoneId::value, visit, Optional.empty(), List.of());
    }

    @Test
    void photosWithoutAPinAreOpenOneAfterTheOtherUntilTheyArePinnedOrSetAside() throws Exception {
        try (OpenedVisit opened = OpenedVisit.coupe(folder, store -> {
            store.change("take in", tx -> {
                for (int i = 1; i <= 4; i++) {
                    tx.addPhoto(SampleVisit.barePhoto(i));
                }
            });
            RowEdits edits = new RowEdits(store);
            edits.add(RecordKind.PINS, List.of(VisitParts.pin(new PhotoId(2), new ZoneId("hood"))));
            edits.setAside(List.of(new PhotoId(3)), Optional.of("blurry"));
        })) {
            List<Doubt> doubts = of(OpenedVisit.asked(() -> opened.visit().visit()));
            assertThat(doubts).allMatch(doubt -> doubt.station() == Station.PHOTOS);
            assertThat(doubts)
                    .extracting(doubt -> doubt.where().photos())
                    .containsExactly(List.of(new PhotoId(1)), List.of(new PhotoId(4)));
            Optional<Doubt> first = Optional.of(doubts.get(0));
            Texts texts = Texts.load();
            String known = Doubts.said(texts, doubts, first, true);
            String soFar = Doubts.said(texts, doubts, first, false);
            assertThat(known).contains("2", first.orElseThrow().sentence()).isNotEqualTo(soFar);
            assertThat(soFar)
                    .isEqualTo(texts.get("doubt.open.so-far", 2, first.get().sentence()));
            assertThat(Doubts.said(texts, List.of(), Optional.empty(), true)).isEqualTo(texts.get("doubt.none"));
            assertThat(Doubts.said(texts, List.of(), Optional.empty(), false))
                    .as("none is no answer while it is worked out")
                    .isEqualTo(texts.get("working.out"));
        }
    }
}
