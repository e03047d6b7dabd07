package quarterlight.words.clause;

import static quarterlight.language.Sentences.say;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import quarterlight.units.Worded;
import quarterlight.visit.mark.MarkKind;
import quarterlight.visit.statement.Certainty;
import quarterlight.visit.statement.Condition;
import quarterlight.visit.statement.Origin;
import quarterlight.visit.statement.SaidBy;
import quarterlight.visit.trial.SignKind;
import quarterlight.visit.trial.TrialResult;

/** What words of a walk mean, as people read it in the language in hand: drafts keep the English words of files and keys. */
public final class Meaning {
    private static final String AS_BUILT = "as built";

    private static final List<Function<String, Optional<? extends Worded>>> KNOWN = List.of(
            word -> Worded.find(Condition.class, word),
            word -> Worded.find(Origin.class, word),
            word -> Worded.find(TrialResult.class, word),
            word -> Worded.find(SignKind.class, word),
            word -> Worded.find(MarkKind.class, word),
            word -> Worded.find(SaidBy.class, word),
            word -> Worded.find(Certainty.class, word));

    private Meaning() {}

    /** A word of a closed list by its name in the language in hand; any other as it is. */
    public static String said(String word) {
        for (Function<String, Optional<? extends Worded>> list : KNOWN) {
            Optional<? extends Worded> found = list.apply(word);
            if (found.isPresent()) {
                return found.get().said();
            }
        }
        return word.equals(AS_BUILT) ? say("draft.as-built") : word;
    }

    /** Words as they were spoken, and what they mean. */
    public static String quote(String spoken, String meaning) {
        return say("draft.quote", spoken, meaning);
    }
}
