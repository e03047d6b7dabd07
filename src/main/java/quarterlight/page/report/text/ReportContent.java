package quarterlight.page.report.text;

import static quarterlight.language.Sentences.say;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/**
 * What the report says, in the order in which it says it: texts only, units included, an empty text where there is none. The
 * same for PDF and HTML. Immutable.
 *
 * @param title the car
 * @param date of the visit, in words
 * @param lead the sentences that open the summary
 * @param drawing the body diagram as an element of the page
 * @param scale the axis of the strips, as an element of the page; empty if nothing was measured
 * @param zones with something to say, at length
 * @param panels measured, and as expected
 * @param panelPhotos those of these panels
 * @param quiet other zones that were looked at
 * @param experts zones whose figures stand in the appendix
 * @param cautions all that are due
 * @param otherCautions those that stand nowhere else
 * @param rustCautions those for the rust of the zones
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
        String unit,
        String scale,
        List<ZoneText> zones,
        List<PanelRow> panels,
        List<PhotoText> panelPhotos,
        List<ZoneText> quiet,
        List<ZoneText> experts,
        List<PhotoText> otherPhotos,
        List<String> leftOut,
        MarksText marks,
        List<TrialRow> trials,
        List<GapRow> gaps,
        GaugeText gauge,
        List<Paragraph> method,
        List<String> cautions,
        List<String> otherCautions,
        List<String> rustCautions,
        List<Paragraph> own,
        List<PhotoRow> photos,
        List<Fact> glossary,
        List<String> sources) {
    private static final double BESIDE_MM = 2.5;
    private static final int FEW_LETTERS = 500;
    private static final int MANY_LETTERS = 900;
    private static final int FEW_OUTLINES = 2;
    /** Photos in landscape that stand beside each other on A4 or Letter. */
    private static final int ONE_ROW = 4;

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
            String letter,
            boolean grave,
            String severity,
            String why,
            List<Link> photos,
            Optional<SeenText> seen,
            String place,
            String headline,
            List<String> evidence,
            boolean structural,
            List<Link> links) {
        /** Whether its words would fill a column by themselves, so that they take the width of the page and its photo stands below. */
        public boolean isWordy() {
            return headline.length()
                            + evidence.stream().mapToInt(String::length).sum()
                    > MANY_LETTERS;
        }
    }

    /**
     * A picture on paper.
     *
     * @param target where it can be enlarged on a screen; empty if nowhere
     */
    public record PictureText(String source, String alt, String widthMm, String heightMm, String target) {}

    /**
     * The photo of a matter.
     *
     * @param beside a part of it closer, else another photo, else nothing
     * @param others whether it is another photo
     */
    public record SeenText(PictureText photo, List<PictureText> beside, boolean others) {}

    /** A panel that is as expected, in one line; {@code strip} is a drawing. */
    public record PanelRow(
            String target,
            String name,
            String mean,
            String spots,
            String strip,
            List<String> words,
            List<Link> photos) {}

    /** A photo in the list at the end. */
    public record PhotoRow(Optional<Link> link, String file, String taken, String hash) {}

    /** The parts of the report with their titles, in order; those that are empty, or of a report in full, are left out. */
    public List<Link> parts(boolean full) {
        List<Link> parts = new ArrayList<>(List.of(
                new Link("summary", say("report.report-content.summary")),
                new Link("drawing", say("report.report-content.body-diagram")),
                new Link("matters", say("report.report-content.what-matters-in-full"))));
        part(!zones.isEmpty(), "evidence", say("report.report-content.zones-with-something-to-say"), parts);
        part(!panels.isEmpty(), "panels", say("report.report-content.panels-as-expected"), parts);
        part(!quiet.isEmpty(), "quiet", say("report.report-content.other-zones"), parts);
        part(full, "marks", say("report.report-content.marks-and-dates"), parts);
        part(full, "trials", say("report.report-content.trials"), parts);
        part(full, "missing", say("report.report-content.what-is-missing"), parts);
        part(full, "gauge", say("report.report-content.gauge-check"), parts);
        part(true, "method", say("report.report-content.method-and-limits"), parts);
        part(!experts.isEmpty(), "experts", say("report.report-content.appendix-figures-for-experts"), parts);
        part(!photos.isEmpty(), "hashes", say("report.report-content.appendix-photos-and-their-hashes"), parts);
        part(!glossary.isEmpty(), "glossary", say("report.report-content.terms-used"), parts);
        part(full, "sources", say("report.report-content.sources"), parts);
        return parts;
    }

    private static void part(boolean there, String target, String title, List<Link> parts) {
        if (there) {
            parts.add(new Link(target, title));
        }
    }

    /** What of the page the drawing can lead to: zones and matters. */
    public Set<String> targets() {
        Set<String> targets = new LinkedHashSet<>();
        zones.forEach(zone -> targets.add(zone.id()));
        panels.forEach(panel -> targets.add(panel.target()));
        quiet.forEach(zone -> targets.add(zone.id()));
        matters.forEach(matter -> targets.add("matter-" + matter.letter()));
        return targets;
    }

    /** Photos in rows that fit a width on paper. */
    public List<List<PhotoText>> photoRows(List<PhotoText> all, double widthMm) {
        List<List<PhotoText>> rows = new ArrayList<>();
        double used = widthMm;
        for (PhotoText photo : all) {
            double wide = Double.parseDouble(photo.roomMm()) + BESIDE_MM;
            if (used + wide > widthMm + BESIDE_MM) {
                rows.add(new ArrayList<>());
                used = 0;
            }
            rows.get(rows.size() - 1).add(photo);
            used += wide;
        }
        return rows;
    }

    /** How wide a row of photos is on paper, mm. */
    public String widthOf(List<PhotoText> row) {
        double wide = row.stream()
                .mapToDouble(photo -> Double.parseDouble(photo.roomMm()) + BESIDE_MM)
                .sum();
        return String.format(Locale.ROOT, "%.1f", wide);
    }

    /** Whether a zone takes so little room that it is kept on one page. */
    public boolean isShort(ZoneText zone) {
        int letters = zone.statements().stream()
                        .mapToInt(statement -> statement.text().length())
                        .sum()
                + zone.signs().stream()
                        .mapToInt(sign -> sign.sign().length() + sign.more().length())
                        .sum();
        long shown = zone.photos().stream().filter(photo -> !photo.again()).count();
        long outlines =
                zone.rust().stream().mapToLong(rust -> rust.traces().size()).sum();
        return letters <= FEW_LETTERS && shown <= ONE_ROW && outlines <= FEW_OUTLINES;
    }

    /** Whether a zone has photos and no word. */
    public boolean isBare(ZoneText zone) {
        return zone.statements().isEmpty()
                && zone.readings().isEmpty()
                && zone.likelihood().isEmpty()
                && zone.signs().isEmpty()
                && zone.rust().isEmpty()
                && zone.photos().stream().noneMatch(PhotoText::again);
    }

    /** Whether claims or what was found of them are too long for the columns of a table. */
    public boolean isWordy() {
        return claims.stream()
                .anyMatch(row -> Math.max(
                                row.claim().length(),
                                String.join(" ", row.found()).length())
                        > FEW_LETTERS);
    }

    /** The photos of the other zones. */
    public List<PhotoText> quietPhotos() {
        return quiet.stream()
                .flatMap(zone -> zone.photos().stream())
                .filter(photo -> !photo.again())
                .toList();
    }

    /** The same with the terms that it uses. */
    public ReportContent withGlossary(List<Fact> terms) {
        return new ReportContent(
                title,
                date,
                lead,
                facts,
                matters,
                notLookedAt,
                claims,
                drawing,
                drawingNote,
                unit,
                scale,
                zones,
                panels,
                panelPhotos,
                quiet,
                experts,
                otherPhotos,
                leftOut,
                marks,
                trials,
                gaps,
                gauge,
                method,
                cautions,
                otherCautions,
                rustCautions,
                own,
                photos,
                terms,
                sources);
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
            List<PhotoText> photos) {}

    /**
     * A statement: what kind, how grave, how it is known, and the sentence.
     *
     * @param said when it was said, and in which words where these are others; empty if it was not said
     */
    public record StatementText(String kind, String text, String said, List<Link> photos) {
        public StatementText {
            photos = List.copyOf(photos);
        }
    }

    /** Readings of a zone in words, as a plot, and as they were typed. */
    public record ReadingText(
            List<String> figures,
            String summary,
            String plot,
            String profile,
            List<String> spots,
            List<String> remarks) {}

    /** The likelihoods with what moved them; {@code plain} says it in one sentence, {@code untouched} what filler no spot stands on, or is empty. */
    public record LikelihoodText(String plain, String figures, String strength, List<Fact> reasons, String untouched) {}

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
     * @param zoneId where its zone stands
     * @param widthMm on paper
     * @param roomMm width that it and its caption take
     * @param instead what stands where no picture can be shown, or where it was shown already
     * @param again true if it was shown already
     * @param first where, if so
     */
    public record PhotoText(
            String number,
            String id,
            String zoneId,
            String source,
            String widthMm,
            String heightMm,
            String roomMm,
            String instead,
            boolean again,
            String alt,
            String shows,
            String caption,
            String time,
            String file,
            List<String> notes,
            Optional<Link> first) {}

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
