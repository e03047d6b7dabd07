package quarterlight.ui.gauge.sign;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import quarterlight.car.Zone;
import quarterlight.car.ZoneCatalog;
import quarterlight.car.ZoneId;
import quarterlight.edit.gauge.FinishEdits;
import quarterlight.visit.VisitRecord;
import quarterlight.visit.photo.PhotoId;
import quarterlight.visit.pin.Recorded;
import quarterlight.visit.trial.Sign;
import quarterlight.visit.trial.SignKind;

/**
 * The signs of a visit as a sheet of zones by signs: every panel, and every other zone where a sign was noted. Immutable.
 *
 * @param rows in the order of the zone table
 */
public record SignSheet(List<Row> rows, List<Recorded<Sign>> noted) {
    /**
     * A zone of the sheet.
     *
     * @param panel true if it has a finish history of its own
     * @param speaksFor the panel that its signs speak for, if another
     */
    public record Row(ZoneId zone, boolean panel, Optional<ZoneId> speaksFor) {}

    /**
     * What is noted of one sign in one zone.
     *
     * @param seen empty if it was not looked for; seen wins where it is noted twice
     * @param elsewhere whether a sign noted in another zone speaks for this one, seen or not
     */
    public record Cell(
            Optional<Boolean> seen, Optional<PhotoId> photo, Optional<String> note, Optional<Boolean> elsewhere) {}

    public SignSheet {
        rows = List.copyOf(rows);
        noted = List.copyOf(noted);
    }

    /** @param wanted zones without finish that are to stand in the sheet although nothing is noted yet, with what they speak for */
    public static SignSheet of(VisitRecord visit, ZoneCatalog catalog, Map<ZoneId, Optional<ZoneId>> wanted) {
        Map<ZoneId, Optional<ZoneId>> others = new LinkedHashMap<>(wanted);
        visit.signs()
                .forEach(row -> others.merge(
                        row.value().zone(), row.value().speaksFor(), (old, fresh) -> fresh.isPresent() ? fresh : old));
        List<Row> rows = new ArrayList<>();
        Set<ZoneId> own = new LinkedHashSet<>();
        catalog.zonesOf(visit.facts().car().body()).forEach(zone -> own.add(zone.id()));
        for (Zone zone : catalog.all()) {
            boolean panel = zone.finish() && own.contains(zone.id());
            if (panel || others.containsKey(zone.id())) {
                Optional<ZoneId> speaksFor = panel ? Optional.empty() : others.get(zone.id());
                rows.add(new Row(zone.id(), panel, speaksFor));
            }
        }
        return new SignSheet(rows, visit.signs());
    }

    public Cell cell(ZoneId zone, SignKind kind) {
        Optional<Boolean> seen = Optional.empty();
        Optional<Boolean> elsewhere = Optional.empty();
        Optional<PhotoId> photo = Optional.empty();
        Optional<String> note = Optional.empty();
        for (Recorded<Sign> row : noted) {
            Sign sign = row.value();
            if (sign.kind() == kind && sign.zone().equals(zone)) {
                seen = Optional.of(seen.orElse(false) || sign.seen());
                photo = photo.or(sign::photo);
                note = note.or(sign::note);
            } else if (sign.kind() == kind
                    && sign.speaksFor().filter(zone::equals).isPresent()) {
                elsewhere = Optional.of(elsewhere.orElse(false) || sign.seen());
            }
        }
        return new Cell(seen, photo, note, elsewhere);
    }

    /** The same signs in every panel where nothing is noted of them: all round, except what is noted already. */
    public Set<FinishEdits.Place> allRound(Set<SignKind> kinds) {
        Set<FinishEdits.Place> places = new LinkedHashSet<>();
        for (Row row : rows) {
            for (SignKind kind : kinds) {
                if (row.panel() && cell(row.zone(), kind).seen().isEmpty()) {
                    places.add(new FinishEdits.Place(row.zone(), kind, Optional.empty()));
                }
            }
        }
        return places;
    }
}
