package quarterlight.cli.evidence;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParseResult;
import quarterlight.capture.CorrectedTimes;
import quarterlight.car.Zone;
import quarterlight.car.ZoneId;
import quarterlight.cli.call.CallRefused;
import quarterlight.cli.call.CliContext;
import quarterlight.cli.call.CliOptions;
import quarterlight.cli.call.Exit;
import quarterlight.cli.call.OwnLists;
import quarterlight.cli.call.Verb;
import quarterlight.cli.text.CliText;
import quarterlight.cli.text.TextTable;
import quarterlight.diagram.Neighbors;
import quarterlight.diagram.file.DiagramRefused;
import quarterlight.diagram.file.VisitDiagram;
import quarterlight.edit.intake.VisitThumbnails;
import quarterlight.edit.list.WalkHabitStore;
import quarterlight.edit.spoken.WalkPlaces;
import quarterlight.store.VisitStore;
import quarterlight.store.problem.VisitProblem;
import quarterlight.table.TableUnreadable;
import quarterlight.table.json.JsonObject;
import quarterlight.units.Numerals;
import quarterlight.visit.VisitFacts;
import quarterlight.visit.VisitRecord;
import quarterlight.visit.photo.Photo;
import quarterlight.visit.photo.PhotoId;
import quarterlight.walk.Shot;
import quarterlight.walk.Suggestion;
import quarterlight.walk.WalkModel;
import quarterlight.walk.WalkShots;
import quarterlight.walk.ZoneKin;
import quarterlight.walk.ZoneSuggestions;
import quarterlight.walk.said.PlaceSaid;

/** {@code suggest}: likely zones of each photo that is not pinned, from the walk round the car. */
public final class SuggestVerb implements Verb {
    private static final int MAX_SUGGESTIONS = 5;

    private final CliContext around;

    public SuggestVerb(CliContext around) {
        this.around = around;
    }

    @Override
    public CommandSpec spec() {
        return CliOptions.verb("suggest", "suggest zones for each unpinned photo, with probabilities; pins nothing")
                .addPositional(CliOptions.visit())
                .addOption(CliOptions.json());
    }

    @Override
    public int run(ParseResult call) throws CallRefused, VisitProblem {
        VisitRecord visit;
        List<Shot> shots;
        try (VisitStore store = around.visits().forReading(CliOptions.pathAt(call, 0));
                VisitThumbnails thumbnails = VisitThumbnails.of(store.folder())) {
            visit = store.read();
            shots = shots(visit, thumbnails.by(visit));
        }
        WalkHabitStore.Known known = new WalkHabitStore(around.settings()).of(visit);
        List<Zone> zones = around.zones().get().zonesOf(visit.facts().car().body());
        List<ZoneId> usual =
                OwnLists.coverage(around, CliOptions.pathAt(call, 0)).walk();
        List<PlaceSaid> said = said(visit, CliOptions.pathAt(call, 0));
        Map<PhotoId, List<Suggestion>> suggested = new ZoneSuggestions(
                        zones.stream().map(Zone::id).toList(),
                        nextDoor(CliOptions.pathAt(call, 0), visit.facts()),
                        ZoneKin.of(zones).inTurn(usual),
                        known.habits(),
                        WalkModel.V5)
                .along(usual)
                .suggest(shots, said);
        Set<PhotoId> pinned = WalkShots.pins(visit).keySet();
        List<Photo> unpinned = visit.photos().stream()
                .filter(photo -> photo.setAside().isEmpty())
                .filter(photo -> photo.file().kind().isCameras())
                .filter(photo -> !pinned.contains(photo.id()))
                .toList();
        around.console()
                .print(
                        CliOptions.isJson(call)
                                ? json(unpinned, suggested, known, said).text()
                                : table(unpinned, suggested) + told(known, said));
        return Exit.DONE;
    }

    private List<PlaceSaid> said(VisitRecord visit, Path folder) throws CallRefused {
        try {
            return WalkPlaces.of(visit, folder, around.zones().get(), around.settings());
        } catch (TableUnreadable e) {
            throw new CallRefused(e.getMessage());
        }
    }

    private static Map<ZoneId, Set<ZoneId>> nextDoor(Path folder, VisitFacts facts) throws CallRefused {
        try {
            return Neighbors.of(VisitDiagram.of(folder, facts)).map();
        } catch (DiagramRefused e) {
            throw new CallRefused(e.getMessage());
        }
    }

    private static List<Shot> shots(VisitRecord visit, Function<PhotoId, Optional<byte[]>> thumbnails) {
        return WalkShots.of(
                visit,
                LookAlikes.of(visit, CorrectedTimes.of(visit), thumbnails).sets());
    }

    private static JsonObject json(
            List<Photo> unpinned,
            Map<PhotoId, List<Suggestion>> suggested,
            WalkHabitStore.Known known,
            List<PlaceSaid> said) {
        return new JsonObject()
                .put("earlier_visits", known.visits())
                .put("spoken_places", said.size())
                .put("remarks", known.remarks())
                .put(
                        "photos",
                        unpinned.stream()
                                .map(photo -> new JsonObject()
                                        .put("photo", photo.id().value())
                                        .put("file", photo.file().name())
                                        .put(
                                                "suggestions",
                                                best(suggested, photo).stream()
                                                        .map(one -> new JsonObject()
                                                                .put("zone", one.zone())
                                                                .put("p", one.p()))
                                                        .toList()))
                                .toList());
    }

    /** What the suggestions know of earlier visits and of words, and what of it could not be read. */
    private static String told(WalkHabitStore.Known known, List<PlaceSaid> said) {
        String visits = known.visits() == 0
                ? ""
                : "Learnt from " + Numerals.count(known.visits(), "earlier visit", "earlier visits") + ".\n";
        String words = said.isEmpty()
                ? ""
                : "What was said at " + Numerals.count(said.size(), "moment", "moments") + " counts too.\n";
        return visits
                + words
                + known.remarks().stream().map(remark -> remark + "\n").collect(Collectors.joining());
    }

    private static List<Suggestion> best(Map<PhotoId, List<Suggestion>> suggested, Photo photo) {
        return suggested.getOrDefault(photo.id(), List.of()).stream()
                .limit(MAX_SUGGESTIONS)
                .toList();
    }

    private static String table(List<Photo> unpinned, Map<PhotoId, List<Suggestion>> suggested) {
        if (unpinned.isEmpty()) {
            return "Every photo is pinned.\n";
        }
        TextTable table = new TextTable().right("id").left("file", "likely zones, in percent");
        for (Photo photo : unpinned) {
            String zones = best(suggested, photo).stream()
                    .map(one -> one.zone() + " " + CliText.number(100 * one.p(), 0))
                    .collect(Collectors.joining(", "));
            table.row(photo.id().toString(), photo.file().name(), zones.isEmpty() ? CliText.UNKNOWN : zones);
        }
        boolean none = suggested.isEmpty();
        return table.text()
                + (none
                        ? "\nPin a few photos that have a time first; then zones can be suggested.\n"
                        : "\n"
                                + "Suggestions are based on the order and pauses of your walk; look at the photo before"
                                + " you pin it.\n");
    }
}
