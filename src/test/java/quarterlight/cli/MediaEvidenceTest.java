package quarterlight.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import quarterlight.archive.RfcBag;
import quarterlight.cli.call.Exit;
import quarterlight.photo.MediaSamples;
import quarterlight.photo.SamplePictures;

/**
 * A paper, a memo with its words and a photo with its sidecar, from the card to the archive and back; and what a buyer gets of them: nothing before they are
 * released. The second visit, in which the paper is released, shows that the search can fail.
 */
class MediaEvidenceTest {
    private static final String PAPER = "SECRETTITLE.pdf";
    private static final List<String> WORDS =
            List.of("SECRETTITLE", "SECRETPAPER", "SECRETPINCAPTION", "SECRETMEMO", "SECRETSPOKEN", "SECRETSIDECAR");

    @TempDir
    private static Path folder;

    private static Bench bench;
    private static String held;
    private static String released;
    private static BuyerFiles ofHeld;
    private static BuyerFiles ofReleased;

    @BeforeAll
    static void make() throws Exception {
        Path card = Files.createDirectories(folder.resolve("card"));
        Files.write(
                card.resolve("IMG_0.JPG"),
                SamplePictures.withExif(SamplePictures.jpeg(640, 480, 1), "2026:03:01 09:00:00", "", 1));
        Files.writeString(
                card.resolve("IMG_0.xmp"),
                "<x:xmpmeta xmlns:x='adobe:ns:meta/'><rdf:RDF xmlns:rdf='http://www.w3.org/1999/02/22-rdf-syntax-ns#'>"
                        + "<rdf:Description xmlns:xmp='http://ns.adobe.com/xap/1.0/' xmlns:dc='http://purl.org/dc/elements/1.1/'"
                        + " xmp:Rating='3'><dc:description><rdf:Alt><rdf:li>SECRETSIDECAR</rdf:li></rdf:Alt></dc:description>"
                        + "</rdf:Description></rdf:RDF></x:xmpmeta>");
        Files.writeString(card.resolve("alone.xmp"), "<x/>");
        MediaSamples.paper(card.resolve(PAPER), "SECRETPAPER one", "SECRETPAPER two");
        MediaSamples.wavWithTime(card.resolve("SECRETMEMO.wav"), 2, "2026-03-01", "09:01:00");
        Files.writeString(card.resolve("SECRETMEMO.vtt"), "WEBVTT\n\n00:00.000 --> 00:01.000\nSECRETSPOKEN\n");
        bench = new Bench(folder);
        held = visit("held");
        released = visit("released");
        bench.run("add", "released", released, bench.file("released.csv", "photo\n" + PAPER + "\n"))
                .done();
        ofHeld = made(held, released);
        ofReleased = made(released, held);
    }

    private static String visit(String name) throws IOException {
        String visit = folder.resolve(name).toString();
        bench.run("new", visit, "--car", "Test car", "--style", "coupe", "--built", "1971-03", "--timezone", "UTC")
                .done();
        JsonNode taken = bench.run("intake", visit, folder.resolve("card").toString(), "--json")
                .done()
                .json();
        assertThat(taken.get("added").asInt()).isEqualTo(5);
        assertThat(taken.get("not_photos").toString()).contains("alone.xmp");
        bench.run(
                        "add",
                        "pins",
                        visit,
                        bench.file(
                                "pins.csv",
                                "photo,zone,at,view,x,y,shows,caption\nIMG_0.JPG,hood,,top,0.2,0.5,hood,\n" + PAPER
                                        + ",hood,2,top,0.3,0.5,title,SECRETPINCAPTION\n"))
                .done();
        bench.run(
                        "add",
                        "statements",
                        visit,
                        bench.file(
                                "statements.csv",
                                "zone,condition,text,severity,photo,at\nhood,damaged,Dented.,major," + PAPER
                                        + "|IMG_0.JPG,2\nroof,repaired,Said aloud.,note,SECRETMEMO.wav,1.5\n"))
                .done();
        bench.run(
                        "add",
                        "marks",
                        visit,
                        bench.file("marks.csv", "part,kind,text,photo\nbody,plate,C02,%s\n".formatted(PAPER)))
                .done();
        return visit;
    }

    private static BuyerFiles made(String visit, String other) throws Exception {
        BuyerFiles files = new BuyerFiles();
        bench.run("pages", visit, "--out", visit + "-pages").done();
        addAll(Path.of(visit + "-pages"), files);
        bench.run("archive", visit, visit + ".zip", "--for-buyer").done();
        for (Map.Entry<String, byte[]> file :
                RfcBag.of(Path.of(visit + ".zip")).files().entrySet()) {
            files.add("bag/" + file.getKey(), file.getValue());
        }
        bench.run("compare", visit, visit.equals(held) ? visit : other, "--out", visit + "-compare")
                .done();
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
    void nothingOfWhatIsHeldBackIsInAnythingForTheBuyer() throws IOException {
        ofHeld.texts.forEach((name, text) -> {
            for (String word : WORDS) {
                assertThat(text.contains(word)).as("%s tells %s", name, word).isFalse();
            }
        });
        for (Map.Entry<String, byte[]> picture : ofHeld.pictures.entrySet()) {
            assertThat(isPage(BuyerFiles.shown(picture.getValue())))
                    .as(picture.getKey())
                    .isFalse();
        }
        assertThat(ofHeld.texts.get("report.pdf text"))
                .contains("Dented.", "Said aloud.")
                .contains("1 paper and 1 voice memo held back by the inspector.");
        assertThat(ofHeld.texts.get("bag/data/tables/photos.csv"))
                .contains("IMG_0.JPG")
                .doesNotContain("paper", "sound");
        assertThat(ofHeld.texts.get("bag/data/tables/statements.csv")).contains("IMG_0.JPG");
        assertThat(ofHeld.texts.keySet()).noneMatch(name -> name.contains("released"));
    }

    @Test
    void aReleasedPaperIsShownAndNamedAndNothingElse() throws IOException {
        assertThat(ofReleased.texts.get("report.pdf text"))
                .contains("SECRETTITLE", "page 2", "SECRETPINCAPTION")
                .contains("1 voice memo held back by the inspector.")
                .doesNotContain("paper held back", "1 paper and");
        assertThat(ofReleased.texts.get("bag/data/tables/photos.csv")).contains("SECRETTITLE");
        int pages = 0;
        for (byte[] picture : ofReleased.pictures.values()) {
            pages += isPage(BuyerFiles.shown(picture)) ? 1 : 0;
        }
        assertThat(pages).as("pictures of the page").isPositive();
        for (String word : List.of("SECRETMEMO", "SECRETSPOKEN", "SECRETSIDECAR")) {
            ofReleased.texts.forEach((name, text) -> assertThat(text.contains(word))
                    .as("%s tells %s", name, word)
                    .isFalse());
        }
    }

    /** The pages are white with a red square at the top left. */
    private static boolean isPage(BufferedImage image) {
        int corner = image.getRGB(image.getWidth() / 20, image.getHeight() / 40);
        int middle = image.getRGB(image.getWidth() * 3 / 4, image.getHeight() / 4);
        return (corner >> 16 & 0xFF) > 200 && (corner >> 8 & 0xFF) < 60 && (middle & 0xFF) > 230;
    }

    @Test
    void whatLiesBesideIsTiedAndListed() {
        Map<String, JsonNode> photos = photos(held);
        assertThat(photos.keySet())
                .containsExactly("IMG_0.JPG", "IMG_0.xmp", "SECRETMEMO.vtt", "SECRETMEMO.wav", PAPER);
        assertThat(photos.get("IMG_0.xmp").get("kind").asText()).isEqualTo("sidecar");
        assertThat(photos.get("IMG_0.xmp").get("beside"))
                .isEqualTo(photos.get("IMG_0.JPG").get("id"));
        assertThat(photos.get("IMG_0.xmp").get("caption").asText()).isEqualTo("SECRETSIDECAR");
        assertThat(photos.get("IMG_0.xmp").get("rating").asInt()).isEqualTo(3);
        assertThat(photos.get("SECRETMEMO.vtt").get("kind").asText()).isEqualTo("words");
        assertThat(photos.get("SECRETMEMO.vtt").get("beside"))
                .isEqualTo(photos.get("SECRETMEMO.wav").get("id"));
        assertThat(photos.get("SECRETMEMO.wav").get("captured_corrected").asText())
                .isEqualTo("2026-03-01T09:01:00+00:00");
        assertThat(photos.get(PAPER).get("pages").asInt()).isEqualTo(2);
        assertThat(photos.get(PAPER).get("released").asBoolean()).isFalse();
        assertThat(photos(released).get(PAPER).get("released").asBoolean()).isTrue();
        assertThat(photos.get("IMG_0.JPG").get("released").isNull()).isTrue();
    }

    private static Map<String, JsonNode> photos(String visit) {
        Map<String, JsonNode> found = new TreeMap<>();
        bench.run("photos", visit, "--json")
                .done()
                .json()
                .get("photos")
                .forEach(photo -> found.put(photo.get("file").asText(), photo));
        return found;
    }

    @Test
    void everythingComesBackFromAnArchiveAndAgainNothingIsNew() throws Exception {
        bench.run("archive", released, folder.resolve("whole.zip").toString()).done();
        String back = folder.resolve("back").toString();
        bench.run("restore", folder.resolve("whole.zip").toString(), back).done();
        assertThat(photos(back)).isEqualTo(photos(released));
        assertThat(bench.run("audit", back, "--json").done().json().get("ok").asBoolean())
                .isTrue();
        assertThat(bench.run("intake", back, folder.resolve("card").toString(), "--json")
                        .done()
                        .json()
                        .get("already_present")
                        .asInt())
                .isEqualTo(5);
        try (Stream<Path> originals = Files.list(Path.of(back, "originals"))) {
            assertThat(originals.filter(file -> file.toString().endsWith("SECRETMEMO.vtt")))
                    .singleElement()
                    .satisfies(file -> assertThat(file).hasSameBinaryContentAs(folder.resolve("card/SECRETMEMO.vtt")));
        }
    }

    @Test
    void pagesThatAreNotThereAndPhotosThatNeedNoReleaseAreRefused() {
        for (String page : List.of("0", "3", "1.5")) {
            bench.run("add", "pins", held, bench.file("bad.csv", "photo,zone,at\n%s,hood,%s\n".formatted(PAPER, page)))
                    .complains(Exit.UNUSABLE, PAPER, "no page", "from 1 to 2");
        }
        bench.run("add", "released", held, bench.file("bad.csv", "photo\nIMG_0.JPG\n"))
                .complains(Exit.UNUSABLE, "IMG_0.JPG is a photo");
        bench.run("add", "pins", held, bench.file("bad.csv", "photo,zone,at\nSECRETMEMO.wav,hood,2.5\n"))
                .complains(Exit.UNUSABLE, "the sound SECRETMEMO.wav is 2 s long");
    }
}
