package quarterlight.table.cell;

import static quarterlight.language.Sentences.say;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import quarterlight.car.Car;
import quarterlight.car.Zone;
import quarterlight.car.ZoneCatalog;
import quarterlight.car.ZoneFinder;
import quarterlight.car.ZoneId;
import quarterlight.car.body.Body;
import quarterlight.car.body.DriveSide;
import quarterlight.table.text.Nearest;
import quarterlight.table.text.Quoted;
import quarterlight.visit.row.CellRefused;

/** Finds a zone of one car by its id, or says what may have been meant: by the other words that people have for it first, then by a slip of the keys. */
public final class ZoneNames {
    private final ZoneCatalog catalog;
    private final Body body;
    private final DriveSide drive;

    public ZoneNames(ZoneCatalog catalog, Car car) {
        this.catalog = Objects.requireNonNull(catalog, "catalog");
        this.body = car.body();
        this.drive = car.drive();
    }

    /** @throws CellRefused if there is no such zone, or this car does not have it; the reason names the nearest one it has */
    public ZoneId find(String column, String text) throws CellRefused {
        Optional<Zone> zone = ZoneId.isWellFormed(text) ? catalog.find(new ZoneId(text)) : Optional.empty();
        if (zone.isEmpty()) {
            throw new CellRefused(column, say("cell.zone.unknown", Quoted.of(text), nearest(text)));
        }
        if (!zone.get().belongsTo(body)) {
            throw new CellRefused(column, say("cell.zone.other-body", named(body), text, nearest(text)));
        }
        return zone.get().id();
    }

    private String nearest(String text) {
        List<Zone> own = catalog.zonesOf(body);
        return ZoneFinder.matches(text, drive, own).stream()
                .findFirst()
                .map(zone -> say("cell.nearest", zone.id().value()))
                .orElseGet(() -> Nearest.hint(
                        text, own.stream().map(zone -> zone.id().value()).toList()));
    }

    private static String named(Body body) {
        return say(
                "cell.zone.body",
                body.style().said(),
                body.construction().said(),
                body.engine().said());
    }
}
