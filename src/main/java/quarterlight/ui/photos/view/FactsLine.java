package quarterlight.ui.photos.view;

import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import quarterlight.capture.CorrectedTime;
import quarterlight.ui.kit.Format;
import quarterlight.ui.kit.Texts;
import quarterlight.ui.kit.view.MediaIcon;
import quarterlight.ui.kit.visit.OpenVisit;
import quarterlight.ui.photos.list.PhotoItem;
import quarterlight.visit.VisitRecord;
import quarterlight.visit.photo.CaptureTime;
import quarterlight.visit.photo.MediaFacts;
import quarterlight.visit.photo.Photo;
import quarterlight.visit.photo.PhotoFile;
import quarterlight.visit.photo.SidecarWords;

/** What is known of a photo, in two lines of words. Pure functions. */
final class FactsLine {
    private static final int UPRIGHT = 1;

    private FactsLine() {}

    /** File, camera, size. */
    static String file(Texts texts, PhotoItem item) {
        PhotoFile file = item.photo().file();
        List<String> parts = new ArrayList<>();
        if (item.isHeldBack()) {
            parts.add(MediaIcon.words(texts, file));
            parts.add(file.type());
            file.more().pages().ifPresent(pages -> parts.add(texts.get("photos.mark.paper", pages)));
            file.more().said().ifPresent(said -> parts.addAll(said(texts, said, UPRIGHT)));
            return String.join("  \u00b7  ", parts);
        }
        parts.add(file.camera().map(camera -> camera.value()).orElse(texts.get("photos.fact.no-camera")));
        if (file.width().isPresent() && file.height().isPresent()) {
            parts.add(texts.get(
                    "photos.fact.size",
                    Integer.toString(file.width().getAsInt()),
                    Integer.toString(file.height().getAsInt())));
        }
        return String.join("  \u00b7  ", parts);
    }

    /** What the sidecar of a photo says of it, or what words or a sidecar lie beside; nothing if there is neither. */
    static List<String> beside(Texts texts, PhotoItem item, VisitRecord visit) {
        PhotoFile file = item.photo().file();
        List<String> parts = new ArrayList<>();
        for (Photo other : visit.photos()) {
            MediaFacts more = other.file().more();
            if (more.beside().equals(Optional.of(file.sha256()))) {
                parts.add(texts.get("photos.fact.with", other.file().name()));
                more.said().ifPresent(said -> parts.addAll(said(texts, said, file.orientation())));
            }
            if (file.more().beside().equals(Optional.of(other.file().sha256()))) {
                parts.add(texts.get("photos.fact.beside", other.file().name()));
            }
        }
        return parts;
    }

    /**
     * A turn that the file itself has too is no news; another is not applied, and is told.
     *
     * @param own the orientation that the photo's own file gives
     */
    private static List<String> said(Texts texts, SidecarWords said, int own) {
        List<String> parts = new ArrayList<>();
        said.caption().ifPresent(caption -> parts.add("\u201c" + caption + "\u201d"));
        if (!said.keywords().isEmpty()) {
            parts.add(String.join(", ", said.keywords()));
        }
        said.rating().ifPresent(stars -> parts.add(texts.get("photos.fact.rating", stars)));
        said.orientation().stream()
                .filter(way -> way != own)
                .forEach(way -> parts.add(texts.get("photos.fact.turned", texts.get("photos.fact.turned." + way))));
        return parts;
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
