package quarterlight.edit.intake;

import quarterlight.visit.photo.Sha256;

/** Where thumbnails are put once they are made; a cache that may be emptied at any time. */
@FunctionalInterface
public interface ThumbnailShelf {
    /** @param jpeg upright, plain sRGB, at most 320 pixels long */
    void put(Sha256 photo, byte[] jpeg);
}
