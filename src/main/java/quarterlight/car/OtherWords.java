package quarterlight.car;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * Other words for words of zones, as people say them on either side of the Atlantic, and how near a mistyped word comes to a right one.
 * Common practice, from memory. Pure functions.
 */
final class OtherWords {
    private static final Map<String, List<String>> WORDS = new TreeMap<>(Map.ofEntries(
            Map.entry("trunk", List.of("decklid")),
            Map.entry("boot", List.of("decklid", "trunk")),
            Map.entry("bonnet", List.of("hood")),
            Map.entry("wing", List.of("fender", "quarter")),
            Map.entry("guard", List.of("fender")),
            Map.entry("sill", List.of("rocker")),
            Map.entry("tire", List.of("wheel")),
            Map.entry("tyre", List.of("wheel")),
            Map.entry("windscreen", List.of("windshield")),
            Map.entry("backlight", List.of("glass")),
            Map.entry("window", List.of("glass")),
            Map.entry("headlight", List.of("headlamp")),
            Map.entry("taillight", List.of("tail")),
            Map.entry("gearbox", List.of("transmission")),
            Map.entry("propshaft", List.of("driveshaft")),
            Map.entry("bulkhead", List.of("firewall")),
            Map.entry("scuttle", List.of("cowl")),
            Map.entry("chassis", List.of("frame")),
            Map.entry("petrol", List.of("fuel")),
            Map.entry("gas", List.of("fuel")),
            Map.entry("silencer", List.of("exhaust")),
            Map.entry("muffler", List.of("exhaust")),
            Map.entry("dashboard", List.of("dash")),
            Map.entry("hardtop", List.of("roof")),
            Map.entry("hatch", List.of("tailgate")),
            Map.entry("arch", List.of("lip", "wheelhouse")),
            Map.entry("apron", List.of("fender")),
            Map.entry("plates", List.of("papers"))));

    private static final int SHORTEST_NEAR = 4;
    private static final int LONG_WORD = 8;

    private OtherWords() {}

    /** The other words for any word of a zone. */
    static List<String> of(List<String> own) {
        return WORDS.entrySet().stream()
                .filter(entry -> entry.getValue().stream().anyMatch(own::contains))
                .map(Map.Entry::getKey)
                .toList();
    }

    /** The words of a zone that another word stands for; none if it is no such word. */
    static List<String> meant(String other, List<String> own) {
        return WORDS.getOrDefault(other, List.of()).stream()
                .filter(own::contains)
                .toList();
    }

    /** True if one slip (two in a long word) makes one word into the other, or into its beginning: a letter too many, too few, wrong or swapped. */
    static boolean isNear(String typed, String word) {
        if (typed.length() < SHORTEST_NEAR || typed.charAt(0) != word.charAt(0)) {
            return false;
        }
        int allowed = typed.length() >= LONG_WORD ? 2 : 1;
        for (int length = typed.length() - allowed;
                length <= Math.min(word.length(), typed.length() + allowed);
                length++) {
            if (length > 0 && slips(typed, word.substring(0, Math.min(length, word.length()))) <= allowed) {
                return true;
            }
        }
        return false;
    }

    /** Edit distance with swapped neighbors as one slip (optimal string alignment). */
    private static int slips(String a, String b) {
        int[][] d = new int[a.length() + 1][b.length() + 1];
        for (int i = 0; i <= a.length(); i++) {
            for (int j = 0; j <= b.length(); j++) {
                if (i == 0 || j == 0) {
                    d[i][j] = i + j;
                    continue;
                }
                int wrong = a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1;
                d[i][j] = Math.min(d[i - 1][j - 1] + wrong, 1 + Math.min(d[i - 1][j], d[i][j - 1]));
                if (i > 1 && j > 1 && a.charAt(i - 1) == b.charAt(j - 2) && a.charAt(i - 2) == b.charAt(j - 1)) {
                    d[i][j] = Math.min(d[i][j], d[i - 2][j - 2] + 1);
                }
            }
        }
        return d[a.length()][b.length()];
    }
}
