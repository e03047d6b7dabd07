package quarterlight.findings;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import quarterlight.capture.CorrectedTimes;
import quarterlight.car.Zone;
import quarterlight.car.ZoneCatalog;
import quarterlight.car.ZoneId;
import quarterlight.finish.FinishEvidence;
import quarterlight.finish.FinishHistory;
import quarterlight.finish.place.ZoneSizes;
import quarterlight.marks.MarksReport;
import quarterlight.marks.code.DatePatterns;
import quarterlight.rust.RustReport;
import quarterlight.thickness.ThicknessSurvey;
import quarterlight.units.Area;
import quarterlight.visit.VisitRecord;

/**
 * Everything worked out of one visit. Immutable.
 *
 * @param evidence what the finish history rests on
 */
public record Findings(
        VisitRecord visit,
        ZoneCatalog catalog,
        CorrectedTimes times,
        ThicknessSurvey thickness,
        RustReport rust,
        FinishEvidence evidence,
        FinishHistory history,
        MarksReport marks) {
    /** From this refinish or repair likelihood on, of 100, a panel counts as likely refinished or repaired. Judgment. */
    public static final int LIKELY_SCORE = 60;

    public Findings {
        Objects.requireNonNull(visit, "visit");
        Objects.requireNonNull(catalog, "catalog");
        Objects.requireNonNull(times, "times");
        Objects.requireNonNull(thickness, "thickness");
        Objects.requireNonNull(rust, "rust");
        Objects.requireNonNull(evidence, "evidence");
        Objects.requireNonNull(history, "history");
        Objects.requireNonNull(marks, "marks");
    }

    /** Works out everything where no outlines of zones are known: filler that no spot stands on is then judged without the places of spots. */
    public static Findings of(
            VisitRecord visit, ZoneCatalog catalog, Map<ZoneId, Area> zoneAreas, DatePatterns patterns) {
        return of(visit, catalog, new ZoneSizes(zoneAreas, Map.of()), patterns);
    }

    /**
     * Works out everything.
     *
     * @param sizes of the car's zones; a zone without an area gets no percent and no grade of rust
     * @param patterns what date codes are read by
     */
    public static Findings of(VisitRecord visit, ZoneCatalog catalog, ZoneSizes sizes, DatePatterns patterns) {
        return Measured.of(visit, catalog, sizes).judged(patterns);
    }

    /** What of it rests on no judgment. */
    public Measured measured() {
        return new Measured(visit, catalog, thickness, rust, evidence);
    }

    /** The zones of the car, but for those that the inspector left out; in the order of the zone table. */
    public List<Zone> zones() {
        Set<ZoneId> leftOut = visit.zonesLeftOut();
        return catalog.zonesOf(visit.facts().car().body()).stream()
                .filter(zone -> !leftOut.contains(zone.id()))
                .toList();
    }

    /** What was worked out, beside a visit that differs only in what none of it rests on: claims, figures of the odometer, decisions, what is left out. */
    public Findings beside(VisitRecord other) {
        return new Findings(other, catalog, times, thickness, rust, evidence, history, marks);
    }
}
