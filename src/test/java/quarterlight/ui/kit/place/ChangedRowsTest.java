package quarterlight.ui.kit.place;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import quarterlight.car.ZoneId;
import quarterlight.edit.row.RowEdits;
import quarterlight.store.SampleVisit;
import quarterlight.ui.kit.OpenedVisit;
import quarterlight.visit.VisitParts;
import quarterlight.visit.VisitRecord;
import quarterlight.visit.photo.PhotoId;
import quarterlight.visit.row.RecordKind;

@Timeout(60)
class ChangedRowsTest {
    private static final ZoneId HOOD = new ZoneId("hood");

    @TempDir
    Path folder;

    private OpenedVisit opened;

    @BeforeEach
    void open() throws Exception {
        opened = OpenedVisit.coupe(
                folder,
                store -> store.change("take in", tx -> {
                    tx.addPhoto(SampleVisit.barePhoto(1));
                    tx.addPhoto(SampleVisit.barePhoto(2));
                }));
    }

    @AfterEach
    void close() throws Exception {
        opened.close();
    }

    private VisitRecord now() throws Exception {
        return OpenedVisit.asked(() -> opened.visit().visit());
    }

    private void pin(long photo) throws Exception {
        int before = now().pins().size();
        OpenedVisit.asked(() -> {
            opened.visit()
                    .edit(
                            store -> new RowEdits(store)
                                    .add(RecordKind.PINS, List.of(VisitParts.pin(new PhotoId(photo), HOOD))),
                            done -> {});
            return true;
        });
        OpenedVisit.until(() -> opened.visit().visit().pins().size() == before + 1);
    }

    @Test
    void anAddedAndARemovedRowHaveTheSamePlace() throws Exception {
        VisitRecord before = now();
        pin(2);
        VisitRecord after = now();
        ChangedRows added = ChangedRows.between(before, after).orElseThrow();
        assertThat(added.isOf(RecordKind.PINS)).isTrue();
        assertThat(added.zones()).containsExactly(HOOD);
        assertThat(added.photos()).containsExactly(new PhotoId(2));
        assertThat(added.rows()).hasSize(1);
        Subject.OfRow row = new Subject.OfRow(RecordKind.PINS, added.rows().get(0));
        assertThat(ChangedRows.of(row, after)).as("the row alone").contains(added);
        assertThat(ChangedRows.of(row, before)).isEmpty();
        ChangedRows gone = ChangedRows.between(after, before).orElseThrow();
        assertThat(gone.zones()).containsExactly(HOOD);
        assertThat(gone.photos()).containsExactly(new PhotoId(2));
        assertThat(gone.rows()).as("none that the later state holds").isEmpty();
    }

    @Test
    void rowsThatDidNotChangeHaveNoPart() throws Exception {
        pin(1);
        VisitRecord before = now();
        pin(2);
        assertThat(ChangedRows.between(before, now()).orElseThrow().photos()).containsExactly(new PhotoId(2));
        assertThat(ChangedRows.between(before, before)).isEqualTo(Optional.empty());
    }
}
