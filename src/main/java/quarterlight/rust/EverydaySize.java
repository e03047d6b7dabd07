package quarterlight.rust;

import static quarterlight.language.Sentences.say;

import java.util.Optional;
import quarterlight.language.Sentences;
import quarterlight.units.Area;
import quarterlight.units.Worded;

/**
 * An area beside a thing that everybody knows, for the buyer: common practice, always with the figure. Coin: a US
 * quarter, 24.26 mm across (US Mint), 462 mm2; card: ISO/IEC 7810 ID-1, 85.60 x 53.98 mm, 4,621 mm2; palm: about
 * 8,000 mm2 without the fingers (rough, from memory); sheet: US letter, 60,322 mm2. Where people know other coins and sheets, a language names
 * those of nearly the same size: 50 euro cent, 24.25 mm across; A4, 62,370 mm2.
 */
public enum EverydaySize implements Worded {
    COIN(462.2),
    CARD(4620.7),
    PALM(8000),
    SHEET(60322);

    private static final double WHOLE = 0.85;
    private static final int MANY = 10;

    private final double mm2;

    EverydaySize(double mm2) {
        this.mm2 = mm2;
    }

    public double mm2() {
        return mm2;
    }

    /** The area in words: {@code 1,400 mm2, about 3 quarter coins}. */
    public static String words(Area area) {
        boolean small = area.mm2() > 0 && area.mm2() < 10;
        String figure = Sentences.figure(small ? "%,.1f mm2" : "%,.0f mm2", area.mm2());
        if (area.mm2() == 0) {
            return figure;
        }
        return say("rust.size", figure, compared(area.mm2()));
    }

    /** Only the comparison: {@code about 3 quarter coins}; empty for no area. */
    public static Optional<String> beside(Area area) {
        return area.mm2() > 0 ? Optional.of(compared(area.mm2())) : Optional.empty();
    }

    private static String compared(double mm2) {
        EverydaySize thing = COIN;
        for (EverydaySize larger : values()) {
            if (mm2 >= WHOLE * larger.mm2) {
                thing = larger;
            }
        }
        double times = mm2 / thing.mm2;
        if (times < WHOLE) {
            return say("rust.size." + share(times), thing.part());
        }
        long count = Math.round(times);
        if (count == 1) {
            return say("rust.size.one", say("rust.size.one." + thing.word()));
        }
        String more = say("rust.size.more." + thing.word());
        return count > MANY ? say("rust.size.many", MANY, more) : say("rust.size.some", count, more);
    }

    private String part() {
        return say("rust.size.part." + word());
    }

    private static String share(double times) {
        if (times < 0.1) {
            return "least";
        }
        if (times < 0.4) {
            return times < 0.17 ? "eighth" : times < 0.29 ? "quarter" : "third";
        }
        return times < 0.6 ? "half" : "two-thirds";
    }
}
