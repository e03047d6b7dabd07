package quarterlight.demo;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Map;

/** What a scene is told, written {@code key=value|key=value}. */
record Params(Map<String, String> values) {
    static Params parse(String text) {
        Map<String, String> values = new LinkedHashMap<>();
        Arrays.stream(text.split("\\|"))
                .map(String::strip)
                .filter(p -> !p.isEmpty())
                .forEach(pair -> {
                    int eq = pair.indexOf('=');
                    values.put(eq < 0 ? pair : pair.substring(0, eq), eq < 0 ? "" : pair.substring(eq + 1));
                });
        return new Params(values);
    }

    String text(String key, String otherwise) {
        return values.getOrDefault(key, otherwise);
    }

    double number(String key, double otherwise) {
        String value = values.get(key);
        return value == null ? otherwise : Double.parseDouble(value);
    }

    boolean has(String key) {
        return values.containsKey(key);
    }
}
