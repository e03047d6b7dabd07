package quarterlight.page;

import static quarterlight.language.Sentences.say;

import java.util.Base64;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import quarterlight.about.ProgramVersion;
import quarterlight.diagram.ink.InkPalette;
import quarterlight.diagram.ink.TextMeasure;
import quarterlight.diagram.ink.Theme;
import quarterlight.diagram.scene.DiagramScene;
import quarterlight.diagram.scene.DiagramSvg;
import quarterlight.diagram.scene.SheetLayout;
import quarterlight.findings.Findings;
import quarterlight.matters.Matter;
import quarterlight.matters.Matters;
import quarterlight.page.print.FontFaces;
import quarterlight.units.XmlText;
import quarterlight.visit.photo.PhotoId;
import quarterlight.visit.statement.Severity;

/** The diagram page as one SVG: heading, diagram, facts, and the key of pins with their pictures below. One unit is one px. */
final class SvgSheet {
    private static final String INK = InkPalette.hex(InkPalette.LIGHT.ink());
    private static final String SECOND = InkPalette.hex(InkPalette.LIGHT.secondInk());
    private static final String ACCENT = InkPalette.hex(InkPalette.LIGHT.accent());
    private static final String GRAVE = InkPalette.hex(InkPalette.LIGHT.grave());
    private static final String GROUND = InkPalette.hex(InkPalette.LIGHT.ground());
    private static final String CAUTION = InkPalette.hex(Theme.LIGHT.caution());
    private static final double MARGIN = 32;
    private static final double HEAD = 60;
    private static final double CARD = 180;
    private static final double GAP = 14;
    private static final double PICTURE = 130;
    private static final double CARD_HEIGHT = PICTURE + 64;
    private static final double LINE = 15;

    private final Findings car;
    private final Matters matters;
    private final ThicknessRamp ramp;
    private final DiagramScene scene;
    private final PinKey key;
    private final Function<PhotoId, Optional<byte[]>> thumbnails;
    private final String caution;
    private final TextMeasure measure = TextMeasure.bundled();
    private final StringBuilder out = new StringBuilder();

    SvgSheet(
            Findings car,
            Matters matters,
            DiagramScene scene,
            PinKey key,
            ThicknessRamp ramp,
            Function<PhotoId, Optional<byte[]>> thumbnails,
            String caution) {
        this.car = car;
        this.matters = matters;
        this.ramp = ramp;
        this.scene = scene;
        this.key = key;
        this.thumbnails = thumbnails;
        this.caution = caution;
    }

    String document() {
        SheetLayout layout = scene.layout();
        double width = layout.width() + 2 * MARGIN;
        double y = MARGIN + HEAD + layout.height() + GAP;
        text(MARGIN, MARGIN + 24, 24, true, INK, car.visit().facts().car().name());
        text(MARGIN, MARGIN + 44, 12, false, CAUTION, caution);
        out.append(DiagramSvg.sheet(scene, MARGIN, MARGIN + HEAD, 1));
        for (Matter matter : matters.lettered()) {
            y += LINE;
            String letter = String.valueOf(matter.letter().orElseThrow());
            text(
                    MARGIN,
                    y,
                    12,
                    true,
                    matter.severity() == Severity.GRAVE ? GRAVE : INK,
                    letter + "  " + matter.severity().said());
            text(
                    MARGIN + 150,
                    y,
                    12,
                    false,
                    INK,
                    cut(matter.place() + ": " + matter.sentence(), layout.width() - 150, 12, false));
        }
        y += GAP;
        for (Map.Entry<String, String> fact : PageFacts.visit(car).entrySet()) {
            y += LINE;
            text(MARGIN, y, 12, true, INK, fact.getKey());
            text(MARGIN + 150, y, 12, false, INK, fact.getValue());
        }
        for (String sentence : PageFacts.gauge(car, ramp)) {
            y += LINE;
            text(MARGIN, y, 12, true, INK, say("diagram.svg-sheet.gauge"));
            text(MARGIN + 150, y, 12, false, INK, sentence);
        }
        y += LINE;
        text(MARGIN, y, 12, false, SECOND, ProgramVersion.ours().text());
        y = cards(y + 2 * GAP, width);
        return "<svg xmlns=\"http://www.w3.org/2000/svg\" xmlns:xlink=\"http://www.w3.org/1999/xlink\" viewBox=\"0 0 "
                + number(width) + " " + number(y + MARGIN) + "\" width=\"" + number(width) + "\" height=\""
                + number(y + MARGIN) + "\">\n<title>"
                + XmlText.escaped(say(
                        "diagram.svg-sheet.body-diagram-of",
                        car.visit().facts().car().name()))
                + "</title>\n<style>" + FontFaces.css()
                + "</style>\n<rect width=\"100%\" height=\"100%\" fill=\"" + GROUND + "\"/>\n" + out + "</svg>\n";
    }

    private double cards(double top, double width) {
        int perRow = Math.max(1, (int) ((width - 2 * MARGIN + GAP) / (CARD + GAP)));
        List<PinKey.Entry> entries = key.entries();
        for (int i = 0; i < entries.size(); i++) {
            int row = i / perRow;
            card(entries.get(i), MARGIN + (i % perRow) * (CARD + GAP), top + row * (CARD_HEIGHT + GAP));
        }
        int rows = (entries.size() + perRow - 1) / perRow;
        return top + rows * (CARD_HEIGHT + GAP);
    }

    private void card(PinKey.Entry entry, double x, double y) {
        thumbnails.apply(entry.photo()).ifPresent(jpeg -> out.append("<image x=\"")
                .append(number(x))
                .append("\" y=\"")
                .append(number(y))
                .append("\" width=\"")
                .append(number(CARD))
                .append("\" height=\"")
                .append(number(PICTURE))
                .append("\" preserveAspectRatio=\"xMinYMin meet\" xlink:href=\"data:image/jpeg;base64,")
                .append(Base64.getEncoder().encodeToString(jpeg))
                .append("\"/>\n"));
        double line = y + PICTURE + 16;
        out.append("<circle cx=\"%s\" cy=\"%s\" r=\"9\" fill=\"%s\"/>\n"
                .formatted(number(x + 9), number(line - 4), ACCENT));
        String number = entry.number();
        text(x + 9 - measure.width(number, 11, true) / 2, line, 11, true, GROUND, number);
        text(x + 24, line, 12, true, INK, cut(entry.zone(), CARD - 24, 12, true));
        text(x, line + LINE, 11, false, INK, cut(entry.text(), CARD, 11, false));
        text(x, line + 2 * LINE, 11, false, SECOND, cut(entry.time() + " " + entry.file(), CARD, 11, false));
    }

    /** A text shortened with an ellipsis so that it fits a width. */
    private String cut(String text, double width, double size, boolean bold) {
        String clean = XmlText.clean(text);
        int length = clean.length();
        while (length > 0 && measure.width(shown(clean, length), size, bold) > width) {
            length = clean.offsetByCodePoints(length, -1);
        }
        return shown(clean, length);
    }

    private static String shown(String text, int length) {
        return length == text.length() ? text : text.substring(0, length).stripTrailing() + "\u2026";
    }

    private void text(double x, double y, double size, boolean bold, String color, String words) {
        out.append("<text font-family=\"'Source Sans 3', sans-serif\" x=\"")
                .append(number(x))
                .append("\" y=\"")
                .append(number(y))
                .append("\" font-size=\"")
                .append(number(size))
                .append(bold ? "\" font-weight=\"600\" fill=\"" : "\" fill=\"")
                .append(color)
                .append("\">")
                .append(XmlText.escaped(words))
                .append("</text>\n");
    }

    private static String number(double value) {
        return String.format(Locale.ROOT, "%.1f", value);
    }
}
