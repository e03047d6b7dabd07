package quarterlight.ui.photos.list;

import static org.assertj.core.api.Assertions.assertThat;
import static quarterlight.ui.kit.OpenedVisit.asked;
import static quarterlight.ui.kit.OpenedVisit.until;

import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.LongStream;
import javax.swing.SwingUtilities;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import quarterlight.capture.NearDuplicates;
import quarterlight.car.ZoneId;
import quarterlight.photo.MediaType;
import quarterlight.photo.intake.FilePreview;
import quarterlight.photo.intake.FolderScan;
import quarterlight.store.SampleVisit;
import quarterlight.ui.kit.OpenedVisit;
import quarterlight.ui.photos.pins.PinWork;
import quarterlight.visit.photo.PhotoId;

/** What acts is what is seen and marked: photos in hand never outlive the filter, and acting goes on within it. */
@Timeout(60)
class InHandWithinFilterTest {
    private static final ZoneId HOOD = new ZoneId("hood");
    private static final ZoneId ROOF = new ZoneId("roof");
    private static final int PHOTOS = 9;

    @TempDir
    Path folder;

    private OpenedVisit opened;
    private PhotosModel model;
    private PinWork work;

    @BeforeEach
    void open() throws Exception {
        opened = OpenedVisit.coupe(
                folder,
                store -> store.change("take in", tx -> {
                    for (int i = 1; i <= PHOTOS; i++) {
                        tx.addPhoto(SampleVisit.barePhoto(i));
                    }
                }));
        SwingUtilities.invokeAndWait(() -> {
            model = new PhotosModel(opened.visit());
            work = new PinWork(opened.parts(), model);
        });
    }

    @AfterEach
    void close() throws Exception {
        opened.close();
    }

    private void does(Runnable deed) throws Exception {
        SwingUtilities.invokeAndWait(deed);
    }

    private static List<PhotoId> ids(long... numbers) {
        return LongStream.of(numbers).mapToObj(PhotoId::new).toList();
    }

    private List<PhotoId> inHand() throws Exception {
        return asked(() -> opened.visit().selection().photos());
    }

    private List<PhotoId> shown() throws Exception {
        return asked(() -> model.shown().items().stream().map(PhotoItem::id).toList());
    }

    private void dark(long... numbers) throws Exception {
        PhotoHints none = PhotoHints.NONE;
        PhotoHints hints =
                new PhotoHints(none.sharpness(), none.duplicates(), Map.of(), Set.copyOf(ids(numbers)), Set.of());
        does(() -> model.hints(hints));
    }

    @Test
    void theFirstPhotoOfAnImportIsInHandOnceItIsHeld() throws Exception {
        FilePreview first = new FilePreview(
                new FolderScan.Found(Path.of("card", "p0"), MediaType.JPEG),
                SampleVisit.fullPhoto(10),
                Optional.empty());
        does(() -> opened.visit().coming(List.of(first)));
        assertThat(asked(() -> model.shown().items().get(0).isComing())).isTrue();
        assertThat(inHand()).as("the first of the list is still on its way").isEmpty();
        does(() -> opened.visit().coming(List.of()));
        assertThat(inHand()).containsExactly(new PhotoId(1));
        does(() -> opened.visit().selection().photos(List.of()));
        does(() -> opened.visit().coming(List.of()));
        assertThat(inHand()).as("nothing is taken in hand again").isEmpty();
    }

    @Test
    void aClickPinsNothingWhileNothingIsShown() throws Exception {
        does(() -> {
            opened.visit().selection().photos(ids(1, 2, 3, 4, 5, 6, 7, 8, 9));
            model.filter(PhotoFilter.ALL.withName("no such name"));
        });
        assertThat(shown()).isEmpty();
        assertThat(inHand()).isEmpty();
        does(() -> work.pinSelected(HOOD, Optional.empty()));
        assertThat(asked(() -> opened.visit().underWay())).isEmpty();
    }

    @Test
    void whatTheFilterTakesStaysInHandAndTheRestDoesNot() throws Exception {
        String name = asked(() -> model.all().find(new PhotoId(2)).orElseThrow().name());
        does(() -> {
            opened.visit().selection().photos(ids(1, 2, 3));
            model.filter(PhotoFilter.ALL.withName(name));
        });
        assertThat(inHand()).containsExactly(new PhotoId(2));
        assertThat(shown()).containsExactly(new PhotoId(2));
    }

    @Test
    void settingAsideGoesOnAmongTheDarkOnesAndEndsWithNothingInHand() throws Exception {
        dark(2, 5, 8);
        does(() -> model.filter(PhotoFilter.ALL.with(PhotoScope.DARK)));
        assertThat(inHand()).as("the first of the dark ones").containsExactly(new PhotoId(2));
        does(() -> work.setAside("too dark"));
        assertThat(inHand()).containsExactly(new PhotoId(5));
        does(() -> work.setAside("too dark"));
        assertThat(inHand()).containsExactly(new PhotoId(8));
        does(() -> work.setAside("too dark"));
        assertThat(inHand()).isEmpty();
        until(() -> opened.visit().visit().photos().stream()
                        .filter(photo -> photo.setAside().isPresent())
                        .count()
                == 3);
        assertThat(shown()).isEmpty();
        does(() -> work.setAside("too dark"));
        does(() -> work.pinSelected(HOOD, Optional.empty()));
        assertThat(asked(() -> opened.visit().underWay())).isEmpty();
    }

    @Test
    void ofPhotosThatAreAlikeTheLastOneOfEachSetIsLeft() throws Exception {
        PhotoHints none = PhotoHints.NONE;
        List<List<PhotoId>> sets = List.of(ids(1, 2), ids(5, 6, 7));
        Map<PhotoId, NearDuplicates.Match> nearest = new HashMap<>();
        sets.forEach(set -> set.forEach(
                id -> nearest.put(id, new NearDuplicates.Match(set.get(id.equals(set.get(0)) ? 1 : 0), 3))));
        PhotoHints alike =
                new PhotoHints(none.sharpness(), new NearDuplicates(sets, nearest), Map.of(), Set.of(), Set.of());
        does(() -> {
            model.hints(alike);
            model.filter(PhotoFilter.ALL.with(PhotoScope.ALIKE));
        });
        assertThat(shown()).isEqualTo(ids(1, 2, 5, 6, 7));
        does(() -> work.setAside("near-duplicate"));
        assertThat(inHand()).as("photo 2 is like no other any more").isEqualTo(ids(5));
        assertThat(shown()).isEqualTo(ids(5, 6, 7));
        does(() -> work.setAside("near-duplicate"));
        assertThat(inHand()).as("photos 6 and 7 are still alike").isEqualTo(ids(6));
        does(() -> work.setAside("near-duplicate"));
        assertThat(inHand()).isEmpty();
        does(() -> work.setAside("near-duplicate"));
        until(() -> opened.visit().visit().photos().stream()
                        .filter(photo -> photo.setAside().isPresent())
                        .count()
                == 3);
        does(() -> model.hints(alike));
        assertThat(shown())
                .as("hints that are worked out anew tell of all photos")
                .isEmpty();
    }

    @Test
    void aPhotoPinnedAmongTheUnpinnedStaysSeenWhileItIsInHand() throws Exception {
        does(() -> {
            model.filter(PhotoFilter.ALL.with(PhotoScope.UNPINNED));
            model.select(new PhotoId(3));
            work.pinAndStay(HOOD);
        });
        until(() -> opened.visit().visit().pins().size() == 1);
        assertThat(inHand()).containsExactly(new PhotoId(3));
        assertThat(shown()).hasSize(PHOTOS).contains(new PhotoId(3));
        does(() -> model.step(1));
        assertThat(inHand()).containsExactly(new PhotoId(4));
        assertThat(shown()).hasSize(PHOTOS - 1).doesNotContain(new PhotoId(3));
    }

    @Test
    void aPinOntoAPinnedPhotoStaysThereAndOneOntoAFreshPhotoGoesOn() throws Exception {
        does(() -> {
            model.select(new PhotoId(1));
            work.pinSelected(HOOD, Optional.empty());
        });
        assertThat(inHand()).containsExactly(new PhotoId(2));
        does(() -> {
            model.select(new PhotoId(1));
            work.pinSelected(ROOF, Optional.empty());
        });
        assertThat(inHand()).containsExactly(new PhotoId(1));
    }

    @Test
    void anotherZoneBringsUpThePhotosOfThatZone() throws Exception {
        does(() -> {
            work.pin(ids(1, 2), HOOD, Optional.empty());
            work.pin(ids(3), ROOF, Optional.empty());
            opened.visit().selection().zones(Set.of(HOOD));
            model.filter(PhotoFilter.ALL.withZonesOnly(true));
        });
        assertThat(inHand()).containsExactly(new PhotoId(1));
        does(() -> opened.visit().selection().zones(Set.of(ROOF)));
        assertThat(inHand()).containsExactly(new PhotoId(3));
        assertThat(shown()).containsExactly(new PhotoId(3));
        does(() -> opened.visit().selection().zones(Set.of()));
        assertThat(inHand()).isEmpty();
    }

    @Test
    void aPhotoChosenElsewhereIsShownBesideWhatTheFilterTakes() throws Exception {
        dark(2, 5);
        does(() -> {
            model.filter(PhotoFilter.ALL.with(PhotoScope.DARK));
            model.select(new PhotoId(7));
        });
        assertThat(shown()).containsExactly(new PhotoId(2), new PhotoId(5), new PhotoId(7));
        does(() -> model.select(new PhotoId(2)));
        assertThat(shown()).containsExactly(new PhotoId(2), new PhotoId(5));
    }
}
