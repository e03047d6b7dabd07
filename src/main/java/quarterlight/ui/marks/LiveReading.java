package quarterlight.ui.marks;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.BiConsumer;
import javax.swing.SwingUtilities;
import quarterlight.marks.JudgedMark;
import quarterlight.marks.MarksReport;
import quarterlight.table.TableUnreadable;
import quarterlight.ui.kit.DeskParts;
import quarterlight.visit.Mark;
import quarterlight.visit.RecordId;
import quarterlight.visit.Recorded;
import quarterlight.visit.VisitRecord;

/** Reads a mark while it is written, in the background; what was overtaken is left out. */
final class LiveReading {
    /** The number of a mark that has none yet. */
    private static final RecordId FRESH = new RecordId(Long.MAX_VALUE);

    private record Wish(VisitRecord visit, Optional<RecordId> row, MarkDraft draft, Mark mark) {}

    private final DeskParts parts;
    private final Path folder;
    private final BiConsumer<MarkDraft, JudgedMark> read;
    private final AtomicReference<Optional<Wish>> wanted = new AtomicReference<>(Optional.empty());
    private final ExecutorService worker = Executors.newSingleThreadExecutor(work -> {
        Thread thread = new Thread(work, "quarterlight-marks");
        thread.setDaemon(true);
        return thread;
    });

    /** @param read told on the event thread */
    LiveReading(DeskParts parts, Path folder, BiConsumer<MarkDraft, JudgedMark> read) {
        this.parts = parts;
        this.folder = folder;
        this.read = read;
    }

    /** Reads a draft in place of a row of the visit, or beside its rows; nothing if the draft is no mark yet. */
    void request(VisitRecord visit, Optional<RecordId> row, MarkDraft draft) {
        draft.mark().ifPresent(mark -> {
            Wish wish = new Wish(visit, row, draft, mark);
            if (wanted.getAndSet(Optional.of(wish)).isEmpty()) {
                worker.execute(() -> wanted.getAndSet(Optional.empty()).ifPresent(this::work));
            }
        });
    }

    private void work(Wish wish) {
        try {
            RecordId id = wish.row().orElse(FRESH);
            MarksReport report = MarksReport.of(
                    wish.visit().withMarks(marks(wish, id)), parts.work().patterns(folder));
            report.marks().stream()
                    .filter(mark -> mark.row().equals(id))
                    .findFirst()
                    .ifPresent(mark -> SwingUtilities.invokeLater(() -> read.accept(wish.draft(), mark)));
        } catch (TableUnreadable | RuntimeException e) {
            SwingUtilities.invokeLater(() -> parts.problems().failed(e));
        }
    }

    private static List<Recorded<Mark>> marks(Wish wish, RecordId id) {
        List<Recorded<Mark>> marks = new ArrayList<>();
        boolean there = false;
        for (Recorded<Mark> row : wish.visit().marks()) {
            boolean same = row.id().equals(id);
            there |= same;
            marks.add(same ? new Recorded<>(id, wish.mark()) : row);
        }
        if (!there) {
            marks.add(new Recorded<>(id, wish.mark()));
        }
        return marks;
    }
}
