package quarterlight.ui.marks;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BiConsumer;
import javax.swing.SwingUtilities;
import quarterlight.marks.MarksReport;
import quarterlight.marks.judge.JudgedMark;
import quarterlight.table.TableUnreadable;
import quarterlight.task.LatestWork;
import quarterlight.ui.kit.UiContext;
import quarterlight.visit.VisitRecord;
import quarterlight.visit.mark.Mark;
import quarterlight.visit.pin.RecordId;
import quarterlight.visit.pin.Recorded;

/** Reads a mark while it is written, in the background; what was overtaken is left out. */
final class LiveReading {
    /** The number of a mark that has none yet. */
    private static final RecordId FRESH = new RecordId(Long.MAX_VALUE);

    private record Wish(VisitRecord visit, Optional<RecordId> row, MarkDraft draft, Mark mark) {}

    private record Answer(MarkDraft draft, JudgedMark mark) {}

    private final UiContext parts;
    private final Path folder;
    private final LatestWork<Wish, Optional<Answer>> work;

    /** @param read told on the event thread */
    LiveReading(UiContext parts, Path folder, BiConsumer<MarkDraft, JudgedMark> read) {
        this.parts = parts;
        this.folder = folder;
        this.work = new LatestWork<>(
                "quarterlight-marks",
                SwingUtilities::invokeLater,
                (wish, course) -> answer(wish),
                answer -> answer.ifPresent(known -> read.accept(known.draft(), known.mark())),
                parts.problems()::failed);
    }

    /** Reads a draft in place of a row of the visit, or beside its rows; nothing if the draft is no mark yet. */
    void request(VisitRecord visit, Optional<RecordId> row, MarkDraft draft) {
        draft.mark().ifPresent(mark -> work.request(new Wish(visit, row, draft, mark)));
    }

    private Optional<Answer> answer(Wish wish) throws TableUnreadable {
        RecordId id = wish.row().orElse(FRESH);
        MarksReport report = MarksReport.of(
                wish.visit().withMarks(marks(wish, id)), parts.work().patterns(folder));
        return report.marks().stream()
                .filter(mark -> mark.row().equals(id))
                .findFirst()
                .map(mark -> new Answer(wish.draft(), mark));
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
