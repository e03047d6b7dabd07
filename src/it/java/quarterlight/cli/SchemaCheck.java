package quarterlight.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.networknt.schema.JsonSchema;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SpecVersion;
import com.networknt.schema.ValidationMessage;
import java.io.IOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import quarterlight.table.json.JsonSchemas;

/** One of the schemas in the hands of a validator that is not ours, and what it should refuse. */
final class SchemaCheck {
    private static final ObjectMapper JSON = new ObjectMapper();

    /** Places of one kind that are broken, each in turn: the first ones stand for the rest. */
    private static final int PLACES_OF_A_KIND = 2;

    private static final int MOST_ROWS = 6;

    private final JsonSchema schema;

    private SchemaCheck(JsonSchema schema) {
        this.schema = schema;
    }

    static SchemaCheck of(String name) {
        return new SchemaCheck(factory().getSchema(JsonSchemas.text(name)));
    }

    /** The schema of schemas, which the validator brings along. */
    static SchemaCheck ofSchemas() {
        return new SchemaCheck(
                factory().getSchema(com.networknt.schema.SchemaLocation.of(SpecVersion.VersionFlag.V202012.getId())));
    }

    private static JsonSchemaFactory factory() {
        return JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V202012);
    }

    static JsonNode read(String document) {
        try {
            return JSON.readTree(document);
        } catch (JsonProcessingException e) {
            throw new AssertionError(document, e);
        }
    }

    /** How many numbers with a fraction a document has; fails if one has more digits than somebody could have measured. */
    static int roundedNumbers(String document) {
        int numbers = 0;
        try (JsonParser json = JSON.createParser(document)) {
            for (JsonToken token = json.nextToken(); token != null; token = json.nextToken()) {
                if (token == JsonToken.VALUE_NUMBER_FLOAT) {
                    numbers++;
                    assertThat(json.getDecimalValue().stripTrailingZeros().precision())
                            .as(json.getText())
                            .isLessThanOrEqualTo(10);
                }
            }
        } catch (IOException e) {
            throw new AssertionError(document, e);
        }
        return numbers;
    }

    /** What the validator objects to; empty if the document holds. */
    List<String> objections(JsonNode document) {
        return schema.validate(document).stream()
                .map(ValidationMessage::toString)
                .distinct()
                .limit(20)
                .toList();
    }

    /**
     * Breaks a sound document in many places, one at a time, and tells the breaks that were not noticed: a stray field in every object, every field left
     * out, every value of a kind that never stands there.
     */
    List<String> unnoticed(JsonNode sound) {
        JsonNode document = sound.deepCopy();
        shorten(document);
        Set<String> passed = new TreeSet<>();
        Map<String, Integer> seen = new HashMap<>();
        breakWithin(document, document, "", seen, passed);
        return new ArrayList<>(passed);
    }

    /** Few rows are as good as many here, and sooner looked at. */
    private static void shorten(JsonNode node) {
        if (node instanceof ArrayNode list) {
            while (list.size() > MOST_ROWS && list.get(0).isObject()) {
                list.remove(list.size() - 1);
            }
        }
        node.forEach(SchemaCheck::shorten);
    }

    private void breakWithin(JsonNode root, JsonNode node, String path, Map<String, Integer> seen, Set<String> passed) {
        if (seen.merge(path, 1, Integer::sum) > PLACES_OF_A_KIND) {
            return;
        }
        if (node instanceof ObjectNode object) {
            object.put("stray field", 1);
            note(root, passed, path + " with a stray field");
            object.remove("stray field");
            for (String field : names(object)) {
                JsonNode value = object.remove(field);
                note(root, passed, path + "." + field + " left out");
                object.set(field, other(value));
                note(root, passed, path + "." + field + " of another kind");
                object.set(field, value);
                breakWithin(root, value, path + "." + field, seen, passed);
            }
        } else if (node instanceof ArrayNode list) {
            for (int i = 0; i < list.size(); i++) {
                JsonNode value = list.get(i);
                if (i == 0) {
                    list.set(0, other(value));
                    note(root, passed, path + "[] of another kind");
                    list.set(0, value);
                }
                breakWithin(root, value, path + "[]", seen, passed);
            }
        }
    }

    /** The fields in their order; a field that is put back stands last, which no schema minds. */
    private static List<String> names(ObjectNode object) {
        List<String> names = new ArrayList<>();
        object.fieldNames().forEachRemaining(names::add);
        return names;
    }

    /** A value that no place takes where this one stands: a list of lists for what is none, a truth value for what is a list. */
    private static JsonNode other(JsonNode value) {
        return value.isArray() || value.isObject()
                ? JSON.getNodeFactory().booleanNode(true)
                : JSON.createArrayNode().add(JSON.createArrayNode());
    }

    private void note(JsonNode root, Set<String> passed, String what) {
        if (schema.validate(root).isEmpty()) {
            passed.add(what);
        }
    }
}
