package quarterlight.page.report.text;

import static quarterlight.language.Sentences.say;

import java.util.List;
import java.util.Optional;
import quarterlight.car.Zone;
import quarterlight.findings.ClaimedAndFound;
import quarterlight.findings.Findings;
import quarterlight.visit.statement.Claim;

/** What was claimed and what was found, row by row. */
public final class ClaimTexts {
    private ClaimTexts() {}

    /** In the order in which they were made. */
    public static List<ReportContent.ClaimRow> of(Findings car) {
        return ClaimedAndFound.of(car).stream().map(row -> row(car, row)).toList();
    }

    private static ReportContent.ClaimRow row(Findings car, ClaimedAndFound row) {
        Claim claim = row.claim();
        String place = claim.zone()
                .map(zone -> car.catalog().find(zone).map(Zone::label).orElse(zone.value()))
                .orElse(say("report.claim-texts.the-car"));
        return new ReportContent.ClaimRow(
                claim.part().map(part -> place + ", " + part).orElse(place),
                claim.text(),
                claim.by().said() + claim.date().map(date -> ", " + date.said()).orElse(""),
                row.judgment().said()
                        + (claim.judged().equals(Optional.empty())
                                ? say("report.claim-texts.proposed-not-decided")
                                : ""),
                row.found());
    }
}
