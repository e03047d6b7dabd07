package quarterlight.language;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;

/** Words of a page made in {@link Language#MARKED} that stand between no marks and that nobody typed: they come from no bundle. */
public final class StrayWords {
    private static final Pattern WORDS = Pattern.compile("\\b[a-z]{2,} [a-z]{2,}\\b");
    private static final Pattern ATTRIBUTE = Pattern.compile("\\b(?:title|alt|aria-label)=\"([^\"]*)\"");
    /** The letter or number of a row or a spot, as it stands before the words in print. */
    private static final Pattern KEY = Pattern.compile("^(?:\\p{L} )+");

    private static final Pattern NO_LETTERS = Pattern.compile("[^\\p{L}]+");

    private StrayWords() {}

    /** @param typed what people typed: what stands in it may stand on the page */
    public static Set<String> in(Path page, String typed) throws IOException {
        Set<String> strays = new TreeSet<>();
        String known = bare(typed);
        texts(page)
                .flatMap(text -> Stream.of(unmarked(text).split("[.:;,()\u2026\u201c\u201d\n]")))
                .filter(text -> WORDS.matcher(text).find())
                .filter(text -> !known.contains(KEY.matcher(bare(text)).replaceFirst("")))
                .forEach(text -> strays.add(text.strip()));
        return strays;
    }

    private static Stream<String> texts(Path page) throws IOException {
        if (page.toString().endsWith(".pdf")) {
            try (PDDocument document = Loader.loadPDF(page.toFile())) {
                return Stream.of(new PDFTextStripper().getText(document));
            }
        }
        String text = Files.readString(page);
        return Stream.concat(
                ATTRIBUTE.matcher(text).results().map(found -> found.group(1)),
                Stream.of(text.replaceAll("(?s)<style.*?</style>", "").replaceAll("(?s)<[^>]*>", "\n")));
    }

    private static String bare(String text) {
        return NO_LETTERS.matcher(text.toLowerCase(Locale.ROOT)).replaceAll(" ").strip();
    }

    /** What stands outside of all marks; they may hold each other. */
    private static String unmarked(String text) {
        StringBuilder outside = new StringBuilder();
        int depth = 0;
        for (int i = 0; i < text.length(); i++) {
            char letter = text.charAt(i);
            if (letter == Sentences.MARK.charAt(0)) {
                depth++;
            } else if (letter == Sentences.MARK_END.charAt(0)) {
                depth = Math.max(0, depth - 1);
            } else if (depth == 0) {
                outside.append(letter);
            }
        }
        return outside.toString();
    }
}
