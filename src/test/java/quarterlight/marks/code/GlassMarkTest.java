package quarterlight.marks.code;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Marks of panes by FMVSS 205 with ANSI Z26.1 and by UN Regulation No. 43, and no farther. */
class GlassMarkTest {
    @ParameterizedTest(name = "{0} says {1}")
    @CsvSource({
        "AS1 M 20, 'AS1: fit for a windshield, at least 70 %'",
        "AS-2, 'AS2: at least 70 %'",
        "as 3 dot 18, 'AS3: less than 70 %'",
        "AS14, 'AS14: an item of ANSI Z26.1'",
        "E2 43R-001234, approved in France",
        "E 11 43R 000123, approved in the United Kingdom",
        "E7 43R-1, approved in country 7",
        "II E1 43R-001234, laminated glass of a windshield",
        "E4 43R-001 I, toughened glass of a windshield",
        "III E5, treated laminated",
        "IV E9 43R-12, glass with plastic",
        "E14 43R-00012 V, less than 70 %",
        "E3 43R-00012 V-VI, double glazing"
    })
    void whatIsPublishedIsSaid(String mark, String said) {
        assertThat(String.join("; ", GlassMark.read(mark))).contains(said);
    }

    @Test
    void dotsAndDigitsOfMakersAndLoneNumeralsAreKeptAsRead() {
        assertThat(GlassMark.read("CLAREMERE ...7..")).isEmpty();
        assertThat(GlassMark.read("SERIES II")).isEmpty();
        assertThat(GlassMark.read("E1 43R-00123"))
                .isEqualTo(List.of("E1: approved in Germany", "43R-00123: approval under UN Regulation No. 43"));
    }
}
