package quarterlight.ui.library;

import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import quarterlight.edit.library.VisitOrder;
import quarterlight.task.JobRunner;
import quarterlight.ui.kit.Listeners;
import quarterlight.ui.kit.Problems;
import quarterlight.ui.kit.Texts;

/** The question at hand and its answer; an answer to an earlier question is dropped. Event thread only. */
final class LibraryModel {
    private final Texts texts;
    private final Problems problems;
    private final JobRunner jobs;
    private final LibraryShelf shelf;
    private final Listeners listeners = new Listeners();
    private LibraryQuestion question = new LibraryQuestion(List.of(), "", false, VisitOrder.DATE);
    private Optional<LibraryAnswer> answer = Optional.empty();
    private Optional<JobRunner.Cancel> running = Optional.empty();
    private int asked;

    /** @param jobs runs one job after the other, on the thread of the shelf */
    LibraryModel(Texts texts, Problems problems, JobRunner jobs, LibraryShelf shelf) {
        this.texts = texts;
        this.problems = problems;
        this.jobs = jobs;
        this.shelf = shelf;
    }

    LibraryQuestion question() {
        return question;
    }

    /** The answer to the question at hand, or to the one before it while that is worked out. */
    Optional<LibraryAnswer> answer() {
        return answer;
    }

    Listeners.Registration onChange(Runnable listener) {
        return listeners.add(listener);
    }

    /** Changes the question and asks it, unless it stays what it is. */
    void change(UnaryOperator<LibraryQuestion> change) {
        LibraryQuestion changed = change.apply(question);
        if (!changed.equals(question)) {
            question = changed;
            ask(false);
        }
    }

    /** Asks again from the disk: visits may have changed, a drive be back. */
    void again() {
        ask(true);
    }

    private void ask(boolean anew) {
        running.ifPresent(JobRunner.Cancel::cancel);
        running = Optional.empty();
        int number = ++asked;
        LibraryQuestion now = question;
        if (now.folders().isEmpty()) {
            answer = Optional.of(new LibraryAnswer(List.of(), 0, 0, 0, List.of()));
            listeners.tell();
            return;
        }
        running = Optional.of(jobs.start(
                texts.get("library.reading"),
                progress -> shelf.answer(now, anew, progress),
                found -> settle(number, Optional.of(found)),
                failure -> {
                    settle(number, answer);
                    problems.failed(failure);
                }));
        listeners.tell();
    }

    private void settle(int number, Optional<LibraryAnswer> found) {
        if (number == asked) {
            running = Optional.empty();
            answer = found;
            listeners.tell();
        }
    }

    /** Nothing more is asked, and the shelf is closed after what runs. */
    void stop() {
        asked++;
        running.ifPresent(JobRunner.Cancel::cancel);
        running = Optional.empty();
        jobs.start(
                texts.get("library.reading"),
                progress -> {
                    shelf.close();
                    return true;
                },
                closed -> {},
                problems::failed);
    }
}
