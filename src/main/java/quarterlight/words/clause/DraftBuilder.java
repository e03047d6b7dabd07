package quarterlight.words.clause;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import quarterlight.car.ZoneId;
import quarterlight.words.DraftKind;
import quarterlight.words.Facet;
import quarterlight.words.lexicon.Mention;
import quarterlight.words.place.SpokenPlace;
import quarterlight.words.text.Clause;

/** A draft in the making. Changed by the rules until it is weighed; not shared between walks. */
public final class DraftBuilder {
    private static final Pattern SIDED = Pattern.compile("-(left|right|front|rear)");

    public final DraftKind what;
    public final Clause clause;
    public final int index;
    public SpokenPlace place;
    public List<ZoneId> zones;
    public String words;
    public double until;
    public boolean withdrawn;
    private final Map<Facet, String> facets = new EnumMap<>(Facet.class);
    private final List<String> because = new ArrayList<>();
    private final Set<String> features = new LinkedHashSet<>();

    public DraftBuilder(DraftKind what, Moment moment) {
        this.what = what;
        this.clause = moment.clause();
        this.index = moment.index();
        this.place = moment.place();
        this.zones = place.zones();
        this.words = clause.shown();
        this.until = clause.until();
    }

    public DraftBuilder with(Facet facet, String value) {
        facets.put(facet, value);
        return this;
    }

    public DraftBuilder because(String reason) {
        because.add(reason);
        return this;
    }

    /** Names the words of the lexicon from which it follows. */
    public DraftBuilder from(Mention mention, String meaning) {
        because.add(Meaning.quote(clause.shown(mention.from(), mention.to()), meaning));
        double weight = mention.phrase().weight();
        features.add(weight >= 0.95 ? "cue-strong" : weight >= 0.8 ? "cue-fair" : "cue-weak");
        if (mention.length() > 1) {
            features.add("cue-long");
        }
        return this;
    }

    public DraftBuilder feature(String feature) {
        features.add(feature);
        return this;
    }

    public DraftBuilder feature(String feature, boolean holds) {
        if (holds) {
            features.add(feature);
        }
        return this;
    }

    /** The place lies elsewhere than the clause has it. */
    DraftBuilder at(SpokenPlace other) {
        place = other;
        zones = other.zones();
        return this;
    }

    public DraftBuilder zones(List<ZoneId> other) {
        zones = other;
        return this;
    }

    /** The last draft of a kind that follows from a clause or a later one; those found stand in the order of their clauses. */
    public static Optional<DraftBuilder> last(List<DraftBuilder> found, DraftKind what, int fromClause) {
        for (int i = found.size() - 1; i >= 0 && found.get(i).index >= fromClause; i--) {
            if (found.get(i).what == what) {
                return Optional.of(found.get(i));
            }
        }
        return Optional.empty();
    }

    /** The same of each part where several are named: "the torque boxes and the crossmember". */
    public List<DraftBuilder> each(Moment moment) {
        Map<String, List<ZoneId>> parts = new LinkedHashMap<>();
        for (ZoneId zone : zones) {
            parts.computeIfAbsent(SIDED.matcher(zone.value()).replaceAll(""), k -> new ArrayList<>())
                    .add(zone);
        }
        boolean joined = place.said().contains(" and ") && zones.equals(place.zones());
        if (!joined || parts.size() < 2 || what == DraftKind.TRIAL || what == DraftKind.CLAIM) {
            return List.of(this);
        }
        List<DraftBuilder> all = new ArrayList<>();
        for (List<ZoneId> part : parts.values()) {
            DraftBuilder one = new DraftBuilder(what, moment);
            one.place = place;
            one.zones = List.copyOf(part);
            one.words = words;
            one.until = until;
            one.withdrawn = withdrawn;
            one.facets.putAll(facets);
            one.because.addAll(because);
            one.features.addAll(features);
            all.add(one);
        }
        return all;
    }

    /** The draft also rests on the clauses that follow. */
    public DraftBuilder through(List<Moment> rest) {
        for (Moment one : rest) {
            words = words + ", " + one.clause().shown();
            until = Math.max(until, one.clause().until());
        }
        return this;
    }

    public String facet(Facet facet) {
        return facets.getOrDefault(facet, "");
    }

    public Map<Facet, String> facets() {
        return facets;
    }

    public List<String> reasons() {
        return because;
    }

    public Set<String> features() {
        return features;
    }
}
