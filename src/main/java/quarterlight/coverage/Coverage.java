package quarterlight.coverage;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import quarterlight.car.Zone;
import quarterlight.car.ZoneCatalog;
import quarterlight.car.ZoneGroup;
import quarterlight.car.ZoneId;
import quarterlight.car.body.Body;
import quarterlight.coverage.CoverageRules.Asked;
import quarterlight.rust.RustReport;
import quarterlight.rust.ZoneRust;
import quarterlight.thickness.ThicknessSurvey;
import quarterlight.thickness.ZoneThickness;
import quarterlight.thickness.gauge.GaugeReach;
import quarterlight.visit.CoverageOverride;
import quarterlight.visit.VisitRecord;
import quarterlight.visit.mark.Mark;
import quarterlight.visit.mark.MarkKind;
import quarterlight.visit.photo.Photo;
import quarterlight.visit.photo.PhotoId;
import quarterlight.visit.pin.Pin;
import quarterlight.visit.pin.Recorded;
import quarterlight.visit.statement.Condition;
import quarterlight.visit.statement.Statement;

/**
 * What a visit still lacks, zone by zone, in the order of a walk round the car.
 * <p>A photo that was set aside shows nothing. A zone that the gauge cannot read wants no spots. A zone stated to be missing
 * wants nothing: it is not there. A zone stated as not looked at keeps its gaps, with the reason beside them.
 */
public final class Coverage {
    private final VisitRecord visit;
    private final Body body;
    private final CoverageRules rules;
    private final ThicknessSurvey survey;
    private final RustReport rust;
    private final List<CoverageOverride> wishes;
    private final Map<ZoneId, Set<PhotoId>> photos = new HashMap<>();
    private final Map<String, Set<PhotoId>> views = new HashMap<>();
    /** Kinds of evidence asked of the zone at hand, and those of which there is some. */
    private int asked;

    private int met;

    private Coverage(VisitRecord visit, ThicknessSurvey survey, RustReport rust, CoverageRules rules) {
        this.visit = visit;
        this.body = visit.facts().car().body();
        this.rules = rules;
        this.survey = survey;
        this.rust = rust;
        this.wishes = visit.coverage().stream().map(Recorded::value).toList();
        countPhotos();
    }

    /**
     * The gaps of a visit.
     *
     * @param survey statistics of the visit's readings
     * @param rust the visit's rust
     * @return in the order of the walk; within a zone in the order of {@link EvidenceKind}
     */
    public static List<Gap> gaps(
            VisitRecord visit, ZoneCatalog catalog, ThicknessSurvey survey, RustReport rust, CoverageRules rules) {
        return zones(visit, catalog, survey, rust, rules).stream()
                .flatMap(zone -> zone.gaps().stream())
                .toList();
    }

    /**
     * How far each zone of the car is covered, in the order of the walk.
     *
     * @param survey statistics of the visit's readings
     * @param rust the visit's rust
     */
    public static List<ZoneCoverage> zones(
            VisitRecord visit, ZoneCatalog catalog, ThicknessSurvey survey, RustReport rust, CoverageRules rules) {
        Coverage coverage = new Coverage(visit, survey, rust, rules);
        List<Zone> walk = new ArrayList<>(catalog.zonesOf(coverage.body));
        walk.sort(Comparator.comparingInt(zone -> rules.place(zone.id())));
        return walk.stream().map(coverage::zone).toList();
    }

    private ZoneCoverage zone(Zone zone) {
        List<Gap> gaps = new ArrayList<>();
        asked = 0;
        met = 0;
        if (!stated(zone, Condition.MISSING)) {
            addGaps(zone, gaps);
        }
        return new ZoneCoverage(zone, asked, met, gaps);
    }

    private void addGaps(Zone zone, List<Gap> gaps) {
        addGap(zone, EvidenceKind.PHOTO, photosOf(zone), gaps);
        if (readable(zone)) {
            int spots = survey.zone(zone.id()).map(z -> z.spots().size()).orElse(0);
            addGap(zone, EvidenceKind.SPOTS, spots, gaps);
        }
        boolean lookedAt = rust.zone(zone.id()).map(ZoneRust::lookedAt).orElse(false);
        addGap(zone, EvidenceKind.RUST, lookedAt ? 1 : 0, gaps);
        addGap(zone, EvidenceKind.IDENTITY_MARK, (int) identityMarks().count(), gaps);
        addMarkViews(zone, gaps);
    }

    private void addGap(Zone zone, EvidenceKind want, int have, List<Gap> gaps) {
        rules.asked(want, zone, body, wishes).ifPresent(rule -> add(zone, want, rule, have, Optional.empty(), gaps));
    }

    private void add(Zone zone, EvidenceKind want, Asked rule, int have, Optional<String> part, List<Gap> gaps) {
        asked++;
        met += have > 0 ? 1 : 0;
        if (have < rule.number()) {
            gaps.add(new Gap(zone, want, rule.number(), have, part, excuse(zone), rule.why()));
        }
    }

    /** Every identity mark of the zone wants its views; a mark without a zone belongs with the papers and plates. */
    private void addMarkViews(Zone zone, List<Gap> gaps) {
        Optional<Asked> rule = rules.asked(EvidenceKind.MARK_VIEWS, zone, body, wishes);
        if (rule.isEmpty()) {
            return;
        }
        List<String> parts = visit.marks().stream()
                .map(Recorded::value)
                .filter(Coverage::tellsWhichCar)
                .filter(mark -> mark.zone().map(zone.id()::equals).orElse(isRecords(zone)))
                .map(Mark::part)
                .distinct()
                .toList();
        for (String part : parts) {
            int have = views.getOrDefault(part, Set.of()).size();
            add(zone, EvidenceKind.MARK_VIEWS, rule.get(), have, Optional.of(part), gaps);
        }
    }

    private static boolean isRecords(Zone zone) {
        return zone.group() == ZoneGroup.RECORD && zone.id().value().equals("identity-papers");
    }

    private static boolean tellsWhichCar(Mark mark) {
        return mark.kind() == MarkKind.VIN || mark.kind() == MarkKind.PLATE || mark.kind() == MarkKind.STAMP;
    }

    private Stream<Mark> identityMarks() {
        return visit.marks().stream()
                .map(Recorded::value)
                .filter(mark -> mark.kind() == MarkKind.VIN || mark.kind() == MarkKind.PLATE);
    }

    private int photosOf(Zone zone) {
        return photos.getOrDefault(zone.id(), Set.of()).size();
    }

    private boolean readable(Zone zone) {
        return survey.zone(zone.id())
                .map(ZoneThickness::readable)
                .orElseGet(() -> GaugeReach.reads(visit.facts().car().substrateOf(zone.id()), survey.modes()));
    }

    private boolean stated(Zone zone, Condition condition) {
        return statement(zone, condition).isPresent();
    }

    private Optional<Statement> statement(Zone zone, Condition condition) {
        return visit.standing().stream()
                .filter(s -> s.is(condition) && s.zone().equals(zone.id()))
                .findFirst();
    }

    private Optional<String> excuse(Zone zone) {
        return statement(zone, Condition.NOT_LOOKED_AT).map(Statement::text);
    }

    private void countPhotos() {
        Set<PhotoId> kept = new HashSet<>();
        for (Photo photo : visit.photos()) {
            if (photo.setAside().isEmpty()) {
                kept.add(photo.id());
            }
        }
        for (Recorded<Pin> row : visit.pins()) {
            Pin pin = row.value();
            if (kept.contains(pin.photo())) {
                photos.computeIfAbsent(pin.zone(), key -> new HashSet<>()).add(pin.photo());
                pin.mark().ifPresent(part -> see(part, pin.photo()));
            }
        }
        for (Recorded<Mark> row : visit.marks()) {
            row.value()
                    .photo()
                    .filter(kept::contains)
                    .ifPresent(photo -> see(row.value().part(), photo));
        }
    }

    private void see(String part, PhotoId photo) {
        views.computeIfAbsent(part, key -> new HashSet<>()).add(photo);
    }
}
