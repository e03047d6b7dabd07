package quarterlight.table.list;

import static quarterlight.language.Sentences.say;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import quarterlight.car.ZoneId;
import quarterlight.coverage.MeasureLimit;
import quarterlight.coverage.TrialGroup;
import quarterlight.coverage.TrialItem;
import quarterlight.coverage.TrialList;
import quarterlight.coverage.TrialNature;
import quarterlight.table.TableUnreadable;
import quarterlight.table.text.Quoted;

/** Reads the list of functions to try: the program's own, or that of the inspector, which takes its place. */
public final class TrialTable {
    static final List<String> COLUMNS =
            List.of("group", "item", "unit", "zone", "running", "answer", "least", "most", "source");
    /** Where a function is noted for which one's own list names no zone. */
    private static final String ANYWHERE = "whole-car";

    /** The source of a limit for which one's own list names none. */
    private static final String OWN_LIMIT = "the inspector's own limit";

    private TrialTable() {}

    /** The list that the program carries. */
    public static TrialList load() {
        return list(UserList.TRIALS.shipped());
    }

    /** The inspector's own list in the folder of settings if it is there, else the program's. */
    public static TrialList load(Path settings) throws TableUnreadable {
        return list(UserList.TRIALS.inUse(settings));
    }

    /** @throws IllegalArgumentException if a cell is none of what it may be, or a function stands twice; the message says line and column */
    static TrialList list(List<ListRow> rows) {
        Set<String> known = CoverageTable.zones();
        Set<String> items = new TreeSet<>(String.CASE_INSENSITIVE_ORDER);
        List<TrialItem> list = new ArrayList<>();
        for (ListRow row : rows) {
            TrialItem item = item(row, known);
            if (!items.add(item.item())) {
                throw row.refused("item", say("cell.list.item-twice", Quoted.of(item.item())));
            }
            list.add(item);
        }
        return new TrialList(list);
    }

    private static TrialItem item(ListRow row, Set<String> known) {
        ZoneId zone = row.cell("zone").isEmpty()
                ? new ZoneId(ANYWHERE)
                : CoverageTable.zone(row, "zone", row.cell("zone"), known);
        return new TrialItem(
                row.word("group", TrialGroup.class),
                row.required("item"),
                Optional.of(row.cell("unit")).filter(unit -> !unit.isEmpty()),
                zone,
                row.yes("running"),
                row.cell("answer").isEmpty() ? TrialNature.FUNCTION : row.word("answer", TrialNature.class),
                limit(row));
    }

    private static Optional<MeasureLimit> limit(ListRow row) {
        Optional<BigDecimal> least = number(row, "least");
        Optional<BigDecimal> most = number(row, "most");
        if (least.isEmpty() && most.isEmpty()) {
            return Optional.empty();
        }
        row.required("unit");
        if (least.isPresent() && most.isPresent() && least.get().compareTo(most.get()) > 0) {
            throw row.refused("most", say("cell.list.most"));
        }
        String source = row.cell("source");
        return Optional.of(new MeasureLimit(least, most, source.isEmpty() ? OWN_LIMIT : source));
    }

    private static Optional<BigDecimal> number(ListRow row, String column) {
        String cell = row.cell(column);
        if (cell.isEmpty()) {
            return Optional.empty();
        }
        if (!cell.matches("[0-9]{1,6}([.][0-9]{1,3})?")) {
            throw row.refused(column, say("cell.list.number", Quoted.of(cell)));
        }
        return Optional.of(new BigDecimal(cell));
    }
}
