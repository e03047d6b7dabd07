package quarterlight.photo;

import java.nio.charset.StandardCharsets;
import java.util.Optional;

/** How papers, sounds and cameras' own formats begin. */
final class MediaHeads {
    /** Some programs write a line or a byte order mark before it. */
    private static final int MAX_BEFORE_PDF = 16;

    private MediaHeads() {}

    static Optional<MediaType> of(byte[] head) {
        String text = new String(head, StandardCharsets.ISO_8859_1);
        int pdf = text.indexOf("%PDF-");
        if (pdf >= 0 && pdf <= MAX_BEFORE_PDF) {
            return Optional.of(MediaType.PDF);
        }
        if (text.startsWith("RIFF") && text.startsWith("WAVE", 8)) {
            return Optional.of(MediaType.WAV);
        }
        if (text.startsWith("OggS")) {
            return Optional.of(MediaType.OGG);
        }
        if (text.startsWith("#!AMR")) {
            return Optional.of(MediaType.AMR);
        }
        if (text.startsWith("ID3") || beginsWithFrame(head)) {
            return Optional.of(MediaType.MP3);
        }
        if (text.startsWith("FUJIFILMCCD-RAW")) {
            return Optional.of(MediaType.RAF);
        }
        return text.startsWith("FOVb") ? Optional.of(MediaType.X3F) : Optional.empty();
    }

    /** A frame of MPEG audio, layer III, without a tag before it. Source: ISO/IEC 11172-3 section 2.4.1.3. */
    private static boolean beginsWithFrame(byte[] head) {
        if (head.length < 4 || (head[0] & 0xFF) != 0xFF || (head[1] & 0xE6) != 0xE2 || (head[1] & 0x18) == 0x08) {
            return false;
        }
        int rate = head[2] >> 4 & 0xF;
        return rate != 0 && rate != 0xF && (head[2] & 0x0C) != 0x0C;
    }
}
