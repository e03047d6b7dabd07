package quarterlight.store;

import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;
import quarterlight.language.Retold;

/**
 * What was left out or set right when a visit was taken over that this computer had not written, told before it opens.
 *
 * @param visit its folder, or the archive
 * @param lines one sentence each; empty if all was taken over
 * @param kept where the database lies as it was received, if it was kept
 */
public record TakeoverReport(Path visit, List<String> lines, Optional<Path> kept) {
    public TakeoverReport {
        Objects.requireNonNull(visit, "visit");
        Objects.requireNonNull(kept, "kept");
        lines = List.copyOf(lines);
    }

    public boolean isEmpty() {
        return lines.isEmpty();
    }

    /** What this is about, as a heading over the lines. */
    public String heading() {
        return Retold.of("The visit " + visit
                + " was not written by this computer, or not as it stands. Its database was read row by"
                + " row; left out or set right:");
    }

    /** Where what was left out can still be found. */
    public Optional<String> footing() {
        return kept.map(file -> Retold.of("The database as it was received is kept in " + file + "."));
    }

    /** All of it, for a window. */
    public String text() {
        return heading() + "\n\n" + lines.stream().map(Retold::of).collect(Collectors.joining("\n"))
                + footing().map(footing -> "\n\n" + footing).orElse("");
    }
}
