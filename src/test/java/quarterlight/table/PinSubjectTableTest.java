package quarterlight.table;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import quarterlight.car.ZoneId;
import quarterlight.visit.PinSubjects;
import quarterlight.visit.VisitParts;
import quarterlight.visit.VisitRecord;
import quarterlight.visit.photo.PhotoId;
import quarterlight.visit.pin.Pin;

class PinSubjectTableTest {
    private final PinSubjects words = PinSubjectTable.load();

    private static VisitRecord showing(String... shows) {
        return new VisitParts(VisitFixture.facts())
                .pins(VisitParts.rows(Stream.of(shows)
                        .map(word -> new Pin(
                                new PhotoId(1),
                                new ZoneId("hood"),
                                OptionalDouble.empty(),
                                Optional.empty(),
                                Optional.of(word),
                                Optional.empty(),
                                Optional.empty()))
                        .toList()))
                .record();
    }

    @Test
    void theListHoldsTheTradesWordsOnceEach() {
        assertThat(words.usual())
                .contains(
                        "overview",
                        "panel gap",
                        "weld",
                        "rust",
                        "paint edge",
                        "overspray",
                        "stamp",
                        "label",
                        "glass mark",
                        "tire mark",
                        "damage",
                        "wear",
                        "leak")
                .doesNotHaveDuplicates()
                .allSatisfy(word -> assertThat(word)
                        .isEqualTo(word.toLowerCase(Locale.ROOT).strip())
                        .isNotBlank());
    }

    @Test
    void wordsUsedInTheVisitFollowTheMostFrequentFirst() {
        VisitRecord visit = showing("wasp nest", "Rust", " mouse nest", "Mouse nest", "rust ", "");
        assertThat(words.offered(visit)).startsWith("overview");
        assertThat(words.offered(visit)
                        .subList(words.usual().size(), words.offered(visit).size()))
                .isEqualTo(List.of("mouse nest", "wasp nest"));
    }

    @Test
    void whatIsTypedFindsWordsByTheirBeginnings() {
        VisitRecord visit = showing("mouse nest");
        assertThat(words.offered(visit, "Mag")).containsExactly("magnet test");
        assertThat(words.offered(visit, "ga")).startsWith("gauge on panel").contains("panel gap");
        assertThat(words.offered(visit, "nest")).containsExactly("mouse nest");
        assertThat(words.offered(visit, "")).isEqualTo(words.offered(visit));
        assertThat(words.offered(visit, "zzz")).isEmpty();
    }
}
