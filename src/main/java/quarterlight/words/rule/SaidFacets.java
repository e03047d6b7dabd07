package quarterlight.words.rule;

import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import quarterlight.units.Worded;
import quarterlight.visit.statement.Condition;
import quarterlight.visit.statement.Origin;
import quarterlight.words.Cue;
import quarterlight.words.Draft;
import quarterlight.words.DraftKind;
import quarterlight.words.Facet;
import quarterlight.words.TimedWords;
import quarterlight.words.lexicon.Lexicon;
import quarterlight.words.place.CarZones;
import quarterlight.words.weigh.Weights;

/**
 * What a written sentence seems to say of a part: origins and conditions to offer, never to keep unasked. Where words deny something, no
 * work, harm or rust is offered, and no origin follows from it: that a panel was not repaired does not make it original. Immutable.
 */
public record SaidFacets(Set<Origin> origins, Set<Condition> conditions) {
    public static final SaidFacets NONE = new SaidFacets(Set.of(), Set.of());
    private static final double SECONDS = 9;
    /** Beyond one of these, what was denied is denied no longer. */
    private static final Pattern BREAK =
            Pattern.compile("[,;.:]+(?=\\s|$)|\\b(?:but|except|only|just|though|however)\\b", Pattern.CASE_INSENSITIVE);

    private static final Pattern DENYING =
            Pattern.compile("\\b(?:no|not|never|none|nor|neither|without|nothing|free of)\\b|n['\u2019]t\\b");
    /** What a denying clause may say all the same. */
    private static final Set<Condition> SAID_BY_DENYING =
            Set.of(Condition.NO_RUST, Condition.SOUND, Condition.MISSING, Condition.NOT_LOOKED_AT);

    public SaidFacets {
        origins = Set.copyOf(origins);
        conditions = Set.copyOf(conditions);
    }

    /** @param sentence as far as it is written */
    public static SaidFacets of(String sentence, CarZones car, Lexicon lexicon, Weights weights) {
        Set<Origin> origins = EnumSet.noneOf(Origin.class);
        Set<Condition> conditions = EnumSet.noneOf(Condition.class);
        for (String clause : BREAK.split(sentence)) {
            if (clause.isBlank()) {
                continue;
            }
            boolean denying = DENYING.matcher(clause.toLowerCase(Locale.ROOT)).find();
            TimedWords words = new TimedWords("", List.of(new Cue(0, SECONDS, clause.strip())));
            Listening.drafts(List.of(words), car, lexicon, weights).stream()
                    .filter(draft -> !draft.withdrawn() && !goesTooFar(draft, clause))
                    .forEach(draft -> add(draft, denying, origins, conditions));
        }
        return new SaidFacets(origins, conditions);
    }

    private static void add(Draft draft, boolean denying, Set<Origin> origins, Set<Condition> conditions) {
        if (draft.what() == DraftKind.STATEMENT) {
            word(Origin.class, draft, Facet.ORIGIN).ifPresent(origins::add);
            word(Condition.class, draft, Facet.CONDITION)
                    .filter(condition -> !denying || SAID_BY_DENYING.contains(condition))
                    .ifPresent(conditions::add);
        } else if (draft.what() == DraftKind.NOT_LOOKED_AT) {
            conditions.add(Condition.NOT_LOOKED_AT);
        }
    }

    /** "Not repaired" is not yet original, and "not rusted through" is not yet without rust. */
    private static boolean goesTooFar(Draft draft, String clause) {
        boolean denied = draft.features().contains("denied");
        return denied && draft.features().contains("condition-as-built")
                || draft.features().contains("condition-no-rust")
                        && (denied || clause.toLowerCase(Locale.ROOT).contains("through"));
    }

    private static <E extends Enum<E> & Worded> Optional<E> word(Class<E> type, Draft draft, Facet facet) {
        return draft.facet(facet).flatMap(word -> Worded.find(type, word));
    }

    public boolean isEmpty() {
        return origins.isEmpty() && conditions.isEmpty();
    }
}
