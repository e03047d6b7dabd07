package quarterlight.ui.photos;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.SwingUtilities;
import quarterlight.capture.NearDuplicates;
import quarterlight.car.Zone;
import quarterlight.car.ZoneCatalog;
import quarterlight.car.ZoneId;
import quarterlight.diagram.Neighbors;
import quarterlight.edit.list.VisitLists;
import quarterlight.edit.list.WalkHabitStore;
import quarterlight.edit.spoken.WalkPlaces;
import quarterlight.table.TableUnreadable;
import quarterlight.table.list.CoverageTable;
import quarterlight.task.LatestWork;
import quarterlight.task.Threads;
import quarterlight.ui.kit.UiContext;
import quarterlight.ui.kit.visit.OpenVisit;
import quarterlight.ui.photos.list.PhotoHints;
import quarterlight.visit.VisitRecord;
import quarterlight.visit.photo.ClockSetting;
import quarterlight.visit.photo.Photo;
import quarterlight.visit.photo.PhotoId;
import quarterlight.walk.Suggestion;
import quarterlight.walk.WalkLine;
import quarterlight.walk.WalkModel;
import quarterlight.walk.WalkShots;
import quarterlight.walk.ZoneKin;
import quarterlight.walk.ZoneSuggestions;
import quarterlight.walk.said.PlaceSaid;

/**
 * Works out the likely zones of unpinned photos in the background after each change. The walk is laid out once; after a pin only its
 * surroundings are computed again.
 */
final class SuggestionWork {
    private static final System.Logger LOG = System.getLogger(SuggestionWork.class.getName());

    /** What is known when the question is asked. */
    private record Question(
            Path folder, VisitRecord visit, NearDuplicates alike, OpenVisit.Drawing drawing, List<Zone> zones) {}

    /** What the walk was laid out by. */
    private record Ground(
            List<Photo> photos,
            List<ClockSetting> clocks,
            java.time.ZoneId timezone,
            NearDuplicates alike,
            OpenVisit.Drawing drawing) {
        static Ground of(Question q) {
            return new Ground(
                    q.visit().photos(), q.visit().clocks(), q.visit().facts().timezone(), q.alike(), q.drawing());
        }
    }

    private final WalkHabitStore habits;
    private final ZoneCatalog catalog;
    private final Path settings;
    private final LatestWork<Question, Map<PhotoId, List<Suggestion>>> work;
    private Optional<Ground> ground = Optional.empty();
    private Optional<WalkLine> line = Optional.empty();

    /** @param arrived told on the event thread */
    SuggestionWork(UiContext parts, Consumer<Map<PhotoId, List<Suggestion>>> arrived) {
        this.habits = new WalkHabitStore(parts.settings().folder());
        this.catalog = parts.catalog();
        this.settings = parts.settings().folder();
        this.work = new LatestWork<>(
                "quarterlight-suggestions",
                SwingUtilities::invokeLater,
                (question, course) -> answer(question),
                arrived,
                parts.problems()::failed);
    }

    void request(OpenVisit visit, PhotoHints hints) {
        work.request(new Question(
                visit.folder(),
                visit.visit(),
                hints.duplicates(),
                visit.drawing(),
                catalog.zonesOf(visit.visit().facts().car().body())));
    }

    /** On the thread of the work alone. */
    private Map<PhotoId, List<Suggestion>> answer(Question q) {
        Ground now = Ground.of(q);
        if (ground.equals(Optional.of(now))) {
            line.orElseThrow().pins(WalkShots.pins(q.visit()));
        } else {
            WalkHabitStore.Known known = habits.of(q.visit());
            known.remarks().forEach(remark -> LOG.log(System.Logger.Level.INFO, remark));
            ZoneSuggestions suggestions = new ZoneSuggestions(
                    q.zones().stream().map(Zone::id).toList(),
                    Neighbors.of(q.drawing().diagram()).map(),
                    ZoneKin.of(q.zones()).inTurn(usualWalk(q)),
                    known.habits(),
                    WalkModel.V5);
            line = Optional.of(suggestions
                    .along(usualWalk(q))
                    .line(WalkShots.of(q.visit(), q.alike().sets()), said(q)));
            ground = Optional.of(now);
        }
        return line.orElseThrow().suggestions();
    }

    /** What was said on the walk; lists of words that cannot be used are told in the Words station. */
    private List<PlaceSaid> said(Question q) {
        try {
            return WalkPlaces.of(q.visit(), q.folder(), catalog, settings);
        } catch (TableUnreadable e) {
            LOG.log(System.Logger.Level.INFO, "suggestions go without words: " + e.getMessage());
            return List.of();
        }
    }

    /** The user's own way round the car, else the program's; a list that cannot be used is told in the Notes station. */
    private List<ZoneId> usualWalk(Question q) {
        try {
            return CoverageTable.load(VisitLists.folder(q.folder(), settings)).walk();
        } catch (TableUnreadable e) {
            LOG.log(System.Logger.Level.INFO, "suggestions go by the usual walk: " + e.getMessage());
            return CoverageTable.load().walk();
        }
    }

    /** Ends the work; what this walk tells of the user's habits is kept for the next visit. */
    void stop(OpenVisit visit) {
        work.stop();
        if (visit.isEditable()) {
            VisitRecord last = visit.visit();
            Threads.start("quarterlight-habits", () -> habits.learn(last)
                    .forEach(remark -> LOG.log(System.Logger.Level.WARNING, remark)));
        }
    }
}
