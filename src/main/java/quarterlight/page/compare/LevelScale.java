package quarterlight.page.compare;

import static quarterlight.language.Sentences.say;

import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import quarterlight.compare.said.PlaceText;
import quarterlight.diagram.ink.InkPalette;
import quarterlight.units.Numerals;
import quarterlight.units.XmlText;

/**
 * How far a panel of each of two cars lies from the level of its own car, on one scale of ratios: the first car a filled disc over the line, the
 * second a ring under it. Sizes in px. Immutable.
 */
public final class LevelScale {
    private static final double WIDTH = 260;
    private static final double HEIGHT = 26;
    private static final double MARGIN = 8;
    private static final double LEAST = 0.4;
    private static final double MOST = 10;
    /** The limits of the steps by which the diagram is tinted. */
    private static final List<Double> LIMITS = List.of(0.6, 0.8, 1.25, 1.6, 2.5, 5.0);

    private static final String INK = InkPalette.hex(InkPalette.LIGHT.ink());
    private static final String SECOND = InkPalette.hex(InkPalette.LIGHT.secondInk());
    private static final String LINE = InkPalette.hex(InkPalette.LIGHT.line());

    private final String first;
    private final String second;

    /** @param first letter of the first car */
    public LevelScale(String first, String second) {
        this.first = first;
        this.second = second;
    }

    /** The numbers over the scale. */
    public String head() {
        StringBuilder svg = open(say("compare.level-scale.scale-times-the-car-s", LEAST, Numerals.fixed(MOST, 0)), 14);
        for (double at : LIMITS) {
            text(svg, x(at), 10, at == Math.rint(at) ? Numerals.fixed(at, 0) : Numerals.fixed(at, at == 1.25 ? 2 : 1));
        }
        return svg.append("</svg>").toString();
    }

    public String of(PlaceText place) {
        StringBuilder svg = open(words(place), HEIGHT);
        double middle = HEIGHT / 2;
        svg.append(String.format(
                Locale.ROOT,
                "<rect x=\"%.1f\" y=\"0\" width=\"%.1f\" height=\"%.0f\" fill=\"%s\" fill-opacity=\"0.05\"/>",
                x(0.8),
                x(1.25) - x(0.8),
                HEIGHT,
                INK));
        LIMITS.forEach(at -> line(svg, x(at), 2, x(at), HEIGHT - 2, LINE, 0.7));
        line(svg, MARGIN, middle, WIDTH - MARGIN, middle, SECOND, 0.7);
        place.a().level().ifPresent(share -> disc(svg, x(share), middle - 6, true));
        place.b().level().ifPresent(share -> disc(svg, x(share), middle + 6, false));
        return svg.append("</svg>").toString();
    }

    private String words(PlaceText place) {
        return place.label() + ": " + first + " " + share(place.a().level()) + ", " + second + " "
                + share(place.b().level());
    }

    private static String share(OptionalDouble share) {
        return share.isPresent()
                ? say("compare.level-scale.times-its-level", Numerals.fixed(share.getAsDouble(), 1))
                : say("compare.level-scale.not-measured");
    }

    private static StringBuilder open(String words, double height) {
        return new StringBuilder(String.format(
                Locale.ROOT,
                "<svg xmlns=\"http://www.w3.org/2000/svg\" role=\"img\" alt=\"%s\" viewBox=\"0 0 %.0f %.0f\""
                        + " width=\"%.0f\" height=\"%.0f\">",
                XmlText.escaped(words),
                WIDTH,
                height,
                WIDTH,
                height));
    }

    private static double x(double share) {
        double held = Math.min(MOST, Math.max(LEAST, share));
        return MARGIN + (WIDTH - 2 * MARGIN) * Math.log(held / LEAST) / Math.log(MOST / LEAST);
    }

    private static void line(StringBuilder svg, double x1, double y1, double x2, double y2, String ink, double width) {
        svg.append(String.format(
                Locale.ROOT,
                "<line x1=\"%.1f\" y1=\"%.1f\" x2=\"%.1f\" y2=\"%.1f\" stroke=\"%s\" stroke-width=\"%.1f\"/>",
                x1,
                y1,
                x2,
                y2,
                ink,
                width));
    }

    private static void disc(StringBuilder svg, double x, double y, boolean filled) {
        svg.append(String.format(
                Locale.ROOT,
                "<circle cx=\"%.1f\" cy=\"%.1f\" r=\"4\" fill=\"%s\" stroke=\"%s\" stroke-width=\"1.4\"/>",
                x,
                y,
                filled ? INK : InkPalette.hex(InkPalette.LIGHT.ground()),
                INK));
    }

    private static void text(StringBuilder svg, double x, double y, String words) {
        svg.append(String.format(
                Locale.ROOT,
                "<text x=\"%.1f\" y=\"%.1f\" font-family=\"Source Sans 3\" font-size=\"9\" fill=\"%s\""
                        + " text-anchor=\"middle\">%s</text>",
                x,
                y,
                SECOND,
                words));
    }
}
