package quarterlight.ui;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import quarterlight.ui.kit.DeskParts;
import quarterlight.ui.kit.OpenVisit;
import quarterlight.ui.kit.Station;
import quarterlight.ui.kit.StationScreen;
import quarterlight.ui.photos.PhotosScreen;

/** The screens of a visit, one per station. */
final class Stations {
    private Stations() {}

    static List<StationScreen> of(DeskParts parts, OpenVisit visit, DeskActions actions) {
        List<StationScreen> screens = new ArrayList<>();
        screens.add(new PhotosScreen(parts, visit, actions.takeIn()));
        for (Station station : EnumSet.complementOf(EnumSet.of(Station.PHOTOS))) {
            screens.add(new HeldScreen(parts, visit, station));
        }
        return screens;
    }
}
