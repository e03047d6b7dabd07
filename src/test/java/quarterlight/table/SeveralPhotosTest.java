package quarterlight.table;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import quarterlight.visit.photo.PhotoId;
import quarterlight.visit.row.RecordKind;
import quarterlight.visit.statement.Statement;

/** Several photos in one cell of a statement: in their order, each once, and every name a photo of the visit. */
class SeveralPhotosTest {
    @TempDir
    private Path folder;

    private TableRead<Statement> read(String photos) throws Exception {
        Path file = Files.writeString(
                folder.resolve("statements.csv"), "zone,kind,text,photo\nroof,sound,x,\"" + photos + "\"\n");
        return CsvFile.read(
                file, RowKind.of(RecordKind.STATEMENTS), VisitFixture.usual().context());
    }

    @Test
    void theFirstStaysFirst() throws Exception {
        Statement statement = read("two.jpg | d4d4d4d4|one.jpg").values().get(0);
        assertThat(statement.photo()).contains(new PhotoId(2));
        assertThat(statement.photos()).isEqualTo(List.of(new PhotoId(2), new PhotoId(4), new PhotoId(1)));
    }

    @ParameterizedTest
    @CsvSource({"one.jpg | two.jpg|, empty", "one.jpg|a1a1a1a1, twice", "one.jpg|four.jpg, 'no photo \"four.jpg\"'"})
    void aNameThatIsNoneIsRefusedAtItsCell(String photos, String reason) throws Exception {
        TableRead<Statement> read = read(photos);
        assertThat(read.values()).isEmpty();
        assertThat(read.refused()).singleElement().satisfies(row -> {
            assertThat(row.column()).contains("photo");
            assertThat(row.reason()).contains(reason);
        });
    }
}
