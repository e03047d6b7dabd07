package quarterlight.words.rule;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import quarterlight.words.Draft;
import quarterlight.words.TimedWords;
import quarterlight.words.clause.Circumstances;
import quarterlight.words.clause.Corrections;
import quarterlight.words.clause.DraftBuilder;
import quarterlight.words.clause.Heard;
import quarterlight.words.clause.Moment;
import quarterlight.words.clause.Rule;
import quarterlight.words.clause.SpokenContext;
import quarterlight.words.lexicon.Lexicon;
import quarterlight.words.lexicon.TermKind;
import quarterlight.words.place.CarZones;
import quarterlight.words.place.PlaceSource;
import quarterlight.words.place.Scene;
import quarterlight.words.text.Clause;
import quarterlight.words.text.Clauses;
import quarterlight.words.text.Token;
import quarterlight.words.text.Tokens;
import quarterlight.words.weigh.Weights;

/** Reads the words of a walk and works drafts out of them. Pure: the same words give the same drafts. */
public final class Listening {
    private static final Set<String> ENGINE =
            Set.of("Starts from cold", "Starts again warm", "Idles", "Oil pressure warm", "Smoke at the exhaust");
    private static final double SAME_S = 6;

    private Listening() {}

    /** @param parts the parts of one walk in order */
    public static List<Draft> drafts(List<TimedWords> parts, CarZones car, Lexicon lexicon, Weights weights) {
        return hear(parts, car, lexicon, weights).drafts();
    }

    /**
     * The drafts with the clauses from which they follow.
     *
     * @param parts the parts of one walk in order
     */
    public static Heard hear(List<TimedWords> parts, CarZones car, Lexicon lexicon, Weights weights) {
        List<Moment> moments = new ArrayList<>();
        Scene scene = new Scene(car);
        for (TimedWords part : parts) {
            scene.part();
            for (Clause clause : clauses(part, lexicon)) {
                moments.add(new Moment(clause, scene.enter(clause), moments.size(), moments));
                clause.all(TermKind.ITEM)
                        .filter(m -> ENGINE.contains(m.value()) && scene.focus().how() != PlaceSource.NAMED)
                        .findFirst()
                        .ifPresent(m -> scene.focus("engine", "engine"));
            }
        }
        List<DraftBuilder> found = new ArrayList<>();
        SpokenContext ear = new SpokenContext(car);
        List<Rule> rules = List.of(
                new ThicknessRule(ear),
                new MarkRule(),
                new OdometerRule(),
                new TrialRule(),
                new SignRule(),
                new StatementRule(),
                new NotLookedRule(),
                new ClaimRule(),
                new GaugeRule(ear),
                new SameRule());
        for (Moment moment : moments) {
            rules.forEach(rule -> rule.read(moment, found));
        }
        Corrections.apply(moments, found);
        Map<Integer, List<DraftBuilder>> byClause =
                found.stream().collect(Collectors.groupingBy(finding -> finding.index));
        for (DraftBuilder finding : found) {
            Circumstances.add(moments.get(finding.index), byClause.get(finding.index), finding, car);
        }
        List<DraftBuilder> apart = found.stream()
                .flatMap(finding -> finding.each(moments.get(finding.index)).stream())
                .collect(Collectors.toCollection(ArrayList::new));
        Map<String, Integer> clauseOf = new HashMap<>();
        List<Draft> drafts = drafts(apart, weights, clauseOf);
        return new Heard(moments, drafts, clauseOf);
    }

    static List<Clause> clauses(TimedWords part, Lexicon lexicon) {
        List<Token> tokens = lexicon.meant(Tokens.of(part));
        return tokens.isEmpty() ? List.of() : Clauses.of(part.source(), tokens, lexicon.mentions(tokens));
    }

    private static List<Draft> drafts(List<DraftBuilder> found, Weights weights, Map<String, Integer> clauseOf) {
        Map<String, Draft> last = new HashMap<>();
        List<Draft> drafts = new ArrayList<>();
        Set<String> ids = new HashSet<>();
        found.sort((a, b) -> a.index - b.index);
        for (DraftBuilder finding : found) {
            Draft draft = draft(finding, weights, ids);
            clauseOf.put(draft.id(), finding.index);
            String content = draft.source() + draft.what() + draft.zones() + draft.facets();
            Draft before = last.get(content);
            if (before != null
                    && draft.atSeconds() - before.atSeconds() < SAME_S
                    && !before.withdrawn()
                    && !draft.withdrawn()) {
                if (before.p() < draft.p()) {
                    drafts.set(drafts.indexOf(before), draft);
                    last.put(content, draft);
                }
            } else {
                drafts.add(draft);
                last.put(content, draft);
            }
        }
        return List.copyOf(drafts);
    }

    private static Draft draft(DraftBuilder finding, Weights weights, Set<String> ids) {
        Clause clause = finding.clause;
        List<String> features = List.copyOf(finding.features());
        String content = clause.source()
                + '|'
                + Math.round(clause.at())
                + '|'
                + finding.what
                + '|'
                + finding.zones
                + '|'
                + new java.util.TreeMap<>(finding.facets());
        String id = String.format(Locale.ROOT, "%08x", content.hashCode());
        while (!ids.add(id)) {
            id = id + "x";
        }
        return new Draft(
                id,
                clause.source(),
                clause.at(),
                Math.max(clause.at(), finding.until),
                finding.what,
                finding.zones,
                finding.facets(),
                finding.words,
                weights.p(finding.what, features),
                finding.reasons(),
                features,
                finding.withdrawn);
    }
}
