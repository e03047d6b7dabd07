package quarterlight.cli;

import java.nio.file.Path;
import java.util.List;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParseResult;
import quarterlight.edit.Intake;
import quarterlight.edit.IntakeRefused;
import quarterlight.edit.IntakeResult;
import quarterlight.edit.VisitThumbnails;
import quarterlight.photo.OriginalsUnwritable;
import quarterlight.photo.Refusal;
import quarterlight.store.VisitProblem;
import quarterlight.store.VisitStore;
import quarterlight.table.JsonObject;
import quarterlight.task.Progress;

/** {@code intake}: takes in photos and films; safe to repeat and to interrupt. */
final class IntakeVerb implements Verb {
    private final Surroundings around;

    IntakeVerb(Surroundings around) {
        this.around = around;
    }

    @Override
    public CommandSpec spec() {
        return Words.verb(
                        "intake",
                        "takes in photos and films, also from folders within; safe to repeat and to interrupt")
                .addPositional(Words.visit())
                .addPositional(Words.paths(1, "FOLDER", "where they lie"))
                .addOption(Words.json());
    }

    @Override
    public int run(ParseResult call) throws CallRefused, VisitProblem {
        List<Path> folders = call.matchedPositional(1).getValue();
        IntakeResult result;
        try (Interruption interruption = Interruption.watched();
                VisitStore store = VisitStore.openForEditing(Words.pathAt(call, 0), around.clock())) {
            result = run(store, folders, interruption);
        } catch (OriginalsUnwritable e) {
            around.console().complain(e.getMessage());
            return Exit.NOT_ALL;
        }
        around.console().print(Words.isJson(call) ? json(result).text() : report(result));
        if (!result.refused().isEmpty()) {
            Refusal first = result.refused().get(0);
            around.console()
                    .complain(Shown.count(result.refused().size(), "file was", "files were")
                            + " not taken in, the first is " + first.file() + ": " + first.reason()
                            + "; the others are in");
        }
        return result.refused().isEmpty() ? Exit.DONE : Exit.NOT_ALL;
    }

    IntakeResult run(VisitStore store, List<Path> folders, Progress progress)
            throws CallRefused, OriginalsUnwritable, VisitProblem {
        try (VisitThumbnails thumbnails = VisitThumbnails.of(store.folder())) {
            return new Intake(store, around.clock(), thumbnails).run(folders, progress);
        } catch (IntakeRefused e) {
            throw new CallRefused(e.getMessage());
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new CallRefused(
                    "the intake was interrupted; what was recorded is kept, and the same call goes on from there");
        }
    }

    private static JsonObject json(IntakeResult result) {
        return new JsonObject()
                .put("added", result.added())
                .put("already_present", result.alreadyPresent())
                .put(
                        "refused",
                        result.refused().stream()
                                .map(refusal -> new JsonObject()
                                        .put("file", refusal.file())
                                        .put("reason", refusal.reason()))
                                .toList())
                .put("not_photos", result.notPhotos());
    }

    private static String report(IntakeResult result) {
        StringBuilder out = new StringBuilder();
        out.append(Shown.count(result.added(), "photo or film", "photos and films"))
                .append(" taken in");
        if (result.alreadyPresent() > 0) {
            out.append(", ").append(result.alreadyPresent()).append(" there already");
        }
        out.append(".\n");
        result.refused().forEach(refusal -> out.append("refused: ")
                .append(refusal.file())
                .append(": ")
                .append(refusal.reason())
                .append('\n'));
        if (!result.notPhotos().isEmpty()) {
            out.append("Left alone, being no photo or film: ")
                    .append(Shown.count(result.notPhotos().size(), "file", "files"))
                    .append(" (--json names them).\n");
        }
        return out.toString();
    }
}
