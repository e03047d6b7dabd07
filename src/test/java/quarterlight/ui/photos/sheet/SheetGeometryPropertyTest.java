package quarterlight.ui.photos.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Point;
import java.awt.Rectangle;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import quarterlight.store.SampleVisit;
import quarterlight.ui.photos.list.PhotoItem;
import quarterlight.visit.photo.Photo;
import quarterlight.visit.photo.PhotoId;

/** The sheet against a search through all cells. */
class SheetGeometryPropertyTest {
    private static List<PhotoItem> items(Random random, int count) {
        List<PhotoItem> items = new ArrayList<>();
        int group = 1;
        Instant at = Instant.parse("2026-03-02T10:00:00Z");
        for (int i = 0; i < count; i++) {
            boolean pause = i > 0 && random.nextInt(5) == 0;
            group += pause ? 1 : 0;
            at = at.plusSeconds(pause ? 90 : 5);
            items.add(new PhotoItem(
                    new Photo(new PhotoId(i + 1), SampleVisit.barePhoto(i + 1), Optional.empty()),
                    Optional.of(at),
                    Optional.of(LocalDateTime.ofInstant(at, ZoneOffset.UTC)),
                    OptionalInt.of(group),
                    List.of(),
                    List.of(),
                    false));
        }
        return items;
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5})
    void aPointAndARectangleFindTheCellsThatASearchFinds(long seed) {
        Random random = new Random(seed);
        List<PhotoItem> items = items(random, 1 + random.nextInt(120));
        SheetGeometry sheet = SheetGeometry.of(items, 100 + random.nextInt(900), 60 + random.nextInt(200));
        for (int i = 0; i < 300; i++) {
            Point p = new Point(random.nextInt(1000), random.nextInt(sheet.height() + 50));
            OptionalInt searched = OptionalInt.empty();
            for (int place = 0; place < items.size(); place++) {
                if (sheet.cell(place).contains(p)) {
                    searched = OptionalInt.of(place);
                }
            }
            assertThat(sheet.at(p)).as("seed %d, %s", seed, p).isEqualTo(searched);
            Rectangle box = new Rectangle(p.x, p.y, 1 + random.nextInt(300), 1 + random.nextInt(300));
            List<Integer> met = new ArrayList<>();
            for (int place = 0; place < items.size(); place++) {
                if (sheet.cell(place).intersects(box)) {
                    met.add(place);
                }
            }
            assertThat(sheet.within(box)).as("seed %d, %s", seed, box).isEqualTo(met);
        }
    }

    @ParameterizedTest
    @ValueSource(longs = {6, 7, 8})
    void noTwoCellsOverlapAndEachLiesOnTheSheet(long seed) {
        Random random = new Random(seed);
        List<PhotoItem> items = items(random, 60);
        int width = 200 + random.nextInt(900);
        SheetGeometry sheet = SheetGeometry.of(items, width, 60 + random.nextInt(120));
        for (int a = 0; a < items.size(); a++) {
            assertThat(new Rectangle(0, 0, width, sheet.height()).contains(sheet.cell(a)))
                    .as("seed %d, cell %d", seed, a)
                    .isTrue();
            for (int b = 0; b < a; b++) {
                assertThat(sheet.cell(a).intersects(sheet.cell(b))).isFalse();
            }
        }
    }

    @Test
    void everyGroupBeginsARowThatTellsThePause() {
        List<PhotoItem> items = items(new Random(9), 40);
        SheetGeometry sheet = SheetGeometry.of(items, 600, 120);
        List<SheetGeometry.Row> rows = sheet.rows(0, sheet.height());
        for (int i = 1; i < items.size(); i++) {
            boolean begins = !items.get(i).group().equals(items.get(i - 1).group());
            int place = i;
            Optional<SheetGeometry.Row> row =
                    rows.stream().filter(r -> r.first() == place).findFirst();
            if (begins) {
                assertThat(row).isPresent();
                assertThat(row.get().pause().orElseThrow().length()).contains(Duration.ofSeconds(90));
            } else {
                assertThat(row.flatMap(SheetGeometry.Row::pause)).isEmpty();
            }
        }
    }

    @Test
    void anEmptySheetHasNothingUnderAnyPoint() {
        SheetGeometry sheet = SheetGeometry.of(List.of(), 600, 120);
        assertThat(sheet.at(new Point(10, 10))).isEmpty();
        assertThat(sheet.rows(0, 500)).isEmpty();
    }
}
