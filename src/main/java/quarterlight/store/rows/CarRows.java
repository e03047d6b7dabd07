package quarterlight.store.rows;

import java.sql.SQLException;
import java.util.Optional;
import java.util.OptionalInt;
import quarterlight.visit.Basis;
import quarterlight.visit.Feature;
import quarterlight.visit.Mark;
import quarterlight.visit.MarkKind;
import quarterlight.visit.MarkStage;
import quarterlight.visit.Severity;
import quarterlight.visit.Sign;
import quarterlight.visit.SignKind;
import quarterlight.visit.Statement;
import quarterlight.visit.StatementKind;
import quarterlight.visit.Trial;
import quarterlight.visit.TrialResult;

/** What was seen, read and tried on the car: signs, marks, trials, statements and features. */
public final class CarRows {
    public static final TableShape<Sign> SIGNS =
            TableShape.of("sign", "zone, kind, seen, speaks_for, photo_id, note", CarRows::write, CarRows::sign);

    public static final TableShape<Mark> MARKS = TableShape.of(
            "mark",
            "part, kind, text, stage, pattern, expected, zone, view, x, y, photo_id, note, lead_days",
            CarRows::write,
            CarRows::mark);

    public static final TableShape<Trial> TRIALS =
            TableShape.of("trial", "item, result, value, unit, zone, note", CarRows::write, CarRows::trial);

    public static final TableShape<Statement> STATEMENTS = TableShape.of(
            "statement",
            "zone, kind, text, severity, basis, photo_id, at_s, more_photo_ids",
            CarRows::write,
            CarRows::statement);

    public static final TableShape<Feature> FEATURES = TableShape.of(
            "feature", "feature, built_from, built_to, fitted, zone, note", CarRows::write, CarRows::feature);

    private CarRows() {}

    private static Cells write(Sign sign) {
        return new Cells()
                .zone(sign.zone())
                .word(sign.kind())
                .flag(sign.seen())
                .textOf(sign.speaksFor())
                .photo(sign.photo())
                .textOf(sign.note());
    }

    private static Sign sign(Row row) throws SQLException {
        return new Sign(
                row.zone("zone"),
                row.word(SignKind.class, "kind"),
                row.integer("seen") != 0,
                row.someZone("speaks_for"),
                row.somePhoto("photo_id"),
                row.someText("note"));
    }

    private static Cells write(Mark mark) {
        return new Cells()
                .text(mark.part())
                .word(mark.kind())
                .text(mark.text())
                .word(mark.stage())
                .textOf(mark.pattern())
                .textOf(mark.expected())
                .textOf(mark.zone())
                .point(mark.point())
                .photo(mark.photo())
                .textOf(mark.note())
                .integer(mark.leadDays().map(OptionalInt::of).orElseGet(OptionalInt::empty));
    }

    private static Mark mark(Row row) throws SQLException {
        return new Mark(
                row.text("part"),
                row.word(MarkKind.class, "kind"),
                row.text("text"),
                row.someWord(MarkStage.class, "stage"),
                row.someText("pattern"),
                row.someText("expected"),
                row.someZone("zone"),
                row.point(),
                row.somePhoto("photo_id"),
                row.someText("note"),
                leadDays(row));
    }

    private static Optional<Integer> leadDays(Row row) throws SQLException {
        OptionalInt days = row.someInteger("lead_days");
        return days.isPresent() ? Optional.of(days.getAsInt()) : Optional.empty();
    }

    private static Cells write(Trial trial) {
        return new Cells()
                .text(trial.item())
                .word(trial.result())
                .textOf(trial.value())
                .textOf(trial.unit())
                .textOf(trial.zone())
                .textOf(trial.note());
    }

    private static Trial trial(Row row) throws SQLException {
        return new Trial(
                row.text("item"),
                row.word(TrialResult.class, "result"),
                row.someText("value").isPresent() ? Optional.of(row.decimal("value")) : Optional.empty(),
                row.someText("unit"),
                row.someZone("zone"),
                row.someText("note"));
    }

    private static Cells write(Statement statement) {
        return new Cells()
                .zone(statement.zone())
                .word(statement.kind())
                .text(statement.text())
                .word(statement.severity())
                .word(statement.basis())
                .photo(statement.photo())
                .real(statement.atSeconds())
                .photos(statement.more());
    }

    private static Statement statement(Row row) throws SQLException {
        return new Statement(
                row.zone("zone"),
                row.word(StatementKind.class, "kind"),
                row.text("text"),
                row.someWord(Severity.class, "severity"),
                row.someWord(Basis.class, "basis"),
                row.somePhoto("photo_id"),
                row.someRealValue("at_s"),
                row.photos("more_photo_ids"));
    }

    private static Cells write(Feature feature) {
        Cells cells = new Cells().text(feature.feature()).textOf(feature.from()).textOf(feature.to());
        return feature.fitted()
                .map(cells::flag)
                .orElseGet(cells::none)
                .textOf(feature.zone())
                .textOf(feature.note());
    }

    private static Feature feature(Row row) throws SQLException {
        return new Feature(
                row.text("feature"),
                row.date("built_from"),
                row.date("built_to"),
                row.someFlag("fitted"),
                row.someZone("zone"),
                row.someText("note"));
    }
}
