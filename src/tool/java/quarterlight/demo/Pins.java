package quarterlight.demo;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Where the inspector pinned the photos; near-duplicates are left without a pin. */
final class Pins {
    static final List<String> HEADER = List.of("photo", "zone", "view", "x", "y", "shows", "caption", "mark");

    private Pins() {}

    static List<List<String>> of(Story story, ZonePoints points) {
        List<List<String>> rows = new ArrayList<>();
        for (Shot shot : story.shots()) {
            if (shot.caption().isEmpty()) {
                continue;
            }
            for (String zone : shot.zones()) {
                Optional<ZonePoints.Spot> spot = points.next(zone);
                rows.add(List.of(
                        shot.file(),
                        zone,
                        spot.map(ZonePoints.Spot::view).orElse(""),
                        spot.map(ZonePoints.Spot::x).orElse(""),
                        spot.map(ZonePoints.Spot::y).orElse(""),
                        shot.shows(),
                        shot.caption(),
                        shot.mark()));
            }
        }
        return rows;
    }
}
