package quarterlight.ui.diagram;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import quarterlight.capture.CorrectedTimes;
import quarterlight.car.ZoneCatalog;
import quarterlight.page.PinKey;
import quarterlight.ui.kit.visit.OpenVisit;
import quarterlight.visit.VisitRecord;
import quarterlight.visit.photo.Photo;
import quarterlight.visit.pin.Pin;
import quarterlight.visit.pin.RecordId;
import quarterlight.visit.pin.Recorded;

/**
 * The few pins that were made since the pins of a visit were numbered, so that a pin is on the diagram before the numbering in the
 * background has come round to it. Immutable.
 *
 * @param of the state of the visit that {@code key} numbers
 */
record FreshPins(PinKey key, VisitRecord of) {
    /** More than these wait for the numbering in the background. */
    private static final int MAX_PINS = 20;

    /** The key with what the visit holds more by now, and with the pins that are being stored. */
    PinKey with(OpenVisit visit, ZoneCatalog catalog) {
        VisitRecord now = visit.visit();
        List<Recorded<Pin>> more = new ArrayList<>(added(now));
        for (Pin pin : visit.underWay()) {
            more.add(new Recorded<>(new RecordId(-1 - more.size()), pin));
        }
        if (more.size() > MAX_PINS) {
            return key;
        }
        CorrectedTimes times = visit.times();
        OpenVisit.Drawing drawing = visit.drawing();
        PinKey all = key;
        for (Recorded<Pin> row : more) {
            Optional<Photo> photo = now.photo(row.value().photo());
            if (photo.isPresent()) {
                all = all.with(row, photo.get(), times, catalog, drawing.diagram(), drawing.places());
            }
        }
        return all;
    }

    private List<Recorded<Pin>> added(VisitRecord now) {
        if (now.pins().equals(of.pins())) {
            return List.of();
        }
        Set<RecordId> known = new HashSet<>();
        of.pins().forEach(row -> known.add(row.id()));
        return now.pins().stream().filter(row -> !known.contains(row.id())).toList();
    }
}
