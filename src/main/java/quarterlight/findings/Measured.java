package quarterlight.findings;

import java.util.Objects;
import quarterlight.capture.CorrectedTimes;
import quarterlight.car.ZoneCatalog;
import quarterlight.finish.FinishEngine;
import quarterlight.finish.FinishEvidence;
import quarterlight.finish.place.ZoneSizes;
import quarterlight.finish.scale.ThicknessSteps;
import quarterlight.marks.MarksReport;
import quarterlight.marks.code.DatePatterns;
import quarterlight.rust.RustReport;
import quarterlight.thickness.ThicknessSurvey;
import quarterlight.thickness.ZoneThickness;
import quarterlight.visit.VisitRecord;

/**
 * What of a visit is known as soon as it is read, without judging it: means of thickness and extents of rust. Immutable.
 *
 * @param evidence what the finish history will rest on
 */
public record Measured(
        VisitRecord visit, ZoneCatalog catalog, ThicknessSurvey thickness, RustReport rust, FinishEvidence evidence) {
    public Measured {
        Objects.requireNonNull(visit, "visit");
        Objects.requireNonNull(catalog, "catalog");
        Objects.requireNonNull(thickness, "thickness");
        Objects.requireNonNull(rust, "rust");
        Objects.requireNonNull(evidence, "evidence");
    }

    /** @param sizes of the car's zones; a zone without an area gets no percent and no grade of rust */
    public static Measured of(VisitRecord visit, ZoneCatalog catalog, ZoneSizes sizes) {
        ThicknessSurvey thickness = ThicknessSurvey.of(visit, catalog);
        RustReport rust = RustReport.of(visit, catalog, sizes.areas());
        FinishEvidence evidence =
                FinishEvidence.of(visit, catalog, thickness, rust.extents()).with(sizes);
        return new Measured(visit, catalog, thickness, rust, evidence);
    }

    /** The steps of thickness by what was measured alone; those of the findings go by the level that was worked out of it. */
    public ThicknessSteps steps() {
        return ThicknessSteps.beforeJudging(
                evidence.profile(),
                thickness.zones().stream()
                        .filter(ZoneThickness::readable)
                        .flatMapToDouble(zone -> zone.meanUm().stream())
                        .toArray());
    }

    /** Judges it, which may take a while. */
    public Findings judged(DatePatterns patterns) {
        return new Findings(
                visit,
                catalog,
                CorrectedTimes.of(visit),
                thickness,
                rust,
                evidence,
                new FinishEngine(evidence.profile()).history(evidence),
                MarksReport.of(visit, patterns));
    }
}
