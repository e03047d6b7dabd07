package quarterlight.cli.evidence;

import java.nio.file.Path;
import java.util.List;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParseResult;
import quarterlight.cli.call.CallRefused;
import quarterlight.cli.call.CliContext;
import quarterlight.cli.call.CliOptions;
import quarterlight.cli.call.Exit;
import quarterlight.cli.call.Interruption;
import quarterlight.cli.call.PhotoArgument;
import quarterlight.cli.call.Verb;
import quarterlight.cli.text.AddedMedia;
import quarterlight.cli.text.CliText;
import quarterlight.edit.EditRefused;
import quarterlight.edit.intake.FrameKeeping;
import quarterlight.edit.intake.Intake;
import quarterlight.edit.intake.IntakeRefused;
import quarterlight.edit.intake.IntakeResult;
import quarterlight.edit.intake.VisitThumbnails;
import quarterlight.photo.PictureUnreadable;
import quarterlight.photo.Refusal;
import quarterlight.photo.originals.OriginalsUnwritable;
import quarterlight.photo.worker.DecodingWorkers;
import quarterlight.store.VisitStore;
import quarterlight.store.problem.VisitProblem;
import quarterlight.table.json.JsonObject;
import quarterlight.task.Progress;
import quarterlight.visit.photo.Photo;
import quarterlight.visit.photo.PhotoId;

/** {@code intake}: takes in photos and films; safe to repeat and to interrupt. */
public final class IntakeVerb implements Verb {
    /** Files left alone that are named; a card may hold a sidecar file for every photo. */
    private static final int MAX_NAMED = 20;

    private static final String FRAME_OF = "--frame-of";
    private static final String AT = "--at";

    private final CliContext around;

    public IntakeVerb(CliContext around) {
        this.around = around;
    }

    @Override
    public CommandSpec spec() {
        return CliOptions.verb(
                        "intake",
                        "add photos and films, including those in subfolders; safe to repeat and to interrupt")
                .addPositional(CliOptions.visit())
                .addPositional(CliOptions.paths(1, "FOLDER", "where they lie").toBuilder()
                        .arity("0..*")
                        .required(false)
                        .build())
                .addOption(CliOptions.text(FRAME_OF, "FILM", "save one frame of a film in the visit as a photo"))
                .addOption(CliOptions.text(AT, "SECONDS", "time of the frame, from the start of the film"))
                .addOption(CliOptions.json());
    }

    @Override
    public int run(ParseResult call) throws CallRefused, EditRefused, VisitProblem {
        List<Path> folders =
                call.hasMatchedPositional(1) ? call.matchedPositional(1).getValue() : List.of();
        if (call.hasMatchedOption(FRAME_OF) || call.hasMatchedOption(AT)) {
            return keepFrame(call, folders);
        }
        if (folders.isEmpty()) {
            throw new CallRefused("FOLDER is missing: name the folder with the photos");
        }
        IntakeResult result;
        String added;
        try (DecodingWorkers workers = started();
                Interruption interruption = Interruption.watched(around.console());
                VisitStore store = around.visits().forEditing(CliOptions.pathAt(call, 0))) {
            result = run(store, folders, workers, interruption);
            added = AddedMedia.words(store.read().photos(), result.added());
        } catch (OriginalsUnwritable e) {
            around.console().complain(e.getMessage());
            return Exit.NOT_ALL;
        }
        around.console().print(CliOptions.isJson(call) ? json(result).text() : report(result, added));
        if (!result.refused().isEmpty()) {
            Refusal first = result.refused().get(0);
            around.console()
                    .complain(CliText.count(result.refused().size(), "file was", "files were")
                            + " not added, the first is " + first.file() + ": " + first.reason()
                            + "; the others were added");
        }
        return result.refused().isEmpty() ? Exit.DONE : Exit.NOT_ALL;
    }

    /** They start while the visit is opened. */
    private static DecodingWorkers started() {
        DecodingWorkers workers = new DecodingWorkers();
        workers.start();
        return workers;
    }

    private int keepFrame(ParseResult call, List<Path> folders) throws CallRefused, EditRefused, VisitProblem {
        if (!call.hasMatchedOption(FRAME_OF) || !call.hasMatchedOption(AT) || !folders.isEmpty()) {
            throw new CallRefused(FRAME_OF + " and " + AT + " go together, and without folders");
        }
        double seconds = seconds(call.matchedOptionValue(AT, ""));
        try (VisitStore store = around.visits().forEditing(CliOptions.pathAt(call, 0));
                DecodingWorkers workers = new DecodingWorkers();
                VisitThumbnails thumbnails = VisitThumbnails.of(store.folder())) {
            List<Photo> before = store.read().photos();
            PhotoId film = PhotoArgument.find(before, call.matchedOptionValue(FRAME_OF, ""))
                    .id();
            PhotoId kept = new FrameKeeping(store, around.clock(), thumbnails, workers).keep(film, seconds);
            Photo photo = store.read().photo(kept).orElseThrow();
            boolean fresh = before.stream().noneMatch(one -> one.id().equals(kept));
            String name = photo.file().name();
            around.console()
                    .print(
                            CliOptions.isJson(call)
                                    ? new JsonObject()
                                            .put("added", fresh ? 1 : 0)
                                            .put("photo", kept.value())
                                            .put("file", name)
                                            .text()
                                    : (fresh ? "Kept " + name : name + " was kept already") + ".\n");
            return Exit.DONE;
        } catch (PictureUnreadable | OriginalsUnwritable e) {
            throw new CallRefused(e.getMessage());
        }
    }

    private static double seconds(String text) throws CallRefused {
        try {
            double seconds = Double.parseDouble(text.strip().replace(',', '.'));
            if (seconds >= 0 && Double.isFinite(seconds)) {
                return seconds;
            }
        } catch (NumberFormatException e) {
            throw new CallRefused(AT + " takes seconds such as 12.48, not \"" + text + "\"");
        }
        throw new CallRefused(AT + " takes seconds from 0 on, not " + text);
    }

    public IntakeResult run(VisitStore store, List<Path> folders, Progress progress)
            throws CallRefused, OriginalsUnwritable, VisitProblem {
        try (DecodingWorkers workers = started()) {
            return run(store, folders, workers, progress);
        }
    }

    private IntakeResult run(VisitStore store, List<Path> folders, DecodingWorkers workers, Progress progress)
            throws CallRefused, OriginalsUnwritable, VisitProblem {
        try (VisitThumbnails thumbnails = VisitThumbnails.of(store.folder())) {
            return new Intake(store, around.clock(), thumbnails, workers).run(folders, progress);
        } catch (IntakeRefused e) {
            throw new CallRefused(e.getMessage());
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new CallRefused(
                    "interrupted; what was added so far is kept, and the same command continues from there");
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

    private static String report(IntakeResult result, String added) {
        StringBuilder out = new StringBuilder();
        out.append(added);
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
            out.append("Skipped, not a photo or film: ")
                    .append(CliText.count(result.notPhotos().size(), "file", "files"))
                    .append(result.notPhotos().size() > MAX_NAMED ? " (--json names them all)\n" : "\n");
            result.notPhotos().stream()
                    .limit(MAX_NAMED)
                    .forEach(file -> out.append("  ").append(file).append('\n'));
        }
        return out.toString();
    }
}
