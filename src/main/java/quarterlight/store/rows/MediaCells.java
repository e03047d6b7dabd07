package quarterlight.store.rows;

import java.sql.SQLException;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import quarterlight.visit.photo.MediaFacts;
import quarterlight.visit.photo.Sha256;
import quarterlight.visit.photo.SidecarWords;

/** The cells of what only some media have: pages, what a file lay beside, and what a sidecar says. */
final class MediaCells {
    /** Stands between keywords in their cell. */
    private static final String BETWEEN = "\n";

    private MediaCells() {}

    static RowValues write(RowValues cells, MediaFacts more) {
        Optional<SidecarWords> said = more.said();
        return cells.integer(more.pages())
                .textOf(more.beside().map(Sha256::hex))
                .textOf(said.flatMap(SidecarWords::caption))
                .textOf(said.map(SidecarWords::keywords)
                        .filter(words -> !words.isEmpty())
                        .map(words -> String.join(BETWEEN, words)))
                .integer(said.map(SidecarWords::rating).orElse(OptionalInt.empty()))
                .integer(said.map(SidecarWords::orientation).orElse(OptionalInt.empty()))
                .real(more.focal35Mm());
    }

    static MediaFacts read(Row row) throws SQLException {
        List<String> keywords = row.someText("keywords")
                .map(words -> List.of(words.split(BETWEEN)))
                .orElse(List.of());
        SidecarWords said = new SidecarWords(
                row.someText("caption"), keywords, row.someInteger("rating"), row.someInteger("turned"));
        return new MediaFacts(
                row.someInteger("pages"),
                row.someText("beside").map(Sha256::new),
                Optional.of(said).filter(words -> !words.isEmpty()),
                row.someReal("focal_35_mm"));
    }
}
