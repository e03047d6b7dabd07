package quarterlight.words.unsaid;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import quarterlight.car.ZoneId;
import quarterlight.words.Draft;
import quarterlight.words.DraftKind;
import quarterlight.words.Facet;
import quarterlight.words.Utterance;
import quarterlight.words.clause.Heard;
import quarterlight.words.clause.Moment;
import quarterlight.words.lexicon.Mention;
import quarterlight.words.lexicon.TermKind;
import quarterlight.words.place.PlaceSource;
import quarterlight.words.text.Clause;
import quarterlight.words.text.WordSet;

/**
 * What the speaker meant to come back to. A promise is kept if, after it, the place is named anew and a draft that is not hopeless says something of it;
 * what a seller says does not keep it, "not looked at" does. Judgment, without a source. Pure.
 */
final class Promises {
    /** Below this a draft is hardly ever right. */
    private static final double HOPELESS = 0.2;

    private static final int FAR_BACK = 4;
    private static final Set<String> SPEAKER = WordSet.of("i i'll i'm i'd i've let me my we we'll we're us will gonna");
    private static final Set<String> OTHERS =
            WordSet.of("you you'll you'd you're he he'll he'd she she'll she'd they they'll they'd buyer whoever");
    private static final Set<String> POINTING = WordSet.of("that this it those these them there here one");

    private final Heard walk;

    Promises(Heard walk) {
        this.walk = walk;
    }

    /** True if the clause itself says where it is. */
    static boolean isNamed(Moment moment) {
        return moment.place().known()
                && (moment.place().how() == PlaceSource.NAMED || moment.place().how() == PlaceSource.POINTED);
    }

    /** Said by the inspector, and not by a seller, an owner or a paper. */
    static boolean isOwn(Draft draft) {
        return draft.what() != DraftKind.CLAIM && draft.facet(Facet.SAID_BY).isEmpty();
    }

    /** In the order of the walk; one for each clause. */
    List<Unsaid> withoutSequel() {
        List<Unsaid> found = new ArrayList<>();
        for (Moment moment : walk.moments()) {
            Optional<Mention> said = moment.all(TermKind.PROMISE).findFirst();
            if (said.isEmpty() || !isOwn(moment.clause(), said.get())) {
                continue;
            }
            List<ZoneId> zones = zones(moment, said.get());
            Optional<String> region = zones.isEmpty() ? region(moment) : Optional.empty();
            boolean open = !zones.isEmpty() ? !comesBack(moment, zones) : region.isPresent() && !goesTo(moment, region);
            if (open) {
                Clause clause = moment.clause();
                found.add(new Unsaid(
                        Unsaid.Kind.PROMISE,
                        zones,
                        Optional.empty(),
                        false,
                        Optional.of(new Utterance(clause.source(), clause.at(), clause.until(), clause.shown()))));
            }
        }
        return found;
    }

    /** The speaker promises, not the seller, and nobody else is told to do it. */
    private static boolean isOwn(Clause clause, Mention said) {
        for (int i = Math.max(0, said.from() - FAR_BACK); i < said.from(); i++) {
            if (OTHERS.contains(clause.word(i))) {
                return false;
            }
        }
        boolean speaks = clause.tokens().stream().anyMatch(token -> SPEAKER.contains(token.word()));
        return !clause.told() && !clause.has(TermKind.CLAIM) && (speaks || said.from() <= 1);
    }

    /** The place named in the clause, or the one at hand if a word points at it. */
    private static List<ZoneId> zones(Moment moment, Mention said) {
        if (isNamed(moment)) {
            return moment.place().zones();
        }
        boolean points = false;
        for (int i = said.from(); i < moment.clause().size(); i++) {
            points |= POINTING.contains(moment.clause().word(i));
        }
        return points && !moment.has(TermKind.REGION) ? moment.place().zones() : List.of();
    }

    private static Optional<String> region(Moment moment) {
        return moment.all(TermKind.REGION).map(Mention::value).findFirst();
    }

    private boolean comesBack(Moment promise, List<ZoneId> zones) {
        return walk.drafts().stream()
                .filter(draft -> draft.p() >= HOPELESS && !draft.withdrawn() && isOwn(draft))
                .filter(draft -> draft.zones().stream().anyMatch(zones::contains))
                .anyMatch(draft -> isNamedAfter(promise, draft));
    }

    /** The clause that names the place of a draft comes after the promise. */
    private boolean isNamedAfter(Moment promise, Draft draft) {
        int at = walk.clauseOf().getOrDefault(draft.id(), -1);
        while (at > promise.index() && !isNamed(walk.moments().get(at))) {
            at--;
        }
        return at > promise.index() && !walk.moments().get(at).has(TermKind.PROMISE);
    }

    /** The walk comes to that part of the car: "I'll get underneath later". */
    private boolean goesTo(Moment promise, Optional<String> region) {
        return walk.moments().stream()
                .skip(promise.index() + 1L)
                .filter(moment -> !moment.has(TermKind.PROMISE))
                .anyMatch(moment -> region(moment).equals(region)
                        || isNamed(moment)
                                && region.equals(
                                        Optional.of(moment.place().part().region())));
    }
}
