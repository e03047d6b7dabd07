package quarterlight.language;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.MissingResourceException;
import java.util.concurrent.ExecutorService;
import org.junit.jupiter.api.Test;
import quarterlight.task.Threads;
import quarterlight.units.Days;
import quarterlight.units.Numerals;

/** Sentences are said in the language in hand, on whatever thread; numbers and dates are written as in it. */
class SentencesTest {
    private static final LocalDate DAY = LocalDate.of(2026, 4, 18);

    @Test
    void englishIsSpokenUnlessSomethingRunsInAnotherLanguage() throws Exception {
        assertThat(Sentences.and(List.of("a", "b", "c"))).isEqualTo("a, b and c");
        assertThat(Language.GERMAN.during(() -> Sentences.and(List.of("a", "b", "c"))))
                .isEqualTo("a, b und c");
        assertThat(Language.MARKED.during(() -> Sentences.say("common.or"))).isEqualTo("\u27e6or\u27e7");
        assertThat(Sentences.or(List.of("a"))).isEqualTo("a");
        assertThat(Language.inHand()).isEqualTo(Language.ENGLISH);
    }

    @Test
    void aLanguageEndsWithItsWorkEvenWhenThatFails() {
        assertThatThrownBy(() -> Language.GERMAN.during(() -> {
                    throw new IllegalStateException("broken off");
                }))
                .hasMessage("broken off");
        assertThat(Language.inHand()).isEqualTo(Language.ENGLISH);
    }

    @Test
    void workOnOtherThreadsSpeaksTheLanguageOfWhoeverGaveIt() throws Exception {
        ExecutorService threads = Threads.pool("speaking", 1);
        try {
            assertThat(threads.submit(Language::inHand).get()).isEqualTo(Language.ENGLISH);
            assertThat(Language.GERMAN.during(
                            () -> threads.submit(Language::inHand).get()))
                    .isEqualTo(Language.GERMAN);
            assertThat(threads.submit(Language::inHand).get()).isEqualTo(Language.ENGLISH);
        } finally {
            threads.shutdownNow();
        }
    }

    @Test
    void numbersAndDatesAreWrittenAsInTheLanguage() throws Exception {
        assertThat(List.of(Numerals.fixed(-12.46, 1), Days.day(DAY), Days.month(DAY), Days.span(DAY, DAY.plusDays(2))))
                .containsExactly("\u221212.5", "Apr 18, 2026", "Apr 2026", "Apr 18, 2026 to Apr 20, 2026");
        List<String> german = new ArrayList<>();
        Language.GERMAN.during(() -> german.addAll(
                List.of(Numerals.fixed(-12.46, 1), Days.day(DAY), Days.month(DAY), Days.span(DAY, DAY.plusDays(2)))));
        assertThat(german)
                .containsExactly("\u221212,5", "18. April 2026", "April 2026", "18. April 2026 bis 20. April 2026");
    }

    @Test
    void aKeyThatNoBundleHasIsAFaultAndATableSpeaksForItself() throws Exception {
        assertThatThrownBy(() -> Sentences.say("common.no-such")).isInstanceOf(MissingResourceException.class);
        assertThatThrownBy(() -> Sentences.say("nowhere")).isInstanceOf(MissingResourceException.class);
        assertThat(Sentences.sayOr("nowhere.at-all", "hood")).isEqualTo("hood");
        assertThat(Language.GERMAN.during(() -> Sentences.sayOr("common.and", "plus")))
                .isEqualTo("und");
        assertThat(Language.GERMAN.during(() -> Sentences.sayOr("common.no-such", "plus")))
                .isEqualTo("plus");
    }
}
