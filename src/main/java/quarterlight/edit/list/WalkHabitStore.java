package quarterlight.edit.list;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import quarterlight.settings.WalkFolder;
import quarterlight.visit.VisitRecord;
import quarterlight.walk.PastWalk;
import quarterlight.walk.WalkHabits;
import quarterlight.walk.WalkShots;

/**
 * The habit of the house: how the user walked in earlier visits, for suggestions in this one. Reads and writes small files in the settings
 * folder; not for the event thread.
 */
public final class WalkHabitStore {
    private final WalkFolder walks;

    /** @param settings the settings folder of the user; need not exist */
    public WalkHabitStore(Path settings) {
        walks = new WalkFolder(Objects.requireNonNull(settings, "settings"));
    }

    /**
     * What earlier visits tell.
     *
     * @param visits how many of them are remembered, this one left out
     * @param remarks a sentence for each remembered walk that could not be read; never a reason to stop
     */
    public record Known(WalkHabits habits, int visits, List<String> remarks) {
        public Known {
            Objects.requireNonNull(habits, "habits");
            remarks = List.copyOf(remarks);
        }
    }

    /** What earlier visits tell for this one, which does not count itself. */
    public Known of(VisitRecord visit) {
        PastWalk atHand = WalkShots.remembered(visit);
        WalkFolder.Remembered remembered = walks.read();
        int others = (int) remembered.walks().stream()
                .filter(walk -> !walk.sameVisit(atHand))
                .count();
        return new Known(PastWalk.habitsFor(atHand, remembered.walks()), others, remembered.remarks());
    }

    /**
     * Remembers the walk of a visit in place of what was remembered of it; call it after its pins have changed, at the latest when the visit is
     * closed. A visit in which fewer than two photos are pinned is forgotten.
     *
     * @return a sentence if it could not be written; never a reason to stop
     */
    public List<String> learn(VisitRecord visit) {
        return new ArrayList<>(walks.keep(WalkShots.remembered(visit)));
    }
}
