package quarterlight.cli.demo;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.ParseResult;
import quarterlight.cli.analysis.CompareVerb;
import quarterlight.cli.call.CallRefused;
import quarterlight.cli.call.CliContext;
import quarterlight.cli.call.CliOptions;
import quarterlight.cli.call.Exit;
import quarterlight.cli.call.Interruption;
import quarterlight.cli.call.Verb;
import quarterlight.cli.delivery.PagesVerb;
import quarterlight.edit.EditRefused;
import quarterlight.file.Leftovers;
import quarterlight.page.print.Paper;
import quarterlight.photo.MediaType;
import quarterlight.photo.originals.Original;
import quarterlight.photo.originals.OriginalRefused;
import quarterlight.photo.worker.DecodingWorkers;
import quarterlight.store.VisitStore;
import quarterlight.store.problem.VisitProblem;
import quarterlight.table.json.JsonObject;
import quarterlight.visit.photo.Photo;

/** {@code demo}: builds the two demo visits, their pages and their comparison. A visit that is there already is kept. */
public final class DemoVerb implements Verb {
    private static final String DESK = "--desk";
    private static final String REHEARSE = "--rehearse";
    private static final String USUAL_FOLDER = "demo";

    private final CliContext around;

    public DemoVerb(CliContext around) {
        this.around = around;
    }

    @Override
    public CommandSpec spec() {
        return CliOptions.verb("demo", "build the two demo visits with their pages and their comparison")
                .addPositional(
                        CliOptions.optionalPath(0, "FOLDER", "where to build them (default: " + USUAL_FOLDER + ")"))
                .addOption(OptionSpec.builder(DESK)
                        .type(boolean.class)
                        .description("then open the first one in the desktop, if there is a display")
                        .build())
                .addOption(OptionSpec.builder(REHEARSE)
                        .type(Path.class)
                        .paramLabel("FILE")
                        .description("use everything once, for the run from which the Java machine makes classes ready")
                        .hidden(true)
                        .build())
                .addOption(CliOptions.json());
    }

    @Override
    public int run(ParseResult call) throws CallRefused, EditRefused, VisitProblem, IOException {
        if (call.hasMatchedOption(REHEARSE)) {
            Path place = call.matchedOptionValue(REHEARSE, Path.of(""));
            Optional<Path> visit = Optional.ofNullable(call.matchedPositionalValue(0, null));
            return visit.isPresent() ? show(visit.get(), place) : rehearse(place);
        }
        Path folder = call.matchedPositionalValue(0, Path.of(USUAL_FOLDER));
        boolean json = call.hasMatchedOption("--json");
        Made made = build(folder, !json);
        if (json) {
            around.console()
                    .print(new JsonObject()
                            .put("visits", made.visits)
                            .put("pages", made.pages)
                            .put("refused", made.refused)
                            .text());
        }
        if (!made.refused.isEmpty()) {
            around.console()
                    .complain("the demo data is incomplete: " + made.refused.get(0) + " (the first of "
                            + made.refused.size() + ")");
        }
        if (call.hasMatchedOption(DESK) && !around.desk().open(Optional.of(made.visits.get(0)))) {
            say(!json, "There is no display, so the desktop was not opened.");
        }
        return made.refused.isEmpty() ? Exit.DONE : Exit.NOT_ALL;
    }

    private int rehearse(Path place) throws CallRefused, EditRefused, VisitProblem, IOException {
        Path folder = Files.createTempDirectory("quarterlight-rehearsal");
        try {
            return show(build(folder, false).visits.get(0), place);
        } finally {
            Leftovers.delete(folder);
        }
    }

    /**
     * Opens a visit that was made before, so that what makes visits and pages is not among the classes.
     *
     * @param place the folder of this file is written into it if there was a window, which tells the launcher that a start has all it needs
     */
    private int show(Path visit, Path place) throws VisitProblem, IOException {
        decodeHere(visit);
        if (around.desk().rehearse(visit)) {
            Path home = place.toAbsolutePath().getParent().toRealPath();
            Files.writeString(place, home + "\n");
        }
        return Exit.DONE;
    }

    /** A photo of the demo as a worker decodes it, whose classes this process has no need of. */
    private void decodeHere(Path visit) throws VisitProblem, IOException {
        try (VisitStore store = around.visits().forReading(visit)) {
            for (Photo photo : store.read().photos()) {
                if (photo.file().type().equals(MediaType.JPEG.word())) {
                    DecodingWorkers.rehearse(
                            Original.of(visit, photo.file()),
                            MediaType.JPEG,
                            around.clock().instant());
                    return;
                }
            }
        } catch (OriginalRefused e) {
            throw new IOException(e.getMessage(), e);
        }
    }

    private record Made(List<Path> visits, List<Path> pages, List<String> refused) {}

    private Made build(Path folder, boolean tell) throws CallRefused, EditRefused, VisitProblem, IOException {
        Made made = new Made(new ArrayList<>(), new ArrayList<>(), new ArrayList<>());
        try (Interruption interruption = Interruption.watched(around.console())) {
            DemoVisits visits = new DemoVisits(around);
            for (DemoVisits.Made one : visits.in(folder, interruption)) {
                made.visits.add(one.visit());
                say(
                        tell,
                        one.held()
                                .map(held -> "Made " + one.visit() + ": " + held)
                                .orElse("Kept " + one.visit() + " as it is"));
            }
            made.refused.addAll(visits.refused());
            for (Path visit : made.visits) {
                try (VisitStore store = around.visits().forReading(visit)) {
                    made.pages.addAll(
                            new PagesVerb(around).make(store, store.folder().pages(), Paper.A4, interruption));
                }
            }
        }
        Path first = made.visits.get(0);
        Path last = made.visits.get(made.visits.size() - 1);
        made.pages.addAll(new CompareVerb(around).pages(first, last, folder));
        made.pages.forEach(page -> say(tell, "Made " + page));
        return made;
    }

    private void say(boolean tell, String line) {
        if (tell) {
            around.console().print(line + "\n");
        }
    }
}
