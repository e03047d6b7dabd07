package quarterlight.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

class WholeSentencesTest {
    private static final String AXLE =
            "Rear axle, 294K9: unusually early. Even the nearest reading lies 16 months before"
                    + " the build window, more than the usual 180 days.";

    @Test
    void whatHasRoomStandsAsItIs() {
        assertThat(WholeSentences.of(AXLE, AXLE.length())).isEqualTo(AXLE);
        assertThat(WholeSentences.of("  open shade, later work lamp ", 40)).isEqualTo("open shade, later work lamp");
    }

    @Test
    void elseAsManyWholeSentencesAsHaveRoom() {
        assertThat(WholeSentences.of(AXLE, AXLE.length() - 1))
                .isEqualTo("Rear axle, 294K9: unusually early. " + WholeSentences.more());
        assertThat(WholeSentences.of("One. Two. Three.", 9)).isEqualTo("One. Two. " + WholeSentences.more());
        assertThat(WholeSentences.of("One. Two. Three.", 8)).isEqualTo("One. " + WholeSentences.more());
    }

    @Test
    void aSentenceLittleTooLongIsWholeAndALongerOneEndsWithAClause() {
        String text = "Thick new coating over scale; what is under it was not established";
        assertThat(WholeSentences.of(text, 44)).isEqualTo(text);
        assertThat(WholeSentences.of(text, 43)).isEqualTo("Thick new coating over scale. " + WholeSentences.more());
        assertThat(WholeSentences.of(text + ". And more.", 45)).isEqualTo(text + ". " + WholeSentences.more());
    }

    @Test
    void whatCannotBeMadeShorterIsOnlySaidToBeThere() {
        assertThat(WholeSentences.of("W".repeat(400), 200)).isEqualTo(WholeSentences.all());
        assertThat(WholeSentences.of("no; " + "and ".repeat(100), 60)).isEqualTo(WholeSentences.all());
    }

    @Test
    void anAbbreviationDoesNotEndASentence() {
        assertThat(WholeSentences.of("Tag No. 12 is bent. The rest of it was not read at all by anyone.", 30))
                .isEqualTo("Tag No. 12 is bent. " + WholeSentences.more());
        assertThat(WholeSentences.of("Tag No. 12 is bent. The rest of it was not read at all by anyone.", 12))
                .isEqualTo(WholeSentences.all());
    }

    @Test
    void sentencesOfOtherScriptsAreWholeToo() {
        assertThat(WholeSentences.of(
                        "\u5857\u819c\u304c\u539a\u3044\u3002\u88dc\u4fee\u306e\u8de1\u304c\u3042\u308b\u3002", 8))
                .isEqualTo("\u5857\u819c\u304c\u539a\u3044\u3002 " + WholeSentences.more());
    }

    @Test
    void aListNamesWhatHasRoomAndCountsTheRest() {
        List<String> names = List.of("Hood", "Roof panel", "Door, front, left");
        assertThat(WholeSentences.list(names, 35)).isEqualTo("Hood; Roof panel; Door, front, left");
        assertThat(WholeSentences.list(names, 34)).isEqualTo("Hood; Roof panel; and 1 more");
        assertThat(WholeSentences.list(names, 20)).isEqualTo("Hood; and 2 more");
        assertThat(WholeSentences.list(names, 2)).isEqualTo("Hood; and 2 more");
    }
}
