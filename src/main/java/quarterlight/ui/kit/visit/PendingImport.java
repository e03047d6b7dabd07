package quarterlight.ui.kit.visit;

import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import quarterlight.photo.intake.FilePreview;
import quarterlight.visit.photo.CaptureTime;
import quarterlight.visit.photo.Photo;
import quarterlight.visit.photo.PhotoFile;
import quarterlight.visit.photo.PhotoId;

/**
 * Photos that an intake has seen and the visit does not hold yet. They bear numbers below zero, are shown, and can be neither selected nor
 * pinned. Pure functions.
 */
public final class PendingImport {
    /** The small pictures of all together take no more memory than this; the rest come without. */
    private static final long MAX_BYTES = 32L << 20;

    private record Likeness(String name, Optional<LocalDateTime> time) {
        static Likeness of(PhotoFile file) {
            return new Likeness(file.name(), file.captured().map(CaptureTime::time));
        }
    }

    private PendingImport() {}

    /** True for a photo that is on its way. */
    public static boolean isComing(PhotoId photo) {
        return photo.value() < 0;
    }

    /** Those of the glances that no photo of the visit is like, by name and time; each photo stands for one. */
    public static List<Photo> photos(List<FilePreview> glances, List<Photo> held) {
        if (glances.isEmpty()) {
            return List.of();
        }
        Map<Likeness, Integer> there = new HashMap<>();
        held.forEach(photo -> there.merge(Likeness.of(photo.file()), 1, Integer::sum));
        List<Photo> coming = new ArrayList<>();
        for (int i = 0; i < glances.size(); i++) {
            PhotoFile file = glances.get(i).provisional();
            if (there.merge(Likeness.of(file), -1, Integer::sum) < 0) {
                coming.add(new Photo(new PhotoId(-1L - i), file, Optional.empty()));
            }
        }
        return coming;
    }

    /** The same glances with small pictures only as far as memory allows. */
    static List<FilePreview> bounded(List<FilePreview> glances) {
        List<FilePreview> kept = new ArrayList<>();
        long bytes = 0;
        for (FilePreview glance : glances) {
            bytes += glance.preview().map(preview -> preview.jpeg().length).orElse(0);
            kept.add(
                    bytes <= MAX_BYTES
                            ? glance
                            : new FilePreview(glance.found(), glance.provisional(), Optional.empty()));
        }
        return List.copyOf(kept);
    }
}
