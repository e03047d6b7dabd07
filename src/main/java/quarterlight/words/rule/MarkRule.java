package quarterlight.words.rule;

import static quarterlight.language.Sentences.say;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import quarterlight.car.ZoneId;
import quarterlight.words.DraftKind;
import quarterlight.words.Facet;
import quarterlight.words.clause.DraftBuilder;
import quarterlight.words.clause.Meaning;
import quarterlight.words.clause.Moment;
import quarterlight.words.clause.Rule;
import quarterlight.words.lexicon.Mention;
import quarterlight.words.lexicon.TermKind;
import quarterlight.words.place.PlaceSource;
import quarterlight.words.text.Clause;
import quarterlight.words.text.SpokenCode;
import quarterlight.words.text.SpokenDate;
import quarterlight.words.text.Token;

/** Stamps, tags, casting dates and plates read aloud. */
final class MarkRule implements Rule {
    private static final Set<String> UNREAD =
            Set.of("can't", "couldn't", "goes", "unreadable", "gone", "illegible", "rest");

    private static final double RESTATED_S = 10;

    @Override
    public void read(Moment moment, List<DraftBuilder> found) {
        Clause clause = moment.clause();
        Optional<Mention> here = kind(clause);
        Optional<Mention> near = here.or(() -> Stream.concat(moment.earlier().stream(), moment.lately(5, 12))
                .flatMap(m -> kind(m.clause()).stream())
                .findFirst());
        int shortest = near.isPresent() ? 2 : 3;
        List<SpokenCode> codes = new ArrayList<>(SpokenCode.in(clause.tokens(), shortest));
        codes.removeIf(code -> !plausible(clause, code, here.isPresent()));
        Optional<SpokenDate> date = SpokenDate.in(clause.tokens());
        date.ifPresent(said ->
                codes.removeIf(code -> code.letters() == 0 && code.from() >= said.from() && code.to() <= said.to()));
        if (codes.isEmpty()) {
            date.ifPresent(said -> dated(moment, said, here, found));
            return;
        }
        SpokenCode code = codes.stream()
                .max(Comparator.comparingInt(c -> c.text().length()))
                .orElseThrow();
        boolean digitsOnly = code.letters() == 0;
        String text = once(unread(clause, code));
        String kind = near.map(Mention::value).orElse("stamp");
        DraftBuilder finding = new DraftBuilder(DraftKind.MARK, moment)
                .with(Facet.TEXT, text)
                .with(Facet.KIND, kind)
                .with(Facet.PART, moment.place().known() ? moment.place().part().name() : "")
                .because(Meaning.quote(clause.shown(code.from(), code.to()), say("draft.mark.read", text)))
                .feature("mark-digits", digitsOnly)
                .feature("mark-kind-here", here.isPresent())
                .feature("mark-kind-near", here.isEmpty() && near.isPresent())
                .feature("mark-no-kind", near.isEmpty())
                .feature("mark-long", text.length() >= 5)
                .feature("mark-short", text.length() <= 2)
                .feature("mark-spread", code.to() - code.from() >= 3)
                .feature("mark-last", code.to() >= clause.size() - 1)
                .feature("mark-of-" + kind)
                .feature("mark-with-reading", digitsOnly && (clause.has(TermKind.UNIT) || clause.has(TermKind.NONUNIT)))
                .feature("mark-with-item", clause.has(TermKind.ITEM) || clause.has(TermKind.ODOMETER));
        near.ifPresent(m -> finding.because(say("draft.mark.kind", Meaning.said(m.value()))));
        place(finding, kind, moment);
        found.add(finding);
    }

    /** A date in words: as it would be stamped. Words that read a code anew as a date say nothing new. */
    private static void dated(Moment moment, SpokenDate date, Optional<Mention> here, List<DraftBuilder> found) {
        Optional<String> kind = here.or(() -> moment.earlier().stream()
                        .limit(2)
                        .flatMap(m -> kind(m.clause()).stream())
                        .findFirst())
                .map(Mention::value);
        boolean wheel = moment.place().zones().stream()
                .anyMatch(
                        zone -> zone.value().startsWith("wheel") || zone.value().startsWith("spare"));
        boolean tire = kind.filter("tire"::equals).isPresent() || kind.isEmpty() && wheel && date.week() > 0;
        boolean readBefore = found.stream()
                .anyMatch(f -> f.what == DraftKind.MARK
                        && f.clause.source().equals(moment.clause().source())
                        && moment.index() - f.index <= 2
                        && moment.clause().at() - f.clause.at() < RESTATED_S);
        if (kind.isEmpty() && !tire || readBefore || moment.has(TermKind.CLAIM)) {
            return;
        }
        String text = tire ? date.tireText().orElseGet(date::text) : date.text();
        DraftBuilder finding = new DraftBuilder(DraftKind.MARK, moment)
                .with(Facet.TEXT, text)
                .with(Facet.KIND, tire ? "tire" : kind.orElseThrow())
                .with(Facet.PART, moment.place().known() ? moment.place().part().name() : "")
                .because(Meaning.quote(moment.clause().shown(date.from(), date.to()), say("draft.mark.date", text)))
                .feature("mark-digits")
                .feature("mark-kind-here", here.isPresent())
                .feature("mark-kind-near", here.isEmpty())
                .feature("mark-spread")
                .feature("mark-last", date.to() >= moment.clause().size() - 1);
        place(finding, tire ? "tire" : kind.orElseThrow(), moment);
        found.add(finding);
    }

    /** "3C14, three C one four": read out twice, it is one code. */
    private static String once(String text) {
        int half = text.length() / 2;
        boolean twice = text.length() >= 4 && text.length() % 2 == 0 && text.startsWith(text.substring(half));
        return twice && !text.chars().allMatch(c -> c == text.charAt(0)) ? text.substring(half) : text;
    }

    private static void place(DraftBuilder finding, String kind, Moment moment) {
        String zone = finding.zones.isEmpty() ? "" : finding.zones.get(0).value();
        boolean named = moment.place().how() == PlaceSource.NAMED;
        boolean onThePlate = Set.of("dash", "windshield", "cowl").contains(zone)
                || zone.startsWith("a-pillar")
                || zone.startsWith("b-pillar")
                || zone.startsWith("door");
        if ((kind.equals("vin") || kind.equals("plate")) && (!named || onThePlate)) {
            finding.zones(List.of(new ZoneId("identity-papers"))).feature("mark-place-by-kind");
        } else if (kind.equals("tire") && !zone.startsWith("wheel") && !zone.startsWith("spare")) {
            finding.zones(Stream.of("wheel-front-left", "wheel-front-right", "wheel-rear-left", "wheel-rear-right")
                            .map(ZoneId::new)
                            .toList())
                    .feature("mark-place-by-kind");
        }
    }

    private static Optional<Mention> kind(Clause clause) {
        return clause.all(TermKind.MARK)
                .filter(m -> clause.all(TermKind.CONDITION).noneMatch(c -> c.overlaps(m) && c.length() > m.length()))
                .max(Comparator.comparingInt(m ->
                        m.length() * 2 + (m.value().equals("tag") || m.value().equals("stamp") ? 1 : 0)));
    }

    private static boolean plausible(Clause clause, SpokenCode code, boolean named) {
        if (code.from() > 0
                && clause.tokens().get(code.from() - 1).is("a", "since", "in", "to")
                && code.to() - code.from() == 1
                && !named) {
            return false;
        }
        boolean letter = code.letters() > 0;
        int tokens = code.to() - code.from();
        boolean written = tokens == 1 && code.text().length() >= 3;
        if (!letter) {
            return named || tokens >= 4 && code.text().length() == tokens;
        }
        boolean figure = code.text().chars().anyMatch(Character::isDigit);
        return figure && (tokens >= 2 || written) || named && code.text().length() >= 3;
    }

    /** What is said not to be legible becomes question marks. */
    private static String unread(Clause clause, SpokenCode code) {
        String text = code.text();
        List<Token> after =
                clause.tokens().subList(Math.min(code.to(), clause.size()), Math.min(clause.size(), code.to() + 8));
        boolean unread = after.stream().anyMatch(t -> UNREAD.contains(t.word()));
        if (!unread) {
            return text;
        }
        boolean two = after.stream().anyMatch(t -> t.is("two"));
        return text + (two ? "??" : "?");
    }
}
