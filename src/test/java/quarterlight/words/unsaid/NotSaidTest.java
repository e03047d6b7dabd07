package quarterlight.words.unsaid;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import quarterlight.car.ZoneGroup;
import quarterlight.car.ZoneId;
import quarterlight.car.body.BodyStyle;
import quarterlight.words.Told;
import quarterlight.words.Utterance;

/** What a walk leaves unsaid; all sentences are our own. */
class NotSaidTest {
    private static final BodyStyle COUPE = BodyStyle.COUPE;

    private static List<Unsaid> of(Unsaid.Kind kind, String... said) {
        return NotSaid.of(Told.of(COUPE, said), Told.zones(COUPE)).stream()
                .filter(one -> one.kind() == kind)
                .toList();
    }

    private static Set<String> zones(List<Unsaid> all) {
        return all.stream()
                .flatMap(one -> one.zones().stream())
                .map(ZoneId::value)
                .collect(Collectors.toSet());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "Left rear wheel arch, I'll come back to that.|wheel-lip-rear-left",
                "Left rear wheel arch has something going on. I'll get back to it.|wheel-lip-rear-left",
                "We'll come back to the hood once the sun is off it.|hood",
                "I want to come back to that right rocker with a better light.|rocker-right",
                "The trunk floor, remind me, I'll look at that later.|trunk-floor",
                "Driver's door, hold that thought.|door-front-left",
                "Let me come back to the cowl.|cowl",
            })
    void aPromiseWithoutASequelIsTold(String said, String zone) {
        List<Unsaid> promises = of(Unsaid.Kind.PROMISE, said, "The grille is sound.");
        assertThat(zones(promises)).contains(zone);
        assertThat(promises).hasSize(1);
        assertThat(promises.get(0).heard().map(Utterance::source)).contains(Told.SOURCE);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "Left rear wheel arch, I'll come back to that.|The left rear wheel arch is rusted through.",
                "We'll come back to the hood.|Hood, four to five mils.",
                "I want to come back to that left rocker.|I did not look at the left rocker.",
                "I'll get underneath later.|Okay, underneath now. The left frame rail is sound.",
            })
    void aPromiseThatIsKeptIsNot(String said, String later) {
        assertThat(of(Unsaid.Kind.PROMISE, said, "The grille is sound.", later)).isEmpty();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "You'll want to come back to that left rear wheel arch with a magnet.",
                ">> I'll come back to that hood with a rag for you.",
                "He says he'll come back to that rocker.",
                "The sound comes back to the cowl.",
            })
    void whatOthersMeanToDoIsNoPromise(String said) {
        assertThat(of(Unsaid.Kind.PROMISE, said, "The grille is sound.")).isEmpty();
    }

    @Test
    void whatASellerSaysKeepsNoPromise() {
        assertThat(zones(of(
                        Unsaid.Kind.PROMISE,
                        "We'll come back to the hood.",
                        "The grille is sound.",
                        "The seller says the hood was repainted.")))
                .containsExactly("hood");
    }

    @Test
    void aPartOfTheWalkThatWasPromisedIsMissed() {
        List<Unsaid> promises = of(Unsaid.Kind.PROMISE, "I'll get underneath later.", "The grille is sound.");
        assertThat(promises).hasSize(1);
        assertThat(promises.get(0).zones()).isEmpty();
    }

    @Test
    void onlyOneOfAPairWasSpokenOf() {
        List<Unsaid> sides = of(Unsaid.Kind.OTHER_SIDE, "Left rocker is rusted through.", "The grille is sound.");
        assertThat(zones(sides)).containsExactly("rocker-right");
        assertThat(sides.get(0).heard().map(Utterance::atSeconds)).contains(0.0);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "Left rocker is rusted through.|The right rocker is sound.",
                "Left rocker is rusted through.|The other side is solid.",
                "Both rockers, no rust.|The grille is sound.",
                "The rocker is rusted through.|The grille is sound.",
                "The seller says the left rocker was replaced.|The grille is sound.",
            })
    void noSideIsMissedWhereBothOrNoneWereNamed(String said, String later) {
        assertThat(zones(of(Unsaid.Kind.OTHER_SIDE, said, later))).doesNotContain("rocker-left", "rocker-right");
    }

    @Test
    void zonesNeverSpokenOfStandByTheirGroup() {
        List<Unsaid> never = of(
                Unsaid.Kind.NEVER_SPOKEN_OF,
                "The hood is dented.",
                "All the glass is original.",
                "Left rocker is fine.");
        assertThat(never).allMatch(one -> one.heard().isEmpty());
        assertThat(never)
                .filteredOn(one -> one.group().equals(java.util.Optional.of(ZoneGroup.GLASS)))
                .isEmpty();
        assertThat(never)
                .filteredOn(one -> one.group().equals(java.util.Optional.of(ZoneGroup.WHEELS)))
                .singleElement()
                .matches(Unsaid::wholeGroup);
        assertThat(never)
                .filteredOn(one -> one.group().equals(java.util.Optional.of(ZoneGroup.OUTER)))
                .singleElement()
                .matches(one -> !one.wholeGroup()
                        && one.zones().contains(new ZoneId("roof"))
                        && !one.zones().contains(new ZoneId("hood")));
    }

    @Test
    void generalTalkAndPromisesSpeakOfNoZone() {
        assertThat(zones(of(
                        Unsaid.Kind.NEVER_SPOKEN_OF,
                        "We'll come back to the roof.",
                        "I'll be honest, the cowl is where they all go.",
                        "The hood is dented.")))
                .contains("roof", "cowl")
                .doesNotContain("hood");
    }

    @Test
    void withoutWordsNothingIsMissed() {
        assertThat(NotSaid.of(Told.of(COUPE), Told.zones(COUPE))).isEmpty();
    }
}
