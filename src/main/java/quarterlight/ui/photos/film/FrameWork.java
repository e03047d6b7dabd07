package quarterlight.ui.photos.film;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import quarterlight.edit.intake.FrameKeeping;
import quarterlight.ui.kit.UiContext;
import quarterlight.ui.kit.visit.OpenVisit;
import quarterlight.ui.photos.list.PhotoItem;

/** Keeps the frame that is shown as a photo of its own and takes it in hand. Event thread only. */
public final class FrameWork {
    private final UiContext parts;
    private final OpenVisit visit;

    public FrameWork(UiContext parts, OpenVisit visit) {
        this.parts = Objects.requireNonNull(parts, "parts");
        this.visit = Objects.requireNonNull(visit, "visit");
    }

    public void keep(Optional<PhotoItem> hand) {
        OptionalDouble moment = visit.selection().moment();
        if (!visit.isEditable()) {
            parts.problems().tell(parts.texts().get("visit.reading.only"));
        } else if (hand.filter(PhotoItem::isFilm).isEmpty() || moment.isEmpty()) {
            parts.problems().tell(parts.texts().get("film.no-moment"));
        } else {
            FrameKeeping keeping = new FrameKeeping(
                    visit.store(),
                    parts.clock(),
                    visit.images().shelf(),
                    visit.images().decoding());
            visit.edit(store -> keeping.keep(hand.get().id(), moment.getAsDouble()), kept -> visit.selection()
                    .photos(List.of(kept)));
        }
    }
}
