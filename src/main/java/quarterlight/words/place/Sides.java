package quarterlight.words.place;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import quarterlight.words.lexicon.Mention;
import quarterlight.words.lexicon.TermKind;
import quarterlight.words.text.Clause;
import quarterlight.words.text.SpokenNumber;
import quarterlight.words.text.WordSet;

/** Which words of a clause mean a side of the car: "right front" does, "right there" and "left alone" do not. Pure. */
final class Sides {
    /** @param pointed true for "the other one": it counts from what was spoken of before */
    record Said(SpokenSide side, int from, int to, boolean pointed) {}

    private static final Set<String> NOT_AFTER_RIGHT = WordSet.of(
            "about above across after age ahead along angle around as at away back before behind below beside by color"
                    + " colour down for here in inside into kind material next now off on out outside over part place"
                    + " shade size sound stuff style then there thing through to type under up way where with year ");
    private static final Set<String> NOT_BEFORE_RIGHT = WordSet.of(
            "'s about all are aren't be don't feels is isn't it's just look looks not quite reads seems sit sits "
                    + "sounds that's was were ");
    private static final Set<String> NOT_BEFORE_LEFT =
            WordSet.of("'s are been got has have he i i've is it there's they was we were what's who whoever ");
    private static final Set<String> NOT_AFTER_LEFT =
            WordSet.of("a alone behind his it me of off open out over room some that the them to untouched with ");
    private static final Set<String> COMPARING = Set.of("as", "than", "like", "from", "matches", "match", "matching");
    private static final Set<String> NOUNS = Set.of("one", "side", "hand", "front", "rear", "ones", "corner");

    private Sides() {}

    static List<Said> in(Clause clause, SpokenSide driver, SpokenSide now, SpokenSide focus) {
        List<Said> said = new ArrayList<>();
        clause.all(TermKind.SIDE).filter(m -> valid(clause, m)).forEach(m -> {
            Said one = meant(m, driver, now, focus);
            said.add(one);
        });
        return said;
    }

    /** "the battery tray on the passenger's side", "over on the right side the gutter": the walk is on that side. */
    static Optional<SpokenSide> ofWalk(Clause clause, List<Said> sides) {
        return sides.stream()
                .filter(s -> s.side() != SpokenSide.BOTH && !s.pointed())
                .filter(s -> clause.word(s.to() - 1).startsWith("side")
                        || clause.word(s.to()).startsWith("side")
                        || clause.word(s.to() + 1).equals("side"))
                .map(Said::side)
                .findFirst();
    }

    /** "Same over here on the right": of what points and what names, what names. */
    static List<Said> explicit(List<Said> sides) {
        List<Said> named = sides.stream().filter(s -> !s.pointed()).toList();
        return named.isEmpty() ? sides : named;
    }

    private static Said meant(Mention m, SpokenSide driver, SpokenSide now, SpokenSide focus) {
        return switch (m.value()) {
            case "left" -> new Said(SpokenSide.LEFT, m.from(), m.to(), false);
            case "right" -> new Said(SpokenSide.RIGHT, m.from(), m.to(), false);
            case "driver" -> new Said(driver, m.from(), m.to(), false);
            case "passenger" -> new Said(driver.opposite(), m.from(), m.to(), false);
            case "both" -> new Said(SpokenSide.BOTH, m.from(), m.to(), false);
            case "other" -> new Said((focus == SpokenSide.BOTH ? now : focus).opposite(), m.from(), m.to(), true);
            case "that" -> new Said(focus == SpokenSide.BOTH ? now : focus, m.from(), m.to(), true);
            default -> new Said(now, m.from(), m.to(), true);
        };
    }

    /** "the other three" are no side, and "other" by itself only before a part. */
    private static boolean valid(Clause clause, Mention m, String after) {
        boolean counted = !after.equals("one") && SpokenNumber.isNumberWord(after);
        boolean bare = m.length() == 1 && clause.word(m.from()).equals("other");
        return !counted
                && (!bare
                        || clause.all(TermKind.PART)
                                .anyMatch(p -> p.from() == m.to() || p.from() == m.to() + 1 && m.from() <= 1));
    }

    private static boolean valid(Clause clause, Mention m) {
        String before = clause.word(m.from() - 1);
        String after = clause.word(m.to());
        boolean single = m.length() == 1;
        String ahead = before.equals("the") ? clause.word(m.from() - 2) : before;
        if (COMPARING.contains(ahead) || clause.word(m.from()).equals("the") && COMPARING.contains(before)) {
            return false;
        }
        if (single && clause.word(m.from()).equals("right")) {
            if (NOUNS.contains(after) || before.equals("the") || before.equals("and") || before.equals("rear")) {
                return !after.equals("kind") && !after.equals("color") && !after.equals("one")
                        || !before.equals("the")
                        || NOUNS.contains(after);
            }
            return !NOT_AFTER_RIGHT.contains(after) && !NOT_BEFORE_RIGHT.contains(before);
        }
        if (single && clause.word(m.from()).equals("left")) {
            return NOUNS.contains(after) || !NOT_AFTER_LEFT.contains(after) && !NOT_BEFORE_LEFT.contains(before);
        }
        if (m.value().equals("other")) {
            return valid(clause, m, after);
        }
        if (m.value().equals("driver")) {
            return !before.equals("screw") && !after.equals("quality");
        }
        if (m.value().equals("both")) {
            return !after.equals("ends")
                    && !after.equals("faces")
                    && !after.equals("times")
                    && !after.equals("speeds")
                    && !after.equals("of");
        }
        return true;
    }
}
