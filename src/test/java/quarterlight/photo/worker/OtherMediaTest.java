package quarterlight.photo.worker;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Stream;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import quarterlight.photo.MediaSamples;
import quarterlight.photo.MediaType;
import quarterlight.photo.OggSample;
import quarterlight.photo.PictureUnreadable;
import quarterlight.photo.SamplePictures;
import quarterlight.photo.header.FileFacts;
import quarterlight.photo.paper.PaperFile;
import quarterlight.visit.photo.CaptureTime;
import quarterlight.visit.photo.MediaKind;
import quarterlight.visit.photo.SidecarWords;

/** What a worker says of papers, sounds, sidecars and cameras' own formats. */
@Timeout(240)
class OtherMediaTest {
    private static final Instant NOW = Instant.parse("2026-11-29T12:00:00Z");
    private static final DecodingWorkers WORKERS = new DecodingWorkers();

    @TempDir
    Path folder;

    @AfterAll
    static void stop() {
        WORKERS.close();
    }

    private static MediaType type(Path file) throws IOException {
        byte[] bytes = Files.readAllBytes(file);
        return MediaType.of(java.util.Arrays.copyOf(bytes, Math.min(bytes.length, MediaType.HEAD_BYTES)))
                .orElseThrow();
    }

    private static MediaProbe look(Path file) throws Exception {
        return WORKERS.look(file, type(file), NOW);
    }

    @Test
    void aPaperIsShownPageByPage() throws Exception {
        Path paper = MediaSamples.paper(folder.resolve("a.pdf"), "first page", "second page", "third page");
        MediaProbe looked = look(paper);
        assertThat(looked.facts().type()).isEqualTo(MediaType.PDF);
        assertThat(looked.facts().more().pages()).hasValue(3);
        assertThat(looked.facts().header().height()).hasValue(PaperFile.LONG_SIDE);
        assertThat(looked.facts().header().width()).hasValue((int) (PaperFile.LONG_SIDE * 595.27563 / 841.8898));
        assertThat(looked.facts().header().captured()).isEmpty();
        assertThat(looked.sharpness()).isEmpty();
        assertThat(looked.thumbnail()).isPresent();
        BufferedImage page = WORKERS.page(paper, 2, 800);
        assertThat(page.getHeight()).isBetween(798, 800);
        assertThat(page.getRGB(20, 20) & 0xFFFFFF)
                .as("the square at the top left")
                .isEqualTo(0xFF0000);
        assertThat(page.getRGB(page.getWidth() / 2, 100) & 0xFFFFFF).isEqualTo(0xFFFFFF);
        assertThat(darkPixels(page)).as("letters are drawn").isGreaterThan(50);
        assertThatThrownBy(() -> WORKERS.page(paper, 4, 800))
                .isInstanceOf(PictureUnreadable.class)
                .hasMessageContaining("no page 4");
    }

    private static long darkPixels(BufferedImage page) {
        return Stream.iterate(0, y -> y < page.getHeight(), y -> y + 1)
                .mapToLong(y -> Stream.iterate(0, x -> x < page.getWidth(), x -> x + 1)
                        .filter(x -> (page.getRGB(x, y) & 0xFFFFFF) < 0x404040)
                        .count())
                .sum();
    }

    @Test
    void aLockedPaperIsKeptWithASentence() throws Exception {
        MediaProbe looked = look(MediaSamples.lockedPaper(folder.resolve("locked.pdf")));
        assertThat(looked.thumbnail()).isEmpty();
        assertThat(looked.facts().more().pages()).isEmpty();
        assertThat(looked.facts().notes()).singleElement().asString().contains("locked by a password", "kept");
        assertThat(looked.notes()).isEmpty();
    }

    @Test
    void pagesOfAnySizeAreReducedToTheSame() throws Exception {
        Path paper = folder.resolve("sizes.pdf");
        try (PDDocument document = new PDDocument()) {
            MediaSamples.page(document, new PDRectangle(1_000_000, 500_000), "giant");
            MediaSamples.page(document, new PDRectangle(3, 3), "tiny");
            MediaSamples.page(document, new PDRectangle(0, 0), "nothing");
            document.save(paper.toFile());
        }
        FileFacts facts = look(paper).facts();
        assertThat(facts.header().width()).hasValue(PaperFile.LONG_SIDE);
        assertThat(facts.header().height()).hasValue(PaperFile.LONG_SIDE / 2);
        assertThat(WORKERS.page(paper, 1, 400).getWidth()).isBetween(398, 400);
        assertThat(WORKERS.page(paper, 2, 400).getWidth()).isBetween(398, 400);
        assertThatThrownBy(() -> WORKERS.page(paper, 3, 400)).isInstanceOf(PictureUnreadable.class);
    }

    @Test
    void aPaperOfVeryManyPagesIsKeptAndItsFirstOnesShown() throws Exception {
        Path paper = MediaSamples.longPaper(folder.resolve("many.pdf"), 100_000);
        FileFacts facts = look(paper).facts();
        assertThat(facts.more().pages()).hasValue(PaperFile.MAX_PAGES);
        assertThat(facts.notes()).singleElement().asString().contains("100000 pages");
        assertThat(WORKERS.page(paper, 1, 200).getWidth()).isBetween(199, 200);
        assertThat(WORKERS.page(paper, PaperFile.MAX_PAGES, 200).getWidth()).isBetween(199, 200);
        assertThatThrownBy(() -> WORKERS.page(paper, PaperFile.MAX_PAGES + 1, 200))
                .isInstanceOf(PictureUnreadable.class);
    }

    @Test
    void whatIsNoPaperAtAllIsKeptWithANote() throws Exception {
        Path paper = Files.writeString(folder.resolve("cut.pdf"), "%PDF-1.7\n1 0 obj<</Type/Cat");
        MediaProbe looked = look(paper);
        assertThat(looked.thumbnail()).isEmpty();
        assertThat(looked.facts().notes()).singleElement().asString().contains("kept", "PDF data is damaged");
    }

    @Test
    void soundsTellTheirLengthAndTime() throws Exception {
        FileFacts wav = look(MediaSamples.wavWithTime(folder.resolve("a.wav"), 2.5, "2026-03-01", "09:41:07"))
                .facts();
        assertThat(wav.type().kind()).isEqualTo(MediaKind.SOUND);
        assertThat(wav.header().seconds().orElseThrow()).isEqualTo(2.5, within(0.01));
        assertThat(wav.header().captured().orElseThrow().time()).isEqualTo(LocalDateTime.of(2026, 3, 1, 9, 41, 7));
        assertThat(wav.header().captured().orElseThrow().offset()).isEmpty();
        assertThat(look(MediaSamples.wav(folder.resolve("b.wav"), 1))
                        .facts()
                        .header()
                        .captured())
                .isEmpty();
        assertThat(look(MediaSamples.amr(folder.resolve("c.amr"), 150))
                        .facts()
                        .header()
                        .seconds()
                        .orElseThrow())
                .as("estimated by the container's reader")
                .isEqualTo(3, within(0.15));
        assertThat(look(MediaSamples.mp3(folder.resolve("d.mp3"), 200))
                        .facts()
                        .header()
                        .seconds()
                        .orElseThrow())
                .isEqualTo(200 * 1152 / 44100.0, within(0.2));
    }

    @Test
    void aMemoInOggTellsItsLengthAndTheTimeOfItsTags() throws Exception {
        FileFacts memo = look(OggSample.opus(
                        folder.resolve("a.ogg"), 150, List.of("TITLE=walk", "DATE=2026-03-01T09:41:07+01:00")))
                .facts();
        assertThat(memo.type()).isEqualTo(MediaType.OGG);
        assertThat(memo.type().kind()).isEqualTo(MediaKind.SOUND);
        assertThat(memo.header().seconds().orElseThrow())
                .as("150 packets of 20 ms")
                .isEqualTo(3, within(0.02));
        assertThat(memo.header().captured().orElseThrow().time()).isEqualTo(LocalDateTime.of(2026, 3, 1, 9, 41, 7));
        assertThat(memo.header().captured().orElseThrow().offset()).contains(ZoneOffset.ofHours(1));
        assertThat(memo.notes()).isEmpty();

        FileFacts music = look(OggSample.opus(folder.resolve("b.opus"), 50, List.of("DATE=2019")))
                .facts();
        assertThat(music.type()).isEqualTo(MediaType.OGG);
        assertThat(music.header().seconds().orElseThrow()).isEqualTo(1, within(0.02));
        assertThat(music.header().captured()).as("a year tells of the music").isEmpty();
    }

    @Test
    void memosInContainersOfFilmsAreSounds() throws Exception {
        LocalDateTime utc = LocalDateTime.of(2026, 3, 1, 17, 0, 9);
        for (String brand : List.of("M4A ", "mp42", "3gp4")) {
            FileFacts memo = look(MediaSamples.memo(folder.resolve("memo-" + brand.strip()), brand, utc, 12.5))
                    .facts();
            assertThat(memo.type().kind()).as(brand).isEqualTo(MediaKind.SOUND);
            assertThat(memo.header().seconds()).hasValue(12.5);
            assertThat(memo.header().captured().orElseThrow().time()).isEqualTo(utc);
        }
    }

    static Stream<Arguments> raws() {
        return Stream.of(
                Arguments.of("a.cr3", MediaType.CR3),
                Arguments.of("a.raf", MediaType.RAF),
                Arguments.of("a.x3f", MediaType.X3F));
    }

    @ParameterizedTest
    @MethodSource("raws")
    void camerasOwnFormatsAreShownByThePictureInThem(String name, MediaType type) throws Exception {
        byte[] plain = SamplePictures.jpeg(640, 480, 3);
        byte[] withExif = SamplePictures.withExif(plain, "2026:03:01 09:10:11", "", 6);
        Path file = folder.resolve(name);
        switch (type) {
            case CR3 ->
                MediaSamples.cr3(
                        file,
                        plain,
                        MediaSamples.tiffOfShort(0x0112, 6),
                        MediaSamples.tiffOfText(0x9003, "2026:03:01 09:10:11"));
            case RAF -> MediaSamples.raf(file, withExif);
            default -> MediaSamples.x3f(file, withExif);
        }
        MediaProbe looked = look(file);
        assertThat(looked.facts().type()).isEqualTo(type);
        assertThat(looked.facts().header().width()).hasValue(480);
        assertThat(looked.facts().header().height()).hasValue(640);
        assertThat(looked.facts().header().captured().orElseThrow().time())
                .isEqualTo(LocalDateTime.of(2026, 3, 1, 9, 10, 11));
        assertThat(looked.thumbnail()).isPresent();
        assertThat(looked.sharpness()).isPresent();
        Path jpeg = Files.write(folder.resolve("same.jpg"), plain);
        assertThat(pixels(WORKERS.upright(file, type, 6, 320)))
                .isEqualTo(pixels(WORKERS.upright(jpeg, MediaType.JPEG, 6, 320)));
    }

    @ParameterizedTest
    @MethodSource("raws")
    void camerasOwnFormatsThatBreakOffAreKept(String name, MediaType type) throws Exception {
        Path whole = folder.resolve(name);
        byte[] jpeg = SamplePictures.jpeg(64, 48, 3);
        switch (type) {
            case CR3 -> MediaSamples.cr3(whole, jpeg, new byte[0], new byte[0]);
            case RAF -> MediaSamples.raf(whole, jpeg);
            default -> MediaSamples.x3f(whole, jpeg);
        }
        byte[] bytes = Files.readAllBytes(whole);
        for (int length : List.of(16, 90, bytes.length / 2, bytes.length - 70)) {
            Path cut = Files.write(folder.resolve("cut-" + length), java.util.Arrays.copyOf(bytes, length));
            MediaProbe looked = WORKERS.look(cut, type, NOW);
            assertThat(looked.facts().type()).isEqualTo(type);
        }
    }

    /** Files of real cameras; what is expected was told by another reader (README beside them). */
    @ParameterizedTest
    @CsvSource({
        "real-1.cr3, CR3, 2018-02-21T12:08:56.210, 21, +00:00",
        "real-2.raf, RAF, 2007-05-22T13:58:30, '',",
        "real-3.x3f, X3F, , ,",
        "real-4.x3f, X3F, 2009-11-28T13:05:20, '',",
    })
    void realFilesOfTheseFamiliesTellTheirTime(
            String name, MediaType type, LocalDateTime time, String fraction, ZoneOffset offset) throws Exception {
        Path file = folder.resolve(name);
        try (InputStream in = OtherMediaTest.class.getResourceAsStream(name)) {
            Files.copy(in, file);
        }
        assertThat(type(file)).isEqualTo(type);
        Optional<CaptureTime> told = look(file).facts().header().captured();
        assertThat(told.map(CaptureTime::time)).isEqualTo(Optional.ofNullable(time));
        assertThat(told.map(CaptureTime::fraction)).isEqualTo(Optional.ofNullable(fraction));
        assertThat(told.flatMap(CaptureTime::offset)).isEqualTo(Optional.ofNullable(offset));
    }

    private static int[] pixels(BufferedImage image) {
        return image.getRGB(0, 0, image.getWidth(), image.getHeight(), null, 0, image.getWidth());
    }

    private MediaProbe sidecar(String xml) throws Exception {
        return WORKERS.look(Files.writeString(folder.resolve("a.xmp"), xml), MediaType.XMP, NOW);
    }

    private static final String XMP =
            "<?xpacket begin='' id='W5M0MpCehiHzreSzNTczkc9d'?><x:xmpmeta xmlns:x='adobe:ns:meta/'><rdf:RDF"
                    + " xmlns:rdf='http://www.w3.org/1999/02/22-rdf-syntax-ns#'><rdf:Description rdf:about=''"
                    + " xmlns:xmp='http://ns.adobe.com/xap/1.0/' xmlns:tiff='http://ns.adobe.com/tiff/1.0/'"
                    + " xmlns:dc='http://purl.org/dc/elements/1.1/' xmp:Rating='%s'"
                    + " tiff:Orientation='6'><dc:description><rdf:Alt><rdf:li xml:lang='x-default'>Dent at the &amp;"
                    + " edge</rdf:li></rdf:Alt></dc:description>"
                    + "<dc:subject><rdf:Bag><rdf:li>hood</rdf:li><rdf:li>dent</rdf:li></rdf:Bag></dc:subject></rdf:Description></rdf:RDF></x:xmpmeta><?xpacket"
                    + " end='w'?>";

    @Test
    void aSidecarSaysCaptionKeywordsRatingAndRotation() throws Exception {
        SidecarWords said = sidecar(XMP.formatted("4")).facts().more().said().orElseThrow();
        assertThat(said.caption()).contains("Dent at the & edge");
        assertThat(said.keywords()).containsExactly("hood", "dent");
        assertThat(said.rating()).hasValue(4);
        assertThat(said.orientation()).hasValue(6);
        for (String bad : List.of("6", "-2", "x")) {
            assertThat(sidecar(XMP.formatted(bad))
                            .facts()
                            .more()
                            .said()
                            .orElseThrow()
                            .rating())
                    .as(bad)
                    .isEqualTo(OptionalInt.empty());
        }
        assertThat(sidecar(XMP.formatted("-1"))
                        .facts()
                        .more()
                        .said()
                        .orElseThrow()
                        .rating())
                .hasValue(-1);
    }

    @Test
    void nothingOutsideASidecarIsRead() throws Exception {
        Path secret = Files.writeString(folder.resolve("secret.txt"), "OUTSIDEWORD");
        String hostile = "<!DOCTYPE x [<!ENTITY out SYSTEM '" + secret.toUri() + "'><!ENTITY a 'AAAA'>]>"
                + XMP.formatted("3")
                        .replace("<?xpacket begin='' id='W5M0MpCehiHzreSzNTczkc9d'?>", "")
                        .replace("Dent", "&out;Dent");
        FileFacts facts = sidecar(hostile).facts();
        assertThat(facts.toString()).doesNotContain("OUTSIDEWORD");
        FileFacts cut = sidecar(XMP.formatted("3").substring(0, 480)).facts();
        assertThat(cut.notes()).singleElement().asString().contains("damaged", "kept");
        assertThat(cut.more().said().orElseThrow().rating()).hasValue(3);
    }
}
