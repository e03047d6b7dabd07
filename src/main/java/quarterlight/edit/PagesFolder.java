package quarterlight.edit;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/** Where pages are made, beside the place where they are to lie: they come there all at once, and what was broken off leaves nothing. */
final class PagesFolder implements AutoCloseable {
    /** The order in which the pages are told. */
    private static final List<String> ORDER = List.of("diagram.svg", "diagram.pdf", "report.pdf", "report.html");

    private final Path out;
    private final Path making;
    private final boolean fresh;

    private PagesFolder(Path out, Path making, boolean fresh) {
        this.out = out;
        this.making = making;
        this.fresh = fresh;
    }

    static PagesFolder in(Path out) throws IOException {
        boolean fresh = !Files.exists(out);
        Files.createDirectories(out);
        return new PagesFolder(out, Files.createTempDirectory(out, ".making-"), fresh);
    }

    Path making() {
        return making;
    }

    /** Brings the pages to their place; where they lie now. */
    List<Path> take() throws IOException {
        List<Path> made = new ArrayList<>();
        for (Path file : files()) {
            made.add(Files.move(file, out.resolve(file.getFileName()), StandardCopyOption.REPLACE_EXISTING));
        }
        return List.copyOf(made);
    }

    private List<Path> files() throws IOException {
        try (Stream<Path> files = Files.list(making)) {
            return files.sorted(Comparator.comparingInt((Path file) -> Math.floorMod(
                                    ORDER.indexOf(file.getFileName().toString()), ORDER.size() + 1))
                            .thenComparing(Comparator.naturalOrder()))
                    .toList();
        }
    }

    @Override
    public void close() throws IOException {
        for (Path left : files()) {
            Files.delete(left);
        }
        Files.delete(making);
        if (fresh && isEmpty()) {
            Files.delete(out);
        }
    }

    private boolean isEmpty() throws IOException {
        try (Stream<Path> files = Files.list(out)) {
            return files.findAny().isEmpty();
        }
    }
}
