package quarterlight.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import quarterlight.caption.CaptionFile;
import quarterlight.cli.call.Exit;
import quarterlight.store.VisitStore;

/** What a careless or hostile hand can put into a call: each ends in a sentence, and soon. */
@Timeout(120)
class HostileInputTest {
    @TempDir
    Path folder;

    private Bench bench;
    private String visit;

    @BeforeEach
    void visit() {
        bench = new Bench(folder);
        visit = bench.visit();
    }

    private Bench.Outcome add(String kind, String text) {
        return bench.run("add", kind, visit, bench.file(kind + ".csv", text));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {"1.234 | 4,5", "12.345 | 0,5", "999.999 | 1,0", "1,234 | 4.5", "-1.234 | 4,5"})
    void aNumberThatCouldBeThousandsIsRefusedBesideTheOtherSign(String number, String other) {
        add("readings", "zone;value;unit\nhood;" + other + ";mil\nroof;" + number + ";um\n")
                .complains(Exit.UNUSABLE, "line 3", "column value", number, "could be");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {"1.234 | 4.5", "1,234 | 4,5", "0.512 | 4,5", "1.23 | 4,5", "1.2345 | 4,5", "1234 | 4,5"})
    void aNumberThatCanBeMeantInOneWayOnlyIsTaken(String number, String other) {
        add("readings", "zone;value;unit;note\nhood;" + other + ";mil;\nroof;" + number + ";um;on a film of oil\n")
                .done();
    }

    @Test
    void textIsNoNumberWhateverItLooksLike() {
        add("statements", "zone;kind;text\nhood;as built;4,5\nroof;as built;1.234\n")
                .done();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "-0001-05-02T10:15",
                "9999-05-02T10:15",
                "+999999999-05-02T10:15",
                "-999999999-05-02T10:15",
                "1899-12-31T23:59:59",
                "2200-01-01T00:00",
                "+999999999-12-31T23:59:59+18:00"
            })
    void aTimeInAYearThatNobodyMeansIsRefused(String time) {
        add("readings", "zone,value,unit,time\nhood,100,um," + time + "\n")
                .complains(Exit.UNUSABLE, "line 2", "column time", "year");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "1900-01-01T12:00",
                "2199-12-31T23:59:59",
                "2026-03-08T01:59",
                "2026-03-08T03:00",
                "2026-11-01T01:30"
            })
    void aTimeThatWasIsTaken(String time) {
        add("readings", "zone,value,unit,time\nhood,100,um," + time + "\n").done();
    }

    @Test
    void aTimeThatTheClocksSkippedIsRefused() {
        add("readings", "zone,value,unit,time\nhood,100,um,2026-03-08T02:30\n")
                .complains(Exit.UNUSABLE, "2026-03-08T02:30", "never was", "America/Denver", "02:00", "03:00");
        add("readings", "zone,value,unit,time\nhood,100,um,2026-03-08T02:30-07:00\n")
                .done();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"year=-1", "year=9999", "year=999999999", "built=9999", "built=-0001-01-01", "date=9999-01-01"})
    void aYearThatNoCarHasIsRefused(String fact) {
        String before = bench.state(visit);
        assertThat(bench.run("set", visit, fact)
                        .complains(Exit.UNUSABLE, fact.substring(0, fact.indexOf('=')))
                        .err())
                .doesNotContain("fault of the program");
        assertThat(bench.state(visit)).isEqualTo(before);
    }

    private Path pipe(Path at) throws Exception {
        assumeTrue(Files.isExecutable(Path.of("/usr/bin/mkfifo")), "needs pipes with names");
        Files.createDirectories(at.getParent());
        assertThat(new ProcessBuilder("mkfifo", at.toString()).start().waitFor())
                .isZero();
        return at;
    }

    @Test
    void aPipeIsNotWaitedForAsAnArchive() throws Exception {
        String pipe = pipe(folder.resolve("a.zip")).toString();
        bench.run("restore", pipe, folder.resolve("r").toString()).complains(Exit.UNUSABLE, pipe, "pipe");
        assertThat(bench.run("audit", pipe).status()).isNotZero();
    }

    @Test
    void aPipeIsNotWaitedForAsATableAListOrADiagram() throws Exception {
        String pipe = pipe(folder.resolve("t.csv")).toString();
        bench.run("add", "readings", visit, pipe).complains(Exit.UNUSABLE, pipe, "pipe");
        bench.run("lists", "walk", "--take", pipe).complains(Exit.UNUSABLE, pipe, "pipe");
        assertThat(bench.run("diagram", "check", pipe).status()).isNotZero();
        assertThatThrownBy(() -> CaptionFile.read(Path.of(pipe))).hasMessageContaining("pipe");
    }

    @Test
    void aPipeAmongTheSettingsIsNotWaitedFor() throws Exception {
        String pipe = pipe(folder.resolve("date-patterns.csv")).toString();
        assertThat(bench.run("lists", "patterns").err()).doesNotContain("Exception", "fault of the program");
        assertThat(Files.exists(Path.of(pipe))).isTrue();
    }

    @ParameterizedTest
    @ValueSource(strings = {"restore", "audit", "gaps", "photos", "intake", "readings", "walk", "diagram"})
    @Timeout(60)
    void aDeviceWithoutEndIsNotReadToItsEnd(String what) {
        String endless = "/dev/zero";
        assumeTrue(Files.exists(Path.of(endless)), "needs a device that never ends");
        Bench.Outcome outcome =
                switch (what) {
                    case "restore" ->
                        bench.run("restore", endless, folder.resolve("r").toString());
                    case "readings" -> bench.run("add", "readings", visit, endless);
                    case "walk" -> bench.run("lists", "walk", "--take", endless);
                    case "diagram" -> bench.run("diagram", "check", endless);
                    case "intake" -> bench.run("intake", visit, endless);
                    default -> bench.run(what, endless);
                };
        if (what.equals("intake")) {
            assertThat(outcome.out()).contains("0 photos", "Skipped", endless);
        } else {
            assertThat(outcome.status()).isNotZero();
            assertThat(outcome.err()).contains("zero");
        }
        assertThat(outcome.err()).doesNotContain("Exception", "fault of the program");
        assertThat(folder.resolve("r")).doesNotExist();
    }

    @Test
    @Timeout(60)
    void aVisitWhoseDatabaseIsAPipeOrEndlessIsRefused() throws Exception {
        Path pipe = pipe(folder.resolve("piped/visit.db"));
        Bench.Outcome piped = bench.run("audit", pipe.getParent().toString());
        assertThat(piped.status()).isNotZero();
        assertThat(piped.err().lines()).singleElement().asString().contains("There is no visit", "piped");
        Path linked = Files.createDirectories(folder.resolve("linked"));
        Files.createSymbolicLink(linked.resolve("visit.db"), Path.of("/dev/zero"));
        bench.run("audit", linked.toString()).complains(Exit.CLOSED, "There is no visit", "linked");
    }

    @Test
    void endlessFoldedLinesOfAnArchiveAreReadInTime() throws Exception {
        Path file = folder.resolve("folded.zip");
        try (OutputStream out = Files.newOutputStream(file);
                ZipOutputStream zip = new ZipOutputStream(out)) {
            zip.putNextEntry(new ZipEntry("v/bagit.txt"));
            zip.write("BagIt-Version: 1.0\nTag-File-Character-Encoding: UTF-8\nNote: a\n"
                    .getBytes(StandardCharsets.UTF_8));
            zip.write(" b\n".repeat(4_000_000).getBytes(StandardCharsets.UTF_8));
            zip.closeEntry();
        }
        assertThat(bench.run("restore", file.toString(), folder.resolve("r").toString()))
                .satisfies(outcome -> assertThat(outcome.status()).isEqualTo(Exit.UNUSABLE))
                .satisfies(outcome -> assertThat(outcome.err().lines()).hasSize(1));
    }

    @Test
    void nothingThatSteersATerminalIsPrinted() {
        assertThat(bench.run("zones", "\u001b[2J\u009b1m\u202eabc").err())
                .contains("\\u001b[2J\\u009b1m\\u202eabc")
                .doesNotContain("\u001b", "\u009b", "\u202e");
        bench.run("set", visit, "inspector=Q\u001b]0;title\u0007\u009b31m").done();
        add("statements", "zone,kind,text\nhood,as built,\"a\u001b[31m b\u009bc\"\n")
                .done();
        for (String[] call : List.of(new String[] {"gaps", visit}, new String[] {"compare", visit, visit})) {
            assertThat(bench.run(call).out()).doesNotContain("\u001b", "\u009b", "\u0007");
        }
    }

    @Test
    void whatJsonSaysIsStillWhatWasTyped() {
        add("statements", "zone,kind,text\nhood,as built,\"a\u009bb\u202ec\"\n").done();
        Bench.Outcome outcome = bench.run("compare", visit, visit, "--json");
        assertThat(outcome.out()).doesNotContain("\u009b", "\u202e");
        assertThat(outcome.json().toString()).contains("a\u009bb\u202ec");
    }

    @Test
    void formulasLeaveInTablesAsTextAndComeBackAsTheyWere() throws Exception {
        List<String> texts =
                List.of("=1+1", "+cmd", "-x", "@SUM(A1)", "'=1", "''=1", "\uff1d1", "'plain", "-5", "+1.5", "a=b");
        StringBuilder table = new StringBuilder("zone,kind,text\n");
        // written by a foreign hand: one apostrophe goes off where a formula sign follows it
        texts.forEach(text -> table.append("hood,as built,\"")
                .append(text.matches("'+[=+@\\-].*") ? "'" + text : text)
                .append("\"\n"));
        add("statements", table.toString()).done();
        assertThat(statements(visit)).isEqualTo(texts);
        Path export = folder.resolve("x");
        bench.run("export", visit, export.toString()).done();
        String csv = Files.readString(export.resolve("statements.csv"));
        assertThat(csv)
                .contains(
                        "'=1+1",
                        "'+cmd",
                        "'-x",
                        "'@SUM(A1)",
                        "''=1",
                        "'''=1",
                        "'\uff1d1",
                        ",'plain",
                        ",-5",
                        ",+1.5",
                        ",a=b");
        assertThat(csv).doesNotContain(",=1", ",+cmd", ",-x", ",@SUM");
        Bench other = new Bench(Files.createDirectories(folder.resolve("other")));
        String back = other.visit();
        other.run("add", "statements", back, export.resolve("statements.csv").toString())
                .done();
        assertThat(statements(back)).isEqualTo(texts);
    }

    private static List<String> statements(String visit) throws IOException {
        try (VisitStore store = VisitStore.openForReading(Path.of(visit))) {
            return store.read().statements().stream()
                    .map(statement -> statement.value().text())
                    .toList();
        } catch (quarterlight.store.problem.VisitProblem e) {
            throw new AssertionError(e);
        }
    }
}
