package quarterlight.words.place;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import quarterlight.words.lexicon.Mention;
import quarterlight.words.lexicon.PartName;
import quarterlight.words.lexicon.TermKind;
import quarterlight.words.text.Clause;
import quarterlight.words.text.SpokenNumber;
import quarterlight.words.text.WordSet;

/** How a part stands in its clause: behind which preposition, with which side, as one or several. Pure. */
final class Phrasing {
    private static final Set<String> MODIFIERS = WordSet.of(
            "'s a all an and any as chrome each every factory four hand her his inner its little lower main my new no"
                    + " of old one original outer plastic same side that the their these this those two upper whole your"
                    + " ");
    /** Several of these are on one part. */
    private static final Set<String> SUBPARTS =
            WordSet.of("hinges drains nuts studs bolts handles bushings screws clips springs pads bows straps");

    /** Behind these "it" is a subject: "and then it drops off". */
    private static final Set<String> BEFORE_IT = Set.of("", "and", "but", "so", "then", "where", "when", "because");

    private static final Set<String> PLURALS_OF_ONE = Set.of("seats", "lines", "brakes", "springs");

    private Phrasing() {}

    /** "the hose is in the way": what hides the place is not the place. */
    static boolean obstacle(Clause clause, Mention part) {
        return clause.all(TermKind.NOTLOOKED)
                .anyMatch(m ->
                        clause.word(m.to() - 1).equals("way") && m.from() >= part.to() && m.from() - part.to() <= 4);
    }

    /** "which agrees with the plate on the dash": what it is compared with is not the place. */
    static boolean compared(Clause clause, Mention part) {
        return clause.all(TermKind.ORIGIN)
                .anyMatch(m -> (clause.word(m.from()).startsWith("agree")
                                || clause.word(m.from()).startsWith("match"))
                        && m.from() < part.from());
    }

    /** "the rear ones": of both sides. */
    static boolean several(Clause clause) {
        return clause.tokens().stream().anyMatch(t -> t.is("ones"));
    }

    /** "driver's", "passenger's": who sits in front. */
    static boolean occupant(Clause clause, Sides.Said side) {
        String word = clause.word(side.from());
        return word.startsWith("driver") || word.startsWith("passenger");
    }

    /** Of two on a side, the driver's is the front one. */
    static boolean besideSeat(PartName name) {
        return name.zones().stream()
                .flatMap(java.util.List::stream)
                .anyMatch(zone -> zone.startsWith("door-") || zone.startsWith("floor-"));
    }

    /** "the other one", "left one": one of two that were spoken of. */
    static boolean oneOfTwo(Clause clause, List<Sides.Said> sides) {
        return sides.stream()
                .anyMatch(s -> s.from() <= 2
                        && (clause.word(s.to() - 1).equals("one")
                                || clause.word(s.to()).equals("one")
                                        && !SpokenNumber.isNumberWord(clause.word(s.to() + 1))));
    }

    /** "a two-door" is a car. */
    static boolean counted(Clause clause, Mention part) {
        return clause.word(part.from()).equals("door")
                && Set.of("two", "four", "2", "4").contains(clause.word(part.from() - 1));
    }

    static boolean joined(Clause clause, int from, int to) {
        boolean and = false;
        for (int i = from; i < to; i++) {
            String word = clause.word(i);
            and |= word.equals("and");
            if (!and
                    || !MODIFIERS.contains(word)
                            && !Set.of("left", "right", "rear", "front").contains(word)) {
                return false;
            }
        }
        return and;
    }

    static String preposition(Clause clause, Mention part) {
        int i = part.from() - 1;
        while (i >= 0
                && (MODIFIERS.contains(clause.word(i)) && !clause.word(i).equals("of")
                        || WordSet.of("both driver driver's front left other passenger rear right ")
                                .contains(clause.word(i))
                        || i == part.from() - 1 && clause.word(i).equals("back"))) {
            i--;
        }
        String word = clause.word(i);
        if (Set.of("than", "as", "like").contains(clause.word(i - 1))) {
            return "than";
        }
        if (i == 0 && Set.of("underneath", "inside", "outside").contains(word)) {
            return "";
        }
        if (word.equals("of") && i > 0) {
            String before = clause.word(i - 1);
            return Set.of("front", "ahead", "out").contains(before) ? "behind" : "of";
        }
        return word;
    }

    static boolean plural(Clause clause, Mention part) {
        String last = clause.word(part.to() - 1);
        if (last.equals("'s") || SUBPARTS.contains(last)) {
            return false;
        }
        return last.endsWith("s")
                && !last.endsWith("ss")
                && !last.equals("glass")
                && !last.equals("chassis")
                && !PLURALS_OF_ONE.contains(last)
                && !clause.word(part.to()).equals("'s");
    }

    static boolean gapOnly(Clause clause, int from, int to) {
        for (int i = from; i < to; i++) {
            String word = clause.word(i);
            if (!MODIFIERS.contains(word)
                    && !Set.of("left", "right", "front", "rear").contains(word)) {
                return false;
            }
        }
        return to - from <= 4;
    }

    /** The side that goes with a part: before it in its noun phrase, close behind it, or anywhere in the clause if no other part stands nearer. */
    static Optional<Sides.Said> near(Clause clause, Mention part, List<Sides.Said> sides) {
        Optional<Sides.Said> before = sides.stream()
                .filter(s -> s.to() <= part.from() && gapOnly(clause, s.to(), part.from()))
                .reduce((a, b) -> b);
        if (before.isPresent()) {
            return before;
        }
        Optional<Sides.Said> across = sides.stream()
                .filter(s -> s.from() <= part.from() && s.to() > part.from() && s.to() < part.to())
                .findFirst();
        if (across.isPresent()) {
            return across;
        }
        return sides.stream()
                .filter(s -> s.from() >= part.to() || s.to() <= part.from())
                .filter(s -> clause.all(TermKind.PART)
                        .noneMatch(p -> !p.overlaps(part) && s.to() <= p.from() && gapOnly(clause, s.to(), p.from())))
                .min(Comparator.comparingInt(s -> Math.abs(s.from() - part.to())))
                .or(() -> sides.stream().filter(s -> s.from() >= part.to()).findFirst());
    }

    /** "spot welds" of the seam is no part although "spot" might be one: a longer phrase of another kind goes first. */
    static boolean inSaying(Clause clause, Mention part) {
        boolean verb = clause.word(part.from() - 1).equals("it")
                && clause.word(part.from()).endsWith("s")
                && BEFORE_IT.contains(clause.word(part.from() - 2));
        if (verb) {
            return true;
        }
        return clause.mentions().stream()
                .filter(m -> m.kind() != TermKind.PART
                        && m.kind() != TermKind.SUBJECT
                        && m.kind() != TermKind.ITEM
                        && m.kind() != TermKind.MARK
                        && m.kind() != TermKind.REGION)
                .filter(m -> m.kind() != TermKind.CONDITION || m.length() > part.length())
                .filter(m -> m.kind() != TermKind.NOTTRIED
                        || !clause.word(part.from() - 1).equals("no"))
                .anyMatch(m -> m.from() <= part.from() && m.to() >= part.to() && m.length() > part.length());
    }
}
