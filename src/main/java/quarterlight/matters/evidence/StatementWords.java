package quarterlight.matters.evidence;

import java.util.Arrays;
import java.util.Comparator;
import java.util.Locale;
import java.util.Optional;
import quarterlight.units.Worded;
import quarterlight.visit.statement.Statement;

/**
 * A statement as it stands alone, away from its zone's page: a few words ("lower third") say too little there, so the part and what was
 * stated of it go before them ("Filler: lower third."). A longer text stands as it was written.
 */
final class StatementWords {
    private static final int FEW = 4;
    private static final int STEM = 4;

    private StatementWords() {}

    static String of(Statement statement) {
        String text = statement.text().strip();
        if (text.split("\\s+").length > FEW) {
            return ZoneLookup.sentence(text);
        }
        String lower = text.toLowerCase(Locale.ROOT);
        Optional<String> part =
                statement.details().part().filter(name -> !lower.contains(name.toLowerCase(Locale.ROOT)));
        Optional<String> kind = statement
                .what()
                .condition()
                .map(Worded.class::cast)
                .or(() -> statement.what().origin())
                .filter(word -> !lower.contains(stem(word.word())) && !lower.contains(stem(word.said())))
                .map(Worded::said);
        String before = part.map(name -> kind.map(word -> name + ", " + word).orElse(name))
                .or(() -> kind)
                .map(words -> words + ": ")
                .orElse("");
        return ZoneLookup.sentence(before + text);
    }

    /** What the forms of a word share: of "does not belong" it is "belo", of "leaking" "leak". */
    private static String stem(String word) {
        String longest = Arrays.stream(word.split(" "))
                .max(Comparator.comparingInt(String::length))
                .orElseThrow()
                .toLowerCase(Locale.ROOT);
        return longest.substring(0, Math.min(STEM, longest.length()));
    }
}
