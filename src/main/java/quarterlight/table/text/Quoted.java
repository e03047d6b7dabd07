package quarterlight.table.text;

/** A piece of the user's input within a sentence: between quotation marks, on one line, not longer than a line takes. */
public final class Quoted {
    private static final int MAX_LETTERS = 60;

    private Quoted() {}

    public static String of(String text) {
        String line = text.replaceAll("[\\p{Cntrl}\\s]+", " ");
        return "\"" + (line.length() > MAX_LETTERS ? line.substring(0, MAX_LETTERS) + "\u2026" : line) + "\"";
    }
}
