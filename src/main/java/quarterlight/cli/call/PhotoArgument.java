package quarterlight.cli.call;

import java.util.List;
import java.util.Optional;
import quarterlight.table.cell.PhotoNames;
import quarterlight.visit.photo.Photo;
import quarterlight.visit.row.CellRefused;

/** A photo named in a call: by its number, its file name, or the first digits of its hash. */
public final class PhotoArgument {
    private PhotoArgument() {}

    public static Photo find(List<Photo> photos, String text) throws CallRefused {
        Optional<Photo> numbered = photos.stream()
                .filter(photo -> photo.id().toString().equals(text.strip()))
                .findFirst();
        if (numbered.isPresent()) {
            return numbered.get();
        }
        try {
            return new PhotoNames(photos).find("photo", text.strip());
        } catch (CellRefused e) {
            throw new CallRefused(e.reason());
        }
    }
}
