package quarterlight.matters.evidence;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import quarterlight.car.ZoneId;
import quarterlight.units.Worded;
import quarterlight.visit.statement.Condition;
import quarterlight.visit.statement.Facets;
import quarterlight.visit.statement.Origin;
import quarterlight.visit.statement.Statement;
import quarterlight.visit.statement.StatementDetails;

/** What a statement says where its zone's page is not at hand. */
class StatementWordsTest {
    @ParameterizedTest
    @CsvSource({
        "'', filler, '', lower third, Filler: lower third.",
        "'', filler, '', filler over all of the lower third, Filler over all of the lower third.",
        "'', filler, '', some filler down low, Some filler down low.",
        "'', worn, lower hose, soft, 'Lower hose, worn: soft.'",
        "'', leaking, pump, pump leaks, Pump leaks.",
        "does not belong, '', '', other hood, Does not belong: other hood.",
        "original, damaged, '', a dent, Damaged: a dent.",
        "'', rusted through, '', hole behind the wheel, Rusted through: hole behind the wheel.",
        "'', rusted through, '', hole just behind the wheel, Hole just behind the wheel.",
    })
    void aFewWordsAreSaidWithWhatWasStated(String origin, String condition, String part, String text, String said) {
        Statement statement = new Statement(
                new ZoneId("hood"),
                new Facets(Worded.find(Origin.class, origin), Worded.find(Condition.class, condition)),
                text,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                List.of(),
                StatementDetails.NONE.withPart(Optional.of(part).filter(name -> !name.isEmpty())));

        assertThat(StatementWords.of(statement)).isEqualTo(said);
    }
}
