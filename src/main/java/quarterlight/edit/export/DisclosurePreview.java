package quarterlight.edit.export;

import static quarterlight.language.Sentences.say;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.stream.Collectors;
import quarterlight.car.Zone;
import quarterlight.car.ZoneCatalog;
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
        goes.add(say("going.pages"));
        goes.add(say("going.files", open.photos().size()));
        goes.add(say("going.pictures"));
        goes.add(say("going.key"));
        List<String> rows = new ArrayList<>();
        List<String> kept = new ArrayList<>();
        for (RecordKind<?> kind : RecordKind.all()) {
            if (!Disclosure.isAtHome(kind)) {
                count(kind, visit, open, rows, kept);
            }
        }
        if (!rows.isEmpty()) {
            goes.add(say("going.tables", String.join(", ", rows)));
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
        stays.add(say("going.home"));
        long placed = visit.photos().stream()
                .filter(photo -> photo.file().position().isPresent())
                .count();
        if (placed > 0) {
            stays.add(say("going.places", placed));
        }
        if (!visit.hidden().isEmpty()) {
            stays.add(say("going.hidden", visit.hidden().size()));
        }
        if (!visit.zonesLeftOut().isEmpty()) {
            List<String> names = catalog.all().stream()
                    .filter(zone -> visit.zonesLeftOut().contains(zone.id()))
                    .map(Zone::label)
                    .toList();
            String some = names.stream().limit(NAMED).collect(Collectors.joining("; "));
            int more = names.size() - NAMED;
            stays.add(more > 0 ? say("going.zones.more", some, more) : say("going.zones", some));
        }
        int held = WithheldFiles.of(visit).count();
        int photos = visit.photos().size() - open.photos().size() - held;
        if (photos > 0) {
            stays.add(say("going.photos", photos));
        }
        if (held > 0) {
            stays.add(say("going.held", held));
        }
        if (!kept.isEmpty()) {
            stays.add(say("going.rows", String.join(", ", kept)));
        }
        return stays;
    }

    /** Both lists as text, a sentence a line. */
    public String text() {
        return say("going.goes") + "\n" + lines(goes) + say("going.stays") + "\n" + lines(stays);
    }

    private static String lines(List<String> sentences) {
        return sentences.stream().map(one -> "  " + one + "\n").collect(Collectors.joining());
    }
}
