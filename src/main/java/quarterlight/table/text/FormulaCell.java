package quarterlight.table.text;

import java.util.regex.Pattern;

/**
 * Keeps cells from being run as formulas by a spreadsheet that opens a CSV file: text that begins like a formula gets an apostrophe in
 * front, which reading takes off again. Numbers stay as they are.
 * <p>Source: OWASP, "CSV Injection" (owasp.org/www-community/attacks/CSV_Injection): cells that begin with =, +, -, @, tab or carriage
 * return, or the full-width forms of the first four, are to be prepended with an apostrophe. Adapted: numbers are left alone, and text that
 * begins with apostrophes before such a sign gets one more, so that every text comes back as it was.
 */
public final class FormulaCell {
    private static final String MARK = "'";
    private static final String SIGNS = "[=+\\-@\\t\\r\\uFF1D\\uFF0B\\uFF0D\\uFF20]";
    private static final Pattern BEGINS_FORMULA = Pattern.compile("'*" + SIGNS + ".*", Pattern.DOTALL);
    private static final Pattern NUMBER = Pattern.compile("[+-]?\\d+([.,]\\d+)?");
    private static final Pattern GUARDED = Pattern.compile("'+" + SIGNS + ".*", Pattern.DOTALL);

    private FormulaCell() {}

    /** The cell as it is written into a file. */
    public static String guarded(String cell) {
        boolean formula =
                BEGINS_FORMULA.matcher(cell).matches() && !NUMBER.matcher(cell).matches();
        return formula ? MARK + cell : cell;
    }

    /** The cell as it was before it was written into a file. */
    public static String plain(String cell) {
        return GUARDED.matcher(cell).matches() ? cell.substring(1) : cell;
    }
}
