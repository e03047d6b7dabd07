package quarterlight.photo.exif;

import java.io.BufferedInputStream;
import java.io.EOFException;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.channels.Channels;
import java.nio.channels.SeekableByteChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import quarterlight.photo.MediaType;
import quarterlight.photo.bytes.ByteView;
import quarterlight.photo.bytes.MediaBoxes;
import quarterlight.photo.bytes.MediaBoxes.Box;

/**
 * The largest JPEG that a camera put into a file of its own format, and the Exif blocks beside it. The raw data itself is not decoded.
 * <p>None of the three formats is published by its maker; what stands here is common knowledge of free programs that read them, from memory: CR3 is an
 * ISO base media file (ISO/IEC 14496-12) with a track of one JPEG, a preview in a box PRVW and Exif in boxes CMT1, CMT2 and CMT4; RAF tells place and
 * length of a JPEG at byte 84; X3F has a directory at its end, with sections of pictures of which format 18 is JPEG.
 *
 * @param start where the JPEG begins in the file
 */
public record EmbeddedPicture(long start, long length) {
    private static final long MAX_BYTES = 96L << 20;
    private static final String CAMERA_BOX = "85c0b687820f11e08111f4ce462b6a48";
    private static final String PREVIEW_BOX = "eaf42b5e1c984b88b9fbb7dc406e4d16";
    private static final int UUID = 16;
    private static final int MAX_EXIF = 1 << 20;
    private static final int MAX_SECTIONS = 1000;
    private static final int JPEG_SECTION = 18;
    private static final int COPIED_AT_ONCE = 1 << 16;

    /** Where the largest JPEG in a file lies; empty if it holds none that can be found. */
    public static Optional<EmbeddedPicture> of(ByteView file, MediaType type) throws IOException {
        List<EmbeddedPicture> found = new ArrayList<>();
        try {
            switch (type) {
                case CR3 -> ofCr3(file, found);
                case RAF -> add(file, file.u32(84), file.u32(88), found);
                case X3F -> ofX3f(file, found);
                default -> throw new IllegalArgumentException(type + " is no camera's own format");
            }
        } catch (EOFException e) {
            // what was found before the data broke off counts
        }
        return found.stream().max(Comparator.comparingLong(EmbeddedPicture::length));
    }

    private static void add(ByteView file, long start, long length, List<EmbeddedPicture> found) throws IOException {
        boolean within = start > 0 && length > 4 && length <= MAX_BYTES && start <= file.length() - length;
        if (within && file.u16(start) == 0xFFD8) {
            found.add(new EmbeddedPicture(start, length));
        }
    }

    private static void ofCr3(ByteView file, List<EmbeddedPicture> found) throws IOException {
        List<Box> top = MediaBoxes.between(file, 0, file.length());
        for (Box box : top) {
            if (isUuid(file, box, PREVIEW_BOX)) {
                Optional<Box> preview =
                        MediaBoxes.first(MediaBoxes.between(file, box.start() + UUID + 8, box.end()), "PRVW");
                if (preview.isPresent()) {
                    long at = preview.get().start();
                    add(file, at + 16, file.u32(at + 12), found);
                }
            }
        }
        Optional<Box> moov = MediaBoxes.first(top, "moov");
        for (Box track : moov.isPresent() ? MediaBoxes.within(file, moov.get()) : List.<Box>of()) {
            if (track.type().equals("trak")) {
                track(file, track, found);
            }
        }
    }

    /** The first sample of a track, if it is a JPEG. */
    private static void track(ByteView file, Box track, List<EmbeddedPicture> found) throws IOException {
        Optional<Box> table = Optional.of(track);
        for (String within : List.of("mdia", "minf", "stbl")) {
            table = table.isEmpty() ? table : MediaBoxes.first(MediaBoxes.within(file, table.get()), within);
        }
        if (table.isEmpty()) {
            return;
        }
        List<Box> parts = MediaBoxes.within(file, table.get());
        Optional<Box> sizes = MediaBoxes.first(parts, "stsz");
        Optional<Box> wide = MediaBoxes.first(parts, "co64");
        Optional<Box> narrow = MediaBoxes.first(parts, "stco");
        if (sizes.isEmpty() || (wide.isEmpty() && narrow.isEmpty())) {
            return;
        }
        long one = file.u32(sizes.get().start() + 4);
        long size = one > 0 ? one : file.u32(sizes.get().start() + 12);
        long start = wide.isPresent()
                ? file.unsigned(wide.get().start() + 8, 8)
                : file.u32(narrow.orElseThrow().start() + 8);
        add(file, start, size, found);
    }

    private static void ofX3f(ByteView file, List<EmbeddedPicture> found) throws IOException {
        long directory = file.u32LittleEndian(file.length() - 4);
        long sections = Math.min(MAX_SECTIONS, file.u32LittleEndian(directory + 8));
        for (int i = 0; i < sections; i++) {
            long entry = directory + 12 + 12L * i;
            long at = file.u32LittleEndian(entry);
            long length = file.u32LittleEndian(entry + 4);
            String kind = file.fourLetters(entry + 8);
            if (kind.startsWith("IMA") && length > 28 && file.u32LittleEndian(at + 12) == JPEG_SECTION) {
                add(file, at + 28, length - 28, found);
            }
        }
    }

    private static boolean isUuid(ByteView file, Box box, String uuid) throws IOException {
        return box.type().equals("uuid")
                && box.length() >= UUID
                && java.util.HexFormat.of()
                        .formatHex(file.bytes(box.start(), UUID))
                        .equals(uuid);
    }

    /** The Exif blocks of a CR3 by their boxes; empty where one is missing. */
    static Optional<byte[]> exifOfCr3(ByteView file, String box) throws IOException {
        Optional<Box> moov = MediaBoxes.first(MediaBoxes.between(file, 0, file.length()), "moov");
        for (Box part : moov.isPresent() ? MediaBoxes.within(file, moov.get()) : List.<Box>of()) {
            if (isUuid(file, part, CAMERA_BOX)) {
                Optional<Box> found = MediaBoxes.first(MediaBoxes.between(file, part.start() + UUID, part.end()), box);
                if (found.isPresent() && found.get().length() <= MAX_EXIF) {
                    return Optional.of(
                            file.bytes(found.get().start(), (int) found.get().length()));
                }
            }
        }
        return Optional.empty();
    }

    /** The JPEG's bytes as a stream; to be closed. */
    public InputStream open(Path file) throws IOException {
        SeekableByteChannel channel = Files.newByteChannel(file);
        return new BufferedInputStream(Channels.newInputStream(channel.position(start)), COPIED_AT_ONCE);
    }

    /** Writes the largest JPEG of a file to another; false if there is none. */
    public static boolean extract(Path file, MediaType type, Path to) throws IOException {
        Optional<EmbeddedPicture> found;
        try (ByteView view = ByteView.open(file)) {
            found = of(view, type);
        }
        if (found.isEmpty()) {
            return false;
        }
        try (InputStream in = found.get().open(file);
                OutputStream out = Files.newOutputStream(to)) {
            long left = found.get().length();
            while (left > 0) {
                byte[] piece = in.readNBytes((int) Math.min(left, COPIED_AT_ONCE));
                if (piece.length == 0) {
                    return false;
                }
                out.write(piece);
                left -= piece.length;
            }
        }
        return true;
    }
}
