package quarterlight.cli.evidence;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import picocli.CommandLine.ParseResult;
import quarterlight.cli.call.CallRefused;
import quarterlight.cli.call.CliContext;
import quarterlight.cli.call.CliOptions;
import quarterlight.cli.call.Exit;
import quarterlight.cli.call.Interruption;
import quarterlight.cli.call.PhotoArgument;
import quarterlight.edit.EditRefused;
import quarterlight.edit.intake.Intake;
import quarterlight.edit.intake.IntakeRefused;
import quarterlight.edit.intake.VisitThumbnails;
import quarterlight.edit.spoken.Recognizing;
import quarterlight.photo.SoundUnreadable;
import quarterlight.photo.originals.OriginalsUnwritable;
import quarterlight.photo.speech.RecognizerUnusable;
import quarterlight.photo.worker.DecodingWorkers;
import quarterlight.store.VisitStore;
import quarterlight.store.problem.VisitProblem;
import quarterlight.table.json.JsonObject;
import quarterlight.visit.photo.Photo;

/** {@code listen --recognize}: makes the words of films and memos that have none, by a model file on this computer. */
final class RecognizeCall {
    static final String MODEL = "--recognize";
    static final String OF = "--of";

    private final CliContext around;

    RecognizeCall(CliContext around) {
        this.around = around;
    }

    int run(ParseResult call) throws CallRefused, EditRefused, VisitProblem {
        Path model = Path.of(call.matchedOptionValue(MODEL, ""));
        try (DecodingWorkers workers = new DecodingWorkers();
                Interruption interruption = Interruption.watched(around.console());
                VisitStore store = around.visits().forEditing(CliOptions.pathAt(call, 0));
                VisitThumbnails thumbnails = VisitThumbnails.of(store.folder())) {
            List<Photo> recordings = call.hasMatchedOption(OF)
                    ? List.of(PhotoArgument.find(store.read().photos(), call.matchedOptionValue(OF, "")))
                    : Recognizing.wordless(store.read());
            if (recordings.isEmpty()) {
                throw new CallRefused(
                        "no film or memo of this visit lacks words; name one by " + OF + " to make its words again");
            }
            Recognizing.Outcome outcome = new Recognizing(store, new Intake(store, around.clock(), thumbnails, workers))
                    .run(recordings, model, workers, interruption);
            around.console()
                    .print(
                            CliOptions.isJson(call)
                                    ? new JsonObject()
                                            .put("made", outcome.made())
                                            .put("silent", outcome.silent())
                                            .put("without_sound", outcome.mute())
                                            .text()
                                    : report(outcome));
            return Exit.DONE;
        } catch (RecognizerUnusable | SoundUnreadable | IntakeRefused e) {
            throw new CallRefused(e.getMessage());
        } catch (OriginalsUnwritable e) {
            around.console().complain(e.getMessage());
            return Exit.NOT_ALL;
        } catch (IOException e) {
            throw new CallRefused("the words cannot be written (" + e.getMessage() + "); check the disk");
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new CallRefused("interrupted; recordings that were finished have their words");
        }
    }

    private static String report(Recognizing.Outcome outcome) {
        StringBuilder out = new StringBuilder();
        line(out, "Words made by the recognizer, not checked: ", outcome.made());
        line(out, "No words were heard in: ", outcome.silent());
        line(out, "No sound is in: ", outcome.mute());
        return out.toString();
    }

    private static void line(StringBuilder out, String before, List<String> names) {
        if (!names.isEmpty()) {
            out.append(before).append(String.join(", ", names)).append(".\n");
        }
    }
}
