package quarterlight.marks.judge;

import static quarterlight.language.Sentences.say;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.stream.Collectors;
import quarterlight.marks.code.UnreadLetter;
import quarterlight.marks.code.VehicleNumber;
import quarterlight.units.Worded;

/**
 * Two numbers that should say the same, letter by letter; an unread letter on either side agrees with any. Blanks, hyphens and
 * stars do not count.
 *
 * @param read as read, all its views together
 * @param against what it is compared with, for the reader
 * @param expected as that says it
 * @param unread places, from 1, where a letter is unread on one side at least
 * @param differing places, from 1, where read letters differ; all places beyond the shorter one
 */
public record NumberMatch(String read, String against, String expected, List<Integer> unread, List<Integer> differing) {
    public NumberMatch {
        Objects.requireNonNull(read, "read");
        Objects.requireNonNull(against, "against");
        Objects.requireNonNull(expected, "expected");
        unread = List.copyOf(unread);
        differing = List.copyOf(differing);
    }

    /** How two numbers stand. */
    public enum State implements Worded {
        AGREES,
        OPEN,
        DIFFERS;

        @Override
        public String word() {
            return name().toLowerCase(Locale.ROOT);
        }
    }

    public static NumberMatch of(String text, String against, String expected) {
        String a = VehicleNumber.plain(text);
        String b = VehicleNumber.plain(expected);
        List<Integer> unread = new ArrayList<>();
        List<Integer> differing = new ArrayList<>();
        for (int i = 0; i < Math.max(a.length(), b.length()); i++) {
            if (i >= a.length() || i >= b.length()) {
                differing.add(i + 1);
            } else if (a.charAt(i) == UnreadLetter.LETTER || b.charAt(i) == UnreadLetter.LETTER) {
                unread.add(i + 1);
            } else if (a.charAt(i) != b.charAt(i)) {
                differing.add(i + 1);
            }
        }
        return new NumberMatch(text, against, expected, unread, differing);
    }

    public State state() {
        return !differing.isEmpty() ? State.DIFFERS : unread.isEmpty() ? State.AGREES : State.OPEN;
    }

    /** What it says, without a full stop. */
    public String sentence() {
        return switch (state()) {
            case AGREES -> say("marks.match.agrees", against);
            case OPEN -> say("marks.match.open", against, places(unread));
            case DIFFERS -> say("marks.match.differs", against, places(differing), read, expected);
        };
    }

    private static String places(List<Integer> places) {
        String numbers = places.stream().map(String::valueOf).collect(Collectors.joining(", "));
        return say("marks.match.places", places.size(), numbers);
    }
}
