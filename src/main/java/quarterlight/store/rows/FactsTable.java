package quarterlight.store.rows;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.DateTimeException;
import java.time.Instant;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import quarterlight.car.Body;
import quarterlight.car.BodyStyle;
import quarterlight.car.Car;
import quarterlight.car.Construction;
import quarterlight.car.Dimensions;
import quarterlight.car.DriveSide;
import quarterlight.car.EnginePlace;
import quarterlight.car.FinishProfile;
import quarterlight.car.Substrate;
import quarterlight.car.ZoneId;
import quarterlight.units.Thickness;
import quarterlight.visit.ReportLength;
import quarterlight.visit.VisitChoices;
import quarterlight.visit.VisitFacts;

/** The one row of the visit's facts, and the zones that are made of something else than the rest of the car. */
public final class FactsTable {
    private final Connection connection;

    public FactsTable(Connection connection) {
        this.connection = connection;
    }

    private static final String ADD =
            """
            INSERT INTO visit (car, style, construction, engine, drive, finish, model_year, built, substrate,
                               wheelbase_mm, length_mm, width_mm, height_mm, timezone, inspector, client, visit_date,
                               place, odometer, light, lifted, taken_apart, claimed, gauge_range_um, gauge_correction, diagram,
                               terms, limits, report_length, made_at, id)
            VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, 1)
            """;

    /** Writes the facts of a visit that has none yet. */
    public void add(VisitFacts facts, Instant madeAt) throws SQLException {
        try (PreparedStatement insert = connection.prepareStatement(ADD)) {
            cells(facts).textOf(madeAt).bind(insert);
            insert.executeUpdate();
        }
        setSubstrates(facts.car().substrates());
    }

    private static final String SET =
            """
            UPDATE visit SET car = ?, style = ?, construction = ?, engine = ?, drive = ?, finish = ?, model_year = ?,
                   built = ?, substrate = ?, wheelbase_mm = ?, length_mm = ?, width_mm = ?, height_mm = ?,
                   timezone = ?, inspector = ?, client = ?, visit_date = ?, place = ?, odometer = ?, light = ?,
                   lifted = ?, taken_apart = ?, claimed = ?, gauge_range_um = ?, gauge_correction = ?, diagram = ?,
                   terms = ?, limits = ?, report_length = ?
            WHERE id = 1
            """;

    public void set(VisitFacts facts) throws SQLException {
        try (PreparedStatement update = connection.prepareStatement(SET)) {
            cells(facts).bind(update);
            update.executeUpdate();
        }
        setSubstrates(facts.car().substrates());
    }

    private static Cells cells(VisitFacts facts) {
        Car car = facts.car();
        return new Cells()
                .text(car.name())
                .word(car.body().style())
                .word(car.body().construction())
                .word(car.body().engine())
                .word(car.drive())
                .word(car.finish())
                .integer(car.modelYear())
                .textOf(car.built())
                .word(car.substrate())
                .integer(car.dimensions().wheelbaseMm())
                .integer(car.dimensions().lengthMm())
                .integer(car.dimensions().widthMm())
                .integer(car.dimensions().heightMm())
                .text(facts.timezone().getId())
                .textOf(facts.inspector())
                .textOf(facts.client())
                .textOf(facts.date())
                .textOf(facts.place())
                .textOf(facts.odometer())
                .textOf(facts.light())
                .textOf(facts.lifted())
                .textOf(facts.takenApart())
                .textOf(facts.claimed())
                .real(facts.gaugeRange().um())
                .flag(facts.choices().gaugeCorrection())
                .textOf(facts.choices().diagram())
                .textOf(facts.choices().terms())
                .textOf(facts.choices().limits())
                .word(facts.choices().length());
    }

    private static final String READ = "SELECT * FROM visit WHERE id = 1";

    public VisitFacts read() throws SQLException {
        try (PreparedStatement select = connection.prepareStatement(READ);
                ResultSet result = select.executeQuery()) {
            if (!result.next()) {
                throw new SQLException("the facts of the visit are gone: table visit is empty");
            }
            return facts(new Row(result), substrates());
        } catch (IllegalArgumentException | DateTimeException e) {
            throw new SQLException("table visit: " + e.getMessage(), e);
        }
    }

    private static VisitFacts facts(Row row, Map<ZoneId, Substrate> substrates) throws SQLException {
        return new VisitFacts(
                car(row, substrates),
                java.time.ZoneId.of(row.text("timezone")),
                row.someText("inspector"),
                row.someText("client"),
                row.someText("visit_date").map(LocalDate::parse),
                row.someText("place"),
                row.someText("odometer"),
                row.someText("light"),
                row.someText("lifted"),
                row.someText("taken_apart"),
                row.someText("claimed"),
                new Thickness(row.real("gauge_range_um")),
                choices(row));
    }

    private static VisitChoices choices(Row row) throws SQLException {
        return new VisitChoices(
                row.integer("gauge_correction") != 0,
                row.someText("diagram"),
                row.someText("terms"),
                row.someText("limits"),
                row.word(ReportLength.class, "report_length"));
    }

    private static Car car(Row row, Map<ZoneId, Substrate> substrates) throws SQLException {
        Body body = new Body(
                row.word(BodyStyle.class, "style"),
                row.word(Construction.class, "construction"),
                row.word(EnginePlace.class, "engine"));
        return new Car(
                row.text("car"),
                body,
                row.word(DriveSide.class, "drive"),
                row.word(FinishProfile.class, "finish"),
                row.someInteger("model_year"),
                row.someText("built").isPresent() ? Optional.of(row.date("built")) : Optional.empty(),
                row.word(Substrate.class, "substrate"),
                substrates,
                new Dimensions(
                        row.someInteger("wheelbase_mm"),
                        row.someInteger("length_mm"),
                        row.someInteger("width_mm"),
                        row.someInteger("height_mm")));
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
            new Cells().zone(zone).word(substrate).bind(upsert);
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
