package quarterlight.draw;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** The named numbers and curves known so far while drawing data is read. */
final class Numbers {
    private final Map<String, Double> values = new HashMap<>();
    private final Map<String, Curve> curves = new HashMap<>();

    double value(String expression) {
        return Arithmetic.value(expression, values, curves);
    }

    Curve curve(String name) {
        Curve curve = curves.get(name);
        if (curve == null) {
            throw new DrawingFault("there is no curve named " + name);
        }
        return curve;
    }

    boolean hasCurve(String name) {
        return curves.containsKey(name);
    }

    void set(String name, double value) {
        values.put(name, value);
    }

    void set(String name, Curve curve) {
        curves.put(name, curve);
    }

    /** Parts of a text between commas that stand in no bracket. */
    static List<String> split(String text) {
        List<String> parts = new ArrayList<>();
        int depth = 0;
        int start = 0;
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if (c == '(' || c == '[') {
                depth++;
            } else if (c == ')' || c == ']') {
                depth--;
            } else if (c == ',' && depth == 0) {
                parts.add(text.substring(start, i).trim());
                start = i + 1;
            }
        }
        parts.add(text.substring(start).trim());
        return parts;
    }
}
