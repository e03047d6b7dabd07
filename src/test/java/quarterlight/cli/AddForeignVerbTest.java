package quarterlight.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import quarterlight.store.VisitStore;
import quarterlight.visit.pin.Recorded;
import quarterlight.visit.reading.GaugeValue;
import quarterlight.visit.reading.Reading;

/** {@code add readings --profile}: tables as other programs write them, their columns and zones named once. */
class AddForeignVerbTest {
    @TempDir
    Path folder;

    private Bench bench;
    private String visit;

    @BeforeEach
    void makeAVisit() {
        bench = new Bench(folder);
        visit = bench.visit();
    }

    private List<Reading> readings() throws Exception {
        try (VisitStore store = VisitStore.openForReading(Path.of(visit))) {
            return store.read().readings().stream().map(Recorded::value).toList();
        }
    }

    private static List<String> um(List<Reading> readings) {
        return readings.stream()
                .map(r -> r.zone() + " "
                        + (r.value() instanceof GaugeValue.Measured m
                                ? Long.toString(Math.round(m.thickness().um()))
                                : r.value().getClass().getSimpleName()))
                .toList();
    }

    static Stream<Arguments> forms() {
        return Stream.of(
                Arguments.of("Panel;Wert (µm);Zeit\nhood;120,5;02.05.2026 10:15\nroof;98;02.05.2026 10:16\n", "UTF-8"),
                Arguments.of(
                        "\uFEFFPanel;Wert (µm);Zeit\nhood;120,5;02.05.2026 10:15\nroof;98;02.05.2026 10:16\n", "UTF-8"),
                Arguments.of(
                        "Panel;Wert (µm);Zeit\nhood;120,5;02.05.2026 10:15\nroof;98;02.05.2026 10:16\n",
                        "windows-1252"),
                Arguments.of(
                        "\uFEFFPanel\tWert (µm)\tZeit\r\nhood\t120,5\t02.05.2026 10:15\r\nroof\t98\t02.05.2026 10:16\r\n",
                        "UTF-16LE"),
                Arguments.of(
                        "Gauge report\nSerial;77\n\nNo;Zone;Thickness;Unit;Time\n1;hood;120.5;um;10:15:00 AM\n2;roof;3.858;mils;10:16:00 AM\n",
                        "UTF-8"),
                Arguments.of(
                        "Zone,Value,Taken\nhood,\"120,5\",2026-05-02 10:15\nroof,98 um,2026-05-02 10:16\n", "UTF-8"));
    }

    @ParameterizedTest
    @MethodSource("forms")
    void aTableIsReadHoweverItIsWritten(String text, String letters) throws Exception {
        Path file = folder.resolve("gauge.csv");
        Files.write(file, text.getBytes(Charset.forName(letters)));
        bench.run("set", visit, "date=2026-05-02").done();
        String time = text.contains("Taken") ? ",time=Taken" : "";
        bench.run(
                        "add",
                        "readings",
                        visit,
                        file.toString(),
                        "--profile",
                        "my gauge",
                        "--columns",
                        "order=day-first" + time)
                .done();
        assertThat(um(readings())).containsExactly("hood 121", "roof 98");
        assertThat(readings().get(1).time().orElseThrow()).hasToString("2026-05-02T10:16");
    }

    @Test
    void columnsAndZonesAreNamedOnceAndRemembered() throws Exception {
        String file = bench.file("a.csv", "Where;Coat;How\nMotorhaube;5,2;mil\nDach;none;mil\nDach;OL;mil\n");
        bench.run("add", "readings", visit, file, "--profile", "shop", "--columns", "zone=Where,value=Coat,unit=How")
                .complains(2, "a.csv, line 2", "Motorhaube", "--zones");
        assertThat(readings()).isEmpty();
        bench.run("add", "readings", visit, file, "--profile", "shop", "--zones", "Motorhaube=hood, dach=roof")
                .done();
        assertThat(um(readings())).containsExactly("hood 132", "roof NoMetal", "roof OverRange");
        bench.run("add", "readings", visit, file, "--profile", "shop");
        assertThat(readings()).hasSize(6);
    }

    @Test
    void aRowThatCannotBeTakenIsNamedAndNothingGoesIn() throws Exception {
        String file = bench.file("a.csv", "zone,coat\nhood,120\nroof,abc\nroof,9000\n");
        JsonNode said = bench.run(
                        "add", "readings", visit, file, "--profile", "p", "--columns", "value=coat,unit=um", "--json")
                .json();
        assertThat(said.path("added").asInt()).isZero();
        assertThat(said.path("refused")).hasSize(2);
        assertThat(said.path("refused").path(0).path("line").asInt()).isEqualTo(3);
        assertThat(readings()).isEmpty();
        bench.run("add", "readings", visit, file, "--profile", "p", "--keep-good");
        assertThat(um(readings())).containsExactly("hood 120");
    }

    @Test
    void whatCannotBeMeantIsSaid() throws IOException {
        String file = bench.file("a.csv", "zone,coat\nhood,120\n");
        bench.run("add", "readings", visit, file, "--profile", "none").complains(2, "no profile none");
        bench.run("add", "readings", visit, file, "--profile", "p", "--columns", "value=depth")
                .complains(2, "no column depth", "zone, coat");
        bench.run("add", "readings", visit, file, "--profile", "p", "--columns", "nonsense")
                .complains(2, "nonsense");
        bench.run("add", "readings", visit, file, "--profile", "../x", "--columns", "value=coat")
                .complains(2, "letters, digits");
        bench.run("add", "marks", visit, file, "--profile", "p").complains(2, "--profile");
        bench.run(
                        "add",
                        "readings",
                        visit,
                        folder.resolve("gone.csv").toString(),
                        "--profile",
                        "p",
                        "--columns",
                        "value=coat")
                .complains(2, "is not there");
        String packed = folder.resolve("b.csv").toString();
        Files.write(Path.of(packed), "PK\3\4abc\0".getBytes(StandardCharsets.ISO_8859_1));
        bench.run("add", "readings", visit, packed, "--profile", "p", "--columns", "value=coat")
                .complains(2, "spreadsheet");
    }
}
