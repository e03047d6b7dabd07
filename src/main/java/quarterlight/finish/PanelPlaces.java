package quarterlight.finish;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import quarterlight.car.ZoneId;
import quarterlight.finish.model.Panel;

/**
 * Where each zone stands among the panels of the model. Zones of which nothing is known are alike but for how prone they
 * are to be touched, and say nothing of the car: one of each kind stands for all.
 *
 * @param panels those of the model
 * @param places by zone
 */
record PanelPlaces(List<Panel> panels, Map<ZoneId, Integer> places) {
    PanelPlaces {
        panels = List.copyOf(panels);
        places = Map.copyOf(places);
    }

    /** @param all panel by panel as the zones */
    static PanelPlaces of(List<ZoneEvidence> zones, List<Panel> all) {
        List<Panel> panels = new ArrayList<>();
        Map<ZoneId, Integer> places = new HashMap<>();
        Map<Double, Integer> unknown = new HashMap<>();
        for (int n = 0; n < zones.size(); n++) {
            Panel panel = all.get(n);
            if (zones.get(n).isJudged()) {
                places.put(zones.get(n).zone(), panels.size());
                panels.add(panel);
            } else {
                Integer place = unknown.get(panel.proneness());
                if (place == null) {
                    place = panels.size();
                    unknown.put(panel.proneness(), place);
                    panels.add(panel.unknown());
                }
                places.put(zones.get(n).zone(), place);
            }
        }
        return new PanelPlaces(panels, places);
    }

    int of(ZoneId zone) {
        return places.get(zone);
    }
}
