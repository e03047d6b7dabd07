package quarterlight.edit.row;

import static quarterlight.language.Sentences.say;

import java.util.List;
import java.util.Optional;
import quarterlight.rust.plane.NoteCheck;
import quarterlight.rust.plane.TraceCheck;
import quarterlight.table.RowKind;
import quarterlight.table.RowRule;
import quarterlight.visit.BuyerRelease;
import quarterlight.visit.DroppedDraft;
import quarterlight.visit.annotation.HiddenRegion;
import quarterlight.visit.annotation.PhotoNote;
import quarterlight.visit.annotation.Trace;
import quarterlight.visit.photo.MediaKind;
import quarterlight.visit.row.CellRefused;
import quarterlight.visit.row.RecordKind;

/** The kinds of tables that can be added, with what the geometry of photos asks of their rows. */
public final class RowKinds {
    /** What the geometry of a trace must keep to, at the cell it is about. */
    public static final RowRule.OnPhoto<Trace> MEASURABLE =
            (trace, photo) -> TraceCheck.ofOutline(trace.outline(), photo)
                    .map(why -> new CellRefused("outline", why))
                    .or(() -> TraceCheck.ofScale(trace.scale(), photo).map(why -> new CellRefused("scale", why)))
                    .or(() -> TraceCheck.ofHorizon(trace).map(why -> new CellRefused("outline", why)));

    /** What a note must keep to, at the cell it is about. */
    static final RowRule.OnPhoto<PhotoNote> DRAWABLE = (note, photo) -> NoteCheck.ofPoints(note, photo)
            .map(why -> new CellRefused("points", why))
            .or(() -> NoteCheck.ofScale(note, photo).map(why -> new CellRefused("scale", why)));

    /** What a hidden region must keep to. */
    static final RowRule.OnPhoto<HiddenRegion> OUTLINED =
            (region, photo) -> NoteCheck.ofOutline(region, photo).map(why -> new CellRefused("outline", why));

    /** Photos and films need no release; it would say nothing. */
    static final RowRule.OnPhoto<BuyerRelease> RELEASABLE = (row, photo) -> photo.kind()
                    .isHeldBack()
            ? Optional.empty()
            : Optional.of(new CellRefused(
                    "photo",
                    say("refused.release.kind", photo.name(), photo.kind().said())));

    /** A draft is one of a file of words. */
    static final RowRule.OnPhoto<DroppedDraft> SPOKEN = (row, photo) -> photo.kind() == MediaKind.WORDS
            ? Optional.empty()
            : Optional.of(new CellRefused(
                    "photo",
                    say("refused.draft.file", photo.name(), photo.kind().said())));

    private static final List<RowKind<?>> RULED = List.of(
            new RowKind<>(RecordKind.TRACES, RowRule.onPhoto(Trace::photo, MEASURABLE)),
            new RowKind<>(RecordKind.PHOTO_NOTES, RowRule.onPhoto(PhotoNote::photo, DRAWABLE)),
            new RowKind<>(RecordKind.HIDDEN, RowRule.onPhoto(HiddenRegion::photo, OUTLINED)),
            new RowKind<>(RecordKind.RELEASED, RowRule.onPhoto(BuyerRelease::photo, RELEASABLE)),
            new RowKind<>(RecordKind.DROPPED, RowRule.onPhoto(DroppedDraft::words, SPOKEN)),
            new RowKind<>(RecordKind.COVERAGE, RowRule.KNOWN_EVIDENCE));

    private RowKinds() {}

    /** Every kind of rows, in the order of the documentation. */
    public static List<RowKind<?>> all() {
        return RecordKind.all().stream().<RowKind<?>>map(RowKinds::of).toList();
    }

    private static RowKind<?> of(RecordKind<?> kind) {
        for (RowKind<?> ruled : RULED) {
            if (ruled.kind() == kind) {
                return ruled;
            }
        }
        return RowKind.of(kind);
    }

    public static Optional<RowKind<?>> find(String word) {
        return RecordKind.find(word).map(RowKinds::of);
    }

    public static List<String> words() {
        return RecordKind.all().stream().map(RecordKind::word).toList();
    }
}
