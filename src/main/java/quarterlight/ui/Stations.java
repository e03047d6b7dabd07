package quarterlight.ui;

import quarterlight.ui.gauge.GaugeScreen;
import quarterlight.ui.kit.UiContext;
import quarterlight.ui.kit.visit.OpenVisit;
import quarterlight.ui.kit.visit.Station;
import quarterlight.ui.kit.visit.StationScreen;
import quarterlight.ui.marks.MarksScreen;
import quarterlight.ui.notes.NotesScreen;
import quarterlight.ui.pages.PagesScreen;
import quarterlight.ui.photos.PhotosScreen;
import quarterlight.ui.rust.RustScreen;
import quarterlight.ui.words.WordsScreen;

/** The screens of a visit, one per station. */
final class Stations {
    private Stations() {}

    static StationScreen screen(Station station, UiContext parts, OpenVisit visit, DeskActions actions) {
        return switch (station) {
            case PHOTOS -> new PhotosScreen(parts, visit, actions.takeIn(), actions.sheet());
            case WORDS -> new WordsScreen(parts, visit, actions.takeWords());
            case PAGES -> new PagesScreen(parts, visit);
            case GAUGE -> new GaugeScreen(parts, visit);
            case MARKS -> new MarksScreen(parts, visit);
            case RUST -> new RustScreen(parts, visit);
            case NOTES -> new NotesScreen(parts, visit);
        };
    }
}
