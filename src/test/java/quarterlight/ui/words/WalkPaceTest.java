package quarterlight.ui.words;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import javax.swing.SwingUtilities;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import quarterlight.car.Zone;
import quarterlight.car.ZoneFinder;
import quarterlight.car.ZoneId;
import quarterlight.edit.fact.FactEdits;
import quarterlight.table.ZoneTable;
import quarterlight.ui.SpokenSample;
import quarterlight.ui.kit.OpenedVisit;
import quarterlight.words.HandTaken;

/**
 * Takes down narrated walks by the keys of the station, as one does who knows what a person took down of them: right drafts are kept, those at another place are set
 * right, all others are dropped. Counts keys, never time.
 */
@Timeout(300)
class WalkPaceTest {
    private static final double MOST_KEYS_A_ROW = 1.5;
    private static final int ROUNDS = 2000;
    /** The others with {@code -Dquarterlight.walks=all}. */
    private static final Set<String> ALWAYS = Set.of("larkspur-coupe", "burdock-pickup");

    @TempDir
    Path folder;

    /**
     * What was counted.
     *
     * @param pages how often several were kept together
     * @param decisions how often a key had to be thought of: once for each draft handled alone, and for each screen of sure ones
     */
    record Pace(String walk, double minutes, int byHand, int kept, int dropped, int keys, int pages, int decisions) {}

    @ParameterizedTest
    @ValueSource(strings = {"larkspur-coupe", "sorrel-sedan", "teasel-wagon", "burdock-pickup"})
    void aWalkIsTakenDownWithFewKeysARow(String walk) throws Exception {
        assumeTrue(ALWAYS.contains(walk) || "all".equals(System.getProperty("quarterlight.walks")), "on demand");
        Pace pace = pace(walk, folder);
        assertThat(pace.kept()).isGreaterThan(20);
        assertThat((double) pace.keys() / pace.kept()).as(pace.toString()).isLessThanOrEqualTo(MOST_KEYS_A_ROW);
    }

    static Pace pace(String walk, Path folder) throws Exception {
        List<String> parts = walk.equals("teasel-wagon")
                ? IntStream.rangeClosed(1, 8).mapToObj(i -> walk + "-" + i).toList()
                : List.of(walk);
        HandTaken hand = HandTaken.of(walk, parts);
        OpenedVisit opened = OpenedVisit.coupe(folder, store -> {
            new FactEdits(ZoneTable.load()).set(store, facts(parts.get(0)));
            int number = 9;
            for (String part : parts) {
                SpokenSample.add(store, number++, part + ".txt", words(part));
            }
        });
        try (WordsKeys keys = new WordsKeys(opened)) {
            return new Robot(keys, hand).pace(walk);
        }
    }

    private static Map<String, String> facts(String part) throws Exception {
        return FactEdits.assignments(text(part + ".facts.txt")
                .lines()
                .filter(line -> line.matches("(style|construction|drive|engine|year|built)=.*"))
                .toList());
    }

    private static String words(String part) throws IOException {
        for (String ending : List.of(".vtt", ".srt", ".txt")) {
            if (HandTaken.class.getResource("walks/" + part + ending) != null) {
                return text(part + ending);
            }
        }
        throw new IOException("no words of " + part);
    }

    private static String text(String file) throws IOException {
        try (InputStream in = HandTaken.class.getResourceAsStream("walks/" + file)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        }
    }

    /** One who confirms. */
    private static final class Robot {
        private final WordsKeys keys;
        private final HandTaken hand;
        private int dropped;
        private int pages;
        private int decisions;

        Robot(WordsKeys keys, HandTaken hand) throws Exception {
            this.keys = keys;
            this.hand = hand;
            hand.judge(rows().stream().map(DraftRow::read).toList());
        }

        private List<DraftRow> rows() throws Exception {
            return OpenedVisit.asked(() -> keys.screen.model().shown());
        }

        Pace pace(String walk) throws Exception {
            for (int round = 0; round < ROUNDS && keys.table().getRowCount() > 0; round++) {
                if (!pageOfSure()) {
                    one();
                }
            }
            assertThat(keys.table().getRowCount()).isZero();
            int kept = (int) (long) OpenedVisit.asked(() -> keys.screen.model().count(DraftRow.State.KEPT));
            int changed = (int) keys.opened.visit().visit().dropped().stream()
                    .filter(row -> row.value().instead().isPresent())
                    .count();
            return new Pace(
                    walk, hand.seconds() / 60, hand.rows(), kept + changed, dropped, keys.keys(), pages, decisions);
        }

        /** Where so many sure drafts on the screen are right that it saves keys, the others are taken out by a click each and the rest is kept together. */
        private boolean pageOfSure() throws Exception {
            int before = keys.keys();
            List<Integer> old = OpenedVisit.asked(() -> List.copyOf(selected()));
            keys.press("shift ENTER");
            List<DraftRow> chosen = OpenedVisit.asked(() -> selected().stream()
                    .map(i -> keys.screen.model().shown().get(i))
                    .toList());
            List<DraftRow> wrong = chosen.stream()
                    .filter(row -> !row.isSure() || answer(row) != HandTaken.Answer.KEEP)
                    .toList();
            if (chosen.size() - wrong.size() > 2 + wrong.size()) {
                List<DraftRow> shown = rows();
                SwingUtilities.invokeAndWait(() -> wrong.forEach(
                        row -> keys.table().removeRowSelectionInterval(shown.indexOf(row), shown.indexOf(row))));
                keys.count(wrong.size());
                pages++;
                decisions++;
                keys.press("ENTER");
                return true;
            }
            // one who looks sees that without the key
            keys.count(before - keys.keys());
            SwingUtilities.invokeAndWait(() -> {
                if (!old.isEmpty() && old.get(0) < keys.table().getRowCount()) {
                    keys.table().setRowSelectionInterval(old.get(0), old.get(0));
                }
            });
            keys.settle();
            return false;
        }

        private List<Integer> selected() {
            return IntStream.of(keys.table().getSelectedRows()).boxed().toList();
        }

        private HandTaken.Answer answer(DraftRow row) {
            return hand.of(row.read()).answer();
        }

        private void one() throws Exception {
            decisions++;
            DraftRow row = OpenedVisit.asked(() -> keys.screen.model().inHand().orElseThrow());
            HandTaken.Judged judged = hand.of(row.read());
            boolean placed =
                    judged.answer() == HandTaken.Answer.KEEP && row.lacks().isEmpty();
            if (judged.answer() == HandTaken.Answer.OTHER_ZONE
                    && !judged.zones().isEmpty()) {
                place(row, judged.zones());
                placed = OpenedVisit.asked(() -> keys.screen
                        .model()
                        .inHand()
                        .filter(now -> now.lacks().isEmpty() && now.isChanged())
                        .isPresent());
            }
            if (placed) {
                keys.press("ENTER");
            } else {
                dropped++;
                keys.press("DELETE");
            }
        }

        /** By the key for the other side or end if that is it, else by letters for one zone; several are dropped, to be typed by hand. */
        private void place(DraftRow row, List<ZoneId> wanted) throws Exception {
            List<ZoneId> known = keys.opened.visit().zones();
            if (DraftChoices.otherSide(row.read(), known).zones().equals(wanted)) {
                keys.type('1');
            } else if (DraftChoices.otherEnd(row.read(), known).zones().equals(wanted)) {
                keys.type('2');
            } else if (wanted.size() == 1) {
                keys.zone(letters(wanted.get(0)));
            }
        }

        /** The fewest letters that find a zone: initials as in {@code dfl}, or the beginning of its name, with the initials of what is left. */
        private String letters(ZoneId wanted) {
            List<String> tries = new ArrayList<>();
            for (String name :
                    List.of(wanted.value(), keys.opened.visit().label(wanted).toLowerCase(Locale.ROOT))) {
                String[] words = name.split("[^a-z]+");
                for (int whole = 0; whole <= words.length; whole++) {
                    for (int n = 1; whole < words.length && n <= words[whole].length(); n++) {
                        StringBuilder rest = new StringBuilder();
                        for (int i = 0; i < words.length; i++) {
                            rest.append(i == whole ? "" : words[i].substring(0, Math.min(1, words[i].length())));
                        }
                        tries.add(words[whole].substring(0, n) + (rest.isEmpty() ? "" : " " + rest));
                        tries.add(words[whole].substring(0, n));
                    }
                }
                tries.add(Stream.of(words)
                        .filter(word -> !word.isEmpty())
                        .map(word -> word.substring(0, 1))
                        .collect(Collectors.joining()));
            }
            return tries.stream()
                    .filter(typed -> !typed.isEmpty() && Character.isLetter(typed.charAt(0)))
                    .sorted(Comparator.comparingInt(String::length))
                    .filter(typed -> finds(typed, wanted))
                    .findFirst()
                    .orElse(wanted.value());
        }

        private boolean finds(String typed, ZoneId wanted) {
            var car = keys.opened.visit().visit().facts().car();
            List<Zone> all = keys.opened.parts().catalog().zonesOf(car.body());
            List<Zone> found = ZoneFinder.matches(typed, car.drive(), all);
            return !found.isEmpty() && found.get(0).id().equals(wanted);
        }
    }
}
