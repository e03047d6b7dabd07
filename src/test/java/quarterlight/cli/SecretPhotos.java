package quarterlight.cli;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Random;
import javax.imageio.ImageIO;
import org.apache.commons.imaging.formats.jpeg.exif.ExifRewriter;
import org.apache.commons.imaging.formats.jpeg.xmp.JpegXmpRewriter;
import org.apache.commons.imaging.formats.tiff.JpegImageData;
import org.apache.commons.imaging.formats.tiff.constants.ExifTagConstants;
import org.apache.commons.imaging.formats.tiff.constants.TiffDirectoryType;
import org.apache.commons.imaging.formats.tiff.constants.TiffTagConstants;
import org.apache.commons.imaging.formats.tiff.write.TiffOutputDirectory;
import org.apache.commons.imaging.formats.tiff.write.TiffOutputSet;

/** Photos that carry everything a buyer must not get: place, owner, serial number, comments, an own small picture, and a magenta plate. */
final class SecretPhotos {
    static final double LATITUDE_DEG = 39.739153;
    static final double LONGITUDE_DEG = -104.984703;
    static final int WIDTH_PX = 1200;
    static final int HEIGHT_PX = 900;
    /** The plate lies in this square of every photo. */
    static final int PLATE_FROM_PX = 300;

    static final int PLATE_TO_PX = 600;

    /** Words that stand in the files and in nothing made for a buyer. */
    static final List<String> WORDS = List.of(
            "SERIAL7731",
            "OWNERSNAME",
            "SECRETARTIST",
            "SECRETCOMMENT",
            "SECRETXMP",
            "SECRETJPEGCOMMENT",
            "Fieldview",
            "fieldview");

    private SecretPhotos() {}

    static void write(Path file, int seed, String taken) throws IOException {
        ByteArrayOutputStream plain = new ByteArrayOutputStream();
        ImageIO.write(picture(seed), "jpg", plain);
        ByteArrayOutputStream withExif = new ByteArrayOutputStream();
        new ExifRewriter()
                .updateExifMetadataLossless(
                        new ByteArrayInputStream(plain.toByteArray()), withExif, exif(taken, plain));
        ByteArrayOutputStream withXmp = new ByteArrayOutputStream();
        new JpegXmpRewriter()
                .updateXmpXml(
                        withExif.toByteArray(),
                        withXmp,
                        "<x:xmpmeta xmlns:x=\"adobe:ns:meta/\"><rdf:RDF xmlns:rdf=\"http://www.w3.org/1999/02/22-rdf-syntax-ns#\">"
                                + "<rdf:Description xmlns:exif=\"http://ns.adobe.com/exif/1.0/\" exif:GPSLatitude=\"39,44.349N\""
                                + " exif:UserComment=\"SECRETXMP\"/></rdf:RDF></x:xmpmeta>");
        Files.createDirectories(file.getParent());
        Files.write(file, withComment(withXmp.toByteArray()));
    }

    private static BufferedImage picture(int seed) {
        BufferedImage image = new BufferedImage(WIDTH_PX, HEIGHT_PX, BufferedImage.TYPE_INT_RGB);
        Graphics2D g = image.createGraphics();
        Random random = new Random(seed);
        for (int i = 0; i < 300; i++) {
            int gray = 60 + random.nextInt(120);
            g.setColor(new Color(gray, gray, gray));
            g.fillRect(random.nextInt(WIDTH_PX), random.nextInt(HEIGHT_PX), 150, 100);
        }
        g.setColor(Color.MAGENTA);
        g.fillRect(PLATE_FROM_PX, PLATE_FROM_PX, PLATE_TO_PX - PLATE_FROM_PX, PLATE_TO_PX - PLATE_FROM_PX);
        g.dispose();
        return image;
    }

    private static TiffOutputSet exif(String taken, ByteArrayOutputStream small) throws IOException {
        TiffOutputSet exif = new TiffOutputSet();
        TiffOutputDirectory root = exif.getOrCreateRootDirectory();
        root.add(TiffTagConstants.TIFF_TAG_MAKE, "Orrin");
        root.add(TiffTagConstants.TIFF_TAG_MODEL, "Fieldview");
        root.add(TiffTagConstants.TIFF_TAG_ARTIST, "SECRETARTIST");
        TiffOutputDirectory details = exif.getOrCreateExifDirectory();
        details.add(ExifTagConstants.EXIF_TAG_DATE_TIME_ORIGINAL, taken);
        details.add(ExifTagConstants.EXIF_TAG_BODY_SERIAL_NUMBER, "SERIAL7731");
        details.add(ExifTagConstants.EXIF_TAG_CAMERA_OWNER_NAME, "OWNERSNAME");
        details.add(ExifTagConstants.EXIF_TAG_USER_COMMENT, "SECRETCOMMENT");
        exif.setGpsInDegrees(LONGITUDE_DEG, LATITUDE_DEG);
        BufferedImage tiny = new BufferedImage(160, 120, BufferedImage.TYPE_INT_RGB);
        Graphics2D g = tiny.createGraphics();
        g.drawImage(ImageIO.read(new ByteArrayInputStream(small.toByteArray())), 0, 0, 160, 120, null);
        g.dispose();
        ByteArrayOutputStream jpeg = new ByteArrayOutputStream();
        ImageIO.write(tiny, "jpg", jpeg);
        TiffOutputDirectory sub =
                new TiffOutputDirectory(TiffDirectoryType.TIFF_DIRECTORY_IFD1.directoryType, exif.byteOrder);
        sub.setJpegImageData(new JpegImageData(0, jpeg.size(), jpeg.toByteArray()));
        exif.addDirectory(sub);
        return exif;
    }

    /** A comment segment after the start of the image. */
    private static byte[] withComment(byte[] jpeg) throws IOException {
        byte[] words = "SECRETJPEGCOMMENT".getBytes(StandardCharsets.US_ASCII);
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        out.write(jpeg, 0, 2);
        out.write(new byte[] {(byte) 0xFF, (byte) 0xFE, 0, (byte) (words.length + 2)});
        out.write(words);
        out.write(jpeg, 2, jpeg.length - 2);
        return out.toByteArray();
    }
}
