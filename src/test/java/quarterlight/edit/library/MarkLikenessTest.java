package quarterlight.edit.library;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Random;
import org.junit.jupiter.api.Test;

class MarkLikenessTest {
    private static final String LETTERS = "0123AB?";

    @Test
    void aQuarterOfTheLettersMayDifferAndNoMore() {
        assertThat(MarkLikeness.isLike("3970010", "3970014")).isTrue();
        assertThat(MarkLikeness.isLike("3970010", "3970094")).isFalse();
        assertThat(MarkLikeness.isLike("39700105", "39700194")).isTrue();
        assertThat(MarkLikeness.isLike("AB", "AB"))
                .as("too short to be like anything")
                .isFalse();
        assertThat(MarkLikeness.bare("397-00/10 b")).isEqualTo("3970010B");
        assertThat(MarkLikeness.bareParts("block; casting; 39700?4; 39700?4"))
                .containsExactly("BLOCK", "CASTING", "39700?4");
    }

    /** The index is asked only for numbers of these lengths: none that is like may be shorter or longer. */
    @Test
    void noneThatIsLikeLiesOutsideTheLengthsAskedFor() {
        Random random = new Random(265);
        int like = 0;
        for (int i = 0; i < 20_000; i++) {
            String one = number(random);
            String other = random.nextBoolean() ? number(random) : one.substring(random.nextInt(one.length())) + "7";
            if (MarkLikeness.isLike(one, other)) {
                like++;
                assertThat(one.length())
                        .as("%s and %s", one, other)
                        .isBetween(MarkLikeness.least(other), MarkLikeness.most(other));
            }
            assertThat(MarkLikeness.apart(one, other)).isEqualTo(MarkLikeness.apart(other, one));
        }
        assertThat(like).isGreaterThan(1_000);
    }

    private static String number(Random random) {
        StringBuilder text = new StringBuilder();
        int letters = 1 + random.nextInt(14);
        for (int i = 0; i < letters; i++) {
            text.append(LETTERS.charAt(random.nextInt(LETTERS.length())));
        }
        return text.toString();
    }
}
