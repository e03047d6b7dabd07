package quarterlight.store;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import quarterlight.OwnProcess;
import quarterlight.store.problem.VisitLocked;
import quarterlight.store.problem.VisitProblem;
import quarterlight.visit.row.RecordKind;

/**
 * A process of its own that edits a visit without end: pairs of readings and now and then a photo, one edit each. It
 * prints the number of each edit after the edit is saved, {@code refused} if another process edits the visit.
 */
public final class EditingProcess {
    private EditingProcess() {}

    public static void main(String[] args) throws Exception {
        int number = Integer.parseInt(args[1]);
        try (VisitStore store = VisitStore.openForEditing(Path.of(args[0]), SampleVisit.CLOCK)) {
            System.out.println("open");
            while (true) {
                edit(store, ++number);
                System.out.println(number);
            }
        } catch (VisitLocked e) {
            System.out.println("refused");
        }
    }

    /** Edit n adds two readings whose value is n, so that half an edit shows; every tenth also a photo. */
    private static void edit(VisitStore store, int number) throws VisitProblem {
        store.change("edit " + number, tx -> {
            if (number % 10 == 0) {
                tx.addPhoto(SampleVisit.fullPhoto(number));
            }
            tx.addAll(
                    RecordKind.READINGS,
                    List.of(
                            SampleVisit.reading(SampleVisit.HOOD, Integer.toString(number)),
                            SampleVisit.reading(SampleVisit.ROOF, Integer.toString(number))));
        });
    }

    /** Starts it on a visit; edits are numbered from {@code after} + 1. */
    static Process start(Path visit, int after) throws IOException {
        return new ProcessBuilder(OwnProcess.of(
                        EditingProcess.class, visit.getParent(), visit.toString(), Integer.toString(after)))
                .redirectError(ProcessBuilder.Redirect.DISCARD)
                .start();
    }
}
