package quarterlight.table.json;

import java.util.List;
import java.util.Optional;
import quarterlight.words.Utterance;
import quarterlight.words.clash.Contradiction;
import quarterlight.words.clash.Testimony;
import quarterlight.words.unsaid.Unsaid;

/** What a walk leaves unsaid and what contradicts each other, as the JSON on which other tools rely. */
public final class WalkDoubtsJson {
    private WalkDoubtsJson() {}

    public static List<JsonObject> unsaid(List<Unsaid> all) {
        return all.stream().map(WalkDoubtsJson::unsaid).toList();
    }

    public static List<JsonObject> contradictions(List<Contradiction> all) {
        return all.stream().map(WalkDoubtsJson::contradiction).toList();
    }

    private static JsonObject unsaid(Unsaid one) {
        JsonObject json = new JsonObject()
                .put("what", one.kind().word())
                .put("zones", one.zones())
                .put("group", one.group().map(group -> group.word()))
                .put("whole_group", one.wholeGroup());
        return heard(json, one.heard());
    }

    private static JsonObject contradiction(Contradiction one) {
        return new JsonObject()
                .put("about", one.about().word())
                .put("zones", one.zones())
                .put("why", one.why())
                .put("first", testimony(one.first()))
                .put("second", testimony(one.second()));
    }

    private static JsonObject testimony(Testimony one) {
        JsonObject json = new JsonObject()
                .put("by", one.by())
                .put("text", one.text())
                .put("table", one.row().map(Testimony.Row::kind))
                .put("row", one.row().map(Testimony.Row::id));
        return heard(json, one.heard());
    }

    private static JsonObject heard(JsonObject json, Optional<Utterance> words) {
        return json.put("source", words.map(Utterance::source))
                .put("at_s", words.map(Utterance::atSeconds))
                .put("until_s", words.map(Utterance::untilSeconds))
                .put("words", words.map(said -> said.words().strip()));
    }
}
