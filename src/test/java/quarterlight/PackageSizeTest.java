package quarterlight;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A package is one concept, so it stays small enough to be seen at a glance: 15 classes at most. */
class PackageSizeTest {
    private static final int MAX_CLASSES = 15;

    @Test
    void noPackageHoldsMoreThanFifteenClasses() throws IOException {
        Path program = Path.of(System.getProperty("quarterlight.basedir", "."), "src/main/java/quarterlight");
        assertThat(sizes(program)).hasSizeGreaterThan(50);
        assertThat(tooLarge(program))
                .as("split a package at its second concept")
                .isEmpty();
    }

    @Test
    void sixteenClassesAreOneTooMany(@TempDir Path sources) throws IOException {
        Path full = Files.createDirectories(sources.resolve("full"));
        Path over = Files.createDirectories(sources.resolve("over"));
        for (int i = 0; i < 15; i++) {
            Files.createFile(full.resolve("Class" + i + ".java"));
            Files.createFile(over.resolve("Class" + i + ".java"));
        }
        Files.createFile(full.resolve("package-info.java"));
        Files.createFile(over.resolve("OneMore.java"));
        assertThat(tooLarge(sources)).containsOnly(Map.entry(over, 16L));
    }

    private static Map<Path, Long> tooLarge(Path sources) throws IOException {
        return sizes(sources).entrySet().stream()
                .filter(size -> size.getValue() > MAX_CLASSES)
                .collect(Collectors.toMap(Map.Entry::getKey, Map.Entry::getValue));
    }

    private static Map<Path, Long> sizes(Path sources) throws IOException {
        try (Stream<Path> files = Files.walk(sources)) {
            return files.filter(file -> file.toString().endsWith(".java"))
                    .filter(file -> !file.endsWith("package-info.java"))
                    .collect(Collectors.groupingBy(Path::getParent, TreeMap::new, Collectors.counting()));
        }
    }
}
