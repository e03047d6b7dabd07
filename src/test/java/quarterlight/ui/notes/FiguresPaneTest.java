package quarterlight.ui.notes;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import quarterlight.language.Language;

/** What is typed as a figure of the odometer. */
class FiguresPaneTest {
    @Test
    void signsOfTheLanguageStandBetweenThousandsAndBeforeDecimals() throws Exception {
        assertThat(FiguresPane.plain(" 84,312 ")).isEqualTo("84312");
        assertThat(FiguresPane.plain("84312.5")).isEqualTo("84312.5");
        assertThat(FiguresPane.plain("84312,5")).isEqualTo("84312.5");
        assertThat(Language.GERMAN.during(() -> FiguresPane.plain("84.312"))).isEqualTo("84312");
        assertThat(Language.GERMAN.during(() -> FiguresPane.plain("84.312,5"))).isEqualTo("84312.5");
        assertThat(Language.GERMAN.during(() -> FiguresPane.plain("12.5"))).isEqualTo("12.5");
    }
}
