package quarterlight.page;

import static quarterlight.language.Sentences.say;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import quarterlight.car.Zone;
import quarterlight.car.ZoneCatalog;
import quarterlight.car.ZoneId;
import quarterlight.visit.ReportExclusion;
import quarterlight.visit.ReportLength;
import quarterlight.visit.VisitRecord;
import quarterlight.visit.photo.PhotoId;
import quarterlight.visit.pin.Recorded;

/**
 * What the inspector chose to show on the pages. What is left out is said on them. Immutable.
 *
 * @param full false for a short report: the first page, the diagram and what matters
 */
public record ReportSelection(boolean full, Set<ZoneId> zonesLeftOut, Set<PhotoId> photosLeftOut) {
    public ReportSelection {
        zonesLeftOut = Set.copyOf(zonesLeftOut);
        photosLeftOut = Set.copyOf(photosLeftOut);
    }

    public static ReportSelection of(VisitRecord visit) {
        List<ReportExclusion> rows =
                visit.leftOut().stream().map(Recorded::value).toList();
        return new ReportSelection(
                visit.facts().choices().length() == ReportLength.FULL,
                rows.stream().flatMap(row -> row.zone().stream()).collect(Collectors.toSet()),
                rows.stream().flatMap(row -> row.photo().stream()).collect(Collectors.toSet()));
    }

    public boolean shows(PhotoId photo) {
        return !photosLeftOut.contains(photo);
    }

    public boolean shows(ZoneId zone) {
        return !zonesLeftOut.contains(zone);
    }

    /** What is left out, in sentences; none if nothing is. */
    public List<String> sentences(ZoneCatalog catalog) {
        List<String> sentences = new ArrayList<>(leftOut(catalog));
        if (!full) {
            sentences.add(say("diagram.report-selection.a-short-report-as-chosen"));
        }
        return sentences;
    }

    /** What of the car is left out, in sentences; none if nothing is. */
    public List<String> leftOut(ZoneCatalog catalog) {
        List<String> sentences = new ArrayList<>();
        if (!zonesLeftOut.isEmpty()) {
            String names = catalog.all().stream()
                    .filter(zone -> zonesLeftOut.contains(zone.id()))
                    .map(Zone::label)
                    .collect(Collectors.joining("; "));
            sentences.add(say(
                    "diagram.report-selection.left-out-by-the-inspector",
                    count(zonesLeftOut.size(), "diagram.report-selection.zones"),
                    names));
        }
        if (!photosLeftOut.isEmpty()) {
            sentences.add(say(
                    "diagram.report-selection.left-out-by-the-inspector-2",
                    count(photosLeftOut.size(), "diagram.report-selection.photos")));
        }
        return sentences;
    }

    private static String count(int number, String key) {
        return say(key, number);
    }
}
