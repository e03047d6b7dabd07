package quarterlight.cli.library;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParseResult;
import quarterlight.cli.call.CallRefused;
import quarterlight.cli.call.CliContext;
import quarterlight.cli.call.CliOptions;
import quarterlight.cli.call.Exit;
import quarterlight.cli.call.Interruption;
import quarterlight.cli.call.Verb;
import quarterlight.cli.text.CliText;
import quarterlight.cli.text.TextTable;
import quarterlight.edit.EditRefused;
import quarterlight.edit.library.VisitLibrary;
import quarterlight.edit.library.VisitOrder;
import quarterlight.store.VisitOpening;
import quarterlight.store.library.LibraryHit;
import quarterlight.store.library.LibraryUnusable;
import quarterlight.store.library.LibraryVisit;
import quarterlight.table.json.JsonObject;
import quarterlight.units.Worded;

/** {@code visits}: all visits in folders, and what they say. */
public final class VisitsVerb implements Verb {
    private static final String FIND = "--find";
    private static final String LIKE = "--like";
    private static final String BY = "--by";
    private static final int TEXT = 60;

    private final CliContext around;

    public VisitsVerb(CliContext around) {
        this.around = around;
    }

    @Override
    public CommandSpec spec() {
        return CliOptions.verb(
                        "visits",
                        "list all visits in folders, or find what they say: statements, claims, marks, trials, signs,"
                                + " captions, notes, zones")
                .addPositional(CliOptions.paths(0, "FOLDER", "where visits lie, also in folders below"))
                .addOption(
                        CliOptions.text(FIND, "TEXT", "find rows that hold every word of it, or words that begin so"))
                .addOption(CliOptions.text(
                        LIKE,
                        "NUMBER",
                        "find stamps, tags and castings with a number like this; ? for an unread letter"))
                .addOption(
                        CliOptions.text(BY, "ORDER", Worded.words(VisitOrder.class) + " (default: date, newest first)")
                                .toBuilder()
                                .completionCandidates(Worded.list(VisitOrder.class))
                                .build())
                .addOption(CliOptions.json());
    }

    @Override
    public int run(ParseResult call) throws CallRefused, EditRefused, IOException {
        List<Path> folders = call.matchedPositionalValue(0, List.of());
        Optional<String> find = Optional.ofNullable(call.matchedOptionValue(FIND, null));
        Optional<String> like = Optional.ofNullable(call.matchedOptionValue(LIKE, null));
        String by = call.matchedOptionValue(BY, VisitOrder.DATE.word());
        VisitOrder order = Worded.find(VisitOrder.class, by)
                .orElseThrow(() -> new CallRefused(
                        "visits: " + BY + " takes " + Worded.words(VisitOrder.class) + ", not \"" + by + "\""));
        if (find.isPresent() && like.isPresent()) {
            throw new CallRefused("visits: give " + FIND + " or " + LIKE + ", not both");
        }
        VisitOpening opening = VisitOpening.by(around.clock()).onThisComputer(around.settings());
        List<String> remarks;
        try (Interruption interruption = Interruption.watched(around.console());
                VisitLibrary library = VisitLibrary.of(
                        folders, around.settings(), around.zones().get(), opening, interruption)) {
            remarks = library.remarks();
            List<LibraryVisit> visits = library.visits(order);
            if (find.isEmpty() && like.isEmpty()) {
                around.console()
                        .print(
                                CliOptions.isJson(call)
                                        ? document(visits, List.of(), remarks).text()
                                        : table(visits));
            } else {
                List<LibraryHit> hits =
                        find.isPresent() ? library.find(find.get(), order) : library.like(like.orElse(""));
                List<LibraryVisit> saying =
                        hits.stream().map(LibraryHit::visit).distinct().toList();
                around.console()
                        .print(
                                CliOptions.isJson(call)
                                        ? document(saying, hits, remarks).text()
                                        : found(hits, saying.size(), visits.size()));
            }
        } catch (LibraryUnusable e) {
            throw new CallRefused(e.getMessage());
        }
        remarks.forEach(around.console()::complain);
        return remarks.isEmpty() ? Exit.DONE : Exit.NOT_ALL;
    }

    private static String table(List<LibraryVisit> visits) {
        TextTable table = new TextTable()
                .left("date", "car", "client", "place")
                .right("photos")
                .left("visit");
        visits.forEach(visit -> table.row(
                visit.date().orElse(""),
                visit.car(),
                visit.client().orElse(""),
                visit.place().orElse(""),
                Integer.toString(visit.photos()),
                visit.folder().toString()));
        return visits.isEmpty()
                ? "There is no visit in these folders.\n"
                : table.text() + CliText.count(visits.size(), "visit", "visits") + ".\n";
    }

    private static String found(List<LibraryHit> hits, int saying, int all) {
        if (hits.isEmpty()) {
            return "Nothing found in " + CliText.count(all, "visit", "visits") + ".\n";
        }
        TextTable table = new TextTable().left("date", "car", "what", "zone", "text", "visit");
        hits.forEach(hit -> table.row(
                hit.visit().date().orElse(""),
                hit.visit().car(),
                hit.row().kind(),
                hit.row().zone(),
                shortened(hit.row().text()),
                hit.visit().folder().toString()));
        String most = hits.size() == VisitLibrary.MOST ? "; there may be more, add a word" : "";
        return table.text() + CliText.count(hits.size(), "row", "rows") + " in " + saying + " of "
                + CliText.count(all, "visit", "visits") + most + ".\n";
    }

    private static String shortened(String text) {
        String line = text.replaceAll("\\s+", " ");
        return line.length() > TEXT ? line.substring(0, TEXT - 1) + "…" : line;
    }

    private static JsonObject document(List<LibraryVisit> visits, List<LibraryHit> hits, List<String> remarks) {
        List<JsonObject> rows = new ArrayList<>();
        hits.forEach(hit -> rows.add(new JsonObject()
                .put("visit", hit.visit().folder())
                .put("what", hit.row().kind())
                .put("zone", Optional.of(hit.row().zone()).filter(zone -> !zone.isEmpty()))
                .put("text", hit.row().text())
                .put(
                        "photo",
                        hit.row().picture().map(one -> hit.visit().folder().resolve(one.stored())))));
        return new JsonObject()
                .put("visits", visits.stream().map(VisitsVerb::visit).toList())
                .put("found", rows)
                .put("remarks", remarks);
    }

    private static JsonObject visit(LibraryVisit visit) {
        return new JsonObject()
                .put("visit", visit.folder())
                .put("car", visit.car())
                .put("date", visit.date())
                .put("client", visit.client())
                .put("place", visit.place())
                .put("photos", visit.photos());
    }
}
