package quarterlight.draw;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * A number written as an expression without spaces: {@code wb-200}, {@code hw*0.8}, {@code y(belt,700)}.
 *
 * <p>Operators {@code + - * /} and parentheses; names stand for values set by {@code let}; {@code y(curve,x)} is the
 * height of a curve at x, {@code x(curve,y)} the other way round, first crossing in the direction of the curve; {@code cos(a)} and {@code sin(a)} take degrees.
 */
final class Arithmetic {
    private final String text;
    private final Map<String, Double> values;
    private final Map<String, Curve> curves;
    private int at;

    private Arithmetic(String text, Map<String, Double> values, Map<String, Curve> curves) {
        this.text = text;
        this.values = values;
        this.curves = curves;
    }

    /** @throws DrawingFault if the text is no expression or names something unknown */
    static double value(String text, Map<String, Double> values, Map<String, Curve> curves) {
        Arithmetic reader = new Arithmetic(text.trim(), values, curves);
        double value = reader.sum();
        if (reader.at < reader.text.length()) {
            throw new DrawingFault("\"" + text + "\" is not a number or expression");
        }
        return value;
    }

    private double sum() {
        double value = product();
        while (at < text.length() && (peek() == '+' || peek() == '-')) {
            char operator = text.charAt(at++);
            double next = product();
            value = operator == '+' ? value + next : value - next;
        }
        return value;
    }

    private double product() {
        double value = factor();
        while (at < text.length() && (peek() == '*' || peek() == '/')) {
            char operator = text.charAt(at++);
            double next = factor();
            value = operator == '*' ? value * next : value / next;
        }
        return value;
    }

    private double factor() {
        if (at < text.length() && peek() == '-') {
            at++;
            return -factor();
        }
        if (at < text.length() && peek() == '(') {
            at++;
            double value = sum();
            expect(')');
            return value;
        }
        int start = at;
        while (at < text.length() && (Character.isLetterOrDigit(peek()) || peek() == '.' || peek() == '_')) {
            at++;
        }
        String word = text.substring(start, at);
        if (word.isEmpty()) {
            throw new DrawingFault("\"" + text + "\" lacks a number at place " + (at + 1));
        }
        if (Character.isDigit(word.charAt(0)) || word.charAt(0) == '.') {
            return Double.parseDouble(word);
        }
        if (at < text.length() && peek() == '(') {
            return call(word);
        }
        Double value = values.get(word);
        if (value == null) {
            throw new DrawingFault("there is no value named " + word);
        }
        return value;
    }

    private double call(String function) {
        expect('(');
        if (function.equals("cos") || function.equals("sin")) {
            double degrees = sum();
            expect(')');
            return function.equals("cos") ? Math.cos(Math.toRadians(degrees)) : Math.sin(Math.toRadians(degrees));
        }
        int close = text.indexOf(')', at);
        List<String> parts =
                new ArrayList<>(List.of(text.substring(at, Math.max(at, close)).split(",")));
        if (close < 0 || parts.size() != 2) {
            throw new DrawingFault("expected " + function + "(curve,number) in \"" + text + "\"");
        }
        at = close + 1;
        Curve curve = curves.get(parts.get(0));
        if (curve == null) {
            throw new DrawingFault("there is no curve named " + parts.get(0));
        }
        double where = value(parts.get(1), values, curves);
        return switch (function) {
            case "y" -> curve.crossing(where, false);
            case "x" -> curve.crossing(where, true);
            default -> throw new DrawingFault("there is no function " + function + " of numbers");
        };
    }

    private char peek() {
        return text.charAt(at);
    }

    private void expect(char wanted) {
        if (at >= text.length() || text.charAt(at) != wanted) {
            throw new DrawingFault("expected " + wanted + " at place " + (at + 1) + " of \"" + text + "\"");
        }
        at++;
    }
}
