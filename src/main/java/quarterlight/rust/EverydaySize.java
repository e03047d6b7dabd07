package quarterlight.rust;

import static quarterlight.language.Sentences.figure;
import static quarterlight.language.Sentences.say;

import java.util.Locale;
import java.util.Optional;
import quarterlight.units.Area;

/**
 * An area beside a thing that everybody knows, for the buyer: common practice, always with the figure. Coin: a US
 * quarter, 24.26 mm across (US Mint), 462 mm2; card: ISO/IEC 7810 ID-1, 85.60 x 53.98 mm, 4,621 mm2; palm: about
 * 8,000 mm2 without the fingers (rough, from memory); sheet: US letter, 60,322 mm2.
 */
public enum EverydaySize {
    COIN("rust.everyday-size.quarter-coin", "rust.everyday-size.quarter-coins", 462.2),
    CARD("rust.everyday-size.bank-card", "rust.everyday-size.bank-cards", 4620.7),
    PALM("rust.everyday-size.palm", "rust.everyday-size.palms", 8000),
    SHEET("rust.everyday-size.letter-sheet", "rust.everyday-size.letter-sheets", 60322);

    private static final double WHOLE = 0.85;
    private static final int MANY = 10;

    private final String one;
    private final String more;
    private final double mm2;

    EverydaySize(String one, String more, double mm2) {
        this.one = one;
        this.more = more;
        this.mm2 = mm2;
    }

    public double mm2() {
        return mm2;
    }

    /** The area in words: {@code 1,400 mm2, about 3 quarter coins}. */
    public static String words(Area area) {
        boolean small = area.mm2() > 0 && area.mm2() < 10;
        String figure = figure(small ? "%,.1f mm2" : "%,.0f mm2", area.mm2());
        if (area.mm2() == 0) {
            return figure;
        }
        return figure + ", " + compared(area.mm2());
    }

    /** Only the comparison: {@code about 3 quarter coins}; empty for no area. */
    public static Optional<String> beside(Area area) {
        return area.mm2() > 0 ? Optional.of(compared(area.mm2())) : Optional.empty();
    }

    /** As a language says a part of it: {@code of a quarter coin}. */
    private String of() {
        return say("rust.everyday-size.of." + name().toLowerCase(Locale.ROOT));
    }

    private static String compared(double mm2) {
        EverydaySize thing = COIN;
        for (EverydaySize larger : values()) {
            if (mm2 >= WHOLE * larger.mm2) {
                thing = larger;
            }
        }
        double times = mm2 / thing.mm2;
        if (times < 0.1) {
            return say("rust.everyday-size.less-than-a-tenth-of", say(thing.one), thing.of());
        }
        if (times < 0.4) {
            return say(
                    "rust.everyday-size.about-of-a",
                    times < 0.17
                            ? say("rust.everyday-size.an-eighth")
                            : times < 0.29 ? say("rust.everyday-size.a-quarter") : say("rust.everyday-size.a-third"),
                    say(thing.one),
                    thing.of());
        }
        if (times < WHOLE) {
            return say(
                    "rust.everyday-size.about-a",
                    times < 0.6 ? say("rust.everyday-size.half") : say("rust.everyday-size.two-thirds-of"),
                    say(thing.one),
                    thing.of());
        }
        long count = Math.round(times);
        if (count == 1) {
            return say("rust.everyday-size.about-one", say(thing.one));
        }
        return count > MANY
                ? say("rust.everyday-size.more-than", MANY, say(thing.more))
                : say("rust.everyday-size.about", count, say(thing.more));
    }
}
