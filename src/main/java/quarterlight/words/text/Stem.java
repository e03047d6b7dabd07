package quarterlight.words.text;

/** Makes the forms of an English word comparable: one for nouns (singular), one for verbs (without its endings). Pure. */
public final class Stem {
    private static final int MIN_LETTERS = 3;

    private Stem() {}

    /** Without the ending of a plural: {@code rails} is {@code rail}, {@code bodies} is {@code body}. */
    public static String noun(String word) {
        if (word.length() <= MIN_LETTERS
                || !word.endsWith("s")
                || word.endsWith("ss")
                || word.endsWith("us")
                || word.equals("lens")) {
            return word;
        }
        if (word.endsWith("ies") && word.length() > MIN_LETTERS + 1) {
            return word.substring(0, word.length() - 3) + "y";
        }
        boolean hissing = word.endsWith("sses")
                || word.endsWith("nses")
                || word.endsWith("xes")
                || word.endsWith("ches")
                || word.endsWith("shes");
        return word.substring(0, word.length() - (hissing ? 2 : 1));
    }

    /** Without the endings of a verb, a doubled consonant and a last e: {@code chipped}, {@code chips} and {@code chip} are one. */
    public static String verb(String word) {
        String stem = word;
        for (String ending : new String[] {"ing", "ied", "ies", "ed", "es", "s", "y"}) {
            if (stem.endsWith(ending) && stem.length() - ending.length() >= MIN_LETTERS && !stem.endsWith("ss")) {
                stem = stem.substring(0, stem.length() - ending.length());
                break;
            }
        }
        int n = stem.length();
        if (n > MIN_LETTERS && stem.charAt(n - 1) == stem.charAt(n - 2)) {
            stem = stem.substring(0, n - 1);
        }
        return stem.endsWith("e") && stem.length() > MIN_LETTERS ? stem.substring(0, stem.length() - 1) : stem;
    }
}
