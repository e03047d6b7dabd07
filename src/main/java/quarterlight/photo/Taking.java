package quarterlight.photo;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import quarterlight.capture.Sharpness;
import quarterlight.visit.MediaKind;
import quarterlight.visit.PhotoFile;

/** Takes one file in: a proven copy in the originals, what it says of itself, a thumbnail and its sharpness. Safe for several threads. */
public final class Taking {
    private final Path visitFolder;
    private final OriginalsFolder originals;
    private final MetadataReader metadata;
    private final Pictures pictures;

    public Taking(Path visitFolder, MetadataReader metadata, Pictures pictures) {
        this.visitFolder = Objects.requireNonNull(visitFolder, "visitFolder");
        this.originals = new OriginalsFolder(visitFolder);
        this.metadata = Objects.requireNonNull(metadata, "metadata");
        this.pictures = Objects.requireNonNull(pictures, "pictures");
    }

    /**
     * A file that was taken in.
     *
     * @param thumbnail JPEG, upright, sRGB; empty if the picture cannot be shown
     */
    public record Taken(PhotoFile file, Optional<Thumbnail> thumbnail) {}

    /**
     * Copies the file and proves the copy.
     *
     * @throws OriginalNotKept if the file cannot be read or proved
     * @throws OriginalsUnwritable if the disk of the visit takes no more
     */
    public StoredOriginal keep(FolderScan.Found found) throws OriginalNotKept, OriginalsUnwritable {
        return originals.keep(found.file());
    }

    /** Reads a file that is kept. A picture that cannot be shown is a note, with the camera's own small picture in its place if there is one. */
    public Taken look(FolderScan.Found found, StoredOriginal original) throws OriginalsUnwritable {
        Path file = visitFolder.resolve(original.stored());
        FileFacts facts;
        try {
            facts = metadata.read(file, found.type());
        } catch (IOException e) {
            throw new OriginalsUnwritable(file, e);
        }
        try {
            BufferedImage picture = pictures.upright(file, facts.type(), facts.orientation(), Sharpness.LONG_SIDE);
            OptionalDouble sharpness = facts.type().kind() == MediaKind.FILM
                    ? OptionalDouble.empty()
                    : OptionalDouble.of(PictureMeasures.sharpness(picture));
            BufferedImage small = Pictures.fitted(picture, Pictures.THUMBNAIL);
            return new Taken(facts.asPhotoFile(original, sharpness, List.of()), Optional.of(Thumbnail.of(small)));
        } catch (PictureUnreadable e) {
            List<String> notes = new ArrayList<>();
            if (facts.notes().stream().noneMatch(note -> note.contains("cannot be shown"))) {
                notes.add("The file is kept, but not shown: " + e.reason() + ".");
            }
            return new Taken(facts.asPhotoFile(original, OptionalDouble.empty(), notes), previewOf(facts));
        }
    }

    private Optional<Thumbnail> previewOf(FileFacts facts) {
        try {
            return facts.preview().isEmpty()
                    ? Optional.empty()
                    : Optional.of(Thumbnail.of(pictures.upright(facts.preview().get(), facts.orientation())));
        } catch (PictureUnreadable e) {
            return Optional.empty();
        }
    }
}
