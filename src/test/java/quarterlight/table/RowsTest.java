package quarterlight.table;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import quarterlight.table.cell.RowContext;
import quarterlight.visit.annotation.HiddenRegion;
import quarterlight.visit.annotation.PhotoScale;
import quarterlight.visit.annotation.Trace;
import quarterlight.visit.photo.PhotoId;
import quarterlight.visit.reading.Reading;
import quarterlight.visit.row.CellRefused;
import quarterlight.visit.row.RecordKind;

class RowsTest {
    @TempDir
    private Path folder;

    private FewRows rows;

    @BeforeEach
    void usualVisit() {
        rows = new FewRows(folder);
    }

    /** Paint of 12 um and more is believed; thinner is asked about unless a note says what it lies on. Zero is bare metal. */
    @ParameterizedTest
    @CsvSource({"5.1, '', false", "11.9, '', false", "12, '', true", "0, '', true", "5.1, phosphate only, true"})
    void aReadingTooThinForPaintIsAskedAbout(String value, String note, boolean taken) {
        String table = "zone,value,unit,note\nroof," + value + ",um," + note + "\n";
        if (taken) {
            assertThat(rows.read(RowKind.of(RecordKind.READINGS), table).values())
                    .hasSize(1);
        } else {
            assertThat(rows.refusal(RowKind.of(RecordKind.READINGS), table))
                    .contains("column value", value + " um is thinner than any coat of paint; check the unit (mil?)");
        }
    }

    /** The gauge's range is 2000 um unless set: 78.7 mil lies below, 78.8 above. */
    @ParameterizedTest
    @CsvSource({"2000, um, true", "2000.1, um, false", "78.7, mil, true", "78.8, mil, false"})
    void aReadingAboveTheGaugesRangeIsAskedAbout(String value, String unit, boolean taken) {
        TableRead<Reading> read =
                rows.read(RowKind.of(RecordKind.READINGS), "zone,value,unit\nroof," + value + "," + unit + "\n");
        assertThat(read.values()).hasSize(taken ? 1 : 0);
        assertThat(read.refused()).hasSize(taken ? 0 : 1);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            textBlock =
                    """
            ,110,um,,,,| column zone | the cell is empty
            roof,,um,,,,| column value | the cell is empty
            roof,110,,,,,| column unit | the cell is empty
            roof,110,mm,,,,| column unit | none of mil, um
            roof,-1,um,,,,| column value | below 0
            roof,120,mil,,,,| column value | (3048 um) is above the gauge range of 2000 um; check the unit
            roof,110,um,2026-02-30T10:00,,,| column time | that exists
            roof,110,um,10:15,,,| column time | 2026-05-02T10:15
            roof,110,um,,top,0.5,| column y | go together
            roof,110,um,,,0.5,0.5| column view | go together
            roof,110,um,,top,1.01,0.5| column x | outside the view
            roof,110,um,,top,-0.01,0.5| column x | outside the view
            roof,110,um,,side,0.1,0.5| column view | none of left, right, front
            """)
    void aBadReadingIsRefusedAtItsCell(String row, String column, String reason) {
        assertThat(rows.refusal(RowKind.of(RecordKind.READINGS), "zone,value,unit,time,view,x,y\n" + row + "\n"))
                .startsWith("t.csv, line 2, ")
                .contains(column)
                .contains(reason);
    }

    @Test
    void aTimeWithAnOffsetIsBroughtToTheVisitsZone() {
        TableRead<Reading> read = rows.read(
                RowKind.of(RecordKind.READINGS), "zone,value,unit,time\nroof,100,um,2026-05-02T18:15:00+02:00\n");
        assertThat(read.values().get(0).time()).contains(LocalDateTime.of(2026, 5, 2, 10, 15));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            textBlock =
                    """
            during,bare,0,0,um| column when | none of before, after
            before,glass,0,0,um| column on | none of bare, shim
            before,bare,100,0,um| column nominal | bare metal
            before,shim,,98,um| column nominal | the cell is empty
            before,shim,0,98,um| column nominal | printed on it
            before,shim,100,,um| column shown | the cell is empty
            """)
    void aBadGaugeCheckIsRefusedAtItsCell(String row, String column, String reason) {
        assertThat(rows.refusal(RowKind.of(RecordKind.GAUGE), "when,on,nominal,shown,unit\n" + row + "\n"))
                .contains(column)
                .contains(reason);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            textBlock =
                    """
            absent.jpg,roof,| column photo | no photo "absent.jpg"
            on.jpg,roof,| column photo | one.jpg
            raw/one.jpg,roof,| column photo | without its folder
            a1a1a1a,roof,| column photo | no photo "a1a1a1a"
            b2b2b2b3,roof,| column photo | no photo "b2b2b2b3"
            same.jpg,roof,| column photo | 2 photos are named same.jpg
            same.jpg,roof,| column photo | d4d4d4d40000 or e5e5e5e50000
            one.jpg,roof,3| column at | is a photo
            walk.mp4,roof,13| column at | 12 s long
            walk.mp4,roof,-1| column at | below 0
            """)
    void aBadPinIsRefusedAtItsCell(String row, String column, String reason) {
        assertThat(rows.refusal(RowKind.of(RecordKind.PINS), "photo,zone,at\n" + row + "\n"))
                .contains(column)
                .contains(reason);
    }

    @Test
    void aPhotoIsFoundByNameElseByTheFirstDigitsOfItsHash() {
        TableRead<?> read = rows.read(
                RowKind.of(RecordKind.PINS),
                "photo,zone\nONE.JPG,roof\nE5E5E5E5,roof\n" + VisitFixture.hash("d4d4d4d4") + ",roof\n");
        assertThat(read.values()).extracting("photo").containsExactly(new PhotoId(1), new PhotoId(5), new PhotoId(4));
    }

    @Test
    void aVisitWithoutPhotosSaysSo() throws IOException, TableUnreadable {
        Path file = Files.writeString(folder.resolve("t.csv"), "photo,zone\none.jpg,roof\n");
        RowContext bare = new VisitFixture().context();
        assertThat(CsvFile.read(file, RowKind.of(RecordKind.PINS), bare)
                        .refused()
                        .get(0)
                        .reason())
                .contains("intake");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            textBlock =
                    """
            roof,spray,yes,| column sign | none of overspray
            roof,overspray,maybe,| column seen | neither yes nor no
            roof,overspray,,| column seen | the cell is empty
            roof,overspray,yes,tailgate| column for | has no zone tailgate
            """)
    void aBadSignIsRefusedAtItsCell(String row, String column, String reason) {
        assertThat(rows.refusal(RowKind.of(RecordKind.SIGNS), "zone,sign,seen,for\n" + row + "\n"))
                .contains(column)
                .contains(reason);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            textBlock =
                    """
            one.jpg|POLYGON ((1 1, 9 1, 9 9, 1 1))|length:0 0 9 0:5|| column zone: no zone is given and one.jpg is not pinned
            three.jpg|POLYGON ((1 1, 9 1, 9 9, 1 1))|length:0 0 9 0:5|| pinned to hood, roof; give the zone
            walk.mp4|POLYGON ((1 1, 9 1, 9 9, 1 1))|length:0 0 9 0:5|roof| is a film
            two.jpg|POLYGON ((1 1, 9 1, 9 9))|length:0 0 9 0:5|| not closed
            two.jpg|POLYGON ((1 1, 9 1, 9 q, 1 1))|length:0 0 9 0:5|| not well-known text
            two.jpg|POLYGON EMPTY|length:0 0 9 0:5|| give one POLYGON
            two.jpg|LINESTRING (1 1, 2 2)|length:0 0 9 0:5|| give one POLYGON
            two.jpg|MULTIPOLYGON (((1 1, 9 1, 9 9, 1 1)))|length:0 0 9 0:5|| give one POLYGON
            two.jpg|POLYGON ((1 1, 9 1, NaN 9, 1 1))|length:0 0 9 0:5|| finite
            two.jpg|POLYGON ((1 1, 9 1, 1 1))|length:0 0 9 0:5|| column outline
            two.jpg|POLYGON ((1 1, 9 1, 9 9, 1 1))|9|| column scale: the scale is "9"
            two.jpg|POLYGON ((1 1, 9 1, 9 9, 1 1))|length:0 0 9:5|| column scale
            two.jpg|POLYGON ((1 1, 9 1, 9 9, 1 1))|length:0 0 9 0 1 1:5|| a length has 4 pixel numbers, not 6
            two.jpg|POLYGON ((1 1, 9 1, 9 9, 1 1))|length:0 0 9 0:0|| above 0
            two.jpg|POLYGON ((1 1, 9 1, 9 9, 1 1))|length:3 3 3 3:10|| one point
            two.jpg|POLYGON ((1 1, 9 1, 9 9, 1 1))|rectangle:0 0 9 0 9 9:5 x 4|| a rectangle has 8 pixel numbers, not 6
            two.jpg|POLYGON ((1 1, 9 1, 9 9, 1 1))|rectangle:0 0 9 0 9 9 0 9:5|| write them as 85.6 x 53.98
            two.jpg|POLYGON ((1 1, 9 1, 9 9, 1 1))|coin:0 5 5 0 10 5 5 10:24.26|| a coin has 5 points or more on its rim, not 4
            two.jpg|POLYGON ((1 1, 9 1, 9 9, 1 1))|coin:0 5 5 0 10 5 5 10 8.5:24.26|| no pairs
            two.jpg|POLYGON ((1 1, 9 1, 9 9, 1 1))|coin:0 5 5 0 10 5 5 10 8.5 8.5:-2|| above 0
            """)
    void aBadTraceIsRefusedAtItsCell(String photo, String outline, String scale, String zone, String reason) {
        String row = String.join(";", photo, "surface", outline, scale, zone == null ? "" : zone);
        assertThat(rows.refusal(RowKind.of(RecordKind.TRACES), "photo;kind;outline;scale;zone\n" + row + "\n"))
                .contains(reason);
    }

    @Test
    void theCallersRuleRefusesATraceAtItsCell() {
        RowRule.OnPhoto<Trace> never =
                (trace, photo) -> Optional.of(new CellRefused("outline", "crosses itself on " + photo.name()));
        assertThat(rows.refusal(
                        new RowKind<>(RecordKind.TRACES, RowRule.onPhoto(Trace::photo, never)),
                        "photo;kind;outline;scale\ntwo.jpg;hole;POLYGON ((1 1, 9 1, 9 9, 1 1));length:0 0 9 0:5\n"))
                .isEqualTo("t.csv, line 2, column outline: crosses itself on two.jpg");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            textBlock =
                    """
            one.jpg;arrow;1 1, 9 9, 5 5;;;| column points | has 2 points, not 3
            one.jpg;text;1 1 2 2;so;;| column points | has 1 point, not 2
            one.jpg;text;1;so;;| column points | no pairs
            one.jpg;arrow;1 1, 9 q;;;| column points | is not a number
            one.jpg;text;1 1;;;| column text | empty
            one.jpg;circle;1 1, 9 9;;;| column shape | none of arrow, box, text, measure
            one.jpg;measure;1 1, 9 9;;;| column scale | empty
            one.jpg;box;1 1, 9 9;;length:0 0 9 0:5;| column scale | leave scale empty
            one.jpg;box;1 1, 9 9;;;2| column at | no moments
            walk.mp4;box;1 1, 9 9;;;13| column at | 12 s long
            """)
    void aBadNoteIsRefusedAtItsCell(String row, String column, String reason) {
        assertThat(rows.refusal(RowKind.of(RecordKind.PHOTO_NOTES), "photo;shape;points;text;scale;at\n" + row + "\n"))
                .contains(column)
                .contains(reason);
    }

    @Test
    void theRestOfTheNewColumnsIsRefusedAtItsCell() {
        assertThat(rows.refusal(new RowKind<>(RecordKind.COVERAGE, RowRule.KNOWN_EVIDENCE), "evidence,want\nspot,3\n"))
                .contains("none of photo, spots");
        assertThat(rows.refusal(
                        new RowKind<>(RecordKind.COVERAGE, RowRule.KNOWN_EVIDENCE), "evidence,want\nspots,1.5\n"))
                .contains("column want", "whole number");
        assertThat(rows.refusal(
                        new RowKind<>(RecordKind.COVERAGE, RowRule.KNOWN_EVIDENCE), "evidence,want\nspots,1001\n"))
                .contains("0 to 1000");
        assertThat(rows.refusal(RowKind.of(RecordKind.LEFT_OUT), "zone,photo\nroof,one.jpg\n"))
                .contains("column photo", "both");
        assertThat(rows.refusal(RowKind.of(RecordKind.LEFT_OUT), "photo,zone\n\"\",\" \"\none.jpg,roof\n"))
                .contains("both");
        assertThat(rows.refusal(RowKind.of(RecordKind.STATEMENTS), "zone,kind,text,at\nroof,sound,x,3\n"))
                .contains("column at", "name the film");
        assertThat(rows.refusal(RowKind.of(RecordKind.MARKS), "part,kind,text,lead_days\nblock,casting,A1,-4\n"))
                .contains("column lead_days", "0 to 3650");
        assertThat(rows.refusal(
                        new RowKind<>(
                                RecordKind.HIDDEN,
                                RowRule.onPhoto(
                                        HiddenRegion::photo,
                                        (region, photo) -> Optional.of(new CellRefused("outline", "too far")))),
                        "photo;outline\none.jpg;POLYGON ((1 1, 9 1, 9 9, 1 1))\n"))
                .endsWith("column outline: too far");
    }

    @Test
    void bothFormsOfScaleAreRead() {
        TableRead<Trace> read = rows.read(
                RowKind.of(RecordKind.TRACES),
                FewRows.lines(
                        "photo;kind;outline;scale",
                        "two.jpg;hole;POLYGON ((1 1, 9 1, 9 9, 1 1));LENGTH:1 2 3.5 4:50 mm",
                        "two.jpg;hole;POLYGON ((1 1, 9 1, 9 9, 1 1));rectangle: 0 0 9 0 9 5 0 5 : 85.60x53.98"));
        assertThat(read.values().get(0).scale())
                .isEqualTo(new PhotoScale.KnownLength(
                        new quarterlight.visit.annotation.PixelPoint(1, 2),
                        new quarterlight.visit.annotation.PixelPoint(3.5, 4),
                        50));
        PhotoScale.KnownRectangle rectangle =
                (PhotoScale.KnownRectangle) read.values().get(1).scale();
        assertThat(rectangle.widthMm()).isEqualTo(85.6);
        assertThat(rectangle.heightMm()).isEqualTo(53.98);
        assertThat(rectangle.corners()).hasSize(4);
    }
}
