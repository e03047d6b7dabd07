package quarterlight.ui.kit.said;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.EnumSet;
import java.util.HashSet;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import quarterlight.ui.kit.Texts;
import quarterlight.units.Worded;
import quarterlight.visit.statement.Condition;
import quarterlight.visit.statement.Facets;
import quarterlight.visit.statement.Origin;
import quarterlight.words.rule.SaidFacets;

/** Origins and conditions by their letters. */
class FacetBoardTest {
    private final FacetBoard board = new FacetBoard(Texts.load());

    @Test
    void everyOriginAndConditionButNotLookedAtHasALetterOfItsOwn() {
        Set<Worded> all = new HashSet<>(EnumSet.allOf(Origin.class));
        all.addAll(EnumSet.complementOf(EnumSet.of(Condition.NOT_LOOKED_AT)));
        assertThat(board.letters().values()).containsExactlyInAnyOrderElementsOf(all);
    }

    @Test
    void aSuggestionChoosesNothing() {
        board.suggest(new SaidFacets(Set.of(Origin.ORIGINAL), Set.of(Condition.FILLER)));
        assertThat(board.chosen()).isEmpty();
    }

    @Test
    void oneOriginAndOneConditionAreChosenAndLetGoOf() {
        assertThat(board.letter('r')).isTrue();
        assertThat(board.letter('D')).isTrue();
        assertThat(board.chosen()).contains(new Facets(Optional.of(Origin.REPLACED), Optional.of(Condition.DAMAGED)));
        board.letter('w');
        assertThat(board.chosen()).contains(new Facets(Optional.of(Origin.REPLACED), Optional.of(Condition.WORN)));
        board.letter('r');
        board.letter('w');
        assertThat(board.chosen()).isEmpty();
        assertThat(board.letter('q')).isFalse();
    }
}
