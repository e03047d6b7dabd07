package quarterlight.page.script;

import static org.assertj.core.api.Assertions.assertThat;

import com.openhtmltopdf.bidi.BidiSplitter;
import java.awt.Font;
import java.io.ByteArrayInputStream;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Against the charts of the Unicode Standard (blocks Arabic, Arabic Presentation Forms A and B) and its bidirectional algorithm. */
class ScriptTest {
    /** Letters and the forms in which they stand: seen initial, lam with alef final, meem isolated; and so on. */
    @ParameterizedTest
    @CsvSource({
        "\u0633\u0644\u0627\u0645, \uFEB3\uFEFC\uFEE1",
        "\u0628\u064A\u062A, \uFE91\uFEF4\uFE96",
        "\u062F\u0627\u0631, \uFEA9\uFE8D\uFEAD",
        "\u067E\u0698, \uFB58\uFB8B",
        "\u0628, \uFE8F",
        "left \u0628\u0628 door, left \uFE91\uFE90 door",
        "Blech, Blech",
    })
    void arabicLettersJoin(String typed, String set) {
        assertThat(ArabicForms.shaped(typed)).isEqualTo(set);
    }

    @Test
    void marksAboveLettersDoNotBreakTheJoin() {
        assertThat(ArabicForms.shaped("\u0628\u064E\u0628")).isEqualTo("\uFE91\u064E\uFE90");
    }

    @ParameterizedTest
    @CsvSource({
        "\u05D0\u05D1\u05D2, \u05D2\u05D1\u05D0",
        "\u05D0\u05D1 12 \u05D2, \u05D2 12 \u05D1\u05D0",
        "(\u05D0), (\u05D0)",
    })
    void hebrewIsTurnedRoundWithItsNumbersUpright(String typed, String set) {
        assertThat(new Direction().reorderRTLTextToLTR(typed)).isEqualTo(set);
    }

    @Test
    void aLineOfBothDirectionsIsSplitWhereItTurns() {
        Direction direction = new Direction();
        direction.setParagraph("left \u05D0\u05D1 12 \u05D2 door", BidiSplitter.LTR);
        assertThat(direction.countTextRuns()).isEqualTo(3);
        assertThat(direction.getVisualRun(1).getStart()).isEqualTo(5);
        assertThat(direction.getVisualRun(1).getLength()).isEqualTo(7);
        assertThat(direction.getVisualRun(1).getDirection()).isEqualTo(BidiSplitter.RTL);
        assertThat(Direction.isNeededFor("left door")).isFalse();
        assertThat(Direction.isNeededFor("\u0628")).isTrue();
    }

    @ParameterizedTest
    @CsvSource({
        "\u5DE6, HAN",
        "\u9A8F, HAN",
        "\u30D5, HAN",
        "\uFF0C, HAN",
        "\uC67C, HANGUL",
        "\u0628, ARABIC",
        "\uFE91, ARABIC",
        "\u05D0, HEBREW",
        "\uD83D\uDE97, EMOJI",
        "\u26A0, EMOJI",
    })
    void everyScriptHasItsTypeface(String typed, ScriptFont font) {
        assertThat(ScriptFont.of(typed.codePointAt(0))).isEqualTo(Optional.of(font));
    }

    @Test
    void latinGreekAndCyrillicNeedNone() {
        assertThat(ScriptFont.neededFor("Zo\u00EB \u0395\u03BB\u03BB\u03AC\u03B4\u03B1 \u0420\u0443\u0441\u044C"))
                .isEmpty();
    }

    @Test
    void aPartOfATypefaceHasWhatTheTextNeedsAndIsSmall() throws Exception {
        byte[] part = FontSubset.of(ScriptFont.HAN, "\u5DE6\u524D door");
        assertThat(part.length).isLessThan(20_000);
        Font font = Font.createFont(Font.TRUETYPE_FONT, new ByteArrayInputStream(part));
        assertThat(font.canDisplayUpTo("\u5DE6\u524D")).isEqualTo(-1);
        assertThat(font.canDisplay('\u53F3')).isFalse();
    }
}
