package quarterlight.page.check;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.text.Normalizer;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Pattern;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import quarterlight.page.print.PageWorkers;
import quarterlight.task.Progress;
import quarterlight.units.Numerals;

/**
 * What a look over pages that were made has found: private words, places, words that are cut, cover each other or are too small. It reads the
 * files alone, as who gets them would.
 *
 * @param pages how many pages the PDF files have
 * @param faults in the order of the files; none if all is well
 */
public record PageCheck(int pages, List<PageFault> faults) {
    /** Smallest letters, pt. */
    public static final double SMALLEST_PT = 6.5;

    /** Links laid over a drawing repeat its numbers in letters that nobody sees. */
    private static final double UNSEEN_PT = 4.5;

    private static final double EDGE_PT = 8;
    private static final double ROUNDING_PT = 0.06;
    private static final int MIN_SECRET = 4;

    /** A single plain word of so few letters may be one that the pages say themselves, such as hood or scratched. */
    private static final Pattern ANY_WORD = Pattern.compile("\\p{L}{1,12}");

    private static final byte[] BASE64 = ";base64,".getBytes(StandardCharsets.US_ASCII);
    private static final int PLACE_DECIMALS = 5;
    /** More than the letters of a place, its spaces included. */
    private static final int PLACE_LETTERS = 200;

    private static final Pattern PLACE =
            Pattern.compile("\\b-?\\d{1,3}\\.\\d{5,}\\s*,\\s*-?\\d{1,3}\\.\\d{5,}\\b|\\bGPS(?:Latitude|Longitude)\\b");

    public PageCheck {
        faults = List.copyOf(faults);
    }

    /**
     * Looks over files.
     *
     * @param files PDF, SVG and HTML
     * @param secrets what was typed and is not for the buyer; what is shorter than four letters, and a
     *     single plain word of up to twelve, cannot be searched: the pages may say it themselves
     */
    public static PageCheck of(List<Path> files, Set<String> secrets) throws IOException {
        try (PageWorkers workers = new PageWorkers(Progress.NONE)) {
            PageLook look = new PageLook(secrets, workers);
            files.forEach(look::over);
            return look.finished(files);
        }
    }

    /** What can be searched of what was typed. */
    static List<String> wanted(Set<String> secrets) {
        return secrets.stream()
                .map(PageCheck::plain)
                .filter(secret -> secret.length() >= MIN_SECRET)
                .filter(secret -> !ANY_WORD.matcher(secret).matches())
                .toList();
    }

    /** @param secrets as {@link #wanted} gives them */
    static PageCheck one(Path file, List<String> secrets) throws IOException {
        List<PageFault> faults = new ArrayList<>();
        int pages = 0;
        String name = file.getFileName().toString();
        if (name.endsWith(".pdf")) {
            pages = pdf(file, name, secrets, faults);
        } else if (name.endsWith(".html") || name.endsWith(".svg")) {
            search(withoutPictures(Files.readAllBytes(file)), name, 0, secrets, faults);
        }
        return new PageCheck(pages, faults);
    }

    /** A page of megabytes is mostly pictures and typefaces, which are taken out before it is read as text. */
    static String withoutPictures(byte[] page) {
        ByteArrayOutputStream rest = new ByteArrayOutputStream();
        int from = 0;
        for (int at = 0; at < page.length; at++) {
            if (page[at] == BASE64[0] && startsAt(page, at)) {
                int end = at + BASE64.length;
                rest.write(page, from, end - from);
                while (end < page.length && isBase64(page[end])) {
                    end++;
                }
                from = end;
                at = end - 1;
            }
        }
        rest.write(page, from, page.length - from);
        return rest.toString(StandardCharsets.UTF_8);
    }

    private static boolean startsAt(byte[] page, int at) {
        return at + BASE64.length <= page.length
                && Arrays.equals(page, at, at + BASE64.length, BASE64, 0, BASE64.length);
    }

    private static boolean isBase64(byte letter) {
        return letter >= 'a' && letter <= 'z'
                || letter >= 'A' && letter <= 'Z'
                || letter >= '0' && letter <= '9'
                || letter == '+'
                || letter == '/'
                || letter == '=';
    }

    private static int pdf(Path file, String name, List<String> secrets, List<PageFault> faults) throws IOException {
        try (PDDocument document = Loader.loadPDF(file.toFile())) {
            for (int page = 1; page <= document.getNumberOfPages(); page++) {
                List<PageLetters.Word> words = PageLetters.of(document, page);
                StringBuilder text = new StringBuilder();
                words.forEach(word -> text.append(word.text()).append(' '));
                search(text.toString(), name, page, secrets, faults);
                double width = document.getPage(page - 1).getCropBox().getWidth();
                double height = document.getPage(page - 1).getCropBox().getHeight();
                layout(words, width, height, name, page, faults);
            }
            return document.getNumberOfPages();
        }
    }

    private static void search(String text, String file, int page, List<String> secrets, List<PageFault> faults) {
        if (!secrets.isEmpty()) {
            String plain = plain(text);
            if (secrets.stream().anyMatch(plain::contains)) {
                faults.add(new PageFault(file, page, "something private or left out stands in it"));
            }
        }
        if (holdsPlace(text)) {
            faults.add(new PageFault(file, page, "a place stands in it"));
        }
    }

    /** Drawings are full of numbers, nearly all with fewer decimals than a place has: only the words around such a one are read closely. */
    static boolean holdsPlace(String text) {
        if (text.contains("GPSL")) {
            return PLACE.matcher(text).find();
        }
        int decimals = -1;
        for (int at = 0; at < text.length(); at++) {
            char letter = text.charAt(at);
            if (letter == '.') {
                decimals = 0;
            } else if (decimals >= 0 && letter >= '0' && letter <= '9') {
                decimals++;
                if (decimals == PLACE_DECIMALS
                        && PLACE.matcher(text)
                                .region(Math.max(0, at - PLACE_LETTERS), Math.min(text.length(), at + PLACE_LETTERS))
                                .useTransparentBounds(true)
                                .find()) {
                    return true;
                }
            } else {
                decimals = -1;
            }
        }
        return false;
    }

    private static void layout(
            List<PageLetters.Word> words, double width, double height, String file, int page, List<PageFault> faults) {
        List<PageLetters.Word> seen =
                words.stream().filter(word -> word.size() >= UNSEEN_PT).toList();
        for (PageLetters.Word word : seen) {
            if (word.size() < SMALLEST_PT - ROUNDING_PT) {
                faults.add(new PageFault(file, page, "\"" + word.text() + "\" is too small to read"));
            }
            if (word.left() < EDGE_PT
                    || word.right() > width - EDGE_PT
                    || word.top() < EDGE_PT
                    || word.bottom() > height - EDGE_PT) {
                faults.add(new PageFault(file, page, "\"" + word.text() + "\" runs off the page"));
            }
        }
        List<PageLetters.Word> down = seen.stream()
                .sorted(Comparator.comparingDouble(PageLetters.Word::top))
                .toList();
        for (int i = 0; i < down.size(); i++) {
            PageLetters.Word word = down.get(i);
            for (int j = i + 1; j < down.size() && down.get(j).top() < word.bottom(); j++) {
                if (word.overlaps(down.get(j))) {
                    faults.add(new PageFault(
                            file,
                            page,
                            "\"" + word.text() + "\" and \"" + down.get(j).text() + "\" cover each other"));
                }
            }
        }
    }

    private static String plain(String text) {
        return Normalizer.normalize(text, Normalizer.Form.NFKC)
                .toLowerCase(Locale.ROOT)
                .replaceAll("\\s+", " ")
                .strip();
    }

    /** What it comes to, in one sentence. */
    public String sentence() {
        return faults.isEmpty()
                ? Numerals.count(pages, "page", "pages") + ", nothing private found, no fault."
                : Numerals.count(pages, "page", "pages") + ", "
                        + Numerals.count(faults.size(), "fault", "faults") + ": "
                        + faults.stream()
                                .limit(MAX_NAMED)
                                .map(PageFault::sentence)
                                .collect(java.util.stream.Collectors.joining(" "))
                        + (faults.size() > MAX_NAMED ? " And " + (faults.size() - MAX_NAMED) + " more." : "");
    }

    private static final int MAX_NAMED = 5;
}
