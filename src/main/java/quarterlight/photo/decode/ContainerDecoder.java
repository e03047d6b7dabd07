package quarterlight.photo.decode;

import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.bytedeco.ffmpeg.avcodec.AVCodecParameters;
import org.bytedeco.ffmpeg.avcodec.AVPacket;
import org.bytedeco.ffmpeg.avformat.AVStream;
import org.bytedeco.ffmpeg.avformat.AVStreamGroup;
import org.bytedeco.ffmpeg.avformat.AVStreamGroupTileGrid;
import org.bytedeco.ffmpeg.global.avcodec;
import org.bytedeco.ffmpeg.global.avformat;
import quarterlight.photo.MediaType;
import quarterlight.photo.PictureUnreadable;
import quarterlight.photo.bytes.ByteView;
import quarterlight.photo.film.FilmFrames;
import quarterlight.photo.film.MediaDecoding;
import quarterlight.photo.film.MediaFile;
import quarterlight.photo.header.HeifHeader;
import quarterlight.photo.header.PictureHeader;
import quarterlight.photo.header.WebpHeader;
import quarterlight.photo.pixels.ColorProfile;
import quarterlight.photo.pixels.FramePixels;
import quarterlight.photo.pixels.PictureBounds;

/**
 * Decodes HEIC, AVIF and WebP by ffmpeg, and of a film its poster. A HEIC picture that comes as a grid of tiles is put together at the size wanted;
 * HEIC and AVIF are turned as their container says.
 * <p>Source: ISO/IEC 23008-12 (grid items, irot, imir).
 */
public final class ContainerDecoder implements PictureDecoder {
    private static final int MAX_TILES = 4096;
    private static final int MAX_REDUCTION = 16;
    private static final long MAX_WEBP_BYTES = 64L << 20;

    /**
     * Memory that the library for AV1 takes for a picture in one piece, measured with 20 million pixels: 385 MB. Where it finds too little it calls the
     * picture damaged, so it is told beforehand.
     */
    private static final int AV1_BYTES_PER_PIXEL = 20;

    private final PictureBounds bounds;
    private final long roomBytes;

    /** @param roomBytes what a picture may take in this process */
    ContainerDecoder(PictureBounds bounds, long roomBytes) {
        this.bounds = bounds;
        this.roomBytes = roomBytes;
    }

    @Override
    public boolean reads(MediaType type) {
        return switch (type) {
            case HEIC, AVIF, WEBP, MP4, MOV, THREE_GP -> true;
            default -> false;
        };
    }

    @Override
    public BufferedImage decode(Path file, MediaType type, int atLeast) throws PictureUnreadable {
        if (!MediaFile.available()) {
            throw new PictureUnreadable(
                    file, type.word() + " cannot be shown here, since the native part for it is not installed");
        }
        try {
            return switch (type) {
                case WEBP -> webp(file, atLeast);
                case HEIC, AVIF -> still(file, atLeast);
                case MP4, MOV, THREE_GP -> FilmFrames.poster(file).picture();
                default -> throw new IllegalArgumentException(type + " is read by others");
            };
        } catch (IOException | RuntimeException e) {
            throw new PictureUnreadable(file, "its picture data is damaged, or of a kind that cannot be shown", e);
        }
    }

    private BufferedImage webp(Path file, int atLeast) throws IOException, PictureUnreadable {
        PictureHeader header;
        try (ByteView view = ByteView.open(file)) {
            header = WebpHeader.read(view);
        }
        long bytes = Files.size(file);
        bounds.check(file, header.width().orElse(0), header.height().orElse(0), bytes, true);
        if (bytes > MAX_WEBP_BYTES) {
            throw new PictureUnreadable(file, "it is too long for a WebP file");
        }
        byte[] data = Files.readAllBytes(file);
        AVPacket packet = avcodec.av_packet_alloc();
        try (MediaDecoding decoding = MediaDecoding.of(avcodec.AV_CODEC_ID_WEBP, bounds.mostPixelsAtOnce())) {
            if (avcodec.av_new_packet(packet, data.length) < 0) {
                throw new IOException("no room for " + data.length + " bytes");
            }
            packet.data().capacity(data.length).put(data);
            if (!decoding.send(packet) || !decoding.receive()) {
                throw new IOException("the WebP data is damaged, or is a moving picture");
            }
            int width = decoding.frame().width();
            int height = decoding.frame().height();
            int reduction = reduction(width, height, atLeast);
            return FramePixels.of(decoding.frame(), Math.max(1, width / reduction), Math.max(1, height / reduction));
        } finally {
            avcodec.av_packet_free(packet);
        }
    }

    private BufferedImage still(Path file, int atLeast) throws IOException, PictureUnreadable {
        HeifHeader.Facts header;
        try (ByteView view = ByteView.open(file)) {
            header = HeifHeader.facts(view);
        }
        bounds.check(file, header.storedWidth(), header.storedHeight(), Files.size(file), true);
        int reduction = reduction(header.storedWidth(), header.storedHeight(), atLeast);
        try (MediaFile media = MediaFile.open(file)) {
            BufferedImage stored = media.context().nb_stream_groups() > 0
                    ? grid(media, media.context().stream_groups(0), reduction)
                    : single(media, reduction);
            BufferedImage fitted = Pictures.fitted(Pictures.plain(stored), atLeast);
            BufferedImage standard = header.profile().isPresent()
                    ? new ColorProfile(header.profile().get()).toStandard(fitted)
                    : fitted;
            return header.turning().turned(standard);
        }
    }

    private BufferedImage single(MediaFile media, int reduction) throws IOException {
        int index = 0;
        for (int i = 0; i < media.streams(); i++) {
            if ((media.stream(i).disposition() & avformat.AV_DISPOSITION_DEFAULT) != 0) {
                index = i;
                break;
            }
        }
        if (media.streams() == 0) {
            throw new IOException("no picture in the container");
        }
        AVCodecParameters coding = media.stream(index).codecpar();
        if (coding.codec_id() == avcodec.AV_CODEC_ID_AV1
                && (long) coding.width() * coding.height() * AV1_BYTES_PER_PIXEL > roomBytes) {
            throw new OutOfMemoryError("AV1 of " + coding.width() + " x " + coding.height() + " pixels");
        }
        try (MediaDecoding decoding = MediaDecoding.of(coding, bounds.mostPixelsAtOnce())) {
            while (media.read()) {
                if (media.packet().stream_index() == index && decoding.send(media.packet())) {
                    decoding.end();
                    if (decoding.receive()) {
                        return FramePixels.of(
                                decoding.frame(),
                                Math.max(1, decoding.frame().width() / reduction),
                                Math.max(1, decoding.frame().height() / reduction));
                    }
                    break;
                }
            }
        }
        throw new IOException("the coded picture is damaged");
    }

    /** The strongest halving that leaves the long side at least as long as wanted. */
    private static int reduction(int width, int height, int atLeast) {
        int reduction = 1;
        while (reduction < MAX_REDUCTION && Math.max(width, height) / (2 * reduction) >= atLeast) {
            reduction *= 2;
        }
        return reduction;
    }

    private BufferedImage grid(MediaFile media, AVStreamGroup group, int wanted) throws IOException {
        AVStreamGroupTileGrid grid = group.params_tile_grid();
        int tiles = grid.nb_tiles();
        if (group.type() != avformat.AV_STREAM_GROUP_PARAMS_TILE_GRID || tiles < 1 || tiles > MAX_TILES) {
            throw new IOException("its tiles are of a kind that cannot be shown");
        }
        int reduction = wanted;
        AVStream first = group.streams(grid.offsets_idx(0));
        int tileWidth = first.codecpar().width();
        int tileHeight = first.codecpar().height();
        while (reduction > 1 && (tileWidth % reduction != 0 || tileHeight % reduction != 0)) {
            reduction /= 2;
        }
        if ((long) grid.coded_width() * grid.coded_height() > 2 * bounds.mostPixelsAtOnce()
                || (long) tileWidth * tileHeight > bounds.mostPixelsAtOnce()) {
            throw new IOException("its tiles are larger than the picture");
        }
        BufferedImage whole = new BufferedImage(
                Math.max(1, grid.width() / reduction),
                Math.max(1, grid.height() / reduction),
                BufferedImage.TYPE_INT_RGB);
        Graphics2D g = whole.createGraphics();
        int pasted = 0;
        try (MediaDecoding decoding = MediaDecoding.of(first.codecpar(), (long) tileWidth * tileHeight * 2)) {
            while (pasted < tiles && media.read()) {
                for (int tile = 0; tile < tiles; tile++) {
                    if (group.streams(grid.offsets_idx(tile)).index()
                            == media.packet().stream_index()) {
                        paste(g, decoding, media, grid, tile, reduction);
                        pasted++;
                    }
                }
            }
        } finally {
            g.dispose();
        }
        if (pasted < tiles) {
            throw new IOException("tiles are missing");
        }
        return whole;
    }

    private static void paste(
            Graphics2D g, MediaDecoding decoding, MediaFile media, AVStreamGroupTileGrid grid, int tile, int reduction)
            throws IOException {
        decoding.flush();
        if (!decoding.send(media.packet())) {
            throw new IOException("a tile is damaged");
        }
        decoding.end();
        if (!decoding.receive()) {
            throw new IOException("a tile is damaged");
        }
        BufferedImage pixels = FramePixels.of(
                decoding.frame(),
                Math.max(1, decoding.frame().width() / reduction),
                Math.max(1, decoding.frame().height() / reduction));
        g.drawImage(
                pixels,
                (grid.offsets_horizontal(tile) - grid.horizontal_offset()) / reduction,
                (grid.offsets_vertical(tile) - grid.vertical_offset()) / reduction,
                null);
    }
}
