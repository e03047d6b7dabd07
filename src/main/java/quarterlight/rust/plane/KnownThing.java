package quarterlight.rust.plane;

import static quarterlight.language.Sentences.say;

import java.text.DecimalFormat;
import java.text.DecimalFormatSymbols;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import quarterlight.language.Language;

/**
 * A thing of known size that one may lay beside a patch. Sizes in mm.
 *
 * @param name what it is, in the language that was in hand
 * @param widthMm the first side, or the diameter of a round thing
 * @param heightMm the second side, or the diameter again
 * @param round true for a coin
 * @param source where the size is from
 */
public record KnownThing(String name, double widthMm, double heightMm, boolean round, String source) {
    private static final String MINT = "rust.thing.source.mint";
    private static final String EURO = "rust.thing.source.euro";
    private static final String PAPER = "rust.thing.source.paper";

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
        all.add(rectangle("rust.thing.card", 85.60, 53.98, "rust.thing.source.card"));
        all.add(rectangle("rust.thing.a4", 210, 297, PAPER));
        all.add(rectangle("rust.thing.a5", 148, 210, PAPER));
        all.add(rectangle("rust.thing.a6", 105, 148, PAPER));
        all.add(rectangle("rust.thing.letter", 215.9, 279.4, "rust.thing.source.letter"));
        all.add(coin("rust.thing.us-cent", 19.05, MINT));
        all.add(coin("rust.thing.us-nickel", 21.21, MINT));
        all.add(coin("rust.thing.us-dime", 17.91, MINT));
        all.add(coin("rust.thing.us-quarter", 24.26, MINT));
        all.add(coin("rust.thing.us-half", 30.61, MINT));
        all.add(coin("rust.thing.us-dollar", 26.49, MINT));
        all.add(coin("rust.thing.euro-2", 25.75, EURO));
        all.add(coin("rust.thing.euro-1", 23.25, EURO));
        all.add(coin("rust.thing.cent-50", 24.25, EURO));
        all.add(coin("rust.thing.cent-20", 22.25, EURO));
        all.add(coin("rust.thing.cent-10", 19.75, EURO));
        all.add(coin("rust.thing.cent-5", 21.25, EURO));
        all.add(coin("rust.thing.cent-2", 18.75, EURO));
        all.add(coin("rust.thing.cent-1", 16.25, EURO));
        return List.copyOf(all);
    }

    private static KnownThing rectangle(String name, double widthMm, double heightMm, String source) {
        return new KnownThing(say(name), widthMm, heightMm, false, say(source));
    }

    private static KnownThing coin(String name, double diameterMm, String source) {
        return new KnownThing(say(name), diameterMm, diameterMm, true, say(source));
    }

    /** Two sides in words: {@code 85.6 x 53.98 mm}. */
    static String size(double widthMm, double heightMm) {
        DecimalFormat plain = new DecimalFormat(
                "0.##", DecimalFormatSymbols.getInstance(Language.inHand().locale()));
        return plain.format(widthMm) + " x " + plain.format(heightMm) + " mm";
    }

    /** Its area, mm2; of a rectangle with sharp corners. */
    public double areaMm2() {
        return round ? Math.PI * widthMm * widthMm / 4 : widthMm * heightMm;
    }
}
