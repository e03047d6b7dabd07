package quarterlight.walk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import quarterlight.car.ZoneId;
import quarterlight.visit.photo.PhotoId;
import quarterlight.walk.pace.GapCounts;
import quarterlight.walk.said.PlaceSaid;

/** Single rules of docs/methods/zone-suggestion.md on a row of zones, each told by what changes when it alone does. */
class WalkLineRulesTest {
    private static final WalkModel V4 = WalkModel.V5;

    private static List<ZoneId> row(int count) {
        return IntStream.range(0, count)
                .mapToObj(i -> new ZoneId("z" + (10 + i)))
                .toList();
    }

    private static Map<ZoneId, Set<ZoneId>> doors(List<ZoneId> zones) {
        Map<ZoneId, Set<ZoneId>> doors = new HashMap<>();
        for (int i = 0; i < zones.size(); i++) {
            int at = i;
            doors.put(
                    zones.get(i),
                    IntStream.of(i - 1, i + 1)
                            .filter(j -> j >= 0 && j < zones.size() && j != at)
                            .mapToObj(zones::get)
                            .collect(Collectors.toSet()));
        }
        return doors;
    }

    private static ZoneSuggestions suggestions(List<ZoneId> zones, WalkHabits habits, WalkModel model) {
        return new ZoneSuggestions(zones, doors(zones), ZoneKin.NONE, habits, model);
    }

    /** No habit is asked for, so that earlier visits count as known. */
    private static WalkModel asRead(double returns) {
        return new WalkModel(V4.moves(), V4.pinSure(), returns, V4.priorMoves(), 0, V4.pinsOfPace());
    }

    private static WalkHabits counted(int gaps) {
        List<Integer> counts = new ArrayList<>(GapCounts.NONE.gaps());
        List<Integer> moved = new ArrayList<>(GapCounts.NONE.moved());
        counts.set(8, gaps);
        moved.set(8, gaps / 4);
        return new WalkHabits(
                Map.of(), Map.of(), new GapCounts(counts, moved, GapCounts.NONE.reached(), GapCounts.NONE.ended()));
    }

    /** Photos 20 s apart; a zone of the row where pinned, below 0 where not. */
    private static List<Shot> shots(List<ZoneId> zones, int... pinned) {
        List<Shot> shots = new ArrayList<>();
        for (int i = 0; i < pinned.length; i++) {
            List<ZoneId> to = pinned[i] < 0 ? List.of() : List.of(zones.get(pinned[i]));
            shots.add(new Shot(new PhotoId(i + 1L), 20 * i, to, Optional.empty()));
        }
        return shots;
    }

    private static Map<ZoneId, Double> chances(List<Suggestion> said) {
        return said.stream().collect(Collectors.toMap(Suggestion::zone, Suggestion::p));
    }

    private static void same(List<Suggestion> found, List<Suggestion> wanted) {
        Map<ZoneId, Double> all = chances(wanted);
        assertThat(found).hasSameSizeAs(wanted);
        found.forEach(one -> assertThat(one.p()).isCloseTo(all.get(one.zone()), within(1e-9)));
    }

    /** A zone pinned elsewhere, and not at the pins before and after, counts half. */
    @Test
    void aReturnCountsHalf() {
        List<ZoneId> zones = row(5);
        List<Shot> shots = shots(zones, 0, 1, -1, -1, 2, 3);
        WalkLine full = suggestions(zones, WalkHabits.NONE, asRead(1)).line(shots);
        WalkLine half = suggestions(zones, WalkHabits.NONE, asRead(0.5)).line(shots);
        for (long open : new long[] {3, 4}) {
            Map<ZoneId, Double> before = chances(full.asRead(new PhotoId(open)));
            Map<ZoneId, Double> after = chances(half.asRead(new PhotoId(open)));
            double unit = after.get(zones.get(1)) / before.get(zones.get(1));
            double[] factors = {0.5, 1, 1, 0.5, 1};
            for (int z = 0; z < 5; z++) {
                assertThat(after.get(zones.get(z)))
                        .isCloseTo(factors[z] * unit * before.get(zones.get(z)), within(1e-9));
            }
            assertThat(after.values().stream().mapToDouble(Double::doubleValue).sum())
                    .isCloseTo(1, within(1e-9));
            assertThat(before.values().stream().mapToDouble(Double::doubleValue).sum())
                    .isCloseTo(1, within(1e-9));
        }
        assertThat(V4.returns()).isEqualTo(0.5);
    }

    @Test
    void whatIsNotPinnedAnyMoreIsNoReturn() {
        List<ZoneId> zones = row(5);
        ZoneSuggestions suggestions = suggestions(zones, WalkHabits.NONE, asRead(0.5));
        WalkLine line = suggestions.line(shots(zones, 0, 0, 0, 1, -1, 2));
        line.pins(Map.of(
                new PhotoId(3),
                List.of(zones.get(0)),
                new PhotoId(4),
                List.of(zones.get(1)),
                new PhotoId(6),
                List.of(zones.get(2))));
        same(
                line.suggestions(new PhotoId(5)),
                suggestions.suggest(shots(zones, -1, -1, 0, 1, -1, 2)).get(new PhotoId(5)));
        line.pins(Map.of(new PhotoId(4), List.of(zones.get(1)), new PhotoId(6), List.of(zones.get(2))));
        same(
                line.suggestions(new PhotoId(5)),
                suggestions.suggest(shots(zones, -1, -1, -1, 1, -1, 2)).get(new PhotoId(5)));
    }

    @Test
    void aPinOfTheFirstPhotoAloneIsTakenIn() {
        List<ZoneId> zones = row(5);
        ZoneSuggestions suggestions = suggestions(zones, WalkHabits.NONE, asRead(0.5));
        WalkLine line = suggestions.line(shots(zones, -1, -1, -1));
        line.pins(Map.of(new PhotoId(1), List.of(zones.get(4))));
        same(
                line.suggestions(new PhotoId(2)),
                suggestions.suggest(shots(zones, 4, -1, -1)).get(new PhotoId(2)));
    }

    /** A single photo pinned to two of four zones: 0.97 is shared by the two, 0.03 lies on all four. */
    @Test
    void aPinIsSureTo97OfAHundred() {
        List<ZoneId> zones = row(4);
        WalkLine line = suggestions(zones, WalkHabits.NONE, asRead(0.5))
                .line(List.of(new Shot(new PhotoId(1), 0, zones.subList(0, 2), Optional.empty())));
        Map<ZoneId, Double> p = chances(line.suggestions(new PhotoId(1)));
        double all = 0.97 + 2 * 0.03 / 4;
        assertThat(p.get(zones.get(0))).isCloseTo(0.97 / 2 / all, within(1e-9));
        assertThat(p.get(zones.get(3))).isCloseTo(0.03 / 4 / all, within(1e-9));
    }

    @Test
    void the24LikeliestAreWorkedOutWhereverTheyStandInTheTable() {
        List<ZoneId> zones = row(40);
        List<Suggestion> said = suggestions(zones, WalkHabits.NONE, asRead(0.5))
                .suggest(shots(zones, 39, -1))
                .get(new PhotoId(2));
        assertThat(said).hasSize(24);
        assertThat(said.get(0).zone()).isEqualTo(zones.get(39));
        assertThat(said.get(1).zone()).isEqualTo(zones.get(38));
        for (int i = 1; i < said.size(); i++) {
            assertThat(said.get(i).p()).isLessThanOrEqualTo(said.get(i - 1).p());
        }
        List<Suggestion> even = suggestions(zones, WalkHabits.NONE, asRead(1))
                .suggest(shots(zones, 20, -1))
                .get(new PhotoId(2));
        assertThat(even.get(1).p()).isCloseTo(even.get(2).p(), within(1e-12));
        assertThat(even.get(1).zone()).isEqualTo(zones.get(19));
    }

    /** Behind the first three the chance is weighed by the usual way, and the sum stays; none comes above the third. */
    @Test
    void theUsualWayOrdersWhatStandsBehindTheFirstThree() {
        List<ZoneId> zones = row(12);
        ZoneSuggestions plain = suggestions(zones, WalkHabits.NONE, V4);
        List<ZoneId> way = List.of(zones.get(0), zones.get(9), zones.get(8), zones.get(7));
        ZoneSuggestions.UsualWalk usual = ZoneSuggestions.UsualWalk.of(way);
        List<Shot> shots = shots(zones, 0, -1, -1, -1);
        for (long open : new long[] {2, 4}) {
            List<Suggestion> base = plain.suggest(shots).get(new PhotoId(open));
            List<Suggestion> found = plain.along(way).suggest(shots).get(new PhotoId(open));
            assertThat(found.subList(0, 3)).isEqualTo(base.subList(0, 3));
            List<Suggestion> rest = base.subList(3, base.size());
            double all = rest.stream().mapToDouble(Suggestion::p).sum();
            double weighed = rest.stream()
                    .mapToDouble(one -> one.p() * usual.factor(zones.get(0), one.zone()))
                    .sum();
            Map<ZoneId, Double> p = chances(found);
            rest.forEach(one -> assertThat(p.get(one.zone()))
                    .isCloseTo(
                            Math.min(base.get(2).p(), one.p() * usual.factor(zones.get(0), one.zone()) * all / weighed),
                            within(1e-12)));
        }
        List<Suggestion> unpinnedBefore =
                plain.along(way).suggest(shots(zones, -1, 3)).get(new PhotoId(1));
        assertThat(unpinnedBefore).isEqualTo(plain.suggest(shots(zones, -1, 3)).get(new PhotoId(1)));
    }

    /** From 40 counted gaps on the habits decide, and neither calibration nor the usual way does. */
    @Test
    void theUsualWayCountsUpTo39CountedGaps() {
        List<ZoneId> zones = row(12);
        List<ZoneId> way = List.of(zones.get(0), zones.get(9), zones.get(8));
        List<Shot> shots = shots(zones, 0, -1, -1);
        for (int gaps : new int[] {39, 40}) {
            ZoneSuggestions plain = suggestions(zones, counted(gaps), V4);
            assertThat(plain.along(way).suggest(shots).equals(plain.suggest(shots)))
                    .isEqualTo(gaps == 40);
        }
    }

    @Test
    void onlyTheTimeBetweenPhotosCountsAndTheOrderInWhichTheyComeDoesNot() {
        List<ZoneId> zones = row(6);
        ZoneSuggestions suggestions = suggestions(zones, WalkHabits.NONE, V4);
        List<Shot> early = List.of(
                new Shot(new PhotoId(1), 0, List.of(zones.get(2)), Optional.empty()),
                new Shot(new PhotoId(2), 3, List.of(), Optional.empty()),
                new Shot(new PhotoId(3), 90, List.of(), Optional.empty()));
        List<Shot> late = new ArrayList<>();
        early.forEach(one -> late.add(new Shot(one.photo(), one.seconds() + 5000, one.pinned(), Optional.empty())));
        Collections.reverse(late);
        same(
                suggestions.suggest(late).get(new PhotoId(2)),
                suggestions.suggest(early).get(new PhotoId(2)));
        same(
                suggestions.suggest(late).get(new PhotoId(3)),
                suggestions.suggest(early).get(new PhotoId(3)));
    }

    @Test
    void whatIsSaidCountsAtTheTimeOfItsPhoto() {
        List<ZoneId> zones = row(6);
        ZoneSuggestions suggestions = suggestions(zones, WalkHabits.NONE, asRead(1));
        List<Shot> shots = List.of(
                new Shot(new PhotoId(1), 0, List.of(), Optional.empty()),
                new Shot(new PhotoId(2), 300, List.of(), Optional.empty()));
        WalkLine said = suggestions.line(shots, List.of(new PlaceSaid(300, List.of(zones.get(4)), 1)));
        assertThat(said.suggestions(new PhotoId(2)).get(0).zone()).isEqualTo(zones.get(4));
        double here = chances(said.asRead(new PhotoId(2))).get(zones.get(4));
        assertThat(here).isGreaterThan(chances(said.asRead(new PhotoId(1))).get(zones.get(4)));
        assertThat(suggestions.suggest(shots, List.of(new PlaceSaid(900, List.of(zones.get(4)), 1))))
                .isEmpty();
    }
}
