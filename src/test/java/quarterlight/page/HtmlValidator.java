package quarterlight.page;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import nu.validator.validation.SimpleDocumentValidator;
import org.xml.sax.ErrorHandler;
import org.xml.sax.InputSource;
import org.xml.sax.SAXParseException;

/**
 * What the validator of the HTML Living Standard objects to in a document; it asks no network. Of what is embedded as Base 64 it is given the first sixty-four
 * digits, since it reads every one as part of an address, which took ten seconds for a report; what is no digit stays and is objected to.
 */
public final class HtmlValidator {
    private static final String SCHEMA = "http://s.validator.nu/html5-rdfalite.rnc";

    private static final Pattern EMBEDDED = Pattern.compile("(;base64,[A-Za-z0-9+/]{64})[A-Za-z0-9+/]++={0,2}");

    private HtmlValidator() {}

    /** Errors and warnings with their lines; empty if the document is sound. */
    public static List<String> objections(byte[] html) throws Exception {
        List<String> found = new ArrayList<>();
        ErrorHandler handler = new ErrorHandler() {
            @Override
            public void warning(SAXParseException e) {
                found.add(said(e));
            }

            @Override
            public void error(SAXParseException e) {
                found.add(said(e));
            }

            @Override
            public void fatalError(SAXParseException e) {
                found.add(said(e));
            }
        };
        SimpleDocumentValidator validator = new SimpleDocumentValidator(true, false, false);
        validator.setUpMainSchema(SCHEMA, handler);
        validator.setUpValidatorAndParsers(handler, false, false);
        String text = EMBEDDED.matcher(new String(html, StandardCharsets.UTF_8)).replaceAll("$1");
        InputSource source = new InputSource(new ByteArrayInputStream(text.getBytes(StandardCharsets.UTF_8)));
        source.setEncoding("UTF-8");
        source.setSystemId("file:///page.html");
        validator.checkHtmlInputSource(source);
        return found;
    }

    private static String said(SAXParseException e) {
        return "line " + e.getLineNumber() + ": " + e.getMessage();
    }
}
