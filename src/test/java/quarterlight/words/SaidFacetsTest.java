package quarterlight.words;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import quarterlight.car.body.Body;
import quarterlight.car.body.BodyStyle;
import quarterlight.car.body.DriveSide;
import quarterlight.table.ZoneTable;
import quarterlight.table.list.LexiconTable;
import quarterlight.units.Worded;
import quarterlight.words.lexicon.Lexicon;
import quarterlight.words.place.CarZones;
import quarterlight.words.rule.SaidFacets;
import quarterlight.words.weigh.Weights;

/** What written sentences offer, and what they must not. */
class SaidFacetsTest {
    private static final Lexicon LEXICON = LexiconTable.load();
    private static final Weights WEIGHTS = LexiconTable.weights();
    private static final CarZones CAR = new CarZones(ZoneTable.load(), Body.usual(BodyStyle.COUPE), DriveSide.LEFT);

    private static SaidFacets said(String sentence) {
        return SaidFacets.of(sentence, CAR, LEXICON, WEIGHTS);
    }

    @ParameterizedTest
    @CsvSource({
        "Filler over the lower third, '', filler",
        "surface rust along the lip, '', surface rust",
        "rusted through at the drain, '', rusted through",
        "upper hose leaking, '', leaking",
        "carpet missing, '', missing",
        "brake line cracked, '', damaged",
        "'replaced with a new one, already dented', replaced, damaged",
        "'original paint, worn thin', original, worn",
        "not original, replaced, ''",
        "no rust at all, '', no rust",
        "could not see behind it, '', not looked at",
        "'no dents, but filler at the rear edge', '', sound/filler",
        "'not rusted through, only surface rust', '', surface rust",
    })
    void wordsOfTheTradeAreOffered(String sentence, String origin, String conditions) {
        SaidFacets said = said(sentence);
        assertThat(said.origins().stream().map(Worded::word)).containsExactlyInAnyOrder(list(origin));
        assertThat(said.conditions().stream().map(Worded::word)).containsExactlyInAnyOrder(list(conditions));
    }

    @ParameterizedTest
    @CsvSource({
        "no sign of work",
        "No sign of filler or welding",
        "no sign of repair",
        "No filler anywhere",
        "never been repaired",
        "has not been repainted",
        "hasn't been welded",
        "never painted",
        "without any filler or patches",
        "gap wider at the front",
    })
    void whatIsDeniedIsNeitherOfferedNorMadeOriginal(String sentence) {
        assertThat(said(sentence)).isEqualTo(SaidFacets.NONE);
    }

    @ParameterizedTest
    @CsvSource({"' '", "''", "/", "1/4 in"})
    void wordsThatSayNothingOfferNothing(String sentence) {
        assertThat(said(sentence)).isEqualTo(SaidFacets.NONE);
    }

    private static String[] list(String words) {
        return words.isEmpty() ? new String[0] : words.split("/");
    }
}
