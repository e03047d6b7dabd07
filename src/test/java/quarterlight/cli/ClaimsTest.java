package quarterlight.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Claims laid against the visit, rust by eye, and private rows: from tables to pages, JSON and the archive for the buyer. */
class ClaimsTest {
    @TempDir
    private Path folder;

    private Bench bench;
    private String visit;

    @BeforeEach
    void makeVisit() throws Exception {
        bench = new Bench(folder);
        visit = folder.resolve("car").toString();
        run("new", visit, "--car", "Tamarisk", "--style", "coupe");
        add(
                "statements",
                "zone,text,condition,size,private,said_by",
                "rocker-left,Gone along the seam,rusted through,4 in,,",
                "hood,SECRETWORD of the seller,repaired,,yes,seller",
                "roof,Brown bloom at the gutter,surface rust,,,");
        add(
                "readings",
                "zone,value,unit,private,note",
                "hood,4-5,mil,,",
                "hood,5.1,mil,,",
                "hood,61.937,mil,yes,SECRETWORD");
        add("trials", "item,result,unit,private,note", "Tread,7.25,mm,,", "Horn,does not,,yes,SECRETWORD");
        add(
                "claims",
                "text,by,zone,about,private",
                "Rockers are solid,seller,rocker-left,rust,",
                "Never apart,seller,,engine,",
                "SECRETWORD bid,seller,,price,yes");
        add("odometer", "figure,unit,source,date,went_round", "96240,km,papers,1988,", "31088,km,read,2026,no");
    }

    private Bench.Outcome run(String... call) {
        Bench.Outcome outcome = bench.run(call);
        assertThat(outcome.status()).as(String.join(" ", call) + outcome.err()).isZero();
        return outcome;
    }

    private void add(String kind, String... lines) throws IOException {
        Path file = Files.write(Files.createDirectories(folder.resolve("in")).resolve(kind + ".csv"), List.of(lines));
        run("add", kind, visit, file.toString());
    }

    private static JsonNode json(Bench.Outcome outcome) throws IOException {
        return new ObjectMapper().readTree(outcome.out());
    }

    @Test
    void aClaimOfSoundRockersIsContradictedByAHoleSeenByEye() throws Exception {
        JsonNode claims = json(run("compare", visit, visit, "--json")).at("/claims/a");
        assertThat(claims).as("the private claim stays at home").hasSize(2);
        assertThat(claims.get(0).get("proposed").asText()).isEqualTo("contradicted");
        assertThat(claims.get(0).get("found").toString()).contains("by eye", "Gone along the seam");
        assertThat(claims.get(0).get("judged").isNull()).isTrue();
        assertThat(claims.get(1).get("proposed").asText()).isEqualTo("open");
    }

    @Test
    void rustByEyeHasANeedOfItsOwnAndNoFigure() throws Exception {
        for (JsonNode zone : json(run("rust", visit, "--json")).get("zones")) {
            if (List.of("rocker-left", "roof").contains(zone.get("zone").asText())) {
                assertThat(zone.get("looked_at").asBoolean()).isTrue();
                assertThat(zone.get("need_by_eye").isNull()).isFalse();
                assertThat(zone.get("need").isNull()).isTrue();
                assertThat(zone.get("rust_mm2").isNull()).isTrue();
                assertThat(zone.get("percent").isNull()).isTrue();
                assertThat(zone.get("reasons")).isNotEmpty().allSatisfy(reason -> assertThat(reason.asText())
                        .startsWith("by eye: "));
                assertThat(zone.get("cautions")).isNotEmpty();
            }
        }
    }

    @Test
    void aRangeTakesNoPartInTheStatistics() throws Exception {
        JsonNode zones = json(run("zones", visit, "--json")).get("zones");
        assertThat(zones.get(0).get("readings").asInt()).isEqualTo(2);
    }

    @Test
    void nothingPrivateLeavesInWhatIsMadeForTheBuyer() throws Exception {
        run("pages", visit);
        String report;
        try (var document = Loader.loadPDF(Files.readAllBytes(Path.of(visit, "pages", "report.pdf")))) {
            report = new PDFTextStripper().getText(document).replaceAll("\\s+", " ");
        }
        assertThat(report)
                .contains("Claimed and found", "Rockers are solid", "by eye, not measured", "Said as a range");
        List<String> texts = new ArrayList<>(List.of(report));
        texts.add(Files.readString(Path.of(visit, "pages", "report.html")));
        texts.add(Files.readString(Path.of(visit, "pages", "diagram.svg")));
        Path zip = folder.resolve("buyer.zip");
        run("archive", visit, zip.toString(), "--for-buyer");
        try (ZipFile bag = new ZipFile(zip.toFile())) {
            for (ZipEntry entry : bag.stream().toList()) {
                try (InputStream in = bag.getInputStream(entry)) {
                    texts.add(new String(in.readAllBytes(), StandardCharsets.UTF_8));
                }
            }
        }
        assertThat(texts).hasSizeGreaterThan(20);
        for (String text : texts) {
            int at = Math.max(text.indexOf("SECRETWORD"), text.indexOf("61.937"));
            assertThat(at < 0 ? "" : text.substring(Math.max(0, at - 60), Math.min(text.length(), at + 60)))
                    .isEmpty();
        }
        assertThat(texts).anyMatch(text -> text.contains("Gone along the seam"));
    }

    @Test
    void everyFieldComesBackFromAnArchive() throws Exception {
        Path zip = folder.resolve("whole.zip");
        run("archive", visit, zip.toString());
        Path back = folder.resolve("back");
        run("restore", zip.toString(), back.toString());
        Path one = folder.resolve("one");
        Path two = folder.resolve("two");
        run("export", visit, one.toString());
        run("export", back.toString(), two.toString());
        for (String kind : List.of("statements", "claims", "odometer", "trials", "readings")) {
            try (var files = Files.walk(one)) {
                Path file = files.filter(path -> path.endsWith(kind + ".csv"))
                        .findFirst()
                        .orElseThrow();
                assertThat(two.resolve(one.relativize(file))).hasSameTextualContentAs(file);
            }
        }
    }

    @Test
    void theEarlierColumnIsReadAndMapped() throws Exception {
        add("statements", "zone,kind,text", "hood,as built,a", "hood,does not belong,b", "hood,filler,c");
        Path out = folder.resolve("out");
        run("export", visit, out.toString());
        try (var files = Files.walk(out)) {
            String csv = Files.readString(files.filter(path -> path.endsWith("statements.csv"))
                    .findFirst()
                    .orElseThrow());
            assertThat(csv)
                    .startsWith("zone,text,origin,condition,")
                    .contains("hood,a,original,,")
                    .contains("hood,b,does not belong,,")
                    .contains("hood,c,,filler,");
        }
    }

    @Test
    void aThinReadingInMicrometersIsAskedAbout() throws Exception {
        Path file = Files.write(folder.resolve("r.csv"), List.of("zone,value,unit", "roof,5.1,um"));
        Bench.Outcome outcome = bench.run("add", "readings", visit, file.toString());
        assertThat(outcome.status()).isEqualTo(2);
        assertThat(outcome.err()).contains("5.1 um", "check the unit");
        Files.write(
                file,
                List.of("zone,value,unit", "roof,12,\u00b5m", "roof,4.4,thou", "roof,110,microns", "roof,5,mils"));
        run("add", "readings", visit, file.toString());
    }
}
