package quarterlight.photo.header;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import quarterlight.photo.bytes.ByteView;
import quarterlight.photo.bytes.MediaBoxes;
import quarterlight.photo.bytes.MediaBoxes.Box;

/**
 * Reads the header of a HEIC or AVIF file: the primary picture's size after the container's own turning, and the Exif item.
 * In these formats the container alone says how a picture is turned; Exif's orientation repeats it and is not applied again.
 * <p>Source: ISO/IEC 23008-12 (HEIF) sections 6.5 and annex A; ISO/IEC 14496-12 section 8.11 (meta, iloc, iinf, pitm).
 */
public final class HeifHeader {
    private static final int MAX_ITEMS = 20_000;
    private static final int MAX_PROFILE_BYTES = 4 << 20;
    private static final List<String> PROFILES = List.of("prof", "rICC");

    private HeifHeader() {}

    /**
     * What is needed to decode the primary picture.
     *
     * @param storedWidth pixels before any turning; 0 if unknown
     * @param storedHeight pixels before any turning; 0 if unknown
     * @param turning how the container turns it
     * @param profile the color profile, if it carries a whole one
     */
    public record Facts(
            int storedWidth, int storedHeight, Orientation turning, Optional<byte[]> profile, List<byte[]> exif) {}

    static PictureHeader read(ByteView file) throws IOException {
        Facts facts = facts(file);
        if (facts.storedWidth() == 0 || facts.storedHeight() == 0) {
            return new PictureHeader(OptionalInt.empty(), OptionalInt.empty(), facts.exif());
        }
        boolean sideways = facts.turning().swapsSides();
        return new PictureHeader(
                OptionalInt.of(sideways ? facts.storedHeight() : facts.storedWidth()),
                OptionalInt.of(sideways ? facts.storedWidth() : facts.storedHeight()),
                facts.exif());
    }

    public static Facts facts(ByteView file) throws IOException {
        Optional<Box> meta = MediaBoxes.first(MediaBoxes.between(file, 0, file.length()), "meta");
        if (meta.isEmpty()) {
            return new Facts(0, 0, Orientation.TOP_LEFT, Optional.empty(), List.of());
        }
        List<Box> parts =
                MediaBoxes.between(file, meta.get().start() + 4, meta.get().end());
        long primary = MediaBoxes.first(parts, "pitm").isPresent()
                ? primary(file, MediaBoxes.first(parts, "pitm").get())
                : 1;
        List<Box> properties = properties(file, parts, primary);
        Optional<Box> size = MediaBoxes.first(properties, "ispe");
        Optional<Box> turn = MediaBoxes.first(properties, "irot");
        Optional<Box> mirror = MediaBoxes.first(properties, "imir");
        return new Facts(
                size.isPresent() ? bounded(file.u32(size.get().start() + 4)) : 0,
                size.isPresent() ? bounded(file.u32(size.get().start() + 8)) : 0,
                Orientation.ofHeif(
                        turn.isPresent() ? file.u8(turn.get().start()) : 0,
                        mirror.isPresent() ? file.u8(mirror.get().start()) & 1 : -1),
                profile(file, properties),
                exif(file, parts));
    }

    private static Optional<byte[]> profile(ByteView file, List<Box> properties) throws IOException {
        for (Box color : properties) {
            if (color.type().equals("colr")
                    && color.length() > 4
                    && color.length() <= MAX_PROFILE_BYTES
                    && PROFILES.contains(file.fourLetters(color.start()))) {
                return Optional.of(file.bytes(color.start() + 4, (int) color.length() - 4));
            }
        }
        return Optional.empty();
    }

    private static int bounded(long size) {
        return (int) Math.min(Integer.MAX_VALUE, size);
    }

    private static long primary(ByteView file, Box pitm) throws IOException {
        return file.unsigned(pitm.start() + 4, file.u8(pitm.start()) == 0 ? 2 : 4);
    }

    /** The property boxes tied to an item. */
    private static List<Box> properties(ByteView file, List<Box> parts, long item) throws IOException {
        Optional<Box> iprp = MediaBoxes.first(parts, "iprp");
        if (iprp.isEmpty()) {
            return List.of();
        }
        List<Box> children = MediaBoxes.within(file, iprp.get());
        Optional<Box> ipco = MediaBoxes.first(children, "ipco");
        Optional<Box> ipma = MediaBoxes.first(children, "ipma");
        if (ipco.isEmpty() || ipma.isEmpty()) {
            return List.of();
        }
        List<Box> all = MediaBoxes.within(file, ipco.get());
        List<Box> found = new ArrayList<>();
        int idBytes = file.u8(ipma.get().start()) == 0 ? 2 : 4;
        boolean wide = (file.u8(ipma.get().start() + 3) & 1) == 1;
        long entries = Math.min(MAX_ITEMS, file.u32(ipma.get().start() + 4));
        long at = ipma.get().start() + 8;
        for (long i = 0; i < entries && at < ipma.get().end(); i++) {
            long id = file.unsigned(at, idBytes);
            int count = file.u8(at + idBytes);
            at += idBytes + 1;
            for (int p = 0; p < count; p++) {
                int index = wide ? file.u16(at) & 0x7FFF : file.u8(at) & 0x7F;
                at += wide ? 2 : 1;
                if (id == item && index >= 1 && index <= all.size()) {
                    found.add(all.get(index - 1));
                }
            }
        }
        return found;
    }

    private static List<byte[]> exif(ByteView file, List<Box> parts) throws IOException {
        Optional<Box> iinf = MediaBoxes.first(parts, "iinf");
        Optional<Box> iloc = MediaBoxes.first(parts, "iloc");
        if (iinf.isEmpty() || iloc.isEmpty()) {
            return List.of();
        }
        int countBytes = file.u8(iinf.get().start()) == 0 ? 2 : 4;
        List<byte[]> blocks = new ArrayList<>();
        for (Box entry : MediaBoxes.between(
                file, iinf.get().start() + 4 + countBytes, iinf.get().end())) {
            int version = entry.length() < 12 ? 0 : file.u8(entry.start());
            int idBytes = version == 2 ? 2 : 4;
            if (version >= 2
                    && file.fourLetters(entry.start() + 4 + idBytes + 2).equals("Exif")) {
                item(file, iloc.get(), file.unsigned(entry.start() + 4, idBytes))
                        .ifPresent(blocks::add);
            }
        }
        return blocks;
    }

    /** The bytes of an item that lies in the file in one piece, from the start of its TIFF structure. */
    private static Optional<byte[]> item(ByteView file, Box iloc, long wanted) throws IOException {
        int version = file.u8(iloc.start());
        int sizes = file.u16(iloc.start() + 4);
        int offsetBytes = sizes >> 12;
        int lengthBytes = sizes >> 8 & 15;
        int baseBytes = sizes >> 4 & 15;
        int indexBytes = version == 0 ? 0 : sizes & 15;
        int idBytes = version < 2 ? 2 : 4;
        if (Math.max(Math.max(offsetBytes, lengthBytes), Math.max(baseBytes, indexBytes)) > 8) {
            return Optional.empty();
        }
        long items = Math.min(MAX_ITEMS, file.unsigned(iloc.start() + 6, idBytes));
        long at = iloc.start() + 6 + idBytes;
        for (long i = 0; i < items && at < iloc.end(); i++) {
            long id = file.unsigned(at, idBytes);
            at += idBytes + (version == 0 ? 0 : 2) + 2;
            long base = file.unsigned(at, baseBytes);
            int extents = file.u16(at + baseBytes);
            at += baseBytes + 2;
            if (id == wanted && extents == 1) {
                long offset = base + file.unsigned(at + indexBytes, offsetBytes);
                long length = file.unsigned(at + indexBytes + offsetBytes, lengthBytes);
                return length < 12 || length > PictureHeader.MAX_EXIF_BYTES
                        ? Optional.empty()
                        : tiffPart(file.bytes(offset, (int) length));
            }
            at += (long) extents * (indexBytes + offsetBytes + lengthBytes);
        }
        return Optional.empty();
    }

    /** An Exif item begins with the offset of its TIFF header after that number. */
    private static Optional<byte[]> tiffPart(byte[] item) {
        long start =
                4 + ((long) (item[0] & 0xFF) << 24 | (item[1] & 0xFF) << 16 | (item[2] & 0xFF) << 8 | (item[3] & 0xFF));
        return start >= item.length
                ? Optional.empty()
                : Optional.of(Arrays.copyOfRange(item, (int) start, item.length));
    }
}
