package quarterlight.page.line;

import static quarterlight.language.Sentences.say;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Objects;
import quarterlight.diagram.ink.InkPalette;
import quarterlight.diagram.ink.TextMeasure;
import quarterlight.marks.TimeLine;
import quarterlight.marks.TimeLine.Row;
import quarterlight.marks.code.DateCandidate;
import quarterlight.marks.judge.DateText;
import quarterlight.marks.judge.Verdict;
import quarterlight.units.Days;

/**
 * Draws the time line of a car: a row per stamp, earliest first, over a line of months with the build window as a band. A full bar is
 * the likeliest date, an open one another that the stamp can mean; an arrow points to a date beyond the line. Words say what
 * shapes say, so that it reads in black and white. One unit is one px; 500 to 900 px of width read well. Immutable.
 */
public final class TimeLineDrawing {
    private static final double ROW = 24;
    private static final double HEAD = 26;
    private static final double FOOT = 30;
    private static final double NAME = 13;
    private static final double SMALL = 11;
    private static final double BAR = 8;
    private static final double MIN_BAR = 4;
    private static final double PAD = 6;
    private static final double NAMES_SHARE = 0.34;
    private static final double MAX_NAMES = 260;
    private static final double BAND_SHARE = 0.14;

    private final TimeLine line;
    private final InkPalette palette;
    private final TextMeasure measure;
    private final double width;
    private final double left;

    /** @param widthPx width of the whole drawing, 300 or more */
    public TimeLineDrawing(TimeLine line, InkPalette palette, TextMeasure measure, double widthPx) {
        this.line = Objects.requireNonNull(line, "line");
        this.palette = Objects.requireNonNull(palette, "palette");
        this.measure = Objects.requireNonNull(measure, "measure");
        if (!(widthPx >= 300)) {
            throw new IllegalArgumentException("a time line needs 300 px of width, not " + widthPx);
        }
        this.width = widthPx;
        this.left = Math.min(MAX_NAMES, widthPx * NAMES_SHARE);
    }

    public double widthPx() {
        return width;
    }

    public double heightPx() {
        return HEAD + ROW * line.rows().size() + FOOT;
    }

    /** Draws with its upper left corner at 0, 0; the ground is not painted. */
    public void draw(Graphics2D to) {
        Graphics2D g = (Graphics2D) to.create();
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        g.setRenderingHint(RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
        band(g);
        axis(g);
        for (int i = 0; i < line.rows().size(); i++) {
            row(g, line.rows().get(i), HEAD + ROW * i);
        }
        g.dispose();
    }

    private double x(LocalDate day) {
        double whole = ChronoUnit.DAYS.between(line.first(), line.last()) + 1;
        return left + (width - left) * ChronoUnit.DAYS.between(line.first(), day) / whole;
    }

    private void band(Graphics2D g) {
        line.window().ifPresent(window -> {
            double from = Math.max(left, x(window.first()));
            double to = Math.min(width, Math.max(from + MIN_BAR, x(window.last().plusDays(1))));
            double bottom = HEAD + ROW * line.rows().size();
            g.setColor(InkPalette.mix(palette.accent(), palette.ground(), BAND_SHARE));
            g.fill(new Rectangle2D.Double(from, HEAD - 4, to - from, bottom - HEAD + 4));
            g.setColor(palette.accent());
            g.setStroke(new BasicStroke(1));
            g.draw(new Line2D.Double(from, HEAD - 4, from, bottom));
            g.draw(new Line2D.Double(to, HEAD - 4, to, bottom));
            String words = say("diagram.time-line-drawing.built", DateText.of(window));
            double wide = measure.width(words, SMALL, true);
            double at = Math.max(left, Math.min(width - wide, (from + to - wide) / 2));
            text(g, words, at, HEAD - 10, SMALL, true, palette.accent());
        });
    }

    private void axis(Graphics2D g) {
        double y = HEAD + ROW * line.rows().size();
        g.setStroke(new BasicStroke(1));
        double monthWide = (width - left) / (ChronoUnit.MONTHS.between(line.first(), line.last()) + 1);
        double free = left;
        for (LocalDate month = line.first(); !month.isAfter(line.last()); month = month.plusMonths(1)) {
            boolean year = month.getMonthValue() == 1;
            boolean quarter = month.getMonthValue() % 3 == 1;
            if (!year && !quarter && monthWide < 4 || !year && monthWide < 1.5) {
                continue;
            }
            double x = x(month);
            g.setColor(palette.line());
            g.draw(new Line2D.Double(x, year ? HEAD : y, x, y));
            g.setColor(palette.secondInk());
            g.draw(new Line2D.Double(x, y, x, y + (year ? 10 : quarter ? 6 : 3)));
            String words = year
                    ? Integer.toString(month.getYear())
                    : quarter ? Days.month(month).substring(0, 3) : "";
            double wide = measure.width(words, SMALL, year);
            boolean room = x >= free && x + wide <= width && (year || monthWide * 3 > 34);
            if (!words.isEmpty() && room) {
                text(g, words, x + 2, y + 22, SMALL, year, year ? palette.ink() : palette.secondInk());
                free = x + wide + PAD;
            }
        }
        g.setColor(palette.secondInk());
        g.draw(new Line2D.Double(left, y, width, y));
    }

    private void row(Graphics2D g, Row row, double top) {
        double middle = top + ROW / 2;
        g.setColor(palette.line());
        g.setStroke(new BasicStroke(0.5f));
        g.draw(new Line2D.Double(0, top, width, top));
        String code = cut(row.text(), left * 0.4, SMALL, false);
        double codeWide = measure.width(code, SMALL, false);
        String name = cut(row.part(), left - codeWide - 3 * PAD, NAME, row.contradicted());
        text(g, name, 0, middle + 5, NAME, row.contradicted(), palette.ink());
        text(g, code, left - PAD - codeWide, middle + 4, SMALL, false, palette.secondInk());
        for (int i = row.shown().size() - 1; i > 0; i--) {
            bar(g, row.shown().get(i), middle, false);
        }
        likeliest(g, row, middle);
    }

    private void likeliest(Graphics2D g, Row row, double middle) {
        DateCandidate date = row.shown().get(0);
        boolean beyond = date.from().isAfter(line.last());
        boolean before = date.to().isBefore(line.first());
        String words = shown(date)
                + (row.verdict() == Verdict.FITS ? "" : ", " + row.verdict().said());
        double wide = measure.width(words, SMALL, row.contradicted());
        if (beyond || before) {
            double tip = beyond ? width - 1 : left + 1;
            arrow(g, tip, middle, beyond ? -8 : 8);
            label(g, row, words, beyond ? tip - 10 - PAD - wide : tip + 10 + PAD, middle);
            return;
        }
        double end = bar(g, date, middle, true);
        double start = Math.max(left, x(date.from()));
        label(g, row, words, place(start, end, wide), middle);
    }

    /** Right of the bar; left of it, or right of the build window, where the words would hide the window or leave the drawing. */
    private double place(double start, double end, double wide) {
        double from = line.window().map(window -> x(window.first())).orElse(width);
        double to = line.window().map(window -> x(window.last().plusDays(1))).orElse(width);
        double right = end + PAD;
        double before = start - PAD - wide;
        boolean hides = right < to && right + wide > from;
        if (hides && end <= from && before >= left) {
            return before;
        }
        double beside = hides && end > from ? Math.max(right, to + PAD) : right;
        return beside + wide <= width ? beside : Math.max(left, before);
    }

    /** Writes on a plate of the ground, so that bars and lines below do not run through the words. */
    private void label(Graphics2D g, Row row, String words, double x, double middle) {
        double wide = measure.width(words, SMALL, row.contradicted());
        g.setColor(palette.ground());
        g.fill(new Rectangle2D.Double(x - 2, middle - 7, wide + 4, 14));
        text(g, words, x, middle + 4, SMALL, row.contradicted(), palette.ink());
    }

    /** Draws a bar and gives its right end. */
    private double bar(Graphics2D g, DateCandidate date, double middle, boolean full) {
        double from = x(date.from());
        double to = Math.max(from + MIN_BAR, x(date.to().plusDays(1)));
        if (to <= left || from >= width) {
            return to;
        }
        double begin = Math.max(left, from);
        Rectangle2D shape = new Rectangle2D.Double(begin, middle - BAR / 2, Math.min(width, to) - begin, BAR);
        g.setStroke(new BasicStroke(1.2f));
        g.setColor(full ? palette.ink() : palette.ground());
        g.fill(shape);
        g.setColor(palette.ink());
        g.draw(shape);
        return Math.min(width, to);
    }

    private void arrow(Graphics2D g, double tip, double middle, double back) {
        Path2D head = new Path2D.Double();
        head.moveTo(tip, middle);
        head.lineTo(tip + back, middle - 5);
        head.lineTo(tip + back, middle + 5);
        head.closePath();
        g.setColor(palette.ink());
        g.fill(head);
    }

    private static String shown(DateCandidate date) {
        if (date.from().equals(date.to())) {
            return Days.day(date.from());
        }
        String whole = DateText.of(date);
        return whole.contains(say("common.days-to", "", ""))
                ? say("diagram.time-line-drawing.on", Days.day(date.from()))
                : whole;
    }

    private void text(Graphics2D g, String words, double x, double y, double size, boolean heavy, Color color) {
        Font cut = (heavy ? measure.bold() : measure.regular()).deriveFont((float) size);
        g.setFont(cut);
        g.setColor(color);
        g.drawString(words, (float) x, (float) y);
    }

    private String cut(String words, double most, double size, boolean heavy) {
        int length = words.length();
        while (length > 0 && measure.width(ended(words, length), size, heavy) > most) {
            length = words.offsetByCodePoints(length, -1);
        }
        return ended(words, length);
    }

    private static String ended(String words, int length) {
        return length == words.length() ? words : words.substring(0, length).stripTrailing() + "\u2026";
    }
}
