package quarterlight.page.print;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.concurrent.CancellationException;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicBoolean;
import org.junit.jupiter.api.Test;
import quarterlight.language.Language;
import quarterlight.task.Progress;

class PageWorkersTest {
    /** Writes down what is told. */
    private static final class Told implements Progress {
        private final List<Integer> done = new ArrayList<>();
        private final List<Integer> totals = new ArrayList<>();
        private final List<String> words = new ArrayList<>();
        private final AtomicBoolean cancelled = new AtomicBoolean();

        @Override
        public void report(int steps, int total, String what) {
            done.add(steps);
            totals.add(total);
            words.add(what);
        }

        @Override
        public boolean cancelled() {
            return cancelled.get();
        }
    }

    @Test
    void stepsOnSeveralThreadsAreCountedUpToTheNumberAnnounced() throws IOException {
        Told told = new Told();
        try (PageWorkers workers = new PageWorkers(told)) {
            workers.expect(40);
            List<Future<Integer>> steps = new ArrayList<>();
            for (int i = 0; i < 40; i++) {
                int number = i;
                steps.add(workers.start(PageStep.PHOTOS, () -> number * number));
            }
            for (int i = 0; i < 40; i++) {
                assertThat(PageWorkers.result(steps.get(i))).isEqualTo(i * i);
            }
        }
        assertThat(told.done).isSorted().endsWith(40);
        assertThat(told.totals).containsOnly(40);
    }

    @Test
    void whoWaitsReadsTheirOwnLanguageWhateverThePagesSpeak() throws IOException {
        Told told = new Told();
        try (Language.Scope spoken = Language.ENGLISH.inHandUntilClosed();
                PageWorkers workers = new PageWorkers(told, Language.GERMAN)) {
            assertThat(spoken).isNotNull();
            String page = PageWorkers.result(workers.start(PageStep.BRIEF, PageStep.BRIEF::said));
            assertThat(page).isEqualTo("Writing the brief");
        }
        assertThat(told.words).containsOnly("Erste Seite schreiben");
    }

    @Test
    void whatCannotBeWrittenIsToldAsItWas() {
        try (PageWorkers workers = new PageWorkers(Progress.NONE)) {
            IOException full = new IOException("the disk is full");
            Future<Object> step = workers.start(PageStep.PHOTOS, () -> {
                throw full;
            });
            assertThatThrownBy(() -> PageWorkers.result(step)).isSameAs(full);
        }
    }

    @Test
    void aStepDoesNotBeginOnceTheJobIsCancelled() {
        Told told = new Told();
        AtomicBoolean begun = new AtomicBoolean();
        try (PageWorkers workers = new PageWorkers(told)) {
            told.cancelled.set(true);
            Future<Boolean> step = workers.start(PageStep.PHOTOS, () -> begun.getAndSet(true));
            assertThatThrownBy(() -> PageWorkers.result(step)).isInstanceOf(CancellationException.class);
        }
        assertThat(begun).isFalse();
    }

    @Test
    void whatOthersWaitForHasItsTurnBeforeTheRestAndALookAfterIt() throws Exception {
        List<String> turns = Collections.synchronizedList(new ArrayList<>());
        CountDownLatch all = new CountDownLatch(1);
        try (PageWorkers workers = new PageWorkers(Progress.NONE)) {
            List<Future<Boolean>> steps = new ArrayList<>();
            for (int i = 0; i < Math.max(2, Runtime.getRuntime().availableProcessors()) - 1; i++) {
                CountDownLatch running = new CountDownLatch(1);
                steps.add(workers.start(PageStep.LOOK, () -> {
                    running.countDown();
                    return all.await(1, TimeUnit.HOURS);
                }));
                running.await();
            }
            CountDownLatch one = new CountDownLatch(1);
            steps.add(workers.start(PageStep.LOOK, () -> one.await(1, TimeUnit.HOURS)));
            steps.add(workers.start(PageWorkers.Turn.LAST, PageStep.PHOTOS, () -> turns.add("last")));
            steps.add(workers.start(PageStep.PHOTOS, () -> turns.add("usual")));
            steps.add(workers.start(PageStep.PHOTOS, () -> turns.add("usual, later")));
            steps.add(workers.start(PageWorkers.Turn.FIRST, PageStep.PHOTOS, () -> turns.add("first")));
            one.countDown();
            PageWorkers.result(steps.get(steps.size() - 4));
            all.countDown();
            for (Future<Boolean> step : steps) {
                assertThat(PageWorkers.result(step)).isTrue();
            }
        }
        assertThat(turns).containsExactly("first", "usual", "usual, later", "last");
    }

    @Test
    void aPageIsToldOnceItIsMadeAndOneThatFailsIsNot() throws IOException {
        List<Path> told = Collections.synchronizedList(new ArrayList<>());
        try (PageWorkers workers = new PageWorkers(Progress.NONE)) {
            workers.tellOf(told::add);
            Path made = Path.of("report.pdf");
            Future<Path> failing = workers.startPage(PageStep.REPORT, () -> {
                throw new IOException("the disk is full");
            });
            assertThat(PageWorkers.result(workers.startPage(PageStep.REPORT, () -> made)))
                    .isEqualTo(made);
            assertThatThrownBy(() -> PageWorkers.result(failing)).hasMessage("the disk is full");
        }
        assertThat(told).containsExactly(Path.of("report.pdf"));
    }

    @Test
    void closingWaitsForTheStepThatRuns() throws InterruptedException {
        CountDownLatch running = new CountDownLatch(1);
        AtomicBoolean ended = new AtomicBoolean();
        try (PageWorkers workers = new PageWorkers(Progress.NONE)) {
            Future<Boolean> step = workers.start(PageStep.PHOTOS, () -> {
                running.countDown();
                try {
                    new CountDownLatch(1).await();
                } catch (InterruptedException e) {
                    long until = System.nanoTime() + 50_000_000;
                    while (System.nanoTime() < until) {
                        Thread.onSpinWait();
                    }
                }
                return ended.getAndSet(true);
            });
            running.await();
            assertThat(step.isDone()).isFalse();
        }
        assertThat(ended).isTrue();
    }
}
