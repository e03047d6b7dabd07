package quarterlight.store;

import static org.assertj.core.api.Assertions.assertThat;
import static quarterlight.store.SampleVisit.CLOCK;
import static quarterlight.store.SampleVisit.bareFacts;

import java.nio.file.Path;
import java.sql.Connection;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import quarterlight.store.schema.Database;

class StoreAuditTest {
    @TempDir
    Path folder;

    @Test
    void aSoundVisitHasNothingToSay() throws Exception {
        try (VisitStore store = VisitStore.create(folder.resolve("v"), bareFacts(), CLOCK)) {
            assertThat(StoreAudit.of(store)).isEmpty();
        }
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '~',
            value = {
                "INSERT INTO pin (photo_id, zone) VALUES (77, 'hood')|Row 1 of table pin names a row of table photo",
                "INSERT INTO sign (zone, kind, seen) VALUES ('hood', 'sparkle', 1)|holds \"sparkle\"",
                "INSERT INTO sign (zone, kind, seen) VALUES ('NO ZONE', 'ripple', 1)|row 1 of table sign",
                "DELETE FROM visit|the facts of the visit are gone",
                "UPDATE visit SET timezone = 'Atlantis/Main'|Atlantis/Main",
                "INSERT INTO clock_setting (camera, shift_duration) VALUES ('c', 'an hour')|table clock_setting",
                "INSERT INTO feature (feature, built_from, built_to) VALUES ('f', '1971-13', '1972')|1971-13",
                "UPDATE visit SET car = ''|a car needs a name",
            })
    void whatDoesNotHoldIsSaid(String tampering, String said) throws Exception {
        Path visit = folder.resolve("v");
        VisitStore.create(visit, bareFacts(), CLOCK).close();
        try (Connection connection = Database.open(visit.resolve("visit.db"))) {
            Database.run(connection, "PRAGMA foreign_keys = OFF");
            Database.run(connection, "PRAGMA ignore_check_constraints = ON");
            Database.run(connection, tampering);
        }
        try (VisitStore store = VisitStore.openForReading(visit)) {
            List<String> found = StoreAudit.of(store);
            assertThat(String.join("\n", found)).contains(said);
            assertThat(found).allSatisfy(sentence -> assertThat(sentence).endsWith("."));
        }
    }
}
