package quarterlight.ui.photos;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import quarterlight.car.ZoneId;
import quarterlight.diagram.Neighbors;
import quarterlight.ui.kit.DeskParts;
import quarterlight.ui.kit.LatestWork;
import quarterlight.ui.kit.OpenVisit;
import quarterlight.ui.photos.list.PhotoHints;
import quarterlight.ui.photos.list.PhotoItem;
import quarterlight.ui.photos.list.PhotoList;
import quarterlight.visit.PhotoId;
import quarterlight.walk.Shot;
import quarterlight.walk.Suggestion;
import quarterlight.walk.WalkHabits;
import quarterlight.walk.WalkModel;
import quarterlight.walk.ZoneSuggestions;

/** Works out the likely zones of unpinned photos in the background after each change; questions that were overtaken are left out. */
final class SuggestionWork {
    /** What is known when the question is asked. */
    private record Question(PhotoList list, PhotoHints hints, OpenVisit.Drawing drawing, List<ZoneId> zones) {}

    private final LatestWork<Question, Map<PhotoId, List<Suggestion>>> work;
    private Optional<OpenVisit.Drawing> prepared = Optional.empty();
    private Optional<ZoneSuggestions> suggestions = Optional.empty();

    /** @param arrived told on the event thread */
    SuggestionWork(DeskParts parts, Consumer<Map<PhotoId, List<Suggestion>>> arrived) {
        this.work = new LatestWork<>("quarterlight-suggestions", this::answer, arrived, parts.problems()::failed);
    }

    void request(OpenVisit visit, PhotoList list, PhotoHints hints) {
        work.request(new Question(list, hints, visit.drawing(), visit.zones()));
    }

    /** On the thread of the work alone. */
    private Map<PhotoId, List<Suggestion>> answer(Question question) {
        if (!prepared.equals(Optional.of(question.drawing()))) {
            suggestions = Optional.of(new ZoneSuggestions(
                    question.zones(), Neighbors.of(question.drawing().diagram()).map(), WalkHabits.NONE, WalkModel.V1));
            prepared = Optional.of(question.drawing());
        }
        return suggestions.orElseThrow().suggest(shots(question.list(), question.hints()));
    }

    /** Photos that have a time, in its order; one that looks like an earlier photo is its twin. */
    static List<Shot> shots(PhotoList list, PhotoHints hints) {
        Map<PhotoId, Integer> setOf = new HashMap<>();
        List<List<PhotoId>> sets = hints.duplicates().sets();
        for (int i = 0; i < sets.size(); i++) {
            for (PhotoId photo : sets.get(i)) {
                setOf.put(photo, i);
            }
        }
        Map<Integer, PhotoId> firstOf = new HashMap<>();
        Optional<Instant> start = list.items().stream().findFirst().flatMap(PhotoItem::at);
        List<Shot> shots = new ArrayList<>();
        for (PhotoItem item : list.items()) {
            if (item.at().isEmpty() || item.isAside()) {
                continue;
            }
            Optional<Integer> set = Optional.ofNullable(setOf.get(item.id()));
            Optional<PhotoId> twin = set.map(firstOf::get);
            set.ifPresent(number -> firstOf.putIfAbsent(number, item.id()));
            List<ZoneId> pinned = item.pins().stream()
                    .map(pin -> pin.value().zone())
                    .distinct()
                    .toList();
            double seconds =
                    Duration.between(start.orElseThrow(), item.at().get()).toMillis() / 1000.0;
            shots.add(new Shot(item.id(), seconds, pinned, twin));
        }
        return shots;
    }

    void stop() {
        work.stop();
    }
}
