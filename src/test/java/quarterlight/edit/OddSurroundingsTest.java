package quarterlight.edit;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import quarterlight.OwnProcess;

/** The program itself, in a process of its own, where the computer is set up oddly or files are damaged. */
@Timeout(300)
class OddSurroundingsTest {
    private static final Path PHOTOS =
            Path.of(System.getProperty("quarterlight.basedir", ".")).resolve("demo-data/chicory-1971/photos");

    @TempDir
    Path folder;

    private record Ended(int status, String out, String err) {}

    @Test
    void aDamagedPhotoIsTakenInWithoutAWordOfALibrary() throws Exception {
        Path card = Files.createDirectories(folder.resolve("card"));
        byte[] good = Files.readAllBytes(photo());
        Files.write(card.resolve("cut.jpg"), Arrays.copyOf(good, good.length * 2 / 3));
        run(Map.of(), "new", visit(), "--car", "Any", "--style", "coupe");
        Ended intake = run(Map.of(), "intake", visit(), card.toString());
        assertThat(intake.err()).isEmpty();
        assertThat(intake.status()).isZero();
        assertThat(intake.out()).contains("1 photo");
    }

    @Test
    void namesThatTheLocaleDoesNotKnowAreToldInASentence() throws Exception {
        Path card = Files.createDirectories(folder.resolve("card"));
        Files.copy(photo(), card.resolve("M\u00e4rz \u8eca.jpg"));
        Map<String, String> plain = Map.of("LC_ALL", "C");
        run(plain, "new", visit(), "--car", "Any", "--style", "coupe");
        assertThat(run(plain, "intake", visit(), card.toString()).status()).isZero();
        Ended photos = run(plain, "photos", visit());
        assertThat(photos.out()).contains("letters that this computer's setting for file names does not know");
        assertThat(run(plain, "audit", visit()).status()).isZero();

        Map<String, String> wide = Map.of("LC_ALL", "C.UTF-8");
        Path other = folder.resolve("other");
        run(wide, "new", other.toString(), "--car", "Any", "--style", "coupe");
        run(wide, "intake", other.toString(), card.toString());
        Ended audit = run(plain, "audit", other.toString());
        assertThat(audit.status()).isEqualTo(2);
        assertThat(audit.err().lines()).singleElement().satisfies(line -> assertThat(line)
                .contains("LC_ALL=C.UTF-8"));
    }

    private String visit() {
        return folder.resolve("v").toString();
    }

    private static Path photo() throws IOException {
        Assumptions.assumeTrue(Files.isDirectory(PHOTOS), "the demo photos are not there");
        try (var files = Files.walk(PHOTOS)) {
            return files.filter(file ->
                            file.toString().toLowerCase(java.util.Locale.ROOT).endsWith(".jpg"))
                    .findFirst()
                    .orElseThrow();
        }
    }

    private Ended run(Map<String, String> surroundings, String... arguments) throws IOException, InterruptedException {
        Path out = folder.resolve("out.txt");
        Path err = folder.resolve("err.txt");
        ProcessBuilder builder = new ProcessBuilder(OwnProcess.program(folder, arguments))
                .redirectOutput(out.toFile())
                .redirectError(err.toFile());
        builder.environment().putAll(surroundings);
        int status = builder.start().waitFor();
        return new Ended(
                status,
                Files.readString(out, StandardCharsets.UTF_8),
                withoutTestLibraries(Files.readString(err, StandardCharsets.UTF_8)));
    }

    /** A logging library that only tests bring along remarks that it is not set up. */
    private static String withoutTestLibraries(String text) {
        return text.lines().filter(line -> !line.startsWith("SLF4J")).collect(Collectors.joining("\n"));
    }
}
