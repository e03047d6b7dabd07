package quarterlight.page.report.back;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import quarterlight.page.report.text.ReportContent;

class GlossaryTest {
    private static final String NARROW = "\u202f";

    /** A report whose words are those given: at the top, within a list, within an optional part and deep in a zone. */
    private static ReportContent report(String top, String listed, String optional, String deep) {
        ReportContent.TraceText trace = new ReportContent.TraceText(
                "scale", "", deep, Optional.of(new ReportContent.Link("photo-1", "photo 1")));
        ReportContent.ZoneText zone = new ReportContent.ZoneText(
                "hood",
                "Hood",
                List.of(),
                Optional.empty(),
                Optional.of(new ReportContent.LikelihoodText(optional, "", "", List.of(), "")),
                List.of(),
                Optional.of(new ReportContent.RustText("", List.of(trace), "", List.of(), List.of())),
                List.of());
        return new ReportContent(
                "Any car",
                "no date",
                List.of(listed),
                List.of(new ReportContent.Fact("made", "1971")),
                List.of(),
                List.of(),
                List.of(),
                "",
                top,
                "",
                "",
                List.of(zone),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                new ReportContent.MarksText("", List.of(), List.of(), List.of()),
                List.of(),
                List.of(),
                new ReportContent.GaugeText(List.of(), List.of()),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                List.of());
    }

    private static List<String> terms(ReportContent report) {
        return Glossary.of(report).stream().map(ReportContent.Fact::label).toList();
    }

    @Test
    void findsTermsWhereverTheyStandInAReport() {
        assertThat(terms(report("Outliers are rings.", "graded by ISO 4628-3", "no shims", "a structural hole")))
                .contains("outlier", "ISO 4628-3", "shim", "structural");
        assertThat(terms(report("95" + NARROW + "% interval", "", "", ""))).contains("95" + NARROW + "% interval");
    }

    @Test
    void leavesOutTermsThatStandNowhere() {
        assertThat(terms(report("", "similar, shimmer", "", "banded")))
                .doesNotContain("mil", "shim", "band", "outlier", "ISO 4628-3", "structural");
    }

    @Test
    void readsWhatTheRecordWritesOfItself() {
        ReportContent report = report("Outliers.", "two mils", "substrate", "Ri 3");
        assertThat(Glossary.of(report)).isEqualTo(Glossary.of(report.toString()));
    }
}
