package quarterlight.store.rows;

import java.sql.SQLException;
import quarterlight.visit.CoverageWish;
import quarterlight.visit.LeftOut;

/** What the inspector wants of this visit: what it must bring, and what the report leaves out. */
public final class ChoiceRows {
    public static final TableShape<CoverageWish> COVERAGE =
            TableShape.of("coverage_wish", "zone, evidence, want", ChoiceRows::write, ChoiceRows::wish);

    public static final TableShape<LeftOut> LEFT_OUT =
            TableShape.of("left_out", "zone, photo_id", ChoiceRows::write, ChoiceRows::leftOut);

    private ChoiceRows() {}

    private static Cells write(CoverageWish wish) {
        return new Cells().textOf(wish.zone()).text(wish.evidence()).integer(wish.want());
    }

    private static CoverageWish wish(Row row) throws SQLException {
        return new CoverageWish(row.someZone("zone"), row.text("evidence"), (int) row.integer("want"));
    }

    private static Cells write(LeftOut leftOut) {
        return new Cells().textOf(leftOut.zone()).photo(leftOut.photo());
    }

    private static LeftOut leftOut(Row row) throws SQLException {
        return new LeftOut(row.someZone("zone"), row.somePhoto("photo_id"));
    }
}
