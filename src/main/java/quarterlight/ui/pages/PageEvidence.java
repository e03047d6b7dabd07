package quarterlight.ui.pages;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import quarterlight.car.ZoneId;
import quarterlight.page.print.PageLine;
import quarterlight.ui.kit.place.Subject;
import quarterlight.visit.VisitRecord;
import quarterlight.visit.photo.PhotoId;
import quarterlight.visit.pin.Recorded;
import quarterlight.visit.row.RecordKind;

/** What stands behind a place of a page: the nearest words there that name a row, a zone or a photo of the visit. Pure functions. */
final class PageEvidence {
    /** Words farther off than this share of the page say nothing of the place. Judgment. */
    private static final double FAR = 0.16;

    private static final int LEAST_LETTERS = 12;
    private static final int BEGINNING = 24;
    private static final Pattern PHOTO = Pattern.compile("(?:photo )?(\\d{1,5})");

    private final VisitRecord visit;
    private final Map<String, ZoneId> labels;
    private final Function<PhotoId, Set<ZoneId>> zonesOf;

    /**
     * @param labels zones by their names in lower case
     * @param zonesOf zones that a photo is pinned to
     */
    PageEvidence(VisitRecord visit, Map<String, ZoneId> labels, Function<PhotoId, Set<ZoneId>> zonesOf) {
        this.visit = visit;
        this.labels = Map.copyOf(labels);
        this.zonesOf = zonesOf;
    }

    /** @param x fraction of the width of the page */
    Optional<Subject> at(List<PageLine> lines, double x, double y) {
        return lines.stream()
                .filter(line -> line.from(x, y) < FAR)
                .sorted(Comparator.comparingDouble(line -> line.from(x, y)))
                .flatMap(line -> subject(line.text().strip()).stream())
                .findFirst();
    }

    private Optional<Subject> subject(String line) {
        String words = line.toLowerCase(Locale.ROOT);
        return row(words, RecordKind.STATEMENTS, visit.statements(), one -> one.text())
                .or(() -> row(words, RecordKind.CLAIMS, visit.claims(), one -> one.text()))
                .or(() -> row(words, RecordKind.MARKS, visit.marks(), one -> one.part() + ", " + one.text()))
                .or(() -> zone(words))
                .or(() -> row(words, RecordKind.TRIALS, visit.trials(), one -> one.item()))
                .or(() -> photo(words));
    }

    private static <T> Optional<Subject> row(
            String words, RecordKind<T> kind, List<Recorded<T>> rows, Function<T, String> text) {
        return rows.stream()
                .filter(row -> says(words, text.apply(row.value()).toLowerCase(Locale.ROOT)))
                .findFirst()
                .map(row -> new Subject.OfRow(kind, row.id()));
    }

    /** Whether a line is a part of what a row says, or begins with it. */
    private static boolean says(String line, String row) {
        String beginning = row.substring(0, Math.min(BEGINNING, row.length()));
        return beginning.length() >= LEAST_LETTERS && line.contains(beginning)
                || line.length() >= LEAST_LETTERS && row.contains(line.replaceAll("[\\s.…]+$", ""));
    }

    private Optional<Subject> zone(String words) {
        return labels.entrySet().stream()
                .filter(entry -> words.contains(entry.getKey()))
                .max(Comparator.comparingInt(entry -> entry.getKey().length()))
                .map(entry -> new Subject.OfZone(entry.getValue()));
    }

    private Optional<Subject> photo(String words) {
        Matcher number = PHOTO.matcher(words.replaceAll(",.*$", ""));
        return number.matches()
                ? zonesOf.apply(new PhotoId(Long.parseLong(number.group(1)))).stream()
                        .findFirst()
                        .map(Subject.OfZone::new)
                : Optional.empty();
    }
}
