package quarterlight.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Point;
import java.awt.event.KeyEvent;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import javax.accessibility.AccessibleContext;
import javax.swing.JTable;
import org.apache.commons.csv.CSVRecord;
import org.assertj.swing.edt.GuiActionRunner;
import org.junit.jupiter.api.Test;
import quarterlight.car.ZoneId;
import quarterlight.table.ZoneTable;
import quarterlight.ui.kit.Texts;
import quarterlight.visit.mark.MarkKind;
import quarterlight.visit.photo.PhotoId;
import quarterlight.visit.pin.Recorded;
import quarterlight.visit.trial.SignKind;

/**
 * The evening after the first sample visit, from the first pin to the pages, by keys that are counted; its photos, readings, signs, marks and
 * statements are those of {@code demo-data}. Photos of marks and statements are taken in hand by a click. The table stands in docs/performance.md.
 */
class EveningRobotTest extends EveningRobot {
    private static final SampleWalk WALK = SampleWalk.of("tamarisk-1971");
    private static final ZoneId WHOLE_CAR = new ZoneId("whole-car");
    private static final Map<String, String> CONDITIONS = Map.of(
            "pitted", "p", "damaged", "d", "no rust", "n", "sound", "s", "worn", "w", "leaking", "l", "repaired", "r");

    @Override
    protected void make(Path path) throws Exception {
        Path settings = Files.createDirectories(folder.resolve("settings"));
        // the way round the car that the inspector keeps from earlier visits
        String route =
                rows("readings").stream().map(row -> row.get("zone")).distinct().collect(Collectors.joining(" "));
        Files.writeString(
                settings.resolve("settings.properties"), "schema=1\nwelcomed=yes\ngauge.route.coupe=" + route + "\n");
        WALK.takeIn(path, CLOCK);
    }

    private static List<CSVRecord> rows(String table) throws IOException {
        return WALK.rows(table);
    }

    @Test
    void theEveningOfTheSampleVisitByCountedKeys() throws Exception {
        Map<String, PhotoId> photos = SampleWalk.photos(held());
        assertThat(pinAll(WALK.places(held()))).as("keys a photo").isLessThanOrEqualTo(1.6);

        readings();
        signs();
        marks(photos);
        statements(photos);

        withControl(KeyEvent.VK_6);
        until(
                "the pages can be made",
                () -> isShown("pages-make") && named("pages-make").isEnabled());
        window.button("pages-make").click();
        until("they are made", () -> Files.exists(visit.resolve("pages/report.pdf")));
    }

    private void readings() throws Exception {
        Map<String, List<String>> values = new LinkedHashMap<>();
        rows("readings").forEach(row -> values.computeIfAbsent(row.get("zone"), zone -> new ArrayList<>())
                .add(Map.of("none", "n", "over", "o").getOrDefault(row.get("value"), row.get("value"))));
        int count = values.values().stream().mapToInt(List::size).sum();
        withControl(KeyEvent.VK_2);
        until("readings can be typed", () -> isShown("gauge-entry"));
        robot.focusAndWaitForFocusGain(window.textBox("gauge-entry").target());
        begin();
        press(KeyEvent.VK_ENTER);
        for (List<String> zone : values.values()) {
            for (int i = 0; i < zone.size(); i++) {
                type(zone.get(i));
                press(i < zone.size() - 1 ? KeyEvent.VK_ENTER : KeyEvent.VK_DOWN);
            }
        }
        until("all are kept", () -> held().readings().size() == count);
        Map<String, Long> kept = held().readings().stream()
                .collect(Collectors.groupingBy(row -> row.value().zone().value(), Collectors.counting()));
        values.forEach((zone, typed) -> assertThat(kept).containsEntry(zone, (long) typed.size()));
        int typed = values.values().stream()
                .flatMap(List::stream)
                .mapToInt(String::length)
                .sum();
        double more = told("reading, beyond its value", count, keys() - typed);
        assertThat(more).isLessThanOrEqualTo(1.0 + 1.0 / count);
    }

    /** The signs of the sample visit name a few panels each; then one sign is noted in every panel. */
    private void signs() throws Exception {
        robot.pressKey(KeyEvent.VK_ALT);
        robot.pressAndReleaseKeys(KeyEvent.VK_4);
        robot.releaseKey(KeyEvent.VK_ALT);
        until("the sheet of signs is shown", () -> isShown("sign-grid"));
        JTable grid = (JTable) named("sign-grid");
        robot.focusAndWaitForFocusGain(grid);
        Map<String, Integer> lines = GuiActionRunner.execute(() -> {
            Map<String, Integer> found = new HashMap<>();
            for (int row = 0; row < grid.getRowCount(); row++) {
                found.put(String.valueOf(grid.getValueAt(row, 0)), row);
            }
            grid.changeSelection(0, 1, false, false);
            return found;
        });
        Map<Point, Boolean> wanted = new HashMap<>();
        for (CSVRecord row : rows("signs")) {
            String label = ZoneTable.load().get(new ZoneId(row.get("zone"))).label();
            SignKind kind = quarterlight.units.Worded.find(SignKind.class, row.get("sign"))
                    .orElseThrow();
            if (lines.containsKey(label)) {
                wanted.put(
                        new Point(1 + kind.ordinal(), lines.get(label)),
                        row.get("seen").equals("yes"));
            }
        }
        int count = wanted.size();
        String letters = Texts.load().get("signs.letters");
        begin();
        // panel by panel, each sign by its letter
        for (int row = 0, at = 0; row < lines.size(); row++) {
            int here = row;
            List<Point> signs =
                    wanted.keySet().stream().filter(one -> one.y == here).toList();
            for (; at < row && !signs.isEmpty(); at++) {
                press(KeyEvent.VK_DOWN);
            }
            for (Point one : signs) {
                int letter = letters.charAt(one.x - 1);
                if (wanted.get(one)) {
                    press(letter);
                } else {
                    press(letter, KeyEvent.VK_SHIFT);
                }
            }
        }
        until("all signs are noted", () -> held().signs().size() == count);
        assertThat(told("sign, panel by panel", count, keys())).isLessThanOrEqualTo(1.6);
        GuiActionRunner.execute(() -> grid.changeSelection(0, SignKind.values().length, false, false));
        begin();
        lines.forEach((label, row) -> press(KeyEvent.VK_N));
        SignKind last = SignKind.values()[SignKind.values().length - 1];
        until(
                "the sign is noted all round",
                () -> held().signs().stream()
                                .filter(row -> row.value().kind() == last)
                                .count()
                        == lines.size());
        assertThat(told("sign in every panel", lines.size(), keys())).isEqualTo(1);
    }

    /** Takes a photo in hand in the Photos station, by a click. */
    private void take(String file) {
        withControl(KeyEvent.VK_1);
        until("the photos are shown", () -> isShown("photos-sheet"));
        GuiActionRunner.execute(() -> {
            AccessibleContext photos = named("photos-sheet").getAccessibleContext();
            for (int i = 0; i < photos.getAccessibleChildrenCount(); i++) {
                AccessibleContext photo = photos.getAccessibleChild(i).getAccessibleContext();
                if (photo.getAccessibleName().startsWith(file)) {
                    photo.getAccessibleAction().doAccessibleAction(0);
                }
            }
        });
        until(
                file + " is in hand",
                () -> inHand().filter(photo -> photo.file().name().equals(file)).isPresent());
    }

    private void marks(Map<String, PhotoId> photos) throws Exception {
        int pressed = 0;
        int letters = 0;
        List<CSVRecord> rows = rows("marks");
        for (CSVRecord row : rows) {
            take(row.get("photo"));
            begin();
            withControl(KeyEvent.VK_4);
            until("marks are shown", () -> isShown("mark-part"));
            withControl(KeyEvent.VK_M);
            until("the part is asked for", () -> hasFocus("mark-part"));
            letters += part(row.get("part"));
            press(KeyEvent.VK_TAB);
            kind(row.get("kind"));
            press(KeyEvent.VK_TAB);
            until("the text is asked for", () -> hasFocus("mark-text"));
            String text = row.get("text");
            robot.enterText(text);
            letters += keysOf(text);
            press(KeyEvent.VK_ENTER);
            int count = held().marks().size();
            until("the mark is kept", () -> held().marks().stream()
                    .anyMatch(mark -> mark.value().text().equals(text)
                            && mark.value().part().equals(row.get("part"))
                            && mark.value()
                                    .photo()
                                    .filter(photos.get(row.get("photo"))::equals)
                                    .isPresent()));
            assertThat(count).isLessThanOrEqualTo(rows.size());
            pressed += keys();
        }
        assertThat(held().marks()).hasSize(rows.size());
        assertThat(told("mark of the photo in hand, without its text", rows.size(), pressed - letters))
                .isLessThanOrEqualTo(12);
    }

    private static int keysOf(String text) {
        return text.length();
    }

    private boolean hasFocus(String field) {
        return GuiActionRunner.execute(() -> window.textBox(field).target().isFocusOwner());
    }

    /** By its first letters and Down until it is offered, else in full; gives the keys of a name that the list does not know. */
    private int part(String name) {
        robot.enterText(name.substring(0, 3));
        Set<String> offered = new HashSet<>();
        while (offered.add(window.textBox("mark-part").text())) {
            press(KeyEvent.VK_DOWN);
            robot.waitForIdle();
            if (window.textBox("mark-part").text().equals(name)) {
                return 0;
            }
        }
        int wasted = offered.size();
        GuiActionRunner.execute(() -> window.textBox("mark-part").target().setText(name.substring(0, 3)));
        robot.enterText(name.substring(3));
        return name.length() + wasted;
    }

    /** A letter chooses it, the same letter again the next one. */
    private void kind(String word) {
        MarkKind wanted = quarterlight.units.Worded.find(MarkKind.class, word).orElseThrow();
        for (int tries = 0; tries < 4; tries++) {
            type(word.substring(0, 1));
            robot.waitForIdle();
            String chosen = GuiActionRunner.execute(() -> {
                var focus = java.awt.KeyboardFocusManager.getCurrentKeyboardFocusManager()
                        .getFocusOwner();
                return focus instanceof javax.swing.JComboBox<?> box ? String.valueOf(box.getSelectedItem()) : "";
            });
            if (chosen.equalsIgnoreCase(wanted.word())) {
                return;
            }
        }
        throw new AssertionError("no " + word + " among the kinds");
    }

    private void statements(Map<String, PhotoId> photos) throws Exception {
        int pressed = 0;
        int letters = 0;
        int count = 0;
        for (CSVRecord row : rows("statements")) {
            String letter = CONDITIONS.get(row.get("kind"));
            if (row.get("photo").isEmpty() || letter == null) {
                continue;
            }
            int before = held().statements().size();
            take(row.get("photo"));
            robot.focusAndWaitForFocusGain(named("photos-sheet"));
            begin();
            press(KeyEvent.VK_F4);
            until("words can be typed", () -> isShown("statement-words"));
            until("the keyboard is there", () -> hasFocus("statement-words"));
            robot.enterText("/" + letter);
            robot.enterText(row.get("text"));
            int typed = keysOf(row.get("text"));
            press(KeyEvent.VK_ENTER);
            until("the statement is kept", () -> held().statements().size() == before + 1);
            letters += typed;
            pressed += keys();
            count++;
        }
        assertThat(told("statement of the photo in hand, without its text", count, pressed - letters))
                .isLessThanOrEqualTo(4);
        List<PhotoId> shown = held().statements().stream()
                .map(Recorded::value)
                .flatMap(one -> one.photos().stream())
                .toList();
        assertThat(shown).as("each shows its photo").hasSize(count);
        assertThat(photos.values()).containsAll(shown);
        assertThat(held().statements()).noneMatch(row -> row.value().zone().equals(WHOLE_CAR));
    }
}
