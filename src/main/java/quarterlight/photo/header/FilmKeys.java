package quarterlight.photo.header;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import quarterlight.photo.bytes.ByteView;
import quarterlight.photo.bytes.MediaBoxes;
import quarterlight.photo.bytes.MediaBoxes.Box;
import quarterlight.visit.photo.CameraId;
import quarterlight.visit.photo.Position;

/**
 * Named texts that phones put into their films: maker, model, place. Source: QuickTime File Format, metadata atoms (keys, ilst); place by ISO 6709.
 *
 * @param texts by the last part of their names: {@code make}, {@code model}, {@code location.ISO6709}
 */
public record FilmKeys(Map<String, String> texts) {
    private static final int MAX_KEYS = 1000;
    private static final int MAX_TEXT_BYTES = 4096;
    private static final String FAMILY = "com.apple.quicktime.";
    private static final Pattern PLACE = Pattern.compile("([+-]\\d{1,2}(?:\\.\\d+)?)([+-]\\d{1,3}(?:\\.\\d+)?).*");

    public FilmKeys {
        texts = Map.copyOf(texts);
    }

    /** @param movie the parts of the movie box; phones put the names there, general tools among the user data */
    static FilmKeys read(ByteView file, List<Box> movie) throws IOException {
        Optional<Box> meta = MediaBoxes.first(movie, "meta");
        Optional<Box> user = MediaBoxes.first(movie, "udta");
        if (meta.isEmpty() && user.isPresent()) {
            meta = MediaBoxes.first(MediaBoxes.within(file, user.get()), "meta");
        }
        if (meta.isEmpty() || meta.get().length() < 16) {
            return new FilmKeys(Map.of());
        }
        boolean plain = file.fourLetters(meta.get().start() + 4).equals("hdlr");
        List<Box> parts = MediaBoxes.between(
                file, meta.get().start() + (plain ? 0 : 4), meta.get().end());
        Optional<Box> keys = MediaBoxes.first(parts, "keys");
        Optional<Box> values = MediaBoxes.first(parts, "ilst");
        if (keys.isEmpty() || values.isEmpty() || keys.get().length() < 8) {
            return new FilmKeys(Map.of());
        }
        List<Box> names =
                MediaBoxes.between(file, keys.get().start() + 8, keys.get().end());
        Map<String, String> texts = new HashMap<>();
        for (Box item : MediaBoxes.within(file, values.get())) {
            long index = file.u32(item.start() - 4);
            Optional<Box> data = MediaBoxes.first(MediaBoxes.within(file, item), "data");
            if (index >= 1 && index <= Math.min(MAX_KEYS, names.size()) && data.isPresent()) {
                String name = text(file, names.get((int) index - 1), 0);
                if (name.startsWith(FAMILY)) {
                    texts.put(name.substring(FAMILY.length()), text(file, data.get(), 8));
                }
            }
        }
        return new FilmKeys(texts);
    }

    private static String text(ByteView file, Box box, int skip) throws IOException {
        long length = Math.min(MAX_TEXT_BYTES, box.length() - skip);
        return length <= 0
                ? ""
                : new String(file.bytes(box.start() + skip, (int) length), StandardCharsets.UTF_8).strip();
    }

    Optional<CameraId> camera() {
        return CameraId.of(text("make"), text("model"), Optional.empty());
    }

    /** What ties the film to the photo it was taken with. */
    Optional<String> contentId() {
        return text("content.identifier");
    }

    Optional<Position> position() {
        return text("location.ISO6709").flatMap(place -> {
            Matcher form = PLACE.matcher(place);
            if (!form.matches()) {
                return Optional.empty();
            }
            double latitude = Double.parseDouble(form.group(1));
            double longitude = Double.parseDouble(form.group(2));
            return Math.abs(latitude) <= 90 && Math.abs(longitude) <= 180
                    ? Optional.of(new Position(latitude, longitude))
                    : Optional.empty();
        });
    }

    private Optional<String> text(String name) {
        return Optional.ofNullable(texts.get(name)).filter(text -> !text.isEmpty());
    }
}
