package quarterlight.page.report;

import quarterlight.capture.CorrectedTimes;
import quarterlight.car.ZoneCatalog;
import quarterlight.diagram.BodyDiagram;
import quarterlight.diagram.ZonePlaces;
import quarterlight.page.PinKey;
import quarterlight.page.ReportSelection;
import quarterlight.page.print.PageWorkers;
import quarterlight.page.report.picture.BuyerPictures;
import quarterlight.page.report.picture.ReportPictures;
import quarterlight.page.report.text.Shots;
import quarterlight.visit.VisitRecord;

/**
 * The photos of a report, chosen and numbered, while they are being prepared for print. They need nothing that is worked out of a
 * visit but its times, so they are started before all else. Immutable.
 */
public final class ReportPhotos {
    private final ZonePlaces places;
    private final PinKey key;
    private final Shots shots;
    private final ReportPictures.Started started;

    private ReportPhotos(ZonePlaces places, PinKey key, Shots shots, ReportPictures.Started started) {
        this.places = places;
        this.key = key;
        this.shots = shots;
        this.started = started;
    }

    /** Starts preparing them. */
    public static ReportPhotos start(
            VisitRecord visit,
            ZoneCatalog catalog,
            BodyDiagram diagram,
            ZonePlaces places,
            BuyerPictures source,
            PageWorkers workers) {
        CorrectedTimes times = CorrectedTimes.of(visit);
        PinKey key = PinKey.shown(visit, times, catalog, diagram, places);
        Shots shots = Shots.of(visit, times, key, ReportSelection.of(visit));
        return new ReportPhotos(
                places,
                key,
                shots,
                ReportPictures.start(shots.all().stream().map(Shots.Shot::frame).toList(), source::print, workers));
    }

    /** The middles of the diagram's zones. */
    public ZonePlaces places() {
        return places;
    }

    PinKey key() {
        return key;
    }

    Shots shots() {
        return shots;
    }

    ReportPictures.Started started() {
        return started;
    }
}
