package quarterlight.photo.header;

import java.io.IOException;
import java.time.LocalDateTime;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import quarterlight.photo.bytes.ByteView;
import quarterlight.photo.bytes.MediaBoxes;
import quarterlight.photo.bytes.MediaBoxes.Box;

/**
 * What a film's container says.
 * <p>Source: ISO/IEC 14496-12 sections 8.2.2 (mvhd) and 8.3.2 (tkhd): times count seconds since the start of 1904, UTC; 0 is unset.
 *
 * @param created creation time, UTC; empty if unset
 * @param seconds length of the film
 * @param width pixels as shown, with the container's own turning applied
 * @param height pixels as shown
 * @param keys named texts
 * @param soundOnly whether it has a track of sound and none of pictures
 */
public record FilmHeader(
        Optional<LocalDateTime> created,
        OptionalDouble seconds,
        OptionalInt width,
        OptionalInt height,
        FilmKeys keys,
        boolean soundOnly) {
    private static final LocalDateTime EPOCH = LocalDateTime.of(1904, 1, 1, 0, 0);
    private static final long LAST_SECOND = 1L << 34;
    static final FilmHeader UNREADABLE = new FilmHeader(
            Optional.empty(),
            OptionalDouble.empty(),
            OptionalInt.empty(),
            OptionalInt.empty(),
            new FilmKeys(Map.of()),
            false);

    static FilmHeader read(ByteView file) throws IOException {
        Optional<Box> moov = MediaBoxes.first(MediaBoxes.between(file, 0, file.length()), "moov");
        if (moov.isEmpty()) {
            return UNREADABLE;
        }
        List<Box> parts = MediaBoxes.within(file, moov.get());
        Optional<LocalDateTime> created = Optional.empty();
        OptionalDouble seconds = OptionalDouble.empty();
        Optional<Box> mvhd = MediaBoxes.first(parts, "mvhd");
        if (mvhd.isPresent()) {
            long at = mvhd.get().start() + 4;
            int wide = file.u8(mvhd.get().start()) == 1 ? 8 : 4;
            created = time(file.unsigned(at, wide));
            long scale = file.u32(at + 2L * wide);
            long length = file.unsigned(at + 2L * wide + 4, wide);
            if (scale > 0 && length >= 0 && length != 0xFFFFFFFFL) {
                seconds = OptionalDouble.of((double) length / scale);
            }
        }
        FilmKeys keys = FilmKeys.read(file, parts);
        for (Box track : parts) {
            if (track.type().equals("trak")) {
                Optional<Box> tkhd = MediaBoxes.first(MediaBoxes.within(file, track), "tkhd");
                if (tkhd.isPresent()) {
                    FilmHeader sized = sized(file, tkhd.get(), created, seconds, keys);
                    if (sized.width().isPresent()) {
                        return sized;
                    }
                }
            }
        }
        Set<String> tracks = tracks(file, parts);
        boolean soundOnly = tracks.contains("soun") && !tracks.contains("vide");
        return new FilmHeader(created, seconds, OptionalInt.empty(), OptionalInt.empty(), keys, soundOnly);
    }

    /** What the tracks hold, by the four letters of their handlers (ISO/IEC 14496-12 section 8.4.3). */
    private static Set<String> tracks(ByteView file, List<Box> parts) throws IOException {
        Set<String> kinds = new HashSet<>();
        for (Box track : parts) {
            if (track.type().equals("trak")) {
                Optional<Box> media = MediaBoxes.first(MediaBoxes.within(file, track), "mdia");
                Optional<Box> handler = media.isPresent()
                        ? MediaBoxes.first(MediaBoxes.within(file, media.get()), "hdlr")
                        : Optional.empty();
                if (handler.isPresent()) {
                    kinds.add(file.fourLetters(handler.get().start() + 8));
                }
            }
        }
        return kinds;
    }

    static Optional<LocalDateTime> time(long since1904) {
        return since1904 <= 0 || since1904 > LAST_SECOND ? Optional.empty() : Optional.of(EPOCH.plusSeconds(since1904));
    }

    private static FilmHeader sized(
            ByteView file, Box tkhd, Optional<LocalDateTime> created, OptionalDouble seconds, FilmKeys keys)
            throws IOException {
        long matrix = tkhd.start() + (file.u8(tkhd.start()) == 1 ? 52 : 40);
        int width = file.u16(matrix + 36);
        int height = file.u16(matrix + 40);
        if (width == 0 || height == 0) {
            return UNREADABLE;
        }
        boolean sideways = file.u32(matrix) == 0 && file.u32(matrix + 4) != 0;
        return new FilmHeader(
                created,
                seconds,
                OptionalInt.of(sideways ? height : width),
                OptionalInt.of(sideways ? width : height),
                keys,
                false);
    }
}
