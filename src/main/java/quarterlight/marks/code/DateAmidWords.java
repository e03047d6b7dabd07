package quarterlight.marks.code;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * A date that stands among other words: {@code RECONDITIONED 3/81}. The longest run of words that reads as a date counts, the first of
 * those of one length. A run of bare letters and digits, such as a part number, counts only after a word that announces a date.
 *
 * @param text the words that are the date
 * @param words the other words, as they stand
 * @param completions what the date can mean
 */
public record DateAmidWords(String text, String words, List<Completion> completions) {
    private static final Pattern UNMISTAKABLE = Pattern.compile(".*\\d.*[ /.-].*\\d.*|.*[A-Z]{3}.*\\d.*");
    private static final Set<String> ANNOUNCING =
            Set.of("DATE", "DATED", "DATE:", "MADE", "MFD", "MFD.", "MFG", "MFG.", "BUILT", "CAST", "CODE", "CODE:");
    private static final Set<String> REWORKED = Set.of(
            "RECONDITIONED",
            "REBUILT",
            "REMANUFACTURED",
            "REMAN",
            "OVERHAULED",
            "RECORED",
            "RELINED",
            "EXCHANGE",
            "SERVICE");
    private static final int MAX_WORDS = 3;

    public DateAmidWords {
        completions = List.copyOf(completions);
    }

    /** True if the other words say that the date is one of rework, not of making. */
    public boolean isRework() {
        return Arrays.stream(words.toUpperCase(Locale.ROOT).split("[ ,;:.]+")).anyMatch(REWORKED::contains);
    }

    /** Finds the date in a text of several words that is none as a whole. */
    static Optional<DateAmidWords> find(String text, DatePatterns patterns) {
        List<String> words = List.of(text.strip().split("[\\s,;]+"));
        for (int length = Math.min(MAX_WORDS, words.size() - 1); length > 0; length--) {
            for (int at = 0; at + length <= words.size(); at++) {
                String run = String.join(" ", words.subList(at, at + length));
                if (!isMarked(words, at, run) || UnreadLetter.count(run) > DatePatterns.MAX_UNREAD) {
                    continue;
                }
                List<Completion> completions = patterns.read(run);
                if (!completions.isEmpty()) {
                    return Optional.of(new DateAmidWords(run, others(words, at, length), completions));
                }
            }
        }
        return Optional.empty();
    }

    private static boolean isMarked(List<String> words, int at, String run) {
        boolean announced = at > 0 && ANNOUNCING.contains(words.get(at - 1).toUpperCase(Locale.ROOT));
        return announced || UNMISTAKABLE.matcher(run.toUpperCase(Locale.ROOT)).matches();
    }

    private static String others(List<String> words, int at, int length) {
        return java.util.stream.Stream.concat(
                        words.subList(0, at).stream(), words.subList(at + length, words.size()).stream())
                .collect(Collectors.joining(" "));
    }
}
