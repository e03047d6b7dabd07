package quarterlight.words.clause;

import static quarterlight.language.Sentences.say;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import quarterlight.words.DraftKind;
import quarterlight.words.Facet;
import quarterlight.words.lexicon.TermKind;
import quarterlight.words.place.PlaceSource;
import quarterlight.words.text.SpokenNumber;

/** What the speaker takes back: a code read anew, a reading that was of another panel, a side mixed up, also across the parts of a walk. */
public final class Corrections {
    private static final double BACK_S = 12;

    private Corrections() {}

    public static void apply(List<Moment> moments, List<DraftBuilder> found) {
        codesReadAgain(moments, found);
        for (Moment moment : moments) {
            if (moment.has(TermKind.WITHDRAW)) {
                correct(moment, found);
            }
        }
    }

    /** "7 G, no, let me wipe it, 7 C 2 1". */
    private static void codesReadAgain(List<Moment> moments, List<DraftBuilder> found) {
        List<DraftBuilder> marks =
                found.stream().filter(f -> f.what == DraftKind.MARK).toList();
        for (int i = 1; i < marks.size(); i++) {
            DraftBuilder a = marks.get(i - 1);
            DraftBuilder b = marks.get(i);
            boolean close = a.clause.source().equals(b.clause.source())
                    && b.clause.at() - a.clause.at() < BACK_S
                    && b.index > a.index;
            boolean denied = close
                    && moments.subList(a.index + 1, b.index + 1).stream()
                            .anyMatch(m -> m.has(TermKind.WITHDRAW)
                                    || m.clause().word(0).equals("no"));
            if (denied && a.clause.sentence() >= b.clause.sentence() - 1) {
                a.withdrawn = true;
                b.feature("corrects");
            }
        }
    }

    private static void correct(Moment moment, List<DraftBuilder> found) {
        List<Moment> saying = new ArrayList<>();
        saying.add(moment);
        for (int i = moment.index() + 1; i < moment.all().size() && saying.size() < 5; i++) {
            Moment next = moment.all().get(i);
            if (!next.clause().source().equals(moment.clause().source())
                    || next.clause().at() - moment.clause().at() > BACK_S) {
                break;
            }
            saying.add(next);
        }
        if (renumbered(saying, found) || takenBackFarAway(moment, saying, found)) {
            return;
        }
        replaced(moment, saying, found);
    }

    /** "the 185 was the B-pillar": a reading named by its figure belongs elsewhere. */
    private static boolean renumbered(List<Moment> saying, List<DraftBuilder> found) {
        for (Moment one : saying) {
            if (one.place().how() != PlaceSource.NAMED
                    || !one.clause().tokens().stream().anyMatch(t -> t.is("was", "is", "belongs", "goes", "were"))) {
                continue;
            }
            for (int i = 0; i < one.clause().size(); i++) {
                Optional<SpokenNumber> number = SpokenNumber.at(one.clause().tokens(), i);
                boolean named = one.clause().word(i - 1).equals("the")
                        || one.clause().word(i - 1).equals("that");
                Optional<DraftBuilder> old =
                        number.filter(n -> named).flatMap(n -> reading(n.value(), one.index(), found));
                if (old.isPresent()) {
                    old.get().withdrawn = true;
                    found.removeIf(f -> f.index == one.index() && f.what == DraftKind.THICKNESS);
                    DraftBuilder again = new DraftBuilder(DraftKind.THICKNESS, one)
                            .because(say(
                                    "draft.corrects",
                                    Math.round(old.get().clause.at())));
                    old.get().facets().forEach(again::with);
                    old.get().features().stream()
                            .filter(f -> f.startsWith("thickness"))
                            .forEach(again::feature);
                    found.add(again.feature("corrects"));
                    return true;
                }
            }
        }
        return false;
    }

    private static Optional<DraftBuilder> reading(double value, int before, List<DraftBuilder> found) {
        DraftBuilder last = null;
        for (DraftBuilder f : found) {
            if (f.what == DraftKind.THICKNESS
                    && f.index < before
                    && !f.withdrawn
                    && !f.facet(Facet.LOW_UM).isEmpty()) {
                double low = Double.parseDouble(f.facet(Facet.LOW_UM));
                double high = Double.parseDouble(f.facet(Facet.HIGH_UM));
                boolean same = Math.abs(low - value) < 0.2 && Math.abs(high - value) < 0.2
                        || Math.abs(low - value * 25.4) < 2 && Math.abs(high - value * 25.4) < 2;
                last = same ? f : last;
            }
        }
        return Optional.ofNullable(last);
    }

    /** "Correction to memo two: the plastic mirror is on the right": an earlier draft of the same part on the other side falls. */
    private static boolean takenBackFarAway(Moment moment, List<Moment> saying, List<DraftBuilder> found) {
        boolean far = moment.clause().tokens().stream()
                .anyMatch(t -> t.is("correction", "memo", "earlier", "before", "said", "wrong", "mistake", "mixed"));
        if (!far) {
            return false;
        }
        boolean any = false;
        for (DraftBuilder now : List.copyOf(found)) {
            if (now.index < moment.index()
                    || now.index > saying.get(saying.size() - 1).index()) {
                continue;
            }
            for (DraftBuilder old : found) {
                boolean samePart = old.index < moment.index()
                        && old.what == now.what
                        && old.place.part().name().equals(now.place.part().name())
                        && old.place.known();
                boolean otherSide = samePart
                        && !new HashSet<>(old.zones).equals(new HashSet<>(now.zones))
                        && shared(old.words, now.words);
                boolean sameZone = samePart
                        && old.zones.equals(now.zones)
                        && !old.facets().equals(now.facets())
                        && shared(old.words, now.words);
                if (otherSide || sameZone) {
                    old.withdrawn = true;
                    now.feature("corrects");
                    any = true;
                }
            }
        }
        return any;
    }

    private static boolean shared(String a, String b) {
        Set<String> one = new HashSet<>(
                java.util.Arrays.asList(a.toLowerCase(java.util.Locale.ROOT).split("\\W+")));
        one.retainAll(
                java.util.Arrays.stream(b.toLowerCase(java.util.Locale.ROOT).split("\\W+"))
                        .filter(w -> w.length() > 3)
                        .toList());
        return one.size() >= 2;
    }

    /** "... no, I'm sorry, the rear one": what was said last gets a new place, or a new value if one follows. */
    private static void replaced(Moment moment, List<Moment> saying, List<DraftBuilder> found) {
        DraftBuilder last = null;
        for (DraftBuilder f : found) {
            boolean before = f.clause.source().equals(moment.clause().source())
                    && f.index < moment.index()
                    && moment.clause().at() - f.clause.until() < 4;
            last = before && !f.withdrawn && f.what != DraftKind.CLAIM ? f : last;
        }
        if (last == null) {
            return;
        }
        for (Moment one : saying) {
            DraftBuilder old = last;
            Optional<DraftBuilder> value = found.stream()
                    .filter(f -> f.index == one.index() && f.what == old.what)
                    .findFirst();
            boolean placed =
                    one.place().how() == PlaceSource.NAMED || one.place().how() == PlaceSource.POINTED;
            if (value.isPresent()) {
                if (!placed || value.get().zones.equals(old.zones)) {
                    old.withdrawn = true;
                    value.get().feature("corrects");
                }
                return;
            }
            if (placed && one.clause().size() <= 9) {
                old.at(one.place())
                        .feature("place-corrected")
                        .because(say("draft.corrected", one.clause().shown()));
                return;
            }
        }
    }
}
