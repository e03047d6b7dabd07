package quarterlight.demo;

/**
 * What a surface is made of.
 *
 * @param tint color in diffuse light
 * @param mirror share of light thrown back as from a mirror, 0 to 1
 * @param metal 1 if what it throws back is tinted by its own color
 * @param shine sharpness of the highlight: 4 dull to 200 wet
 */
record Stuff(Tint tint, double mirror, double metal, double shine) {
    static Stuff paint(String rgb, double gloss) {
        return new Stuff(Tint.hex(rgb), 0.035 + 0.125 * gloss, 0, 12 + 150 * gloss);
    }

    static Stuff dull(String rgb) {
        return new Stuff(Tint.hex(rgb), 0.015, 0, 6);
    }

    static Stuff plastic(String rgb) {
        return new Stuff(Tint.hex(rgb), 0.05, 0, 40);
    }

    static Stuff steel(String rgb) {
        return new Stuff(Tint.hex(rgb), 0.35, 0.8, 30);
    }

    static Stuff chrome() {
        return new Stuff(Tint.hex("#d9dcdd"), 0.82, 1, 200);
    }

    static Stuff glass() {
        return new Stuff(Tint.hex("#11181a"), 0.30, 0, 200);
    }

    static Stuff rubber() {
        return new Stuff(Tint.hex("#242527"), 0.03, 0, 14);
    }

    static Stuff paper(String rgb) {
        return new Stuff(Tint.hex(rgb), 0.01, 0, 5);
    }
}
