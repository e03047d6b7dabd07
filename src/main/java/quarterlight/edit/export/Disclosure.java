package quarterlight.edit.export;

import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import quarterlight.visit.StoredRows;
import quarterlight.visit.VisitRecord;
import quarterlight.visit.fact.Fact;
import quarterlight.visit.fact.Facts;
import quarterlight.visit.row.RecordKind;

/** How much of a visit's tables goes out, and to whom. */
public enum Disclosure {
    /** Everything. */
    WHOLE {
        @Override
        public Optional<StoredRows> of(StoredRows table) {
            return Optional.of(table);
        }
    },
    /** Everything but where photos were taken. */
    WITHOUT_PLACES {
        @Override
        public Optional<StoredRows> of(StoredRows table) {
            return Optional.of(table.without(PLACES));
        }
    },
    /**
     * What stands on pages for the buyer: no places, no data of the photo files beyond name, hash, size and time, no hidden regions,
     * nothing of how the work was done (edit log, clocks, remarks of the intake). What is not named here stays at home.
     */
    FOR_BUYER {
        @Override
        public Optional<StoredRows> of(StoredRows table) {
            if (table.table().equals("photos")) {
                return Optional.of(table.only(PHOTO_FOR_BUYER::contains));
            }
            if (table.table().equals("facts")) {
                return Optional.of(table.without(FACTS_AT_HOME));
            }
            Predicate<String> kind = word -> RecordKind.find(word).isPresent() && !KINDS_AT_HOME.contains(word);
            boolean given = table.table().equals("substrates") || kind.test(table.table());
            return given ? Optional.of(table.exceptWhere(PRIVATE).without(PLACES)) : Optional.empty();
        }
    };

    /** The column that keeps a row from the buyer. */
    private static final String PRIVATE = "private";

    private static final Set<String> PLACES = Set.of("latitude_deg", "longitude_deg");
    private static final Set<String> PHOTO_FOR_BUYER = Set.of(
            "id", "name", "sha256", "kind", "type", "captured_corrected", "width_px", "height_px", "film_s", "pages");
    private static final Set<String> FACTS_AT_HOME = Facts.all().stream()
            .filter(Fact::atHome)
            .flatMap(fact -> fact.field().storedColumns().stream())
            .collect(Collectors.toUnmodifiableSet());

    private static final Set<String> KINDS_AT_HOME = Set.of("hidden", "left-out", "released", "decisions", "dropped");

    /** Whether rows of a kind never go to a buyer as a table. */
    static boolean isAtHome(RecordKind<?> kind) {
        return KINDS_AT_HOME.contains(kind.word());
    }

    /** What goes out of a table; empty if nothing does. */
    public abstract Optional<StoredRows> of(StoredRows table);

    /** The visit as far as it goes out. */
    public VisitRecord of(VisitRecord visit) {
        return this == FOR_BUYER ? visit.forBuyer() : visit;
    }

    /** Whether a fact goes out, by the key by which it is set. */
    boolean tellsFact(String key) {
        return this != FOR_BUYER || !Facts.find(key).map(Fact::atHome).orElse(false);
    }
}
