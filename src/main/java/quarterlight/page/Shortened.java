package quarterlight.page;

/** Text up to a length, with a mark where it was cut. */
public final class Shortened {
    private static final int WORD = 20;
    /** A sentence that ends beyond this share of the length is near. */
    private static final double SENTENCE = 0.45;

    private Shortened() {}

    /** Cut at the end of a sentence, else of a word, if one is near. */
    public static String to(String text, int max) {
        String bare = text.strip();
        if (bare.codePointCount(0, bare.length()) <= max) {
            return bare;
        }
        int end = bare.offsetByCodePoints(0, max - 1);
        int sentence = bare.lastIndexOf(". ", end - 2);
        if (sentence > SENTENCE * end) {
            return bare.substring(0, sentence + 1) + "\u00a0\u2026";
        }
        int word = bare.lastIndexOf(' ', end);
        return bare.substring(0, word > end - WORD && word > 0 ? word : end).stripTrailing() + "\u2026";
    }
}
