package quarterlight.marks.code;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What the mark of a pane says as far as rules are published; the date signs of makers (dots, bars) are not, and sources contradict
 * each other: they are kept as read.
 * <p>Source: FMVSS 205 (49 CFR 571.205) with ANSI Z26.1 for AS, M and DOT; UN Regulation No. 43 for the E mark and the type of glass.
 */
public final class GlassMark {
    private static final Pattern AS = Pattern.compile("\\bAS[ -]?(\\d{1,2})\\b");
    private static final Pattern MODEL = Pattern.compile("\\bM[ -]?(\\d+)\\b");
    private static final Pattern DOT = Pattern.compile("\\bDOT[ -]?(\\d+)\\b");
    private static final Pattern COUNTRY = Pattern.compile("\\bE[ -]?(\\d{1,2})\\b");
    private static final Pattern REGULATION = Pattern.compile("\\b43R[ -]?(\\d+)\\b");
    /** The type of glass stands beside the E mark or the number of the approval; elsewhere a numeral may mean anything. */
    private static final Pattern TYPE = Pattern.compile("(?:^|\\s)(V-VI|IV|V|III|II|I)(?=\\s|$)");

    private static final Map<String, String> TYPES = Map.of(
            "I", "I: toughened glass of a windshield",
            "II", "II: laminated glass of a windshield",
            "III", "III: treated laminated glass of a windshield",
            "IV", "IV: glass with plastic",
            "V", "V: less than 70 % of the light comes through",
            "V-VI", "V-VI: double glazing, less than 70 % of the light comes through");
    private static final Map<String, String> ITEMS = Map.of(
            "1", "AS1: fit for a windshield, at least 70 % of the light comes through",
            "2", "AS2: at least 70 % of the light comes through, not for a windshield",
            "3", "AS3: less than 70 % of the light comes through");
    private static final Map<String, String> COUNTRIES = Map.of(
            "1", "Germany",
            "2", "France",
            "3", "Italy",
            "4", "the Netherlands",
            "5", "Sweden",
            "6", "Belgium",
            "9", "Spain",
            "11", "the United Kingdom",
            "12", "Austria",
            "14", "Switzerland");

    private GlassMark() {}

    /** What is published of each part of the mark, in sentences without a full stop; empty if nothing is. */
    public static List<String> read(String text) {
        String mark = text.toUpperCase(Locale.ROOT);
        List<String> said = new ArrayList<>();
        Matcher item = AS.matcher(mark);
        if (item.find()) {
            said.add(ITEMS.getOrDefault(item.group(1), "AS" + item.group(1) + ": an item of ANSI Z26.1"));
        }
        Matcher model = MODEL.matcher(mark);
        if (model.find()) {
            said.add("M" + model.group(1) + ": the maker's number of this make-up of glass");
        }
        Matcher dot = DOT.matcher(mark);
        if (dot.find()) {
            said.add("DOT " + dot.group(1)
                    + ": number of a maker of glass; whoever only cuts a pane must not put it on (FMVSS 205)");
        }
        Matcher country = COUNTRY.matcher(mark);
        if (country.find()) {
            String place = COUNTRIES.getOrDefault(country.group(1), "country " + country.group(1));
            said.add("E" + country.group(1) + ": approved in " + place);
        }
        Matcher regulation = REGULATION.matcher(mark);
        if (regulation.find()) {
            said.add("43R-" + regulation.group(1) + ": approval under UN Regulation No. 43");
        }
        Matcher type = TYPE.matcher(mark);
        boolean european = said.stream().anyMatch(part -> part.startsWith("E") || part.startsWith("43R"));
        if (european && type.find()) {
            said.add(TYPES.get(type.group(1)) + " (UN Regulation No. 43)");
        }
        return List.copyOf(said);
    }
}
