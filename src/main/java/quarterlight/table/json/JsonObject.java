package quarterlight.table.json;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/**
 * A JSON object in the making: keys in the order in which they are put. What is unknown is null; numbers are finite; whatever is no
 * number, truth value, list or object is written as its text.
 */
public final class JsonObject {
    /** More than any measured number here has. */
    private static final MathContext DIGITS = new MathContext(8);

    private final Map<String, Optional<Object>> fields = new LinkedHashMap<>();

    /** @throws IllegalArgumentException if the key stands already, or a number is not finite */
    private JsonObject set(String key, Optional<Object> value) {
        if (fields.putIfAbsent(key, value) != null) {
            throw new IllegalArgumentException("the key " + key + " stands already");
        }
        return this;
    }

    public JsonObject put(String key, Object value) {
        return set(key, Optional.of(checked(value)));
    }

    public JsonObject put(String key, Optional<?> value) {
        return set(key, value.map(JsonObject::checked));
    }

    public JsonObject put(String key, OptionalDouble value) {
        return set(key, value.isPresent() ? Optional.of(checked(value.getAsDouble())) : Optional.empty());
    }

    public JsonObject put(String key, OptionalInt value) {
        return set(key, value.isPresent() ? Optional.of(value.getAsInt()) : Optional.empty());
    }

    private static Object checked(Object value) {
        if (value instanceof Double number && !Double.isFinite(number)) {
            throw new IllegalArgumentException(number + " is no number of JSON");
        }
        if (value instanceof List<?> list) {
            return list.stream().map(JsonObject::checked).toList();
        }
        boolean plain = value instanceof JsonObject
                || value instanceof Double
                || value instanceof Integer
                || value instanceof Long
                || value instanceof BigDecimal
                || value instanceof Boolean;
        return plain ? value : Objects.requireNonNull(value, "value").toString();
    }

    /** Whether the key was put; for tests and readers of the document. */
    public List<String> keys() {
        return Collections.unmodifiableList(new ArrayList<>(fields.keySet()));
    }

    /** The document on several lines, two blanks a level, with a line end. */
    public String text() {
        StringWriter out = new StringWriter();
        try (JsonGenerator json = new JsonFactory().createGenerator(out)) {
            json.useDefaultPrettyPrinter();
            write(json);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return out + "\n";
    }

    private void write(JsonGenerator json) throws IOException {
        json.writeStartObject();
        for (Map.Entry<String, Optional<Object>> field : fields.entrySet()) {
            json.writeFieldName(field.getKey());
            if (field.getValue().isEmpty()) {
                json.writeNull();
            } else {
                writeValue(json, field.getValue().get());
            }
        }
        json.writeEndObject();
    }

    /** Without the digits that are only traces of binary arithmetic; a number that people typed stays as they typed it. */
    private static double rounded(double number) {
        return new BigDecimal(number).round(DIGITS).doubleValue();
    }

    private static void writeValue(JsonGenerator json, Object value) throws IOException {
        if (value instanceof JsonObject object) {
            object.write(json);
        } else if (value instanceof List<?> list) {
            json.writeStartArray();
            for (Object element : list) {
                writeValue(json, element);
            }
            json.writeEndArray();
        } else if (value instanceof Boolean truth) {
            json.writeBoolean(truth);
        } else if (value instanceof BigDecimal decimal) {
            json.writeNumber(decimal.toPlainString());
        } else if (value instanceof Double number) {
            json.writeNumber(rounded(number));
        } else if (value instanceof Long || value instanceof Integer) {
            json.writeNumber(((Number) value).longValue());
        } else {
            json.writeString(value.toString());
        }
    }
}
