package quarterlight.caption;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import quarterlight.words.Cue;

/** Timed words in every form that is read, and words that cannot be used. */
class CaptionFileTest {
    private static CaptionFile.Read read(String text) throws WordsUnreadable {
        return CaptionFile.read("walk.txt", text.getBytes(StandardCharsets.UTF_8));
    }

    private static List<String> texts(String text) throws WordsUnreadable {
        return read(text).words().cues().stream().map(Cue::text).toList();
    }

    @Test
    void webVttWithHoursSettingsNotesAndMarkup() throws WordsUnreadable {
        List<Cue> cues =
                read("""
                        WEBVTT
                        Kind: captions

                        NOTE not said

                        1
                        01:00:01.500 --> 01:00:04.000 align:start
                        <v Ann>Hood is <c.red>dented</c> &amp; bent

                        01:00:04.000 --> 01:00:06.000
                        <v Bob>no <00:05.1>it isn't
                        """)
                        .words()
                        .cues();
        assertThat(cues).extracting(Cue::text).containsExactly("Hood is dented & bent", ">> no it isn't");
        assertThat(cues.get(0).fromSeconds()).isEqualTo(3601.5, within(1e-9));
        assertThat(cues.get(0).untilSeconds()).isEqualTo(3604, within(1e-9));
    }

    @Test
    void webVttWithoutHours() throws WordsUnreadable {
        assertThat(read("WEBVTT\n\n00:01.000 --> 00:02.000\nhood\n")
                        .words()
                        .cues()
                        .get(0)
                        .fromSeconds())
                .isEqualTo(1);
    }

    @Test
    void srtWithCommas() throws WordsUnreadable {
        List<Cue> cues =
                read("1\r\n00:00:01,250 --> 00:00:02,750\r\nleft door\r\nis dented\r\n\r\n2\r\n00:00:03,000 --> 00:00:04,000\r\nroof\r\n")
                        .words()
                        .cues();
        assertThat(cues).extracting(Cue::text).containsExactly("left door is dented", "roof");
        assertThat(cues.get(0).fromSeconds()).isEqualTo(1.25);
    }

    @Test
    void linesWithATimeLastUntilTheNext() throws WordsUnreadable {
        List<Cue> cues = read("[0:00] hood\nis fine\n[1:05] roof\n[1:02:03] floor\n")
                .words()
                .cues();
        assertThat(cues).extracting(Cue::text).containsExactly("hood is fine", "roof", "floor");
        assertThat(cues).extracting(Cue::fromSeconds).containsExactly(0.0, 65.0, 3723.0);
        assertThat(cues.get(0).untilSeconds()).isLessThanOrEqualTo(65);
    }

    @Test
    void segmentsOfARecognizer() throws WordsUnreadable {
        assertThat(
                        read("{\"text\":\"all\",\"segments\":[{\"id\":0,\"start\":1.5,\"end\":3,\"text\":\" Hood is fine.\"}]}")
                                .words()
                                .cues())
                .containsExactly(new Cue(1.5, 3, "Hood is fine."));
    }

    @Test
    void wordsOfARecognizerGoBeforeTheirSegment() throws WordsUnreadable {
        assertThat(
                        texts(
                                "{\"segments\":[{\"start\":1,\"end\":3,\"text\":\"hood dented\",\"words\":["
                                        + "{\"word\":\"hood\",\"start\":1,\"end\":1.5},{\"word\":\"dented\",\"start\":2,\"end\":3}]}]}"))
                .containsExactly("hood", "dented");
    }

    @Test
    void offsetsInMilliseconds() throws WordsUnreadable {
        assertThat(read("{\"transcription\":[{\"offsets\":{\"from\":1500,\"to\":3000},\"text\":\" hood\"}]}")
                        .words()
                        .cues())
                .containsExactly(new Cue(1.5, 3, "hood"));
    }

    @Test
    void rollingCaptionsAreSaidOnce() throws WordsUnreadable {
        assertThat(
                        texts(
                                """
                        WEBVTT

                        00:00.000 --> 00:02.000
                        left front fender dented

                        00:02.000 --> 00:04.000
                        left front fender dented
                        right one fine
                        """))
                .containsExactly("left front fender dented", "right one fine");
    }

    @Test
    void timesThatRunBackAreReadInOrderWithARemark() throws WordsUnreadable {
        CaptionFile.Read read = read("[0:20] roof\n[0:05] hood\n");
        assertThat(read.words().cues()).extracting(Cue::text).containsExactly("hood", "roof");
        assertThat(read.remarks()).anyMatch(remark -> remark.contains("run back"));
    }

    @Test
    void otherScriptsAreReadWithARemark() throws WordsUnreadable {
        CaptionFile.Read read = read("[0:01] \u043a\u0430\u043f\u043e\u0442 \u0446\u0435\u043b\u044b\u0439\n");
        assertThat(read.words().cues()).hasSize(1);
        assertThat(read.remarks()).anyMatch(remark -> remark.contains("Latin letters"));
        assertThat(read("[0:01] hood\n").remarks()).isEmpty();
    }

    @Test
    void bytesThatAreNotUtf8AreReadWithARemark() throws WordsUnreadable {
        CaptionFile.Read read = CaptionFile.read("a.srt", "[0:01] it\u00e9m\n".getBytes(StandardCharsets.ISO_8859_1));
        assertThat(read.words().cues().get(0).text()).isEqualTo("it\u00e9m");
        assertThat(read.remarks()).hasSize(1);
    }

    @Test
    void utf16WithAMarkIsRead() throws WordsUnreadable {
        byte[] bytes = "\ufeff[0:01] hood\n".getBytes(StandardCharsets.UTF_16LE);
        assertThat(CaptionFile.read("a.txt", bytes).words().cues()).hasSize(1);
    }

    @Test
    void withoutTimesItIsRefusedWithASentence() {
        assertThatThrownBy(() -> read("Left fender dented.\n"))
                .isInstanceOf(WordsUnreadable.class)
                .hasMessageStartingWith("walk.txt: has no times");
    }

    @Test
    void emptyWordsAreRefused() {
        assertThatThrownBy(() -> read(" \n")).hasMessageContaining("is empty");
        assertThatThrownBy(() -> read("[0:01] \n")).hasMessageContaining("no words");
    }

    @Test
    void aFilmIsNoText() {
        byte[] film = new byte[4096];
        new Random(1).nextBytes(film);
        assertThatThrownBy(() -> CaptionFile.read("walk.mp4", film)).hasMessageContaining("is no text");
    }

    @Test
    void brokenJsonIsRefusedWithASentence() {
        assertThatThrownBy(() -> read("{\"segments\":[{\"start\":1,")).hasMessageContaining("no usable JSON");
        assertThatThrownBy(() -> read("{\"a\":".repeat(5000))).hasMessageContaining("no usable JSON");
    }

    @Test
    void whatIsTooLargeIsRefusedUnread(@TempDir Path folder) throws Exception {
        Path large = folder.resolve("large.vtt");
        try (var out = java.nio.channels.FileChannel.open(
                large, java.nio.file.StandardOpenOption.CREATE, java.nio.file.StandardOpenOption.WRITE)) {
            out.write(java.nio.ByteBuffer.wrap(new byte[] {'W'}), 100L << 20);
        }
        assertThatThrownBy(() -> CaptionFile.read(large)).hasMessageContaining("has more than 8 MB");
        assertThatThrownBy(() -> CaptionFile.read(folder)).hasMessageContaining("is a folder");
        assertThatThrownBy(() -> CaptionFile.read(folder.resolve("none.vtt"))).hasMessageContaining("is not there");
        Files.delete(large);
    }

    @Test
    void tooManyCuesAreRefused() throws WordsUnreadable {
        assertThat(read("[0:01] a\n".repeat(CaptionFile.MAX_CUES)).words().cues())
                .isNotEmpty();
        assertThatThrownBy(() -> read("[0:01] a\n".repeat(CaptionFile.MAX_CUES + 1)))
                .hasMessageContaining("too many");
    }

    @Test
    void tooManyWordsAreRefusedHoweverFewCuesTheyStandIn() throws WordsUnreadable {
        String hour = "[0:01] " + "rust ".repeat(CaptionFile.MAX_WORDS - 1) + "rust";
        assertThat(read(hour + "\n").words().cues()).isNotEmpty();
        assertThatThrownBy(() -> read(hour + "\n[0:40] again\n")).hasMessageContaining("has more than 50000 words");
    }

    @Test
    void cutAndFlippedFilesNeverFailOtherwiseThanWithASentence() throws Exception {
        byte[] good =
                "WEBVTT\n\n00:00:01.000 --> 00:00:02.000\n<v A>hood is dented\n\n{\"segments\":[{\"start\":1,\"end\":2,\"text\":\"a\"}]}"
                        .getBytes(StandardCharsets.UTF_8);
        Random random = new Random(24);
        for (int i = 0; i < 3000; i++) {
            byte[] bytes = java.util.Arrays.copyOf(good, 1 + random.nextInt(good.length));
            bytes[random.nextInt(bytes.length)] = (byte) random.nextInt(256);
            try {
                assertThat(CaptionFile.read("a.vtt", bytes).words().cues()).isNotEmpty();
            } catch (WordsUnreadable e) {
                assertThat(e.getMessage()).startsWith("a.vtt: ");
            }
        }
    }
}
