package quarterlight.table.workbook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Random;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class WorkbookTest {
    @TempDir
    private Path folder;

    private static Path stored(String name) throws Exception {
        return Path.of(WorkbookTest.class.getResource(name).toURI());
    }

    private static String csv(Path file, String... sheet) throws IOException, WorkbookRefused {
        byte[] bytes = Files.readAllBytes(file);
        return Workbook.csv(
                file,
                Arrays.copyOf(bytes, Math.min(8, bytes.length)),
                Arrays.stream(sheet).findFirst());
    }

    private static WorkbookRefused refused(Path file, String... sheet) {
        return catchThrowableOfType(WorkbookRefused.class, () -> csv(file, sheet));
    }

    private interface Content {
        void write(OutputStream out) throws IOException;
    }

    /** A workbook of one sheet. */
    private Path workbook(Content sheet) throws IOException {
        Path file = folder.resolve("made.xlsx");
        try (ZipOutputStream zip = new ZipOutputStream(new BufferedOutputStream(Files.newOutputStream(file)))) {
            part(
                    zip,
                    "xl/workbook.xml",
                    out -> text(out, "<workbook xmlns:r='r'><sheets><sheet name='A' r:id='1'/></sheets></workbook>"));
            part(
                    zip,
                    "xl/_rels/workbook.xml.rels",
                    out -> text(
                            out,
                            "<Relationships><Relationship Id='1' Type='x/worksheet' Target='worksheets/s.xml'/></Relationships>"));
            part(zip, "xl/worksheets/s.xml", out -> {
                text(out, "<worksheet><sheetData>");
                sheet.write(out);
                text(out, "</sheetData></worksheet>");
            });
        }
        return file;
    }

    private static void part(ZipOutputStream zip, String name, Content content) throws IOException {
        zip.putNextEntry(new ZipEntry(name));
        content.write(zip);
        zip.closeEntry();
    }

    private static void text(OutputStream out, String text) throws IOException {
        out.write(text.getBytes(StandardCharsets.UTF_8));
    }

    private Path row(String cells) throws IOException {
        return workbook(out -> text(out, "<row r='1'>" + cells + "</row>"));
    }

    @Test
    void cellsOfAnotherProgramAreReadAsTextEachRowInTheLineOfItsNumber() throws Exception {
        assertThat(csv(stored("readings.xlsx")))
                .isEqualTo(
                        """
                        "zone","value","unit","time","note"
                        "hood","4.2","mil","2026-04-18T10:07:35","front, ""left"" edge"

                        "roof","4.2","mil","2026-04-18T10:08:00","two lines"
                        "door-front-left","115","um","2026-04-18T10:09:01",
                        """);
    }

    @Test
    void datesInTwoFormatsAndTextInPlaceAreRead() throws Exception {
        assertThat(csv(stored("log-of-a-gauge.xlsx")))
                .contains("\"Hood\",\"107.5\",\"um\",\"2026-04-18T10:07:00\"")
                .contains("\"Roof\",\"110\",\"um\",\"2026-04-18\"")
                .contains("\"Door\",\"3\",\"um\",");
    }

    @Test
    void bothDateSystemsGiveTheSameDay() throws Exception {
        assertThat(csv(stored("several-in-a-row-1904.xlsx")))
                .contains("\"hood\",\"mil\",\"2026-04-18T10:07:00\",\"4.2\"");
        assertThat(Formats.moment(61, false)).isEqualTo("1900-03-01");
        assertThat(Formats.moment(59, false)).isEqualTo("1900-02-28");
        assertThat(Formats.moment(0.5, false)).isEqualTo("12:00:00");
        assertThat(Formats.moment(0, true)).isEqualTo("1904-01-01");
    }

    @Test
    void ofSeveralSheetsOneIsChosenByNameAndHiddenOnesAreNotOffered() throws Exception {
        WorkbookRefused refused = refused(stored("several.xlsx"));
        assertThat(refused).hasMessageContainingAll("\"Paint\", \"Second car\"", "--sheet");
        assertThat(refused.sheets()).containsExactly("Paint", "Second car");
        assertThat(csv(stored("several.xlsx"), "second CAR"))
                .contains("\"roof\",\"5.5\"")
                .doesNotContain("hood");
        assertThat(refused(stored("several.xlsx"), "third")).hasMessageContainingAll("no sheet \"third\"", "\"Paint\"");
    }

    @Test
    void aFormulaGivesItsSavedValueAndIsRefusedWithoutOne() throws Exception {
        assertThat(refused(stored("formula-never-saved.xlsx"))).hasMessageContainingAll("formula", "cell B2");
        assertThat(csv(row("<c r='A1'><f>2+2.2</f><v>4.2</v></c>"))).isEqualTo("\"4.2\"\n");
        assertThat(refused(row("<c r='A1' t='e'><f>1/0</f><v>#DIV/0!</v></c>")))
                .hasMessageContainingAll("#DIV/0!", "A1");
    }

    @Test
    void tenMillionRowsAreRefusedAndTheMostAllowedAreRead() throws Exception {
        Path huge = workbook(out -> {
            byte[] row = "<row><c><v>1</v></c></row>".getBytes(StandardCharsets.UTF_8);
            for (int i = 0; i < 10_000_000; i++) {
                out.write(row);
            }
        });
        assertThat(refused(huge)).hasMessageContaining("more than 50000 rows");
        assertThat(csv(workbook(out -> text(out, "<row r='50000'><c r='A50000'><v>1</v></c></row>"))))
                .hasSize(49_999 + 4);
        assertThat(refused(workbook(out -> text(out, "<row r='50001'><c r='A50001'><v>1</v></c></row>"))))
                .hasMessageContaining("more than 50000 rows");
        assertThat(csv(row("<c r='IV1'><v>1</v></c>"))).endsWith(",\"1\"\n");
        assertThat(refused(row("<c r='IW1'><v>1</v></c>"))).hasMessageContaining("more than 256 columns");
    }

    @Test
    void whatUnpacksBeyondTheLimitIsRefused() throws Exception {
        Path bomb = workbook(out -> {
            byte[] blanks = " ".repeat(1 << 20).getBytes(StandardCharsets.UTF_8);
            for (int i = 0; i < 200; i++) {
                out.write(blanks);
            }
        });
        assertThat(Files.size(bomb)).isLessThan(1 << 20);
        assertThat(refused(bomb)).hasMessageContaining("more than 64 MB");
        Path cell = workbook(out -> {
            text(out, "<row><c t='inlineStr'><is><t>");
            for (int i = 0; i < 40; i++) {
                text(out, "x".repeat(1 << 20));
            }
            text(out, "</t></is></c></row>");
        });
        assertThat(refused(cell)).hasMessageContaining("32767 letters");
    }

    @Test
    void entitiesAreNotFollowed() throws Exception {
        Path secret = Files.writeString(folder.resolve("secret.txt"), "SECRET");
        Path file = folder.resolve("entity.xlsx");
        try (ZipOutputStream zip = new ZipOutputStream(Files.newOutputStream(file))) {
            part(
                    zip,
                    "xl/workbook.xml",
                    out -> text(
                            out,
                            "<!DOCTYPE w [<!ENTITY e SYSTEM '" + secret.toUri()
                                    + "'>]><workbook xmlns:r='r'><sheets><sheet name='&e;' r:id='1'/></sheets></workbook>"));
        }
        assertThat(refused(file)).isNotNull().hasMessageNotContaining("SECRET");
    }

    @Test
    void lockedOtherAndBrokenFilesAreNamedForWhatTheyAre() throws Exception {
        Path locked = Files.write(folder.resolve("locked.xlsx"), new byte[] {
            (byte) 0xD0, (byte) 0xCF, 0x11, (byte) 0xE0, (byte) 0xA1, (byte) 0xB1, 0x1A, (byte) 0xE1, 0, 0
        });
        assertThat(refused(locked)).hasMessageContaining("password");
        Path other = folder.resolve("other.xlsx");
        try (ZipOutputStream zip = new ZipOutputStream(Files.newOutputStream(other))) {
            part(zip, "mimetype", out -> text(out, "application/x-something"));
        }
        assertThat(refused(other)).hasMessageContaining("no workbook");
    }

    @Test
    void cutAndFlippedWorkbooksGiveASentenceOrATable() throws Exception {
        byte[] good = Files.readAllBytes(stored("readings.xlsx"));
        Random random = new Random(1904);
        int sentences = 0;
        for (int i = 0; i < 200; i++) {
            byte[] bad = i % 2 == 0 ? Arrays.copyOf(good, 8 + random.nextInt(good.length - 8)) : good.clone();
            if (i % 2 == 1) {
                bad[4 + random.nextInt(bad.length - 4)] ^= (byte) (1 << random.nextInt(8));
            }
            Path file = Files.write(folder.resolve("bad.xlsx"), bad);
            try {
                csv(file);
            } catch (WorkbookRefused e) {
                sentences++;
                assertThat(e.getMessage()).isNotBlank();
            }
        }
        assertThat(sentences).isGreaterThan(100);
    }
}
