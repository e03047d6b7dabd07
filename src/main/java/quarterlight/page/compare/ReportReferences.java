package quarterlight.page.compare;

import static quarterlight.language.Sentences.say;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;

/**
 * Where photos stand in the report of a car, as it lies in a folder of pages: the report itself prints the page of each photo. A report that was made of another state
 * of the visit tells nothing, since its pages may have moved. Immutable.
 */
public final class ReportReferences {
    private static final System.Logger LOG = System.getLogger(ReportReferences.class.getName());
    /** In the list of photos, and wherever the report refers to one. */
    private static final Pattern PAGE = Pattern.compile("photo\\s+(\\S+?),?\\s+page\\s+(\\d+)");

    private static final long MAX_BYTES = 512L << 20;

    private final Map<String, Integer> pages;
    private final boolean html;

    private ReportReferences(Map<String, Integer> pages, boolean html) {
        this.pages = Map.copyOf(pages);
        this.html = html;
    }

    /**
     * Reads a report.
     *
     * @param logHead number and hash of the last entry of the visit's edit log as it is now
     */
    public static ReportReferences in(Path folder, Optional<String> logHead) {
        Path report = folder.resolve("report.pdf");
        try {
            if (logHead.isPresent()
                    && Files.isRegularFile(report, LinkOption.NOFOLLOW_LINKS)
                    && Files.size(report) <= MAX_BYTES) {
                return of(text(report), logHead.get(), Files.isRegularFile(folder.resolve("report.html")));
            }
        } catch (IOException | RuntimeException e) {
            LOG.log(System.Logger.Level.WARNING, report + " cannot be read", e);
        }
        return new ReportReferences(Map.of(), false);
    }

    private static String text(Path report) throws IOException {
        try (PDDocument document = Loader.loadPDF(report.toFile())) {
            return new PDFTextStripper().getText(document);
        }
    }

    private static ReportReferences of(String text, String logHead, boolean html) {
        String hash = logHead.substring(logHead.lastIndexOf(' ') + 1);
        if (!text.replaceAll("\\s", "").contains(hash)) {
            return new ReportReferences(Map.of(), false);
        }
        Map<String, Integer> pages = new LinkedHashMap<>();
        Matcher found = PAGE.matcher(text.replace('\u00a0', ' '));
        while (found.find()) {
            pages.putIfAbsent(found.group(1), Integer.parseInt(found.group(2)));
        }
        return new ReportReferences(pages, html);
    }

    /** Such as {@code photo 12, page 31}; without the page where none is known. */
    public String words(String number) {
        return say(
                "compare.report-references.photo",
                number,
                Optional.ofNullable(pages.get(number))
                        .map(page -> say("compare.report-references.page", page))
                        .orElse(""));
    }

    /** The place in the report on the screen, within the folder of pages; empty where there is none. */
    public Optional<String> address(String number) {
        return html && pages.containsKey(number) ? Optional.of("report.html#photo-" + number) : Optional.empty();
    }
}
