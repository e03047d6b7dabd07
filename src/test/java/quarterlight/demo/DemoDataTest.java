package quarterlight.demo;

import static org.assertj.core.api.Assertions.assertThat;

import com.drew.imaging.ImageMetadataReader;
import com.drew.imaging.ImageProcessingException;
import com.drew.metadata.Metadata;
import com.drew.metadata.exif.ExifIFD0Directory;
import com.drew.metadata.exif.ExifSubIFDDirectory;
import com.drew.metadata.exif.ExifThumbnailDirectory;
import com.drew.metadata.exif.GpsDirectory;
import com.drew.metadata.jpeg.JpegDirectory;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.io.ParseException;
import org.locationtech.jts.io.WKTReader;
import quarterlight.car.Zone;
import quarterlight.car.body.Body;
import quarterlight.car.body.BodyStyle;
import quarterlight.car.body.Construction;
import quarterlight.car.body.EnginePlace;
import quarterlight.table.ZoneTable;
import quarterlight.units.Worded;
import quarterlight.visit.annotation.TraceKind;
import quarterlight.visit.statement.Facets;
import quarterlight.visit.trial.SignKind;
import quarterlight.visit.trial.TrialResult;

/** The demo data are whole: tables name zones and photos that exist, and the files say what the truth beside them says. */
class DemoDataTest {
    private static final Path BASE = Path.of(System.getProperty("quarterlight.basedir", "."));
    private static final Path DATA = BASE.resolve("demo-data");
    private static final long MAX_BYTES = 15_000_000;

    @ParameterizedTest
    @ValueSource(strings = {"tamarisk-1971", "chicory-1971"})
    void everyRowNamesAZoneOfTheCoupeAndAPhotoThatIsThere(String visit) throws IOException {
        Set<String> zones =
                ZoneTable.load().zonesOf(new Body(BodyStyle.COUPE, Construction.UNIBODY, EnginePlace.FRONT)).stream()
                        .map(Zone::id)
                        .map(Object::toString)
                        .collect(Collectors.toCollection(HashSet::new));
        Set<String> photos = photoNames(visit);
        List<String> wrong = new ArrayList<>();
        for (String kind :
                List.of("readings", "pins", "signs", "traces", "marks", "trials", "statements", "features")) {
            for (CSVRecord row : rows(visit, kind + ".csv")) {
                assertThat(row.isConsistent())
                        .as(kind + " line " + row.getRecordNumber())
                        .isTrue();
                for (String column : List.of("zone", "for")) {
                    if (row.isMapped(column) && !row.get(column).isEmpty() && !zones.contains(row.get(column))) {
                        wrong.add(kind + " line " + row.getRecordNumber() + ": zone " + row.get(column));
                    }
                }
                if (row.isMapped("photo") && !row.get("photo").isEmpty() && !photos.contains(row.get("photo"))) {
                    wrong.add(kind + " line " + row.getRecordNumber() + ": photo " + row.get("photo"));
                }
            }
        }
        assertThat(wrong).isEmpty();
        assertThat(photos).hasSizeGreaterThanOrEqualTo(60);
    }

    @ParameterizedTest
    @ValueSource(strings = {"tamarisk-1971", "chicory-1971"})
    void theWordsOfTheTablesAreTheWordsOfTheProgram(String visit) throws IOException {
        assertThat(column(visit, "signs.csv", "sign")).isSubsetOf(Worded.list(SignKind.class));
        assertThat(column(visit, "traces.csv", "kind")).isSubsetOf(Worded.list(TraceKind.class));
        assertThat(column(visit, "trials.csv", "result")).isSubsetOf(Worded.list(TrialResult.class));
        assertThat(column(visit, "statements.csv", "kind"))
                .allSatisfy(
                        word -> assertThat(Facets.ofEarlierKind(word)).as(word).isPresent());
    }

    @ParameterizedTest
    @ValueSource(strings = {"tamarisk-1971", "chicory-1971"})
    void outlinesAndScalesLieWithinTheirPhotos(String visit) throws IOException, ParseException {
        for (CSVRecord row : rows(visit, "traces.csv")) {
            Geometry outline = new WKTReader().read(row.get("outline"));
            assertThat(outline.isValid()).as(row.toString()).isTrue();
            assertThat(outline.getCoordinates()).as(row.toString()).allSatisfy(DemoDataTest::lieWithin);
            double[] scale = Arrays.stream(row.get("scale").split(":")[1].split(" "))
                    .mapToDouble(Double::parseDouble)
                    .toArray();
            for (int i = 0; i < scale.length; i += 2) {
                lieWithin(new Coordinate(scale[i], scale[i + 1]));
            }
        }
    }

    private static void lieWithin(Coordinate c) {
        assertThat(c.x).isBetween(0.0, 1200.0);
        assertThat(c.y).isBetween(0.0, 900.0);
    }

    /** A face-on photo with a ruler needs no homography: the shoelace area over the scale squared is the true area. */
    @ParameterizedTest
    @ValueSource(strings = {"tamarisk-1971", "chicory-1971"})
    void faceOnTheTracedAreaIsTheTrueArea(String visit) throws IOException, ParseException {
        List<CSVRecord> truth = rows(visit, "truth/patches.csv");
        List<CSVRecord> traces = rows(visit, "traces.csv");
        int checked = 0;
        for (int i = 0; i < traces.size(); i++) {
            String[] scale = traces.get(i).get("scale").split(":");
            if (!scale[0].equals("length")) {
                continue;
            }
            double[] p = Arrays.stream(scale[1].split(" "))
                    .mapToDouble(Double::parseDouble)
                    .toArray();
            double pxPerMm = Math.hypot(p[2] - p[0], p[3] - p[1]) / Double.parseDouble(scale[2]);
            double area = new WKTReader().read(traces.get(i).get("outline")).getArea() / (pxPerMm * pxPerMm);
            double wanted = Double.parseDouble(truth.get(i).get("area_mm2"));
            assertThat(area / wanted).as(traces.get(i).get("photo")).isBetween(0.99, 1.01);
            checked++;
        }
        assertThat(checked).isPositive();
    }

    @ParameterizedTest
    @ValueSource(strings = {"tamarisk-1971", "chicory-1971"})
    void theFilesSayWhatTheTruthSays(String visit) throws IOException, ImageProcessingException {
        for (CSVRecord row : rows(visit, "truth/photos.csv")) {
            byte[] bytes = Files.readAllBytes(DATA.resolve(visit).resolve(row.get("path")));
            Metadata found = ImageMetadataReader.readMetadata(new ByteArrayInputStream(bytes));
            ExifIFD0Directory root = found.getFirstDirectoryOfType(ExifIFD0Directory.class);
            ExifSubIFDDirectory exif = found.getFirstDirectoryOfType(ExifSubIFDDirectory.class);
            assertThat(root.getString(ExifIFD0Directory.TAG_MAKE)).isEqualTo(row.get("maker"));
            assertThat(root.getString(ExifIFD0Directory.TAG_MODEL)).isEqualTo(row.get("model"));
            assertThat(root.getString(ExifIFD0Directory.TAG_ORIENTATION)).isEqualTo(row.get("orientation"));
            assertThat(exif.getString(ExifSubIFDDirectory.TAG_DATETIME_ORIGINAL))
                    .isEqualTo(row.get("recorded").replace('-', ':').replace('T', ' '));
            assertThat(orEmpty(exif.getString(ExifSubIFDDirectory.TAG_SUBSECOND_TIME_ORIGINAL)))
                    .isEqualTo(row.get("fraction"));
            assertThat(orEmpty(exif.getString(ExifSubIFDDirectory.TAG_TIME_ZONE_ORIGINAL)))
                    .isEqualTo(row.get("offset"));
            assertThat(orEmpty(exif.getString(ExifSubIFDDirectory.TAG_BODY_SERIAL_NUMBER)))
                    .isEqualTo(row.get("serial"));
            assertThat(found.containsDirectoryOfType(ExifThumbnailDirectory.class))
                    .isEqualTo(!row.get("serial").isEmpty());
            sizeIsTrue(found, row);
            placeIsTrue(found, row);
        }
    }

    private static void sizeIsTrue(Metadata found, CSVRecord row) {
        JpegDirectory jpeg = found.getFirstDirectoryOfType(JpegDirectory.class);
        boolean turned = row.get("orientation").equals("6");
        assertThat(jpeg.getString(JpegDirectory.TAG_IMAGE_WIDTH)).isEqualTo(row.get(turned ? "height" : "width"));
        assertThat(jpeg.getString(JpegDirectory.TAG_IMAGE_HEIGHT)).isEqualTo(row.get(turned ? "width" : "height"));
    }

    private static void placeIsTrue(Metadata found, CSVRecord row) {
        GpsDirectory gps = found.getFirstDirectoryOfType(GpsDirectory.class);
        assertThat(gps != null).isEqualTo(!row.get("latitude").isEmpty());
        if (gps != null) {
            assertThat(gps.getGeoLocation().getLatitude())
                    .isBetween(
                            Double.parseDouble(row.get("latitude")) - 1e-4,
                            Double.parseDouble(row.get("latitude")) + 1e-4);
            assertThat(gps.getString(GpsDirectory.TAG_DATE_STAMP).replace(':', '-'))
                    .isEqualTo(row.get("true_utc").substring(0, 10));
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"tamarisk-1971", "chicory-1971"})
    void theStoryDrawsTheSamePicturesAgain(String visit) throws IOException {
        Story story = Story.read(BASE.resolve("src/tool/story").resolve(visit));
        Visit again = new Visit(story, DATA.resolve(visit), new Type(), ZonePoints.none());
        for (String id : List.of("clock-c", "door-label")) {
            Shot shot = story.shot(id);
            byte[] drawn = new PhotoWriter(story).bytes(shot, again.draw(shot).image());
            BufferedImage now = ImageIO.read(new ByteArrayInputStream(drawn));
            BufferedImage then =
                    ImageIO.read(DATA.resolve(visit).resolve(shot.path()).toFile());
            assertThat(meanDifference(now, then)).as(id).isLessThan(1.0);
        }
    }

    private static double meanDifference(BufferedImage a, BufferedImage b) {
        double sum = 0;
        int n = 0;
        for (int y = 0; y < a.getHeight(); y += 3) {
            for (int x = 0; x < a.getWidth(); x += 3) {
                sum += Math.abs((a.getRGB(x, y) >> 8 & 255) - (b.getRGB(x, y) >> 8 & 255));
                n++;
            }
        }
        return sum / n;
    }

    @Test
    void theWholeIsUnder15Megabytes() throws IOException {
        try (Stream<Path> all = Files.walk(DATA)) {
            long bytes = all.filter(Files::isRegularFile)
                    .mapToLong(file -> file.toFile().length())
                    .sum();
            assertThat(bytes).isLessThan(MAX_BYTES);
        }
    }

    private static String orEmpty(String text) {
        return text == null ? "" : text;
    }

    private static Set<String> photoNames(String visit) throws IOException {
        try (Stream<Path> all = Files.walk(DATA.resolve(visit).resolve("photos"))) {
            return all.filter(Files::isRegularFile)
                    .map(file -> file.getFileName().toString())
                    .collect(Collectors.toCollection(HashSet::new));
        }
    }

    private static Set<String> column(String visit, String file, String column) throws IOException {
        return rows(visit, file).stream().map(row -> row.get(column)).collect(Collectors.toCollection(HashSet::new));
    }

    private static List<CSVRecord> rows(String visit, String file) throws IOException {
        return Story.rows(DATA.resolve(visit).resolve(file), ',');
    }
}
