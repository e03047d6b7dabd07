package quarterlight.page.check;

import java.io.IOException;
import java.io.StringWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.apache.pdfbox.contentstream.operator.Operator;
import org.apache.pdfbox.contentstream.operator.OperatorName;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;

/** The words of one page of a PDF with where they stand, pt from the upper left corner. */
final class PageLetters extends PDFTextStripper {
    /**
     * One word.
     *
     * @param size of its letters, pt
     */
    record Word(String text, double left, double top, double right, double bottom, double size) {
        boolean overlaps(Word other) {
            double wide = Math.min(right, other.right) - Math.max(left, other.left);
            double high = Math.min(bottom, other.bottom) - Math.max(top, other.top);
            return wide > OVERLAP_PT && high > OVERLAP * Math.min(bottom - top, other.bottom - other.top);
        }
    }

    private static final double OVERLAP_PT = 1.2;
    private static final double OVERLAP = 0.35;
    /** Of the size of a typeface, what its capitals take. */
    private static final double CAPITALS = 0.66;

    private static final Set<String> MARKED_CONTENT = Set.of(
            OperatorName.BEGIN_MARKED_CONTENT, OperatorName.BEGIN_MARKED_CONTENT_SEQ, OperatorName.END_MARKED_CONTENT);

    private final List<Word> words = new ArrayList<>();

    private PageLetters() {
        setSortByPosition(false);
        // a letter on top of its like is a fault to be found, not to be left out
        setSuppressDuplicateOverlappingText(false);
    }

    /** @param page from 1 */
    static List<Word> of(PDDocument document, int page) throws IOException {
        PageLetters letters = new PageLetters();
        letters.setStartPage(page);
        letters.setEndPage(page);
        letters.writeText(document, new StringWriter());
        return letters.words;
    }

    /** What belongs to what for those who listen to the page says nothing of where its letters stand. */
    @Override
    protected void processOperator(Operator operator, List<COSBase> operands) throws IOException {
        if (!MARKED_CONTENT.contains(operator.getName())) {
            super.processOperator(operator, operands);
        }
    }

    @Override
    protected void writeString(String text, List<TextPosition> positions) {
        List<TextPosition> word = new ArrayList<>();
        for (TextPosition position : positions) {
            if (position.getUnicode().isBlank() || isApart(word, position)) {
                end(word);
            }
            if (!position.getUnicode().isBlank()) {
                word.add(position);
            }
        }
        end(word);
    }

    /** Whether a letter was set back or on another line, and so belongs to another word. */
    private static boolean isApart(List<TextPosition> word, TextPosition next) {
        if (word.isEmpty()) {
            return false;
        }
        TextPosition last = word.get(word.size() - 1);
        double end = last.getXDirAdj() + last.getWidthDirAdj();
        return next.getXDirAdj() < end - OVERLAP_PT || Math.abs(next.getYDirAdj() - last.getYDirAdj()) > OVERLAP_PT;
    }

    private void end(List<TextPosition> letters) {
        if (!letters.isEmpty()) {
            StringBuilder text = new StringBuilder();
            letters.forEach(letter -> text.append(letter.getUnicode()));
            TextPosition first = letters.get(0);
            TextPosition last = letters.get(letters.size() - 1);
            double size = first.getYScale();
            double bottom = first.getYDirAdj();
            words.add(new Word(
                    text.toString(),
                    first.getXDirAdj(),
                    bottom - CAPITALS * size,
                    last.getXDirAdj() + last.getWidthDirAdj(),
                    bottom,
                    size));
            letters.clear();
        }
    }

    /** How far down a page its content reaches, as a share of the room between the margins. */
    static double filled(PDPage page, List<Word> words, double topPt, double footPt) {
        double room = page.getCropBox().getHeight() - topPt - footPt;
        double lowest = words.stream()
                .filter(word -> word.bottom() < page.getCropBox().getHeight() - footPt)
                .mapToDouble(Word::bottom)
                .max()
                .orElse(topPt);
        return (lowest - topPt) / room;
    }
}
