package quarterlight.coverage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import quarterlight.car.Zone;
import quarterlight.car.ZoneCatalog;
import quarterlight.car.ZoneGroup;
import quarterlight.car.ZoneId;
import quarterlight.car.body.Body;
import quarterlight.car.body.BodyStyle;
import quarterlight.rust.RustReport;
import quarterlight.rust.TestVisits;
import quarterlight.table.ZoneTable;
import quarterlight.table.list.CoverageTable;
import quarterlight.thickness.ThicknessSurvey;
import quarterlight.units.ThicknessUnit;
import quarterlight.visit.CoverageOverride;
import quarterlight.visit.VisitParts;
import quarterlight.visit.VisitRecord;
import quarterlight.visit.mark.Mark;
import quarterlight.visit.mark.MarkKind;
import quarterlight.visit.photo.MediaKind;
import quarterlight.visit.photo.Photo;
import quarterlight.visit.photo.PhotoId;
import quarterlight.visit.pin.Pin;
import quarterlight.visit.reading.GaugeValue;
import quarterlight.visit.reading.Reading;
import quarterlight.visit.statement.Condition;
import quarterlight.visit.statement.Facets;
import quarterlight.visit.statement.Statement;

class CoverageTest {
    private static final ZoneCatalog CATALOG = ZoneTable.load();
    private static final CoverageRules RULES = CoverageTable.load();

    private final List<Photo> photos = new ArrayList<>(IntStream.rangeClosed(1, 9)
            .mapToObj(id -> TestVisits.photo(id, MediaKind.PHOTO, 400, 300))
            .toList());
    private final List<Pin> pins = new ArrayList<>();
    private final List<Reading> readings = new ArrayList<>();
    private final List<Mark> marks = new ArrayList<>();
    private final List<Statement> statements = new ArrayList<>();
    private final List<CoverageOverride> wishes = new ArrayList<>();

    private List<Gap> gaps() {
        return gaps(BodyStyle.COUPE);
    }

    private List<Gap> gaps(BodyStyle style) {
        VisitRecord visit = visit(style);
        return Coverage.gaps(
                visit, CATALOG, ThicknessSurvey.of(visit, CATALOG), RustReport.of(visit, CATALOG, Map.of()), RULES);
    }

    private VisitRecord visit(BodyStyle style) {
        return new VisitParts(TestVisits.facts(style))
                .photos(photos)
                .pins(TestVisits.rows(pins))
                .readings(TestVisits.rows(readings))
                .marks(TestVisits.rows(marks))
                .statements(TestVisits.rows(statements))
                .coverage(TestVisits.rows(wishes))
                .record();
    }

    private List<Gap> gaps(String zone) {
        return gaps().stream()
                .filter(gap -> gap.zone().id().equals(new ZoneId(zone)))
                .toList();
    }

    private void pin(long photo, String zone, Optional<String> mark) {
        pins.add(new Pin(
                new PhotoId(photo),
                new ZoneId(zone),
                OptionalDouble.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                mark));
    }

    private void reading(String zone, GaugeValue value) {
        readings.add(new Reading(
                new ZoneId(zone),
                value,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty()));
    }

    private void says(String zone, Facets kind, String text) {
        statements.add(new Statement(
                new ZoneId(zone), kind, text, Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty()));
    }

    private void mark(String part, MarkKind kind, Optional<PhotoId> photo) {
        mark(part, kind, Optional.of(new ZoneId("firewall")), photo);
    }

    private void mark(String part, MarkKind kind, Optional<ZoneId> zone, Optional<PhotoId> photo) {
        marks.add(new Mark(
                part,
                kind,
                "QL2471",
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                zone,
                Optional.empty(),
                photo,
                Optional.empty(),
                Optional.empty(),
                Optional.empty()));
    }

    private static GaugeValue.Measured um(int value) {
        return new GaugeValue.Measured(BigDecimal.valueOf(value), ThicknessUnit.UM);
    }

    @Test
    void anEmptyVisitLacksEverythingItMustBring() {
        List<Gap> gaps = gaps();
        for (Zone zone : CATALOG.zonesOf(Body.usual(BodyStyle.COUPE))) {
            boolean usual =
                    !Set.of("vinyl-roof", "wood-body-frame").contains(zone.id().value());
            assertThat(gaps.stream().anyMatch(g -> g.zone().equals(zone) && g.lacks() == EvidenceKind.PHOTO))
                    .as("photo of %s", zone.id())
                    .isEqualTo(usual);
            assertThat(gaps.stream().anyMatch(g -> g.zone().equals(zone) && g.lacks() == EvidenceKind.SPOTS))
                    .as("spots on %s", zone.id())
                    .isEqualTo(zone.finish());
            assertThat(gaps.stream().anyMatch(g -> g.zone().equals(zone) && g.lacks() == EvidenceKind.RUST))
                    .as("rust of %s", zone.id())
                    .isEqualTo(zone.structural());
        }
        assertThat(gaps("identity-papers"))
                .extracting(Gap::lacks)
                .containsExactly(EvidenceKind.PHOTO, EvidenceKind.IDENTITY_MARK);
    }

    @Test
    void whatIsThereIsCounted() {
        pin(1, "roof", Optional.empty());
        pin(1, "roof", Optional.empty());
        reading("roof", um(110));
        reading("roof", new GaugeValue.NoMetal());
        assertThat(gaps("roof"))
                .extracting(Gap::lacks, Gap::want, Gap::have)
                .containsExactly(tuple(EvidenceKind.SPOTS, 3, 2), tuple(EvidenceKind.RUST, 1, 0));
        reading("roof", um(112));
        says("roof", Facets.of(Condition.NO_RUST), "bright inside the drip rail");
        assertThat(gaps("roof")).isEmpty();
        pin(2, "whole-car", Optional.empty());
        assertThat(gaps("whole-car")).extracting(Gap::want, Gap::have).containsExactly(tuple(4, 1));
    }

    @Test
    void aPhotoPutAsideShowsNothing() {
        pin(1, "decklid", Optional.empty());
        assertThat(gaps("decklid")).extracting(Gap::lacks).containsExactly(EvidenceKind.SPOTS);
        photos.set(0, new Photo(photos.get(0).id(), photos.get(0).file(), Optional.of("blurred")));
        assertThat(gaps("decklid")).extracting(Gap::lacks).containsExactly(EvidenceKind.PHOTO, EvidenceKind.SPOTS);
    }

    @Test
    void aZoneNotLookedAtKeepsItsGapWithTheReason() {
        says("floor-front-left", Facets.of(Condition.NOT_LOOKED_AT), "the car could not be raised");
        assertThat(gaps("floor-front-left")).isNotEmpty().allSatisfy(gap -> assertThat(gap.excuse())
                .contains("the car could not be raised"));
    }

    @Test
    void aPartThatIsMissingWantsNothing() {
        says("spare-wheel", Facets.of(Condition.MISSING), "no spare");
        assertThat(gaps("spare-wheel")).isEmpty();
    }

    @Test
    void everyIdentityMarkWantsTwoViews() {
        mark("body stamp", MarkKind.STAMP, Optional.of(new PhotoId(1)));
        mark("heater tag", MarkKind.TAG, Optional.empty());
        mark("vehicle number", MarkKind.VIN, Optional.empty());
        assertThat(gaps("firewall"))
                .filteredOn(gap -> gap.lacks() == EvidenceKind.MARK_VIEWS)
                .extracting(Gap::part, Gap::have)
                .containsExactly(tuple(Optional.of("body stamp"), 1), tuple(Optional.of("vehicle number"), 0));
        assertThat(gaps("identity-papers")).extracting(Gap::lacks).containsExactly(EvidenceKind.PHOTO);
        pin(2, "firewall", Optional.of("body stamp"));
        assertThat(gaps("firewall"))
                .filteredOn(gap -> gap.lacks() == EvidenceKind.MARK_VIEWS)
                .extracting(Gap::part)
                .containsExactly(Optional.of("vehicle number"));
    }

    @Test
    void aMarkWithoutAZoneBelongsWithThePapers() {
        mark("body stamp", MarkKind.STAMP, Optional.empty(), Optional.empty());
        List<Gap> views = gaps().stream()
                .filter(gap -> gap.lacks() == EvidenceKind.MARK_VIEWS)
                .toList();
        assertThat(views).extracting(gap -> gap.zone().id().value()).containsExactly("identity-papers");
        assertThat(gaps("identity-papers"))
                .extracting(Gap::lacks)
                .as("a stamp is neither the vehicle number nor a plate")
                .contains(EvidenceKind.IDENTITY_MARK);
        mark("plate", MarkKind.PLATE, Optional.empty());
        assertThat(gaps("identity-papers")).extracting(Gap::lacks).doesNotContain(EvidenceKind.IDENTITY_MARK);
    }

    @Test
    void gapsFollowTheWalkRoundTheCar() {
        List<String> order =
                gaps().stream().map(gap -> gap.zone().id().value()).distinct().toList();
        List<String> some = List.of(
                "whole-car",
                "hood",
                "fender-left",
                "quarter-left",
                "decklid",
                "quarter-right",
                "fender-right",
                "roof",
                "engine",
                "dash",
                "trunk-floor",
                "frame-rail-front-left",
                "identity-papers");
        assertThat(order).containsSubsequence(some);
    }

    @Test
    void aConvertibleShowsItsTopAndAPickupItsBed() {
        assertThat(gaps(BodyStyle.CONVERTIBLE))
                .anyMatch(gap -> gap.zone().id().value().equals("soft-top") && gap.lacks() == EvidenceKind.PHOTO);
        assertThat(gaps(BodyStyle.PICKUP))
                .anyMatch(gap -> gap.zone().id().value().equals("bed-side-left") && gap.lacks() == EvidenceKind.SPOTS);
    }

    @Test
    void theWalkPassesEveryZoneOnceAndTheRulesNameOnlyZonesThereAre() {
        assertThat(RULES.walk())
                .containsExactlyInAnyOrderElementsOf(
                        CATALOG.all().stream().map(Zone::id).toList());
        Set<ZoneId> named = new HashSet<>();
        RULES.rules().forEach(rule -> {
            named.addAll(rule.zones());
            named.addAll(rule.except());
            assertThat(rule.why()).endsWith(".");
        });
        assertThat(RULES.walk()).containsAll(named);
    }

    private void wish(String zone, String evidence, int want) {
        wishes.add(
                new CoverageOverride(Optional.of(zone).filter(z -> !z.isEmpty()).map(ZoneId::new), evidence, want));
    }

    private List<Integer> wanted(String zone, EvidenceKind want) {
        return gaps(zone).stream()
                .filter(gap -> gap.lacks() == want)
                .map(Gap::want)
                .toList();
    }

    @Test
    void aWishTakesThePlaceOfTheUsualRule() {
        assertThat(wanted("hood", EvidenceKind.SPOTS)).containsExactly(3);
        wish("hood", "spots", 5);
        assertThat(wanted("hood", EvidenceKind.SPOTS)).containsExactly(5);
        assertThat(wanted("roof", EvidenceKind.SPOTS)).containsExactly(3);
        wish("hood", "spots", 0);
        assertThat(wanted("hood", EvidenceKind.SPOTS)).as("the last wish holds").isEmpty();
    }

    @Test
    void aWishForEveryZoneReachesThoseThatTheRuleAsksAndYieldsToOneForAZone() {
        wish("hood", "spots", 1);
        wish("", "spots", 6);
        assertThat(wanted("roof", EvidenceKind.SPOTS)).containsExactly(6);
        assertThat(wanted("hood", EvidenceKind.SPOTS)).containsExactly(1);
        assertThat(wanted("engine", EvidenceKind.SPOTS))
                .as("no spots are asked of it")
                .isEmpty();
        wish("engine", "photo", 4);
        assertThat(wanted("engine", EvidenceKind.PHOTO)).containsExactly(4);
    }

    private ZoneCoverage.State state(String zone) {
        VisitRecord visit = visit(BodyStyle.COUPE);
        return Coverage.zones(
                        visit,
                        CATALOG,
                        ThicknessSurvey.of(visit, CATALOG),
                        RustReport.of(visit, CATALOG, Map.of()),
                        RULES)
                .stream()
                .filter(covered -> covered.zone().id().equals(new ZoneId(zone)))
                .findFirst()
                .orElseThrow()
                .state();
    }

    @Test
    void aZoneIsMissingPartlyOrFullyCovered() {
        assertThat(state("hood")).isEqualTo(ZoneCoverage.State.MISSING);
        pin(1, "hood", Optional.empty());
        assertThat(state("hood")).isEqualTo(ZoneCoverage.State.PARTLY);
        reading("hood", um(100));
        reading("hood", um(110));
        assertThat(state("hood")).isEqualTo(ZoneCoverage.State.PARTLY);
        reading("hood", um(120));
        assertThat(state("hood")).isEqualTo(ZoneCoverage.State.FULL);
        assertThat(state("vinyl-roof")).as("nothing is asked").isEqualTo(ZoneCoverage.State.NOT_ASKED);
        wish("roof", "photo", 0);
        wish("roof", "spots", 0);
        wish("roof", "rust", 0);
        assertThat(state("roof")).as("nothing is wished for").isEqualTo(ZoneCoverage.State.NOT_ASKED);
        says("fender-left", Facets.of(Condition.MISSING), "gone");
        assertThat(state("fender-left")).isEqualTo(ZoneCoverage.State.NOT_ASKED);
    }

    @Test
    void aNewVisitIsClosedByFewLooksAndWhatMattersComesFirst() {
        List<Gap> gaps = gaps();
        List<NeededLook> looks = NeededLook.of(gaps);
        assertThat(gaps.size()).isGreaterThan(150);
        assertThat(looks.size()).isLessThan(25);
        assertThat(looks.stream().mapToInt(look -> look.gaps().size()).sum()).isEqualTo(gaps.size());
        assertThat(looks.get(0).lacks()).isEqualTo(EvidenceKind.IDENTITY_MARK);
        assertThat(looks.get(1).words()).isEqualTo("look for rust under the car");
        assertThat(looks)
                .filteredOn(look -> look.lacks() == EvidenceKind.PHOTO)
                .first()
                .returns(ZoneGroup.RECORD, NeededLook::group);
        assertThat(looks).allSatisfy(look -> assertThat(look.gaps())
                .allMatch(gap -> gap.lacks() == look.lacks() && gap.zone().group() == look.group()));
        assertThat(NeededLook.of(List.of())).isEmpty();
    }
}
