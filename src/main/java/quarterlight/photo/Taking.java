package quarterlight.photo;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import quarterlight.capture.Sharpness;
import quarterlight.photo.decode.PictureSource;
import quarterlight.photo.decode.Pictures;
import quarterlight.photo.header.FileFacts;
import quarterlight.photo.header.MetadataReader;
import quarterlight.photo.originals.OriginalNotKept;
import quarterlight.photo.originals.OriginalsFolder;
import quarterlight.photo.originals.OriginalsUnwritable;
import quarterlight.photo.originals.StoredOriginal;
import quarterlight.photo.pixels.PictureMeasures;
import quarterlight.photo.pixels.Thumbnail;
import quarterlight.visit.MediaKind;
import quarterlight.visit.PhotoFile;
import quarterlight.visit.Sha256;

/** Takes one file in: a proven copy in the originals, what it says of itself, a thumbnail and its sharpness. Safe for several threads. */
public final class Taking {
    /** What the platform puts where a name's bytes are no text in its character set. */
    private static final char UNKNOWN_LETTER = '\uFFFD';

    private final OriginalsFolder originals;
    private final MetadataReader metadata;
    private final Pictures pictures;
    private final Set<Sha256> suspects;

    /** @param suspects files that are looked at without native code, since an intake broke off while they were in the works */
    public Taking(Path visitFolder, MetadataReader metadata, Pictures pictures, Set<Sha256> suspects) {
        this.suspects = Set.copyOf(suspects);
        this.originals = new OriginalsFolder(Objects.requireNonNull(visitFolder, "visitFolder"));
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
     * A file that is copied and was looked at; it counts once it is settled.
     *
     * @param thumbnail JPEG, upright, sRGB; empty if the picture cannot be shown
     */
    public static final class Seen {
        private final OriginalsFolder.Copy copy;
        private final FileFacts facts;
        private final OptionalDouble sharpness;
        private final List<String> notes;
        private final Optional<Thumbnail> thumbnail;

        private Seen(
                OriginalsFolder.Copy copy,
                FileFacts facts,
                OptionalDouble sharpness,
                List<String> notes,
                Optional<Thumbnail> thumbnail) {
            this.copy = copy;
            this.facts = facts;
            this.sharpness = sharpness;
            this.notes = notes;
            this.thumbnail = thumbnail;
        }
    }

    /**
     * Copies the file, proves the copy, and reads it. A picture that cannot be shown is a note, with the camera's own small picture in its place
     * if there is one.
     *
     * @throws OriginalNotKept if the file cannot be read or proved
     * @throws OriginalsUnwritable if the disk of the visit takes no more
     */
    public Seen look(FolderScan.Found found) throws OriginalNotKept, OriginalsUnwritable {
        OriginalsFolder.Copy copy = originals.copy(found.file(), found.type() == MediaType.JPEG);
        try {
            return seen(copy, found.type());
        } finally {
            copy.release();
        }
    }

    private Seen seen(OriginalsFolder.Copy copy, MediaType type) throws OriginalsUnwritable {
        List<String> notes = new ArrayList<>();
        if (copy.name().indexOf(UNKNOWN_LETTER) >= 0) {
            notes.add(
                    "Its name holds letters that this computer's setting for file names does not know; they are lost.");
        }
        FileFacts facts;
        try {
            facts = metadata.read(copy.file(), type);
        } catch (IOException e) {
            throw new OriginalsUnwritable(copy.file(), e);
        }
        try {
            Pictures able = suspects.contains(copy.sha256()) ? Pictures.careful() : pictures;
            BufferedImage picture = able.uprightRoughly(
                    new PictureSource(copy.file(), copy.held()),
                    facts.type(),
                    facts.orientation(),
                    Sharpness.LONG_SIDE);
            OptionalDouble sharpness = facts.type().kind() == MediaKind.FILM
                    ? OptionalDouble.empty()
                    : OptionalDouble.of(PictureMeasures.sharpness(picture));
            BufferedImage small = Pictures.fitted(picture, Pictures.THUMBNAIL);
            return new Seen(copy, facts, sharpness, notes, Optional.of(Thumbnail.of(small)));
        } catch (PictureUnreadable e) {
            if (facts.notes().stream().noneMatch(note -> note.contains("cannot be shown"))) {
                notes.add("The file is kept, but not shown: " + e.reason() + ".");
            }
            return new Seen(copy, facts, OptionalDouble.empty(), notes, previewOf(facts));
        }
    }

    /** Waits until the disk has the copy, and gives it its name among the originals. */
    public Taken settle(Seen seen) throws OriginalsUnwritable {
        StoredOriginal original = originals.settle(seen.copy);
        return new Taken(seen.facts.asPhotoFile(original, seen.sharpness, seen.notes), seen.thumbnail);
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
