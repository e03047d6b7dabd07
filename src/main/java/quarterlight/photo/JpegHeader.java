package quarterlight.photo;

import java.io.BufferedInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalInt;

/**
 * The beginning of a JPEG file, up to its first scan: its size and its Exif blocks. Damage ends the reading; what came before it stands.
 * <p>Source: ITU-T T.81 | ISO/IEC 10918-1, annex B (markers).
 *
 * @param width pixels as stored, before any turning
 * @param height pixels as stored
 * @param progressive whether all of the picture must be held to decode any of it
 * @param exif contents of the Exif blocks after their {@code Exif\0\0}: TIFF structures
 * @param complete whether the first scan was reached
 */
record JpegHeader(OptionalInt width, OptionalInt height, boolean progressive, List<byte[]> exif, boolean complete) {
    private static final byte[] EXIF = "Exif\0\0".getBytes(StandardCharsets.ISO_8859_1);
    private static final int APP1 = 0xE1;
    private static final int START_OF_SCAN = 0xDA;
    private static final int END_OF_IMAGE = 0xD9;
    private static final int MOST_SEGMENTS = 2000;
    private static final int MOST_STRAY_BYTES = 1 << 16;

    JpegHeader {
        exif = List.copyOf(exif);
    }

    static JpegHeader read(Path file) throws IOException {
        try (InputStream in = new BufferedInputStream(Files.newInputStream(file), 1 << 16)) {
            return read(in);
        }
    }

    static JpegHeader read(InputStream in) throws IOException {
        OptionalInt width = OptionalInt.empty();
        OptionalInt height = OptionalInt.empty();
        boolean progressive = false;
        List<byte[]> exif = new ArrayList<>();
        in.readNBytes(2);
        for (int i = 0; i < MOST_SEGMENTS; i++) {
            int marker = nextMarker(in);
            if (marker == START_OF_SCAN) {
                return new JpegHeader(width, height, progressive, exif, true);
            }
            if (marker < 0 || marker == END_OF_IMAGE) {
                break;
            }
            if (standsAlone(marker)) {
                continue;
            }
            byte[] length = in.readNBytes(2);
            if (length.length < 2 || pair(length, 0) < 2) {
                break;
            }
            byte[] body = in.readNBytes(pair(length, 0) - 2);
            if (isFrame(marker) && body.length >= 5 && width.isEmpty()) {
                height = OptionalInt.of(pair(body, 1));
                width = OptionalInt.of(pair(body, 3));
                progressive = marker == 0xC2 || marker == 0xC6 || marker == 0xCA || marker == 0xCE;
            } else if (marker == APP1 && body.length > EXIF.length && startsWithExif(body)) {
                exif.add(Arrays.copyOfRange(body, EXIF.length, body.length));
            }
            if (body.length < pair(length, 0) - 2) {
                break;
            }
        }
        return new JpegHeader(width, height, progressive, exif, false);
    }

    private static boolean startsWithExif(byte[] body) {
        return Arrays.equals(body, 0, EXIF.length, EXIF, 0, EXIF.length);
    }

    /** The next marker's code, over stray bytes; -1 at the end of the file or after too many of them. */
    private static int nextMarker(InputStream in) throws IOException {
        boolean prefix = false;
        for (int stray = 0; stray < MOST_STRAY_BYTES; stray++) {
            int b = in.read();
            if (b < 0) {
                return -1;
            }
            if (prefix && b != 0 && b != 0xFF) {
                return b;
            }
            prefix = b == 0xFF;
        }
        return -1;
    }

    private static boolean standsAlone(int marker) {
        return marker == 0x01 || (marker >= 0xD0 && marker <= 0xD8);
    }

    private static boolean isFrame(int marker) {
        return marker >= 0xC0 && marker <= 0xCF && marker != 0xC4 && marker != 0xC8 && marker != 0xCC;
    }

    private static int pair(byte[] bytes, int at) {
        return (bytes[at] & 0xFF) << 8 | (bytes[at + 1] & 0xFF);
    }
}
