package quarterlight.demo;

import java.util.ArrayList;
import java.util.List;

/** Where the inspector pinned the photos; near-duplicates are left without a pin. */
final class Pins {
    static final List<String> HEADER = List.of("photo", "zone", "shows", "caption", "mark");

    private Pins() {}

    static List<List<String>> of(Story story) {
        List<List<String>> rows = new ArrayList<>();
        for (Shot shot : story.shots()) {
            if (shot.caption().isEmpty()) {
                continue;
            }
            for (String zone : shot.zones()) {
                rows.add(List.of(shot.file(), zone, shot.shows(), shot.caption(), shot.mark()));
            }
        }
        return rows;
    }
}
