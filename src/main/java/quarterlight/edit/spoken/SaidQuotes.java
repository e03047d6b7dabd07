package quarterlight.edit.spoken;

import static quarterlight.language.Sentences.say;

import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import quarterlight.car.ZoneCatalog;
import quarterlight.table.TableUnreadable;
import quarterlight.visit.VisitRecord;
import quarterlight.visit.photo.MediaKind;
import quarterlight.visit.photo.PhotoId;
import quarterlight.visit.pin.RecordId;
import quarterlight.visit.pin.Recorded;
import quarterlight.visit.statement.Statement;
import quarterlight.words.Draft;

/**
 * What pages for the buyer tell of statements that were said on film or memo: {@code said at 3:12}, with the words where the statement is put otherwise and
 * the file of words is released. Of a statement that points at a held-back memo, the buyer's filter has taken the moment already, and nothing is told.
 */
public final class SaidQuotes {
    private static final double SAME_SECOND = 0.011;

    private SaidQuotes() {}

    /**
     * By the statement; none where the visit has no words.
     *
     * @param whole the visit as it is
     * @param open the same as a buyer may see it; its statements alone are told of
     * @param folder of the visit
     * @param settings the folder in which the user's own lists of words lie, if there are any
     * @throws TableUnreadable if one of the user's own lists cannot be used
     */
    public static Map<RecordId, String> of(
            VisitRecord whole, VisitRecord open, Path folder, ZoneCatalog zones, Path settings) throws TableUnreadable {
        boolean spoken = whole.photos().stream().anyMatch(photo -> photo.file().kind() == MediaKind.WORDS)
                && open.statements().stream()
                        .anyMatch(row -> row.value().atSeconds().isPresent());
        return spoken ? of(open, VisitWalk.of(whole, folder, zones, settings)) : Map.of();
    }

    private static Map<RecordId, String> of(VisitRecord open, VisitWalk walk) {
        Map<RecordId, String> said = new HashMap<>();
        for (Recorded<Statement> row : open.statements()) {
            text(row.value(), open, walk).ifPresent(text -> said.put(row.id(), text));
        }
        return said;
    }

    private static Optional<String> text(Statement statement, VisitRecord open, VisitWalk walk) {
        if (statement.photo().isEmpty() || statement.atSeconds().isEmpty()) {
            return Optional.empty();
        }
        List<Draft> then = walk.drafts().stream()
                .filter(draft ->
                        Math.abs(draft.atSeconds() - statement.atSeconds().get()) < SAME_SECOND)
                .filter(draft ->
                        isOf(walk.parts().get(draft.source()), statement.photo().get()))
                .toList();
        String at = SpokenQuote.clock(statement.atSeconds().get());
        if (then.stream().anyMatch(draft -> plain(draft.words()).equals(plain(statement.text())))) {
            return Optional.of(say("draft.said-at", at));
        }
        return then.stream()
                .filter(draft -> isOpen(walk.parts().get(draft.source()), open))
                .findFirst()
                .map(draft -> say("draft.said-at.words", at, draft.words().strip()));
    }

    private static boolean isOf(VisitWalk.Part part, PhotoId photo) {
        return part.evidence().id().equals(photo);
    }

    private static boolean isOpen(VisitWalk.Part part, VisitRecord open) {
        return open.photo(part.words().id()).isPresent();
    }

    private static String plain(String text) {
        return text.strip().replaceAll("\\s+", " ").toLowerCase(Locale.ROOT);
    }
}
