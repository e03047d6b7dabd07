package quarterlight.photo.header;

import java.io.BufferedInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * The beginning of a JPEG file, up to its first scan: its size and its Exif blocks. Damage ends the reading; what came before it stands.
 * <p>Source: ITU-T T.81 | ISO/IEC 10918-1, annex B (markers).
 *
 * @param width pixels as stored, before any turning
 * @param height pixels as stored
 * @param progressive whether all of the picture must be held to decode any of it
 * @param plain whether it is of the kind that every library reads: baseline, extended or progressive with Huffman coding, 8 bits, one or three components
 * @param exif contents of the Exif blocks after their {@code Exif\0\0}: TIFF structures
 * @param profile the color profile, if it is there whole
 * @param complete whether the first scan was reached
 */
public record JpegHeader(
        OptionalInt width,
        OptionalInt height,
        boolean progressive,
        boolean plain,
        List<byte[]> exif,
        Optional<byte[]> profile,
        boolean complete) {
    private static final byte[] PROFILE = "ICC_PROFILE\0".getBytes(StandardCharsets.ISO_8859_1);
    private static final int APP2 = 0xE2;
    private static final byte[] EXIF = "Exif\0\0".getBytes(StandardCharsets.ISO_8859_1);
    private static final int APP1 = 0xE1;
    private static final int START_OF_SCAN = 0xDA;
    private static final int END_OF_IMAGE = 0xD9;
    private static final int MAX_SEGMENTS = 2000;
    private static final int MAX_STRAY_BYTES = 1 << 16;

    public JpegHeader {
        exif = List.copyOf(exif);
    }

    public static JpegHeader read(Path file) throws IOException {
        try (InputStream in = new BufferedInputStream(Files.newInputStream(file), 1 << 16)) {
            return read(in);
        }
    }

    public static JpegHeader read(InputStream in) throws IOException {
        OptionalInt width = OptionalInt.empty();
        OptionalInt height = OptionalInt.empty();
        boolean progressive = false;
        boolean plain = false;
        List<byte[]> exif = new ArrayList<>();
        ProfileParts profile = new ProfileParts();
        in.readNBytes(2);
        for (int i = 0; i < MAX_SEGMENTS; i++) {
            int marker = nextMarker(in);
            if (marker == START_OF_SCAN) {
                return new JpegHeader(width, height, progressive, plain, exif, profile.whole(), true);
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
                plain = marker <= 0xC2 && isPlain(body);
            } else if (marker == APP1 && starts(body, EXIF)) {
                exif.add(Arrays.copyOfRange(body, EXIF.length, body.length));
            } else if (marker == APP2 && starts(body, PROFILE)) {
                profile.add(body);
            }
            if (body.length < pair(length, 0) - 2) {
                break;
            }
        }
        return new JpegHeader(width, height, progressive, plain, exif, profile.whole(), false);
    }

    private static boolean starts(byte[] body, byte[] with) {
        return body.length > with.length && Arrays.equals(body, 0, with.length, with, 0, with.length);
    }

    /** A frame's body: precision, height, width, count of components, then of each its number, sampling and table. */
    private static boolean isPlain(byte[] frame) {
        int components = frame.length < 6 ? 0 : frame[5];
        if (frame[0] != 8 || components != 1 && components != 3 || frame.length != 6 + 3 * components) {
            return false;
        }
        for (int at = 7; at < frame.length; at += 3) {
            int across = frame[at] >> 4 & 15;
            int down = frame[at] & 15;
            if (across < 1 || across > 4 || down < 1 || down > 4) {
                return false;
            }
        }
        return true;
    }

    /** A color profile comes in numbered parts, each with the count of all. Source: ICC.1:2010, annex B.4. */
    private static final class ProfileParts {
        private static final int HEAD = 14;
        private static final int MAX_BYTES = 4 << 20;

        private final ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        private int last;
        private int all = -1;

        void add(byte[] body) {
            if (body.length > HEAD && (body[12] & 0xFF) == last + 1 && bytes.size() < MAX_BYTES) {
                last++;
                all = body[13] & 0xFF;
                bytes.write(body, HEAD, body.length - HEAD);
            }
        }

        Optional<byte[]> whole() {
            return last == all ? Optional.of(bytes.toByteArray()) : Optional.empty();
        }
    }

    /** The next marker's code, over stray bytes; -1 at the end of the file or after too many of them. */
    private static int nextMarker(InputStream in) throws IOException {
        boolean prefix = false;
        for (int stray = 0; stray < MAX_STRAY_BYTES; stray++) {
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
