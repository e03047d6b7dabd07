package quarterlight.visit.row;

import static quarterlight.language.Sentences.say;
import static quarterlight.visit.row.Field.optional;
import static quarterlight.visit.row.Field.required;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import quarterlight.car.PartialDate;
import quarterlight.car.ZoneId;
import quarterlight.units.Numerals;
import quarterlight.visit.VisitRecord;
import quarterlight.visit.mark.DistanceUnit;
import quarterlight.visit.mark.OdometerFigure;
import quarterlight.visit.mark.OdometerSource;
import quarterlight.visit.photo.PhotoId;
import quarterlight.visit.pin.RecordId;
import quarterlight.visit.statement.Basis;
import quarterlight.visit.statement.Certainty;
import quarterlight.visit.statement.Claim;
import quarterlight.visit.statement.Claimant;
import quarterlight.visit.statement.Facets;
import quarterlight.visit.statement.Judgment;
import quarterlight.visit.statement.SaidBy;
import quarterlight.visit.statement.SaidSize;
import quarterlight.visit.statement.Severity;
import quarterlight.visit.statement.Statement;
import quarterlight.visit.statement.StatementDetails;

/** What is said of the car: statements, claims and figures of the odometer. */
final class SayKinds {
    private static final int MAX_ROW = 1_000_000_000;

    private SayKinds() {}

    static RecordKind<Statement> statements() {
        Field<Statement, ZoneId> zone = required("zone", Shape.ZONE, Statement::zone);
        Field<Statement, String> text = required("text", Shape.TEXT, Statement::text);
        Field<Statement, Facets> what = optional("origin", Shape.FACETS, statement -> Optional.of(statement.what()));
        Field<Statement, String> part = detail("part", Shape.TEXT, StatementDetails::part);
        Field<Statement, Severity> severity = optional("severity", Shape.word(Severity.class), Statement::severity);
        Field<Statement, Certainty> certainty =
                detail("certainty", Shape.word(Certainty.class), StatementDetails::certainty);
        Field<Statement, SaidBy> saidBy =
                detail("said_by", Shape.word(SaidBy.class), details -> Optional.of(details.saidBy()));
        Field<Statement, Basis> basis = optional("basis", Shape.word(Basis.class), Statement::basis);
        Field<Statement, SaidSize> size =
                detail("size", Shape.TEXT.as(SaidSize::new, SaidSize::said), StatementDetails::size);
        Field<Statement, List<PhotoId>> photos = Field.<Statement, List<PhotoId>>optional(
                        "photo", Shape.PHOTOS, statement -> Optional.of(statement.photos()))
                .storedAs("photo_id");
        Field<Statement, Double> at =
                optional("at", Shape.FILM_MOMENT, Statement::atSeconds).storedAs("at_s");
        Field<Statement, Boolean> confidential =
                detail("private", Shape.FLAG, details -> Optional.of(details.confidential()));
        Field<Statement, RecordId> withdraws = detail(
                "withdraws",
                Shape.count(MAX_ROW).as(RecordId::new, id -> Math.toIntExact(id.value())),
                StatementDetails::withdraws);
        return RecordKind.of(
                        "statements",
                        "statement",
                        VisitRecord::statements,
                        List.of(
                                zone,
                                text,
                                what,
                                part,
                                severity,
                                certainty,
                                saidBy,
                                basis,
                                size,
                                photos,
                                at,
                                confidential,
                                withdraws),
                        in -> {
                            ZoneId where = in.need(zone);
                            String words = in.need(text);
                            Facets facets = in.get(what)
                                    .orElseThrow(() -> new CellRefused("condition", say("cell.statement.neither")));
                            List<PhotoId> shownBy = in.get(photos).orElse(List.of());
                            return new Statement(
                                    where,
                                    facets,
                                    words,
                                    in.get(severity),
                                    in.get(basis),
                                    shownBy.stream().findFirst(),
                                    in.get(at),
                                    shownBy.stream().skip(1).toList(),
                                    new StatementDetails(
                                            in.get(part),
                                            in.get(certainty),
                                            in.get(saidBy).orElse(SaidBy.INSPECTOR),
                                            in.get(size),
                                            in.get(confidential).orElse(false),
                                            in.get(withdraws)));
                        })
                .named((row, words) -> say(
                        "undo.row.statement",
                        row.text().isBlank() ? row.what().words() : UndoNames.quoted(row.text()),
                        words.zone(row.zone())));
    }

    private static <V> Field<Statement, V> detail(
            String name, Shape<V> shape, java.util.function.Function<StatementDetails, Optional<V>> of) {
        return optional(name, shape, statement -> of.apply(statement.details()));
    }

    static RecordKind<Claim> claims() {
        Field<Claim, String> text = required("text", Shape.TEXT, Claim::text);
        Field<Claim, Claimant> by =
                required("by", Shape.word(Claimant.class), Claim::by).storedAs("claimant");
        Field<Claim, ZoneId> zone = optional("zone", Shape.ZONE, Claim::zone);
        Field<Claim, String> part = optional("part", Shape.TEXT, Claim::part);
        Field<Claim, PartialDate> date =
                optional("date", Shape.DATE, Claim::date).storedAs("claimed_on");
        Field<Claim, String> about = optional("about", Shape.TEXT, Claim::about);
        Field<Claim, PhotoId> photo =
                optional("photo", Shape.PHOTO, Claim::photo).storedAs("photo_id");
        Field<Claim, Judgment> judged = optional("judged", Shape.word(Judgment.class), Claim::judged);
        Field<Claim, Boolean> confidential =
                optional("private", Shape.FLAG, claim -> Optional.of(claim.confidential()));
        return RecordKind.of(
                        "claims",
                        "claim",
                        VisitRecord::claims,
                        List.of(text, by, zone, part, date, about, photo, judged, confidential),
                        in -> new Claim(
                                in.need(text),
                                in.need(by),
                                in.get(zone),
                                in.get(part),
                                in.get(date),
                                in.get(about),
                                in.get(photo),
                                in.get(judged),
                                in.get(confidential).orElse(false)))
                .named((claim, words) -> say("undo.row.claim", UndoNames.quoted(claim.text())));
    }

    static RecordKind<OdometerFigure> odometer() {
        Field<OdometerFigure, BigDecimal> figure = required("figure", Shape.DECIMAL, OdometerFigure::figure);
        Field<OdometerFigure, DistanceUnit> unit =
                required("unit", Shape.word(DistanceUnit.class), OdometerFigure::unit);
        Field<OdometerFigure, OdometerSource> source =
                required("source", Shape.word(OdometerSource.class), OdometerFigure::source);
        Field<OdometerFigure, PartialDate> date =
                optional("date", Shape.DATE, OdometerFigure::date).storedAs("shown_on");
        Field<OdometerFigure, Boolean> wentRound =
                optional("went_round", Shape.FLAG, row -> Optional.of(row.wentRound()));
        Field<OdometerFigure, String> note = optional("note", Shape.TEXT, OdometerFigure::note);
        return RecordKind.of(
                        "odometer",
                        "odometer_figure",
                        VisitRecord::odometer,
                        List.of(figure, unit, source, date, wentRound, note),
                        in -> new OdometerFigure(
                                notNegative(in.need(figure)),
                                in.need(unit),
                                in.need(source),
                                in.get(date),
                                in.get(wentRound).orElse(false),
                                in.get(note)))
                .named((row, words) -> say(
                        "undo.row.odometer",
                        Numerals.typed(row.figure()),
                        row.unit().said()));
    }

    private static BigDecimal notNegative(BigDecimal figure) throws CellRefused {
        if (figure.signum() < 0) {
            throw new CellRefused("figure", say("cell.odometer.below", Numerals.typed(figure)));
        }
        return figure;
    }
}
