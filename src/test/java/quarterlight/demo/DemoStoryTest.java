package quarterlight.demo;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import quarterlight.edit.EditRefused;
import quarterlight.edit.fact.FactEdits;
import quarterlight.findings.Findings;
import quarterlight.finish.history.ZoneHistory;
import quarterlight.rust.ZoneRust;
import quarterlight.table.CsvFile;
import quarterlight.table.RowKind;
import quarterlight.table.TableRead;
import quarterlight.table.TableUnreadable;
import quarterlight.table.ZoneTable;
import quarterlight.table.cell.RowContext;
import quarterlight.table.list.DatePatternTable;
import quarterlight.visit.VisitFacts;
import quarterlight.visit.VisitParts;
import quarterlight.visit.VisitRecord;
import quarterlight.visit.photo.MediaFacts;
import quarterlight.visit.photo.MediaHeader;
import quarterlight.visit.photo.MediaKind;
import quarterlight.visit.photo.Photo;
import quarterlight.visit.photo.PhotoFile;
import quarterlight.visit.photo.PhotoId;
import quarterlight.visit.photo.Sha256;
import quarterlight.visit.pin.Pin;
import quarterlight.visit.pin.RecordId;
import quarterlight.visit.pin.Recorded;
import quarterlight.visit.row.RecordKind;

/** The program takes every table of the demo in whole, and finds in it the story that was planted there. */
class DemoStoryTest {
    private static final Path BASE = Path.of(System.getProperty("quarterlight.basedir", "."));
    private static final Path DATA = BASE.resolve("demo-data");

    @ParameterizedTest
    @ValueSource(strings = {"tamarisk-1971", "chicory-1971"})
    void everyZoneGetsItsTrueHistory(String visit) throws Exception {
        Findings findings = findings(visit);
        for (CSVRecord row : Story.rows(DATA.resolve(visit).resolve("truth/finish.csv"), ',')) {
            quarterlight.car.ZoneId id = new quarterlight.car.ZoneId(row.get("zone"));
            if (findings.history().prior(id).isPresent()) {
                continue;
            }
            ZoneHistory zone = findings.history().zone(id).orElseThrow();
            switch (row.get("history")) {
                case "factory" ->
                    assertThat(zone.refinishScore()).as(row.get("zone")).isLessThan(15);
                case "plastic" ->
                    assertThat(zone.readable()).as(row.get("zone")).isFalse();
                case "filler" ->
                    assertThat(zone.repairScore()).as(row.get("zone")).isGreaterThan(90);
                default -> assertThat(zone.refinishScore()).as(row.get("zone")).isGreaterThan(60);
            }
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"tamarisk-1971", "chicory-1971"})
    void everyDrawnPatchIsMeasuredWithin3Percent(String visit) throws Exception {
        Findings findings = findings(visit);
        Set<String> seen = new HashSet<>();
        for (CSVRecord row : Story.rows(DATA.resolve(visit).resolve("truth/rust.csv"), ',')) {
            ZoneRust zone = findings.rust().zones().stream()
                    .filter(z -> z.zone().id().toString().equals(row.get("zone")))
                    .findFirst()
                    .orElseThrow();
            double wanted = Double.parseDouble(row.get("rust_mm2"));
            assertThat(zone.rust().orElseThrow().mm2() / wanted)
                    .as(row.get("zone"))
                    .isBetween(0.97, 1.03);
            assertThat(zone.holes()).hasValue(Integer.parseInt(row.get("holes")));
            seen.add(row.get("zone"));
        }
        assertThat(seen).hasSizeGreaterThanOrEqualTo(5);
    }

    @Test
    void theCarOfTheTwoWithTheRepairedQuarterHasMoreRefinishedPanels() throws Exception {
        assertThat(refinished("tamarisk-1971")).isEqualTo(6);
        assertThat(refinished("chicory-1971")).isEqualTo(1);
    }

    private static long refinished(String visit) throws Exception {
        return findings(visit).history().zones().stream()
                .filter(zone -> zone.refinishScore() > 50)
                .count();
    }

    private static Findings findings(String visit) throws IOException, EditRefused, TableUnreadable {
        return Findings.of(visit(visit), ZoneTable.load(), Map.of(), DatePatternTable.load());
    }

    static VisitRecord visit(String name) throws IOException, EditRefused, TableUnreadable {
        Path folder = DATA.resolve(name);
        Map<String, String> facts = FactEdits.assignments(Files.readAllLines(folder.resolve("facts.txt")));
        VisitFacts started = new FactEdits(ZoneTable.load()).start(facts, ZoneId.of("UTC"));
        VisitRecord bare = with(VisitRecord.empty(started), photos(folder), List.of());
        List<Recorded<Pin>> pins = rows(folder, "pins", RowKind.of(RecordKind.PINS), bare);
        VisitRecord pinned = with(bare, bare.photos(), pins);
        return new VisitParts(started)
                .photos(bare.photos())
                .pins(pins)
                .readings(rows(folder, "readings", RowKind.of(RecordKind.READINGS), pinned))
                .gaugeChecks(rows(folder, "gauge", RowKind.of(RecordKind.GAUGE), pinned))
                .signs(rows(folder, "signs", RowKind.of(RecordKind.SIGNS), pinned))
                .traces(rows(folder, "traces", RowKind.of(RecordKind.TRACES), pinned))
                .marks(rows(folder, "marks", RowKind.of(RecordKind.MARKS), pinned))
                .trials(rows(folder, "trials", RowKind.of(RecordKind.TRIALS), pinned))
                .statements(rows(folder, "statements", RowKind.of(RecordKind.STATEMENTS), pinned))
                .features(rows(folder, "features", RowKind.of(RecordKind.FEATURES), pinned))
                .record();
    }

    private static VisitRecord with(VisitRecord visit, List<Photo> photos, List<Recorded<Pin>> pins) {
        return new VisitParts(visit.facts()).photos(photos).pins(pins).record();
    }

    private static <T> List<Recorded<T>> rows(Path folder, String kind, RowKind<T> rowKind, VisitRecord visit)
            throws TableUnreadable {
        TableRead<T> read =
                CsvFile.read(folder.resolve(kind + ".csv"), rowKind, RowContext.of(visit, ZoneTable.load()));
        assertThat(read.refused()).as(kind).isEmpty();
        assertThat(read.usable()).as(kind).isTrue();
        List<Recorded<T>> recorded = new ArrayList<>();
        for (T value : read.values()) {
            recorded.add(new Recorded<>(new RecordId(recorded.size() + 1L), value));
        }
        return recorded;
    }

    private static List<Photo> photos(Path folder) throws IOException {
        List<Photo> photos = new ArrayList<>();
        for (CSVRecord row : Story.rows(folder.resolve("truth/photos.csv"), ',')) {
            long id = photos.size() + 1L;
            PhotoFile file = new PhotoFile(
                    row.get("photo"),
                    "originals/" + row.get("photo"),
                    new Sha256(String.format("%064x", id)),
                    1,
                    MediaKind.PHOTO,
                    "JPEG",
                    MediaHeader.NONE.withSize(
                            OptionalInt.of(Integer.parseInt(row.get("width"))),
                            OptionalInt.of(Integer.parseInt(row.get("height"))),
                            1),
                    OptionalDouble.empty(),
                    List.of(),
                    MediaFacts.NONE);
            photos.add(new Photo(new PhotoId(id), file, Optional.empty()));
        }
        return photos;
    }
}
