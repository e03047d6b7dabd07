package quarterlight.edit.fact;

import static quarterlight.language.Sentences.say;

import java.util.List;
import java.util.Map;
import quarterlight.car.ZoneId;
import quarterlight.language.Sentences;
import quarterlight.visit.fact.Fact;
import quarterlight.visit.fact.Facts;
import quarterlight.visit.row.UndoNames;

/** What undo calls an edit of facts, in words: {@code set engine to rear}, {@code clear client}, {@code set light, lifted and 2 more}. */
final class FactLabel {
    /** More than these are counted. */
    private static final int NAMED = 3;

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
        return say("undo.facts", more > 0 ? say("undo.more", String.join(", ", names), more) : Sentences.and(names));
    }

    private String one(String key, String value) {
        if (value.isEmpty()) {
            return say("undo.fact.cleared", name(key));
        }
        boolean word = key.startsWith(Facts.SUBSTRATE_OF)
                || Facts.find(key)
                        .map(Fact::choices)
                        .filter(choices -> !choices.isEmpty())
                        .isPresent()
                || value.chars().noneMatch(Character::isLetter);
        return say("undo.fact.set", name(key), word ? said(key, value) : UndoNames.quoted(value));
    }

    private static String said(String key, String word) {
        String fact = key.startsWith(Facts.SUBSTRATE_OF) ? Facts.SUBSTRATE.key() : key;
        return Facts.find(fact).map(one -> one.said(word)).orElse(word);
    }

    private String name(String key) {
        if (key.startsWith(Facts.SUBSTRATE_OF)) {
            return say("undo.fact.substrate-of", words.zone(new ZoneId(key.substring(Facts.SUBSTRATE_OF.length()))));
        }
        return say("undo.fact." + key);
    }
}
