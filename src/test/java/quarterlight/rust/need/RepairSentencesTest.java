package quarterlight.rust.need;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import quarterlight.car.ZoneId;
import quarterlight.car.body.Construction;
import quarterlight.rust.need.RepairEvidence.Damage;
import quarterlight.table.ZoneTable;

/** The reasons of a need say what was found and how much of it, by the words that matter. */
class RepairSentencesTest {
    private static RepairAdvice advice(
            String zone,
            boolean looked,
            boolean rusted,
            double percent,
            int grade,
            int holes,
            Loss lost,
            Loss scale,
            boolean cracked) {
        return RepairRule.judge(new RepairEvidence(
                ZoneTable.load().get(new ZoneId(zone)),
                Construction.UNIBODY,
                looked,
                rusted,
                percent < 0 ? OptionalDouble.empty() : OptionalDouble.of(percent),
                grade < 0 ? OptionalInt.empty() : OptionalInt.of(grade),
                holes,
                lost,
                scale,
                Loss.NONE,
                cracked,
                OptionalDouble.empty(),
                Damage.NONE));
    }

    private static RepairAdvice rust(double percent, int grade) {
        return advice("hood", true, true, percent, grade, 0, Loss.NONE, Loss.NONE, false);
    }

    private static Loss loss(double largest, double all) {
        return new Loss(largest, all, false);
    }

    @ParameterizedTest
    @CsvSource({
        "0.009, 10, less than 0.01 %",
        "0.01, 10, 0.01 %",
        "0.999, 6, 1.00 %",
        "1, 6, 1.0 %",
        "12.34, 3, 12.3 %",
    })
    void theShareIsSaidWithAsManyDigitsAsItBears(double percent, int grade, String said) {
        assertThat(rust(percent, grade).reasons())
                .singleElement()
                .asString()
                .contains("rust over " + said + " of the zone", "grade " + grade);
    }

    /** Grade 10 and a clean look need nothing, grade 9 and rust of unknown share are to be refinished. */
    @Test
    void grade10NeedsNothingAndGrade9IsRefinished() {
        assertThat(rust(0.01, 10).need()).contains(RepairNeed.NONE);
        assertThat(rust(0.01, 10).reasons().get(0)).contains("touch up");
        assertThat(rust(0.02, 9).need()).contains(RepairNeed.REFINISH);
        assertThat(rust(0.02, 9).reasons().get(0)).doesNotContain("touch up");
        RepairAdvice unknown = rust(-1, -1);
        assertThat(unknown.need()).contains(RepairNeed.REFINISH);
        assertThat(unknown.reasons()).containsExactly("rust of unknown share");
    }

    @Test
    void aCleanLookIsToldFromNoLook() {
        RepairAdvice clean = advice("hood", true, false, 0, 10, 0, Loss.NONE, Loss.NONE, false);
        assertThat(clean.need()).contains(RepairNeed.NONE);
        assertThat(clean.reasons()).containsExactly("looked at, no rust found");
        RepairAdvice open = advice("hood", false, false, -1, -1, 0, Loss.NONE, Loss.NONE, false);
        assertThat(open.need()).isEmpty();
        assertThat(open.reasons()).containsExactly("not looked at for rust");
    }

    @Test
    void holesAreCountedAndSized() {
        assertThat(first(0, loss(20, 20))).contains("rotted through, 20 mm2");
        assertThat(first(0, new Loss(0, 0, true))).contains("rotted through, of unknown size");
        assertThat(first(1, loss(1234, 1234))).contains("1 hole, 1,234 mm2");
        assertThat(first(3, loss(20, 40))).contains("3 holes, the largest 20 mm2");
    }

    private static String first(int holes, Loss lost) {
        return advice("fender-left", true, true, -1, -1, holes, lost, Loss.NONE, false)
                .reasons()
                .get(0);
    }

    @Test
    void whatCarriesLoadSaysItsSizeOrAsksForIt() {
        assertThat(rail(loss(2600, 2600), false)).contains("scale, 2,600 mm2", "to be judged by a licensed person");
        assertThat(rail(new Loss(0, 0, true), false)).contains("size not known: measure it");
        assertThat(rail(Loss.NONE, true))
                .startsWith("a crack in a zone that carries load")
                .doesNotContain("measure it");
    }

    private static String rail(Loss scale, boolean cracked) {
        return advice("frame-rail-front-left", true, true, -1, -1, 0, Loss.NONE, scale, cracked)
                .reasons()
                .get(0);
    }

    @Test
    void ofEqualNeedsTheFirstOfTheTableStandsFirstAndEachReasonOnce() {
        RepairAdvice patch = advice("fender-left", true, true, -1, -1, 1, loss(20, 20), Loss.NONE, true);
        assertThat(patch.need()).contains(RepairNeed.PATCH);
        assertThat(patch.reasons().get(0)).contains("1 hole");
        assertThat(patch.reasons().get(1)).contains("a crack");
        RepairAdvice floor = advice("floor-front-left", true, true, -1, -1, 2, loss(600, 3000), Loss.NONE, false);
        assertThat(floor.reasons()).doesNotHaveDuplicates();
        assertThat(floor.reasons().get(0)).contains("2 holes, the largest 600 mm2");
    }

    @Test
    void whoWorksUnderneathIsWarnedOfTheJack() {
        assertThat(advice("floor-front-left", true, true, 2, 5, 0, Loss.NONE, Loss.NONE, false)
                        .cautions())
                .containsExactly(RepairRule.liftCaution(), RepairRule.paintCaution());
        assertThat(advice("floor-front-left", true, false, 0, 10, 0, Loss.NONE, Loss.NONE, false)
                        .cautions())
                .isEmpty();
        assertThat(rust(2, 5).cautions()).containsExactly(RepairRule.paintCaution());
    }

    @Test
    void theLargestPatchIsPartOfAll() {
        assertThat(loss(20, 20).found()).isTrue();
        assertThat(Loss.NONE.found()).isFalse();
        assertThat(new Loss(0, 0, true).found()).isTrue();
        assertThatThrownBy(() -> loss(21, 20)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> loss(-1, 20)).isInstanceOf(IllegalArgumentException.class);
    }
}
