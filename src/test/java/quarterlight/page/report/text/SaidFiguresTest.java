package quarterlight.page.report.text;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import quarterlight.car.body.BodyStyle;
import quarterlight.findings.Findings;
import quarterlight.page.Anchor;
import quarterlight.page.ThicknessRamp;
import quarterlight.rust.TestVisits;
import quarterlight.table.ZoneTable;
import quarterlight.table.list.DatePatternTable;
import quarterlight.units.ThicknessUnit;
import quarterlight.visit.VisitParts;
import quarterlight.visit.VisitRecord;
import quarterlight.visit.annotation.NoteShape;
import quarterlight.visit.annotation.PhotoNote;
import quarterlight.visit.annotation.PhotoScale;
import quarterlight.visit.annotation.PixelPoint;
import quarterlight.visit.photo.MediaKind;
import quarterlight.visit.photo.PhotoId;

/** What the pages say of their figures: how often likelihoods came true, and what stands after a plus-minus. */
class SaidFiguresTest {
    private static final Pattern ROW =
            Pattern.compile("\\| (\\d+) to (\\d+) \\| (\\d+) \\| \\d+ \\| (\\d+) \\|", Pattern.MULTILINE);

    /** The table of the study, as its page has it: from, to, panels, of 100 refinished. */
    private static List<List<Integer>> studied() throws IOException {
        String page = Files.readString(
                Path.of(System.getProperty("quarterlight.basedir", "."), "docs/finish-history-study.md"));
        String table = page.substring(page.indexOf("## Of 100 panels"), page.indexOf("## By what was done"));
        List<List<Integer>> rows = new ArrayList<>();
        for (Matcher row = ROW.matcher(table); row.find(); ) {
            List<Integer> cells = new ArrayList<>();
            for (int cell = 1; cell <= row.groupCount(); cell++) {
                cells.add(Integer.valueOf(row.group(cell)));
            }
            rows.add(cells);
        }
        return rows;
    }

    @Test
    void thePagesPrintTheReliabilityOfTheStudy() throws IOException {
        Reliability printed = Reliability.load();
        assertThat(printed.bands().stream()
                        .map(band -> List.of(band.from(), band.to(), band.panels(), band.ofHundred()))
                        .toList())
                .hasSize(10)
                .isEqualTo(studied());
        assertThat(printed.sentence()).contains("90 to 100, " + studied().get(9).get(3), "0 to 10, ");
    }

    private static PhotoNote note(NoteShape shape) {
        return new PhotoNote(
                new PhotoId(1),
                Optional.empty(),
                shape,
                List.of(new PixelPoint(100, 100), new PixelPoint(300, 200)),
                Optional.empty(),
                shape == NoteShape.MEASURE
                        ? Optional.of(new PhotoScale.KnownLength(new PixelPoint(0, 0), new PixelPoint(500, 0), 250))
                        : Optional.empty());
    }

    private static String method(NoteShape shape) {
        VisitRecord visit = new VisitParts(TestVisits.facts(BodyStyle.COUPE))
                .photos(List.of(TestVisits.photo(1, MediaKind.PHOTO, 800, 600)))
                .photoNotes(VisitParts.rows(List.of(note(shape))))
                .record();
        Findings car = Findings.of(visit, ZoneTable.load(), Map.of(), DatePatternTable.load());
        return MethodTexts.method(car, ThicknessRamp.of(List.of(car), ThicknessUnit.UM), Anchor.NONE).stream()
                .flatMap(paragraph -> paragraph.sentences().stream())
                .reduce("", (a, b) -> a + " " + b);
    }

    @Test
    void whatStandsAfterPlusMinusIsSaid() {
        assertThat(method(NoteShape.BOX))
                .contains("± is one standard deviation, from the marking and from a tilt")
                .doesNotContain("two standard deviations");
        assertThat(method(NoteShape.MEASURE))
                .contains("one standard deviation", "± is two standard deviations, from the marking and from a tilt");
    }
}
