package quarterlight.page.print;

import java.awt.Dimension;
import java.awt.Graphics2D;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.Locale;
import java.util.function.Consumer;
import org.apache.batik.anim.dom.SVGDOMImplementation;
import org.apache.batik.svggen.SVGGraphics2D;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import quarterlight.diagram.ink.TextMeasure;
import quarterlight.page.script.ScriptFont;

/** What the window paints as an SVG element for pages: the same drawing, with its words as text of the family that pages embed. */
public final class DrawnSvg {
    /** What the heavier cut of the typeface is called where it is asked for by its own name. */
    private static final String SEMIBOLD = "font-family:'" + TextMeasure.FAMILY + " SemiBold'";

    private static final String FAMILY = "font-family:'" + TextMeasure.FAMILY + "'";

    private DrawnSvg() {}

    /**
     * The element, without a declaration of XML.
     *
     * @param draw paints with its upper left corner at 0, 0
     * @param title what it shows, for those who hear the page
     */
    public static String element(double widthPx, double heightPx, Consumer<Graphics2D> draw, String title) {
        Document document = SVGDOMImplementation.getDOMImplementation()
                .createDocument(SVGDOMImplementation.SVG_NAMESPACE_URI, "svg", null);
        SVGGraphics2D graphics = new SVGGraphics2D(document);
        draw.accept(graphics);
        graphics.setSVGCanvasSize(new Dimension((int) Math.ceil(widthPx), (int) Math.ceil(heightPx)));
        Element root = graphics.getRoot();
        root.setAttribute("viewBox", String.format(Locale.ROOT, "0 0 %.1f %.1f", widthPx, heightPx));
        root.setAttribute("role", "img");
        Element name = root.getOwnerDocument().createElementNS(SVGDOMImplementation.SVG_NAMESPACE_URI, "title");
        name.setTextContent(title);
        root.insertBefore(name, root.getFirstChild());
        StringWriter out = new StringWriter();
        try {
            graphics.stream(root, out, true, false);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return out.toString()
                .replaceAll("(?s)<!--.*?-->", "")
                .replaceAll("<defs id=\"genericDefs\"\\s*/>", "")
                .replace(SEMIBOLD, "font-family:'" + TextMeasure.FAMILY + "'; font-weight:600")
                .replace(FAMILY, FAMILY + ", " + ScriptFont.families())
                .replaceFirst("(?s)^.*?<svg", "<svg");
    }

    /**
     * An element in its size on the page.
     *
     * @param alt what it shows, as pages ask for it; no quotes
     */
    public static String sized(String element, double widthMm, double heightMm, String alt) {
        String size = String.format(Locale.ROOT, " style=\"width: %.1fmm; height: %.1fmm; ", widthMm, heightMm);
        int end = element.indexOf('>');
        String head = element.substring(0, end)
                .replaceAll(" (?:width|height|role|version|contentScriptType|contentStyleType)=\"[^\"]*\"", "");
        String styled = head.contains(" style=\"") ? head.replace(" style=\"", size) : head + size + "\"";
        return styled + " role=\"img\" alt=\"" + alt + "\">" + element.substring(end + 1);
    }
}
