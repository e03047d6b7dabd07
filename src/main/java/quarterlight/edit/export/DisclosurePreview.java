package quarterlight.edit.export;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.stream.Collectors;
import quarterlight.car.Zone;
import quarterlight.car.ZoneCatalog;
import quarterlight.units.Numerals;
import quarterlight.visit.VisitRecord;
import quarterlight.visit.WithheldFiles;
import quarterlight.visit.row.RecordKind;

/**
 * What goes to a buyer and what stays at home, told before anything leaves. Immutable.
 *
 * @param goes sentences
 * @param stays sentences
 */
public record DisclosurePreview(List<String> goes, List<String> stays) {
    private static final int NAMED = 8;

    public DisclosurePreview {
        goes = List.copyOf(goes);
        stays = List.copyOf(stays);
    }

    /** What an archive for the buyer would hold of a visit. */
    public static DisclosurePreview of(VisitRecord visit, ZoneCatalog catalog) {
        VisitRecord open = visit.forBuyer();
        List<String> goes = new ArrayList<>();
        goes.add("The pages: brief, diagram and report.");
        goes.add("Names, hashes, sizes and times of "
                + Numerals.count(open.photos().size(), "photo or file", "photos and files")
                + "; their pictures reduced, on the pages.");
        goes.add("In full size, without hidden regions and without the data of the camera: every photo that the report"
                + " shows.");
        goes.add("The public half of your signing key, and your name if the visit names you as its inspector.");
        List<String> rows = new ArrayList<>();
        List<String> kept = new ArrayList<>();
        for (RecordKind<?> kind : RecordKind.all()) {
            if (!Disclosure.isAtHome(kind)) {
                count(kind, visit, open, rows, kept);
            }
        }
        if (!rows.isEmpty()) {
            goes.add("As tables: " + String.join(", ", rows) + ".");
        }
        return new DisclosurePreview(goes, stays(visit, open, catalog, kept));
    }

    private static <T> void count(
            RecordKind<T> kind, VisitRecord visit, VisitRecord open, List<String> rows, List<String> kept) {
        int all = Objects.requireNonNull(kind.of(visit)).size();
        int out = kind.of(open).size();
        if (out > 0) {
            rows.add(kind.count(out));
        }
        if (all > out) {
            kept.add(kind.count(all - out));
        }
    }

    private static List<String> stays(VisitRecord visit, VisitRecord open, ZoneCatalog catalog, List<String> kept) {
        List<String> stays = new ArrayList<>();
        stays.add("The originals, the database and its edit log, and how the cameras' clocks were set.");
        long placed = visit.photos().stream()
                .filter(photo -> photo.file().position().isPresent())
                .count();
        if (placed > 0) {
            stays.add("Where " + Numerals.count(placed, "photo was", "photos were") + " taken.");
        }
        if (!visit.hidden().isEmpty()) {
            stays.add("What " + Numerals.count(visit.hidden().size(), "hidden region covers", "hidden regions cover")
                    + ".");
        }
        if (!visit.zonesLeftOut().isEmpty()) {
            List<String> names = catalog.all().stream()
                    .filter(zone -> visit.zonesLeftOut().contains(zone.id()))
                    .map(Zone::label)
                    .toList();
            stays.add("Zones left out, and all that is told of them: "
                    + names.stream().limit(NAMED).collect(Collectors.joining("; "))
                    + (names.size() > NAMED ? "; and " + (names.size() - NAMED) + " more" : "") + ".");
        }
        int held = WithheldFiles.of(visit).count();
        int photos = visit.photos().size() - open.photos().size() - held;
        if (photos > 0) {
            stays.add(Numerals.count(photos, "photo", "photos") + " left out, or showing nothing but zones left out.");
        }
        if (held > 0) {
            stays.add(Numerals.count(held, "paper, memo or file of words", "papers, memos and files of words")
                    + " not released.");
        }
        if (!kept.isEmpty()) {
            stays.add("Rows that are private or about what is left out: " + String.join(", ", kept) + ".");
        }
        return stays;
    }

    /** Both lists as text, a sentence a line. */
    public String text() {
        return "Goes to the buyer:\n" + lines(goes) + "Stays at home:\n" + lines(stays);
    }

    private static String lines(List<String> sentences) {
        return sentences.stream().map(one -> "  " + one + "\n").collect(Collectors.joining());
    }
}
