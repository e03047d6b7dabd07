package quarterlight.demo;

import java.io.IOException;
import java.util.List;

/** What is true of a visit, for tests: photo times, orientation, finish. */
final class Truth {
    static final List<String> PHOTOS = List.of(
            "photo",
            "path",
            "maker",
            "model",
            "serial",
            "recorded",
            "fraction",
            "offset",
            "true_local",
            "true_utc",
            "orientation",
            "width",
            "height",
            "latitude",
            "longitude",
            "zone");
    static final List<String> FINISH = List.of("zone", "history", "level_mil");

    private Truth() {}

    static List<List<String>> photos(Story story) {
        return story.shots().stream().map(shot -> photo(story, shot)).toList();
    }

    private static List<String> photo(Story story, Shot shot) {
        boolean phone = shot.camera() == Camera.PHONE;
        return List.of(
                shot.file(),
                shot.path(),
                shot.camera().maker(),
                shot.camera().model(),
                shot.camera().serial(),
                shot.recorded().toString(),
                shot.fraction(),
                phone ? story.offset().getId() : "",
                shot.truth().toString(),
                shot.truth().minusSeconds(story.offset().getTotalSeconds()) + "Z",
                shot.portrait() ? "6" : "1",
                shot.portrait() ? "900" : "1200",
                shot.portrait() ? "1200" : "900",
                shot.placed() ? story.car().get("latitude") : "",
                shot.placed() ? story.car().get("longitude") : "",
                shot.zones().get(0));
    }

    static List<List<String>> finish(Story story) throws IOException {
        return Story.rows(story.folder().resolve("finish.csv"), ';').stream()
                .map(row -> List.of(row.get("zone"), row.get("history"), row.get("mil")))
                .toList();
    }
}
