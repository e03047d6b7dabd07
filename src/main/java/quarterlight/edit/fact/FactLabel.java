package quarterlight.edit.fact;

import java.util.List;
import java.util.Map;
import quarterlight.car.ZoneId;
import quarterlight.visit.fact.Fact;
import quarterlight.visit.fact.Facts;
import quarterlight.visit.row.UndoNames;

/** What undo calls an edit of facts, in words: {@code set engine to rear}, {@code clear client}, {@code set light, lifted and 2 more}. */
final class FactLabel {
    /** More than these are counted. */
    private static final int NAMED = 3;

    /** Facts whose key is no word of its own. */
    private static final Map<String, String> WORDS = Map.of(
            "drive", "steering wheel side",
            "timezone", "time zone",
            "brief", "first paragraph",
            "report", "length of the report",
            "diagram", "drawing",
            "built", "build date",
            "year", "model year",
            "date", "day of the visit",
            "limits", "limits of the visit",
            "terms", "your terms");

    private final UndoNames.Words words;

    FactLabel(UndoNames.Words words) {
        this.words = words;
    }

    String of(Map<String, String> values) {
        List<String> keys = values.keySet().stream().sorted().toList();
        if (keys.size() == 1) {
            return one(keys.get(0), values.get(keys.get(0)).strip());
        }
        List<String> names = keys.stream().limit(NAMED).map(this::name).toList();
        int more = keys.size() - names.size();
        return "set "
                + (more > 0
                        ? String.join(", ", names) + " and " + more + " more"
                        : String.join(", ", names.subList(0, names.size() - 1)) + " and "
                                + names.get(names.size() - 1));
    }

    private String one(String key, String value) {
        if (value.isEmpty()) {
            return "clear " + name(key);
        }
        boolean word = key.startsWith(Facts.SUBSTRATE_OF)
                || Facts.find(key)
                        .map(Fact::choices)
                        .filter(choices -> !choices.isEmpty())
                        .isPresent()
                || value.chars().noneMatch(Character::isLetter);
        return "set " + name(key) + " to " + (word ? value : UndoNames.quoted(value));
    }

    private String name(String key) {
        if (key.startsWith(Facts.SUBSTRATE_OF)) {
            return "substrate of " + words.zone(new ZoneId(key.substring(Facts.SUBSTRATE_OF.length())));
        }
        return WORDS.getOrDefault(key, key.replaceAll("-mm$", "").replace('-', ' '));
    }
}
