package quarterlight.cli.text;

import quarterlight.coverage.Gap;
import quarterlight.table.json.JsonObject;

/** A piece of evidence that a visit lacks, as the documents of several verbs give it. */
public final class GapJson {
    private GapJson() {}

    public static JsonObject of(Gap gap) {
        return new JsonObject()
                .put("zone", gap.zone().id())
                .put("lacks", gap.lacks().word())
                .put("want", gap.want())
                .put("have", gap.have())
                .put("part", gap.part())
                .put("excuse", gap.excuse())
                .put("why", gap.why());
    }
}
