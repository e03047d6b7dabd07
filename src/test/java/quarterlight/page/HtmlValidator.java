package quarterlight.page;

import java.io.ByteArrayInputStream;
import java.util.ArrayList;
import java.util.List;
import nu.validator.validation.SimpleDocumentValidator;
import org.xml.sax.ErrorHandler;
import org.xml.sax.InputSource;
import org.xml.sax.SAXParseException;

/** What the validator of the HTML Living Standard objects to in a document; it asks no network. */
public final class HtmlValidator {
    private static final String SCHEMA = "http://s.validator.nu/html5-rdfalite.rnc";

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
        InputSource source = new InputSource(new ByteArrayInputStream(html));
        source.setEncoding("UTF-8");
        source.setSystemId("file:///page.html");
        validator.checkHtmlInputSource(source);
        return found;
    }

    private static String said(SAXParseException e) {
        return "line " + e.getLineNumber() + ": " + e.getMessage();
    }
}
