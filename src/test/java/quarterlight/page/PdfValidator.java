package quarterlight.page;

import java.io.ByteArrayInputStream;
import java.util.List;
import org.verapdf.gf.foundry.VeraGreenfieldFoundryProvider;
import org.verapdf.pdfa.Foundries;
import org.verapdf.pdfa.PDFAParser;
import org.verapdf.pdfa.PDFAValidator;
import org.verapdf.pdfa.flavours.PDFAFlavour;

/** The reference validator for PDF/A and PDF/UA (veraPDF), as a list of what it objects to. */
public final class PdfValidator {
    static {
        VeraGreenfieldFoundryProvider.initialise();
    }

    private PdfValidator() {}

    public static List<String> objections(byte[] pdf, PDFAFlavour flavour) throws Exception {
        try (PDFAParser parser = Foundries.defaultInstance().createParser(new ByteArrayInputStream(pdf), flavour);
                PDFAValidator validator = Foundries.defaultInstance().createValidator(flavour, false)) {
            return validator.validate(parser).getTestAssertions().stream()
                    .map(a -> a.getRuleId().getClause() + " " + a.getMessage())
                    .distinct()
                    .toList();
        }
    }
}
