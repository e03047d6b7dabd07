package quarterlight.table.cell;

import static quarterlight.language.Sentences.say;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import quarterlight.car.ZoneCatalog;
import quarterlight.car.ZoneId;
import quarterlight.marks.code.DatePattern;
import quarterlight.marks.code.DatePatterns;
import quarterlight.table.text.Nearest;
import quarterlight.table.text.Quoted;
import quarterlight.visit.VisitFacts;
import quarterlight.visit.VisitRecord;
import quarterlight.visit.photo.Photo;
import quarterlight.visit.photo.PhotoId;
import quarterlight.visit.row.CellRefused;

/** What a row is read against: the facts of the visit, the zones of its car, its photos and where they are pinned. Immutable. */
public final class RowContext {
    private final VisitFacts facts;
    private final ZoneNames zones;
    private final PhotoNames photos;
    private final Map<PhotoId, Photo> byId;
    private final Map<PhotoId, Set<ZoneId>> pinned;
    private final Optional<DatePatterns> patterns;

    private RowContext(VisitRecord visit, ZoneCatalog catalog, Optional<DatePatterns> patterns) {
        this.patterns = patterns;
        facts = visit.facts();
        zones = new ZoneNames(catalog, facts.car());
        photos = new PhotoNames(visit.photos());
        byId = visit.photos().stream().collect(Collectors.toUnmodifiableMap(Photo::id, photo -> photo));
        pinned = visit.pins().stream()
                .map(pin -> pin.value())
                .collect(Collectors.groupingBy(
                        pin -> pin.photo(),
                        Collectors.mapping(pin -> pin.zone(), Collectors.toCollection(TreeSet::new))));
    }

    public static RowContext of(VisitRecord visit, ZoneCatalog catalog) {
        return new RowContext(
                Objects.requireNonNull(visit, "visit"), Objects.requireNonNull(catalog, "catalog"), Optional.empty());
    }

    /** The same with the date patterns at hand: a mark that asks for another one is refused. */
    public static RowContext of(VisitRecord visit, ZoneCatalog catalog, DatePatterns patterns) {
        return new RowContext(
                Objects.requireNonNull(visit, "visit"),
                Objects.requireNonNull(catalog, "catalog"),
                Optional.of(patterns));
    }

    public VisitFacts facts() {
        return facts;
    }

    public ZoneNames zones() {
        return zones;
    }

    public PhotoNames photos() {
        return photos;
    }

    /** How a table names the photo of an id of this visit. */
    public String nameOf(PhotoId id) {
        return photos.nameOf(photo(id));
    }

    /** The photo of an id of this visit. */
    public Photo photo(PhotoId id) {
        Photo photo = byId.get(id);
        if (photo == null) {
            throw new IllegalArgumentException("the visit has no photo number " + id);
        }
        return photo;
    }

    /** The zones a photo is pinned to, in alphabetical order. */
    public List<ZoneId> pinnedTo(PhotoId id) {
        return List.copyOf(pinned.getOrDefault(id, Set.of()));
    }

    /** @throws CellRefused if the name is no date pattern at hand, no form of one, and not the word for none */
    void requirePattern(String column, String name) throws CellRefused {
        if (patterns.isEmpty() || name.equals(DatePattern.NONE)) {
            return;
        }
        if (name.indexOf('{') >= 0) {
            try {
                new DatePattern(name, name, "", "");
            } catch (IllegalArgumentException e) {
                throw new CellRefused(column, e.getMessage());
            }
        } else if (patterns.get().named(name).isEmpty()) {
            List<String> names =
                    patterns.get().all().stream().map(DatePattern::name).toList();
            throw new CellRefused(
                    column, say("cell.pattern", Quoted.of(name), Nearest.hint(name, names), DatePattern.NONE));
        }
    }
}
