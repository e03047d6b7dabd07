package quarterlight.page.report;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import quarterlight.car.View;
import quarterlight.car.ZoneId;
import quarterlight.car.body.BodyStyle;
import quarterlight.coverage.Coverage;
import quarterlight.coverage.Gap;
import quarterlight.diagram.BodyDiagram;
import quarterlight.diagram.NominalAreas;
import quarterlight.diagram.ZonePlaces;
import quarterlight.diagram.file.DiagramFile;
import quarterlight.diagram.file.DiagramRefused;
import quarterlight.findings.Findings;
import quarterlight.matters.Matters;
import quarterlight.page.report.picture.BuyerPictures;
import quarterlight.page.report.picture.PhotoPixels;
import quarterlight.photo.pixels.JpegWriter;
import quarterlight.rust.TestVisits;
import quarterlight.table.ZoneTable;
import quarterlight.table.list.CoverageTable;
import quarterlight.table.list.DatePatternTable;
import quarterlight.table.list.TrialTable;
import quarterlight.units.ThicknessUnit;
import quarterlight.visit.VisitParts;
import quarterlight.visit.VisitRecord;
import quarterlight.visit.mark.Mark;
import quarterlight.visit.mark.MarkKind;
import quarterlight.visit.photo.MediaKind;
import quarterlight.visit.photo.PhotoId;
import quarterlight.visit.pin.Pin;
import quarterlight.visit.pin.ViewPoint;
import quarterlight.visit.reading.GaugeValue;
import quarterlight.visit.reading.Reading;
import quarterlight.visit.statement.Basis;
import quarterlight.visit.statement.Condition;
import quarterlight.visit.statement.Facets;
import quarterlight.visit.statement.Severity;
import quarterlight.visit.statement.Statement;
import quarterlight.visit.trial.Trial;
import quarterlight.visit.trial.TrialResult;

/** A small coupe on which everything typed holds characters that could do harm or be lost. */
final class TypedVisit {
    static final String MARKUP = "Skin \"welded\" over <b>old</b> & <script>alert('x')</script> src=\"picture:1\"";
    static final String LATIN = "Größe 3 mm — d'origine, ½ inch";
    static final String FOREIGN = "左 fender \u05d0\u05d1 \ud83d\ude97 end";
    static final String CONTROL = "before\u0001\u202eafter";
    static final String CAPTION = "Caption: gap <3 mm & rising";
    static final String MARK = "1B?8 <&>";
    static final String TRIAL = "Horn & \"klaxon\"";
    static final String NOTE = "note of the trial, ${1+1} ${r.title}";

    private TypedVisit() {}

    static VisitParts parts() {
        Optional<String> none = Optional.empty();
        List<Statement> statements = new ArrayList<>();
        statements.add(statement(
                "quarter-left", Facets.of(Condition.REPAIRED), MARKUP, Severity.MAJOR, Optional.of(new PhotoId(1))));
        statements.add(statement("hood", Facets.of(Condition.WORN), LATIN, Severity.MINOR, Optional.empty()));
        statements.add(statement("hood", Facets.of(Condition.WORN), FOREIGN, Severity.MINOR, Optional.empty()));
        statements.add(statement("roof", Facets.of(Condition.NOT_LOOKED_AT), CONTROL, Severity.NOTE, Optional.empty()));
        List<Reading> readings = new ArrayList<>();
        for (String value : List.of("4.9", "5.1", "5.6", "")) {
            readings.add(new Reading(
                    new ZoneId("hood"),
                    value.isEmpty()
                            ? new GaugeValue.NoMetal()
                            : new GaugeValue.Measured(new BigDecimal(value), ThicknessUnit.MIL),
                    Optional.empty(),
                    none,
                    Optional.of(new ViewPoint(View.TOP, 0.18 + 0.03 * readings.size(), 0.5)),
                    Optional.empty(),
                    none,
                    none));
        }
        return new VisitParts(TestVisits.facts(BodyStyle.COUPE))
                .photos(List.of(
                        TestVisits.photo(1, MediaKind.PHOTO, 1200, 900),
                        TestVisits.photo(2, MediaKind.PHOTO, 900, 1200),
                        TestVisits.photo(3, MediaKind.FILM, 1200, 900)))
                .pins(VisitParts.rows(List.of(
                        pin(1, "quarter-left", OptionalDouble.empty(), Optional.of(CAPTION)),
                        pin(1, "hood", OptionalDouble.empty(), none),
                        pin(2, "hood", OptionalDouble.empty(), none),
                        pin(3, "hood", OptionalDouble.of(2.5), none))))
                .readings(VisitParts.rows(readings))
                .statements(VisitParts.rows(statements))
                .marks(VisitParts.rows(List.of(new Mark(
                        "Block \u2014 \"left\"",
                        MarkKind.CASTING,
                        MARK,
                        Optional.empty(),
                        none,
                        none,
                        Optional.of(new ZoneId("engine")),
                        Optional.empty(),
                        Optional.of(new PhotoId(2)),
                        none,
                        Optional.empty(),
                        Optional.empty()))))
                .trials(VisitParts.rows(List.of(new Trial(
                        TRIAL, TrialResult.NOT_TRIED, Optional.empty(), none, Optional.empty(), Optional.of(NOTE)))));
    }

    private static Statement statement(
            String zone, Facets kind, String text, Severity severity, Optional<PhotoId> photo) {
        return new Statement(
                new ZoneId(zone), kind, text, Optional.of(severity), Optional.of(Basis.SEEN), photo, Optional.empty());
    }

    private static Pin pin(long photo, String zone, OptionalDouble at, Optional<String> caption) {
        return new Pin(
                new PhotoId(photo),
                new ZoneId(zone),
                at,
                Optional.empty(),
                Optional.empty(),
                caption,
                Optional.empty());
    }

    static ReportPages pages(VisitRecord visit, PhotoPixels pixels) {
        BodyDiagram diagram;
        try {
            diagram = DiagramFile.shipped(visit.facts().car().body());
        } catch (DiagramRefused e) {
            throw new AssertionError(e);
        }
        ZonePlaces places = ZonePlaces.of(diagram);
        Findings car = Findings.of(
                visit,
                ZoneTable.load(),
                NominalAreas.sizes(diagram, visit.facts().car().dimensions()),
                DatePatternTable.load());
        List<Gap> gaps = Coverage.gaps(visit, car.catalog(), car.thickness(), car.rust(), CoverageTable.load());
        return new ReportPages(
                car,
                diagram,
                places,
                gaps,
                Matters.of(car, List.of(), TrialTable.load()),
                new BuyerPictures(visit, pixels, JpegWriter::jpeg));
    }

    /** Photos in one color each; the film cannot be shown. */
    static PhotoPixels colors() {
        return (photo, at, longSide) -> photo.value() == 3 ? Optional.empty() : Optional.of(color(photo, longSide));
    }

    private static BufferedImage color(PhotoId photo, int longSide) {
        boolean upright = photo.value() == 2;
        int width = upright ? longSide * 3 / 4 : longSide;
        int height = upright ? longSide : longSide * 3 / 4;
        BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        Graphics2D g = image.createGraphics();
        g.setColor(new Color(40, 90, (int) (60 * photo.value() % 256)));
        g.fillRect(0, 0, width, height);
        g.dispose();
        return image;
    }
}
