package quarterlight.page.script;

import com.openhtmltopdf.bidi.BidiReorderer;
import com.openhtmltopdf.bidi.BidiSplitter;
import com.openhtmltopdf.bidi.BidiTextRun;
import java.text.Bidi;
import java.util.ArrayList;
import java.util.List;

/**
 * Which way text runs, by the Unicode bidirectional algorithm of the Java library. A run from right to left keeps the numbers within it, so
 * that it can be turned round as a whole when its line is set.
 */
public final class Direction implements BidiSplitter, BidiReorderer {
    private static final String OPENING = "()[]{}<>\u00ab\u00bb";

    private List<BidiTextRun> runs = List.of();

    /** Whether a text has anything that runs from right to left. */
    public static boolean isNeededFor(String text) {
        return Bidi.requiresBidi(text.toCharArray(), 0, text.length());
    }

    @Override
    public void setParagraph(String paragraph, byte defaultTextDirection) {
        Bidi bidi = new Bidi(paragraph, Bidi.DIRECTION_LEFT_TO_RIGHT);
        List<BidiTextRun> found = new ArrayList<>();
        int start = 0;
        while (start < paragraph.length()) {
            boolean turned = bidi.getLevelAt(start) > 0;
            int end = start + 1;
            while (end < paragraph.length() && bidi.getLevelAt(end) > 0 == turned) {
                end++;
            }
            found.add(new BidiTextRun(start, end - start, turned ? RTL : LTR));
            start = end;
        }
        runs = found;
    }

    @Override
    public int countTextRuns() {
        return runs.size();
    }

    @Override
    public BidiTextRun getVisualRun(int runIndex) {
        return runs.get(runIndex);
    }

    @Override
    public byte getBaseDirection(String paragraph) {
        return LTR;
    }

    @Override
    public String reorderRTLTextToLTR(String text) {
        Bidi bidi = new Bidi(text, Bidi.DIRECTION_RIGHT_TO_LEFT);
        byte[] levels = new byte[bidi.getRunCount()];
        Integer[] order = new Integer[bidi.getRunCount()];
        for (int i = 0; i < order.length; i++) {
            levels[i] = (byte) bidi.getRunLevel(i);
            order[i] = i;
        }
        Bidi.reorderVisually(levels, 0, order, 0, order.length);
        StringBuilder out = new StringBuilder(text.length());
        for (int run : order) {
            String part = text.substring(bidi.getRunStart(run), bidi.getRunLimit(run));
            out.append(bidi.getRunLevel(run) % 2 == 1 ? turned(part) : part);
        }
        return out.toString();
    }

    /** Letter by letter from the end, each with its marks after it, brackets mirrored. */
    private static String turned(String text) {
        StringBuilder out = new StringBuilder(text.length());
        int end = text.length();
        while (end > 0) {
            int start = text.offsetByCodePoints(end, -1);
            while (start > 0 && Character.getType(text.codePointAt(start)) == Character.NON_SPACING_MARK) {
                start = text.offsetByCodePoints(start, -1);
            }
            String letter = text.substring(start, end);
            int bracket = letter.length() == 1 ? OPENING.indexOf(letter.charAt(0)) : -1;
            out.append(bracket < 0 ? letter : String.valueOf(OPENING.charAt(bracket ^ 1)));
            end = start;
        }
        return out.toString();
    }

    @Override
    public String shapeText(String text) {
        return text;
    }

    @Override
    public String deshapeText(String text) {
        return text;
    }

    @Override
    public boolean isLiveImplementation() {
        return true;
    }
}
