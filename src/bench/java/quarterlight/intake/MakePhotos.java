package quarterlight.intake;

import java.awt.image.BufferedImage;
import java.awt.image.DataBufferInt;
import java.io.BufferedOutputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.ByteOrder;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.util.Random;
import java.util.stream.IntStream;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageWriteParam;
import javax.imageio.ImageWriter;
import javax.imageio.stream.MemoryCacheImageOutputStream;
import net.coobird.thumbnailator.resizers.Resizers;
import org.apache.commons.imaging.formats.jpeg.exif.ExifRewriter;
import org.apache.commons.imaging.formats.tiff.JpegImageData;
import org.apache.commons.imaging.formats.tiff.constants.ExifTagConstants;
import org.apache.commons.imaging.formats.tiff.constants.TiffTagConstants;
import org.apache.commons.imaging.formats.tiff.write.TiffOutputDirectory;
import org.apache.commons.imaging.formats.tiff.write.TiffOutputSet;

/**
 * Makes photos to measure with: {@code MakePhotos FOLDER COUNT}. Each has 4032 x 3024 pixels of edges, gradients and noise as a sensor gives,
 * about 3.7 MB of JPEG, capture time, orientation and an embedded small picture; no two have the same content. The pictures are of a few
 * kinds, the files differ by their Exif data.
 */
public final class MakePhotos {
    private static final int WIDTH = 4032;
    private static final int HEIGHT = 3024;
    private static final int PICTURES = 8;
    private static final int SMALL = 160;
    private static final float QUALITY = 0.9f;
    private static final double NOISE = 6.1;
    private static final DateTimeFormatter EXIF = DateTimeFormatter.ofPattern("uuuu:MM:dd HH:mm:ss");
    private static final LocalDateTime START = LocalDateTime.of(2026, 5, 4, 9, 0);

    private MakePhotos() {}

    public static void main(String[] args) throws IOException {
        Path folder = Files.createDirectories(Path.of(args[0]));
        int count = Integer.parseInt(args[1]);
        for (int picture = 0; picture < Math.min(PICTURES, count); picture++) {
            BufferedImage drawn = drawn(picture);
            byte[] jpeg = jpeg(drawn, QUALITY);
            byte[] small = jpeg(small(drawn), 0.75f);
            for (int number = picture; number < count; number += PICTURES) {
                Path file = folder.resolve(String.format("IMG_%05d.JPG", number));
                try (OutputStream out = new BufferedOutputStream(Files.newOutputStream(file))) {
                    new ExifRewriter().updateExifMetadataLossless(jpeg, out, exif(number, small));
                }
            }
        }
    }

    private static TiffOutputSet exif(int number, byte[] small) throws IOException {
        TiffOutputSet set = new TiffOutputSet(ByteOrder.BIG_ENDIAN);
        TiffOutputDirectory root = set.getOrCreateRootDirectory();
        root.add(TiffTagConstants.TIFF_TAG_ORIENTATION, (short) (number % 3 == 0 ? 6 : 1));
        root.add(TiffTagConstants.TIFF_TAG_MAKE, "Lumenary");
        root.add(TiffTagConstants.TIFF_TAG_MODEL, "Field 3");
        TiffOutputDirectory exif = set.getOrCreateExifDirectory();
        String time = EXIF.format(START.plusSeconds(7L * number));
        exif.add(ExifTagConstants.EXIF_TAG_DATE_TIME_ORIGINAL, time);
        exif.add(ExifTagConstants.EXIF_TAG_DATE_TIME_DIGITIZED, time);
        TiffOutputDirectory second = new TiffOutputDirectory(1, set.byteOrder);
        set.addDirectory(second);
        second.setJpegImageData(new JpegImageData(0, small.length, small));
        return set;
    }

    private static BufferedImage drawn(int seed) {
        BufferedImage image = new BufferedImage(WIDTH, HEIGHT, BufferedImage.TYPE_INT_RGB);
        int[] rgb = ((DataBufferInt) image.getRaster().getDataBuffer()).getData();
        Random shape = new Random(seed);
        double[] waves = shape.doubles(14, 0.2, 1).toArray();
        IntStream.range(0, HEIGHT).parallel().forEach(y -> row(rgb, y, waves, new Random(seed * 100_003L + y)));
        return image;
    }

    private static void row(int[] rgb, int y, double[] waves, Random noise) {
        for (int x = 0; x < WIDTH; x++) {
            double light = 110 + 50 * Math.sin(waves[0] * x / 700 + waves[1] * y / 500);
            for (int i = 2; i + 1 < waves.length; i += 2) {
                boolean edge = Math.sin(waves[i] * x / (20 + 9 * i) + waves[i + 1] * y / (15 + 7 * i)) > 0.9;
                light += edge ? 14 : 0;
            }
            double grain = NOISE * noise.nextGaussian();
            int red = level(light + 12 * waves[3] + grain + NOISE / 2 * noise.nextGaussian());
            int green = level(light + grain);
            int blue = level(light - 14 * waves[5] + grain + NOISE / 2 * noise.nextGaussian());
            rgb[y * WIDTH + x] = red << 16 | green << 8 | blue;
        }
    }

    private static int level(double value) {
        return (int) Math.max(0, Math.min(255, Math.round(value)));
    }

    private static BufferedImage small(BufferedImage image) {
        BufferedImage small = new BufferedImage(SMALL, SMALL * HEIGHT / WIDTH, BufferedImage.TYPE_INT_RGB);
        Resizers.PROGRESSIVE.resize(image, small);
        return small;
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
}
