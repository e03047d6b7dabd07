package quarterlight.demo;

import java.time.Duration;
import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import org.apache.commons.csv.CSVRecord;

/**
 * One photo of the walk.
 *
 * @param truth when it was really taken, local time
 * @param recorded what the camera wrote
 * @param fraction digits after the second, "" for none
 */
record Shot(
        String id,
        Camera camera,
        LocalDateTime truth,
        LocalDateTime recorded,
        String fraction,
        long gapSeconds,
        String file,
        String scene,
        Params params,
        List<String> zones,
        String shows,
        String caption,
        String mark,
        String flags,
        long seed) {
    private static final DateTimeFormatter NAME = DateTimeFormatter.ofPattern("yyyyMMdd_HHmmss", Locale.ROOT);

    static Shot of(CSVRecord row, Camera camera, LocalDateTime truth, int number, Duration shift, long seed) {
        boolean phone = camera == Camera.PHONE;
        String fraction = phone ? String.format(Locale.ROOT, "%03d", Math.floorMod(seed * 7919, 1000)) : "";
        return new Shot(
                row.get("id"),
                camera,
                truth,
                phone ? truth : truth.minus(shift),
                fraction,
                Long.parseLong(row.get("after")),
                phone ? "IMG_" + NAME.format(truth) + ".jpg" : String.format(Locale.ROOT, "OF_%04d.JPG", number),
                row.get("scene"),
                Params.parse(row.get("params")),
                List.of(row.get("zones").split(" ")),
                row.get("shows"),
                row.get("caption"),
                row.get("mark"),
                row.get("flags"),
                seed);
    }

    boolean portrait() {
        return flags.contains("T");
    }

    boolean placed() {
        return flags.contains("gps");
    }

    String path() {
        return "photos/" + camera.folder() + "/" + file;
    }
}
