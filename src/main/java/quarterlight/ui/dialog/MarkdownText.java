package quarterlight.ui.dialog;

import java.awt.Rectangle;
import java.net.URL;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.JEditorPane;
import javax.swing.event.HyperlinkEvent;
import javax.swing.text.BadLocationException;
import javax.swing.text.Element;
import javax.swing.text.html.HTMLDocument;
import javax.swing.text.html.HTMLEditorKit;
import org.commonmark.ext.gfm.tables.TablesExtension;
import org.commonmark.ext.heading.anchor.HeadingAnchorExtension;
import org.commonmark.node.Image;
import org.commonmark.parser.Parser;
import org.commonmark.renderer.html.HtmlRenderer;
import quarterlight.diagram.ink.InkPalette;
import quarterlight.ui.kit.look.Look;
import quarterlight.ui.kit.look.Palette;
import quarterlight.ui.kit.look.Typeface;

/** Shows a text written in CommonMark, with tables, and headings that links lead to. */
final class MarkdownText {
    /** Pictures are shown at one size, known before they are loaded, so that no heading moves. */
    static final int PICTURE_WIDTH = 640;

    static final int PICTURE_HEIGHT = 400;

    /** Room above a heading that was gone to, px. */
    private static final int ABOVE = 12;

    private MarkdownText() {}

    /** Off the event thread or on it. */
    static String html(String markdown) {
        var extensions = List.of(TablesExtension.create(), HeadingAnchorExtension.create());
        return HtmlRenderer.builder()
                .extensions(extensions)
                .escapeHtml(true)
                .attributeProviderFactory(context -> (node, tag, attributes) -> {
                    if (node instanceof Image) {
                        attributes.put("width", Integer.toString(PICTURE_WIDTH));
                        attributes.put("height", Integer.toString(PICTURE_HEIGHT));
                    }
                })
                .build()
                .render(Parser.builder().extensions(extensions).build().parse(markdown));
    }

    /**
     * A pane that shows the text; links to its own headings work by themselves.
     *
     * @param pictures the folder of its pictures; empty if it has none
     * @param other told of every other link
     */
    static JEditorPane pane(String html, Optional<URL> pictures, Consumer<String> other) {
        JEditorPane pane = new JEditorPane();
        HTMLEditorKit kit = new HTMLEditorKit();
        Palette palette = Look.palette();
        kit.getStyleSheet()
                .addRule("body { font-family: '" + Typeface.FAMILY + "'; font-size: 11px; margin: 16px; color: "
                        + InkPalette.hex(palette.ink()) + " } a { color: " + InkPalette.hex(palette.accent())
                        + " } code { font-family: monospace } td, th { padding: 3px 8px 3px 0; text-align: left }");
        pane.setEditorKit(kit);
        HTMLDocument document = (HTMLDocument) kit.createDefaultDocument();
        pictures.ifPresent(document::setBase);
        pane.setDocument(document);
        pane.setText(html);
        pane.setEditable(false);
        pane.setCaretPosition(0);
        pane.setBackground(palette.sheet());
        pane.addHyperlinkListener(e -> {
            if (e.getEventType() != HyperlinkEvent.EventType.ACTIVATED) {
                return;
            }
            if (e.getDescription().startsWith("#")) {
                go(pane, e.getDescription().substring(1));
            } else {
                other.accept(e.getDescription());
            }
        });
        return pane;
    }

    /** Brings a heading to the top of what is seen; the pane itself only knows named links, not headings. */
    static void go(JEditorPane pane, String id) {
        Element heading = ((HTMLDocument) pane.getDocument()).getElement(id);
        if (heading == null) {
            return;
        }
        try {
            Rectangle at = pane.modelToView2D(heading.getStartOffset()).getBounds();
            pane.scrollRectToVisible(new Rectangle(0, Math.max(0, at.y - ABOVE), 1, pane.getVisibleRect().height));
        } catch (BadLocationException e) {
            throw new IllegalStateException(e);
        }
    }
}
