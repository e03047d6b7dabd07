package quarterlight.ui;

import java.util.ArrayList;
import java.util.List;
import quarterlight.ui.kit.DeskParts;
import quarterlight.ui.kit.OpenVisit;
import quarterlight.ui.kit.Station;
import quarterlight.ui.kit.StationScreen;
import quarterlight.ui.marks.MarksScreen;
import quarterlight.ui.pages.PagesScreen;

/** The screens of a visit, one per station. */
final class Stations {
    private Stations() {}

    static List<StationScreen> of(DeskParts parts, OpenVisit visit, DeskActions actions) {
        List<StationScreen> screens = new ArrayList<>();
        for (Station station : Station.values()) {
            screens.add(
                    switch (station) {
                case MARKS -> new MarksScreen(parts, visit);
                case PAGES -> new PagesScreen(parts, visit);
                default -> new HeldScreen(parts, visit, station);
            });
        }
        return screens;
    }
}
