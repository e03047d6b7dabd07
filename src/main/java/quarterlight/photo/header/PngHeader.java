package quarterlight.photo.header;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.zip.InflaterInputStream;
import quarterlight.photo.bytes.ByteView;

/**
 * Reads the header of a PNG file: size, the Exif chunk, and the hexadecimal text in which some programs hide Exif.
 * <p>Source: W3C Portable Network Graphics specification, IHDR, eXIf and zTXt chunks.
 */
public final class PngHeader {
    private static final int MAX_CHUNKS = 10_000;
    private static final List<String> PROFILES = List.of("Raw profile type exif", "Raw profile type APP1");

    private PngHeader() {}

    static PictureHeader read(ByteView file) throws IOException {
        OptionalInt width = OptionalInt.empty();
        OptionalInt height = OptionalInt.empty();
        List<byte[]> exif = new ArrayList<>();
        long at = 8;
        for (int i = 0; i < MAX_CHUNKS && at + 12 <= file.length(); i++) {
            long length = file.u32(at);
            String type = file.fourLetters(at + 4);
            boolean whole = length <= file.length() - at - 12;
            if (type.equals("IHDR") && whole && length >= 13) {
                width = OptionalInt.of((int) Math.min(Integer.MAX_VALUE, file.u32(at + 8)));
                height = OptionalInt.of((int) Math.min(Integer.MAX_VALUE, file.u32(at + 12)));
            } else if (whole && length <= PictureHeader.MAX_EXIF_BYTES) {
                if (type.equals("eXIf")) {
                    exif.add(file.bytes(at + 8, (int) length));
                } else if (type.equals("zTXt") || type.equals("tEXt")) {
                    profile(type, file.bytes(at + 8, (int) length)).ifPresent(exif::add);
                }
            }
            if (type.equals("IEND") || !whole) {
                break;
            }
            at += length + 12;
        }
        return new PictureHeader(width, height, exif);
    }

    /** The TIFF structure in a text chunk that holds a profile as hexadecimal digits, after its name and length. */
    private static Optional<byte[]> profile(String type, byte[] chunk) {
        int end = 0;
        while (end < chunk.length && chunk[end] != 0) {
            end++;
        }
        if (!PROFILES.contains(new String(chunk, 0, end, StandardCharsets.ISO_8859_1)) || end + 2 > chunk.length) {
            return Optional.empty();
        }
        try (InputStream in = type.equals("tEXt")
                ? new ByteArrayInputStream(chunk, end + 1, chunk.length - end - 1)
                : new InflaterInputStream(new ByteArrayInputStream(chunk, end + 2, chunk.length - end - 2))) {
            String text = new String(in.readNBytes(PictureHeader.MAX_EXIF_BYTES), StandardCharsets.ISO_8859_1).strip();
            String[] lines = text.split("\\s+", 3);
            if (lines.length < 3) {
                return Optional.empty();
            }
            byte[] bytes = HexFormat.of().parseHex(lines[2].replaceAll("\\s", ""));
            boolean prefixed = bytes.length > 6 && new String(bytes, 0, 4, StandardCharsets.ISO_8859_1).equals("Exif");
            return Optional.of(prefixed ? Arrays.copyOfRange(bytes, 6, bytes.length) : bytes);
        } catch (IOException | IllegalArgumentException e) {
            return Optional.empty();
        }
    }
}
