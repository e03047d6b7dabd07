package quarterlight.cli.delivery;

import static org.assertj.core.api.Assertions.assertThat;

import com.drew.imaging.ImageMetadataReader;
import com.drew.metadata.Metadata;
import com.drew.metadata.exif.ExifDirectoryBase;
import com.drew.metadata.exif.GpsDirectory;
import com.fasterxml.jackson.databind.JsonNode;
import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Base64;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import quarterlight.archive.RfcBag;
import quarterlight.cli.Bench;
import quarterlight.cli.DemoOnce;
import quarterlight.cli.DemoPages;
import quarterlight.store.VisitStore;
import quarterlight.visit.VisitRecord;
import quarterlight.visit.photo.MediaKind;
import quarterlight.visit.pin.Recorded;
import quarterlight.visit.row.RecordKind;

/** Archives and exports of both demo cars, by command. */
class ArchiveVerbTest {
    private static final Pattern PICTURE = Pattern.compile("data:image/jpeg;base64,([A-Za-z0-9+/=]+)");

    @TempDir
    private Path folder;

    private static VisitRecord read(String visit) throws Exception {
        try (VisitStore store = VisitStore.openForReading(Path.of(visit))) {
            return store.read();
        }
    }

    /** A buyer's archive is made of the first alone: its pages take as long as all the rest, and what it may tell is sought in others too. */
    @Test
    void bothDemoCarsComeBackFromTheirArchivesAndFromTheirExports() throws Exception {
        Bench bench = DemoOnce.bench(folder);
        JsonNode visits = DemoOnce.in(folder).get("visits");
        assertThat(visits).hasSize(2);
        for (JsonNode each : visits) {
            String visit = each.asText();
            DemoPages.check(Path.of(visit), read(visit));
            goesThereAndBack(bench, visit);
            comesBackFromTheExport(bench, visit);
        }
        tellsTheBuyerNothingHidden(bench, visits.get(0).asText());
    }

    private static void goesThereAndBack(Bench bench, String visit) throws Exception {
        Path zip = Path.of(visit + ".zip");
        JsonNode made =
                bench.run("archive", visit, zip.toString(), "--json").done().json();
        assertThat(made.get("originals").asInt()).isEqualTo(read(visit).photos().size());
        assertThat(RfcBag.of(zip).findings()).isEmpty();
        JsonNode audit = bench.run("audit", zip.toString(), "--json").done().json();
        assertThat(audit.get("ok").asBoolean()).isTrue();
        String back = visit + "-back";
        bench.run("restore", zip.toString(), back).done();
        assertThat(bench.state(back))
                .as("all but what says when the visit was archived, and small pictures")
                .isEqualTo(bench.state(visit).replace("archives.csv, ", "").replace(", thumbs.db", ""));
        assertThat(bench.run("audit", back, "--json").done().json().get("ok").asBoolean())
                .isTrue();
        bench.run("archive", visit, zip.toString()).complains(2, "exists already");
        bench.run("restore", zip.toString(), back).complains(2, "exists already");
    }

    private static void tellsTheBuyerNothingHidden(Bench bench, String visit) throws Exception {
        Path zip = Path.of(visit + "-buyer.zip");
        bench.run("archive", visit, zip.toString(), "--for-buyer").done();
        RfcBag.Seen seen = RfcBag.of(zip);
        assertThat(seen.findings()).isEmpty();
        assertThat(seen.files()).containsKey("data/pages/diagram.pdf").doesNotContainKey("data/visit.db");
        List<String> secrets = new ArrayList<>();
        read(visit).photos().forEach(photo -> {
            photo.file().camera().ifPresent(camera -> secrets.add(camera.value()));
            photo.file().position().ifPresent(place -> {
                secrets.add(Double.toString(place.latitude()).substring(0, 7));
                secrets.add(Double.toString(place.longitude()).substring(0, 7));
            });
        });
        assertThat(secrets).as("the demo has cameras to hide").hasSizeGreaterThan(60);
        for (Map.Entry<String, byte[]> file : seen.files().entrySet()) {
            String text = new String(file.getValue(), StandardCharsets.ISO_8859_1);
            for (String secret : List.copyOf(new TreeSet<>(secrets))) {
                assertThat(text.contains(secret))
                        .as(file.getKey() + " tells " + secret)
                        .isFalse();
            }
            assertThat(text.contains("Exif\0\0")).as(file.getKey()).isFalse();
            Matcher picture = PICTURE.matcher(text);
            while (picture.find()) {
                Metadata metadata = ImageMetadataReader.readMetadata(
                        new ByteArrayInputStream(Base64.getDecoder().decode(picture.group(1))));
                assertThat(metadata.getDirectoriesOfType(ExifDirectoryBase.class))
                        .isEmpty();
                assertThat(metadata.getDirectoriesOfType(GpsDirectory.class)).isEmpty();
            }
        }
    }

    private void comesBackFromTheExport(Bench bench, String visit) throws Exception {
        Path export = Path.of(visit + "-export");
        bench.run("export", visit, export.toString()).done();
        bench.run("export", visit, export.toString()).complains(2, "exists already");
        VisitRecord first = read(visit);
        Path again = Path.of(visit + "-again");
        try (VisitStore store = VisitStore.create(again, first.facts(), Bench.CLOCK)) {
            store.change("photos", tx -> first.photos().forEach(photo -> tx.addPhoto(photo.file())));
        }
        for (RecordKind<?> kind : RecordKind.all()) {
            if (!kind.of(first).isEmpty()) {
                bench.run(
                                "add",
                                kind.word(),
                                again.toString(),
                                export.resolve(kind.word() + ".csv").toString())
                        .done();
            }
            assertThat(values(kind, read(again.toString()))).as(kind.word()).isEqualTo(values(kind, first));
        }
        try (Stream<Path> files = Files.list(export.resolve("sidecars"))) {
            assertThat(files.count())
                    .isEqualTo(first.photos().stream()
                            .filter(photo -> photo.file().kind() != MediaKind.WORDS)
                            .count());
        }
        Path open = Path.of(visit + "-open");
        bench.run("export", visit, open.toString(), "--with-places").done();
        assertThat(allText(export)).doesNotContain("GPSLatitude").doesNotContain("latitude_deg");
        assertThat(allText(open)).contains("exif:GPSLatitude").contains("latitude_deg");
    }

    private static <T> List<T> values(RecordKind<T> kind, VisitRecord visit) {
        return kind.of(visit).stream().map(Recorded::value).toList();
    }

    private static String allText(Path folder) throws Exception {
        StringBuilder text = new StringBuilder();
        try (Stream<Path> files = Files.walk(folder)) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                text.append(Files.readString(file));
            }
        }
        return text.toString();
    }

    @Test
    void whatIsNoArchiveIsRefusedInOneLine() throws Exception {
        Bench bench = new Bench(folder);
        String visit = bench.visit();
        String text = bench.file("plain.zip", "not a zip");
        bench.run("audit", text).complains(2, "plain.zip is no zip file");
        bench.run("restore", text, folder.resolve("x").toString()).complains(2, "plain.zip is no zip file");
        bench.run(
                        "restore",
                        folder.resolve("none.zip").toString(),
                        folder.resolve("x").toString())
                .complains(2, "is not there");
        bench.run(
                        "archive",
                        folder.resolve("none").toString(),
                        folder.resolve("a.zip").toString())
                .complains(3, "none");
        bench.run("archive", visit, folder.resolve("a.zip").toString(), "--paper", "napkin")
                .complains(2, "napkin");
        String zip = folder.resolve("a.zip").toString();
        bench.run("archive", visit, zip).complains(1, "missing since they were added");
        bench.run("audit", zip).complains(1, "missing");
        bench.run("restore", zip, folder.resolve("back").toString()).complains(1, "restored as it was archived");
        assertThat(folder.resolve("back")).isDirectory();
        assertThat(folder.resolve("x")).doesNotExist();
    }
}
