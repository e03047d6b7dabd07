package quarterlight.visit.row;

import static quarterlight.language.Sentences.say;
import static quarterlight.visit.row.Field.optional;
import static quarterlight.visit.row.Field.required;

import java.util.List;
import java.util.Optional;
import quarterlight.car.PartialDate;
import quarterlight.car.ZoneId;
import quarterlight.units.Numerals;
import quarterlight.visit.VisitRecord;
import quarterlight.visit.mark.Feature;
import quarterlight.visit.mark.Mark;
import quarterlight.visit.mark.MarkKind;
import quarterlight.visit.mark.MarkStage;
import quarterlight.visit.photo.PhotoId;
import quarterlight.visit.pin.ViewPoint;
import quarterlight.visit.statement.Origin;
import quarterlight.visit.trial.Sign;
import quarterlight.visit.trial.SignKind;
import quarterlight.visit.trial.Trial;
import quarterlight.visit.trial.TrialResult;

/** What was seen, read and tried on the car: signs, marks, trials and features. */
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
                                in.need(zone),
                                in.need(sign),
                                in.need(seen),
                                in.get(speaksFor),
                                in.get(photo),
                                in.get(note)))
                .named((row, words) -> say(
                        row.seen() ? "undo.row.sign.seen" : "undo.row.sign.not-seen",
                        row.kind().said().replace('-', ' '),
                        words.zone(row.zone())));
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
        Field<Mark, Origin> origin = optional("origin", Shape.word(Origin.class), Mark::origin);
        return RecordKind.of(
                        "marks",
                        "mark",
                        VisitRecord::marks,
                        List.of(part, kind, text, stage, pattern, expected, zone, point, photo, note, lead, origin),
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
                                in.get(lead),
                                in.get(origin)))
                .named((mark, words) -> say("undo.row.mark", mark.text(), mark.part()));
    }

    static RecordKind<Trial> trials() {
        Field<Trial, String> item = required("item", Shape.TEXT, Trial::item);
        Field<Trial, Shape.Tried> tried =
                required("result", Shape.TRIED, trial -> new Shape.Tried(trial.result(), trial.value()));
        Field<Trial, String> unit = optional("unit", Shape.TEXT, Trial::unit);
        Field<Trial, ZoneId> zone = optional("zone", Shape.ZONE, Trial::zone);
        Field<Trial, String> note = optional("note", Shape.TEXT, Trial::note);
        Field<Trial, Boolean> confidential =
                optional("private", Shape.FLAG, trial -> Optional.of(trial.confidential()));
        return RecordKind.of(
                        "trials",
                        "trial",
                        VisitRecord::trials,
                        List.of(item, tried, unit, zone, note, confidential),
                        in -> {
                            String name = in.need(item);
                            Shape.Tried result = in.need(tried);
                            return new Trial(
                                    name,
                                    result.result(),
                                    result.value(),
                                    in.get(unit),
                                    in.get(zone),
                                    in.get(note),
                                    in.get(confidential).orElse(false));
                        })
                .checked(CarKinds::requireValue)
                .named((trial, words) -> say(
                        "undo.row.trial",
                        trial.item(),
                        trial.value()
                                .map(value -> Numerals.typed(value)
                                        + trial.unit().map(" "::concat).orElse(""))
                                .orElse(trial.result().said())));
    }

    private static void requireValue(Trial trial) throws CellRefused {
        if (trial.value().isEmpty() && trial.unit().isPresent()) {
            throw new CellRefused("value", say("cell.trial.unit"));
        }
        if (trial.value().isEmpty() && trial.result() == TrialResult.MEASURED) {
            throw new CellRefused("value", say("cell.trial.value"));
        }
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
                        throw new CellRefused("to", say("cell.feature.order", row.to(), row.from()));
                    }
                })
                .named((row, words) -> say("undo.row.feature", row.feature()));
    }
}
