package quarterlight.words;

import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import quarterlight.car.ZoneId;

/** Whether a draft says what a form of a gold row says: kind, place and value, as the scorer of the narrations has it. */
final class RowFit {
    private static final Pattern THICKNESS = Pattern.compile("([\\d.]+)-([\\d.]+) (mil|um)");
    private static final Map<String, String> KINDS = Map.ofEntries(
            Map.entry("original", "as built"),
            Map.entry("present", "sound, as built"),
            Map.entry("surface rust", "pitted"),
            Map.entry("scale", "pitted"),
            Map.entry("rusted through", "pitted, damaged, missing"),
            Map.entry("filler", "repaired, added coating"),
            Map.entry("refinished", "repaired, added coating"),
            Map.entry("replated", "repaired, added coating"),
            Map.entry("blocked", "damaged, worn"),
            Map.entry("noise", "damaged, worn"),
            Map.entry("smell", "damaged, worn, leaking"));
    private static final Map<String, String> RESULTS =
            Map.of("none", "works", "some", "works with a fault", "heavy", "works with a fault, does not");
    private static final String[][] PHRASES = {
        {"parking brake|hand ?brake|emergency brake", "handbrake"},
        {"air conditioning|air conditioner|a/?c", "aircon"},
        {"turn signals?|indicators?|blinkers?|flashers?", "signal"},
        {"hazards?( warning)?|four way", "hazard"},
        {"seat ?belts?", "belt"},
        {"head ?(light|lamp)s?|(main|high|low|dipped) beams?", "headlamp"},
        {"(dome|interior|courtesy|roof) (light|lamp)s?", "cabin lamp"},
        {"stop ?(light|lamp)s?|brake ?lights?", "brake lamp"},
        {"(reversing|backup|back-up) ?(light|lamp)s?", "reverse lamp"},
        {"(license|number) plate (light|lamp)s?", "plate lamp"},
        {"road test|test drive|driven?( on the road)?|drives", "driven"},
        {"blower( motor)?|heater( fan)?", "heater"},
        {"soft top|convertible top|hood mechanism", "top"},
        {"cranks?|starter", "crank"},
        {"electric windows?|window winders?|side windows?", "window"},
        {"oil pressure gauge", "oil pressure"}
    };
    private static final Map<String, String> SAME = Map.ofEntries(
            Map.entry("break", "brake"),
            Map.entry("light", "lamp"),
            Map.entry("gage", "gauge"),
            Map.entry("hot", "warm"),
            Map.entry("trunk", "decklid"),
            Map.entry("boot", "decklid"),
            Map.entry("bonnet", "hood"),
            Map.entry("gearbox", "gear"),
            Map.entry("transmission", "gear"),
            Map.entry("idling", "idle"),
            Map.entry("starting", "start"),
            Map.entry("alternator", "charge"),
            Map.entry("charging", "charge"),
            Map.entry("rolling", "roll"),
            Map.entry("tire", "tread"),
            Map.entry("tyre", "tread"),
            Map.entry("converter", "clutch"),
            Map.entry("stereo", "radio"),
            Map.entry("speedo", "speedometer"),
            Map.entry("gas", "fuel"),
            Map.entry("temp", "temperature"));
    private static final Set<String> IDLE = Set.of(
            "the of in on at a an its and or from again every all lowest cylinder is by to with up takes second third"
                    .split(" "));
    private static final List<Set<String>> AGAINST = List.of(
            Set.of("left", "right"),
            Set.of("front", "rear"),
            Set.of("cold", "warm"),
            Set.of("fuel", "temperature", "oil"));

    private RowFit() {}

    static boolean full(Draft draft, GoldRow.Form form) {
        if (!draft.what().word().equals(form.what())) {
            return false;
        }
        boolean place = draft.what() == DraftKind.TRIAL
                ? items(form.value()).stream()
                        .anyMatch(item -> sameItem(draft.facet(Facet.ITEM).orElse(""), item))
                : zones(draft.zones(), form.zone())
                        || draft.what() == DraftKind.ODOMETER && draft.zones().isEmpty();
        return place && value(draft, form.value());
    }

    static boolean zones(List<ZoneId> zones, String spec) {
        Set<String> named = zones.stream().map(ZoneId::value).collect(Collectors.toSet());
        named.remove("whole-car");
        if (spec.contains(" | ")) {
            return named.equals(Set.of(spec.split(" \\| ")));
        }
        Set<String> either = new HashSet<>();
        Arrays.stream(spec.split(" / ")).forEach(zone -> either.add(zone.equals("whole-car") ? "" : zone));
        return named.isEmpty() ? either.contains("") : either.containsAll(named);
    }

    private static boolean value(Draft draft, String value) {
        List<String> choices = List.of(value.split(" / "));
        return switch (draft.what()) {
            case STATEMENT -> kinds(draft).stream().anyMatch(choices::contains);
            case TRIAL -> trial(draft, choices);
            case MARK -> choices.stream().anyMatch(choice -> mark(draft, choice));
            case THICKNESS -> thickness(draft, value, choices);
            case SIGN ->
                choices.contains(draft.facet(Facet.SIGN).orElse("") + ": "
                        + draft.facet(Facet.SEEN).orElse(""));
            case ODOMETER -> choices.contains(draft.facet(Facet.TEXT).orElse(""));
            default -> true;
        };
    }

    private static Set<String> kinds(Draft draft) {
        Set<String> kinds = new HashSet<>();
        for (Facet facet : List.of(Facet.ORIGIN, Facet.CONDITION)) {
            draft.facet(facet)
                    .ifPresent(said ->
                            kinds.addAll(List.of(KINDS.getOrDefault(said, said).split(", "))));
        }
        return kinds;
    }

    private static boolean trial(Draft draft, List<String> choices) {
        String result = draft.facet(Facet.RESULT).orElse("");
        List<String> results = List.of(RESULTS.getOrDefault(result, result).split(", "));
        String item = "";
        for (String choice : choices) {
            String[] fields = choice.split(": ");
            item = fields.length > 1 ? fields[0] : item;
            if (sameItem(draft.facet(Facet.ITEM).orElse(""), item)
                    && results.contains(fields.length > 1 ? fields[1] : fields[0])) {
                return true;
            }
        }
        return false;
    }

    private static List<String> items(String value) {
        return Arrays.stream(value.split(" / "))
                .map(choice -> choice.split(": ")[0])
                .toList();
    }

    private static boolean mark(Draft draft, String choice) {
        String[] fields = choice.split(": ");
        String want = code(fields.length > 2 ? fields[2] : "");
        String said = code(draft.facet(Facet.TEXT).orElse(""));
        boolean open = want.endsWith("?")
                && !want.endsWith("??")
                && said.contains("?")
                && (said.replaceAll("\\?+$", "") + "?").equals(want);
        return said.equals(want) || open;
    }

    private static String code(String text) {
        String code = text.replaceAll("[_*\u2026]", "?")
                .replaceAll("[\\s\\-\u2013/]", "")
                .toUpperCase(Locale.ROOT);
        return code.isEmpty() ? "?" : code;
    }

    private static boolean thickness(Draft draft, String value, List<String> choices) {
        if (value.equals("none / over")) {
            return draft.facet(Facet.LOW_UM).isEmpty();
        }
        if (draft.facet(Facet.LOW_UM).isEmpty()) {
            return false;
        }
        double low = Double.parseDouble(draft.facet(Facet.LOW_UM).orElseThrow());
        double high = Double.parseDouble(draft.facet(Facet.HIGH_UM).orElseThrow());
        return choices.stream().anyMatch(choice -> {
            Matcher m = THICKNESS.matcher(choice);
            if (!m.matches()) {
                return false;
            }
            boolean mil = m.group(3).equals("mil");
            double um = mil ? 25.4 : 1;
            double slack = (mil ? 0.3 * 25.4 : 8) + 0.1;
            return Math.abs(Double.parseDouble(m.group(1)) * um - low) <= slack
                    && Math.abs(Double.parseDouble(m.group(2)) * um - high) <= slack;
        });
    }

    private static boolean sameItem(String one, String other) {
        Set<String> a = words(one);
        Set<String> b = words(other);
        Set<String> both = new HashSet<>(a);
        both.retainAll(b);
        boolean against = AGAINST.stream().anyMatch(pair -> {
            List<String> ofA = pair.stream().filter(a::contains).toList();
            List<String> ofB = pair.stream().filter(b::contains).toList();
            return ofA.size() == 1 && ofB.size() == 1 && !ofA.equals(ofB);
        });
        return !a.isEmpty() && !b.isEmpty() && !against && 2.0 * both.size() / (a.size() + b.size()) >= 0.6;
    }

    private static Set<String> words(String item) {
        String text = " " + item.toLowerCase(Locale.ROOT) + " ";
        for (String[] phrase : PHRASES) {
            text = text.replaceAll("\\b(?:" + phrase[0] + ")\\b", phrase[1]);
        }
        Set<String> words = new HashSet<>();
        for (String token : GoldWalk.tokens(text)) {
            String singular = token.endsWith("ss") ? token : token.replaceAll("s$", "");
            if (!IDLE.contains(singular) && !singular.isEmpty()) {
                words.add(SAME.getOrDefault(singular, singular));
            }
        }
        return words;
    }
}
