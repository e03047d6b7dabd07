package quarterlight.cli.evidence;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParseResult;
import quarterlight.cli.call.CallRefused;
import quarterlight.cli.call.CliContext;
import quarterlight.cli.call.CliOptions;
import quarterlight.cli.call.Exit;
import quarterlight.cli.call.Interruption;
import quarterlight.cli.call.PhotoArgument;
import quarterlight.cli.call.Verb;
import quarterlight.cli.text.CliText;
import quarterlight.edit.EditRefused;
import quarterlight.edit.intake.Intake;
import quarterlight.edit.intake.IntakeRefused;
import quarterlight.edit.intake.VisitThumbnails;
import quarterlight.edit.spoken.TimedWordsImport;
import quarterlight.photo.Refusal;
import quarterlight.photo.originals.OriginalsUnwritable;
import quarterlight.photo.worker.DecodingWorkers;
import quarterlight.store.VisitStore;
import quarterlight.store.problem.VisitProblem;
import quarterlight.table.json.JsonObject;
import quarterlight.visit.photo.Photo;

/** {@code words}: takes in timed words of a film or memo; several parts in order make one walk. */
public final class WordsVerb implements Verb {
    private static final String OF = "--of";

    private final CliContext around;

    public WordsVerb(CliContext around) {
        this.around = around;
    }

    @Override
    public CommandSpec spec() {
        return CliOptions.verb(
                        "words",
                        "add timed words of a film or memo: WebVTT, SRT, lines like [1:05] text, or the JSON of a"
                                + " recognizer",
                        "Several parts, in order, make one walk.")
                .addPositional(CliOptions.visit())
                .addPositional(CliOptions.paths(1, "FILE", "the words"))
                .addOption(CliOptions.text(
                        OF,
                        "FILM",
                        "the film or sound in the visit that they are of; else the one that bears their name"))
                .addOption(CliOptions.json());
    }

    @Override
    public int run(ParseResult call) throws CallRefused, EditRefused, VisitProblem {
        List<Path> files = call.matchedPositional(1).getValue();
        TimedWordsImport.Outcome outcome;
        try (DecodingWorkers workers = new DecodingWorkers();
                Interruption interruption = Interruption.watched(around.console());
                VisitStore store = around.visits().forEditing(CliOptions.pathAt(call, 0));
                VisitThumbnails thumbnails = VisitThumbnails.of(store.folder())) {
            Optional<Photo> of = call.hasMatchedOption(OF)
                    ? Optional.of(PhotoArgument.find(store.read().photos(), call.matchedOptionValue(OF, "")))
                    : Optional.empty();
            Intake intake = new Intake(store, around.clock(), thumbnails, workers);
            outcome = new TimedWordsImport(store, intake).take(files, of, workers, interruption);
        } catch (IntakeRefused e) {
            throw new CallRefused(e.getMessage());
        } catch (OriginalsUnwritable e) {
            around.console().complain(e.getMessage());
            return Exit.NOT_ALL;
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new CallRefused(
                    "interrupted; what was added so far is kept, and the same command continues from there");
        }
        around.console().print(CliOptions.isJson(call) ? json(outcome).text() : report(outcome));
        List<Refusal> refused = outcome.taken().refused();
        if (!refused.isEmpty()) {
            around.console()
                    .complain(refused.get(0).file() + ": " + refused.get(0).reason() + "; the others were added");
        }
        return refused.isEmpty() ? Exit.DONE : Exit.NOT_ALL;
    }

    private static JsonObject json(TimedWordsImport.Outcome outcome) {
        return new JsonObject()
                .put("added", outcome.taken().added())
                .put("already_present", outcome.taken().alreadyPresent())
                .put(
                        "tied",
                        outcome.tied().stream()
                                .map(photo -> photo.file().name())
                                .toList())
                .put(
                        "refused",
                        outcome.taken().refused().stream()
                                .map(refusal -> new JsonObject()
                                        .put("file", refusal.file())
                                        .put("reason", refusal.reason()))
                                .toList())
                .put("remarks", outcome.remarks());
    }

    private static String report(TimedWordsImport.Outcome outcome) {
        StringBuilder out = new StringBuilder();
        out.append(CliText.count(outcome.taken().added(), "file of words", "files of words"))
                .append(" added");
        if (outcome.taken().alreadyPresent() > 0) {
            out.append(", ").append(outcome.taken().alreadyPresent()).append(" there already");
        }
        if (!outcome.tied().isEmpty()) {
            out.append(", ").append(outcome.tied().size()).append(" of them tied anew");
        }
        out.append(".\n");
        outcome.remarks().forEach(remark -> out.append(remark).append('\n'));
        return out.toString();
    }
}
