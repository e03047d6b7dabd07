package quarterlight.table.json;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import quarterlight.words.Draft;
import quarterlight.words.Facet;

/** Drafts of evidence as the JSON on which other tools rely: every key is there, what is unknown is null. */
public final class DraftsJson {
    private static final Set<Facet> FIGURES = Set.of(Facet.LOW_UM, Facet.HIGH_UM);

    private DraftsJson() {}

    public static JsonObject of(List<Draft> drafts) {
        return of(drafts, Map.of());
    }

    /** @param states {@code kept} or {@code dropped} by the id of a draft of which that is so */
    public static JsonObject of(List<Draft> drafts, Map<String, String> states) {
        return new JsonObject()
                .put(
                        "drafts",
                        drafts.stream()
                                .map(draft -> draft(draft)
                                        .put("kept", "kept".equals(states.get(draft.id())))
                                        .put("dropped", "dropped".equals(states.get(draft.id()))))
                                .toList());
    }

    private static JsonObject draft(Draft draft) {
        JsonObject json = new JsonObject()
                .put("id", draft.id())
                .put("source", draft.source())
                .put("at_s", draft.atSeconds())
                .put("until_s", draft.untilSeconds())
                .put("what", draft.what().word())
                .put("zones", draft.zones());
        for (Facet facet : Facet.values()) {
            json.put(facet.word(), value(facet, draft.facet(facet)));
        }
        return json.put("words", draft.words())
                .put("p", draft.p())
                .put("because", draft.because())
                .put("withdrawn", draft.withdrawn())
                .put("features", draft.features());
    }

    private static Optional<?> value(Facet facet, Optional<String> said) {
        if (facet == Facet.SEEN) {
            return said.map("yes"::equals);
        }
        return FIGURES.contains(facet) ? said.map(BigDecimal::new) : said.filter(text -> !text.isEmpty());
    }
}
