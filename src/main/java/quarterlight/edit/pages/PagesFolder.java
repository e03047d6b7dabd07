package quarterlight.edit.pages;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import quarterlight.file.DurableFiles;
import quarterlight.file.StagingFolder;

/** Where pages are made, beside the place where they are to lie: they come there all at once, and what was broken off leaves nothing. */
public final class PagesFolder implements AutoCloseable {
    /** The order in which the pages are told. */
    private static final List<String> ORDER =
            List.of("diagram.svg", "diagram.pdf", "report.pdf", "report.html", "compare.pdf", "compare.html");

    private final Path out;
    private final StagingFolder unfinished;
    private final Path making;
    private final boolean fresh;

    private PagesFolder(Path out, StagingFolder unfinished, boolean fresh) throws IOException {
        this.out = out;
        this.unfinished = unfinished;
        this.making = Files.createDirectory(unfinished.folder().resolve("pages"));
        this.fresh = fresh;
    }

    public static PagesFolder in(Path out) throws IOException {
        boolean fresh = !Files.exists(out);
        DurableFiles.createFolders(out);
        return new PagesFolder(out, StagingFolder.in(out), fresh);
    }

    public Path making() {
        return making;
    }

    /** Brings the pages, whose content lasts already, to their place, where they last; where they lie now. */
    public List<Path> take() throws IOException {
        List<Path> made = new ArrayList<>();
        for (Path file : made()) {
            Path place = out.resolve(file.getFileName());
            DurableFiles.rename(file, place);
            made.add(place);
        }
        DurableFiles.forceFolder(out);
        return List.copyOf(made);
    }

    /** What was made, in the order in which it is told. */
    public List<Path> made() throws IOException {
        try (Stream<Path> files = Files.list(making)) {
            return files.sorted(Comparator.comparingInt((Path file) -> Math.floorMod(
                                    ORDER.indexOf(file.getFileName().toString()), ORDER.size() + 1))
                            .thenComparing(Comparator.naturalOrder()))
                    .toList();
        }
    }

    @Override
    public void close() throws IOException {
        unfinished.close();
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
