package quarterlight.page.script;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LineBreaksTest {
    private static List<String> parts(String text) {
        LineBreaks breaks = new LineBreaks();
        breaks.setText(text);
        List<String> parts = new ArrayList<>();
        int from = 0;
        for (int at = breaks.next(); at >= 0; at = breaks.next()) {
            if (at > from) {
                parts.add(text.substring(from, at));
            }
            from = at;
        }
        return parts;
    }

    @ParameterizedTest
    @CsvSource({
        "'area 244\u2009mm\u00b2 wide', 'area |244\u2009mm\u00b2 |wide'",
        "'\u00b1\u200991 mm\u00b2, so', '\u00b1\u200991 mm\u00b2, |so'",
        "'from \u22120.3 to 0.4', 'from |\u22120.3 |to |0.4'",
        "'grade 8-S; Ri 2', 'grade |8-S; |Ri |2'",
        "'on 2026-04-18 at', 'on |2026-04-18 |at'",
        "'5 mil thick', '5 mil |thick'",
        "'5 miles away', '5 |miles |away'",
        "'well-kept car', 'well-|kept |car'"
    })
    void endsNoLineBetweenWhatBelongsTogether(String text, String expected) {
        assertThat(String.join("|", parts(text))).isEqualTo(expected);
    }

    @Test
    void anEmptyTextHasNoPlace() {
        assertThat(parts("")).isEmpty();
    }
}
