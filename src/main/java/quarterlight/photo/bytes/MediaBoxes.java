package quarterlight.photo.bytes;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The boxes (atoms) of an ISO base media file, as films, HEIC and AVIF are made of. Source: ISO/IEC 14496-12, section 4.2; the
 * same form in the QuickTime file format.
 */
public final class MediaBoxes {
    private static final int MAX_BOXES = 10_000;

    private MediaBoxes() {}

    /**
     * One box.
     *
     * @param type four letters
     * @param start where its contents begin
     * @param end where they end, never beyond its parent
     */
    public record Box(String type, long start, long end) {
        public long length() {
            return end - start;
        }
    }

    /** The boxes that lie between two places; damage ends the list. */
    public static List<Box> between(ByteView file, long start, long end) throws IOException {
        List<Box> boxes = new ArrayList<>();
        long at = start;
        while (at + 8 <= end && boxes.size() < MAX_BOXES) {
            long size = file.u32(at);
            long header = 8;
            if (size == 1 && at + 16 <= end) {
                size = file.unsigned(at + 8, 8);
                header = 16;
            } else if (size == 0) {
                size = end - at;
            }
            if (size < header) {
                break;
            }
            long stop = size > end - at ? end : at + size;
            boxes.add(new Box(file.fourLetters(at + 4), at + header, stop));
            at = stop;
        }
        return boxes;
    }

    public static List<Box> within(ByteView file, Box parent) throws IOException {
        return between(file, parent.start(), parent.end());
    }

    public static Optional<Box> first(List<Box> boxes, String type) {
        return boxes.stream().filter(box -> box.type().equals(type)).findFirst();
    }
}
