package quarterlight.diagram.file;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import quarterlight.car.View;
import quarterlight.car.ZoneCatalog;
import quarterlight.car.ZoneId;
import quarterlight.car.body.BodyStyle;
import quarterlight.diagram.PlainDiagram;
import quarterlight.diagram.file.DiagramFinding.Kind;
import quarterlight.table.ZoneTable;

class DiagramCheckTest {
    private final ZoneCatalog catalog = ZoneTable.load();
    private final String svg = PlainDiagram.svg(BodyStyle.COUPE);

    private List<DiagramFinding> check(String text) {
        return DiagramCheck.check(PlainDiagram.read(text), catalog);
    }

    private static List<Kind> kinds(List<DiagramFinding> findings) {
        return findings.stream().map(DiagramFinding::kind).distinct().toList();
    }

    private String with(String id, String d) {
        return svg.replaceAll("(<path id=\"" + id + "\"[^>]* d=)\"[^\"]*\"", "$1\"" + d + "\"");
    }

    @ParameterizedTest
    @EnumSource(BodyStyle.class)
    void aCompleteDiagramHasNoFindings(BodyStyle style) {
        assertThat(check(PlainDiagram.svg(style))).isEmpty();
    }

    @Test
    void aMissingViewAndItsZonesAreNamed() {
        List<DiagramFinding> findings = check(svg.replaceAll("(?s)<g data-view=\"cabin\".*?</g>", ""));
        assertThat(findings.get(0).kind()).isEqualTo(Kind.VIEW_MISSING);
        assertThat(findings.get(0).view()).contains(View.CABIN);
        assertThat(findings).anyMatch(f -> f.zone().equals(Optional.of(new ZoneId("dash"))));
    }

    @Test
    void aZoneMissingInOneVariantIsNamedWithTheVariant() {
        List<DiagramFinding> findings = check(svg.replaceAll("<path id=\"top-front-lid\"[^>]*>", ""));
        assertThat(findings).singleElement().satisfies(f -> {
            assertThat(f.kind()).isEqualTo(Kind.ZONE_MISSING);
            assertThat(f.text()).contains("front-lid").contains("unibody with the engine at the rear");
            assertThat(f.text()).doesNotContain("at the front");
        });
    }

    @Test
    void anOutlineWithoutAreaOrOpenOrCrossingItselfIsFound() {
        assertThat(kinds(check(with("top-roof", "M0 0L0 0L0 0Z")))).contains(Kind.NO_AREA);
        assertThat(kinds(check(with("top-roof", "M0 0L100 0L100 100L0 100")))).contains(Kind.NOT_CLOSED);
        assertThat(kinds(check(with("top-roof", "M0 0L300 200L300 0L0 100Z")))).contains(Kind.CROSSES_ITSELF);
        assertThat(kinds(check(with("top-roof", "M-100 0L300 0L300 200Z")))).contains(Kind.OUTSIDE_VIEW);
    }

    @Test
    void panelsThatOverlapAreFoundAtHalfAPercent() {
        // cells of the top view are 625 mm wide; the hood is the first and front-lid, engine-lid lie beside it
        String hood = svg.replaceAll(
                "(?s).*<path id=\"left-fender-left\"[^>]* d=\"M([0-9.]+) ([0-9.]+) L([0-9.]+) [^\"]*\".*", "$1 $2 $3");
        String[] n = hood.split(" ");
        double x = Double.parseDouble(n[0]);
        double y = Double.parseDouble(n[1]);
        double right = Double.parseDouble(n[2]);
        double width = right - x;
        assertThat(kinds(check(with("left-fender-left", cell(x, y, right + 0.004 * width)))))
                .doesNotContain(Kind.OVERLAP);
        assertThat(kinds(check(with("left-fender-left", cell(x, y, right + 0.01 * width)))))
                .contains(Kind.OVERLAP);
    }

    private static String cell(double x, double y, double right) {
        return "M" + x + " " + y + "L" + right + " " + y + "L" + right + " " + (y + 100) + "L" + x + " " + (y + 100)
                + "Z";
    }

    @Test
    void aBareSilhouetteIsFound() {
        String bare = svg.replaceAll("<path class=\"glass\" d=\"M0.0 0.0 L2000[^>]*>", "")
                .replaceAll(
                        "<path id=\"rear-bumper-rear\"[^>]* d=\"[^\"]*\"",
                        "<path id=\"rear-bumper-rear\" class=\"zone\" data-zone=\"bumper-rear\" d=\"M0 0L2000 0L2000 1400L0 1400Z\"");
        assertThat(check(bare)).anySatisfy(f -> {
            assertThat(f.kind()).isEqualTo(Kind.UNCOVERED);
            assertThat(f.text()).contains("93.3 %").contains("rear");
        });
    }

    @Test
    void unknownZonesAndForeignIdsAreFound() {
        assertThat(kinds(check(svg.replace("data-zone=\"roof\"", "data-zone=\"chimney\""))))
                .contains(Kind.ZONE_UNKNOWN, Kind.BAD_ID);
        assertThat(kinds(check(svg.replace("id=\"top-roof\"", "id=\"top-hood\""))))
                .containsExactly(Kind.BAD_ID);
    }
}
