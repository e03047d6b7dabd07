package quarterlight.visit.row;

import static quarterlight.language.Sentences.say;
import static quarterlight.visit.row.Field.optional;
import static quarterlight.visit.row.Field.required;

import java.util.List;
import java.util.Optional;
import quarterlight.car.ZoneId;
import quarterlight.visit.BuyerRelease;
import quarterlight.visit.CoverageOverride;
import quarterlight.visit.DroppedDraft;
import quarterlight.visit.MatterDecision;
import quarterlight.visit.ReportExclusion;
import quarterlight.visit.VisitRecord;
import quarterlight.visit.photo.PhotoId;
import quarterlight.visit.statement.Severity;

/** What the inspector wants of this visit: what it must bring, what the report leaves out, and what beside photos goes to the buyer. */
final class ChoiceKinds {
    private ChoiceKinds() {}

    static RecordKind<CoverageOverride> coverage() {
        Field<CoverageOverride, String> evidence = required("evidence", Shape.TEXT, CoverageOverride::evidence);
        Field<CoverageOverride, Integer> want =
                required("want", Shape.count(CoverageOverride.MAX_WANT), CoverageOverride::want);
        Field<CoverageOverride, ZoneId> zone = optional("zone", Shape.ZONE, CoverageOverride::zone);
        return RecordKind.of(
                        "coverage",
                        "coverage_wish",
                        VisitRecord::coverage,
                        List.of(evidence, want, zone),
                        in -> new CoverageOverride(in.get(zone), in.need(evidence), in.need(want)))
                .named((wish, words) -> say("undo.row.coverage", wish.want(), wish.evidence(), words.on(wish.zone())));
    }

    static RecordKind<ReportExclusion> leftOut() {
        Field<ReportExclusion, ZoneId> zone = optional("zone", Shape.ZONE, ReportExclusion::zone);
        Field<ReportExclusion, PhotoId> photo =
                optional("photo", Shape.PHOTO, ReportExclusion::photo).storedAs("photo_id");
        return RecordKind.of(
                        "left-out",
                        "left_out",
                        VisitRecord::leftOut,
                        List.of(zone, photo),
                        in -> leftOut(in.get(zone), in.get(photo)))
                .named(new UndoNames<>(
                        (row, words) -> row.photo()
                                .map(words::photo)
                                .orElseGet(() -> words.zone(row.zone().orElseThrow())),
                        "undo.left-out",
                        "undo.left-out",
                        "undo.left-out.back"));
    }

    static RecordKind<BuyerRelease> released() {
        Field<BuyerRelease, PhotoId> photo =
                required("photo", Shape.PHOTO, BuyerRelease::photo).storedAs("photo_id");
        return RecordKind.of(
                        "released",
                        "released",
                        VisitRecord::released,
                        List.of(photo),
                        in -> new BuyerRelease(in.need(photo)))
                .named(new UndoNames<>(
                        (row, words) -> words.photo(row.photo()), "undo.release", "undo.release", "undo.release.back"));
    }

    static RecordKind<MatterDecision> decisions() {
        Field<MatterDecision, String> matter = required("matter", Shape.TEXT, MatterDecision::matter);
        Field<MatterDecision, Severity> severity =
                required("severity", Shape.word(Severity.class), MatterDecision::severity);
        Field<MatterDecision, String> reason = required("reason", Shape.TEXT, MatterDecision::reason);
        Field<MatterDecision, Severity> ruled = required("ruled", Shape.word(Severity.class), MatterDecision::ruled);
        return RecordKind.of(
                        "decisions",
                        "matter_decision",
                        VisitRecord::decisions,
                        List.of(matter, severity, reason, ruled),
                        in -> new MatterDecision(in.need(matter), in.need(severity), in.need(reason), in.need(ruled)))
                .named(new UndoNames<>(
                        // which matter it is only those who work it out can say
                        (row, words) -> say("undo.row.severity", row.severity().said(), UndoNames.quoted(row.reason())),
                        "undo.set",
                        "undo.set",
                        "undo.take-back"));
    }

    static RecordKind<DroppedDraft> dropped() {
        Field<DroppedDraft, PhotoId> photo =
                required("photo", Shape.PHOTO, DroppedDraft::words).storedAs("photo_id");
        Field<DroppedDraft, Double> at =
                required("at", Shape.FILM_MOMENT, DroppedDraft::atSeconds).storedAs("at_s");
        Field<DroppedDraft, String> what = required("what", Shape.TEXT, DroppedDraft::what);
        Field<DroppedDraft, String> said = required("said", Shape.TEXT, DroppedDraft::said);
        Field<DroppedDraft, String> text = required("text", Shape.TEXT, DroppedDraft::text);
        Field<DroppedDraft, String> instead = optional("instead", Shape.TEXT, DroppedDraft::instead);
        return RecordKind.of(
                        "dropped",
                        "dropped_draft",
                        VisitRecord::dropped,
                        List.of(photo, at, what, said, text, instead),
                        in -> new DroppedDraft(
                                in.need(photo),
                                in.need(at),
                                in.need(what),
                                in.need(said),
                                in.need(text),
                                in.get(instead)))
                .named(new UndoNames<>(
                        (row, words) -> UndoNames.quoted(row.text()), "undo.drop", "undo.drop", "undo.drop.back"));
    }

    private static ReportExclusion leftOut(Optional<ZoneId> zone, Optional<PhotoId> photo) throws CellRefused {
        if (zone.isPresent() == photo.isPresent()) {
            throw new CellRefused(
                    zone.isPresent() ? "photo" : "zone",
                    zone.isPresent() ? say("cell.left-out.both") : say("cell.left-out.neither"));
        }
        return new ReportExclusion(zone, photo);
    }
}
