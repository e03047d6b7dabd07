package quarterlight.ui.kit;

import java.lang.reflect.InvocationTargetException;
import java.nio.file.Path;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.BiConsumer;
import java.util.function.Supplier;
import javax.swing.SwingUtilities;
import quarterlight.diagram.ink.Ramp;
import quarterlight.diagram.ink.TextMeasure;
import quarterlight.edit.fact.FactEdits;
import quarterlight.finish.place.ZoneSizes;
import quarterlight.store.SampleVisit;
import quarterlight.store.VisitStore;
import quarterlight.table.ZoneTable;
import quarterlight.task.DirectJobRunner;
import quarterlight.ui.kit.visit.OpenVisit;
import quarterlight.ui.kit.visit.VisitOpener;

/** A visit opened as the window opens it, without a window; for tests of models. What users would be told is kept. */
public final class OpenedVisit implements AutoCloseable {
    private final List<String> told = new CopyOnWriteArrayList<>();
    private final UiContext parts;
    private final OpenVisit visit;

    private OpenedVisit(Path folder, Path settings, BiConsumer<UiContext, OpenVisit> first) throws Exception {
        parts = new UiContext(
                Texts.load(),
                SampleVisit.CLOCK,
                ZoneTable.load(),
                (where, facts) -> ZoneSizes.NONE,
                SettingsFile.read(settings.resolve("settings.properties"), Runnable::run),
                new DirectJobRunner(),
                new Told(),
                Ramp.load(),
                TextMeasure.bundled());
        CompletableFuture<OpenVisit> opened = new CompletableFuture<>();
        new VisitOpener(parts).open(folder, ready -> {
            first.accept(parts, ready);
            opened.complete(ready);
        });
        visit = opened.get(10, TimeUnit.SECONDS);
    }

    /** What fills a new visit before it is opened. */
    @FunctionalInterface
    public interface Filling {
        void fill(VisitStore store) throws Exception;
    }

    /** A coupe of an invented make in a folder, filled and opened. */
    public static OpenedVisit coupe(Path folder, Filling filling) throws Exception {
        return coupe(folder, filling, (parts, ready) -> {});
    }

    /** @param first done on the event thread when the visit has come, before anything is worked out of it */
    public static OpenedVisit coupe(Path folder, Filling filling, BiConsumer<UiContext, OpenVisit> first)
            throws Exception {
        Path path = folder.resolve("visit");
        try (VisitStore store = VisitStore.create(
                path,
                new FactEdits(ZoneTable.load())
                        .start(Map.of("car", "Tamarisk", "style", "coupe", "timezone", "UTC"), ZoneOffset.UTC),
                SampleVisit.CLOCK)) {
            filling.fill(store);
        }
        return new OpenedVisit(path, folder.resolve("settings"), first);
    }

    public OpenVisit visit() {
        return visit;
    }

    public UiContext parts() {
        return parts;
    }

    /** Sentences that the user was told. */
    public List<String> told() {
        return told;
    }

    /** Asks on the event thread. */
    public static <T> T asked(Supplier<T> question) throws InterruptedException, InvocationTargetException {
        AtomicReference<T> answer = new AtomicReference<>();
        SwingUtilities.invokeAndWait(() -> answer.set(question.get()));
        return answer.get();
    }

    /** Waits until something holds on the event thread; the test's own time limit ends it. */
    public static void until(Supplier<Boolean> holds) throws Exception {
        while (!asked(holds)) {
            Thread.sleep(5);
        }
    }

    @Override
    public void close() {
        CountDownLatch closed = new CountDownLatch(1);
        SwingUtilities.invokeLater(() -> visit.close(closed::countDown));
        try {
            if (!closed.await(20, TimeUnit.SECONDS)) {
                throw new AssertionError("the visit did not close");
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    private final class Told implements Problems {
        @Override
        public void tell(String sentence) {
            told.add(sentence);
        }

        @Override
        public void remark(String sentence) {
            told.add(sentence);
        }

        @Override
        public void failed(Throwable failure) {
            told.add(String.valueOf(failure.getMessage()));
        }

        @Override
        public boolean confirm(String question, String goOn) {
            return true;
        }

        @Override
        public Optional<String> ask(String question, String title, String proposed) {
            return Optional.empty();
        }
    }
}
