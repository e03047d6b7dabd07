package quarterlight.table;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import quarterlight.table.TableRead.Refused;
import quarterlight.table.cell.RowContext;
import quarterlight.units.ThicknessUnit;
import quarterlight.visit.reading.GaugeValue;
import quarterlight.visit.reading.Reading;
import quarterlight.visit.row.RecordKind;

class CsvFileTest {
    private final RowContext context = VisitFixture.usual().context();

    private TableRead<Reading> read(String text) {
        return read(text.getBytes(StandardCharsets.UTF_8));
    }

    private TableRead<Reading> read(byte[] bytes) {
        return CsvFile.read("r.csv", bytes, RowKind.of(RecordKind.READINGS), context);
    }

    private Refused unusable(String text) {
        TableRead<Reading> read = read(text);
        assertThat(read.usable()).isFalse();
        assertThat(read.rows()).isEmpty();
        assertThat(read.refused()).hasSize(1);
        return read.refused().get(0);
    }

    private static GaugeValue measured(String typed, ThicknessUnit unit) {
        return new GaugeValue.Measured(new BigDecimal(typed), unit);
    }

    @ParameterizedTest
    @ValueSource(strings = {",", ";", "\t"})
    void columnsMayStandInAnyOrderWithEachDelimiter(String delimiter) {
        String text = "note,unit,zone,value\nby the edge,mil,roof,4.50\n,um,hood,110\n".replace(",", delimiter);
        TableRead<Reading> read = read(text);
        assertThat(read.refused()).isEmpty();
        assertThat(read.values())
                .extracting(Reading::value)
                .containsExactly(measured("4.50", ThicknessUnit.MIL), measured("110", ThicknessUnit.UM));
        assertThat(read.values().get(0).note()).contains("by the edge");
        assertThat(read.values().get(1).note()).isEmpty();
    }

    @Test
    void aDecimalCommaIsReadWhereSemicolonsStandBetweenColumns() {
        assertThat(read("zone;value;unit\nroof;4,5;mil\n").values().get(0).value())
                .isEqualTo(measured("4.5", ThicknessUnit.MIL));
    }

    @Test
    void aDecimalCommaWithinACommaTableIsRefusedWithAdvice() {
        Refused refused = read("zone,value,unit\nroof,\"4,5\",mil\n").refused().get(0);
        assertThat(refused.line()).isEqualTo(2);
        assertThat(refused.column()).contains("value");
        assertThat(refused.reason()).contains("decimal comma").contains("4.5");
    }

    @Test
    void aByteOrderMarkIsNoPartOfTheFirstColumn() {
        assertThat(read("\uFEFFzone,value,unit\nroof,110,um\n").values()).hasSize(1);
    }

    @ParameterizedTest
    @ValueSource(strings = {"\n", "\r\n", "\r"})
    void linesAreCountedWithEachEnding(String end) {
        String text = String.join(
                end, "zone,value,unit,note", "roof,110,um,\"two\nlines\"", "", ",,,", "roof,x,um,", "roff,110,um,");
        List<Refused> refused = read(text).refused();
        assertThat(refused).extracting(Refused::line).containsExactly(6, 7);
    }

    @Test
    void badUtf8IsRefusedWithItsLine() {
        byte[] bytes = "zone,value,unit,note\nroof,110,um,\nroof,110,um,d\u00e9j\u00e0\n"
                .getBytes(Charset.forName("windows-1252"));
        TableRead<Reading> read = read(bytes);
        assertThat(read.usable()).isFalse();
        assertThat(read.refused().get(0).line()).isEqualTo(3);
        assertThat(read.refused().get(0).reason()).contains("not UTF-8").contains("E9");
    }

    @Test
    void textCutWithinACharacterIsRefused() {
        byte[] whole = "zone,value,unit,note\nroof,110,um,\u00e9".getBytes(StandardCharsets.UTF_8);
        TableRead<Reading> read = read(java.util.Arrays.copyOf(whole, whole.length - 1));
        assertThat(read.usable()).isFalse();
        assertThat(read.refused().get(0).line()).isEqualTo(2);
    }

    @Test
    void otherKindsOfFileAreNamedForWhatTheyAre() {
        assertThat(read("zone,value,unit\nroof,110,um\n".getBytes(StandardCharsets.UTF_16))
                        .refused()
                        .get(0)
                        .reason())
                .contains("UTF-16");
        assertThat(unusable("PK\u0003\u0004 sheet").reason()).contains("packed");
        assertThat(unusable("zone,value,unit\nroof,1\u00000,um\n")).satisfies(refused -> {
            assertThat(refused.line()).isEqualTo(2);
            assertThat(refused.reason()).contains("zero byte");
        });
    }

    @Test
    void anUnknownColumnIsRefusedByName() {
        Refused refused = unusable("zone,value,unit,tiem\nroof,110,um,\n");
        assertThat(refused.column()).contains("tiem");
        assertThat(refused.reason()).contains("\"tiem\"").contains("(time?)").contains("exclude");
    }

    @Test
    void missingRequiredColumnsAreNamed() {
        assertThat(unusable("zone,note\nroof,x\n").reason()).startsWith("the header lacks value, unit;");
    }

    @Test
    void aColumnThatStandsTwiceIsRefused() {
        assertThat(unusable("zone,value,unit,Value\nroof,110,um,1\n").reason()).contains("value twice");
    }

    @Test
    void aNamelessColumnIsRefused() {
        assertThat(unusable("zone,value,unit,\nroof,110,um,1\n").reason()).contains("column 4");
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "\n\n", "  \n,,\n", "\uFEFF"})
    void anEmptyFileIsRefused(String text) {
        assertThat(unusable(text).reason()).contains("empty").contains("header");
    }

    @Test
    void aHeaderAloneIsRefused() {
        assertThat(unusable("zone,value,unit\n").reason()).contains("no rows");
    }

    @Test
    void aFileWithoutAHeaderIsRefused() {
        assertThat(unusable("roof,110,um\n").reason()).contains("no column \"roof\"");
    }

    @Test
    void aRowWithTheWrongNumberOfCellsIsRefusedAndTheOthersAreRead() {
        TableRead<Reading> read = read("zone,value,unit\nroof,110,um\nroof,110\nroof,4,5,mil\nhood,100,um\n");
        assertThat(read.usable()).isTrue();
        assertThat(read.rows()).extracting(TableRead.Row::line).containsExactly(2, 5);
        assertThat(read.refused()).extracting(Refused::line).containsExactly(3, 4);
        assertThat(read.refused()).extracting(Refused::column).containsOnly(Optional.empty());
        assertThat(read.refused().get(1).reason()).contains("4 cells").contains("header 3");
    }

    @Test
    void aQuotationMarkThatNeverClosesIsRefusedWhereItOpens() {
        Refused refused = unusable("zone,value,unit,note\nroof,110,um,ok\nroof,110,um,\"lost\nroof,110,um,\n");
        assertThat(refused.line()).isEqualTo(3);
        assertThat(refused.reason()).contains("quotation mark");
    }

    @Test
    void aSentenceNamesFileLineColumnAndReason() {
        TableRead<Reading> read = read("zone,value,unit\nquater-left,110,um\n");
        assertThat(read.refused().get(0).sentence(read.file()))
                .isEqualTo("r.csv, line 2, column zone: there is no zone \"quater-left\"; the nearest is quarter-left");
    }

    @ParameterizedTest
    @CsvSource({"left-quarter,quarter-left", "Hood,hood", "door_front_left,door-front-left", "rof,roof"})
    void theNearestZoneIsSuggested(String typed, String nearest) {
        assertThat(read("zone,value,unit\n" + typed + ",110,um\n")
                        .refused()
                        .get(0)
                        .reason())
                .endsWith("the nearest is " + nearest);
    }

    @Test
    void aZoneOfOtherCarsIsRefused() {
        assertThat(read("zone,value,unit\ndoor-rear-left,110,um\n")
                        .refused()
                        .get(0)
                        .reason())
                .contains("coupe (unibody, engine front) has no zone door-rear-left")
                .contains("door-front-left");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "NaN",
                "Infinity",
                "1e3",
                "0x10",
                "--4",
                "4.5.6",
                "1'000",
                "\u0661",
                "4 mil",
                "12345678901234567890123"
            })
    void whatIsNoNumberIsRefused(String value) {
        Refused refused =
                read("zone,value,unit\nroof," + value + ",um\n").refused().get(0);
        assertThat(refused.column()).contains("value");
        assertThat(refused.reason()).contains("not a number");
    }

    @Test
    void filesThatCannotBeReadAtAllSayWhy(@TempDir Path folder) throws IOException {
        assertThatThrownBy(() -> CsvFile.read(folder.resolve("absent.csv"), RowKind.of(RecordKind.READINGS), context))
                .isInstanceOf(TableUnreadable.class)
                .hasMessageContaining("absent.csv is not there");
        assertThatThrownBy(() -> CsvFile.read(folder, RowKind.of(RecordKind.READINGS), context))
                .hasMessageContaining("is a folder");
        Path large = folder.resolve("large.csv");
        try (var file = new java.io.RandomAccessFile(large.toFile(), "rw")) {
            file.setLength(TableSource.MAX_BYTES + 1);
        }
        assertThatThrownBy(() -> CsvFile.read(large, RowKind.of(RecordKind.READINGS), context))
                .hasMessageContaining("32 MB");
        Path good = Files.writeString(folder.resolve("good.csv"), "zone,value,unit\nroof,110,um\n");
        assertThat(catching(good).rows()).hasSize(1);
    }

    private TableRead<Reading> catching(Path file) {
        try {
            return CsvFile.read(file, RowKind.of(RecordKind.READINGS), context);
        } catch (TableUnreadable e) {
            throw new AssertionError(e);
        }
    }

    @Test
    void damagedTablesAreRefusedOrReadButNeverCrash() {
        byte[] good =
                ("zone,value,unit,time,spot,view,x,y,note\r\nroof,4.5,mil,2026-05-02T10:15,a,top,0.5,0.25,\"a \"\"b\"\"\"\r\n"
                                + "hood,none,um,,,,,,\r\n")
                        .getBytes(StandardCharsets.UTF_8);
        for (long seed = 0; seed < 3000; seed++) {
            Random random = new Random(seed);
            byte[] damaged = good.clone();
            for (int i = 0; i <= random.nextInt(3); i++) {
                damaged[random.nextInt(damaged.length)] = (byte) random.nextInt(256);
            }
            byte[] cut =
                    random.nextBoolean() ? damaged : java.util.Arrays.copyOf(damaged, random.nextInt(damaged.length));
            TableRead<Reading> read = read(cut);
            assertThat(read.rows().size() + read.refused().size())
                    .as("seed %d", seed)
                    .isPositive();
        }
    }
}
