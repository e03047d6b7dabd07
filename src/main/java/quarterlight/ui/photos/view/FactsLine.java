package quarterlight.ui.photos.view;

import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import quarterlight.capture.CorrectedTime;
import quarterlight.ui.kit.Format;
import quarterlight.ui.kit.OpenVisit;
import quarterlight.ui.kit.Texts;
import quarterlight.ui.photos.list.PhotoHints;
import quarterlight.ui.photos.list.PhotoItem;
import quarterlight.visit.CaptureTime;
import quarterlight.visit.PhotoFile;

/** What is known of a photo, in two lines of words. Pure functions. */
final class FactsLine {
    private FactsLine() {}

    /** File, camera, size, sharpness beside the visit's. */
    static String file(Texts texts, PhotoItem item, PhotoHints hints) {
        PhotoFile file = item.photo().file();
        List<String> parts = new ArrayList<>();
        parts.add(file.camera().map(camera -> camera.value()).orElse(texts.get("photos.fact.no-camera")));
        if (file.width().isPresent() && file.height().isPresent()) {
            parts.add(texts.get(
                    "photos.fact.size",
                    Integer.toString(file.width().getAsInt()),
                    Integer.toString(file.height().getAsInt())));
        }
        if (file.sharpness().isPresent() && hints.sharpness().median() > 0) {
            parts.add(texts.get(
                    "photos.fact.sharpness",
                    Format.number(file.sharpness().getAsDouble(), 0),
                    Format.number(hints.sharpness().median(), 0)));
        }
        return String.join("  \u00b7  ", parts);
    }

    /** Time as corrected and as recorded, and whence its offset is known. */
    static String time(Texts texts, PhotoItem item, OpenVisit visit) {
        Optional<CaptureTime> recorded = item.photo().file().captured();
        Optional<CorrectedTime> corrected = visit.times().of(item.id());
        if (recorded.isEmpty() || corrected.isEmpty()) {
            return texts.get("photos.fact.no-time");
        }
        LocalDateTime local = corrected.get().local().toLocalDateTime();
        String words = texts.get(
                "photos.fact.time",
                Format.day(local),
                Format.clock(local),
                Format.clock(recorded.get().time()),
                texts.get("photos.offset." + corrected.get().source().word()));
        return recorded.get().suspect() ? words + "  \u00b7  " + texts.get("photos.fact.suspect") : words;
    }
}
