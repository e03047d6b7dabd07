package quarterlight.table.rows;

import static quarterlight.table.Column.optional;
import static quarterlight.table.Column.required;
import static quarterlight.table.cell.Cells.need;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import quarterlight.table.Column;
import quarterlight.table.RowKind;
import quarterlight.table.cell.CellRefused;
import quarterlight.table.cell.Cells;
import quarterlight.table.cell.OutlineText;
import quarterlight.table.cell.RowContext;
import quarterlight.visit.HiddenRegion;
import quarterlight.visit.Photo;

/** Regions of photos that nothing made for the buyer may show. */
public final class HiddenRows implements RowKind<HiddenRegion> {
    private final PhotoRule<HiddenRegion> rule;

    public HiddenRows(PhotoRule<HiddenRegion> rule) {
        this.rule = Objects.requireNonNull(rule, "rule");
    }

    @Override
    public String word() {
        return "hidden";
    }

    @Override
    public List<Column> columns() {
        return List.of(required("photo"), required("outline"), optional("why"));
    }

    @Override
    public HiddenRegion value(Cells cells) throws CellRefused {
        Photo photo = need("photo", cells.photo("photo"));
        HiddenRegion region = new HiddenRegion(
                photo.id(), OutlineText.parse("outline", need("outline", cells.raw("outline"))), cells.text("why"));
        return rule.checked(region, photo.file());
    }

    @Override
    public Map<String, String> cells(HiddenRegion region, RowContext context) {
        return new Row(context)
                .photo(Optional.of(region.photo()))
                .put("outline", OutlineText.of(region.outline()))
                .put("why", region.why())
                .cells();
    }
}
