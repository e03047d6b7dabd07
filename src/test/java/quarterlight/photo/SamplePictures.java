package quarterlight.photo;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.ByteOrder;
import org.apache.commons.imaging.formats.jpeg.exif.ExifRewriter;
import org.apache.commons.imaging.formats.tiff.constants.ExifTagConstants;
import org.apache.commons.imaging.formats.tiff.constants.TiffTagConstants;
import org.apache.commons.imaging.formats.tiff.taginfos.TagInfoAscii;
import org.apache.commons.imaging.formats.tiff.write.TiffOutputDirectory;
import org.apache.commons.imaging.formats.tiff.write.TiffOutputSet;
import quarterlight.photo.decode.Pictures;

/** Drawn JPEG pictures whose Exif a library of others writes. */
public final class SamplePictures {
    private SamplePictures() {}

    /** A picture of squares; each seed has another pattern. */
    public static BufferedImage drawn(int width, int height, int seed) {
        BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        Graphics2D g = image.createGraphics();
        g.setColor(Color.LIGHT_GRAY);
        g.fillRect(0, 0, width, height);
        for (int i = 0; i < 12; i++) {
            g.setColor(new Color(40 + 17 * i % 200, (seed * 53 + 31 * i) % 256, (seed * 91 + 13 * i) % 256));
            g.fillRect((seed * 37 + i * 61) % width, (seed * 23 + i * 47) % height, width / 8, height / 9);
        }
        g.dispose();
        return image;
    }

    public static byte[] jpeg(int width, int height, int seed) {
        return Pictures.jpeg(drawn(width, height, seed));
    }

    /** The JPEG with Exif: original and digitized time, orientation, maker and model; an empty text leaves the tag out. */
    public static byte[] withExif(byte[] jpeg, String original, String digitized, int orientation) throws IOException {
        TiffOutputSet set = new TiffOutputSet(ByteOrder.BIG_ENDIAN);
        TiffOutputDirectory root = set.getOrCreateRootDirectory();
        root.add(TiffTagConstants.TIFF_TAG_ORIENTATION, (short) orientation);
        root.add(TiffTagConstants.TIFF_TAG_MAKE, "Lumenary");
        root.add(TiffTagConstants.TIFF_TAG_MODEL, "Field 3");
        root.add(TiffTagConstants.TIFF_TAG_DATE_TIME, "2001:02:03 04:05:06");
        TiffOutputDirectory exif = set.getOrCreateExifDirectory();
        put(exif, ExifTagConstants.EXIF_TAG_DATE_TIME_ORIGINAL, original);
        put(exif, ExifTagConstants.EXIF_TAG_DATE_TIME_DIGITIZED, digitized);
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        new ExifRewriter().updateExifMetadataLossless(new ByteArrayInputStream(jpeg), out, set);
        return out.toByteArray();
    }

    private static void put(TiffOutputDirectory directory, TagInfoAscii tag, String text) throws IOException {
        if (!text.isEmpty()) {
            directory.add(tag, text);
        }
    }
}
