package quarterlight.edit.export;

import java.util.Objects;

/**
 * What is exported, and to whom.
 *
 * @param disclosure how much goes out
 * @param marked whether CSV begins with the byte order mark that spreadsheets ask for
 */
public record ExportChoice(ExportForm form, Disclosure disclosure, boolean marked) {
    /** All tables without places, as they were always written. */
    public static final ExportChoice USUAL = new ExportChoice(ExportForm.TABLES, Disclosure.WITHOUT_PLACES, false);

    public ExportChoice {
        Objects.requireNonNull(form, "form");
        Objects.requireNonNull(disclosure, "disclosure");
    }
}
