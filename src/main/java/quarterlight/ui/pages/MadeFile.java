package quarterlight.ui.pages;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/** A page file that was made for the buyer. */
record MadeFile(Path path, long bytes, Instant made) {
    /** What lies in the folder of pages, by name; none if there is no such folder. */
    static List<MadeFile> in(Path folder) throws IOException {
        if (!Files.isDirectory(folder)) {
            return List.of();
        }
        List<MadeFile> found = new ArrayList<>();
        try (Stream<Path> files = Files.list(folder)) {
            for (Path file : files.filter(Files::isRegularFile)
                    .filter(file -> !file.getFileName().toString().startsWith("."))
                    .sorted(Comparator.comparing(Path::toString))
                    .toList()) {
                found.add(new MadeFile(
                        file, Files.size(file), Files.getLastModifiedTime(file).toInstant()));
            }
        }
        return found;
    }

    String name() {
        return path.getFileName().toString();
    }

    boolean isPdf() {
        return name().endsWith(".pdf");
    }
}
