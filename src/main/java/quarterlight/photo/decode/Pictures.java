package quarterlight.photo.decode;

import java.awt.AlphaComposite;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import javax.imageio.ImageIO;
import net.coobird.thumbnailator.Thumbnails;
import quarterlight.photo.MediaType;
import quarterlight.photo.PictureUnreadable;
import quarterlight.photo.exif.Preview;
import quarterlight.photo.header.JpegHeader;
import quarterlight.photo.header.Orientation;
import quarterlight.photo.paper.PaperFile;
import quarterlight.photo.pixels.JpegWriter;
import quarterlight.photo.pixels.PictureBounds;
import quarterlight.photo.pixels.RgbPixels;

/**
 * Pictures to look at: upright, in sRGB, at the size wanted. Safe for several threads.
 */
public final class Pictures {
    /** Long side of a thumbnail, pixels. */
    public static final int THUMBNAIL = 320;
    /** Long side that fills a screen, pixels. */
    public static final int SCREEN = 2016;

    private static final int QUALITY = 85;

    private final List<PictureDecoder> decoders;

    public Pictures(List<PictureDecoder> decoders) {
        this.decoders = List.copyOf(decoders);
    }

    /** With all decoders that this computer has. */
    public static Pictures usual() {
        return within(Long.MAX_VALUE);
    }

    /**
     * The same in a process that may use only so much memory for a picture.
     *
     * @param roomBytes a decoder that can tell beforehand that it needs more throws an {@link OutOfMemoryError}
     */
    public static Pictures within(long roomBytes) {
        PictureDecoder platform = new ImageIoDecoder(PictureBounds.USUAL);
        PictureDecoder jpeg = new ScaledJpegDecoder(PictureBounds.USUAL, platform);
        return new Pictures(List.of(
                jpeg,
                platform,
                new ContainerDecoder(PictureBounds.USUAL, roomBytes),
                new EmbeddedDecoder(jpeg),
                new PaperDecoder()));
    }

    /** Loads what the first picture needs; may be called beside other work, so that the first need not wait. */
    public static void prepare() {
        jpeg(new BufferedImage(1, 1, BufferedImage.TYPE_INT_RGB));
    }

    /**
     * A picture file, upright, its long side at most {@code longSide} pixels; a smaller picture keeps its size.
     *
     * @param orientation Exif orientation 1 to 8; HEIC and AVIF are turned by their container, so by their decoder
     * @return {@link BufferedImage#TYPE_INT_RGB}, sRGB
     */
    public BufferedImage upright(Path file, MediaType type, int orientation, int longSide) throws PictureUnreadable {
        return upright(file, type, orientation, longSide, longSide);
    }

    /** The same for a reader who reduces it again: its long side is from {@code longSide} to half as much again, as comes cheapest. */
    public BufferedImage uprightRoughly(Path file, MediaType type, int orientation, int longSide)
            throws PictureUnreadable {
        return upright(file, type, orientation, longSide, longSide + longSide / 2);
    }

    private BufferedImage upright(Path file, MediaType type, int orientation, int atLeast, int atMost)
            throws PictureUnreadable {
        PictureDecoder decoder = decoders.stream()
                .filter(candidate -> candidate.reads(type))
                .findFirst()
                .orElseThrow(() -> new PictureUnreadable(file, type.word() + " cannot be shown yet"));
        BufferedImage stored = decoder.decode(file, type, atLeast);
        try {
            boolean turnedAlready = type == MediaType.HEIC || type == MediaType.AVIF;
            BufferedImage sized = atMost == atLeast ? exactly(plain(stored), atLeast) : fitted(stored, atMost);
            return Orientation.of(turnedAlready ? 1 : orientation).turned(plain(sized));
        } catch (RuntimeException e) {
            throw new PictureUnreadable(file, "its colors are of a kind that cannot be shown", e);
        }
    }

    /**
     * A page of a paper, its long side at most {@code longSide} pixels.
     *
     * @param number from 1
     */
    public static BufferedImage page(Path file, int number, int longSide) throws PictureUnreadable {
        try (PaperFile paper = PaperFile.open(file)) {
            return exactly(plain(paper.page(number, longSide)), longSide);
        }
    }

    /** The camera's own small picture, upright, under the same bounds as any picture; a quick first look. */
    public BufferedImage upright(Preview preview, int orientation) throws PictureUnreadable {
        try {
            Path file = Files.createTempFile("quarterlight-preview", ".jpg");
            try {
                Files.write(file, preview.jpeg());
                return upright(file, MediaType.JPEG, orientation, THUMBNAIL);
            } finally {
                Files.deleteIfExists(file);
            }
        } catch (IOException e) {
            throw new PictureUnreadable(Path.of(""), "its preview is damaged", e);
        }
    }

    /** A JPEG in plain sRGB without a profile, as thumbnails are kept. */
    public static byte[] jpeg(BufferedImage image) {
        return JpegWriter.jpeg(image, QUALITY);
    }

    /** A thumbnail read back. */
    public static BufferedImage ofThumbnail(byte[] jpeg) throws PictureUnreadable {
        try {
            JpegHeader header = JpegHeader.read(new ByteArrayInputStream(Objects.requireNonNull(jpeg, "jpeg")));
            if (Math.max(header.width().orElse(0), header.height().orElse(0)) > THUMBNAIL) {
                throw new PictureUnreadable(Path.of(""), "the thumbnail is larger than any that was made here");
            }
            BufferedImage image = ImageIO.read(new ByteArrayInputStream(jpeg));
            if (image == null) {
                throw new PictureUnreadable(Path.of(""), "the thumbnail is damaged");
            }
            return image;
        } catch (IOException | RuntimeException e) {
            throw new PictureUnreadable(Path.of(""), "the thumbnail is damaged", e);
        }
    }

    /** Reduced to fit; the same picture if it fits already. */
    public static BufferedImage fitted(BufferedImage image, int longSide) {
        int longest = Math.max(image.getWidth(), image.getHeight());
        if (longest <= longSide) {
            return image;
        }
        double scale = (double) longSide / longest;
        return RgbPixels.reduced(
                plain(image), Math.max(1, (int) Math.round(image.getWidth() * scale)), Math.max(1, (int)
                        Math.round(image.getHeight() * scale)));
    }

    /** Reduced to the size of a page, an export or a screen, where a look matters more than time; the same picture if it fits already. */
    public static BufferedImage exactly(BufferedImage image, int longSide) {
        int longest = Math.max(image.getWidth(), image.getHeight());
        if (longest <= longSide) {
            return image;
        }
        double scale = (double) longSide / longest;
        try {
            return Thumbnails.of(image)
                    .forceSize(Math.max(1, (int) Math.round(image.getWidth() * scale)), Math.max(1, (int)
                            Math.round(image.getHeight() * scale)))
                    .imageType(BufferedImage.TYPE_INT_RGB)
                    .asBufferedImage();
        } catch (IOException e) {
            throw new UncheckedIOException("a picture in memory cannot be read", e);
        }
    }

    /** In sRGB, see-through parts on white. */
    public static BufferedImage plain(BufferedImage image) {
        if (image.getType() == BufferedImage.TYPE_INT_RGB) {
            return image;
        }
        BufferedImage rgb = new BufferedImage(image.getWidth(), image.getHeight(), BufferedImage.TYPE_INT_RGB);
        Graphics2D g = rgb.createGraphics();
        try {
            g.setComposite(AlphaComposite.SrcOver);
            g.setColor(Color.WHITE);
            g.fillRect(0, 0, rgb.getWidth(), rgb.getHeight());
            g.drawImage(image, 0, 0, null);
        } finally {
            g.dispose();
        }
        return rgb;
    }
}
