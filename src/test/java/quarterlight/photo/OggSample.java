package quarterlight.photo;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** A memo of silence in Ogg (RFC 3533) with Opus in it (RFC 7845, RFC 6716), made by hand: pages of one packet each. */
public @SuppressWarnings("ByteBufferBackingArray") // buffers of this class are allocated on the heap and whole
final class OggSample {
    private static final int SAMPLES_OF_PACKET = 960;
    private static final int SERIAL = 0x51A7;
    private static final int POLYNOMIAL = 0x04C11DB7;
    /** 20 ms of silence, full band, mono. */
    private static final byte[] SILENCE = {(byte) 0xF8, (byte) 0xFF, (byte) 0xFE};

    private final ByteArrayOutputStream out = new ByteArrayOutputStream();
    private int sequence;

    private OggSample() {}

    /** @param comments as {@code NAME=value} */
    public static Path opus(Path file, int packets, List<String> comments) throws IOException {
        OggSample made = new OggSample();
        made.page(2, 0, head());
        made.page(0, 0, tags(comments));
        for (int i = 1; i <= packets; i++) {
            made.page(i == packets ? 4 : 0, (long) i * SAMPLES_OF_PACKET, SILENCE);
        }
        return Files.write(file, made.out.toByteArray());
    }

    /** Version 1, one channel, nothing skipped, 48 kHz, no gain, mapping family 0. */
    private static byte[] head() {
        return little(19)
                .put("OpusHead".getBytes(StandardCharsets.US_ASCII))
                .put((byte) 1)
                .put((byte) 1)
                .putShort((short) 0)
                .putInt(48_000)
                .putShort((short) 0)
                .put((byte) 0)
                .array();
    }

    private static byte[] tags(List<String> comments) {
        List<byte[]> texts = new ArrayList<>();
        comments.forEach(comment -> texts.add(comment.getBytes(StandardCharsets.UTF_8)));
        byte[] vendor = "made by hand".getBytes(StandardCharsets.UTF_8);
        int length = 8
                + 4
                + vendor.length
                + 4
                + texts.stream().mapToInt(text -> 4 + text.length).sum();
        ByteBuffer packet = little(length)
                .put("OpusTags".getBytes(StandardCharsets.US_ASCII))
                .putInt(vendor.length)
                .put(vendor)
                .putInt(texts.size());
        texts.forEach(text -> packet.putInt(text.length).put(text));
        return packet.array();
    }

    private void page(int flags, long granule, byte[] packet) {
        int segments = packet.length / 255 + 1;
        ByteBuffer page = little(27 + segments + packet.length)
                .put("OggS".getBytes(StandardCharsets.US_ASCII))
                .put((byte) 0)
                .put((byte) flags)
                .putLong(granule)
                .putInt(SERIAL)
                .putInt(sequence++)
                .putInt(0)
                .put((byte) segments);
        for (int i = 0; i < segments - 1; i++) {
            page.put((byte) 255);
        }
        page.put((byte) (packet.length % 255)).put(packet);
        page.putInt(22, checksum(page.array()));
        out.writeBytes(page.array());
    }

    /** CRC of RFC 3533 section 6: not mirrored, begins at 0, nothing added at the end. */
    private static int checksum(byte[] page) {
        int crc = 0;
        for (byte b : page) {
            crc ^= (b & 0xFF) << 24;
            for (int bit = 0; bit < 8; bit++) {
                crc = crc < 0 ? crc << 1 ^ POLYNOMIAL : crc << 1;
            }
        }
        return crc;
    }

    private static ByteBuffer little(int length) {
        return ByteBuffer.allocate(length).order(ByteOrder.LITTLE_ENDIAN);
    }
}
