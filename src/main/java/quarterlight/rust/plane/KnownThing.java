package quarterlight.rust.plane;

import java.text.DecimalFormat;
import java.text.DecimalFormatSymbols;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;

/**
 * A thing of known size that one may lay beside a patch. Sizes in mm.
 *
 * @param name what it is
 * @param widthMm the first side, or the diameter of a round thing
 * @param heightMm the second side, or the diameter again
 * @param round true for a coin
 * @param source where the size is from
 */
public record KnownThing(String name, double widthMm, double heightMm, boolean round, String source) {
    private static final String MINT = "US Mint, coin specifications";
    private static final String EURO = "Regulation (EC) 975/98, summary";
    private static final String PAPER = "ISO 216, from memory";

    public KnownThing {
        Objects.requireNonNull(name, "name");
        Objects.requireNonNull(source, "source");
        if (!(widthMm > 0 && heightMm > 0) || round && widthMm != heightMm) {
            throw new IllegalArgumentException(
                    "a thing of known size has sides above 0 mm; a round one has a diameter");
        }
    }

    /** What the program offers; any length or W x H may be given instead. */
    public static List<KnownThing> all() {
        List<KnownThing> all = new ArrayList<>();
        all.add(rectangle(
                "bank or identity card (edges, not the round corners)", 85.60, 53.98, "ISO/IEC 7810, format ID-1"));
        all.add(rectangle("A4 sheet", 210, 297, PAPER));
        all.add(rectangle("A5 sheet", 148, 210, PAPER));
        all.add(rectangle("A6 sheet", 105, 148, PAPER));
        all.add(rectangle("US letter sheet, 8.5 x 11 in", 215.9, 279.4, "ASME Y14.1 size A, from memory"));
        all.add(coin("US cent", 19.05, MINT));
        all.add(coin("US nickel", 21.21, MINT));
        all.add(coin("US dime", 17.91, MINT));
        all.add(coin("US quarter", 24.26, MINT));
        all.add(coin("US half dollar", 30.61, MINT));
        all.add(coin("US dollar coin (26.50 in other lists)", 26.49, MINT));
        all.add(coin("2 euro", 25.75, EURO));
        all.add(coin("1 euro", 23.25, EURO));
        all.add(coin("50 euro cent", 24.25, EURO));
        all.add(coin("20 euro cent (seven notches: fit with care)", 22.25, EURO));
        all.add(coin("10 euro cent", 19.75, EURO));
        all.add(coin("5 euro cent", 21.25, EURO));
        all.add(coin("2 euro cent", 18.75, EURO));
        all.add(coin("1 euro cent", 16.25, EURO));
        return List.copyOf(all);
    }

    private static KnownThing rectangle(String name, double widthMm, double heightMm, String source) {
        return new KnownThing(name, widthMm, heightMm, false, source);
    }

    private static KnownThing coin(String name, double diameterMm, String source) {
        return new KnownThing(name, diameterMm, diameterMm, true, source);
    }

    /** Two sides in words: {@code 85.6 x 53.98 mm}. */
    static String size(double widthMm, double heightMm) {
        DecimalFormat plain = new DecimalFormat("0.##", DecimalFormatSymbols.getInstance(Locale.ROOT));
        return plain.format(widthMm) + " x " + plain.format(heightMm) + " mm";
    }

    /** Its area, mm2; of a rectangle with sharp corners. */
    public double areaMm2() {
        return round ? Math.PI * widthMm * widthMm / 4 : widthMm * heightMm;
    }
}
