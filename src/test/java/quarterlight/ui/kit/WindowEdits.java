package quarterlight.ui.kit;

import java.nio.file.Path;
import java.time.Clock;
import java.util.Map;
import java.util.concurrent.CountDownLatch;
import quarterlight.edit.fact.FactEdits;
import quarterlight.store.VisitStore;
import quarterlight.table.ZoneTable;
import quarterlight.ui.kit.visit.StoreThread;

/** A process that edits a visit on the thread by which the window edits, without end, and says the number of each edit once the window would show it. */
public final class WindowEdits {
    private WindowEdits() {}

    public static void main(String[] args) throws Exception {
        StoreThread thread = new StoreThread(VisitStore.openForEditing(Path.of(args[0]), Clock.systemUTC()));
        FactEdits facts = new FactEdits(ZoneTable.load());
        for (int number = 1; ; number++) {
            String value = Integer.toString(number);
            CountDownLatch done = new CountDownLatch(1);
            thread.edit(
                    store -> facts.set(store, Map.of("inspector", value)),
                    (remarks, state) -> {
                        System.out.println(value);
                        done.countDown();
                    },
                    failed -> System.exit(9));
            done.await();
        }
    }
}
