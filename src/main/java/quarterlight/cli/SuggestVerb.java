package quarterlight.cli;

import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParseResult;
import quarterlight.capture.CorrectedTimes;
import quarterlight.capture.DifferenceHash;
import quarterlight.capture.NearDuplicates;
import quarterlight.car.Zone;
import quarterlight.car.ZoneId;
import quarterlight.diagram.DiagramRefused;
import quarterlight.diagram.Neighbors;
import quarterlight.diagram.VisitDiagram;
import quarterlight.photo.PictureMeasures;
import quarterlight.photo.PictureUnreadable;
import quarterlight.photo.Pictures;
import quarterlight.store.VisitProblem;
import quarterlight.store.VisitStore;
import quarterlight.table.JsonObject;
import quarterlight.visit.Photo;
import quarterlight.visit.PhotoId;
import quarterlight.visit.VisitFacts;
import quarterlight.visit.VisitRecord;
import quarterlight.walk.Shot;
import quarterlight.walk.Suggestion;
import quarterlight.walk.WalkHabits;
import quarterlight.walk.WalkModel;
import quarterlight.walk.ZoneSuggestions;

/** {@code suggest}: likely zones of each photo that is not pinned, from the walk round the car. */
final class SuggestVerb implements Verb {
    private static final double MILLIS = 1000;

    private final Surroundings around;

    SuggestVerb(Surroundings around) {
        this.around = around;
    }

    @Override
    public CommandSpec spec() {
        return Words.verb("suggest", "likely zones of each unpinned photo, with probabilities; nothing is pinned")
                .addPositional(Words.visit())
                .addOption(Words.json());
    }

    @Override
    public int run(ParseResult call) throws CallRefused, VisitProblem {
        VisitRecord visit;
        List<Shot> shots;
        try (VisitStore store = VisitStore.openForReading(Words.pathAt(call, 0));
                Thumbnails thumbnails = Thumbnails.of(store.folder())) {
            visit = store.read();
            shots = shots(visit, thumbnails.by(visit));
        }
        Map<PhotoId, List<Suggestion>> suggested = new ZoneSuggestions(
                        zones(visit), nextDoor(Words.pathAt(call, 0), visit.facts()), WalkHabits.NONE, WalkModel.V1)
                .suggest(shots);
        List<Photo> unpinned = visit.photos().stream()
                .filter(photo -> photo.setAside().isEmpty())
                .filter(photo -> pinned(visit, photo.id()).isEmpty())
                .toList();
        around.console().print(Words.isJson(call) ? json(unpinned, suggested).text() : table(unpinned, suggested));
        return Exit.DONE;
    }

    private List<ZoneId> zones(VisitRecord visit) {
        return around.zones().get().zonesOf(visit.facts().car().body()).stream()
                .map(Zone::id)
                .toList();
    }

    private static Map<ZoneId, Set<ZoneId>> nextDoor(Path folder, VisitFacts facts) throws CallRefused {
        try {
            return Neighbors.of(VisitDiagram.of(folder, facts)).map();
        } catch (DiagramRefused e) {
            throw new CallRefused(e.getMessage());
        }
    }

    private static List<ZoneId> pinned(VisitRecord visit, PhotoId photo) {
        return visit.pins().stream()
                .filter(pin -> pin.value().photo().equals(photo))
                .map(pin -> pin.value().zone())
                .distinct()
                .toList();
    }

    /** Photos that have a time, in its order; one that looks like an earlier photo is its twin. */
    private static List<Shot> shots(VisitRecord visit, Function<PhotoId, Optional<byte[]>> thumbnails) {
        CorrectedTimes times = CorrectedTimes.of(visit);
        record Timed(PhotoId id, Instant at) {}
        List<Timed> timed = visit.photos().stream()
                .filter(photo -> photo.setAside().isEmpty())
                .flatMap(photo -> times.of(photo.id()).stream()
                        .map(time -> new Timed(photo.id(), time.utc().toInstant())))
                .sorted(Comparator.comparing(Timed::at).thenComparing(Timed::id))
                .toList();
        Map<PhotoId, DifferenceHash> hashes = new HashMap<>();
        timed.forEach(shot ->
                thumbnails.apply(shot.id()).flatMap(SuggestVerb::hash).ifPresent(hash -> hashes.put(shot.id(), hash)));
        List<List<PhotoId>> alike = NearDuplicates.of(hashes).sets();
        List<PhotoId> seen = new ArrayList<>();
        List<Shot> shots = new ArrayList<>();
        for (Timed shot : timed) {
            Optional<PhotoId> twin = alike.stream()
                    .filter(set -> set.contains(shot.id()))
                    .flatMap(List::stream)
                    .filter(seen::contains)
                    .findFirst();
            double seconds = Duration.between(timed.get(0).at(), shot.at()).toMillis() / MILLIS;
            shots.add(new Shot(shot.id(), seconds, pinned(visit, shot.id()), twin));
            seen.add(shot.id());
        }
        return shots;
    }

    private static Optional<DifferenceHash> hash(byte[] jpeg) {
        try {
            return Optional.of(PictureMeasures.hash(Pictures.ofThumbnail(jpeg)));
        } catch (PictureUnreadable e) {
            return Optional.empty();
        }
    }

    private static JsonObject json(List<Photo> unpinned, Map<PhotoId, List<Suggestion>> suggested) {
        return new JsonObject()
                .put(
                        "photos",
                        unpinned.stream()
                                .map(photo -> new JsonObject()
                                        .put("photo", photo.id().value())
                                        .put("file", photo.file().name())
                                        .put(
                                                "suggestions",
                                                suggested.getOrDefault(photo.id(), List.of()).stream()
                                                        .map(one -> new JsonObject()
                                                                .put("zone", one.zone())
                                                                .put("p", one.p()))
                                                        .toList()))
                                .toList());
    }

    private static String table(List<Photo> unpinned, Map<PhotoId, List<Suggestion>> suggested) {
        if (unpinned.isEmpty()) {
            return "Every photo is pinned.\n";
        }
        TextTable table = new TextTable().right("id").left("file", "likely zones, in percent");
        for (Photo photo : unpinned) {
            String zones = suggested.getOrDefault(photo.id(), List.of()).stream()
                    .map(one -> one.zone() + " " + Shown.number(100 * one.p(), 0))
                    .collect(Collectors.joining(", "));
            table.row(photo.id().toString(), photo.file().name(), zones.isEmpty() ? Shown.UNKNOWN : zones);
        }
        boolean none = suggested.isEmpty();
        return table.text()
                + (none
                        ? "\nNothing can be suggested before a few photos that have a time are pinned.\n"
                        : "\nA suggestion rests on the order and the pauses of the walk; look at the photo before you pin it.\n");
    }
}
