package quarterlight.table.rows;

import static quarterlight.table.Column.optional;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import quarterlight.car.ZoneId;
import quarterlight.table.Column;
import quarterlight.table.RowKind;
import quarterlight.table.cell.CellRefused;
import quarterlight.table.cell.Cells;
import quarterlight.table.cell.RowContext;
import quarterlight.visit.LeftOut;
import quarterlight.visit.PhotoId;

/** Zones and photos that the inspector leaves out of the report, one a row. */
public final class LeftOutRows implements RowKind<LeftOut> {
    @Override
    public String word() {
        return "left-out";
    }

    @Override
    public List<Column> columns() {
        return List.of(optional("zone"), optional("photo"));
    }

    @Override
    public LeftOut value(Cells cells) throws CellRefused {
        Optional<ZoneId> zone = cells.zone("zone");
        Optional<PhotoId> photo = cells.photoId("photo");
        if (zone.isPresent() == photo.isPresent()) {
            throw new CellRefused(
                    zone.isPresent() ? "photo" : "zone",
                    (zone.isPresent() ? "both a zone and a photo are given" : "neither a zone nor a photo is given")
                            + "; give one of the two in a row");
        }
        return new LeftOut(zone, photo);
    }

    @Override
    public Map<String, String> cells(LeftOut leftOut, RowContext context) {
        return new Row(context)
                .put("zone", leftOut.zone())
                .photo(leftOut.photo())
                .cells();
    }
}
