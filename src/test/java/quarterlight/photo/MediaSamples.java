package quarterlight.photo;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.time.temporal.ChronoUnit;
import java.util.HexFormat;
import javax.sound.sampled.AudioFileFormat;
import javax.sound.sampled.AudioFormat;
import javax.sound.sampled.AudioInputStream;
import javax.sound.sampled.AudioSystem;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.encryption.AccessPermission;
import org.apache.pdfbox.pdmodel.encryption.StandardProtectionPolicy;
import org.apache.pdfbox.pdmodel.font.PDType1Font;
import org.apache.pdfbox.pdmodel.font.Standard14Fonts;

/** Small papers, sounds and files of cameras' own formats, made by other libraries or by hand from their published structure. */
public final class MediaSamples {
    private MediaSamples() {}

    /** A paper in A4 with a sentence on each page; the first bears a red square of a tenth of its width at its top left. */
    public static Path paper(Path file, String... sentences) throws IOException {
        try (PDDocument document = new PDDocument()) {
            for (String sentence : sentences) {
                page(document, PDRectangle.A4, sentence);
            }
            document.save(file.toFile());
        }
        return file;
    }

    public static void page(PDDocument document, PDRectangle size, String sentence) throws IOException {
        PDPage page = new PDPage(size);
        document.addPage(page);
        try (PDPageContentStream out = new PDPageContentStream(document, page)) {
            out.setNonStrokingColor(1f, 0f, 0f);
            out.addRect(0, size.getHeight() * 0.9f, size.getWidth() * 0.1f, size.getHeight() * 0.1f);
            out.fill();
            out.setNonStrokingColor(0f, 0f, 0f);
            out.beginText();
            out.setFont(new PDType1Font(Standard14Fonts.FontName.HELVETICA), 18);
            out.newLineAtOffset(72, size.getHeight() / 2);
            out.showText(sentence);
            out.endText();
        }
    }

    public static Path lockedPaper(Path file) throws IOException {
        try (PDDocument document = new PDDocument()) {
            page(document, PDRectangle.A4, "locked");
            document.protect(new StandardProtectionPolicy("owner", "user", new AccessPermission()));
            document.save(file.toFile());
        }
        return file;
    }

    /** Empty pages, each an object of its own, as a generator of hostile files writes them. */
    public static Path longPaper(Path file, int pages) throws IOException {
        StringBuilder pdf = new StringBuilder("%PDF-1.4\n");
        StringBuilder places = new StringBuilder("xref\n0 " + (pages + 3) + "\n0000000000 65535 f \n");
        object(pdf, places, "1 0 obj<</Type/Catalog/Pages 2 0 R>>endobj\n");
        StringBuilder kids = new StringBuilder();
        for (int i = 0; i < pages; i++) {
            kids.append(i + 3).append(" 0 R ");
        }
        object(
                pdf,
                places,
                "2 0 obj<</Type/Pages/MediaBox[0 0 200 100]/Count " + pages + "/Kids[" + kids + "]>>endobj\n");
        for (int i = 0; i < pages; i++) {
            object(pdf, places, (i + 3) + " 0 obj<</Type/Page/Parent 2 0 R>>endobj\n");
        }
        int start = pdf.length();
        pdf.append(places)
                .append("trailer<</Root 1 0 R/Size ")
                .append(pages + 3)
                .append(">>\nstartxref\n")
                .append(start)
                .append("\n%%EOF\n");
        return Files.writeString(file, pdf, StandardCharsets.ISO_8859_1);
    }

    private static void object(StringBuilder pdf, StringBuilder places, String text) {
        places.append("0".repeat(10 - Integer.toString(pdf.length()).length()))
                .append(pdf.length())
                .append(" 00000 n \n");
        pdf.append(text);
    }

    /** Silence of 8000 samples a second, 16 bits, one channel. */
    public static Path wav(Path file, double seconds) throws IOException {
        byte[] samples = new byte[(int) Math.round(seconds * 8000) * 2];
        AudioFormat format = new AudioFormat(8000, 16, 1, true, false);
        try (AudioInputStream in =
                new AudioInputStream(new ByteArrayInputStream(samples), format, samples.length / 2)) {
            AudioSystem.write(in, AudioFileFormat.Type.WAVE, file.toFile());
        }
        return file;
    }

    /** The sound with a chunk {@code bext} behind it that says when it was recorded (EBU Tech 3285). */
    public static Path wavWithTime(Path file, double seconds, String day, String time) throws IOException {
        byte[] plain = Files.readAllBytes(wav(file, seconds));
        byte[] bext = new byte[602];
        put(bext, 320, day);
        put(bext, 330, time);
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ByteBuffer size = ByteBuffer.allocate(4).order(ByteOrder.LITTLE_ENDIAN).putInt(plain.length - 8 + 8 + 602);
        out.write(plain, 0, 4);
        out.write(size.array());
        out.writeBytes("WAVE".getBytes(StandardCharsets.ISO_8859_1));
        out.writeBytes("bext".getBytes(StandardCharsets.ISO_8859_1));
        out.write(ByteBuffer.allocate(4)
                .order(ByteOrder.LITTLE_ENDIAN)
                .putInt(602)
                .array());
        out.writeBytes(bext);
        out.write(plain, 12, plain.length - 12);
        return Files.write(file, out.toByteArray());
    }

    private static void put(byte[] into, int at, String text) {
        byte[] bytes = text.getBytes(StandardCharsets.ISO_8859_1);
        System.arraycopy(bytes, 0, into, at, bytes.length);
    }

    /** Frames of 20 ms each of the narrow band codec at 12.2 kbit/s (RFC 4867 section 5). */
    public static Path amr(Path file, int frames) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        out.writeBytes("#!AMR\n".getBytes(StandardCharsets.ISO_8859_1));
        for (int i = 0; i < frames; i++) {
            out.write(0x3C);
            out.writeBytes(new byte[31]);
        }
        return Files.write(file, out.toByteArray());
    }

    /** Frames of 1152 samples each, 128 kbit/s at 44.1 kHz, layer III (ISO/IEC 11172-3). */
    public static Path mp3(Path file, int frames) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        for (int i = 0; i < frames; i++) {
            out.writeBytes(HexFormat.of().parseHex("fffb9000"));
            out.writeBytes(new byte[413]);
        }
        return Files.write(file, out.toByteArray());
    }

    /** The containers of a memo as phones write them (ISO/IEC 14496-12): brand, creation time, length, one track of sound, no samples. */
    public static Path memo(Path file, String brand, LocalDateTime utc, double seconds) throws IOException {
        long since1904 = ChronoUnit.SECONDS.between(LocalDateTime.of(1904, 1, 1, 0, 0), utc);
        byte[] mvhd =
                join(u32(0), u32(since1904), u32(since1904), u32(1000), u32(Math.round(seconds * 1000)), new byte[80]);
        byte[] hdlr = join(u32(0), u32(0), ascii("soun"), new byte[13]);
        byte[] tkhd = join(u32(7), new byte[80]);
        byte[] moov = join(box("mvhd", mvhd), box("trak", join(box("tkhd", tkhd), box("mdia", box("hdlr", hdlr)))));
        return Files.write(file, join(box("ftyp", join(ascii(brand), u32(0), ascii(brand))), box("moov", moov)));
    }

    /** A camera's own file whose preview is the JPEG; its Exif block says how it is turned and when it was taken. */
    public static Path cr3(Path file, byte[] jpeg, byte[] mainBlock, byte[] exifBlock) throws IOException {
        byte[] camera = box(
                "uuid",
                join(
                        HexFormat.of().parseHex("85c0b687820f11e08111f4ce462b6a48"),
                        box("CMT1", mainBlock),
                        box("CMT2", exifBlock)));
        byte[] prvw = box("PRVW", join(u32(0), new byte[8], u32(jpeg.length), jpeg));
        byte[] preview =
                box("uuid", join(HexFormat.of().parseHex("eaf42b5e1c984b88b9fbb7dc406e4d16"), new byte[8], prvw));
        return Files.write(
                file, join(box("ftyp", join(ascii("crx "), u32(1), ascii("crx isom"))), box("moov", camera), preview));
    }

    public static Path raf(Path file, byte[] jpeg) throws IOException {
        byte[] head = new byte[148];
        put(head, 0, "FUJIFILMCCD-RAW ");
        ByteBuffer.wrap(head).putInt(84, 148).putInt(88, jpeg.length);
        return Files.write(file, join(head, jpeg, new byte[64]));
    }

    public static Path x3f(Path file, byte[] jpeg) throws IOException {
        byte[] head = join(ascii("FOVb"), new byte[60]);
        byte[] section =
                join(ascii("SECi"), little(0x20000), little(2), little(18), little(0), little(0), little(0), jpeg);
        byte[] directory = join(
                ascii("SECd"), little(0x20000), little(1), little(head.length), little(section.length), ascii("IMA2"));
        return Files.write(file, join(head, section, directory, little(head.length + section.length)));
    }

    /** A TIFF structure, big-endian, with one directory of one entry. */
    public static byte[] tiffOfShort(int tag, int value) {
        return join(ascii("MM"), u16(42), u32(8), u16(1), u16(tag), u16(3), u32(1), u16(value), u16(0), u32(0));
    }

    /** The same with a text. */
    public static byte[] tiffOfText(int tag, String text) {
        byte[] bytes = join(ascii(text), new byte[1]);
        return join(ascii("MM"), u16(42), u32(8), u16(1), u16(tag), u16(2), u32(bytes.length), u32(26), u32(0), bytes);
    }

    private static byte[] box(String type, byte[] contents) {
        return join(u32(contents.length + 8L), ascii(type), contents);
    }

    private static byte[] ascii(String text) {
        return text.getBytes(StandardCharsets.ISO_8859_1);
    }

    private static byte[] u32(long value) {
        return ByteBuffer.allocate(4).putInt((int) value).array();
    }

    private static byte[] u16(int value) {
        return ByteBuffer.allocate(2).putShort((short) value).array();
    }

    private static byte[] little(int value) {
        return ByteBuffer.allocate(4)
                .order(ByteOrder.LITTLE_ENDIAN)
                .putInt(value)
                .array();
    }

    private static byte[] join(byte[]... parts) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        for (byte[] part : parts) {
            out.writeBytes(part);
        }
        return out.toByteArray();
    }
}
