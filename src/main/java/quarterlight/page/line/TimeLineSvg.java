package quarterlight.page.line;

import java.awt.Dimension;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.Locale;
import org.apache.batik.anim.dom.SVGDOMImplementation;
import org.apache.batik.svggen.SVGGraphics2D;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import quarterlight.diagram.ink.TextMeasure;

/** A time line as an SVG element for pages: the same drawing, with its words as text of the family that pages embed. */
public final class TimeLineSvg {
    /** What the heavier cut of the typeface is called where it is asked for by its own name. */
    private static final String SEMIBOLD = "font-family:'" + TextMeasure.FAMILY + " SemiBold'";

    private TimeLineSvg() {}

    /**
     * The element, without a declaration of XML.
     *
     * @param title what it shows, for those who hear the page
     */
    public static String element(TimeLineDrawing drawing, String title) {
        Document document = SVGDOMImplementation.getDOMImplementation()
                .createDocument(SVGDOMImplementation.SVG_NAMESPACE_URI, "svg", null);
        SVGGraphics2D graphics = new SVGGraphics2D(document);
        drawing.draw(graphics);
        graphics.setSVGCanvasSize(
                new Dimension((int) Math.ceil(drawing.widthPx()), (int) Math.ceil(drawing.heightPx())));
        Element root = graphics.getRoot();
        root.setAttribute(
                "viewBox", String.format(Locale.ROOT, "0 0 %.1f %.1f", drawing.widthPx(), drawing.heightPx()));
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
                .replace(SEMIBOLD, "font-family:'" + TextMeasure.FAMILY + "'; font-weight:600")
                .replaceFirst("(?s)^.*?<svg", "<svg");
    }
}
