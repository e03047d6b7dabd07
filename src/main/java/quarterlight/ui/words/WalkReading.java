package quarterlight.ui.words;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiConsumer;
import java.util.function.Consumer;
import javax.swing.SwingUtilities;
import quarterlight.car.Car;
import quarterlight.edit.spoken.SpokenWords;
import quarterlight.edit.spoken.VisitWalk;
import quarterlight.marks.code.DatePatterns;
import quarterlight.task.LatestWork;
import quarterlight.ui.kit.UiContext;
import quarterlight.visit.VisitRecord;
import quarterlight.visit.photo.ClockSetting;
import quarterlight.visit.photo.MediaKind;
import quarterlight.visit.photo.Photo;
import quarterlight.words.TimedWords;

/** Reads the words of the visit in the background, again when there are others. Event thread only, save where said. */
final class WalkReading {
    /** What was said, and what a row is read against. */
    record Walk(VisitWalk walk, Map<String, TimedWords> words, DatePatterns patterns) {}

    /** What the drafts are worked out of. */
    private record Ground(List<Photo> recordings, Car car, List<ClockSetting> clocks) {
        static Ground of(VisitRecord visit) {
            return new Ground(
                    visit.photos().stream()
                            .filter(photo -> photo.file().kind() == MediaKind.WORDS
                                    || photo.file().kind() == MediaKind.FILM
                                    || photo.file().kind() == MediaKind.SOUND)
                            .toList(),
                    visit.facts().car(),
                    visit.clocks());
        }
    }

    private record Answer(VisitRecord visit, Walk walk) {}

    private final LatestWork<VisitRecord, Answer> work;
    private Optional<Ground> asked = Optional.empty();

    /** @param arrived told the walk with the visit that it was read from */
    WalkReading(UiContext parts, Path folder, BiConsumer<Walk, VisitRecord> arrived, Consumer<Exception> failed) {
        this.work = new LatestWork<>(
                "quarterlight-walk",
                SwingUtilities::invokeLater,
                (visit, course) -> {
                    VisitWalk walk = VisitWalk.of(
                            visit, folder, parts.catalog(), parts.settings().folder());
                    return new Answer(
                            visit,
                            new Walk(
                                    walk,
                                    SpokenWords.of(walk, folder),
                                    parts.work().patterns(folder)));
                },
                answer -> arrived.accept(answer.walk(), answer.visit()),
                failed);
    }

    /** True if the walk has to be read anew; it then arrives later. */
    boolean request(VisitRecord visit) {
        Ground ground = Ground.of(visit);
        if (asked.equals(Optional.of(ground))) {
            return false;
        }
        asked = Optional.of(ground);
        work.request(visit);
        return true;
    }

    void stop() {
        work.stop();
    }
}
