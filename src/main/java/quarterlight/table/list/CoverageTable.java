package quarterlight.table.list;

import static quarterlight.language.Sentences.say;

import java.nio.file.Path;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import quarterlight.car.Zone;
import quarterlight.car.ZoneGroup;
import quarterlight.car.ZoneId;
import quarterlight.car.body.BodyStyle;
import quarterlight.car.body.Construction;
import quarterlight.coverage.CoverageRule;
import quarterlight.coverage.CoverageRules;
import quarterlight.coverage.EvidenceKind;
import quarterlight.table.TableUnreadable;
import quarterlight.table.ZoneTable;
import quarterlight.table.text.Nearest;
import quarterlight.table.text.Quoted;
import quarterlight.visit.CoverageOverride;

/** Reads what a visit must bring and the order of a walk round the car: the program's lists or those of the inspector. */
public final class CoverageTable {
    static final List<String> COLUMNS = List.of(
            "wants", "number", "groups", "zones", "except", "finish", "structural", "styles", "construction", "why");

    /** Said of a rule for which one's own list gives no reason. */
    private static final String OWN = "Asked for by the inspector's own list.";

    private CoverageTable() {}

    /** The rules and the walk that the program carries. */
    public static CoverageRules load() {
        return new CoverageRules(rules(UserList.COVERAGE.shipped()), walk(UserList.WALK.shipped()));
    }

    /** The inspector's own lists in the folder of settings where they are there, else the program's. */
    public static CoverageRules load(Path settings) throws TableUnreadable {
        return new CoverageRules(rules(UserList.COVERAGE.inUse(settings)), walk(UserList.WALK.inUse(settings)));
    }

    /** @throws IllegalArgumentException if a cell is none of what it may be; the message says line and column */
    static List<CoverageRule> rules(List<ListRow> rows) {
        Set<String> known = zones();
        return rows.stream().map(row -> rule(row, known)).toList();
    }

    /** @throws IllegalArgumentException if a zone is not known or stands twice */
    static List<ZoneId> walk(List<ListRow> rows) {
        Set<String> known = zones();
        Set<ZoneId> walk = new LinkedHashSet<>();
        for (ListRow row : rows) {
            if (!walk.add(zone(row, "zone", row.required("zone"), known))) {
                throw row.refused("zone", say("cell.list.walk-twice", Quoted.of(row.cell("zone"))));
            }
        }
        return List.copyOf(walk);
    }

    /** The zones that a list may name. */
    static Set<String> zones() {
        return ZoneTable.load().all().stream()
                .map(Zone::id)
                .map(ZoneId::value)
                .collect(Collectors.toCollection(LinkedHashSet::new));
    }

    private static CoverageRule rule(ListRow row, Set<String> known) {
        String why = row.cell("why");
        return new CoverageRule(
                row.word("wants", EvidenceKind.class),
                row.number("number", 1, CoverageOverride.MAX_WANT),
                row.words("groups", ZoneGroup.class),
                row.set("zones", word -> zone(row, "zones", word, known)),
                row.set("except", word -> zone(row, "except", word, known)),
                row.yes("finish"),
                row.yes("structural"),
                row.words("styles", BodyStyle.class),
                row.words("construction", Construction.class),
                why.isEmpty() ? OWN : why);
    }

    /** @throws IllegalArgumentException if there is no such zone; the message names the nearest */
    static ZoneId zone(ListRow row, String column, String word, Set<String> known) {
        if (!known.contains(word)) {
            throw row.refused(column, say("cell.zone.unknown", Quoted.of(word), Nearest.hint(word, known)));
        }
        return new ZoneId(word);
    }
}
