package quarterlight.ui.rust;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import quarterlight.car.ZoneId;
import quarterlight.edit.row.RowEdits;
import quarterlight.ui.kit.UiContext;
import quarterlight.ui.kit.visit.OpenVisit;
import quarterlight.visit.row.RecordKind;
import quarterlight.visit.statement.Basis;
import quarterlight.visit.statement.Condition;
import quarterlight.visit.statement.Facets;
import quarterlight.visit.statement.Statement;

/** "Looked at and clean", which is a finding of its own. Event thread only. */
final class CleanZones {
    private CleanZones() {}

    /** States of every selected zone that it was looked at and bears no rust. */
    static void state(UiContext parts, OpenVisit visit) {
        List<Statement> fresh = new ArrayList<>();
        for (ZoneId zone : visit.selection().zones()) {
            boolean stated = visit.visit().statements().stream()
                    .anyMatch(row ->
                            row.value().zone().equals(zone) && row.value().is(Condition.NO_RUST));
            if (!stated) {
                fresh.add(new Statement(
                        zone,
                        Facets.of(Condition.NO_RUST),
                        parts.texts().get("trace.clean.said"),
                        Optional.empty(),
                        Optional.of(Basis.SEEN),
                        visit.selection().photo().filter(id -> visit.zonesOf(id).contains(zone)),
                        Optional.empty()));
            }
        }
        if (fresh.isEmpty()) {
            parts.problems().remark(parts.texts().get("trace.clean.already"));
            return;
        }
        visit.edit(store -> new RowEdits(store).add(RecordKind.STATEMENTS, fresh), done -> {});
    }
}
