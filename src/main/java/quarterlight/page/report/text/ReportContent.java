package quarterlight.page.report.text;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What the report says, in the order in which it says it: texts only, units included, an empty text where there is none. The
 * same for PDF and HTML. Immutable.
 *
 * @param title the car
 * @param date of the visit, in words
 * @param lead the sentences that open the summary
 * @param drawing the body diagram as an element of the page
 * @param strips thickness of all zones on one scale, as an element of the page; empty if nothing was measured
 * @param otherPhotos photos of marks that belong to no zone
 * @param own the inspector's own words on limits and terms
 * @param leftOut what is not shown, and why, in sentences
 */
public record ReportContent(
        String title,
        String date,
        List<String> lead,
        List<Fact> facts,
        List<MatterText> matters,
        List<String> notLookedAt,
        List<ClaimRow> claims,
        String drawing,
        String drawingNote,
        List<ZoneRow> overview,
        String unit,
        String strips,
        List<ZoneText> zones,
        List<PhotoText> otherPhotos,
        List<String> leftOut,
        MarksText marks,
        List<TrialRow> trials,
        List<GapRow> gaps,
        GaugeText gauge,
        List<Paragraph> method,
        List<String> cautions,
        List<Paragraph> own,
        List<String> sources) {
    private static final int ZONES_IN_A_ROW = 3;

    /** A row of what was claimed and what was found. */
    public record ClaimRow(String place, String claim, String by, String verdict, List<String> found) {}

    /** A label and its text. */
    public record Fact(String label, String text) {}

    /** A heading and what stands below it. */
    public record Paragraph(String heading, List<String> sentences) {}

    /** A place of the report to go to. */
    public record Link(String target, String text) {}

    /** One of the things that matter most. */
    public record MatterText(
            String place, String headline, List<String> evidence, boolean structural, List<Link> links) {}

    /** A row of the table of zones; the target is empty for a zone that has no chapter. */
    public record ZoneRow(
            String target,
            String zone,
            String mean,
            String spots,
            String refinish,
            String repair,
            String rust,
            String need) {}

    /** The zones as they stand on the page: small ones that follow each other up to three in a row, every other by itself. */
    public List<List<ZoneText>> zoneRows() {
        List<List<ZoneText>> rows = new ArrayList<>();
        List<ZoneText> row = new ArrayList<>();
        for (ZoneText zone : zones) {
            if (!zone.isSmall() || row.size() == ZONES_IN_A_ROW) {
                flush(row, rows);
            }
            row.add(zone);
            if (!zone.isSmall()) {
                flush(row, rows);
            }
        }
        flush(row, rows);
        return rows;
    }

    private static void flush(List<ZoneText> row, List<List<ZoneText>> rows) {
        if (!row.isEmpty()) {
            rows.add(List.copyOf(row));
            row.clear();
        }
    }

    /** All that is known of one zone. */
    public record ZoneText(
            String id,
            String name,
            List<StatementText> statements,
            Optional<ReadingText> readings,
            Optional<LikelihoodText> likelihood,
            List<SignText> signs,
            Optional<RustText> rust,
            List<PhotoText> photos) {
        private static final int MAX_LETTERS_OF_A_SMALL_ZONE = 360;
        private static final int MAX_PHOTOS_KEPT_WITH_WORDS = 6;

        /** True if there is so little that several such zones stand side by side. */
        public boolean isSmall() {
            int words = statements.stream()
                            .mapToInt(statement -> statement.text().length())
                            .sum()
                    + signs.stream()
                            .mapToInt(sign -> sign.sign().length() + sign.more().length())
                            .sum();
            return readings.isEmpty()
                    && likelihood.isEmpty()
                    && rust.map(text -> text.traces().isEmpty()).orElse(true)
                    && photos.size() <= 1
                    && words <= MAX_LETTERS_OF_A_SMALL_ZONE;
        }

        /** True if its words and photos together are so short that they stay on one page. */
        public boolean isKeptWhole() {
            return readings.isEmpty() && likelihood.isEmpty() && photos.size() <= MAX_PHOTOS_KEPT_WITH_WORDS;
        }

        /** True if there are so many words that photos look well beside them, and no table that needs the whole width. */
        public boolean hasRoomBeside() {
            return readings.isPresent()
                    && rust.map(RustText::traces).map(List::isEmpty).orElse(true);
        }
    }

    /** A statement: what kind, how grave, how it is known, and the sentence. */
    public record StatementText(String kind, String text, List<Link> photos) {
        public StatementText {
            photos = List.copyOf(photos);
        }
    }

    /** Readings of a zone in words, as a plot, and as they were typed. */
    public record ReadingText(List<String> figures, String plot, List<String> spots, List<String> remarks) {}

    /** The likelihoods with what moved them. */
    public record LikelihoodText(String figures, String strength, List<Fact> reasons) {}

    /** A sign that was seen, or looked for and not seen. */
    public record SignText(String sign, String seen, String more, Optional<Link> photo) {}

    /** Rust of a zone. */
    public record RustText(
            String figures, List<TraceText> traces, String need, List<String> remarks, List<String> cautions) {}

    /** One outline drawn on a photo. */
    public record TraceText(String kind, String area, String note, Optional<Link> photo) {}

    /**
     * A photo below its zone.
     *
     * @param number of the photo, as on the diagram
     * @param id to link to
     * @param source address of the picture; empty if none can be shown
     * @param widthMm on paper
     * @param instead what stands where no picture can be shown, or where it was shown already
     * @param again true if it was shown already
     */
    public record PhotoText(
            String number,
            String id,
            String source,
            String widthMm,
            String heightMm,
            String instead,
            boolean again,
            String alt,
            String shows,
            String caption,
            String time,
            String file,
            List<String> notes) {}

    /** Marks and dates; {@code line} is the drawing of the time line, empty if there is none. */
    public record MarksText(String line, List<MarkRow> rows, List<FeatureRow> features, List<String> sentences) {}

    /** A mark as read and as decoded. */
    public record MarkRow(
            String part,
            String kind,
            String text,
            String dates,
            String verdict,
            String why,
            String note,
            Optional<Link> photo) {}

    /** A feature by which cars are dated. */
    public record FeatureRow(String feature, String span, String fitted, String verdict, String note) {}

    /** A function that was tried. */
    public record TrialRow(String item, String result, String value, String zone, String note) {}

    /** A kind of evidence that zones lack, why it is wanted, and which zones. */
    public record GapRow(String lacks, String why, String zones) {}

    /** The gauge check: a row each, what it comes to, and how far the gauge moved. */
    public record GaugeText(List<List<String>> rows, List<String> sentences) {}
}
