package quarterlight.demo;

import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageWriteParam;
import javax.imageio.ImageWriter;
import javax.imageio.stream.MemoryCacheImageOutputStream;
import org.apache.commons.imaging.common.RationalNumber;
import org.apache.commons.imaging.formats.jpeg.exif.ExifRewriter;
import org.apache.commons.imaging.formats.tiff.JpegImageData;
import org.apache.commons.imaging.formats.tiff.constants.ExifTagConstants;
import org.apache.commons.imaging.formats.tiff.constants.GpsTagConstants;
import org.apache.commons.imaging.formats.tiff.constants.TiffDirectoryType;
import org.apache.commons.imaging.formats.tiff.constants.TiffTagConstants;
import org.apache.commons.imaging.formats.tiff.taginfos.TagInfoAscii;
import org.apache.commons.imaging.formats.tiff.write.TiffOutputDirectory;
import org.apache.commons.imaging.formats.tiff.write.TiffOutputSet;

/** Writes a drawn photo as the file a camera would have left: JPEG with Exif. */
final class PhotoWriter {
    private static final DateTimeFormatter EXIF = DateTimeFormatter.ofPattern("yyyy:MM:dd HH:mm:ss", Locale.ROOT);
    private static final DateTimeFormatter GPS_DAY = DateTimeFormatter.ofPattern("yyyy:MM:dd", Locale.ROOT);
    private static final TagInfoAscii OFFSET =
            new TagInfoAscii("OffsetTime", 0x9010, -1, TiffDirectoryType.EXIF_DIRECTORY_EXIF_IFD);
    private static final TagInfoAscii OFFSET_ORIGINAL =
            new TagInfoAscii("OffsetTimeOriginal", 0x9011, -1, TiffDirectoryType.EXIF_DIRECTORY_EXIF_IFD);
    private static final TagInfoAscii SERIAL =
            new TagInfoAscii("BodySerialNumber", 0xA431, -1, TiffDirectoryType.EXIF_DIRECTORY_EXIF_IFD);
    private static final int MAX_BYTES = 98_000;
    private final Story story;

    PhotoWriter(Story story) {
        this.story = story;
    }

    byte[] bytes(Shot shot, BufferedImage upright) throws IOException {
        BufferedImage stored = shot.portrait() ? turnedLeft(upright) : upright;
        byte[] jpeg = jpeg(stored, 0.84f);
        for (float quality = 0.78f; jpeg.length > MAX_BYTES && quality > 0.3f; quality -= 0.08f) {
            jpeg = jpeg(stored, quality);
        }
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        new ExifRewriter().updateExifMetadataLossless(jpeg, out, exif(shot, stored));
        return out.toByteArray();
    }

    private TiffOutputSet exif(Shot shot, BufferedImage stored) throws IOException {
        TiffOutputSet set = new TiffOutputSet();
        TiffOutputDirectory root = set.getOrCreateRootDirectory();
        root.add(TiffTagConstants.TIFF_TAG_MAKE, shot.camera().maker());
        root.add(TiffTagConstants.TIFF_TAG_MODEL, shot.camera().model());
        root.add(TiffTagConstants.TIFF_TAG_ORIENTATION, (short) (shot.portrait() ? 6 : 1));
        root.add(TiffTagConstants.TIFF_TAG_DATE_TIME, EXIF.format(shot.recorded()));
        TiffOutputDirectory exif = set.getOrCreateExifDirectory();
        exif.add(ExifTagConstants.EXIF_TAG_DATE_TIME_ORIGINAL, EXIF.format(shot.recorded()));
        exif.add(ExifTagConstants.EXIF_TAG_DATE_TIME_DIGITIZED, EXIF.format(shot.recorded()));
        exif.add(ExifTagConstants.EXIF_TAG_FNUMBER, RationalNumber.valueOf(2.8));
        exif.add(ExifTagConstants.EXIF_TAG_EXPOSURE_TIME, RationalNumber.valueOf(1 / 125.0));
        exif.add(ExifTagConstants.EXIF_TAG_EXIF_IMAGE_WIDTH, (short) stored.getWidth());
        exif.add(ExifTagConstants.EXIF_TAG_EXIF_IMAGE_LENGTH, (short) stored.getHeight());
        if (shot.camera() == Camera.PHONE) {
            exif.add(ExifTagConstants.EXIF_TAG_SUB_SEC_TIME_ORIGINAL, shot.fraction());
            exif.add(OFFSET, story.offset().getId());
            exif.add(OFFSET_ORIGINAL, story.offset().getId());
        } else {
            exif.add(SERIAL, shot.camera().serial());
            TiffOutputDirectory second = new TiffOutputDirectory(1, set.byteOrder);
            set.addDirectory(second);
            byte[] small = jpeg(reduced(stored, 160), 0.72f);
            second.setJpegImageData(new JpegImageData(0, small.length, small));
        }
        if (shot.placed()) {
            place(set, shot);
        }
        return set;
    }

    private void place(TiffOutputSet set, Shot shot) throws IOException {
        set.setGpsInDegrees(
                Double.parseDouble(story.car().get("longitude")),
                Double.parseDouble(story.car().get("latitude")));
        LocalDateTime utc = shot.truth().minusSeconds(story.offset().getTotalSeconds());
        TiffOutputDirectory gps = set.getOrCreateGpsDirectory();
        gps.add(GpsTagConstants.GPS_TAG_GPS_DATE_STAMP, GPS_DAY.format(utc));
        gps.add(
                GpsTagConstants.GPS_TAG_GPS_TIME_STAMP,
                new RationalNumber(utc.getHour(), 1),
                new RationalNumber(utc.getMinute(), 1),
                new RationalNumber(utc.getSecond(), 1));
    }

    private static byte[] jpeg(BufferedImage image, float quality) throws IOException {
        ImageWriter writer = ImageIO.getImageWritersByFormatName("jpeg").next();
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (MemoryCacheImageOutputStream stream = new MemoryCacheImageOutputStream(out)) {
            ImageWriteParam param = writer.getDefaultWriteParam();
            param.setCompressionMode(ImageWriteParam.MODE_EXPLICIT);
            param.setCompressionQuality(quality);
            writer.setOutput(stream);
            writer.write(null, new IIOImage(image, null, null), param);
        } finally {
            writer.dispose();
        }
        return out.toByteArray();
    }

    /** As a camera held upright stores it: a quarter turn counterclockwise, to be shown with orientation 6. */
    private static BufferedImage turnedLeft(BufferedImage upright) {
        int w = upright.getWidth();
        int h = upright.getHeight();
        BufferedImage stored = new BufferedImage(h, w, BufferedImage.TYPE_INT_RGB);
        for (int y = 0; y < h; y++) {
            for (int x = 0; x < w; x++) {
                stored.setRGB(y, w - 1 - x, upright.getRGB(x, y));
            }
        }
        return stored;
    }

    private static BufferedImage reduced(BufferedImage image, int width) {
        BufferedImage half = image;
        while (half.getWidth() > width * 2) {
            half = scaled(half, half.getWidth() / 2);
        }
        return scaled(half, width);
    }

    private static BufferedImage scaled(BufferedImage image, int width) {
        int height = width * image.getHeight() / image.getWidth();
        BufferedImage small = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        Graphics2D g = small.createGraphics();
        g.setRenderingHint(RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BILINEAR);
        g.drawImage(image, 0, 0, width, height, null);
        g.dispose();
        return small;
    }
}
