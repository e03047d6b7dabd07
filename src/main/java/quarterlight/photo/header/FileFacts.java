package quarterlight.photo.header;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import quarterlight.photo.MediaType;
import quarterlight.photo.exif.Preview;
import quarterlight.photo.originals.StoredOriginal;
import quarterlight.visit.photo.MediaFacts;
import quarterlight.visit.photo.MediaHeader;
import quarterlight.visit.photo.PhotoFile;
import quarterlight.visit.photo.Sha256;

/**
 * What a photo, film, paper or sound says of itself.
 *
 * @param header of its own taking
 * @param notes what was odd, in sentences
 * @param preview the small JPEG that the file carries, in stored orientation, if any
 * @param more what only some media have
 * @param damageTold whether a note says already that damage keeps it from being shown
 */
public record FileFacts(
        MediaType type,
        MediaHeader header,
        List<String> notes,
        Optional<Preview> preview,
        MediaFacts more,
        boolean damageTold) {
    public FileFacts {
        Objects.requireNonNull(type, "type");
        Objects.requireNonNull(header, "header");
        Objects.requireNonNull(more, "more");
        notes = List.copyOf(notes);
    }

    /** Of what nothing keeps from being shown, as far as its header tells. */
    public FileFacts(
            MediaType type, MediaHeader header, List<String> notes, Optional<Preview> preview, MediaFacts more) {
        this(type, header, notes, preview, more, false);
    }

    /** The same, and that damage keeps it from being shown. */
    public FileFacts damaged(String note) {
        List<String> all = new ArrayList<>(notes);
        all.add(note);
        return new FileFacts(type, header, all, preview, more, true);
    }

    /** Of a medium without a picture or a camera: its format and what was odd. */
    public static FileFacts of(MediaType type, MediaFacts more, List<String> notes) {
        return new FileFacts(type, MediaHeader.NONE, notes, Optional.empty(), more);
    }

    /** The facts of what stands for itself. */
    public PhotoFile asPhotoFile(StoredOriginal original, OptionalDouble sharpness, List<String> moreNotes) {
        return asPhotoFile(original, sharpness, moreNotes, Optional.empty());
    }

    /** The facts as the visit keeps them, beside what became of the file. */
    public PhotoFile asPhotoFile(
            StoredOriginal original, OptionalDouble sharpness, List<String> moreNotes, Optional<Sha256> beside) {
        List<String> all = new ArrayList<>(notes);
        all.addAll(moreNotes);
        return new PhotoFile(
                original.name(),
                original.stored(),
                original.sha256(),
                original.bytes(),
                type.kind(),
                type.word(),
                header,
                sharpness,
                all,
                more.beside(beside));
    }
}
