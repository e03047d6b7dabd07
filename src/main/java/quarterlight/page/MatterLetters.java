package quarterlight.page;

import static quarterlight.language.Sentences.say;

import java.util.List;
import java.util.stream.Collectors;
import quarterlight.diagram.ink.LetterMark;
import quarterlight.matters.Matter;
import quarterlight.matters.Matters;
import quarterlight.visit.statement.Severity;

/** The letters of what matters as they stand on a drawing, the same on every page. */
public final class MatterLetters {
    private MatterLetters() {}

    /** One at each zone of each matter of the first page, save where it concerns too many. */
    public static List<LetterMark> of(Matters matters) {
        return matters.lettered().stream()
                .filter(matter -> !matter.isWidespread())
                .flatMap(matter -> matter.zones().stream()
                        .map(zone -> new LetterMark(
                                String.valueOf(matter.letter().orElseThrow()),
                                zone,
                                matter.severity() == Severity.GRAVE)))
                .toList();
    }

    /** Which letters of the first page the drawing does not bear, in a sentence after another; empty if it bears all. */
    public static String notDrawn(Matters matters) {
        String letters = matters.lettered().stream()
                .filter(Matter::isWidespread)
                .map(matter -> String.valueOf(matter.letter().orElseThrow()))
                .collect(Collectors.joining(say("diagram.matter-letters.and")));
        return letters.isEmpty() ? "" : say("diagram.matter-letters.not-drawn-of-too-many", letters);
    }
}
