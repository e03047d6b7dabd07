package quarterlight.cli.evidence;

import static org.assertj.core.api.Assertions.assertThat;
import static quarterlight.cli.WalkedVisit.drafts;
import static quarterlight.cli.WalkedVisit.record;
import static quarterlight.cli.WalkedVisit.visit;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import quarterlight.cli.Bench;
import quarterlight.cli.call.Exit;
import quarterlight.photo.MediaSamples;

/** Words of a walk are kept as evidence, tied to their film or memo, and read in their order. */
class WordsVerbTest {
    @TempDir
    private Path folder;

    private Bench bench() {
        return new Bench(folder);
    }

    @Test
    void severalPartsAreOneWalkInTheOrderGiven() {
        Bench bench = bench();
        String visit = visit(bench);
        String first =
                bench.file("zz-first.txt", "[0:03] Left front door, ripple in it.\n[0:07] Driver mirror is missing.\n");
        String second = bench.file("aa-second.txt", "[0:02] It is pitted.\n");
        bench.run("words", visit, first, second).done();
        List<JsonNode> drafts = drafts(bench, visit);
        assertThat(drafts.get(0).get("source").asText()).isEqualTo("zz-first.txt");
        assertThat(drafts.get(drafts.size() - 1).get("source").asText()).isEqualTo("aa-second.txt");
        assertThat(bench.run("listen", visit).done().out()).containsSubsequence("zz-first.txt", "aa-second.txt");
        assertThat(bench.run("words", visit, first).done().out()).contains("0 files of words added, 1 there already");
    }

    @Test
    void wordsAreTiedByNameOrByHandAndCarryTheMomentOfTheirMemo() throws Exception {
        Bench bench = bench();
        String visit = visit(bench);
        Path card = Files.createDirectories(folder.resolve("card"));
        MediaSamples.wavWithTime(card.resolve("memo.wav"), 10, "2026-03-01", "09:01:00");
        MediaSamples.wavWithTime(card.resolve("other.wav"), 10, "2026-03-01", "08:01:00");
        bench.run("intake", visit, card.toString()).done();
        bench.run(
                        "words",
                        visit,
                        bench.file("memo.en.json", "[{\"start\":3,\"end\":5,\"text\":\"The hood is dented.\"}]"))
                .done();
        bench.run("words", visit, bench.file("loose.txt", "[0:04] The roof is dented.\n"))
                .done();
        Map<String, JsonNode> photos = photos(bench, visit);
        assertThat(photos.get("memo.en.json").get("kind").asText()).isEqualTo("words");
        assertThat(photos.get("memo.en.json").get("beside"))
                .isEqualTo(photos.get("memo.wav").get("id"));
        assertThat(photos.get("loose.txt").get("beside").isNull()).isTrue();
        bench.run("words", visit, bench.file("loose.txt", "[0:04] The roof is dented.\n"), "--of", "other.wav")
                .done();
        assertThat(photos(bench, visit).get("loose.txt").get("beside"))
                .isEqualTo(photos.get("other.wav").get("id"));

        List<JsonNode> drafts = drafts(bench, visit);
        assertThat(drafts.get(0).get("source").asText())
                .as("recorded an hour earlier")
                .isEqualTo("loose.txt");
        JsonNode hood = drafts.stream()
                .filter(draft -> draft.get("zones").toString().contains("hood"))
                .findFirst()
                .orElseThrow();
        bench.run("listen", visit, "--keep", hood.get("id").asText()).done();
        assertThat(record(visit).statements().get(0).value()).satisfies(row -> {
            assertThat(row.photo().orElseThrow().value())
                    .isEqualTo(photos.get("memo.wav").get("id").asLong());
            assertThat(row.atSeconds()).contains(3.0);
        });
        bench.run("words", visit, bench.file("more.txt", "[0:01] The roof is dented.\n"), "--of", "loose.txt")
                .complains(Exit.UNUSABLE, "loose.txt is a words", "film or a sound");
    }

    private static Map<String, JsonNode> photos(Bench bench, String visit) {
        Map<String, JsonNode> photos = new LinkedHashMap<>();
        bench.run("photos", visit, "--json")
                .done()
                .json()
                .get("photos")
                .forEach(photo -> photos.put(photo.get("file").asText(), photo));
        return photos;
    }

    @Test
    void whatCannotBeReadIsRefusedAndWhatIsOddIsTold() throws IOException {
        Bench bench = bench();
        String visit = visit(bench);
        String good = bench.file("good.txt", "[0:09] The hood is dented.\n[0:01] The roof is dented.\n");
        String before = bench.state(visit);
        bench.run("words", visit, good, bench.file("plain.txt", "The hood is dented.\n"))
                .complains(Exit.UNUSABLE, "plain.txt", "has no times", "Nothing was added");
        bench.run("words", visit, good, bench.folder("missing.vtt"))
                .complains(Exit.UNUSABLE, "missing.vtt", "not there");
        Files.write(folder.resolve("film.mp4"), new byte[] {0, 0, 0, 24, 'f', 't', 'y', 'p', 0, 1, 2, 3, 4, 5, 6, 7});
        bench.run("words", visit, bench.folder("film.mp4")).complains(Exit.UNUSABLE, "film.mp4", "no text");
        assertThat(bench.state(visit)).isEqualTo(before);
        assertThat(bench.run("words", visit, good).done().out()).contains("good.txt: ");
        assertThat(bench.run("listen", visit).done().out()).contains("good.txt: ");
        try (Stream<Path> originals = Files.list(Path.of(visit, "originals"))) {
            assertThat(originals.filter(file -> file.toString().endsWith("good.txt")))
                    .singleElement()
                    .satisfies(file -> assertThat(file).hasSameBinaryContentAs(Path.of(good)));
        }
    }

    @Test
    void wordsFoundAtIntakeAreHeardAndUnreadableOnesAreTold() throws Exception {
        Bench bench = bench();
        String visit = visit(bench);
        Path card = Files.createDirectories(folder.resolve("card"));
        MediaSamples.wavWithTime(card.resolve("memo.wav"), 10, "2026-03-01", "09:01:00");
        MediaSamples.wavWithTime(card.resolve("bad.wav"), 9, "2026-03-01", "09:05:00");
        Files.writeString(card.resolve("memo.vtt"), "WEBVTT\n\n00:01.000 --> 00:03.000\nThe hood is dented.\n");
        Files.writeString(card.resolve("memo.srt"), "1\n00:00:01,000 --> 00:00:03,000\nThe hood is dented.\n");
        Files.writeString(card.resolve("bad.vtt"), "WEBVTT\n\nno times here\n");
        bench.run("intake", visit, card.toString()).done();
        JsonNode heard = bench.run("listen", visit, "--json").done().json();
        assertThat(heard.get("drafts")).isNotEmpty();
        assertThat(heard.get("drafts").findValuesAsText("source").stream().distinct())
                .hasSize(1);
        assertThat(heard.get("remarks").toString()).contains("bad.vtt", "not read", "same sound");
    }
}
