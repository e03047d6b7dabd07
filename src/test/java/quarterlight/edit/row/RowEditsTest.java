package quarterlight.edit.row;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import quarterlight.car.ZoneId;
import quarterlight.edit.EditRefused;
import quarterlight.store.SampleVisit;
import quarterlight.store.VisitStore;
import quarterlight.visit.CoverageOverride;
import quarterlight.visit.ReportExclusion;
import quarterlight.visit.VisitParts;
import quarterlight.visit.annotation.HiddenRegion;
import quarterlight.visit.annotation.NoteShape;
import quarterlight.visit.annotation.Outline;
import quarterlight.visit.annotation.PhotoNote;
import quarterlight.visit.annotation.PixelPoint;
import quarterlight.visit.photo.PhotoId;
import quarterlight.visit.pin.Pin;
import quarterlight.visit.pin.RecordId;
import quarterlight.visit.pin.Recorded;
import quarterlight.visit.reading.Reading;
import quarterlight.visit.row.RecordKind;

class RowEditsTest {
    private static final ZoneId HOOD = SampleVisit.HOOD;

    @TempDir
    Path folder;

    private VisitStore store;
    private RowEdits edits;

    @BeforeEach
    void open() throws Exception {
        store = VisitStore.create(folder.resolve("v"), SampleVisit.bareFacts(), SampleVisit.CLOCK);
        edits = new RowEdits(store);
    }

    @AfterEach
    void close() {
        store.close();
    }

    private static Reading reading(String um) {
        return SampleVisit.reading(HOOD, um);
    }

    @Test
    void manyRowsAreOneStep() throws Exception {
        RowEdits.Added added = edits.add(RecordKind.READINGS, List.of(reading("100"), reading("101"), reading("100")));
        assertThat(added.ids()).hasSize(3);
        assertThat(added.equalToOlder())
                .as("equal rows of one file are no repetition")
                .isZero();
        assertThat(RowEdits.remark(RecordKind.READINGS, added)).isEmpty();
        assertThat(store.undoLabel()).contains("add reading 100 um on hood and 2 more");
        store.undo();
        assertThat(store.read().readings()).isEmpty();
    }

    @Test
    void rowsAddedAgainAreAddedAndRemarkedOn() throws Exception {
        edits.add(RecordKind.READINGS, List.of(reading("100"), reading("101")));
        RowEdits.Added again = edits.add(RecordKind.READINGS, List.of(reading("100"), reading("101"), reading("7")));
        assertThat(store.read().readings()).hasSize(5);
        assertThat(RowEdits.remark(RecordKind.READINGS, again))
                .contains("2 readings equal rows that the visit had already; they were added again.");
        RowEdits.Added one = edits.add(RecordKind.READINGS, List.of(reading("7")));
        assertThat(RowEdits.remark(RecordKind.READINGS, one))
                .contains("1 reading equals a row that the visit had already; it was added again.");
    }

    @Test
    void noRowsAreNoStep() throws Exception {
        assertThat(edits.add(RecordKind.SIGNS, List.of()).ids()).isEmpty();
        assertThat(store.undoLabel()).isEmpty();
    }

    @Test
    void aPinIsNamedByItsPhotoAndZone() throws Exception {
        PhotoId photo = store.edit("take in", tx -> tx.addPhoto(SampleVisit.fullPhoto(231)));
        Pin pin = VisitParts.pin(photo, HOOD);
        RecordId id = edits.add(RecordKind.PINS, List.of(pin)).ids().get(0);
        assertThat(store.undoLabel()).contains("add pin DSC_231.JPG to hood");
        edits.update(RecordKind.PINS, id, VisitParts.pin(photo, SampleVisit.ROOF));
        assertThat(store.undoLabel()).contains("change pin DSC_231.JPG to roof");
        edits.remove(RecordKind.PINS, List.of(id));
        assertThat(store.undoLabel()).contains("remove pin DSC_231.JPG to roof");
        assertThat(store.read().pins()).isEmpty();
        store.undo();
        assertThat(store.read().pins())
                .singleElement()
                .satisfies(row -> assertThat(row.value().zone()).isEqualTo(SampleVisit.ROOF));
    }

    @Test
    void whatIsDrawnOnAPhotoIsNamedByIt() throws Exception {
        PhotoId photo = store.edit("take in", tx -> tx.addPhoto(SampleVisit.fullPhoto(231)));
        List<PixelPoint> points = List.of(new PixelPoint(1, 1), new PixelPoint(9, 9));
        PhotoNote arrow =
                new PhotoNote(photo, Optional.empty(), NoteShape.ARROW, points, Optional.empty(), Optional.empty());
        PhotoNote box =
                new PhotoNote(photo, Optional.empty(), NoteShape.BOX, points, Optional.empty(), Optional.empty());
        RecordId id = edits.add(RecordKind.PHOTO_NOTES, List.of(arrow)).ids().get(0);
        assertThat(store.undoLabel()).contains("add arrow on DSC_231.JPG");
        edits.update(RecordKind.PHOTO_NOTES, id, box);
        assertThat(store.undoLabel()).contains("change box on DSC_231.JPG");
        edits.remove(RecordKind.PHOTO_NOTES, List.of(id));
        assertThat(store.undoLabel()).contains("remove box on DSC_231.JPG");
        store.undo();
        assertThat(store.read().photoNotes()).extracting(Recorded::value).containsExactly(box);
        List<PixelPoint> ring = List.of(new PixelPoint(1, 1), new PixelPoint(9, 1), new PixelPoint(9, 9));
        HiddenRegion region = new HiddenRegion(photo, new Outline(ring, List.of()), Optional.empty());
        edits.add(RecordKind.HIDDEN, List.of(region));
        assertThat(store.undoLabel()).contains("add hidden region on DSC_231.JPG");
        assertThat(store.read().hiddenOn(photo)).containsExactly(region);
        assertThat(store.read().hiddenOn(new PhotoId(99))).isEmpty();
    }

    @Test
    void wishesAndWhatIsLeftOutAreNamedInWords() throws Exception {
        PhotoId photo = store.edit("take in", tx -> tx.addPhoto(SampleVisit.fullPhoto(231)));
        edits.add(RecordKind.COVERAGE, List.of(new CoverageOverride(Optional.of(HOOD), "spots", 5)));
        assertThat(store.undoLabel()).contains("add wish for 5 spots on hood");
        RecordId id = edits.add(RecordKind.LEFT_OUT, List.of(ReportExclusion.of(HOOD)))
                .ids()
                .get(0);
        assertThat(store.undoLabel()).contains("leave out hood");
        edits.update(RecordKind.LEFT_OUT, id, ReportExclusion.of(photo));
        assertThat(store.undoLabel()).contains("leave out DSC_231.JPG");
        edits.remove(RecordKind.LEFT_OUT, List.of(id));
        assertThat(store.undoLabel()).contains("take DSC_231.JPG back into the report");
        assertThat(store.read().leftOut()).isEmpty();
    }

    @Test
    void photosAreSetAsideAndTakenBack() throws Exception {
        PhotoId photo = store.edit("take in", tx -> tx.addPhoto(SampleVisit.barePhoto(1)));
        edits.setAside(List.of(photo), Optional.of("blurred"));
        assertThat(store.read().photo(photo).orElseThrow().setAside()).contains("blurred");
        assertThat(store.undoLabel()).contains("set aside p1");
        edits.setAside(List.of(photo), Optional.empty());
        assertThat(store.read().photo(photo).orElseThrow().setAside()).isEmpty();
        assertThatThrownBy(() -> edits.setAside(List.of(new PhotoId(9)), Optional.empty()))
                .isInstanceOf(java.util.NoSuchElementException.class);
    }

    @Test
    void aRowThatTheSchemaRefusesKeepsAllOthersOut() throws Exception {
        Pin nowhere = VisitParts.pin(new PhotoId(99), HOOD);
        PhotoId photo = store.edit("take in", tx -> tx.addPhoto(SampleVisit.barePhoto(1)));
        Pin good = VisitParts.pin(photo, HOOD);
        assertThatThrownBy(() -> edits.add(RecordKind.PINS, List.of(good, nowhere)))
                .isInstanceOf(EditRefused.class)
                .hasMessageContaining("FOREIGN KEY");
        assertThat(store.read().pins()).isEmpty();
    }

    @Test
    void aNumberBeyondAllMeasureIsRefusedWithItsRule() {
        assertThatThrownBy(() -> edits.add(RecordKind.READINGS, List.of(reading("1000000000000"))))
                .isInstanceOf(EditRefused.class)
                .hasMessageStartingWith("The visit does not take a reading that breaks the rule \"thickness_um BETWEEN")
                .hasMessageNotContaining("SQLITE");
        assertThat(store.undoLabel()).isEmpty();
    }

    @Test
    void everyKindHasAWordThatFindsIt() {
        Map<String, String> words = new TreeMap<>();
        RecordKind.all().forEach(kind -> words.put(kind.word(), kind.count(2)));
        assertThat(words.keySet())
                .containsExactly(
                        "claims",
                        "coverage",
                        "decisions",
                        "dropped",
                        "features",
                        "gauge",
                        "hidden",
                        "left-out",
                        "marks",
                        "notes",
                        "odometer",
                        "pins",
                        "readings",
                        "released",
                        "signs",
                        "statements",
                        "traces",
                        "trials");
        assertThat(RecordKind.find("gauge")).contains(RecordKind.GAUGE);
        assertThat(RecordKind.find("Gauge")).isEmpty();
        assertThat(words).containsEntry("gauge", "2 gauge checks");
    }
}
