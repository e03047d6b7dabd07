package quarterlight.ui.rust;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.swing.SwingUtilities;
import quarterlight.rust.plane.MaskOutlines;
import quarterlight.rust.plane.TraceCheck;
import quarterlight.task.LatestWork;
import quarterlight.ui.kit.UiContext;
import quarterlight.ui.kit.visit.OpenVisit;
import quarterlight.ui.rust.draw.RustModel;
import quarterlight.ui.rust.draw.ShareWork;
import quarterlight.ui.rust.draw.TraceDraft;
import quarterlight.visit.annotation.Outline;
import quarterlight.visit.annotation.Trace;
import quarterlight.visit.pin.RecordId;
import quarterlight.visit.row.RecordKind;

/** Makes outlines of what the color brush found once the inspector confirms it, in place of the region. Event thread only. */
final class ShareEdits {
    private static final int MIN_PIXELS = 12;
    private static final int MAX_OUTLINES = 60;
    private static final double TOLERANCE_PX = 0.8;
    private static final int PERCENT = 100;

    private final UiContext parts;
    private final OpenVisit visit;
    private final RustModel model;
    private final RustActions actions;

    ShareEdits(UiContext parts, OpenVisit visit, RustModel model, RustActions actions) {
        this.parts = parts;
        this.visit = visit;
        this.model = model;
        this.actions = actions;
    }

    /** Makes an outline of every group of pixels found, in place of the region that was looked at. */
    void outlines(ShareWork.Answer answer) {
        Optional<TraceDraft> draft = model.draft().or(() -> actions.chosen().map(TraceDraft::of));
        Optional<Trace> region = draft.flatMap(TraceDraft::trace);
        if (region.isEmpty() || !visit.isEditable()) {
            parts.problems().remark(parts.texts().get("share.outlines.lacking"));
            return;
        }
        LatestWork.once(
                "quarterlight-share-outlines",
                SwingUtilities::invokeLater,
                progress -> MaskOutlines.of(
                        answer.found(),
                        answer.question().picture().getWidth(),
                        answer.question().picture().getHeight(),
                        MIN_PIXELS,
                        MAX_OUTLINES,
                        TOLERANCE_PX),
                found -> keep(answer, draft.get().row(), region.get(), found),
                parts.problems()::failed);
    }

    private void keep(ShareWork.Answer answer, Optional<RecordId> old, Trace region, MaskOutlines.Found found) {
        String note = parts.texts().get("share.outlines.said");
        List<Trace> fresh = new ArrayList<>();
        for (Outline outline : found.outlines()) {
            Outline onPhoto = ShareWork.scaled(outline, 1 / answer.question().perPhotoPixel());
            Trace trace = new Trace(
                    region.photo(),
                    region.kind(),
                    onPhoto,
                    region.scale(),
                    region.zone(),
                    region.patch(),
                    Optional.of(note));
            if (TraceCheck.problem(trace).isEmpty()) {
                fresh.add(trace);
            }
        }
        if (fresh.isEmpty()) {
            parts.problems().remark(parts.texts().get("share.outlines.none"));
            return;
        }
        model.end();
        visit.edit(
                store -> store.edit(parts.texts().get("share.outlines.label", fresh.size()), tx -> {
                    old.ifPresent(id -> tx.remove(RecordKind.TRACES, id));
                    return tx.addAll(RecordKind.TRACES, fresh);
                }),
                ids -> {
                    actions.chosen(Optional.of(ids.get(0)));
                    leftOut(
                            fresh.size(),
                            PERCENT * found.leftPixels() / answer.found().cardinality());
                });
    }

    private void leftOut(int outlines, int percent) {
        if (percent > 0) {
            parts.problems().remark(parts.texts().get("share.outlines.done", outlines, percent));
        }
    }
}
