package quarterlight;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Sizes of the source files: a file above 400 lines fails, methods above 60 lines are listed. */
class SourceFilesTest {
    private static final int MAX_LINES = 400;
    private static final int LONG_METHOD = 60;
    private static final Path SOURCES =
            Path.of(System.getProperty("quarterlight.basedir", ".")).resolve("src");

    @Test
    void noJavaFileIsLongerThan400Lines() throws IOException {
        List<String> tooLong = new ArrayList<>();
        for (Path file : javaFiles()) {
            int lines = Files.readAllLines(file).size();
            if (lines > MAX_LINES) {
                tooLong.add(SOURCES.relativize(file) + " has " + lines);
            }
        }
        assertThat(tooLong).as("files above %d lines: split them", MAX_LINES).isEmpty();
    }

    @Test
    void everyPackageOfTheProgramSaysWhatItAnswers() throws IOException {
        Path main = SOURCES.resolve("main/java");
        List<String> silent = new ArrayList<>();
        for (Path file : javaFiles()) {
            Path folder = file.getParent();
            if (file.startsWith(main) && !Files.exists(folder.resolve("package-info.java"))) {
                silent.add(main.relativize(folder).toString());
            }
        }
        assertThat(silent).as("packages without package-info.java").isEmpty();
    }

    @Test
    void listsLongMethods() throws IOException {
        for (Path file : javaFiles()) {
            List<String> lines = Files.readAllLines(file);
            int start = -1;
            for (int i = 0; i < lines.size(); i++) {
                String line = lines.get(i);
                if (line.matches(" {4}\\S.*[)] (throws .*)?\\{")) {
                    start = i;
                } else if (line.equals("    }") && start >= 0) {
                    if (i - start > LONG_METHOD) {
                        System.out.println(SOURCES.relativize(file) + ":" + (start + 1) + " has a method of "
                                + (i - start + 1) + " lines");
                    }
                    start = -1;
                }
            }
        }
        assertThat(javaFiles()).isNotEmpty();
    }

    private static List<Path> javaFiles() throws IOException {
        try (Stream<Path> all = Files.walk(SOURCES)) {
            return all.filter(path -> path.toString().endsWith(".java")).toList();
        }
    }
}
