package quarterlight.cli.evidence;

import static org.assertj.core.api.Assertions.assertThat;
import static quarterlight.cli.WalkedVisit.drafts;
import static quarterlight.cli.WalkedVisit.visit;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import quarterlight.cli.Bench;
import quarterlight.cli.BuyerFiles;
import quarterlight.edit.row.RowEdits;
import quarterlight.store.VisitStore;
import quarterlight.visit.pin.Recorded;
import quarterlight.visit.row.RecordKind;
import quarterlight.visit.statement.Statement;

/** The report says when a statement was said, and in which words, as far as memo and words are released; sound stays at home. */
class SaidQuotesTest {
    private static final int RATE = 8000;
    private static final String WORDS =
            "[0:01] The left front fender is dented.\n[0:05] My neighbor grows quillwort.\n";

    @TempDir
    private Path folder;

    private Bench bench;
    private String visit;
    private String sound;

    @BeforeEach
    void keepOneStatementOfAMemo() throws Exception {
        bench = new Bench(folder);
        visit = visit(bench);
        byte[] noise = new byte[8 * RATE * 2];
        new Random(5).nextBytes(noise);
        sound = new String(noise, 4000, 60, StandardCharsets.ISO_8859_1);
        Path card = Files.createDirectories(folder.resolve("card"));
        Files.write(card.resolve("memo.wav"), wav(noise));
        bench.run("intake", visit, card.toString()).done();
        bench.run("words", visit, bench.file("memo.txt", WORDS), "--of", "memo.wav")
                .done();
        String dent = drafts(bench, visit).stream()
                .filter(draft -> draft.get("what").asText().equals("statement"))
                .map(draft -> draft.get("id").asText())
                .findFirst()
                .orElseThrow();
        bench.run("listen", visit, "--keep", dent).done();
    }

    private static byte[] wav(byte[] samples) {
        ByteBuffer out = ByteBuffer.allocate(44 + samples.length).order(ByteOrder.LITTLE_ENDIAN);
        out.put("RIFF".getBytes(StandardCharsets.US_ASCII)).putInt(36 + samples.length);
        out.put("WAVEfmt ".getBytes(StandardCharsets.US_ASCII)).putInt(16);
        out.putShort((short) 1).putShort((short) 1).putInt(RATE).putInt(2 * RATE);
        out.putShort((short) 2).putShort((short) 16);
        out.put("data".getBytes(StandardCharsets.US_ASCII)).putInt(samples.length);
        return out.put(samples).array();
    }

    private void release(String file) {
        bench.run("add", "released", visit, bench.file("released.csv", "photo\n" + file + "\n"))
                .done();
    }

    private void putOtherwise(boolean secret) throws Exception {
        try (VisitStore store = VisitStore.openForEditing(Path.of(visit), Bench.CLOCK)) {
            Recorded<Statement> row = store.read().statements().get(0);
            Statement said = row.value();
            new RowEdits(store)
                    .update(
                            RecordKind.STATEMENTS,
                            row.id(),
                            new Statement(
                                    said.zone(),
                                    said.what(),
                                    "A shallow dent.",
                                    said.severity(),
                                    said.basis(),
                                    said.photo(),
                                    said.atSeconds(),
                                    List.of(),
                                    said.details().withConfidential(secret)));
        }
    }

    private BuyerFiles made(String name) throws Exception {
        BuyerFiles files = BuyerFiles.made(bench, visit, name);
        files.texts.forEach((file, text) ->
                assertThat(text.contains(sound)).as("%s holds the sound", file).isFalse());
        files.texts.forEach((file, text) -> assertThat(text).as(file).doesNotContain("quillwort"));
        return files;
    }

    private static void says(BuyerFiles files, String... all) {
        for (String page : List.of("report.pdf text", "report.html")) {
            String text = new String(
                            files.texts.get(page).getBytes(StandardCharsets.ISO_8859_1), StandardCharsets.UTF_8)
                    .replaceAll("\\s+", " ");
            String either = text + files.texts.get(page).replaceAll("\\s+", " ");
            assertThat(either).as(page).contains(all);
        }
    }

    private static void isSilentOf(BuyerFiles files, String... words) {
        files.texts.forEach((name, text) -> assertThat(text).as(name).doesNotContain(words));
    }

    @Test
    void ofAHeldBackMemoNeitherTimeNorWordsAreTold() throws Exception {
        BuyerFiles kept = made("kept");
        says(kept, "The left front fender is dented");
        isSilentOf(kept, "said at", "memo.wav");
        putOtherwise(false);
        isSilentOf(made("otherwise"), "said at", "front fender is dented");
    }

    @Test
    void aReleasedMemoTellsTheTimeAndReleasedWordsTellThemselves() throws Exception {
        release("memo.wav");
        says(made("memo"), "The left front fender is dented", "said at 0:01");
        putOtherwise(false);
        BuyerFiles put = made("otherwise");
        says(put, "A shallow dent.");
        isSilentOf(put, "said at", "front fender is dented");
        release("memo.txt");
        says(made("words"), "A shallow dent.", "said at 0:01: ", "The left front fender is dented");
    }

    @Test
    void aPrivateStatementIsNotQuotedThoughItsWordsAreReleased() throws Exception {
        release("memo.wav");
        release("memo.txt");
        putOtherwise(true);
        isSilentOf(made("private"), "said at", "front fender is dented");
    }
}
