package quarterlight.marks.code;

import static quarterlight.language.Sentences.say;

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
            "I", "marks.glass-mark.i-toughened-glass-of-a",
            "II", "marks.glass-mark.ii-laminated-glass-of-a",
            "III", "marks.glass-mark.iii-treated-laminated-glass-of",
            "IV", "marks.glass-mark.iv-glass-with-plastic",
            "V", "marks.glass-mark.v-less-than-70-of",
            "V-VI", "marks.glass-mark.v-vi-double-glazing-less");
    private static final Map<String, String> ITEMS = Map.of(
            "1", "marks.glass-mark.as1-fit-for-a-windshield",
            "2", "marks.glass-mark.as2-at-least-70-of",
            "3", "marks.glass-mark.as3-less-than-70-of");
    private static final Map<String, String> COUNTRIES = Map.of(
            "1", "marks.glass-mark.germany",
            "2", "marks.glass-mark.france",
            "3", "marks.glass-mark.italy",
            "4", "marks.glass-mark.the-netherlands",
            "5", "marks.glass-mark.sweden",
            "6", "marks.glass-mark.belgium",
            "9", "marks.glass-mark.spain",
            "11", "marks.glass-mark.the-united-kingdom",
            "12", "marks.glass-mark.austria",
            "14", "marks.glass-mark.switzerland");

    private GlassMark() {}

    /** What is published of each part of the mark, in sentences without a full stop; empty if nothing is. */
    public static List<String> read(String text) {
        String mark = text.toUpperCase(Locale.ROOT);
        List<String> said = new ArrayList<>();
        Matcher item = AS.matcher(mark);
        if (item.find()) {
            said.add(
                    ITEMS.containsKey(item.group(1))
                            ? say(ITEMS.get(item.group(1)))
                            : say("marks.glass-mark.as-item", item.group(1)));
        }
        Matcher model = MODEL.matcher(mark);
        if (model.find()) {
            said.add(say("marks.glass-mark.m-number", model.group(1)));
        }
        Matcher dot = DOT.matcher(mark);
        if (dot.find()) {
            said.add(say("marks.glass-mark.dot-number", dot.group(1)));
        }
        Matcher country = COUNTRY.matcher(mark);
        if (country.find()) {
            String place = COUNTRIES.containsKey(country.group(1))
                    ? say(COUNTRIES.get(country.group(1)))
                    : say("marks.glass-mark.country", country.group(1));
            said.add(say("marks.glass-mark.approved-in", country.group(1), place));
        }
        Matcher regulation = REGULATION.matcher(mark);
        if (regulation.find()) {
            said.add(say("marks.glass-mark.approval", regulation.group(1)));
        }
        Matcher type = TYPE.matcher(mark);
        boolean european = said.stream().anyMatch(part -> part.startsWith("E") || part.startsWith("43R"));
        if (european && type.find()) {
            said.add(say("marks.glass-mark.by-regulation", say(TYPES.get(type.group(1)))));
        }
        return List.copyOf(said);
    }
}
