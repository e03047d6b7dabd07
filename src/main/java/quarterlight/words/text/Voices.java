package quarterlight.words.text;

import java.util.List;
import java.util.Map;
import quarterlight.words.lexicon.Mention;
import quarterlight.words.lexicon.TermKind;

/** Who is speaking: captions mark a change of speaker, and the one who answers is not the inspector. */
record Voices(List<Token> tokens, Map<Integer, List<Mention>> byStart, boolean punctuated) {
    private static final int MAX_ANSWER = 25;

    /** Another voice answers: after a change of speaker that follows a question, or that the speaker soon takes back. */
    boolean told(int start, boolean before) {
        if (tokens.get(start).speaker()) {
            return !before && (asked(start) || answer(start) <= MAX_ANSWER);
        }
        boolean over = CutWords.OPENERS.contains(tokens.get(start).word())
                || byStart.getOrDefault(start, List.of()).stream().anyMatch(m -> m.kind() == TermKind.PART);
        int since = start;
        while (since > 0 && !tokens.get(since).speaker() && start - since < MAX_ANSWER) {
            since--;
        }
        return before && (punctuated || !over) && tokens.get(since).speaker() && !question(start);
    }

    private boolean asked(int start) {
        for (int k = Math.max(0, start - 10); k < start; k++) {
            if (tokens.get(k).shown().endsWith("?")
                    || question(k)
                    || tokens.get(k).is("sir", "ma'am", "mister")) {
                return true;
            }
        }
        return false;
    }

    private boolean question(int k) {
        return tokens.get(k)
                        .is(
                                "what", "where", "how", "who", "when", "why", "where'd", "how'd", "what's", "did",
                                "does", "do", "was", "is")
                || tokens.get(k).is("and")
                        && k + 1 < tokens.size()
                        && tokens.get(k + 1).is("where'd", "what", "how", "who", "did", "where");
    }

    /** How many words until the speaker changes again. */
    private int answer(int start) {
        int k = start + 1;
        while (k < tokens.size() && !tokens.get(k).speaker()) {
            k++;
        }
        return k - start;
    }
}
