package quarterlight.table.json;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;

/**
 * The JSON Schemas of every document that the program writes, one file each beside this class, by name. Source: "JSON Schema: A Media Type for Describing JSON
 * Documents", draft 2020-12. Immutable.
 */
public final class JsonSchemas {
    /** How the names of their files end. */
    public static final String ENDING = ".schema.json";

    private JsonSchemas() {}

    /** Every name, verbs first in the order of the job. */
    public static List<String> names() {
        return resource("schemas.txt").lines().toList();
    }

    /**
     * The schema of one document.
     *
     * @throws IllegalArgumentException if there is none of this name
     */
    public static String text(String name) {
        if (!names().contains(name)) {
            throw new IllegalArgumentException("there is no schema " + name);
        }
        return resource(name + ENDING);
    }

    /** What the document is. */
    public static String title(String name) {
        try {
            return new ObjectMapper().readTree(text(name)).path("title").asText();
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("the schema " + name + " is no JSON", e);
        }
    }

    private static String resource(String file) {
        try (InputStream in = JsonSchemas.class.getResourceAsStream(file)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
