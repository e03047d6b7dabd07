package quarterlight.visit.row;

import static quarterlight.visit.row.Field.optional;
import static quarterlight.visit.row.Field.required;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import quarterlight.car.PartialDate;
import quarterlight.car.ZoneId;
import quarterlight.visit.Basis;
import quarterlight.visit.Feature;
import quarterlight.visit.Mark;
import quarterlight.visit.MarkKind;
import quarterlight.visit.MarkStage;
import quarterlight.visit.PhotoId;
import quarterlight.visit.Severity;
import quarterlight.visit.Sign;
import quarterlight.visit.SignKind;
import quarterlight.visit.Statement;
import quarterlight.visit.StatementKind;
import quarterlight.visit.Trial;
import quarterlight.visit.TrialResult;
import quarterlight.visit.ViewPoint;
import quarterlight.visit.VisitRecord;

/** What was seen, read and tried on the car: signs, marks, trials, statements and features. */
final class CarKinds {
    /** Ten years: more is a slip of the hand. */
    private static final int MAX_LEAD_DAYS = 3650;

    private CarKinds() {}

    static RecordKind<Sign> signs() {
        Field<Sign, ZoneId> zone = required("zone", Shape.ZONE, Sign::zone);
        Field<Sign, SignKind> sign =
                required("sign", Shape.word(SignKind.class), Sign::kind).storedAs("kind");
        Field<Sign, Boolean> seen = required("seen", Shape.FLAG, Sign::seen);
        Field<Sign, ZoneId> speaksFor =
                optional("for", Shape.ZONE, Sign::speaksFor).storedAs("speaks_for");
        Field<Sign, PhotoId> photo = optional("photo", Shape.PHOTO, Sign::photo).storedAs("photo_id");
        Field<Sign, String> note = optional("note", Shape.TEXT, Sign::note);
        return RecordKind.of(
                "signs",
                "sign",
                VisitRecord::signs,
                List.of(zone, sign, seen, speaksFor, photo, note),
                in -> new Sign(
                        in.need(zone), in.need(sign), in.need(seen), in.get(speaksFor), in.get(photo), in.get(note)));
    }

    static RecordKind<Mark> marks() {
        Field<Mark, String> part = required("part", Shape.TEXT, Mark::part);
        Field<Mark, MarkKind> kind = required("kind", Shape.word(MarkKind.class), Mark::kind);
        Field<Mark, String> text = required("text", Shape.TEXT, Mark::text);
        Field<Mark, MarkStage> stage = optional("stage", Shape.word(MarkStage.class), Mark::stage);
        Field<Mark, String> pattern = optional("pattern", Shape.DATE_PATTERN, Mark::pattern);
        Field<Mark, String> expected = optional("expected", Shape.TEXT, Mark::expected);
        Field<Mark, ZoneId> zone = optional("zone", Shape.ZONE, Mark::zone);
        Field<Mark, ViewPoint> point = optional("view", Shape.POINT, Mark::point);
        Field<Mark, PhotoId> photo = optional("photo", Shape.PHOTO, Mark::photo).storedAs("photo_id");
        Field<Mark, String> note = optional("note", Shape.TEXT, Mark::note);
        Field<Mark, Integer> lead = optional("lead_days", Shape.count(MAX_LEAD_DAYS), Mark::leadDays);
        return RecordKind.of(
                "marks",
                "mark",
                VisitRecord::marks,
                List.of(part, kind, text, stage, pattern, expected, zone, point, photo, note, lead),
                in -> new Mark(
                        in.need(part),
                        in.need(kind),
                        in.need(text),
                        in.get(stage),
                        in.get(pattern),
                        in.get(expected),
                        in.get(zone),
                        in.get(point),
                        in.get(photo),
                        in.get(note),
                        in.get(lead)));
    }

    static RecordKind<Trial> trials() {
        Field<Trial, String> item = required("item", Shape.TEXT, Trial::item);
        Field<Trial, TrialResult> result = required("result", Shape.word(TrialResult.class), Trial::result);
        Field<Trial, BigDecimal> value = optional("value", Shape.DECIMAL, Trial::value);
        Field<Trial, String> unit = optional("unit", Shape.TEXT, Trial::unit);
        Field<Trial, ZoneId> zone = optional("zone", Shape.ZONE, Trial::zone);
        Field<Trial, String> note = optional("note", Shape.TEXT, Trial::note);
        return RecordKind.of(
                        "trials",
                        "trial",
                        VisitRecord::trials,
                        List.of(item, result, value, unit, zone, note),
                        in -> new Trial(
                                in.need(item),
                                in.need(result),
                                in.get(value),
                                in.get(unit),
                                in.get(zone),
                                in.get(note)))
                .checked(trial -> {
                    if (trial.unit().isPresent() && trial.value().isEmpty()) {
                        throw new CellRefused(
                                "value", "a unit is given without a value; give the number, or leave the unit empty");
                    }
                });
    }

    static RecordKind<Statement> statements() {
        Field<Statement, ZoneId> zone = required("zone", Shape.ZONE, Statement::zone);
        Field<Statement, StatementKind> kind = required("kind", Shape.word(StatementKind.class), Statement::kind);
        Field<Statement, String> text = required("text", Shape.TEXT, Statement::text);
        Field<Statement, Severity> severity = optional("severity", Shape.word(Severity.class), Statement::severity);
        Field<Statement, Basis> basis = optional("basis", Shape.word(Basis.class), Statement::basis);
        Field<Statement, List<PhotoId>> photos = Field.<Statement, List<PhotoId>>optional(
                        "photo", Shape.PHOTOS, statement -> Optional.of(statement.photos()))
                .storedAs("photo_id");
        Field<Statement, Double> at =
                optional("at", Shape.FILM_MOMENT, Statement::atSeconds).storedAs("at_s");
        return RecordKind.of(
                "statements",
                "statement",
                VisitRecord::statements,
                List.of(zone, kind, text, severity, basis, photos, at),
                in -> {
                    List<PhotoId> shownBy = in.get(photos).orElse(List.of());
                    return new Statement(
                            in.need(zone),
                            in.need(kind),
                            in.need(text),
                            in.get(severity),
                            in.get(basis),
                            shownBy.stream().findFirst(),
                            in.get(at),
                            shownBy.stream().skip(1).toList());
                });
    }

    static RecordKind<Feature> features() {
        Field<Feature, String> feature = required("feature", Shape.TEXT, Feature::feature);
        Field<Feature, PartialDate> from =
                required("from", Shape.DATE, Feature::from).storedAs("built_from");
        Field<Feature, PartialDate> to = required("to", Shape.DATE, Feature::to).storedAs("built_to");
        Field<Feature, Boolean> fitted = optional("fitted", Shape.FLAG, Feature::fitted);
        Field<Feature, ZoneId> zone = optional("zone", Shape.ZONE, Feature::zone);
        Field<Feature, String> note = optional("note", Shape.TEXT, Feature::note);
        return RecordKind.of(
                        "features",
                        "feature",
                        VisitRecord::features,
                        List.of(feature, from, to, fitted, zone, note),
                        in -> new Feature(
                                in.need(feature),
                                in.need(from),
                                in.need(to),
                                in.get(fitted),
                                in.get(zone),
                                in.get(note)))
                .checked(row -> {
                    if (row.to().last().isBefore(row.from().first())) {
                        throw new CellRefused(
                                "to", row.to() + " lies before from, " + row.from() + "; swap the two dates");
                    }
                });
    }
}
