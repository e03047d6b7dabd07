package quarterlight.words.text;

import java.util.Arrays;
import java.util.Set;
import java.util.stream.Collectors;

/** Makes a set of words from a text in which they stand between blanks. */
public final class WordSet {
    private WordSet() {}

    public static Set<String> of(String words) {
        return Arrays.stream(words.strip().split("\\s+")).collect(Collectors.toUnmodifiableSet());
    }
}
