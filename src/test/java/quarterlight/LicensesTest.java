package quarterlight;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import java.util.zip.ZipFile;
import org.junit.jupiter.api.Test;

/** The lists of licenses name what the program really runs on, and every license has its text. */
class LicensesTest {
    private static final Path TOP = Path.of(System.getProperty("quarterlight.basedir", "."));
    private static final Path LICENSES = TOP.resolve("src/main/licenses");

    /** In a Maven repository a jar stands under group/artifact/version/. */
    private static final Pattern IN_REPOSITORY = Pattern.compile(".*?/repository/(.+)/([^/]+)/([^/]+)/([^/]+\\.jar)");

    private static final Pattern LICENSE_IN_JAR =
            Pattern.compile("(META-INF|license)/(.*/)?[^/]*(LICENSE|COPYING)[^/]*", Pattern.CASE_INSENSITIVE);

    @Test
    void listsEveryLibraryThatTheProgramRunsOnAndNoOther() throws IOException {
        assertThat(new TreeSet<>(listed().keySet()))
                .isEqualTo(new TreeSet<>(running().keySet()));
    }

    @Test
    void holdsTheTextOfEveryLicense() throws IOException {
        Map<String, Path> jars = running();
        Map<String, Map<String, String>> listed = listed();
        assertThat(listed).isNotEmpty();
        for (Map.Entry<String, Path> jar : jars.entrySet()) {
            Map<String, String> row = listed.get(jar.getKey());
            assertThat(row).as(jar.getKey()).isNotNull();
            assertThat(row.get("license")).as(jar.getKey()).isNotBlank();
            if (row.get("text").isEmpty()) {
                assertThat(namesIn(jar.getValue()))
                        .as("a license text in " + jar.getValue().getFileName())
                        .anyMatch(name -> LICENSE_IN_JAR.matcher(name).matches());
            } else {
                assertThat(LICENSES.resolve("texts").resolve(row.get("text"))).isNotEmptyFile();
            }
        }
    }

    @Test
    void holdsTheTextOfEveryNativePart() throws IOException {
        List<Map<String, String>> natives = rows("natives.csv");
        assertThat(natives)
                .extracting(row -> row.get("native"))
                .contains("ffmpeg", "leptonica", "javacpp", "sqlite-jdbc");
        for (Map<String, String> row : natives) {
            assertThat(LICENSES.resolve(row.get("text")))
                    .as(row.get("contains"))
                    .isNotEmptyFile();
            assertThat(row.get("license")).as(row.get("contains")).isNotBlank();
        }
    }

    @Test
    void holdsTheTextOfEveryScriptThatGoesOutInAPage() throws IOException {
        Path scripts = TOP.resolve("src/main/resources/quarterlight/archive/signature");
        List<Map<String, String>> listed = rows("scripts.csv");
        try (Stream<Path> files = Files.list(scripts)) {
            assertThat(listed)
                    .extracting(row -> row.get("script"))
                    .containsExactlyInAnyOrderElementsOf(
                            files.map(file -> file.getFileName().toString())
                                    .filter(name -> name.endsWith(".min.js"))
                                    .toList());
        }
        for (Map<String, String> row : listed) {
            assertThat(row.get("license")).as(row.get("script")).isNotBlank();
            assertThat(LICENSES.resolve("texts").resolve(row.get("text"))).isNotEmptyFile();
        }
        assertThat(scripts.resolve("js-sha256-MIT.txt"))
                .as("the page bears the text, as the license asks")
                .hasSameTextualContentAs(LICENSES.resolve("texts/js-sha256-MIT.txt"));
    }

    @Test
    void isItselfUnderTheApacheLicense() throws IOException {
        assertThat(Files.readString(TOP.resolve("LICENSE")))
                .contains("Apache License")
                .contains("Version 2.0, January 2004");
        assertThat(Files.readString(TOP.resolve("NOTICE"))).contains("Quarterlight", "Apache License, Version 2.0");
        assertThat(Files.readString(TOP.resolve("pom.xml"))).contains("<name>Apache-2.0</name>");
    }

    private static Map<String, Map<String, String>> listed() throws IOException {
        Map<String, Map<String, String>> listed = new TreeMap<>();
        for (Map<String, String> row : rows("libraries.csv")) {
            assertThat(listed.put(row.get("library"), row))
                    .as(row.get("library") + " twice")
                    .isNull();
        }
        return listed;
    }

    /** Rows by the names of their columns; no cell of these tables holds a comma. */
    private static List<Map<String, String>> rows(String name) throws IOException {
        List<String> lines = Files.readAllLines(LICENSES.resolve(name));
        String[] columns = lines.get(0).split(",", -1);
        List<Map<String, String>> rows = new ArrayList<>();
        for (String line : lines.subList(1, lines.size())) {
            String[] cells = line.split(",", -1);
            assertThat(cells).as(line).hasSameSizeAs(columns);
            Map<String, String> row = new TreeMap<>();
            for (int i = 0; i < columns.length; i++) {
                row.put(columns[i], cells[i]);
            }
            rows.add(row);
        }
        return rows;
    }

    /** Libraries of the running program by group:artifact, as the build wrote them down; native parts stand in a list of their own. */
    private static Map<String, Path> running() throws IOException {
        Path list = TOP.resolve("target/runtime-libraries.txt");
        assumeTrue(Files.exists(list), "the build wrote no list of libraries");
        Map<String, Path> jars = new TreeMap<>();
        for (String place : Files.readString(list).strip().split(File.pathSeparator)) {
            Matcher parts = IN_REPOSITORY.matcher(place.replace('\\', '/'));
            assertThat(parts.matches()).as(place).isTrue();
            if (parts.group(4).equals(parts.group(2) + "-" + parts.group(3) + ".jar")) {
                jars.put(parts.group(1).replace('/', '.') + ":" + parts.group(2), Path.of(place));
            }
        }
        return jars;
    }

    private static List<String> namesIn(Path jar) throws IOException {
        try (ZipFile zip = new ZipFile(jar.toFile());
                Stream<String> names = zip.stream().map(entry -> entry.getName())) {
            return names.toList();
        }
    }
}
