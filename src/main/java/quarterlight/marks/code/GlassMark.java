package quarterlight.marks.code;

import static quarterlight.language.Sentences.say;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
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

    /** Items of ANSI Z26.1 that windows of cars bear. */
    private static final Set<String> ITEMS = Set.of("1", "2", "3");
    /** Countries that approve, by the number beside their E (UN Regulation No. 43). */
    private static final Set<String> COUNTRIES = Set.of("1", "2", "3", "4", "5", "6", "9", "11", "12", "14");

    private GlassMark() {}

    /** What is published of each part of the mark, in sentences without a full stop; empty if nothing is. */
    public static List<String> read(String text) {
        String mark = text.toUpperCase(Locale.ROOT);
        List<String> said = new ArrayList<>();
        Matcher item = AS.matcher(mark);
        if (item.find()) {
            String number = item.group(1);
            said.add(ITEMS.contains(number) ? say("marks.glass.as." + number) : say("marks.glass.as-other", number));
        }
        Matcher model = MODEL.matcher(mark);
        if (model.find()) {
            said.add(say("marks.glass.model", model.group(1)));
        }
        Matcher dot = DOT.matcher(mark);
        if (dot.find()) {
            said.add(say("marks.glass.dot", dot.group(1)));
        }
        Matcher country = COUNTRY.matcher(mark);
        boolean approved = country.find();
        if (approved) {
            String number = country.group(1);
            String place = COUNTRIES.contains(number)
                    ? say("marks.glass.country." + number)
                    : say("marks.glass.country-other", number);
            said.add(say("marks.glass.approved", number, place));
        }
        Matcher regulation = REGULATION.matcher(mark);
        boolean regulated = regulation.find();
        if (regulated) {
            said.add(say("marks.glass.regulation", regulation.group(1)));
        }
        Matcher type = TYPE.matcher(mark);
        if ((approved || regulated) && type.find()) {
            said.add(say("marks.glass.type." + type.group(1).toLowerCase(Locale.ROOT)));
        }
        return List.copyOf(said);
    }
}
