package quarterlight.words.text;

import java.util.Set;
import quarterlight.words.lexicon.TermKind;

/** The small words by which clauses are told apart: those that open, join, hold or carry a clause. */
final class CutWords {
    static final Set<String> OPENERS =
            WordSet.of("alright anyhow anyway moving next now ok okay right-o so then uh um well ");

    static final Set<String> JOINERS =
            WordSet.of("although because but cause except otherwise plus though whereas which while ");

    static final Set<String> SUBJECTS = WordSet.of(
            "everything he he's here's i i'd i'll i'm i've it it's looks nobody nothing she she's somebody someone"
                    + " that that's there there's these they they're they've this those we we've what's whoever you you're"
                    + " you've ");

    static final Set<String> PREPOSITIONS = WordSet.of(
            "about above across against ahead along around as at back behind below beneath beside between by down for"
                    + " from in inside into like near of off on onto out outside over past round than through till to"
                    + " toward towards under underneath until up with without ");

    static final Set<String> BEFORE_PART = WordSet.of(
            "'s a all an any back both driver driver's drivers each every factory far front hand his inner its left"
                    + " little lower main my near nearside no offside old original other outer passenger passengers rear"
                    + " right same side that the these this those upper whole your ");

    /** Prepositions that often end a thought by themselves: "7 above". */
    static final Set<String> PARTICLES =
            WordSet.of("above below up down out back around off over through inside outside behind apart on in");

    static final Set<String> ADJECTIVES = WordSet.of("original factory new old little same whole main big brand");

    /** Before a part these may also end what was said of another. */
    static final Set<String> OF_KIND = Set.of("old", "whole", "main");

    /** What stands behind these is their object, not a new subject. */
    static final Set<String> VERBS = WordSet.of(
            "is was are were be been has have had got get see need needs want wants cut hit jumped pulled opened"
                    + " called call isn't wasn't aren't never just");

    static final Set<String> PREDICATES =
            WordSet.of("'s is was are were has have had got needs wants looks feels sounds goes gone does been");

    /** Between figures these are part of a code or a reading. */
    static final Set<String> CODED = WordSet.of("dash half hyphen microns mil mils quarter quarters thou ");

    /** A side without its part may begin with these: "left one", "same side". */
    static final Set<String> SIDE_HEADS = WordSet.of(
            "both driver drivers far front left nearside offside other passenger passengers rear right same ");

    /** Before a side these end a place: "on the right". */
    static final Set<String> PLACING = WordSet.of("along down from on over round to ");

    static final Set<String> DETERMINERS =
            WordSet.of("the a an this that my his your its no all every these those 's each any her their both");

    static final Set<String> SIDES = WordSet.of(
            "left right front rear driver passenger driver's drivers passengers other outer inner lower upper far near"
                    + " main whole hand old nearside offside");

    static final Set<TermKind> SAYING = Set.of(
            TermKind.CONDITION,
            TermKind.ORIGIN,
            TermKind.SIGN,
            TermKind.SIGNNO,
            TermKind.GOOD,
            TermKind.BAD,
            TermKind.PARTIAL,
            TermKind.NOTTRIED,
            TermKind.NOTFITTED,
            TermKind.BYPASSED,
            TermKind.NOTLOOKED,
            TermKind.UNIT,
            TermKind.OVERRANGE,
            TermKind.SAME);

    /** What can be the subject of a clause. */
    static final Set<TermKind> NAMING =
            Set.of(TermKind.PART, TermKind.ITEM, TermKind.ODOMETER, TermKind.MARK, TermKind.CLAIM, TermKind.SUBJECT);

    private CutWords() {}

    /** Whether a word that can open a sentence does so after the word before it. */
    static boolean opens(String word, String before) {
        if (word.equals("now")) {
            return !before.equals("right") && !before.equals("for") && !before.equals("by");
        }
        if (word.equals("so")) {
            return !WordSet.of("are ever is just not or say think was ").contains(before);
        }
        if (word.equals("well")) {
            return !WordSet.of("as pretty real spare tire very wheel works ").contains(before);
        }
        if (word.equals("next")) {
            return !Set.of("the", "right").contains(before);
        }
        return true;
    }

    static boolean verbLike(String word) {
        return word.endsWith("ed")
                || word.endsWith("ing")
                || WordSet.of("got put pull push get see hear let take give do did leave left have had make")
                        .contains(word);
    }
}
