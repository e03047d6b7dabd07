package quarterlight.edit.export;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.adobe.internal.xmp.XMPMeta;
import com.adobe.internal.xmp.XMPMetaFactory;
import com.drew.metadata.Metadata;
import com.drew.metadata.xmp.XmpDirectory;
import com.drew.metadata.xmp.XmpReader;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.dhatim.fastexcel.reader.Cell;
import org.dhatim.fastexcel.reader.CellType;
import org.dhatim.fastexcel.reader.ReadableWorkbook;
import org.dhatim.fastexcel.reader.Row;
import org.dhatim.fastexcel.reader.Sheet;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.io.WKTReader;
import org.locationtech.jts.io.geojson.GeoJsonReader;
import quarterlight.cli.Bench;

/** What is exported, read by programs that are not ours: each gets what was drawn and typed. */
class OtherReadersTest {
    private static final String REGIONS = "http://www.metadataworkinggroup.com/schemas/regions/";
    private static final String KEYWORDS = "http://www.metadataworkinggroup.com/schemas/keywords/";
    private static final String OUTLINE =
            "POLYGON ((100.25 200, 300 200, 300 380.125, 100.25 380.125, 100.25 200), (150 250, 150 300, 200 300, 200"
                    + " 250, 150 250))";
    private static final String TRACES =
            """
            photo,kind,outline,scale,zone,patch,note
            two.jpg,scale,"%s",length:10 10 110 10:85.6,roof,lip,"=1+1, 塗装 ""q\"""
            """
                    .formatted(OUTLINE);
    private static final String NOTES =
            """
            photo,shape,points,text,scale,at
            two.jpg,arrow,"500.5 400, 300 200",look <here> & there,,
            two.jpg,text,20 30,-2 mil,,
            """;
    private static final String READINGS = "zone,value,unit,spot\nroof,5.1,mil,a\nroof,130.25,um,007\n";

    @TempDir
    private Path folder;

    private Bench bench;
    private String visit;

    @BeforeEach
    void drawOnAPhoto() {
        bench = new Bench(folder);
        visit = bench.visit();
        bench.run("add", "traces", visit, bench.file("traces.csv", TRACES)).done();
        bench.run("add", "notes", visit, bench.file("notes.csv", NOTES)).done();
        bench.run("add", "readings", visit, bench.file("readings.csv", READINGS))
                .done();
    }

    private Path exported(String form) {
        String target = bench.folder(form + ".out");
        bench.run("export", visit, target, "--as", form).done();
        return Path.of(target);
    }

    @Test
    void aWorkbookHasEverySheetAndCellAndNoFormula() throws Exception {
        Path tables = exported("tables");
        int numbers = 0;
        try (ReadableWorkbook book = new ReadableWorkbook(Files.newInputStream(exported("xlsx")))) {
            List<String> names = book.getSheets().map(Sheet::getName).toList();
            assertThat(names).containsExactlyInAnyOrderElementsOf(tableNames(tables));
            for (String name : names) {
                List<List<String>> wanted = rows(tables.resolve(name + ".csv"));
                List<Row> found = book.findSheet(name).orElseThrow().read();
                assertThat(found).as(name).hasSameSizeAs(wanted);
                for (int i = 0; i < wanted.size(); i++) {
                    assertThat(cells(found.get(i), wanted.get(i).size()))
                            .as(name + " row " + i)
                            .isEqualTo(wanted.get(i));
                    numbers += (int) found.get(i).stream()
                            .filter(cell -> cell != null && cell.getType() == CellType.NUMBER)
                            .count();
                    assertThat(found.get(i).stream().filter(cell -> cell != null && cell.getType() == CellType.FORMULA))
                            .isEmpty();
                }
            }
            Row second = book.findSheet("readings").orElseThrow().read().get(2);
            assertThat(second.getCell(1).asNumber()).isEqualByComparingTo("130.25");
            assertThat(second.stream()
                            .filter(cell -> cell != null && "007".equals(cell.getText()))
                            .map(Cell::getType))
                    .as("what only looks like a number stays text")
                    .containsExactly(CellType.STRING);
        }
        assertThat(numbers).isGreaterThan(10);
    }

    private static List<String> tableNames(Path export) throws IOException {
        try (Stream<Path> files = Files.list(export)) {
            return files.map(file -> file.getFileName().toString())
                    .filter(name -> name.endsWith(".csv"))
                    .map(name -> name.substring(0, name.length() - 4))
                    .toList();
        }
    }

    /** The cells as typed: the apostrophe before what would be a formula belongs to CSV alone. */
    private static List<List<String>> rows(Path csv) throws IOException {
        try (CSVParser parser = CSVParser.parse(csv, StandardCharsets.UTF_8, CSVFormat.RFC4180)) {
            List<List<String>> rows = new ArrayList<>();
            for (CSVRecord row : parser) {
                rows.add(row.stream()
                        .map(cell -> cell.matches("'['=+@\\-].*") ? cell.substring(1) : cell)
                        .toList());
            }
            return rows;
        }
    }

    private static List<String> cells(Row row, int count) {
        List<String> cells = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            boolean there = i < row.getCellCount() && row.getCell(i) != null;
            cells.add(there ? row.getCell(i).getText() : "");
        }
        return cells;
    }

    @Test
    void geometryOfGeoJsonIsWhatWasDrawn() throws Exception {
        Geometry all = new GeoJsonReader().read(Files.readString(exported("geojson")));
        assertThat(all.getNumGeometries()).isEqualTo(3);
        WKTReader wkt = new WKTReader();
        assertThat(all.getGeometryN(0).equalsExact(wkt.read(OUTLINE))).isTrue();
        assertThat(all.getGeometryN(1).equalsExact(wkt.read("LINESTRING (500.5 400, 300 200)")))
                .isTrue();
        assertThat(all.getGeometryN(2).equalsExact(wkt.read("POINT (20 30)"))).isTrue();
        assertThat(all.getGeometryN(0).isValid()).isTrue();
    }

    @Test
    void aSidecarTellsRegionsAndKeywordsToAReaderOfXmp() throws Exception {
        Path sidecar = exported("xmp").resolve("b2b2b2b2-two.jpg.xmp");
        XMPMeta meta;
        try (InputStream in = Files.newInputStream(sidecar)) {
            meta = XMPMetaFactory.parse(in);
        }
        Geometry drawn = new WKTReader().read(OUTLINE).getEnvelope();
        String first = "Regions/mwg-rs:RegionList[1]/mwg-rs:";
        assertThat(number(meta, first + "Area/stArea:w")).isCloseTo(199.75 / 1600, within(1e-6));
        assertThat(number(meta, first + "Area/stArea:h")).isCloseTo(180.125 / 1200, within(1e-6));
        assertThat(number(meta, first + "Area/stArea:x"))
                .isCloseTo(drawn.getCentroid().getX() / 1600, within(1e-6));
        assertThat(number(meta, first + "Area/stArea:y"))
                .isCloseTo(drawn.getCentroid().getY() / 1200, within(1e-6));
        assertThat(meta.getPropertyString(REGIONS, first + "Name")).contains("oof", "scale");
        assertThat(meta.getPropertyString(REGIONS, first + "Description")).isEqualTo("=1+1, 塗装 \"q\"");
        assertThat(meta.countArrayItems(REGIONS, "Regions/mwg-rs:RegionList"))
                .as("a text at a point is no region")
                .isEqualTo(2);
        assertThat(meta.getPropertyString(REGIONS, "Regions/mwg-rs:RegionList[2]/mwg-rs:Description"))
                .isEqualTo("look <here> & there");
        assertThat(meta.getProperty(KEYWORDS, "Keywords")).isNotNull();
        assertThat(properties(sidecar)).containsKey("dc:subject[1]");
    }

    private static double number(XMPMeta meta, String path) throws Exception {
        return meta.getPropertyDouble(REGIONS, path);
    }

    /** The same file by the library that reads photos. */
    private static Map<String, String> properties(Path sidecar) throws Exception {
        Metadata metadata = new Metadata();
        new XmpReader().extract(Files.readAllBytes(sidecar), metadata);
        XmpDirectory directory = metadata.getFirstDirectoryOfType(XmpDirectory.class);
        assertThat(directory.hasErrors()).isFalse();
        return directory.getXmpProperties().entrySet().stream()
                .collect(Collectors.toMap(Map.Entry::getKey, Map.Entry::getValue));
    }
}
