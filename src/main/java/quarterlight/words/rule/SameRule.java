package quarterlight.words.rule;

import static quarterlight.language.Sentences.say;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import quarterlight.car.ZoneId;
import quarterlight.words.DraftKind;
import quarterlight.words.Facet;
import quarterlight.words.clause.DraftBuilder;
import quarterlight.words.clause.Moment;
import quarterlight.words.clause.Rule;
import quarterlight.words.lexicon.Mention;
import quarterlight.words.lexicon.TermKind;
import quarterlight.words.place.PlaceSource;
import quarterlight.words.text.Clause;

/** "The other side's the same": what was just said of one place holds of another. */
final class SameRule implements Rule {
    private static final Set<DraftKind> REPEATED = Set.of(DraftKind.STATEMENT, DraftKind.THICKNESS, DraftKind.SIGN);
    private static final double BACK_S = 25;
    private static final double LONG_BACK_S = 120;

    @Override
    public void read(Moment moment, List<DraftBuilder> found) {
        Clause clause = moment.clause();
        Optional<Mention> same = clause.first(TermKind.SAME);
        if (same.isEmpty() || clause.size() > 14) {
            return;
        }
        Optional<Mention> item = clause.first(TermKind.ITEM);
        if (item.isPresent()) {
            trial(moment, same.get(), item.get(), found);
            return;
        }
        boolean placed =
                moment.place().how() == PlaceSource.NAMED || moment.place().how() == PlaceSource.POINTED;
        placed |= moment.earlier().stream()
                .findFirst()
                .filter(m ->
                        m.place().how() == PlaceSource.NAMED && found.stream().noneMatch(f -> f.index == m.index()))
                .isPresent();
        boolean own = found.stream().anyMatch(f -> f.index == moment.index() && REPEATED.contains(f.what));
        if (!placed || own) {
            return;
        }
        for (DraftBuilder earlier : model(moment, found)) {
            DraftBuilder copy = new DraftBuilder(earlier.what, moment)
                    .from(same.get(), say("draft.same", earlier.place.part().name()));
            earlier.facets().forEach(copy::with);
            found.add(copy.feature("same").feature("same-" + earlier.what.word()));
        }
    }

    /** What was said of the mirrored place not long ago, else what was said of the place before. */
    private static List<DraftBuilder> model(Moment moment, List<DraftBuilder> found) {
        Set<ZoneId> here = Set.copyOf(moment.place().zones());
        List<DraftBuilder> mirrored = new ArrayList<>();
        List<DraftBuilder> before = new ArrayList<>();
        int last = -1;
        for (int i = found.size() - 1; i >= 0; i--) {
            DraftBuilder f = found.get(i);
            double back = moment.clause().at() - f.clause.at();
            if (back > LONG_BACK_S || !f.clause.source().equals(moment.clause().source())) {
                break;
            }
            if (!REPEATED.contains(f.what)
                    || f.index == moment.index()
                    || !f.clause.source().equals(moment.clause().source())
                    || f.withdrawn) {
                continue;
            }
            boolean twin = f.place.part().name().equals(moment.place().part().name()) && !here.containsAll(f.zones);
            if (twin && back < LONG_BACK_S && mirrored.size() < 3) {
                mirrored.add(0, f);
            }
            if (back < BACK_S
                    && (last < 0 || f.zones.equals(found.get(last).zones))
                    && before.size() < 2
                    && !here.equals(Set.copyOf(f.zones))) {
                last = i;
                before.add(0, f);
            }
        }
        return mirrored.isEmpty() ? before : mirrored;
    }

    private static void trial(Moment moment, Mention same, Mention item, List<DraftBuilder> found) {
        boolean known = found.stream()
                .anyMatch(f -> f.index == moment.index()
                        && f.what == DraftKind.TRIAL
                        && !f.features().contains("trial-without-outcome"));
        if (known) {
            return;
        }
        for (int i = found.size() - 1; i >= 0; i--) {
            DraftBuilder f = found.get(i);
            if (f.what == DraftKind.TRIAL
                    && f.index != moment.index()
                    && moment.clause().at() - f.clause.at() < BACK_S) {
                found.removeIf(g -> g.index == moment.index() && g.what == DraftKind.TRIAL);
                found.add(new DraftBuilder(DraftKind.TRIAL, moment)
                        .from(same, "as " + f.facet(Facet.ITEM))
                        .with(Facet.ITEM, item.value())
                        .with(Facet.RESULT, f.facet(Facet.RESULT))
                        .feature("same"));
                return;
            }
        }
    }
}
