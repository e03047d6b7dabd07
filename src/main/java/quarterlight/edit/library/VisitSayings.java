package quarterlight.edit.library;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import quarterlight.car.Zone;
import quarterlight.car.ZoneCatalog;
import quarterlight.page.brief.Portrait;
import quarterlight.store.library.LibraryPicture;
import quarterlight.store.library.LibraryRow;
import quarterlight.table.RowKind;
import quarterlight.table.cell.RowContext;
import quarterlight.visit.VisitFacts;
import quarterlight.visit.VisitRecord;
import quarterlight.visit.pin.Recorded;
import quarterlight.visit.row.RecordKind;

/** What a visit says in words, row by row, as it is searched. */
final class VisitSayings {
    private static final String MARKS = RecordKind.MARKS.word();

    /** Numbers and geometry, by which nobody looks for a car. */
    private static final Set<String> NO_WORDS = Set.of(
            "photo",
            "zone",
            "view",
            "x",
            "y",
            "at",
            "outline",
            "points",
            "scale",
            "private",
            "for",
            "lead_days",
            "pattern",
            "seen");

    /** Who says what most rows say. */
    private static final String OWN = "inspector";

    private static final List<RecordKind<?>> KINDS = List.of(
            RecordKind.STATEMENTS,
            RecordKind.CLAIMS,
            RecordKind.MARKS,
            RecordKind.TRIALS,
            RecordKind.SIGNS,
            RecordKind.TRACES,
            RecordKind.PHOTO_NOTES,
            RecordKind.ODOMETER,
            RecordKind.PINS);

    private final VisitRecord visit;
    private final ZoneCatalog catalog;
    private final RowContext context;
    private final Map<String, String> labels;

    private VisitSayings(VisitRecord visit, ZoneCatalog catalog) {
        this.visit = visit;
        this.catalog = catalog;
        this.context = RowContext.of(visit, catalog);
        this.labels = catalog.all().stream()
                .collect(Collectors.toMap(zone -> zone.id().value(), Zone::label));
    }

    static List<LibraryRow> of(VisitRecord visit, ZoneCatalog catalog) {
        VisitSayings sayings = new VisitSayings(visit, catalog);
        List<LibraryRow> rows = new ArrayList<>();
        rows.add(sayings.car());
        KINDS.forEach(kind -> sayings.add(kind, rows));
        return rows;
    }

    private LibraryRow car() {
        VisitFacts facts = visit.facts();
        String text = Stream.of(
                        Optional.of(facts.car().name()),
                        facts.date().map(Object::toString),
                        facts.client(),
                        facts.place(),
                        facts.inspector(),
                        facts.claimed())
                .flatMap(Optional::stream)
                .collect(Collectors.joining("; "));
        return new LibraryRow(
                "visit",
                "",
                text,
                facts.car().body().style().word(),
                ofCar(visit, catalog),
                Optional.empty(),
                List.of());
    }

    private <T> void add(RecordKind<T> kind, List<LibraryRow> rows) {
        RowKind<T> columns = RowKind.of(kind);
        for (Recorded<T> row : kind.of(visit)) {
            Map<String, String> cells = columns.cells(row.value(), context);
            String text = columns.columns().stream()
                    .map(column -> column.name())
                    .filter(Predicate.not(NO_WORDS::contains))
                    .filter(name -> !name.equals("said_by") || !OWN.equals(cells.get(name)))
                    .map(cells::get)
                    .filter(cell -> cell != null && !cell.isBlank())
                    .collect(Collectors.joining("; "));
            boolean seen = !"no".equals(cells.get("seen"));
            if (!text.isEmpty() && seen) {
                String zone = cells.getOrDefault("zone", "");
                rows.add(new LibraryRow(
                        kind.word(),
                        labels.getOrDefault(zone, zone),
                        text,
                        zone.replace('-', ' '),
                        picture(cells),
                        Optional.of(row.id()),
                        kind.word().equals(MARKS) ? MarkLikeness.bareParts(text) : List.of()));
            }
        }
    }

    /** The first photo that a row names, at the moment or on the page that it names. */
    private Optional<LibraryPicture> picture(Map<String, String> cells) {
        String named = cells.getOrDefault("photo", "").split("\\|")[0];
        return named.isBlank()
                ? Optional.empty()
                : visit.photos().stream()
                        .filter(photo -> context.nameOf(photo.id()).equals(named))
                        .findFirst()
                        .map(photo -> LibraryPicture.of(photo.file(), at(cells.get("at"))));
    }

    private static OptionalDouble at(String cell) {
        try {
            return cell == null || cell.isBlank()
                    ? OptionalDouble.empty()
                    : OptionalDouble.of(Double.parseDouble(cell));
        } catch (NumberFormatException e) {
            return OptionalDouble.empty();
        }
    }

    /** What stands for the whole car: the photo by which it is known at a glance, else the first that is kept. */
    static Optional<LibraryPicture> ofCar(VisitRecord visit, ZoneCatalog catalog) {
        return Portrait.of(visit, catalog)
                .or(() -> Portrait.first(visit))
                .flatMap(visit::photo)
                .map(photo -> LibraryPicture.of(photo.file(), OptionalDouble.empty()));
    }
}
