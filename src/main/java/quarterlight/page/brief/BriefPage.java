package quarterlight.page.brief;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import quarterlight.file.DurableFiles;
import quarterlight.findings.Findings;
import quarterlight.matters.Matters;
import quarterlight.page.Anchor;
import quarterlight.page.print.Paper;
import quarterlight.page.print.PdfDocument;
import quarterlight.page.print.Template;

/**
 * The first page for the buyer, alone worth sending: the car and its numbers, a paragraph, what can hurt someone, at most seven matters with a close
 * crop each, claimed and found, what was looked at and what to look at next. It is one page always: what does not fit is made shorter by
 * {@link BriefLimits}, and stands whole in the report.
 */
public final class BriefPage {
    private final BriefContent content;
    private final BriefPictures pictures;
    private final Paper paper;
    private final byte[] pdf;

    private BriefPage(BriefContent content, BriefPictures pictures, Paper paper, byte[] pdf) {
        this.content = content;
        this.pictures = pictures;
        this.paper = paper;
        this.pdf = pdf;
    }

    /**
     * Composes it within one page.
     *
     * @param issued day of issue
     * @param anchor what ties it to the evidence
     */
    public static BriefPage of(
            Findings car, Matters matters, BriefPictures pictures, LocalDate issued, Anchor anchor, Paper paper)
            throws IOException {
        Objects.requireNonNull(issued, "issued");
        int step = 0;
        while (true) {
            boolean last = step == BriefLimits.STEPS.size() - 1;
            BriefContent content =
                    new BriefBuilder(car, matters, pictures, issued, anchor, BriefLimits.STEPS.get(step)).content();
            ByteArrayOutputStream pdf = new ByteArrayOutputStream();
            if (PdfDocument.writeIf(pages -> pages == 1 || last, xhtml(content, paper), pictures.byAddress(), pdf)) {
                return new BriefPage(content, pictures, paper, pdf.toByteArray());
            }
            step++;
        }
    }

    private static String xhtml(BriefContent content, Paper paper) {
        Map<String, Object> model = new HashMap<>();
        model.put("b", content);
        model.put("paper", paper);
        return new Template().fill("brief.ftlh", model);
    }

    /** Writes {@code brief.pdf}; it appears whole or not at all. */
    public Path write(Path folder) throws IOException {
        return DurableFiles.fill(folder.resolve("brief.pdf"), out -> out.write(pdf));
    }

    /** What stands on it, cut to fit; for the report, whose template has the same macros. */
    public BriefContent content() {
        return content;
    }

    /** Its pictures by their address. */
    public Map<String, byte[]> pictures() {
        return pictures.byAddress();
    }

    /** Addresses of the crops that show a part of their photo closer, by the matter's id. */
    public Map<String, String> closer() {
        return pictures.closer();
    }

    public Paper paper() {
        return paper;
    }

    /** The letters on it. */
    public List<String> letters() {
        return content.matters().stream().map(BriefContent.MatterLine::letter).toList();
    }
}
