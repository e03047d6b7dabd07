package quarterlight.photo;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.IntStream;
import quarterlight.visit.photo.MediaKind;

/**
 * A format of photo, film, paper or sound, told by a file's first bytes and never by its name; of words and sidecars by their names, beside what
 * they are about.
 */
public enum MediaType {
    JPEG("JPEG", MediaKind.PHOTO, "jpg jpeg jpe"),
    HEIC("HEIC", MediaKind.PHOTO, "heic heif hif"),
    AVIF("AVIF", MediaKind.PHOTO, "avif"),
    PNG("PNG", MediaKind.PHOTO, "png"),
    TIFF("TIFF", MediaKind.PHOTO, "tif tiff"),
    WEBP("WebP", MediaKind.PHOTO, "webp"),
    CR3("CR3", MediaKind.PHOTO, "cr3"),
    RAF("RAF", MediaKind.PHOTO, "raf"),
    X3F("X3F", MediaKind.PHOTO, "x3f"),
    MP4("MP4", MediaKind.FILM, "mp4 m4v"),
    MOV("MOV", MediaKind.FILM, "mov qt"),
    THREE_GP("3GP", MediaKind.FILM, "3gp 3g2"),
    PDF("PDF", MediaKind.PAPER, "pdf"),
    M4A("M4A", MediaKind.SOUND, "m4a m4b"),
    THREE_GP_SOUND("3GP sound", MediaKind.SOUND, ""),
    MP3("MP3", MediaKind.SOUND, "mp3"),
    WAV("WAV", MediaKind.SOUND, "wav wave"),
    OGG("Ogg", MediaKind.SOUND, "ogg oga opus"),
    AMR("AMR", MediaKind.SOUND, "amr awb"),
    VTT("WebVTT", MediaKind.WORDS, "vtt"),
    SRT("SRT", MediaKind.WORDS, "srt"),
    /** Lines that begin with a time, or the JSON of a recognizer; no name claims it. */
    TIMED_TEXT("timed text", MediaKind.WORDS, ""),
    XMP("XMP", MediaKind.SIDECAR, "xmp");

    /** How many bytes of a file's beginning are enough to tell its format. */
    public static final int HEAD_BYTES = 64;

    private static final List<String> HEIF_BRANDS =
            List.of("heic", "heix", "hevc", "hevx", "heim", "heis", "hevm", "hevs", "mif1", "msf1");
    private static final List<String> MOVIE_ATOMS = List.of("moov", "mdat", "wide", "free", "skip", "pnot");

    private final String word;
    private final MediaKind kind;
    private final String endings;

    MediaType(String word, MediaKind kind, String endings) {
        this.word = word;
        this.kind = kind;
        this.endings = " " + endings + " ";
    }

    /** As it stands in the visit and on screen. */
    public String word() {
        return word;
    }

    public MediaKind kind() {
        return kind;
    }

    /** Whether it is a camera's own format, of which only the picture that it carries can be shown. */
    public boolean isRaw() {
        return this == CR3 || this == RAF || this == X3F;
    }

    /** The format whose word this is, as a photo's record gives it. */
    public static Optional<MediaType> ofWord(String word) {
        return Arrays.stream(values()).filter(type -> type.word.equals(word)).findFirst();
    }

    /** The format that a file's name claims. */
    public static Optional<MediaType> claimedBy(String name) {
        String ending = name.substring(name.lastIndexOf('.') + 1).toLowerCase(Locale.ROOT);
        return Arrays.stream(values())
                .filter(type -> type.endings.contains(" " + ending + " "))
                .findFirst();
    }

    /**
     * The format of a file by its first bytes.
     *
     * @param head up to {@link #HEAD_BYTES} bytes, or all of a shorter file
     */
    public static Optional<MediaType> of(byte[] head) {
        if (starts(head, 0xFF, 0xD8, 0xFF)) {
            return Optional.of(JPEG);
        }
        if (starts(head, 0x89, 'P', 'N', 'G', 0x0D, 0x0A, 0x1A, 0x0A)) {
            return Optional.of(PNG);
        }
        if (starts(head, 'I', 'I', 0x2A, 0) || starts(head, 'M', 'M', 0, 0x2A)) {
            return Optional.of(TIFF);
        }
        if (text(head, 0).equals("RIFF") && text(head, 8).equals("WEBP")) {
            return Optional.of(WEBP);
        }
        if (text(head, 4).equals("ftyp")) {
            return ofBrands(head);
        }
        Optional<MediaType> other = MediaHeads.of(head);
        if (other.isPresent()) {
            return other;
        }
        return MOVIE_ATOMS.contains(text(head, 4)) ? Optional.of(MOV) : Optional.empty();
    }

    /** Whether a file begins as a JPEG does, though what follows is damaged. */
    public static boolean beginsAsJpeg(byte[] head) {
        return starts(head, 0xFF, 0xD8);
    }

    private static Optional<MediaType> ofBrands(byte[] head) {
        String major = text(head, 8);
        if (major.startsWith("avi")) {
            return Optional.of(AVIF);
        }
        if (HEIF_BRANDS.contains(major)) {
            boolean avif =
                    compatible(head).contains("avif") && !compatible(head).contains("heic");
            return Optional.of(avif ? AVIF : HEIC);
        }
        if (major.equals("qt  ")) {
            return Optional.of(MOV);
        }
        if (major.startsWith("3g")) {
            return Optional.of(THREE_GP);
        }
        if (major.startsWith("M4A") || major.startsWith("M4B")) {
            return Optional.of(M4A);
        }
        if (major.equals("crx ")) {
            return Optional.of(CR3);
        }
        return Optional.of(MP4);
    }

    private static List<String> compatible(byte[] head) {
        return IntStream.iterate(16, at -> at + 4 <= head.length, at -> at + 4)
                .mapToObj(at -> text(head, at))
                .toList();
    }

    private static boolean starts(byte[] head, int... bytes) {
        if (head.length < bytes.length) {
            return false;
        }
        for (int i = 0; i < bytes.length; i++) {
            if ((head[i] & 0xFF) != bytes[i]) {
                return false;
            }
        }
        return true;
    }

    private static String text(byte[] head, int from) {
        return head.length < from + 4 ? "" : new String(head, from, 4, StandardCharsets.ISO_8859_1);
    }
}
