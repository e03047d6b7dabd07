package quarterlight.task;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

/** What is answered, what is replaced, and what is told after the end. The delivery thread stands in for the event thread. */
@Timeout(20)
class LatestWorkTest {
    private final ExecutorService delivery = Executors.newSingleThreadExecutor();
    private final LinkedBlockingQueue<Object> told = new LinkedBlockingQueue<>();
    private final CountDownLatch begun = new CountDownLatch(1);
    private final CountDownLatch goOn = new CountDownLatch(1);

    @AfterEach
    void end() {
        delivery.shutdownNow();
    }

    /** The question "slow" waits for {@link #goOn}; work answers with the question itself. */
    private String slowly(String question, Progress progress) throws InterruptedException {
        if (question.startsWith("slow")) {
            begun.countDown();
            goOn.await();
        }
        if (question.startsWith("slow and polite")) {
            progress.checkCancelled();
        }
        return question;
    }

    private LatestWork<String, String> work() {
        return new LatestWork<>("test-latest", delivery, this::slowly, told::add, told::add);
    }

    private Object next() throws InterruptedException {
        return told.poll(10, TimeUnit.SECONDS);
    }

    private void nothingMore(LatestWork<String, String> work) throws Exception {
        delivery.submit(() -> {}).get();
        assertThat(told).isEmpty();
        work.stop();
    }

    @Test
    void questionsThatWereReplacedWhileTheyWaitedAreLeftOut() throws Exception {
        LatestWork<String, String> work = work();
        work.request("slow");
        begun.await();
        work.request("b");
        work.request("c");
        goOn.countDown();
        assertThat(next()).isEqualTo("slow");
        assertThat(next()).isEqualTo("c");
        nothingMore(work);
    }

    @Test
    void workThatAsksWhetherItWasReplacedEndsWithoutAnAnswer() throws Exception {
        LatestWork<String, String> work = work();
        work.request("slow and polite");
        begun.await();
        work.request("next");
        goOn.countDown();
        assertThat(next()).isEqualTo("next");
        nothingMore(work);
    }

    @Test
    void workThatIsNotReplacedIsNotToldToStop() throws Exception {
        LatestWork<String, String> work = work();
        work.request("slow and polite");
        goOn.countDown();
        assertThat(next()).isEqualTo("slow and polite");
        nothingMore(work);
    }

    @Test
    void aCancelledQuestionIsNotAnsweredAndTheNextOneIs() throws Exception {
        LatestWork<String, String> work = work();
        work.request("slow");
        begun.await();
        work.request("waiting");
        work.cancel();
        goOn.countDown();
        work.request("after");
        assertThat(next()).isEqualTo("after");
        nothingMore(work);
    }

    @Test
    void afterTheEndNothingIsTold() throws Exception {
        LatestWork<String, String> work = work();
        work.request("slow");
        begun.await();
        work.stop();
        work.request("late");
        nothingMore(work);
    }

    @Test
    void aFailureIsToldAndTheNextQuestionIsAnswered() throws Exception {
        LatestWork<Integer, Integer> work = new LatestWork<>(
                "test-latest",
                delivery,
                (question, course) -> {
                    if (question == 0) {
                        throw new java.io.IOException("no file");
                    }
                    return question;
                },
                told::add,
                failure -> told.add(failure.getMessage()));
        work.request(0);
        assertThat(next()).isEqualTo("no file");
        work.request(1);
        assertThat(next()).isEqualTo(1);
        work.stop();
    }

    @Test
    void partsOfAnAnswerAndProgressArriveInOrder() throws Exception {
        List<String> reports = new ArrayList<>();
        LatestWork<Integer, Integer> work = new LatestWork<Integer, Integer>(
                        "test-latest",
                        delivery,
                        (question, course) -> {
                            for (int i = 0; i < question; i++) {
                                course.report(i, question, "step");
                                course.soFar(i);
                            }
                            return question;
                        },
                        told::add,
                        told::add)
                .reportingTo(new Progress() {
                    @Override
                    public void report(int done, int total, String what) {
                        reports.add(done + "/" + total);
                    }

                    @Override
                    public boolean cancelled() {
                        return false;
                    }
                });
        work.request(2);
        assertThat(List.of(next(), next(), next())).isEqualTo(List.of(0, 1, 2));
        assertThat(reports).containsExactly("0/2", "1/2");
        work.stop();
    }

    @Test
    void oneJobIsDoneOnceOnAThreadOfItsName() throws Exception {
        LatestWork.once(
                "test-once", delivery, progress -> Thread.currentThread().getName(), told::add, told::add);
        assertThat(next()).isEqualTo("test-once");
    }
}
