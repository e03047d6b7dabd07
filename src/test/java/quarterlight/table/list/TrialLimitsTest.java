package quarterlight.table.list;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import quarterlight.coverage.MeasureLimit;
import quarterlight.coverage.TrialItem;
import quarterlight.table.TableUnreadable;

/** The limits of measures as the list says them: docs/methods/coverage.md. */
class TrialLimitsTest {
    @TempDir
    Path settings;

    private static MeasureLimit shipped(String item) {
        return TrialTable.load().items().stream()
                .filter(one -> one.item().equals(item))
                .findFirst()
                .flatMap(TrialItem::limit)
                .orElseThrow();
    }

    @ParameterizedTest
    @CsvSource({
        "'Tread, left front', 1.5, false",
        "'Tread, left front', 1.6, true",
        "Battery at rest, 12.3, false",
        "Battery at rest, 12.4, true",
        "Charging, 13.4, false",
        "Charging, 13.5, true",
        "Charging, 14.8, true",
        "Charging, 14.9, false",
        "'Compression, lowest cylinder', 99, false",
        "'Compression, lowest cylinder', 100, true",
    })
    void aValueAtTheLimitKeepsItAndOneBeyondDoesNot(String item, String value, boolean kept) {
        assertThat(shipped(item).isKept(new BigDecimal(value))).isEqualTo(kept);
        assertThat(shipped(item).source()).isNotBlank();
    }

    private TrialItem own(String row) throws Exception {
        Files.writeString(
                settings.resolve("trials.csv"), "group,item,unit,zone,running,answer,least,most,source\n" + row + "\n");
        return TrialTable.load(settings).items().get(0);
    }

    @Test
    void ownLimitsAreReadAndAnEarlierListHasNone() throws Exception {
        assertThat(own("brakes,Rotor,mm,,no,measure,18.5,,stamped on the rotor")
                        .limit()
                        .orElseThrow()
                        .source())
                .isEqualTo("stamped on the rotor");
        Files.writeString(settings.resolve("trials.csv"), "group,item,unit,zone,running\nbody,Horn,,dash,no\n");
        assertThat(TrialTable.load(settings).items().get(0).limit()).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({
        "'brakes,Rotor,mm,,no,measure,thin,,', thin",
        "'brakes,Rotor,mm,,no,measure,5,4,', below",
        "'brakes,Rotor,,,no,measure,5,,', unit",
    })
    void aLimitThatCannotBeIsRefused(String row, String named) {
        assertThatThrownBy(() -> own(row))
                .isInstanceOf(TableUnreadable.class)
                .hasMessageContaining("line 2")
                .hasMessageContaining(named);
    }
}
