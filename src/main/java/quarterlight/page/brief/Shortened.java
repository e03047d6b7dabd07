package quarterlight.page.brief;

/** Text up to a length, with a mark where it was cut. */
final class Shortened {
    private static final int WORD = 20;

    private Shortened() {}

    /** Cut at the end of a word if one is near. */
    static String to(String text, int max) {
        String bare = text.strip();
        if (bare.codePointCount(0, bare.length()) <= max) {
            return bare;
        }
        int end = bare.offsetByCodePoints(0, max - 1);
        int word = bare.lastIndexOf(' ', end);
        return bare.substring(0, word > end - WORD && word > 0 ? word : end).stripTrailing() + "\u2026";
    }
}
