package quarterlight.page.brief;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import quarterlight.car.PartialDate;
import quarterlight.car.ZoneId;
import quarterlight.edit.fact.FactEdits;
import quarterlight.findings.Findings;
import quarterlight.language.Language;
import quarterlight.matters.Matters;
import quarterlight.table.ZoneTable;
import quarterlight.table.list.DatePatternTable;
import quarterlight.table.list.TrialTable;
import quarterlight.visit.VisitParts;
import quarterlight.visit.VisitRecord;
import quarterlight.visit.mark.Feature;
import quarterlight.visit.photo.PhotoId;
import quarterlight.visit.statement.Condition;
import quarterlight.visit.statement.Facets;
import quarterlight.visit.statement.Statement;

/** That no number contradicts another does not stand alone where a date or a feature does. */
class BriefTextTest {
    private static final ZoneId ROOF = new ZoneId("roof");

    @Test
    void featuresThatDoNotFitAreSaidBesideNumbersThatDo() throws Exception {
        assertThat(paragraph(List.of(fitted("1970", "1972"))))
                .contains("No number read contradicts another (1 mark read).");
        assertThat(paragraph(List.of(fitted("1974", "1975"))))
                .contains("another (1 mark read), but 1 feature does not fit how and when the car was built.");
        List<Feature> two = List.of(fitted("1974", "1975"), fitted("1965", "1966"));
        assertThat(paragraph(two)).contains("but 2 features do not fit");
        assertThat(Language.GERMAN.during(() -> paragraph(two)))
                .contains("(1 Kennung abgelesen), doch passen 2 Merkmale nicht dazu, wie");
    }

    private static Feature fitted(String from, String to) {
        return new Feature(
                "reflector of " + from,
                PartialDate.parse(from).orElseThrow(),
                PartialDate.parse(to).orElseThrow(),
                Optional.of(true),
                Optional.of(ROOF),
                Optional.empty());
    }

    private static String paragraph(List<Feature> features) throws Exception {
        VisitRecord visit = new VisitParts(new FactEdits(ZoneTable.load())
                        .start(
                                Map.of("car", "Tamarisk", "style", "coupe", "built", "1971-03", "timezone", "UTC"),
                                ZoneOffset.UTC))
                .marks(VisitParts.rows(List.of(VisitParts.stamp("Body stamp", "H7", ROOF, new PhotoId(1)))))
                .features(VisitParts.rows(features))
                .statements(VisitParts.rows(List.of(new Statement(
                        ROOF,
                        Facets.of(Condition.SURFACE_RUST),
                        "rust at the seam",
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty()))))
                .record();
        Findings car = Findings.of(visit, ZoneTable.load(), Map.of(), DatePatternTable.load());
        return BriefText.composed(car, Matters.of(car, List.of(), TrialTable.load()));
    }
}
