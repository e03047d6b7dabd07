package quarterlight.words.rule;

import static quarterlight.language.Sentences.say;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import quarterlight.units.Thickness;
import quarterlight.words.DraftKind;
import quarterlight.words.Facet;
import quarterlight.words.clause.DraftBuilder;
import quarterlight.words.clause.Meaning;
import quarterlight.words.clause.Moment;
import quarterlight.words.clause.Rule;
import quarterlight.words.clause.SpokenContext;
import quarterlight.words.lexicon.TermKind;
import quarterlight.words.place.PlaceSource;
import quarterlight.words.text.Clause;
import quarterlight.words.text.SpokenNumber;
import quarterlight.words.text.Token;
import quarterlight.words.text.WordSet;

/** Readings of a thickness gauge: single ones, several in a row, ranges; the unit may have been said long before. */
final class ThicknessRule implements Rule {
    private static final Set<String> JOINING = WordSet.of(
            "a about again and another around between call dash even it just maybe or over roughly say through to "
                    + "up ");
    private static final Set<String> AFTER = WordSet.of(
            "above across after again ahead all along and around as at average because behind below between both"
                    + " bottom but by down even everyplace everywhere flat for front here high i i'm if in inside is it"
                    + " it's just left like low max most near nearer no not now off on once or out over right round same"
                    + " so solid steady still straight that the then there there's thick this throughout till to too top"
                    + " tops toward towards under until up when where which with worst ");
    private static final Set<String> NOT_BEFORE = WordSet.of(
            "april august chapter cylinder every from fuse in july june march may memo model number of page part sheet "
                    + "since step than the these those took year ");
    private static final Set<String> UNMEASURED = WordSet.of(
            "battery bumper carpet dash door-glass driveshaft emblems engine exhaust fuel grille headlamp headliner"
                    + " identity ignition intake jack mirror package pedals quarter-glass radiator rear-glass seat soft"
                    + " spare steering tail-lamp transmission vinyl weatherstrips wheel-front wheel-rear windshield ");
    private static final double MIN_MIL = 0.8;
    private static final double MAX_MIL = 90;
    private static final double MIN_UM = 25;
    private static final double MAX_UM = 3000;
    private static final double NEAR = 1.6;
    /** Without a unit, a number above this is in micrometers. */
    private static final double MIL_AT_MOST = 45;

    private final SpokenContext ear;

    ThicknessRule(SpokenContext ear) {
        this.ear = ear;
    }

    private record Group(List<Double> values, int from, int to) {}

    @Override
    public void read(Moment moment, List<DraftBuilder> found) {
        Clause clause = moment.clause();
        clause.first(TermKind.UNIT).ifPresent(u -> ear.unit(u.value()));
        over(moment, found);
        boolean um = ear.unit().filter("um"::equals).isPresent() || ear.unit().isEmpty() && inHundreds(clause);
        List<Group> groups = groups(clause, um);
        for (Group group : groups) {
            reading(moment, group, groups.size(), found);
        }
    }

    /** "two ten, two hundred, two twenty": read off a gauge that shows microns, though nobody said so. */
    private static boolean inHundreds(Clause clause) {
        int pairs = 0;
        for (int i = 0; i + 1 < clause.size(); i++) {
            Optional<SpokenNumber> number = SpokenNumber.hundreds(clause.tokens(), i);
            boolean pair =
                    number.filter(n -> n.length() >= 2 && n.value() >= 110).isPresent()
                            && !clause.word(i + 1).equals("hundred");
            pairs += pair ? 1 : 0;
        }
        boolean hundred = clause.tokens().stream().anyMatch(t -> t.is("hundred"));
        return pairs >= 2 || pairs == 1 && hundred;
    }

    private static void over(Moment moment, List<DraftBuilder> found) {
        moment.clause()
                .first(TermKind.OVERRANGE)
                .ifPresent(m -> found.add(new DraftBuilder(DraftKind.THICKNESS, moment)
                        .from(m, say("draft.gauge.no-metal-or-over"))
                        .feature("thickness-none")));
    }

    private static List<Group> groups(Clause clause, boolean um) {
        List<Group> groups = new ArrayList<>();
        int i = 0;
        while (i < clause.size()) {
            Optional<SpokenNumber> number = number(clause, i, um);
            if (number.isEmpty()) {
                i++;
                continue;
            }
            int from = i;
            List<Double> values = new ArrayList<>();
            int end = i;
            while (number.isPresent()) {
                values.add(number.get().value());
                end = i + number.get().length();
                i = end;
                int joins = 0;
                while (joins < 3
                        && i < clause.size()
                        && JOINING.contains(clause.word(i))
                        && number(clause, i, um).isEmpty()) {
                    i++;
                    joins++;
                }
                if (i < clause.size() && clause.all(TermKind.UNIT).anyMatch(unitAt(i))) {
                    i++;
                    while (joins < 3 && i < clause.size() && JOINING.contains(clause.word(i))) {
                        i++;
                        joins++;
                    }
                }
                number = number(clause, i, um);
            }
            groups.add(new Group(values(clause, values, from, end), from, end));
            i = Math.max(end, from + 1);
        }
        return groups;
    }

    /** "three to four hundred" are hundreds both; "a dozen, four to five" are a dozen readings. */
    private static List<Double> values(Clause clause, List<Double> said, int from, int end) {
        double last = said.get(said.size() - 1);
        if (said.size() == 2 && clause.word(end - 1).equals("hundred") && said.get(0) < 10 && last >= 100) {
            return List.of(said.get(0) * 100, last);
        }
        boolean dozen = said.size() > 2
                && said.get(0) == 12
                && (clause.word(from).equals("dozen") || clause.word(from + 1).equals("dozen"))
                && said.stream().skip(1).noneMatch(value -> value > 12);
        return dozen ? said.subList(1, said.size()) : said;
    }

    private static java.util.function.Predicate<quarterlight.words.lexicon.Mention> unitAt(int i) {
        return m -> m.from() == i;
    }

    /** A number that counts no thing: "one" by itself is mostly a word for the part. */
    private static Optional<SpokenNumber> number(Clause clause, int at, boolean um) {
        if (at >= clause.size() || covered(clause, at)) {
            return Optional.empty();
        }
        Token token = clause.tokens().get(at);
        if (token.word().equals("one")
                && !(um && clause.word(at + 1).equals("oh"))
                && !SpokenNumber.isNumberWord(clause.word(at + 1))
                && !clause.word(at + 1).equals("and")) {
            return Optional.empty();
        }
        if (token.word().startsWith("0")
                && token.word().length() > 1
                && !token.word().contains(".")) {
            return Optional.empty();
        }
        return um ? SpokenNumber.hundreds(clause.tokens(), at) : SpokenNumber.at(clause.tokens(), at);
    }

    private static boolean covered(Clause clause, int at) {
        return clause.mentions().stream()
                .anyMatch(m -> (m.kind() == TermKind.PART || m.kind() == TermKind.ITEM) && m.covers(at));
    }

    private void reading(Moment moment, Group group, int groups, List<DraftBuilder> found) {
        Clause clause = moment.clause();
        String after = clause.word(group.to());
        boolean unit = clause.all(TermKind.UNIT).anyMatch(m -> m.from() >= group.from() && m.from() <= group.to() + 1);
        boolean end = group.to() >= clause.size();
        boolean counted = clause.all(TermKind.NONUNIT).anyMatch(m -> m.from() == group.to());
        String before = clause.word(group.from() - 1);
        if (letter(before) || letter(after)) {
            return;
        }
        boolean yearLike = before.equals("a")
                && group.values().size() == 1
                && group.values().get(0) > 45
                && group.values().get(0) < 100;
        boolean part = clause.all(TermKind.PART).anyMatch(m -> m.from() == group.to());
        boolean odd = !unit
                && !end
                && !AFTER.contains(after)
                && !part
                && clause.mentions().stream()
                        .noneMatch(
                                m -> m.from() == group.to() && m.kind() != TermKind.SIDE && m.kind() != TermKind.GOOD);
        if (counted
                || yearLike
                || !unit && NOT_BEFORE.contains(before)
                || odd && group.values().size() < 2) {
            return;
        }
        double low = group.values().stream().mapToDouble(v -> v).min().orElse(0);
        double high = group.values().stream().mapToDouble(v -> v).max().orElse(0);
        Optional<String> said = clause.first(TermKind.UNIT).map(m -> m.value()).or(ear::unit);
        boolean um = said.map(u -> u.equals("um")).orElse(high > MIL_AT_MOST);
        if (um ? low < MIN_UM || high > MAX_UM : low < MIN_MIL || high > MAX_MIL) {
            return;
        }
        double lowUm = um ? low : new Thickness(low * 25.4).um();
        double highUm = um ? high : high * 25.4;
        DraftBuilder finding = new DraftBuilder(DraftKind.THICKNESS, moment)
                .with(Facet.LOW_UM, number(lowUm))
                .with(Facet.HIGH_UM, number(highUm))
                .with(Facet.VALUE, low == high ? number(low) : number(low) + "-" + number(high))
                .with(Facet.UNIT, um ? "um" : "mil")
                .because(Meaning.quote(
                        clause.shown(group.from(), Math.min(clause.size(), group.to())),
                        say(
                                um ? "draft.thickness.um" : "draft.thickness.mil",
                                group.values().stream()
                                        .map(ThicknessRule::number)
                                        .collect(Collectors.joining(", ")))))
                .feature("thickness-unit", unit)
                .feature("thickness-unit-walk", !unit && ear.unit().isPresent())
                .feature("thickness-verb", clause.has(TermKind.READING))
                .feature("thickness-odd-after", odd)
                .feature("thickness-several", group.values().size() > 1)
                .feature("thickness-groups", groups > 1)
                .feature("thickness-end", end)
                .feature("thickness-bare", bare(clause, group))
                .feature("thickness-digits", clause.tokens().get(group.from()).isNumber())
                .feature("thickness-with-item", clause.has(TermKind.ITEM))
                .feature("thickness-with-mark", clause.has(TermKind.MARK) || clause.has(TermKind.ODOMETER))
                .feature("thickness-with-check", clause.has(TermKind.GAUGECHECK))
                .feature("thickness-unmeasured", unmeasured(moment))
                .feature("thickness-finished", moment.place().zones().stream().anyMatch(ear.car::finished));
        if (groups > 1) {
            finding.words = clause.shown();
        }
        if (!goesOn(moment, finding, lowUm, highUm, found)) {
            found.add(finding);
        }
    }

    /** "640, 700, oh my, 880": readings of one place in one sentence that lie near each other are one range. */
    private static boolean goesOn(
            Moment moment, DraftBuilder finding, double lowUm, double highUm, List<DraftBuilder> found) {
        DraftBuilder last = DraftBuilder.last(found, DraftKind.THICKNESS, moment.index() - 2)
                .orElse(null);
        if (last == null
                || last.index == moment.index()
                || last.clause.sentence() != moment.clause().sentence()
                || !last.clause.source().equals(moment.clause().source())
                || !last.zones.equals(finding.zones)
                || moment.place().how() != PlaceSource.CARRIED
                || last.facet(Facet.LOW_UM).isEmpty()
                || !last.facet(Facet.UNIT).equals(finding.facet(Facet.UNIT))) {
            return false;
        }
        double low = Math.min(lowUm, Double.parseDouble(last.facet(Facet.LOW_UM)));
        double high = Math.max(highUm, Double.parseDouble(last.facet(Facet.HIGH_UM)));
        if (high > NEAR * low) {
            return false;
        }
        double each = finding.facet(Facet.UNIT).equals("um") ? 1 : 25.4;
        last.with(Facet.LOW_UM, number(low))
                .with(Facet.HIGH_UM, number(high))
                .with(Facet.VALUE, low == high ? number(low / each) : number(low / each) + "-" + number(high / each))
                .through(List.of(moment))
                .feature("thickness-several");
        finding.reasons().forEach(last::because);
        return true;
    }

    /** A letter by itself makes a code of the numbers beside it. */
    private static boolean letter(String word) {
        return word.length() == 1 && Character.isLetter(word.charAt(0)) && !word.equals("a") && !word.equals("i");
    }

    private static boolean unmeasured(Moment moment) {
        return moment.place().zones().stream()
                .anyMatch(zone -> !zone.value().equals("engine-lid")
                        && UNMEASURED.stream().anyMatch(zone.value()::startsWith));
    }

    /** Little else is said in the clause than the place and the numbers. */
    private static boolean bare(Clause clause, Group group) {
        long other = 0;
        for (int i = 0; i < clause.size(); i++) {
            int at = i;
            boolean known = at >= group.from() && at < group.to()
                    || JOINING.contains(clause.word(i))
                    || clause.mentions().stream().anyMatch(m -> m.covers(at) && m.kind() != TermKind.NEG)
                    || WordSet.of("'s here is it's on side that the this well ").contains(clause.word(i));
            other += known ? 0 : 1;
        }
        return other <= 1;
    }

    private static String number(double value) {
        return value == Math.rint(value)
                ? String.valueOf((long) value)
                : String.format(Locale.ROOT, "%.2f", value).replaceAll("0+$", "");
    }
}
