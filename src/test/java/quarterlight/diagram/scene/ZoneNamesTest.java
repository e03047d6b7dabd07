package quarterlight.diagram.scene;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import quarterlight.car.ZoneId;
import quarterlight.car.body.Body;
import quarterlight.car.body.BodyStyle;
import quarterlight.diagram.BodyDiagram;
import quarterlight.diagram.ZonePlaces;
import quarterlight.diagram.file.DiagramFile;
import quarterlight.diagram.file.DiagramRefused;
import quarterlight.diagram.ink.DiagramInk;
import quarterlight.diagram.ink.InkPalette;
import quarterlight.diagram.ink.Ramp;
import quarterlight.diagram.ink.TextMeasure;
import quarterlight.table.ZoneTable;

/** Every zone of the program's diagrams bears its name or a number of the key in every view, at page size and in windows large and small. */
class ZoneNamesTest {
    private static final double[][] ROOMS = {{1920, 1000}, {1300, 820}, {1100, 720}, {800, 540}};
    private final TextMeasure measure = TextMeasure.bundled();

    @ParameterizedTest
    @EnumSource(BodyStyle.class)
    void everyZoneIsNamedInEveryViewAndNoTwoWordsOverlap(BodyStyle style) throws DiagramRefused {
        BodyDiagram diagram = DiagramFile.shipped(Body.usual(style));
        ZonePlaces places = ZonePlaces.of(diagram);
        Map<ZoneId, String> names = new HashMap<>();
        ZoneTable.load().zonesOf(diagram.body()).forEach(zone -> names.put(zone.id(), zone.label()));
        DiagramInk ink = new DiagramInk(Map.of(), names, names, List.of(), Optional.empty());
        for (double[] room : ROOMS) {
            DiagramScene scene = DiagramScene.fitted(
                    diagram, places, room[0], room[1], false, ink, InkPalette.LIGHT, Ramp.load(), measure);
            String where = style.word() + " at " + room[0];
            assertThat(scene.unlabeled()).as(where).isEmpty();
            Set<String> explained = words(scene.key()).stream()
                    .map(DrawnItem.Words::text)
                    .filter(text -> text.matches("\\d+"))
                    .collect(Collectors.toSet());
            Set<String> known = new HashSet<>(names.values());
            for (ViewScene view : scene.views()) {
                List<DrawnItem.Words> words = words(view.drawn());
                for (DrawnItem.Words word : words.subList(1, words.size())) {
                    assertThat(known.contains(word.text()) || explained.contains(word.text()))
                            .as("%s, %s: %s", where, view.view(), word.text())
                            .isTrue();
                    assertThat(view.cell().contains(box(word)))
                            .as("%s, %s: %s", where, view.view(), word.text())
                            .isTrue();
                }
                assertApart(words, where + " " + view.view());
            }
            assertApart(words(scene.key()), where + " key");
        }
    }

    private static List<DrawnItem.Words> words(List<DrawnItem> drawn) {
        return drawn.stream()
                .filter(DrawnItem.Words.class::isInstance)
                .map(DrawnItem.Words.class::cast)
                .collect(Collectors.toCollection(ArrayList::new));
    }

    private static void assertApart(List<DrawnItem.Words> words, String where) {
        List<Rectangle2D> boxes = words.stream().map(ZoneNamesTest::box).toList();
        List<String> together = new ArrayList<>();
        for (int i = 0; i < words.size(); i++) {
            for (int j = i + 1; j < words.size(); j++) {
                if (boxes.get(i).intersects(boxes.get(j))) {
                    together.add(words.get(i).text() + " and " + words.get(j).text());
                }
            }
        }
        assertThat(together).as(where).isEmpty();
    }

    private static Rectangle2D box(DrawnItem.Words words) {
        return new Rectangle2D.Double(
                words.left(), words.baseline() - 0.7 * words.size(), words.width(), 0.7 * words.size());
    }
}
