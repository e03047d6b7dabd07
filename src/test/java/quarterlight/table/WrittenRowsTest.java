package quarterlight.table;

import static org.assertj.core.api.Assertions.assertThat;
import static quarterlight.table.FewRows.lines;

import java.io.IOException;
import java.io.StringReader;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import quarterlight.visit.row.RecordKind;

/** Tables of every kind are written as they were read. */
class WrittenRowsTest {
    @TempDir
    private Path folder;

    static List<Arguments> goodTables() {
        return List.of(
                Arguments.of(
                        RowKind.of(RecordKind.READINGS),
                        lines(
                                "zone,value,unit,time,spot,view,x,y,mode,exclude,note,private",
                                "roof,4.50,mil,2026-05-02T10:15,a,top,0.5,0.25,magnetic,,\"says \"\"so\"\"",
                                "and so\",yes",
                                "hood,none,,,,,,,,,,",
                                "hood,4-5.5,mil,,,,,,,,,no",
                                "hood,over,um,2026-05-02T10:15:30.5,,,,,eddy,slipped,,")),
                Arguments.of(
                        RowKind.of(RecordKind.GAUGE),
                        lines(
                                "when,on,nominal,shown,unit,nominal_tolerance,gauge_tolerance_percent,gauge_tolerance_um,note",
                                "before,bare,0,-0.1,mil,0.1,3,2.5,",
                                "after,shim,9.8,9.7,mil,0.3,,,\"cold, outside\"",
                                "after,bare,,1,um,,,,")),
                Arguments.of(
                        RowKind.of(RecordKind.PINS),
                        lines(
                                "photo,zone,at,view,x,y,shows,caption,mark",
                                "one.jpg,roof,,top,0.1,0.9,dent,A dent,",
                                "e5e5e5e5,hood,,,,,,,",
                                "walk.mp4,hood,3.25,,,,,,block")),
                Arguments.of(
                        RowKind.of(RecordKind.SIGNS),
                        "zone,sign,seen,for,photo,note\nroof,overspray,yes,,one.jpg,\nroof,weak-magnet,no,hood,,n\n"),
                Arguments.of(
                        RowKind.of(RecordKind.TRACES),
                        lines(
                                "photo,kind,outline,scale,zone,patch,note",
                                "one.jpg,surface,\"POLYGON ((10 10, 60.5 10, 60 80, 10 10), (20 15, 30 15, 30 20, 20"
                                        + " 15))\",length:0 0 100.25 0:50,hood,p1,",
                                "two.jpg,hole,\"POLYGON((1 1,2 1,2 2,1 1))\",rectangle:0 0 10 0 10 5 0 5:85.60 x"
                                        + " 53.98,,,seen from below")),
                Arguments.of(
                        RowKind.of(RecordKind.MARKS),
                        lines(
                                "part,kind,text,stage,pattern,expected,zone,view,x,y,photo,note,lead_days,origin",
                                "block,casting,A ?4"
                                        + " 7,cast,letter-day-year,A247,engine,bay,0.4,0.5,one.jpg,greasy,45,replaced")),
                Arguments.of(
                        RowKind.of(RecordKind.TRIALS),
                        lines(
                                "item,result,value,unit,zone,note,private",
                                "heater,works with a fault,,,,slow,",
                                "oil pressure,works,42,psi,engine,,yes",
                                "tread,7.5,,mm,,,",
                                "smoke,heavy,,,,blue,no")),
                Arguments.of(
                        RowKind.of(RecordKind.STATEMENTS),
                        lines(
                                "zone,text,origin,condition,part,severity,certainty,said_by,basis,size,photo,at,private,withdraws",
                                "roof,None seen.,,no rust,,note,,,seen,,one.jpg,,,",
                                "roof,Drips.,replaced,leaking,drip rail,minor,likely,seller,seen,4"
                                        + " in,walk.mp4,1.5,yes,",
                                "hood,Shown thrice.,,pitted,,,,,seen,palm,two.jpg|d4d4d4d40000|one.jpg,,no,2",
                                "hood,\"Brushed on, thick\",,added coating,,major,guess,other,heard or smelled,,,,,")),
                Arguments.of(
                        RowKind.of(RecordKind.FEATURES),
                        """
                        feature,from,to,fitted,zone,note
                        side lamps,1970-08,1971,yes,hood,bright
                        two-piece vent,1970,1970-12-31,,,
                        """),
                Arguments.of(
                        RowKind.of(RecordKind.PHOTO_NOTES),
                        lines(
                                "photo,shape,points,text,scale,at",
                                "one.jpg,arrow,\"10.5 20, 30 40\",bent,,",
                                "one.jpg,measure,10 20 30 40,,coin:0 5 5 0 10 5 5 10 8.5 8.5:24.26,",
                                "one.jpg,text,\"5 5\",\"two\nlines, <b>\",,",
                                "walk.mp4,box,\"1 1, 90 80\",,,2.25")),
                Arguments.of(
                        RowKind.of(RecordKind.HIDDEN),
                        lines(
                                "photo,outline,why",
                                "one.jpg,\"POLYGON ((10 10, 60.5 10, 60 80, 10 10), (20 15, 30 15, 30 20, 20"
                                        + " 15))\",plate",
                                "walk.mp4,\"POLYGON ((0 0, 5 0, 5 5, 0 0))\",")),
                Arguments.of(
                        RowKind.of(RecordKind.CLAIMS),
                        lines(
                                "text,by,zone,part,date,about,photo,judged,private",
                                "never welded,seller,roof,gutter,2025-11,body,one.jpg,contradicted,yes",
                                "one owner,papers,,,,,,,")),
                Arguments.of(
                        RowKind.of(RecordKind.ODOMETER),
                        lines(
                                "figure,unit,source,date,went_round,note",
                                "96240,km,papers,1988,no,service book",
                                "31088.4,mi,read,,yes,")),
                Arguments.of(
                        new RowKind<>(RecordKind.COVERAGE, RowRule.KNOWN_EVIDENCE),
                        "evidence,want,zone\nspots,5,roof\nmark views,0,\n"),
                Arguments.of(RowKind.of(RecordKind.LEFT_OUT), "zone,photo\nroof,\n,one.jpg\n"),
                Arguments.of(RowKind.of(RecordKind.RELEASED), "photo\none.jpg\n"),
                Arguments.of(
                        RowKind.of(RecordKind.DECISIONS),
                        "matter,severity,reason,ruled\nmetal:roof,minor,seen again in daylight,major\n"),
                Arguments.of(
                        RowKind.of(RecordKind.DROPPED),
                        lines(
                                "photo,at,what,said,text,instead",
                                "walk.mp4,2.48,sign,hood: overspray,\"some of it, there\",",
                                "walk.mp4,12,statement,hood: pitted,a pit,roof: pitted")));
    }

    @ParameterizedTest
    @MethodSource("goodTables")
    <T> void whatIsWrittenReadsBackAsTheSameValues(RowKind<T> kind, String text) throws IOException {
        FewRows rows = new FewRows(folder);
        TableRead<T> read = rows.read(kind, text);
        assertThat(read.refused()).isEmpty();
        assertThat(read.usable()).isTrue();
        StringBuilder out = new StringBuilder();
        CsvOut.write(out, kind, read.values(), rows.context());
        assertThat(rows.read(kind, out.toString()).values())
                .isEqualTo(read.values())
                .isNotEmpty();
        assertThat(out.toString().lines().findFirst())
                .contains(text.lines().findFirst().orElseThrow());
    }

    /** A new kind or column is not forgotten here: each stands in a table above with a value. */
    @Test
    void theTablesHaveEveryKindAndAValueInEveryColumn() throws IOException {
        Map<String, Set<String>> filled = new TreeMap<>();
        for (Arguments table : goodTables()) {
            RowKind<?> kind = (RowKind<?>) table.get()[0];
            for (CSVRecord row : CSVFormat.RFC4180
                    .builder()
                    .setHeader()
                    .setSkipHeaderRecord(true)
                    .get()
                    .parse(new StringReader((String) table.get()[1]))) {
                row.toMap().entrySet().stream()
                        .filter(cell -> !cell.getValue().isBlank())
                        .forEach(cell -> filled.computeIfAbsent(kind.word(), word -> new TreeSet<>())
                                .add(cell.getKey()));
            }
        }
        for (RecordKind<?> kind : RecordKind.all()) {
            assertThat(filled.get(kind.word()))
                    .as(kind.word())
                    .containsExactlyInAnyOrderElementsOf(kind.columns().stream()
                            .filter(column -> !column.older())
                            .map(column -> column.name())
                            .toList());
        }
    }
}
