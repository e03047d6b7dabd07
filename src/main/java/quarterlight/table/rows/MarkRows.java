package quarterlight.table.rows;

import static quarterlight.table.Column.optional;
import static quarterlight.table.Column.required;
import static quarterlight.table.cell.Cells.need;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import quarterlight.marks.code.DatePattern;
import quarterlight.marks.code.DatePatterns;
import quarterlight.table.Column;
import quarterlight.table.RowKind;
import quarterlight.table.cell.CellRefused;
import quarterlight.table.cell.Cells;
import quarterlight.table.cell.Nearest;
import quarterlight.table.cell.Quoted;
import quarterlight.table.cell.RowContext;
import quarterlight.visit.Mark;
import quarterlight.visit.MarkKind;
import quarterlight.visit.MarkStage;

/** Marks as read: stamps, tags, labels, castings; letters that could not be read are question marks. */
public final class MarkRows implements RowKind<Mark> {
    /** Ten years: more is a slip of the hand. */
    private static final int MOST_LEAD_DAYS = 3650;

    @Override
    public String word() {
        return "marks";
    }

    @Override
    public List<Column> columns() {
        return List.of(
                required("part"),
                required("kind"),
                required("text"),
                optional("stage"),
                optional("pattern"),
                optional("expected"),
                optional("zone"),
                optional("view"),
                optional("x"),
                optional("y"),
                optional("photo"),
                optional("note"),
                optional("lead_days"));
    }

    @Override
    public Mark value(Cells cells) throws CellRefused {
        return new Mark(
                cells.required("part"),
                need("kind", cells.word("kind", MarkKind.class)),
                cells.required("text"),
                cells.word("stage", MarkStage.class),
                pattern(cells),
                cells.text("expected"),
                cells.zone("zone"),
                cells.point(),
                cells.photoId("photo"),
                cells.text("note"),
                cells.wholeNumber("lead_days", MOST_LEAD_DAYS));
    }

    /** A name of a pattern at hand, the form of one, or the word for a number that means no date. */
    private static Optional<String> pattern(Cells cells) throws CellRefused {
        Optional<String> asked = cells.text("pattern");
        Optional<DatePatterns> known = cells.context().patterns();
        if (asked.isEmpty() || known.isEmpty() || asked.get().equals(DatePattern.NONE)) {
            return asked;
        }
        String name = asked.get();
        if (name.indexOf('{') >= 0) {
            try {
                new DatePattern(name, name, "", "");
            } catch (IllegalArgumentException e) {
                throw new CellRefused("pattern", e.getMessage());
            }
        } else if (known.get().named(name).isEmpty()) {
            List<String> names =
                    known.get().all().stream().map(DatePattern::name).toList();
            throw new CellRefused(
                    "pattern",
                    "no date pattern is called " + Quoted.of(name) + "; the nearest is "
                            + Nearest.of(name, names).orElse("none") + "; " + DatePattern.NONE
                            + " stands for a number that means no date");
        }
        return asked;
    }

    @Override
    public Map<String, String> cells(Mark mark, RowContext context) {
        return new Row(context)
                .put("part", mark.part())
                .put("kind", mark.kind().word())
                .put("text", mark.text())
                .put("stage", mark.stage().map(MarkStage::word))
                .put("pattern", mark.pattern())
                .put("expected", mark.expected())
                .put("zone", mark.zone())
                .point(mark.point())
                .photo(mark.photo())
                .put("note", mark.note())
                .put("lead_days", mark.leadDays())
                .cells();
    }
}
