package quarterlight.table.cell;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import quarterlight.car.Zone;
import quarterlight.car.ZoneCatalog;
import quarterlight.car.ZoneId;
import quarterlight.car.body.Body;
import quarterlight.table.text.Nearest;
import quarterlight.table.text.Quoted;
import quarterlight.visit.row.CellRefused;

/** Finds a zone of one car by its id, or says what may have been meant. */
public final class ZoneNames {
    private final ZoneCatalog catalog;
    private final Body body;

    public ZoneNames(ZoneCatalog catalog, Body body) {
        this.catalog = Objects.requireNonNull(catalog, "catalog");
        this.body = Objects.requireNonNull(body, "body");
    }

    /** @throws CellRefused if there is no such zone, or this car does not have it; the reason names the nearest one it has */
    public ZoneId find(String column, String text) throws CellRefused {
        Optional<Zone> zone = ZoneId.isWellFormed(text) ? catalog.find(new ZoneId(text)) : Optional.empty();
        if (zone.isEmpty()) {
            throw new CellRefused(column, "there is no zone " + Quoted.of(text) + nearest(text));
        }
        if (!zone.get().belongsTo(body)) {
            throw new CellRefused(column, "a " + named(body) + " has no zone " + text + nearest(text));
        }
        return zone.get().id();
    }

    private String nearest(String text) {
        List<String> own =
                catalog.zonesOf(body).stream().map(zone -> zone.id().value()).toList();
        return Nearest.hint(text, own);
    }

    private static String named(Body body) {
        return body.style().word() + " (" + body.construction().word() + ", engine "
                + body.engine().word() + ")";
    }
}
