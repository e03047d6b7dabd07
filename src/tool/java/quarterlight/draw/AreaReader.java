package quarterlight.draw;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.locationtech.jts.geom.Geometry;

/**
 * Reads an area: {@code after(gap_cowl) & below(belt) - arch_front}.
 *
 * <p>{@code +} unites, {@code -} takes away, {@code &} keeps the common part and binds closer; {@code [ x,y x,y ]} is a
 * closed curve; functions are those of {@link AreaFunctions}; a name is an area named by {@code area} or a zone drawn before in this view
 * (with {@code _} for {@code -}). {@code all} is the silhouette, {@code rest} what no zone has taken yet.
 */
final class AreaReader {
    private final Map<String, Geometry> areas = new HashMap<>();
    private final Numbers numbers;
    private final CurveReader curves;
    private final AreaFunctions functions;
    private String text = "";
    private int at;

    AreaReader(Numbers numbers, CurveReader curves) {
        this.numbers = numbers;
        this.curves = curves;
        this.functions = new AreaFunctions(numbers);
    }

    void name(String name, Geometry area) {
        areas.put(name, area);
    }

    void lateral(Lateral axis) {
        functions.lateral(axis);
    }

    Geometry read(String expression) {
        String outerText = text;
        int outerAt = at;
        text = expression;
        at = 0;
        Geometry area = sum();
        blanks();
        if (at < text.length()) {
            throw new DrawingFault("\"" + text.substring(at) + "\" was not expected in an area");
        }
        text = outerText;
        at = outerAt;
        return area;
    }

    private Geometry sum() {
        Geometry area = common();
        while (next() == '+' || next() == '-') {
            char operator = text.charAt(at++);
            Geometry other = common();
            area = operator == '+' ? Shapes.union(area, other) : Shapes.minus(area, other);
        }
        return area;
    }

    private Geometry common() {
        Geometry area = factor();
        while (next() == '&') {
            at++;
            area = Shapes.common(area, factor());
        }
        return area;
    }

    private Geometry factor() {
        char c = next();
        if (c == '(') {
            at++;
            Geometry area = sum();
            require(')');
            return area;
        }
        if (c == '[') {
            int close = text.indexOf(']', at);
            String points = text.substring(at + 1, close);
            at = close + 1;
            return Shapes.polygon(curves.closed(points));
        }
        int start = at;
        while (at < text.length() && (Character.isLetterOrDigit(text.charAt(at)) || text.charAt(at) == '_')) {
            at++;
        }
        String word = text.substring(start, at);
        if (word.isEmpty()) {
            throw new DrawingFault("an area is missing before \"" + text.substring(at) + "\"");
        }
        if (at < text.length() && text.charAt(at) == '(') {
            return call(word);
        }
        Geometry area = areas.get(word);
        if (area == null && numbers.hasCurve(word)) {
            return Shapes.polygon(numbers.curve(word));
        }
        if (area == null) {
            throw new DrawingFault("there is no area named " + word);
        }
        return area;
    }

    private Geometry call(String function) {
        int depth = 0;
        int start = at + 1;
        do {
            char c = text.charAt(at++);
            depth += c == '(' || c == '[' ? 1 : c == ')' || c == ']' ? -1 : 0;
        } while (depth > 0 && at < text.length());
        if (depth > 0) {
            throw new DrawingFault("a bracket is not closed in \"" + text + "\"");
        }
        List<String> arguments = Numbers.split(text.substring(start, at - 1));
        return functions.call(function, arguments, this);
    }

    private char next() {
        blanks();
        return at < text.length() ? text.charAt(at) : '\0';
    }

    private void blanks() {
        while (at < text.length() && Character.isWhitespace(text.charAt(at))) {
            at++;
        }
    }

    private void require(char wanted) {
        if (next() != wanted) {
            throw new DrawingFault("expected " + wanted + " in \"" + text + "\"");
        }
        at++;
    }
}
