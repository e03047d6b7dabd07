package quarterlight.words.rule;

import static quarterlight.language.Sentences.say;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import quarterlight.words.DraftKind;
import quarterlight.words.Facet;
import quarterlight.words.clause.DraftBuilder;
import quarterlight.words.clause.Meaning;
import quarterlight.words.clause.Moment;
import quarterlight.words.clause.Negation;
import quarterlight.words.clause.Rule;
import quarterlight.words.lexicon.Mention;
import quarterlight.words.lexicon.TermKind;
import quarterlight.words.text.Clause;
import quarterlight.words.text.WordSet;

/** Functions and how they behaved: the function is named, the outcome stands in the same clause or in the next of the sentence. */
final class TrialRule implements Rule {
    private static final Set<String> OBSERVED = Set.of("Smoke at the exhaust", "Noise from axle or bearings");
    private static final Set<String> FAULTS = Set.of("damaged", "worn", "leaking", "noise", "smell", "blocked");
    private static final Set<TermKind> OUTCOMES = Set.of(
            TermKind.GOOD,
            TermKind.BAD,
            TermKind.PARTIAL,
            TermKind.NOTTRIED,
            TermKind.NOTFITTED,
            TermKind.BYPASSED,
            TermKind.CONDITION);
    private static final Set<String> VOLTS = Set.of("Battery at rest", "Charging");
    private static final Map<String, String> WHEELS = Map.of(
            "wheel-front-left",
            "Tread, left front",
            "wheel-front-right",
            "Tread, right front",
            "wheel-rear-left",
            "Tread, left rear",
            "wheel-rear-right",
            "Tread, right rear");
    /** Functions of which there is one on each side. */
    private static final Set<String> SIDED = Set.of("Headlamps", "Windows");

    private static final int LATELY = 3;
    private static final double LATELY_S = 15;

    /** "Horn? Nothing.": an answer of so few words belongs to the question. */
    private static final int MAX_ANSWER = 3;

    private static final Set<String> AWAY =
            WordSet.of("above around behind below by for in near off on over through under ");

    @Override
    public void read(Moment moment, List<DraftBuilder> found) {
        Clause clause = moment.clause();
        if (!moment.has(TermKind.ITEM)) {
            oneSide(moment, found);
        }
        List<Mention> items =
                clause.all(TermKind.ITEM).filter(m -> !named(clause, m)).toList();
        for (int i = 0; i < items.size(); i++) {
            Mention item = items.get(i);
            boolean twice = false;
            for (int k = 0; k < i; k++) {
                twice |= items.get(k).value().equals(item.value());
            }
            if (!twice) {
                trial(moment, item, items.size(), found);
            }
        }
    }

    /** Only where one is, such as "behind the horn", or part of a longer name. */
    private static boolean named(Clause clause, Mention m) {
        String before = clause.word(m.from() - 1);
        String word = before.equals("the") || before.equals("a") ? clause.word(m.from() - 2) : before;
        return AWAY.contains(word)
                || clause.all(TermKind.PART).anyMatch(p -> p.overlaps(m) && p.length() > m.length())
                || clause.all(TermKind.ITEM).anyMatch(p -> p.overlaps(m) && p.length() > m.length());
    }

    private static void trial(Moment moment, Mention item, int items, List<DraftBuilder> found) {
        List<Moment> rest = moment.rest();
        List<Moment> used = new ArrayList<>();
        Outcome outcome = new Outcome();
        outcome.hear(moment.clause(), item);
        boolean alone = !outcome.known();
        for (Moment next : alone && outcome.none ? List.<Moment>of() : rest) {
            if (used.size() < 3 && (alone || !ofOneSide(next.clause())) && outcome.hear(next.clause(), null)) {
                used.add(next);
            }
        }
        if (!outcome.known()
                && !outcome.none
                && moment.index() + 1 < moment.all().size()) {
            Moment next = moment.all().get(moment.index() + 1);
            boolean brief = next.clause().size() <= MAX_ANSWER
                    && next.clause().source().equals(moment.clause().source())
                    && !next.has(TermKind.PART)
                    && !next.has(TermKind.ITEM);
            if (brief && outcome.hear(next.clause(), null)) {
                used.add(next);
            }
        }
        if (!outcome.known()) {
            allNotTried(moment).ifPresent(m -> {
                outcome.hear(m.clause(), null);
                used.add(m);
            });
        }
        String name = meant(moment, item);
        Optional<String> said = outcome.result(name);
        String result = said.orElse("works");
        DraftBuilder finding = new DraftBuilder(DraftKind.TRIAL, moment)
                .with(Facet.ITEM, name)
                .with(Facet.RESULT, result)
                .from(item, "function " + name + ": " + result)
                .through(used)
                .feature("trial-" + name.toLowerCase(java.util.Locale.ROOT).replaceAll("[^a-z]+", "-"))
                .feature("trial-result-" + result.replace(' ', '-'))
                .feature("trial-without-outcome", said.isEmpty())
                .feature("trial-outcome-later", alone && said.isPresent())
                .feature("trial-several", items > 1)
                .feature("trial-with-condition", moment.has(TermKind.CONDITION))
                .feature("trial-with-part", moment.all(TermKind.PART).anyMatch(p -> !p.overlaps(item)))
                .feature("trial-short", moment.clause().size() <= 5)
                .feature("trial-first", item.from() <= 2);
        outcome.reasons().forEach(finding::because);
        measured(moment, name).ifPresent(measure -> measure.note(finding.feature("trial-measured")));
        found.add(finding);
    }

    private static boolean ofOneSide(Clause clause) {
        return clause.all(TermKind.SIDE)
                .anyMatch(m -> m.from() <= 1 && !m.value().equals("both"));
    }

    /** "Both windows go down, the driver's is stiff": of what was just tried, one side. */
    private static void oneSide(Moment moment, List<DraftBuilder> found) {
        Clause clause = moment.clause();
        if (!ofOneSide(clause) || clause.size() > 9 || moment.has(TermKind.PART)) {
            return;
        }
        DraftBuilder last = DraftBuilder.last(found, DraftKind.TRIAL, moment.index() - LATELY)
                .filter(f -> f.clause.source().equals(clause.source())
                        && clause.at() - f.clause.at() < LATELY_S
                        && SIDED.contains(f.facet(Facet.ITEM)))
                .orElse(null);
        if (last == null) {
            return;
        }
        Outcome outcome = new Outcome();
        outcome.hear(clause, null);
        outcome.result(last.facet(Facet.ITEM)).ifPresent(result -> {
            DraftBuilder finding = new DraftBuilder(DraftKind.TRIAL, moment)
                    .with(Facet.ITEM, last.facet(Facet.ITEM))
                    .with(Facet.RESULT, result)
                    .because(say("draft.trial.one-side"))
                    .feature("trial-one-side")
                    .feature("trial-result-" + result.replace(' ', '-'));
            outcome.reasons().forEach(finding::because);
            found.add(finding);
        });
    }

    /** "fourteen one at idle" is what charges; "tread" at one wheel is that of this wheel. */
    private static String meant(Moment moment, Mention item) {
        Clause clause = moment.clause();
        if (item.value().equals("Idles")
                && SpokenMeasure.saysVolts(clause.tokens())
                && Stream.concat(Stream.of(moment), moment.lately(LATELY, LATELY_S))
                        .flatMap(m -> m.all(TermKind.ITEM))
                        .anyMatch(other -> VOLTS.contains(other.value()))) {
            return "Charging";
        }
        if (item.value().equals("Ignition switch") && moment.place().known()) {
            String zone = moment.place().zones().get(0).value();
            return zone.startsWith("decklid") || zone.startsWith("tailgate")
                    ? "Trunk lock"
                    : zone.startsWith("door-front") || zone.startsWith("door-rear") ? "Door locks" : item.value();
        }
        if (item.value().equals("Tread") && moment.place().zones().size() == 1) {
            return WHEELS.getOrDefault(moment.place().zones().get(0).value(), item.value());
        }
        return item.value();
    }

    /** The figure in the clause, or in what is said next of the same function. */
    private static Optional<SpokenMeasure> measured(Moment moment, String item) {
        return Stream.concat(Stream.of(moment), moment.rest().stream())
                .flatMap(m -> SpokenMeasure.of(item, m.clause().tokens()).stream())
                .reduce(SpokenMeasure::and);
    }

    /** "lights, horn, wipers, none of that got tried". */
    private static Optional<Moment> allNotTried(Moment moment) {
        return moment.all().stream()
                .skip(moment.index() + 1L)
                .limit(5)
                .filter(m -> m.clause().at() - moment.clause().at() < 8 && m.has(TermKind.NOTTRIED))
                .filter(m -> m.clause().tokens().stream()
                        .anyMatch(t -> t.is("none", "any", "all", "those", "them", "either", "neither")))
                .findFirst();
    }

    /** What was heard of an outcome so far. */
    private static final class Outcome {
        private boolean good;
        private boolean bad;
        private boolean partial;
        private boolean notTried;
        private boolean notFitted;
        private boolean bypassed;
        private boolean none;
        private boolean soft;
        /** Said in several words that leave no doubt: "straight to the floor". */
        private boolean surely;

        private final List<String> reasons = new ArrayList<>();

        boolean hear(Clause clause, Mention item) {
            int before = reasons.size();
            if (item == null
                    && good
                    && (clause.word(0).equals("not") || clause.word(0).equals("except"))) {
                partial = true;
                reasons.add("\u201c" + clause.shown() + "\u201d: a fault");
            }
            for (Mention m : clause.mentions()) {
                if (item != null
                        && m.overlaps(item)
                        && m.length() <= item.length()
                        && m.length() < 2
                        && m.kind() != TermKind.PARTIAL
                        && m.kind() != TermKind.BYPASSED
                        && m.kind() != TermKind.BAD) {
                    continue;
                }
                if (outdone(clause, m)) {
                    continue;
                }
                boolean denied = Negation.of(clause, m);
                switch (m.kind()) {
                    case NOTTRIED -> notTried |= said(clause, m, Meaning.said("not tried"));
                    case NOTLOOKED -> notTried |= said(clause, m, Meaning.said("not tried"));
                    case NOTFITTED -> notFitted |= said(clause, m, Meaning.said("not fitted"));
                    case BYPASSED -> bypassed |= said(clause, m, Meaning.said("bypassed"));
                    case GOOD -> {
                        if (denied || clause.word(m.to()).equals("nothing")) {
                            bad |= said(clause, m, say("draft.trial.denied"));
                        } else {
                            good |= said(clause, m, Meaning.said("works"));
                        }
                    }
                    case BAD -> {
                        boolean now =
                                (m.length() > 1 || !covered(clause, m)) && said(clause, m, Meaning.said("does not"));
                        bad |= now;
                        surely |= now && m.length() >= 3;
                    }
                    case PARTIAL -> {
                        if (denied) {
                            good |= said(clause, m, say("draft.trial.fault-denied"));
                        } else if (!beam(clause, m)
                                && !(m.from() == 0 && clause.word(0).equals("but"))) {
                            partial |= said(clause, m, say("draft.trial.fault"));
                        }
                    }
                    case CONDITION -> {
                        if (m.value().equals("sound")) {
                            good |= !denied && said(clause, m, Meaning.said("works"));
                        } else if (!denied && FAULTS.contains(m.value())) {
                            soft |= said(clause, m, say("draft.trial.fault"));
                        }
                    }
                    default -> {
                        // says nothing of an outcome
                    }
                }
            }
            if (item == null && sideDenied(clause)) {
                bad = true;
                reasons.add(Meaning.quote(clause.shown(), Meaning.said("does not")));
            }
            none |= item != null && clause.word(item.from() - 1).equals("no");
            return reasons.size() > before;
        }

        /** "right no": an answer for one side. */
        private static boolean sideDenied(Clause clause) {
            return clause.size() <= 3
                    && clause.has(TermKind.SIDE)
                    && Set.of("no", "not", "nope").contains(clause.word(clause.size() - 1));
        }

        /** "high and low" are the beams. */
        private static boolean beam(Clause clause, Mention m) {
            return clause.word(m.from()).equals("low")
                    && clause.tokens().stream().anyMatch(t -> t.is("beam", "beams", "high"));
        }

        /** A longer phrase of another outcome stands over it: "straight" in "straight to the floor". */
        private static boolean outdone(Clause clause, Mention m) {
            return OUTCOMES.contains(m.kind())
                    && clause.mentions().stream()
                            .anyMatch(o -> OUTCOMES.contains(o.kind()) && o.overlaps(m) && o.length() > m.length());
        }

        /** "doesn't slip" denies the fault, it is no fault itself. */
        private static boolean covered(Clause clause, Mention m) {
            return clause.mentions().stream()
                    .filter(o -> o.kind() == TermKind.PARTIAL
                            || o.kind() == TermKind.GOOD
                            || o.kind() == TermKind.NOTFITTED
                            || o.kind() == TermKind.NOTTRIED)
                    .anyMatch(o -> o.overlaps(m) && !o.equals(m)
                            || clause.all(TermKind.NEG).anyMatch(n -> n.overlaps(m))
                                    && o.from() >= m.to()
                                    && o.from() - m.to() <= 3);
        }

        private boolean said(Clause clause, Mention m, String meaning) {
            reasons.add(Meaning.quote(clause.shown(m.from(), m.to()), meaning));
            return true;
        }

        boolean known() {
            return good || bad || partial || soft || notTried || notFitted || bypassed;
        }

        List<String> reasons() {
            return reasons.subList(0, Math.min(4, reasons.size()));
        }

        Optional<String> result(String item) {
            if (notTried) {
                return Optional.of("not tried");
            }
            if (notFitted) {
                return Optional.of("not fitted");
            }
            if (bypassed) {
                return Optional.of("bypassed");
            }
            if (OBSERVED.contains(item)) {
                return Optional.of(none || good && !partial ? "none" : "some");
            }
            if (none && !good && !bad && !partial) {
                return Optional.of("not fitted");
            }
            if (bad && !good && (!partial || surely)) {
                return Optional.of("does not");
            }
            if (partial || soft || good && bad) {
                return Optional.of("works with a fault");
            }
            return bad ? Optional.of("does not") : good ? Optional.of("works") : Optional.empty();
        }
    }
}
