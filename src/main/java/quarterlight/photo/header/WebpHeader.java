package quarterlight.photo.header;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalInt;
import quarterlight.photo.bytes.ByteView;

/** Reads the header of a WebP file: size and Exif chunk. Source: RFC 9649 (WebP Image Format), sections 2.5 to 2.7. */
public final class WebpHeader {
    private static final int MAX_CHUNKS = 10_000;

    private WebpHeader() {}

    public static PictureHeader read(ByteView file) throws IOException {
        int width = 0;
        int height = 0;
        List<byte[]> exif = new ArrayList<>();
        long at = 12;
        for (int i = 0; i < MAX_CHUNKS && at + 8 <= file.length(); i++) {
            String type = file.fourLetters(at);
            long length = file.u32LittleEndian(at + 4);
            long body = at + 8;
            if (length > file.length() - body) {
                break;
            }
            if (type.equals("VP8X") && length >= 10) {
                width = file.u24LittleEndian(body + 4) + 1;
                height = file.u24LittleEndian(body + 7) + 1;
            } else if (type.equals("VP8 ") && length >= 10 && width == 0) {
                width = Short.reverseBytes((short) file.u16(body + 6)) & 0x3FFF;
                height = Short.reverseBytes((short) file.u16(body + 8)) & 0x3FFF;
            } else if (type.equals("VP8L") && length >= 5 && width == 0) {
                long bits = file.u32LittleEndian(body + 1);
                width = (int) (bits & 0x3FFF) + 1;
                height = (int) (bits >> 14 & 0x3FFF) + 1;
            } else if (type.equals("EXIF") && length > 6 && length <= PictureHeader.MAX_EXIF_BYTES) {
                byte[] block = file.bytes(body, (int) length);
                boolean prefixed = block[0] == 'E' && block[1] == 'x' && block[2] == 'i' && block[3] == 'f';
                exif.add(prefixed ? Arrays.copyOfRange(block, 6, block.length) : block);
            }
            at = body + length + (length & 1);
        }
        return width == 0
                ? new PictureHeader(OptionalInt.empty(), OptionalInt.empty(), exif)
                : new PictureHeader(OptionalInt.of(width), OptionalInt.of(height), exif);
    }
}
