package quarterlight.compare.matter;

import java.util.Arrays;
import java.util.EnumMap;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;

/**
 * How much the buyer cares about each concern, 0 to 10; none by default. It orders matters of the same severity, and nothing more: it is never
 * summed, and no car is graded by it. Immutable.
 */
public record Care(Map<Concern, Integer> weights) {
    public static final int MAX = 10;
    /** Nothing was asked: matters stand in the order of their severity alone. */
    public static final Care NONE = new Care(Map.of());

    public Care {
        EnumMap<Concern, Integer> kept = new EnumMap<>(Concern.class);
        weights.forEach((concern, weight) -> {
            if (weight < 0 || weight > MAX) {
                throw new IllegalArgumentException(
                        concern.word() + "=" + weight + ": a weight is a whole number from 0 to " + MAX);
            }
            if (weight > 0) {
                kept.put(concern, weight);
            }
        });
        weights = Map.copyOf(kept);
    }

    /**
     * Weights as typed: {@code structure=5,originality=2}. A concern may be shortened to its first letters; running and driving is {@code running}.
     *
     * @throws IllegalArgumentException if it is none; the message says what was expected
     */
    public static Care parse(String typed) {
        EnumMap<Concern, Integer> read = new EnumMap<>(Concern.class);
        for (String part : typed.split("[,;]")) {
            String[] sides = part.strip().split("=", -1);
            if (sides.length != 2 || !sides[1].strip().matches("[0-9]{1,3}")) {
                throw new IllegalArgumentException("\"" + part.strip() + "\" is no CONCERN=NUMBER; " + offered());
            }
            if (read.put(concern(sides[0].strip()), Integer.parseInt(sides[1].strip())) != null) {
                throw new IllegalArgumentException("\"" + sides[0].strip() + "\" stands twice; give each concern once");
            }
        }
        return new Care(read);
    }

    private static Concern concern(String typed) {
        String wanted = typed.toLowerCase(Locale.ROOT).replace('-', ' ');
        return Arrays.stream(Concern.values())
                .filter(one -> !wanted.isEmpty() && one.word().startsWith(wanted))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("\"" + typed + "\" is no concern; " + offered()));
    }

    private static String offered() {
        return "weights from 0 to " + MAX + " can be given to "
                + Arrays.stream(Concern.values()).map(Concern::word).collect(Collectors.joining(", "))
                + ", as in structure=5,originality=2";
    }

    public int of(Concern concern) {
        return weights.getOrDefault(concern, 0);
    }

    /** In words, the heaviest first; blank if nothing was asked. */
    public String words() {
        return Arrays.stream(Concern.values())
                .filter(weights::containsKey)
                .sorted((a, b) -> of(b) - of(a))
                .map(concern -> concern.said() + " " + of(concern))
                .collect(Collectors.joining(", "));
    }
}
