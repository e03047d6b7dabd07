package quarterlight.store.rows;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.DateTimeException;
import java.time.Instant;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import quarterlight.car.Substrate;
import quarterlight.car.ZoneId;
import quarterlight.visit.VisitFacts;
import quarterlight.visit.fact.FactDraft;
import quarterlight.visit.fact.Facts;
import quarterlight.visit.row.CellRefused;

/** The one row of the visit's facts, and the zones that are made of something else than the rest of the car. */
public final class FactsTable {
    private final Connection connection;

    public FactsTable(Connection connection) {
        this.connection = connection;
    }

    private static final List<String> COLUMNS = Facts.storedColumns();
    private static final String ADD = "INSERT INTO visit (" + String.join(", ", COLUMNS) + ", made_at, id) VALUES ("
            + "?, ".repeat(COLUMNS.size()) + "?, 1)";

    /** Writes the facts of a visit that has none yet. */
    public void add(VisitFacts facts, Instant madeAt) throws SQLException {
        try (PreparedStatement insert = connection.prepareStatement(ADD)) {
            cells(facts).textOf(madeAt).bind(insert);
            insert.executeUpdate();
        }
        setSubstrates(facts.car().substrates());
    }

    private static final String SET = "UPDATE visit SET " + String.join(" = ?, ", COLUMNS) + " = ? WHERE id = 1";

    public void set(VisitFacts facts) throws SQLException {
        try (PreparedStatement update = connection.prepareStatement(SET)) {
            cells(facts).bind(update);
            update.executeUpdate();
        }
        setSubstrates(facts.car().substrates());
    }

    private static RowValues cells(VisitFacts facts) {
        StoredCells out = new StoredCells();
        Facts.write(facts, out);
        return out.inOrder(COLUMNS);
    }

    private static final String READ = "SELECT * FROM visit WHERE id = 1";

    public VisitFacts read() throws SQLException {
        try (PreparedStatement select = connection.prepareStatement(READ);
                ResultSet result = select.executeQuery()) {
            if (!result.next()) {
                throw new SQLException("the facts of the visit are gone: table visit is empty");
            }
            FactDraft draft = FactDraft.of(new StoredRow(new Row(result)));
            substrates().forEach((zone, made) -> draft.putSubstrate(zone, Optional.of(made)));
            return draft.facts();
        } catch (CellRefused | IllegalArgumentException | DateTimeException e) {
            throw new SQLException("table visit: " + e.getMessage(), e);
        }
    }

    private static final String SUBSTRATES = "SELECT zone, substrate FROM zone_substrate ORDER BY id";

    private Map<ZoneId, Substrate> substrates() throws SQLException {
        Map<ZoneId, Substrate> found = new HashMap<>();
        try (PreparedStatement select = connection.prepareStatement(SUBSTRATES);
                ResultSet result = select.executeQuery()) {
            Row row = new Row(result);
            while (result.next()) {
                found.put(row.zone("zone"), row.word(Substrate.class, "substrate"));
            }
        }
        return found;
    }

    private void setSubstrates(Map<ZoneId, Substrate> wanted) throws SQLException {
        for (ZoneId zone : substrates().keySet()) {
            if (!wanted.containsKey(zone)) {
                removeSubstrate(zone);
            }
        }
        for (ZoneId zone : wanted.keySet().stream().sorted().toList()) {
            setSubstrate(zone, wanted.get(zone));
        }
    }

    private static final String SET_SUBSTRATE =
            """
            INSERT INTO zone_substrate (zone, substrate) VALUES (?, ?)
            ON CONFLICT (zone) DO UPDATE SET substrate = excluded.substrate
            """;

    private void setSubstrate(ZoneId zone, Substrate substrate) throws SQLException {
        try (PreparedStatement upsert = connection.prepareStatement(SET_SUBSTRATE)) {
            new RowValues().zone(zone).word(substrate).bind(upsert);
            upsert.executeUpdate();
        }
    }

    private static final String REMOVE_SUBSTRATE = "DELETE FROM zone_substrate WHERE zone = ?";

    private void removeSubstrate(ZoneId zone) throws SQLException {
        try (PreparedStatement delete = connection.prepareStatement(REMOVE_SUBSTRATE)) {
            delete.setString(1, zone.value());
            delete.executeUpdate();
        }
    }
}
