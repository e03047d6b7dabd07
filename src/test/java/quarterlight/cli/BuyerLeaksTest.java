package quarterlight.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Color;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import quarterlight.archive.RfcBag;

/**
 * A word planted in every private or left-out place, and a photo of one color that is left out: none is found in anything made for a buyer. A second visit
 * in which nothing is left out shows that the search can fail.
 */
class BuyerLeaksTest {
    private static final String WORD = "LEAKED";

    @TempDir
    private static Path folder;

    private static BuyerFiles closed;
    private static BuyerFiles open;
    private static String told;

    @BeforeAll
    static void makeEverything() throws Exception {
        photo("SHOWN.JPG", Color.GRAY);
        photo("LEAKEDNAME.JPG", Color.MAGENTA);
        photo("LEAKEDZONEPHOTO.JPG", Color.MAGENTA);
        Bench bench = new Bench(folder);
        String first = visit(bench, "first", "yes");
        bench.run("add", "left-out", first, bench.file("left.csv", "zone,photo\nroof,\n,LEAKEDNAME.JPG\n"))
                .done();
        String second = visit(bench, "second", "no");
        closed = made(bench, first, second);
        told = bench.run("archive", first, folder.resolve("again.zip").toString(), "--for-buyer")
                .done()
                .out();
        open = made(bench, second, second);
    }

    private static void photo(String name, Color color) throws IOException {
        BufferedImage image = new BufferedImage(1200, 900, BufferedImage.TYPE_INT_RGB);
        for (int y = 0; y < 900; y++) {
            for (int x = 0; x < 1200; x++) {
                image.setRGB(x, y, color.getRGB() ^ (name.hashCode() & 0x030303));
            }
        }
        Files.createDirectories(folder.resolve("card"));
        ImageIO.write(image, "jpg", folder.resolve("card").resolve(name).toFile());
    }

    /** The words stand in what is left out of the first visit, and in what is private there. */
    private static String visit(Bench bench, String name, String confidential) throws Exception {
        String visit = folder.resolve(name).toString();
        bench.run("new", visit, "--car", "Test car", "--style", "coupe", "--built", "1971-03", "--timezone", "UTC")
                .done();
        bench.run("intake", visit, folder.resolve("card").toString()).done();
        add(
                bench,
                visit,
                "pins",
                """
                photo,zone,shows,caption
                SHOWN.JPG,hood,hood,seen
                LEAKEDNAME.JPG,hood,LEAKEDshows,LEAKEDcaption
                LEAKEDZONEPHOTO.JPG,roof,LEAKEDroof,LEAKEDroofcaption
                """);
        add(
                bench,
                visit,
                "statements",
                "zone,condition,text,severity,photo,private\nhood,damaged,Dented.,major,SHOWN.JPG|LEAKEDNAME.JPG,no\n"
                        + "roof,damaged,LEAKEDstatement,grave,LEAKEDZONEPHOTO.JPG,no\ndash,damaged,LEAKEDprivate,grave,,"
                        + confidential + "\n");
        add(
                bench,
                visit,
                "readings",
                "zone,value,unit,note,private\nhood,5.1,mil,,no\nroof,17.3,mil,LEAKEDreading,no\n"
                        + "decklid,17.9,mil,LEAKEDprivatereading," + confidential + "\n");
        add(bench, visit, "signs", "zone,sign,seen,note\nroof,ripple,yes,LEAKEDsign\n");
        add(
                bench,
                visit,
                "trials",
                "item,result,zone,note,private\nLEAKEDtrial,does not,roof,LEAKEDtrialnote,no\n"
                        + "LEAKEDprivatetrial,does not,dash,," + confidential + "\n");
        add(bench, visit, "marks", "part,kind,text,zone,note\nLEAKEDpart,stamp,LEAKED71C2,roof,LEAKEDmarknote\n");
        add(
                bench,
                visit,
                "claims",
                "text,by,zone,judged,private\nLEAKEDclaim,seller,roof,contradicted,no\n"
                        + "LEAKEDprivateclaim,seller,,contradicted," + confidential + "\n");
        add(
                bench,
                visit,
                "features",
                "feature,from,to,fitted,zone,note\nLEAKEDfeature,1975,1976,yes,roof,LEAKEDfeaturenote\n");
        add(bench, visit, "notes", "photo,shape,points,text\nLEAKEDNAME.JPG,text,100 100,LEAKEDnote\n");
        add(bench, visit, "decisions", "matter,severity,reason,ruled\nmetal:roof,note,LEAKEDreason,grave\n");
        return visit;
    }

    private static void add(Bench bench, String visit, String kind, String rows) throws Exception {
        bench.run("add", kind, visit, bench.file("rows-" + kind + ".csv", rows)).done();
    }

    private static BuyerFiles made(Bench bench, String visit, String other) throws Exception {
        BuyerFiles files = new BuyerFiles();
        String out = visit + "-pages-" + Path.of(other).getFileName();
        bench.run("pages", visit, "--out", out).done();
        addAll(Path.of(out), files);
        bench.run("archive", visit, visit + ".zip", "--for-buyer").done();
        for (Map.Entry<String, byte[]> file :
                RfcBag.of(Path.of(visit + ".zip")).files().entrySet()) {
            files.add("bag/" + file.getKey(), file.getValue());
        }
        files.texts.put(
                "findings",
                bench.run("findings", visit, "--for-buyer", "--json").done().out());
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
    void aPlantedWordIsInNothingForTheBuyer() {
        assertThat(closed.texts.keySet())
                .contains("brief.pdf text", "report.pdf text", "report.html", "bag/data/tables/pins.csv");
        assertThat(closed.texts.get("report.pdf text")).contains("Dented.");
        closed.texts.forEach((name, text) -> assertThat(text.contains(WORD))
                .as("%s tells a planted word", name)
                .isFalse());
    }

    @Test
    void theSameWordsAreFoundWhereNothingIsLeftOut() {
        assertThat(open.texts.get("bag/data/tables/statements.csv")).contains("LEAKEDstatement", "LEAKEDprivate");
        assertThat(open.texts.get("bag/data/tables/pins.csv")).contains("LEAKEDNAME.JPG", "LEAKEDcaption");
        assertThat(open.texts.get("report.html")).contains("LEAKEDstatement", "LEAKEDtrialnote", "LEAKEDclaim");
        assertThat(open.texts.get("findings")).contains("LEAKEDprivateclaim");
    }

    @Test
    void noPictureShowsAPhotoThatIsLeftOut() throws IOException {
        for (Map.Entry<String, byte[]> picture : closed.pictures.entrySet()) {
            assertThat(magenta(BuyerFiles.shown(picture.getValue())))
                    .as(picture.getKey())
                    .isFalse();
        }
        int shown = 0;
        for (byte[] picture : open.pictures.values()) {
            shown += magenta(BuyerFiles.shown(picture)) ? 1 : 0;
        }
        assertThat(shown).isGreaterThan(2);
    }

    private static boolean magenta(BufferedImage image) {
        int rgb = image.getRGB(image.getWidth() / 2, image.getHeight() / 2);
        return (rgb >> 16 & 0xFF) > 180 && (rgb & 0xFF) > 180 && (rgb >> 8 & 0xFF) < 90;
    }

    @Test
    void whatGoesOutAndWhatStaysIsToldBeforehand() {
        assertThat(told)
                .contains("Goes to the buyer:", "Stays at home:", "Zones left out, and all that is told of them: Roof.")
                .contains("2 photos left out, or showing nothing but zones left out.");
        assertThat(told.indexOf("Stays at home")).isLessThan(told.indexOf("Made "));
    }
}
