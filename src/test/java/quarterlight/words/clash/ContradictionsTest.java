package quarterlight.words.clash;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import quarterlight.car.ZoneId;
import quarterlight.car.body.BodyStyle;
import quarterlight.store.SampleVisit;
import quarterlight.visit.VisitRecord;
import quarterlight.words.Told;
import quarterlight.words.Utterance;

/** What is said against what is said; all sentences are our own. Rows against words stand in {@code ListenDoubtsTest}. */
class ContradictionsTest {
    private static List<Contradiction> of(String... said) {
        return Contradictions.of(
                Told.of(BodyStyle.COUPE, said),
                VisitRecord.empty(SampleVisit.bareFacts()),
                draft -> false,
                row -> false,
                sentence -> Told.ear(BodyStyle.COUPE).hear(sentence));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "The seller says it's never been painted.|The left quarter is full of filler.|finish",
                "The seller says it's all original paint.|Overspray in the left door jamb.|sign",
                "He tells me the truck has never been painted.|Hood, fourteen to sixteen mils.|finish",
                "Left rocker, no rust.|The left rocker is rusted through.|condition",
                "He says there's no rust anywhere.|The trunk floor is rusted through.|condition",
                "The seller says everything works.|The horn does not work.|function",
                "The horn works.|I tried the horn again and it does not work.|function",
                "Hood, four to five mils.|Hood reads twenty to twenty two mils.|thickness",
                "The grille is original.|The grille is a replacement.|origin",
                "He says it's never been hit.|The left quarter has been patched and welded.|condition",
            })
    void bothAreNamedWithTheirSeconds(String one, String other, String about) {
        List<Contradiction> found = of(one, "The dash is clean.", "The carpet is clean.", other);
        assertThat(found).isNotEmpty();
        Contradiction first = found.get(0);
        assertThat(first.about().word()).isEqualTo(about);
        assertThat(first.first().heard().map(Utterance::atSeconds).orElseThrow())
                .isLessThan(first.second().heard().map(Utterance::atSeconds).orElseThrow());
        assertThat(first.why()).endsWith(".");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "Left rocker, no rust.|The right rocker is rusted through.",
                "The left fender is sound.|The left fender has a small dent.",
                "The seller says it's never been painted.|The hood is dented.",
                "Hood, four to five mils.|Hood, five to seven mils.",
                "The horn works.|The wipers do not work.",
                "Is it true it's never been painted?|The left quarter is full of filler.",
                "These have never been painted if you're lucky.|The horn does not work.",
            })
    void whatCanBothHoldIsNot(String one, String other) {
        assertThat(of(one, "The dash is clean.", "The carpet is clean.", other)).isEmpty();
    }

    @Test
    void whatIsSaidInOneBreathIsRefined() {
        assertThat(of("Left rocker no rust. Well, the left rocker has surface rust."))
                .isEmpty();
    }

    @Test
    void zonesAreThoseThatBothAreAbout() {
        assertThat(of("He says there's no rust anywhere.", "The dash is clean.", "The trunk floor is rusted through.")
                        .get(0)
                        .zones())
                .containsExactly(new ZoneId("trunk-floor"));
    }

    @Test
    void oneSweepingWordIsToldThreeGroundsAtMost() {
        assertThat(of(
                        "He says there's no rust anywhere.",
                        "The trunk floor is rusted through.",
                        "The left rocker is rusted through.",
                        "The right rocker is rusted through.",
                        "The cowl is rusted through.",
                        "The roof is pitted."))
                .hasSize(3);
    }

    @Test
    void aSentenceThatGoesOnStaysTheSellers() {
        Contradiction found = of(
                        "The seller says it's original and everything works.",
                        "The dash is clean.",
                        "The horn does not work.")
                .get(0);
        assertThat(found.about()).isEqualTo(About.FUNCTION);
        assertThat(found.first().by()).isEqualTo("seller");
        assertThat(found.zones()).as("where a switch is says nothing").isEmpty();
    }
}
