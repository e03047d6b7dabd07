package quarterlight.photo.decode;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Iterator;
import java.util.Locale;
import javax.imageio.ImageIO;
import javax.imageio.ImageReadParam;
import javax.imageio.ImageReader;
import javax.imageio.stream.FileImageInputStream;
import quarterlight.photo.MediaType;
import quarterlight.photo.PictureUnreadable;
import quarterlight.photo.header.JpegHeader;
import quarterlight.photo.pixels.PictureBounds;

/** Decodes JPEG, PNG and TIFF by the readers of the Java platform, every n-th pixel if a smaller picture is wanted. */
public final class ImageIoDecoder implements PictureDecoder {
    /** The reader skips pixels instead of averaging them; so many decoded to one wanted along a side keep edges from jagging. */
    private static final int SPARE = 2;
    /** Small pictures come from the same full reading of the file, so more pixels to average cost little. */
    private static final int SPARE_SMALL = 3;

    private static final int SMALL = 640;
    private static final long MAX_DECODED = 24_000_000;

    private final PictureBounds bounds;

    ImageIoDecoder(PictureBounds bounds) {
        this.bounds = bounds;
    }

    @Override
    public boolean reads(MediaType type) {
        return type == MediaType.JPEG || type == MediaType.PNG || type == MediaType.TIFF;
    }

    @Override
    public BufferedImage decode(Path file, MediaType type, int atLeast) throws PictureUnreadable {
        Iterator<ImageReader> readers =
                ImageIO.getImageReadersByFormatName(type.word().toLowerCase(Locale.ROOT));
        if (!readers.hasNext()) {
            throw new PictureUnreadable(file, type.word() + " cannot be shown here");
        }
        ImageReader reader = readers.next();
        try (FileImageInputStream in = new FileImageInputStream(file.toFile())) {
            if (type == MediaType.JPEG) {
                checkJpeg(file);
            }
            reader.setInput(in, true, true);
            int width = reader.getWidth(0);
            int height = reader.getHeight(0);
            bounds.check(file, width, height, Files.size(file), type != MediaType.JPEG);
            ImageReadParam param = reader.getDefaultReadParam();
            int step = Math.max(1, Math.max(width, height) / (atLeast * (atLeast <= SMALL ? SPARE_SMALL : SPARE)));
            while ((long) (width / step) * (height / step) > MAX_DECODED
                    && Math.max(width, height) / (step + 1) >= atLeast) {
                step++;
            }
            param.setSourceSubsampling(step, step, 0, 0);
            return reader.read(0, param);
        } catch (IOException | RuntimeException e) {
            throw new PictureUnreadable(file, "its picture data is damaged, or of a kind that cannot be shown", e);
        } finally {
            reader.dispose();
        }
    }

    /** The platform's reader holds a progressive JPEG whole in native memory, so its claim is checked before it is touched. */
    private void checkJpeg(Path file) throws IOException, PictureUnreadable {
        JpegHeader header = JpegHeader.read(file);
        bounds.check(file, header.width().orElse(0), header.height().orElse(0), Files.size(file), header.progressive());
    }
}
