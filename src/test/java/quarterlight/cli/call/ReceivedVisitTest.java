package quarterlight.cli.call;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import quarterlight.cli.Bench;

/** Visits and archives from somebody else at the command line: what is told, what holds, and what is found out. */
class ReceivedVisitTest {
    @TempDir
    Path folder;

    private static void tamper(Path database, String... statements) throws Exception {
        try (Connection connection = DriverManager.getConnection("jdbc:sqlite:" + database);
                Statement statement = connection.createStatement()) {
            for (String each : statements) {
                statement.executeUpdate(each);
            }
        }
    }

    private String visit(Bench bench) {
        String visit = bench.visit();
        bench.run("add", "readings", visit, bench.file("r.csv", "zone,value,unit\nhood,65,um\nroof,70,um\n"))
                .done();
        bench.run(
                        "add",
                        "statements",
                        visit,
                        bench.file("s.csv", "zone,text,kind,severity\nhood,Filler under the paint.,repaired,grave\n"))
                .done();
        return visit;
    }

    @Test
    void theSlipStandsOnStandardErrorBeforeTheAnswer() throws Exception {
        Bench bench = new Bench(folder);
        String visit = visit(bench);
        tamper(
                Path.of(visit, "visit.db"),
                "CREATE TRIGGER \"ev\u001b[31mil\" AFTER INSERT ON reading BEGIN DELETE FROM photo; END");
        Bench.Outcome zones = bench.run("zones", visit, "--json");
        assertThat(zones.json().path("zones")).hasSize(2);
        assertThat(zones.err())
                .contains("was not written by this computer, or not as it stands")
                .contains("left out: The database declares the trigger \"ev")
                .contains("is kept in " + visit)
                .doesNotContain("\u001b");
        assertThat(bench.run("audit", visit).status()).isEqualTo(Exit.NOT_ALL);
        assertThat(bench.run("audit", visit).out()).contains("database: The database declares the trigger");
        assertThat(bench.run("set", visit, "client=Somebody").err()).contains("left out: ");
        assertThat(bench.run("zones", visit).err()).isEmpty();
    }

    @Test
    void theAuditSaysWhatItProvesAndTheEndOfTheLog() throws Exception {
        Bench bench = new Bench(folder);
        String visit = bench.folder("v");
        bench.run("new", visit, "--car", "Tamarisk", "--style", "coupe").done();
        Bench.Outcome audit = bench.run("audit", visit).done();
        String head =
                bench.run("audit", visit, "--json").json().path("log_head").asText();
        assertThat(head).matches("1 [0-9a-f]{64}");
        assertThat(audit.out()).contains("agrees with its edit log", head, "no audit proves");
        bench.run("pages", visit).done();
        assertThat(Files.readString(Path.of(visit, "pages/report.html")).replaceAll("\\s+", " "))
                .as("the method part anchors the log")
                .contains("edit log ended with entry 1,", head.substring(2));
        String zip = bench.folder("a.zip");
        assertThat(bench.run("archive", visit, zip).done().out()).contains("The edit log ends with entry " + head);
        assertThat(bench.run("audit", zip).done().out()).contains(head, "no audit proves");
        Bench.Outcome restored = bench.run("restore", zip, bench.folder("back"), "--json");
        assertThat(restored.json().path("log_head").asText()).isEqualTo(head);
        assertThat(restored.json().path("database")).isEmpty();
    }

    /** Somebody packs an archive anew, with manifests that hold, after changing one thing. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '~',
            value = {
                "UPDATE reading SET typed = '25', thickness_um = 25 WHERE id = 1|Row 1 of table reading is not as the"
                        + " edit log has it",
                "DELETE FROM statement|Row 1 of table statement is gone, and the edit log does not tell of it",
                "DELETE FROM edit_log|The edit log has no hash chain",
                "UPDATE photo SET sha256 = '" + ZEROS
                        + "' WHERE id = 1|Row 1 of table photo is not as the edit log has it",
                "CREATE TRIGGER x AFTER INSERT ON reading BEGIN DELETE FROM photo; END|trigger \"x\"",
            })
    void anArchivePackedAnewIsFoundOutByAuditAndRestoreAlike(String statement, String said) throws Exception {
        Bench bench = new Bench(folder);
        Path good = folder.resolve("good.zip");
        bench.run("archive", visit(bench), good.toString(), "--unsigned");
        Path bad = folder.resolve("bad.zip");
        repack(good, bad, files -> {
            Path database = folder.resolve("db");
            Files.write(database, files.get("data/visit.db"));
            tamper(database, statement);
            files.put("data/visit.db", Files.readAllBytes(database));
        });
        Bench.Outcome audit = bench.run("audit", bad.toString());
        assertThat(audit.status()).isEqualTo(Exit.NOT_ALL);
        assertThat(audit.out()).contains("database: ").contains(said);
        Bench.Outcome restored =
                bench.run("restore", bad.toString(), folder.resolve("back").toString());
        assertThat(restored.status()).isEqualTo(Exit.NOT_ALL);
        assertThat(restored.out()).contains(said);
    }

    private static final String ZEROS = "0000000000000000000000000000000000000000000000000000000000000000";

    @Test
    void aTableThatSaysSomethingElseThanTheDatabaseIsNamed() throws Exception {
        Bench bench = new Bench(folder);
        Path good = folder.resolve("good.zip");
        bench.run("archive", visit(bench), good.toString(), "--unsigned");
        for (String name : new String[] {"readings.csv", "readings.json"}) {
            Path bad = folder.resolve(name + ".zip");
            repack(good, bad, files -> {
                String path = "data/tables/" + name;
                String text = new String(files.get(path), StandardCharsets.UTF_8);
                files.put(path, text.replace("65", "25").getBytes(StandardCharsets.UTF_8));
            });
            assertThat(bench.run("audit", bad.toString()).out())
                    .contains("The table " + name + " does not agree with the database: row 1")
                    .contains("it says \"25");
        }
        Path bad = folder.resolve("without.zip");
        repack(good, bad, files -> files.remove("data/tables/statements.csv"));
        assertThat(bench.run("audit", bad.toString()).out()).contains("The table statements.csv is missing");
    }

    /** The lists by which the first inspector judged decide after restoring, whatever the other one's lists say. */
    @Test
    void theListsTravelAndHold() throws Exception {
        Bench first = new Bench(Files.createDirectory(folder.resolve("first")));
        String visit = first.visit();
        first.run(
                "add",
                "marks",
                visit,
                first.file("m.csv", "part,kind,text,stage,pattern\nBlock,casting,Q1C12,cast,\n"));
        Files.writeString(
                folder.resolve("first/date-patterns.csv"), "name,form,example,reading\nmine,Q{y}~{M}~{d},Q1C12,\n");
        String said = first.run("dates", visit, "--json").json().toString();
        Path zip = folder.resolve("a.zip");
        assertThat(first.run("archive", visit, zip.toString()).status()).isLessThan(2);

        Bench second = new Bench(Files.createDirectory(folder.resolve("second")));
        String back = folder.resolve("back").toString();
        assertThat(second.run("restore", zip.toString(), back).out())
                .contains("The lists that came with it hold for it");
        assertThat(second.run("dates", back, "--json").json()).hasToString(said);
        assertThat(second.run("dates", back).out()).startsWith("By the lists that came with the visit");
        assertThat(Files.readString(Path.of(back, "lists/README.txt"))).contains("The inspector's own: patterns.");
        Path again = folder.resolve("again.zip");
        assertThat(second.run("archive", back, again.toString()).status()).isLessThan(2);
        try (ZipFile zipFile = new ZipFile(again.toFile())) {
            assertThat(zipFile.stream().map(ZipEntry::getName)).contains("again/data/lists/date-patterns.csv");
        }
    }

    @Test
    void theWalkAndWhatMustBeCoveredTravelToo() throws Exception {
        Bench first = new Bench(Files.createDirectory(folder.resolve("first")));
        String visit = first.visit();
        String usual = first.run("gaps", visit, "--all", "--json").json().toString();
        for (String list : List.of("walk", "coverage")) {
            List<String> rows = first.run("lists", list).done().out().lines().toList();
            String own = first.file(list + "-own.csv", String.join("\n", rows.subList(0, rows.size() / 2)) + "\n");
            first.run("lists", list, "--take", own).done();
        }
        String said = first.run("gaps", visit, "--all", "--json").json().toString();
        assertThat(said).isNotEqualTo(usual);
        Path zip = folder.resolve("a.zip");
        assertThat(first.run("archive", visit, zip.toString()).status()).isLessThan(2);
        Bench second = new Bench(Files.createDirectory(folder.resolve("second")));
        String back = folder.resolve("back").toString();
        assertThat(second.run("restore", zip.toString(), back).status()).isLessThan(2);
        assertThat(second.run("gaps", back, "--all", "--json").json()).hasToString(said);
        assertThat(Files.readString(Path.of(back, "lists/README.txt"))).contains("coverage", "walk");
    }

    /** An item of the inspector's own is a trial elsewhere too, with the answers that its nature has. */
    @Test
    void theListOfTrialsTravelsToo() throws Exception {
        Bench first = new Bench(Files.createDirectory(folder.resolve("first")));
        String visit = first.visit();
        List<String> rows = new ArrayList<>(
                first.run("lists", "trials").done().out().lines().toList());
        rows.add("running,Winch pulls,,,no,,,,");
        first.run("lists", "trials", "--take", first.file("trials-own.csv", String.join("\n", rows) + "\n"))
                .done();
        first.run("add", "trials", visit, first.file("t.csv", "item,result\nWinch pulls,does not\n"))
                .done();
        String said = first.run("findings", visit, "--json").json().toString();
        assertThat(said).contains("inch pulls");
        Path zip = folder.resolve("a.zip");
        assertThat(first.run("archive", visit, zip.toString()).status()).isLessThan(2);
        Bench second = new Bench(Files.createDirectory(folder.resolve("second")));
        String back = folder.resolve("back").toString();
        assertThat(second.run("restore", zip.toString(), back).status()).isLessThan(2);
        assertThat(second.run("findings", back, "--json").json()).hasToString(said);
        assertThat(Files.readString(Path.of(back, "lists/README.txt"))).contains("trials");
    }

    private interface Change {
        void apply(Map<String, byte[]> files) throws Exception;
    }

    private static void repack(Path good, Path bad, Change change) throws Exception {
        Map<String, byte[]> files = new TreeMap<>();
        try (ZipFile zip = new ZipFile(good.toFile())) {
            for (ZipEntry entry : Collections.list(zip.entries())) {
                String path = entry.getName().substring(entry.getName().indexOf('/') + 1);
                files.put(path, zip.getInputStream(entry).readAllBytes());
            }
        }
        change.apply(files);
        files.remove("tagmanifest-sha256.txt");
        StringBuilder manifest = new StringBuilder();
        long bytes = 0;
        int count = 0;
        for (Map.Entry<String, byte[]> file : files.entrySet()) {
            if (file.getKey().startsWith("data/")) {
                manifest.append(HexFormat.of()
                                .formatHex(MessageDigest.getInstance("SHA-256").digest(file.getValue())))
                        .append("  ")
                        .append(file.getKey())
                        .append('\n');
                bytes += file.getValue().length;
                count++;
            }
        }
        String oxum = "Payload-Oxum: " + bytes + "." + count + "\n";
        files.put("manifest-sha256.txt", manifest.toString().getBytes(StandardCharsets.UTF_8));
        String info = new String(files.get("bag-info.txt"), StandardCharsets.UTF_8);
        files.put("bag-info.txt", info.replaceFirst("Payload-Oxum: .*\n", oxum).getBytes(StandardCharsets.UTF_8));
        try (OutputStream out = Files.newOutputStream(bad);
                ZipOutputStream zip = new ZipOutputStream(out)) {
            for (Map.Entry<String, byte[]> file : files.entrySet()) {
                zip.putNextEntry(new ZipEntry("bag/" + file.getKey()));
                zip.write(file.getValue());
                zip.closeEntry();
            }
        } catch (IOException e) {
            throw new AssertionError(e);
        }
    }
}
