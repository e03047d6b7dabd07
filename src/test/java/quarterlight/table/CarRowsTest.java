package quarterlight.table;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import quarterlight.visit.row.RecordKind;

/** What rows about the car must keep to: trials, statements, features and marks. */
class CarRowsTest {
    @TempDir
    private Path folder;

    private String refusal(RowKind<?> kind, String text) {
        return new FewRows(folder).refusal(kind, text);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            textBlock =
                    """
            heater,fine,,| column result | none of works, works with a fault, bypassed, does not, not tried, not fitted
            heater,works,,psi| column value | without a value
            ,works,,| column item | the cell is empty
            heater,works,hot,| column value | not a number
            """)
    void aBadTrialIsRefusedAtItsCell(String row, String column, String reason) throws Exception {
        assertThat(refusal(RowKind.of(RecordKind.TRIALS), "item,result,value,unit\n" + row + "\n"))
                .contains(column)
                .contains(reason);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            textBlock =
                    """
            roof,good,x,| column kind | none of as built, original, replaced
            roof,sound,,| column text | the cell is empty
            roof,sound,x,severe| column severity | none of note, minor, major, grave
            """)
    void aBadStatementIsRefusedAtItsCell(String row, String column, String reason) throws Exception {
        assertThat(refusal(RowKind.of(RecordKind.STATEMENTS), "zone,kind,text,severity\n" + row + "\n"))
                .contains(column)
                .contains(reason);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            textBlock =
                    """
            lamps,1971,1970| column to | lies before
            lamps,1971-13,1972| column from | not a date
            lamps,12/04/1971,1972| column from | 1971-04-12
            """)
    void aBadFeatureIsRefusedAtItsCell(String row, String column, String reason) throws Exception {
        assertThat(refusal(RowKind.of(RecordKind.FEATURES), "feature,from,to\n" + row + "\n"))
                .contains(column)
                .contains(reason);
    }

    @Test
    void aBadMarkIsRefusedAtItsCell() throws Exception {
        assertThat(refusal(RowKind.of(RecordKind.MARKS), "part,kind,text,stage\nblock,forging,A247,\n"))
                .contains("column kind")
                .contains("vin, plate");
        assertThat(refusal(RowKind.of(RecordKind.MARKS), "part,kind,text,stage\nblock,casting,A247,forged\n"))
                .contains("column stage");
    }
}
