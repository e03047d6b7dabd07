package quarterlight.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.HeadlessException;
import java.awt.event.ActionEvent;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicBoolean;
import javax.swing.AbstractButton;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JTable;
import javax.swing.JTextField;
import javax.swing.SwingUtilities;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import quarterlight.car.ZoneId;
import quarterlight.diagram.ink.Ramp;
import quarterlight.diagram.ink.TextMeasure;
import quarterlight.edit.fact.FactEdits;
import quarterlight.edit.row.RowEdits;
import quarterlight.edit.row.RowKinds;
import quarterlight.finish.place.ZoneSizes;
import quarterlight.store.SampleVisit;
import quarterlight.store.VisitStore;
import quarterlight.table.CsvFile;
import quarterlight.table.RowKind;
import quarterlight.table.TableRead;
import quarterlight.table.ZoneTable;
import quarterlight.table.cell.RowContext;
import quarterlight.task.JobRunner;
import quarterlight.task.Threads;
import quarterlight.ui.kit.Command;
import quarterlight.ui.kit.Problems;
import quarterlight.ui.kit.SettingsFile;
import quarterlight.ui.kit.SwingJobRunner;
import quarterlight.ui.kit.Texts;
import quarterlight.ui.kit.UiContext;
import quarterlight.ui.kit.visit.OpenVisit;
import quarterlight.ui.kit.visit.Station;
import quarterlight.ui.kit.visit.StationScreen;
import quarterlight.ui.kit.visit.VisitOpener;
import quarterlight.visit.VisitRecord;
import quarterlight.visit.photo.PhotoId;
import quarterlight.visit.pin.ViewPoint;

/**
 * Whatever a user does in a station is one step of undo: every command, button, choice and line of text, with one row or several selected,
 * is taken back by one undo to the very visit that stood before.
 */
@Timeout(120)
class OneStepPerActionPropertyTest {
    private static final int PHOTOS = 4;
    private static final int ROUNDS = Integer.getInteger("quarterlight.rounds", 1);
    private static final List<ZoneId> ZONES =
            List.of(new ZoneId("hood"), new ZoneId("roof"), new ZoneId("door-front-left"));
    private static final List<String> LINES = List.of("4.2", "hood", "12", "a dent at the edge");

    /** So many different actions of a station changed the visit at least; fewer would show nothing. */
    private static final Map<Station, Integer> CHANGES = Map.of(
            Station.PHOTOS,
            4,
            Station.GAUGE,
            12,
            Station.RUST,
            2,
            Station.MARKS,
            4,
            Station.NOTES,
            12,
            Station.PAGES,
            20,
            Station.WORDS,
            2);

    @TempDir
    Path folder;

    private final ExecutorService workers = Threads.pool("test-worker", 2);
    private OpenVisit visit;
    private UiContext parts;
    private final List<String> failures = Collections.synchronizedList(new ArrayList<>());

    /** One thing that a user can do. */
    private record Deed(String name, Runnable work) {}

    /** A dialog that a job opens in the end has no display either. */
    @BeforeEach
    void noDialogs() {
        Thread.setDefaultUncaughtExceptionHandler((thread, failure) -> {
            if (!(failure instanceof HeadlessException)) {
                failures.add(failure.toString());
            }
        });
    }

    @AfterEach
    void dialogs() {
        Thread.setDefaultUncaughtExceptionHandler(null);
    }

    @ParameterizedTest
    @EnumSource
    void everyActionIsTakenBackByOneUndo(Station station) throws Exception {
        open(make());
        JPanel window = new JPanel();
        CompletableFuture<StationScreen> made = new CompletableFuture<>();
        SwingUtilities.invokeAndWait(() -> {
            StationScreen screen =
                    Stations.screen(station, parts, visit, Command.of(parts.texts(), "do.take-in", () -> {}));
            window.add(screen.side());
            screen.shown();
            visit.tellAll();
            made.complete(screen);
        });
        StationScreen screen = made.get();
        settle();
        waitForWords(screen);
        Random random = new Random(18);
        Set<String> changed = new TreeSet<>();
        for (int round = 0; round < ROUNDS; round++) {
            for (Deed deed : deeds(screen)) {
                if (oneStep(screen, deed, random)) {
                    changed.add(deed.name());
                }
            }
        }
        SwingUtilities.invokeAndWait(screen::closed);
        close();
        workers.shutdownNow();
        assertThat(failures).isEmpty();
        assertThat(changed).as("actions that changed the visit").hasSizeGreaterThanOrEqualTo(CHANGES.get(station));
    }

    /** Drafts are worked out in the background. */
    private static void waitForWords(StationScreen screen) throws Exception {
        AtomicBoolean there = new AtomicBoolean(screen.station() != Station.WORDS);
        while (!there.get()) {
            Thread.sleep(10);
            SwingUtilities.invokeAndWait(() -> there.set(WindowParts.within(screen.side(), JTable.class).stream()
                    .anyMatch(table -> table.getRowCount() > 0)));
        }
    }

    /** Does it with something selected; true if the visit was changed, and then one undo brought back what stood before. */
    private boolean oneStep(StationScreen screen, Deed deed, Random random) throws Exception {
        SwingUtilities.invokeAndWait(() -> select(screen, random));
        settle();
        VisitRecord before = visit.visit();
        SwingUtilities.invokeAndWait(() -> {
            try {
                deed.work().run();
            } catch (HeadlessException e) {
                // it opens a dialog, whose answer is an action of its own
            }
        });
        settle();
        if (visit.visit().equals(before)) {
            return false;
        }
        String label = visit.undoLabel().orElse("");
        SwingUtilities.invokeAndWait(visit::undo);
        settle();
        assertThat(visit.visit())
                .as("one undo (\"%s\") after %s", label, deed.name())
                .isEqualTo(before);
        return true;
    }

    private void select(StationScreen screen, Random random) {
        int photos = 1 + random.nextInt(PHOTOS);
        List<PhotoId> chosen = new ArrayList<>();
        for (long i = 1; i <= photos; i++) {
            chosen.add(new PhotoId(i));
        }
        visit.selection().photos(chosen);
        visit.selection().zones(Set.of(ZONES.get(random.nextInt(ZONES.size()))));
        for (JTable table : WindowParts.within(screen.side(), JTable.class)) {
            int rows = table.getRowCount();
            if (rows > 0) {
                table.clearSelection();
                table.setRowSelectionInterval(random.nextInt(rows), rows - 1);
                if (table.getColumnCount() > 0) {
                    table.setColumnSelectionInterval(0, table.getColumnCount() - 1);
                }
            }
        }
    }

    private List<Deed> deeds(StationScreen screen) throws Exception {
        Map<String, Deed> deeds = new LinkedHashMap<>();
        SwingUtilities.invokeAndWait(() -> {
            for (Command command : screen.commands()) {
                String name = "command " + command.getValue(Command.NAME);
                add(deeds, name, () -> command.actionPerformed(new ActionEvent(screen.side(), 0, "")));
            }
            for (AbstractButton button : WindowParts.within(screen.side(), AbstractButton.class)) {
                put(deeds, button, button.getText(), button::doClick);
            }
            for (JComboBox<?> box : WindowParts.within(screen.side(), JComboBox.class)) {
                put(deeds, box, "choice", () -> {
                    if (box.isEnabled() && box.getItemCount() > 0) {
                        box.setSelectedIndex(Math.min(1, box.getItemCount() - 1));
                    }
                });
            }
            for (JTextField field : WindowParts.within(screen.side(), JTextField.class)) {
                for (String line : LINES) {
                    put(deeds, field, line, () -> {
                        if (field.isEnabled() && field.isEditable()) {
                            field.setText(line);
                            field.postActionEvent();
                        }
                    });
                }
            }
            ViewPoint point = SampleVisit.point(0.4, 0.5);
            List<PhotoId> two = List.of(new PhotoId(1), new PhotoId(2));
            add(deeds, "click on a zone", () -> screen.zoneChosen(ZONES.get(2), point));
            add(deeds, "photos dropped on a zone", () -> screen.photosDropped(two, ZONES.get(2), point));
            visit.visit().pins().stream()
                    .findFirst()
                    .ifPresent(pin -> add(deeds, "pin dragged", () -> screen.pinMoved(pin.id(), ZONES.get(2), point)));
        });
        return List.copyOf(deeds.values());
    }

    private static void put(Map<String, Deed> deeds, JComponent on, String what, Runnable work) {
        String name = on.getClass().getSimpleName() + " " + on.getName() + " "
                + on.getAccessibleContext().getAccessibleName() + ": " + what;
        add(deeds, name, work);
    }

    private static void add(Map<String, Deed> deeds, String name, Runnable work) {
        deeds.put(name, new Deed(name, work));
    }

    /** Waits until the store has done what was asked and the screens know of it. */
    private void settle() throws Exception {
        for (int i = 0; i < 2; i++) {
            CountDownLatch done = new CountDownLatch(1);
            SwingUtilities.invokeAndWait(() -> visit.edit(store -> true, yes -> done.countDown()));
            assertThat(done.await(20, TimeUnit.SECONDS)).isTrue();
            SwingUtilities.invokeAndWait(() -> {});
        }
    }

    private Path make() throws Exception {
        Path path = folder.resolve("visit");
        try (VisitStore store = VisitStore.create(
                path,
                new FactEdits(ZoneTable.load())
                        .start(
                                Map.of("car", "Tamarisk", "style", "coupe", "built", "1971-03", "timezone", "UTC"),
                                ZoneOffset.UTC),
                SampleVisit.CLOCK)) {
            store.change("take in", tx -> {
                for (int i = 1; i <= PHOTOS; i++) {
                    tx.addPhoto(SampleVisit.barePhoto(i));
                }
            });
            String photo = SampleVisit.hash(1).hex();
            rows(
                    store,
                    "pins",
                    "photo,zone",
                    photo + ",hood",
                    photo + ",roof",
                    SampleVisit.hash(2).hex() + ",roof");
            rows(store, "readings", "zone,value,unit", "hood,4.1,mil", "hood,4.4,mil", "roof,5.0,mil", "roof,9.0,mil");
            rows(store, "gauge", "when,on,nominal,shown,unit", "before,bare,0,0,um", "before,shim,500,510,um");
            rows(store, "signs", "zone,sign,seen", "hood,overspray,yes");
            rows(store, "marks", "part,kind,text", "block,casting,A121", "plate,plate,1234");
            rows(store, "statements", "zone,kind,text", "hood,damaged,a dent", "roof,as built,untouched");
            rows(store, "features", "feature,from,to", "side lamp,1968,1970", "round mirror,1971,1972");
            rows(store, "trials", "item,result", "engine starts,works");
            SpokenSample.add(store, PHOTOS + 1, "walk.txt", SpokenSample.WALK);
        }
        return path;
    }

    private void rows(VisitStore store, String kind, String... lines) throws Exception {
        Path file = folder.resolve(kind + ".csv");
        Files.write(file, List.of(lines), StandardCharsets.UTF_8);
        add(store, RowKinds.find(kind).orElseThrow(), file);
    }

    private static <T> void add(VisitStore store, RowKind<T> kind, Path file) throws Exception {
        TableRead<T> read = CsvFile.read(file, kind, RowContext.of(store.read(), ZoneTable.load()));
        assertThat(read.refused()).isEmpty();
        new RowEdits(store).add(kind.kind(), read.values());
    }

    private void open(Path path) throws Exception {
        parts = new UiContext(
                Texts.load(),
                SampleVisit.CLOCK,
                ZoneTable.load(),
                (where, facts) -> ZoneSizes.NONE,
                SettingsFile.read(folder.resolve("settings/settings.properties"), Runnable::run),
                new SwingJobRunner(workers, new NoDisplay()),
                new Answers(),
                Ramp.load(),
                TextMeasure.bundled());
        CompletableFuture<OpenVisit> opened = new CompletableFuture<>();
        new VisitOpener(parts).open(path, opened::complete);
        visit = opened.get(20, TimeUnit.SECONDS);
    }

    private void close() throws Exception {
        CountDownLatch closed = new CountDownLatch(1);
        SwingUtilities.invokeAndWait(() -> visit.close(closed::countDown));
        assertThat(closed.await(20, TimeUnit.SECONDS)).isTrue();
    }

    private static final class NoDisplay implements SwingJobRunner.Display {
        @Override
        public void started(String title, JobRunner.Cancel cancel) {
            // nobody looks
        }

        @Override
        public void report(int done, int total, String what) {
            // nobody looks
        }

        @Override
        public void ended() {
            // nobody looks
        }
    }

    /** A user who answers every question. */
    private final class Answers implements Problems {
        @Override
        public void tell(String sentence) {
            // an action that does not apply says so
        }

        @Override
        public void remark(String sentence) {
            // the same
        }

        @Override
        public void failed(Throwable failure) {
            if (failure instanceof RuntimeException && !(failure instanceof HeadlessException)) {
                failures.add(failure.toString());
            }
        }

        @Override
        public boolean confirm(String question, String goOn) {
            return true;
        }

        @Override
        public Optional<String> ask(String question, String title, String proposed) {
            return Optional.of(proposed.isEmpty() ? "answer" : proposed);
        }
    }
}
