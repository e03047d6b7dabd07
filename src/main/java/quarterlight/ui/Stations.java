package quarterlight.ui;

import java.util.ArrayList;
import java.util.List;
import quarterlight.ui.kit.DeskParts;
import quarterlight.ui.kit.OpenVisit;
import quarterlight.ui.kit.Station;
import quarterlight.ui.kit.StationScreen;
import quarterlight.ui.pages.PagesScreen;

/** The screens of a visit, one per station. */
final class Stations {
    private Stations() {}

    static List<StationScreen> of(DeskParts parts, OpenVisit visit, DeskActions actions) {
        List<StationScreen> screens = new ArrayList<>();
        for (Station station : Station.values()) {
            screens.add(
                    station == Station.PAGES ? new PagesScreen(parts, visit) : new HeldScreen(parts, visit, station));
        }
        return screens;
    }
}
