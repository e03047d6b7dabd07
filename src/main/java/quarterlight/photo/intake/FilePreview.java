package quarterlight.photo.intake;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.time.Instant;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.atomic.AtomicLong;
import quarterlight.photo.PictureUnreadable;
import quarterlight.photo.exif.Preview;
import quarterlight.photo.header.FileFacts;
import quarterlight.photo.originals.StoredOriginal;
import quarterlight.photo.worker.DecodingWorkers;
import quarterlight.photo.worker.WorkerLost;
import quarterlight.visit.photo.PhotoFile;
import quarterlight.visit.photo.Sha256;

/**
 * A first look at a file that is not taken in yet: what its header says, and the small picture in it; neither hashed nor decoded.
 *
 * @param found the file
 * @param provisional what its record will say, save the hash, the place and the sharpness, which are made up
 * @param preview the camera's small picture, as stored in the file
 */
public record FilePreview(FolderScan.Found found, PhotoFile provisional, Optional<Preview> preview) {
    public FilePreview {
        Objects.requireNonNull(found, "found");
        Objects.requireNonNull(provisional, "provisional");
        Objects.requireNonNull(preview, "preview");
    }

    /** Numbers for the hashes that are made up, so that no two are the same. */
    public static final class Numbers {
        private final AtomicLong last;

        public Numbers() {
            this(0);
        }

        /** @param after the numbers begin after this one */
        public Numbers(long after) {
            last = new AtomicLong(after);
        }

        private Sha256 next() {
            return new Sha256(String.format("%064x", last.incrementAndGet()));
        }
    }

    /**
     * @param now says when a recorded time lies in the future
     * @throws IOException if the file cannot be read
     * @throws WorkerLost if the file brought its worker down
     */
    public static FilePreview at(FolderScan.Found found, DecodingWorkers workers, Instant now, Numbers numbers)
            throws IOException, WorkerLost {
        FileFacts facts = workers.facts(found.file(), found.type(), now);
        String name = String.valueOf(found.file().getFileName());
        StoredOriginal none = new StoredOriginal(name, name, numbers.next(), 0);
        return new FilePreview(
                found, facts.asPhotoFile(none, OptionalDouble.empty(), java.util.List.of()), facts.preview());
    }

    /** The small picture upright; empty if the file carries none that can be read. */
    public Optional<BufferedImage> picture(DecodingWorkers workers) {
        if (preview.isEmpty()) {
            return Optional.empty();
        }
        try {
            return Optional.of(workers.upright(preview.get(), provisional.orientation()));
        } catch (PictureUnreadable e) {
            return Optional.empty();
        }
    }
}
