package quarterlight.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.drew.imaging.ImageMetadataReader;
import com.drew.metadata.Directory;
import com.drew.metadata.Metadata;
import com.drew.metadata.exif.GpsDirectory;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import quarterlight.archive.RfcBag;

/**
 * Everything that is made for a buyer, opened to its last stream: neither a place nor a word of a photo's own data is in it, and where a region is
 * hidden its pixels are gone from every picture of every size. Two visits of the same photos, one with the plates hidden, show that the search can fail.
 */
class BuyerSecretsTest {
    private static final Set<String> PLAIN_DIRECTORIES = Set.of("JPEG", "JFIF", "Huffman", "File Type", "PNG-IHDR");
    /**
     * The place in the forms in which programs write it: decimal degrees, degrees and minutes, and Exif's fractions. A digit before it makes another
     * number of it, such as a coordinate of a drawing. Most texts lack what each begins with, which is found sooner than the rest.
     */
    private static final Map<String, Pattern> PLACES = Map.of(
            "39.739",
            Pattern.compile("(?<![0-9])39\\.739"),
            "104.984",
            Pattern.compile("(?<![0-9])104\\.984"),
            "39,44.3",
            Pattern.compile("(?<![0-9])39,44\\.3"),
            "104,59.0",
            Pattern.compile("(?<![0-9])104,59\\.0"),
            "39\u00b0",
            Pattern.compile("39\u00b0 ?44"),
            "104\u00b0",
            Pattern.compile("104\u00b0 ?59"),
            "GPSL",
            Pattern.compile("GPSL[ao]"),
            "",
            Pattern.compile("(?i)latitude_deg"));

    @TempDir
    private static Path folder;

    private static BuyerFiles hidden;
    private static BuyerFiles open;
    private static BuyerFiles exported;

    @BeforeAll
    static void makeEverything() throws Exception {
        for (int i = 0; i < 4; i++) {
            SecretPhotos.write(folder.resolve("card/IMG_%d.JPG".formatted(i)), i, "2026:02:28 10:0%d:00".formatted(i));
        }
        Metadata whole = ImageMetadataReader.readMetadata(
                folder.resolve("card/IMG_0.JPG").toFile());
        assertThat(whole.getFirstDirectoryOfType(GpsDirectory.class)
                        .getGeoLocation()
                        .getLatitude())
                .as("the photos have a place to hide")
                .isEqualTo(SecretPhotos.LATITUDE_DEG, org.assertj.core.api.Assertions.within(1e-4));
        Bench bench = new Bench(folder);
        String first = visit(bench, "first");
        String second = visit(bench, "second");
        bench.run("add", "hidden", first, bench.file("hidden.csv", hiddenRows()))
                .done();
        // the other car of a comparison hides what its own visit hides, so the visit stands beside itself here
        hidden = made(bench, first, first);
        open = made(bench, second, first);
        bench.run("export", first, folder.resolve("export").toString()).done();
        exported = new BuyerFiles();
        addAll(folder.resolve("export"), exported);
    }

    private static String visit(Bench bench, String name) {
        String visit = folder.resolve(name).toString();
        bench.run("new", visit, "--car", "Test car", "--style", "coupe", "--built", "1971-03", "--timezone", "UTC")
                .done();
        bench.run("intake", visit, folder.resolve("card").toString()).done();
        bench.run(
                        "add",
                        "pins",
                        visit,
                        bench.file(
                                "pins.csv",
                                """
                                photo,zone,view,x,y,shows
                                IMG_0.JPG,hood,top,0.2,0.5,plate
                                IMG_1.JPG,decklid,top,0.8,0.5,plate
                                """))
                .done();
        bench.run(
                        "add",
                        "statements",
                        visit,
                        bench.file(
                                "statements.csv",
                                "zone,kind,text,severity,photo\nhood,damaged,Dented.,major,IMG_2.JPG|IMG_3.JPG\n"))
                .done();
        return visit;
    }

    private static String hiddenRows() {
        StringBuilder rows = new StringBuilder("photo,outline,why\n");
        int a = SecretPhotos.PLATE_FROM_PX - 12;
        int b = SecretPhotos.PLATE_TO_PX + 12;
        for (int i = 0; i < 4; i++) {
            rows.append("IMG_%d.JPG,\"POLYGON ((%d %d, %d %d, %d %d, %d %d, %d %d))\",plate\n"
                    .formatted(i, a, a, b, a, b, b, a, b, a, a));
        }
        return rows.toString();
    }

    /** Pages, the buyer's archive and the comparison of a visit. */
    private static BuyerFiles made(Bench bench, String visit, String other) throws Exception {
        BuyerFiles files = new BuyerFiles();
        bench.run("pages", visit, "--out", visit + "-pages").done();
        addAll(Path.of(visit + "-pages"), files);
        bench.run("archive", visit, visit + ".zip", "--for-buyer").done();
        for (Map.Entry<String, byte[]> file :
                RfcBag.of(Path.of(visit + ".zip")).files().entrySet()) {
            files.add("bag/" + file.getKey(), file.getValue());
        }
        bench.run("compare", visit, other, "--out", visit + "-compare").done();
        addAll(Path.of(visit + "-compare"), files);
        return files;
    }

    private static void addAll(Path from, BuyerFiles files) throws IOException {
        try (Stream<Path> all = Files.walk(from)) {
            for (Path file : all.filter(Files::isRegularFile).toList()) {
                files.add(from.relativize(file).toString(), Files.readAllBytes(file));
            }
        }
    }

    @Test
    void everyFormOfOutputIsThere() {
        assertThat(hidden.texts.keySet())
                .contains(
                        "diagram.svg",
                        "diagram.pdf",
                        "report.pdf",
                        "report.pdf text",
                        "report.html",
                        "compare.pdf",
                        "compare.html",
                        "bag/data/tables/photos.csv",
                        "bag/data/tables/photos.json",
                        "bag/data/pages/report.pdf");
        assertThat(hidden.pictures).hasSizeGreaterThan(20);
        assertThat(hidden.pictures.keySet())
                .filteredOn(name -> name.startsWith("bag/data/pictures/"))
                .hasSize(4);
        assertThat(hidden.texts.get("report.pdf text")).contains("Dented.");
        assertThat(exported.texts.keySet()).anyMatch(name -> name.endsWith(".xmp"));
    }

    @Test
    void noPlaceIsInAnything() {
        for (BuyerFiles files : List.of(hidden, open, exported)) {
            files.texts.forEach((name, text) -> {
                PLACES.forEach((begins, place) -> assertThat(
                                text.contains(begins) && place.matcher(text).find())
                        .as("%s tells %s", name, place)
                        .isFalse());
            });
        }
    }

    @Test
    void noWordOfAPhotosOwnDataIsInAnythingForTheBuyer() {
        for (BuyerFiles files : List.of(hidden, open)) {
            files.texts.forEach((name, text) -> {
                for (String word : SecretPhotos.WORDS) {
                    assertThat(text.contains(word))
                            .as("%s tells %s", name, word)
                            .isFalse();
                }
            });
        }
    }

    @Test
    void noPictureHasDataOfItsOwn() throws Exception {
        for (BuyerFiles files : List.of(hidden, open, exported)) {
            for (Map.Entry<String, byte[]> picture : files.pictures.entrySet()) {
                Metadata metadata = ImageMetadataReader.readMetadata(new ByteArrayInputStream(picture.getValue()));
                for (Directory directory : metadata.getDirectories()) {
                    assertThat(directory.getName()).as(picture.getKey()).isIn(PLAIN_DIRECTORIES);
                }
            }
        }
    }

    @Test
    void hiddenPixelsAreGoneFromEveryPictureOfEverySize() throws IOException {
        int withPlate = 0;
        for (Map.Entry<String, byte[]> picture : open.pictures.entrySet()) {
            withPlate += magenta(BuyerFiles.shown(picture.getValue())) > 0.02 ? 1 : 0;
        }
        assertThat(withPlate)
                .as("pictures of the visit without hidden regions that show the plate")
                .isGreaterThan(20);
        for (Map.Entry<String, byte[]> picture : hidden.pictures.entrySet()) {
            assertThat(magenta(BuyerFiles.shown(picture.getValue())))
                    .as(picture.getKey())
                    .isZero();
        }
    }

    /** The share of pixels that are more red and blue than green by a third of the range. */
    private static double magenta(BufferedImage image) {
        long count = 0;
        for (int y = 0; y < image.getHeight(); y++) {
            for (int x = 0; x < image.getWidth(); x++) {
                int rgb = image.getRGB(x, y);
                int green = rgb >> 8 & 0xFF;
                count += (rgb >> 16 & 0xFF) - green > 40 && (rgb & 0xFF) - green > 40 ? 1 : 0;
            }
        }
        return count / (double) (image.getWidth() * image.getHeight());
    }
}
