package quarterlight.cli;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import javax.imageio.ImageIO;
import org.apache.commons.imaging.formats.jpeg.exif.ExifRewriter;
import org.apache.commons.imaging.formats.tiff.constants.ExifTagConstants;
import org.apache.commons.imaging.formats.tiff.constants.TiffTagConstants;
import org.apache.commons.imaging.formats.tiff.write.TiffOutputDirectory;
import org.apache.commons.imaging.formats.tiff.write.TiffOutputSet;

/** Writes small JPEG files with true Exif. */
public final class TestPhotos {
    private TestPhotos() {}

    /** A photo by an invented camera, taken at the time given as Exif writes it. */
    public static Path write(Path file, int seed, String taken) {
        BufferedImage picture = new BufferedImage(80, 60, BufferedImage.TYPE_INT_RGB);
        Graphics2D g = picture.createGraphics();
        g.setColor(new Color(seed * 7919 & 0xFFFFFF));
        g.fillRect(10, 10, 30 + seed % 40, 20);
        g.dispose();
        return write(file, picture, taken);
    }

    /** A picture of one's own as a photo by the same camera. */
    public static Path write(Path file, BufferedImage picture, String taken) {
        ByteArrayOutputStream plain = new ByteArrayOutputStream();
        try {
            ImageIO.write(picture, "jpg", plain);
            TiffOutputSet exif = new TiffOutputSet();
            TiffOutputDirectory root = exif.getOrCreateRootDirectory();
            root.add(TiffTagConstants.TIFF_TAG_MAKE, "Orrin");
            root.add(TiffTagConstants.TIFF_TAG_MODEL, "Fieldview");
            exif.getOrCreateExifDirectory().add(ExifTagConstants.EXIF_TAG_DATE_TIME_ORIGINAL, taken);
            Files.createDirectories(file.getParent());
            try (OutputStream out = Files.newOutputStream(file)) {
                new ExifRewriter().updateExifMetadataLossless(new ByteArrayInputStream(plain.toByteArray()), out, exif);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return file;
    }
}
