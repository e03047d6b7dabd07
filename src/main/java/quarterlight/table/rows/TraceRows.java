package quarterlight.table.rows;

import static quarterlight.table.Column.optional;
import static quarterlight.table.Column.required;
import static quarterlight.table.cell.Cells.need;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;
import quarterlight.car.ZoneId;
import quarterlight.table.Column;
import quarterlight.table.RowKind;
import quarterlight.table.cell.CellRefused;
import quarterlight.table.cell.Cells;
import quarterlight.table.cell.OutlineText;
import quarterlight.table.cell.RowContext;
import quarterlight.table.cell.ScaleText;
import quarterlight.visit.MediaKind;
import quarterlight.visit.Photo;
import quarterlight.visit.Trace;
import quarterlight.visit.TraceKind;

/** Traces: an outline and a scale on one photo; the zone may be left out if the photo is pinned to exactly one. */
public final class TraceRows implements RowKind<Trace> {
    private final TraceRule rule;

    public TraceRows(TraceRule rule) {
        this.rule = Objects.requireNonNull(rule, "rule");
    }

    @Override
    public String word() {
        return "traces";
    }

    @Override
    public List<Column> columns() {
        return List.of(
                required("photo"),
                required("kind"),
                required("outline"),
                required("scale"),
                optional("zone"),
                optional("patch"),
                optional("note"));
    }

    @Override
    public Trace value(Cells cells) throws CellRefused {
        Photo photo = need("photo", cells.photo("photo"));
        if (photo.file().kind() != MediaKind.PHOTO) {
            throw new CellRefused("photo", photo.file().name() + " is a film; an outline is drawn on a photo");
        }
        Optional<ZoneId> zone = cells.zone("zone");
        Trace trace = new Trace(
                photo.id(),
                need("kind", cells.word("kind", TraceKind.class)),
                OutlineText.parse("outline", need("outline", cells.raw("outline"))),
                ScaleText.parse("scale", need("scale", cells.raw("scale"))),
                zone.isPresent() ? zone.get() : onlyZone(photo, cells.context()),
                cells.text("patch"),
                cells.text("note"));
        Optional<CellRefused> problem = rule.problem(trace, photo.file());
        if (problem.isPresent()) {
            throw problem.get();
        }
        return trace;
    }

    private static ZoneId onlyZone(Photo photo, RowContext context) throws CellRefused {
        List<ZoneId> zones = context.pinnedTo(photo.id());
        if (zones.isEmpty()) {
            throw new CellRefused(
                    "zone",
                    "no zone is given and " + photo.file().name() + " is not pinned; give the zone, or pin the photo");
        }
        if (zones.size() > 1) {
            throw new CellRefused(
                    "zone",
                    "no zone is given and " + photo.file().name() + " is pinned to "
                            + zones.stream().map(ZoneId::value).collect(Collectors.joining(", "))
                            + "; give the zone");
        }
        return zones.get(0);
    }

    @Override
    public Map<String, String> cells(Trace trace, RowContext context) {
        return new Row(context)
                .photo(Optional.of(trace.photo()))
                .put("kind", trace.kind().word())
                .put("outline", OutlineText.of(trace.outline()))
                .put("scale", ScaleText.of(trace.scale()))
                .put("zone", trace.zone())
                .put("patch", trace.patch())
                .put("note", trace.note())
                .cells();
    }
}
