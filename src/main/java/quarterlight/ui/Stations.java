package quarterlight.ui;

import quarterlight.ui.gauge.GaugeScreen;
import quarterlight.ui.kit.Command;
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

    /**
     * A screen of a station.
     *
     * @param beforePhotos what can be done where a visit has no photos yet
     */
    static StationScreen screen(
            Station station, UiContext parts, OpenVisit visit, Command takeWords, Command... beforePhotos) {
        return switch (station) {
            case PHOTOS -> new PhotosScreen(parts, visit, beforePhotos);
            case WORDS -> new WordsScreen(parts, visit, takeWords);
            case PAGES -> new PagesScreen(parts, visit);
            case GAUGE -> new GaugeScreen(parts, visit);
            case MARKS -> new MarksScreen(parts, visit);
            case RUST -> new RustScreen(parts, visit);
            case NOTES -> new NotesScreen(parts, visit);
        };
    }
}
