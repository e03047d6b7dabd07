package quarterlight.ui;

import java.awt.Component;
import java.awt.datatransfer.Transferable;
import java.io.File;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.function.Predicate;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.SwingUtilities;
import javax.swing.TransferHandler.TransferSupport;
import quarterlight.Main;
import quarterlight.ui.dialog.FileDrop;

/**
 * A folder of photos dropped on the window of an empty visit: seconds until the sheet shows them all, in order; the copying goes on meanwhile.
 * {@code DropBench VISIT FOLDER COUNT}; needs a display.
 */
public final class DropBench {
    private static final long MAX_MS = 600_000;
    /** After this the window of a visit without photos has nothing left to do. */
    private static final long SETTLED_MS = 1_500;

    private DropBench() {}

    public static void main(String[] arguments) {
        Thread watch = new Thread(() -> watch(new File(arguments[1]), Integer.parseInt(arguments[2])), "bench");
        watch.setDaemon(true);
        watch.start();
        Main.main(new String[] {"desk", arguments[0]});
    }

    private static void watch(File folder, int count) {
        try {
            until(c -> c instanceof JComponent one && one.getTransferHandler() instanceof FileDrop);
            Thread.sleep(SETTLED_MS);
            long begun = System.nanoTime();
            SwingUtilities.invokeAndWait(() -> drop(folder));
            until(c -> c instanceof JLabel label && (count + " shown").equals(label.getText()));
            double shown = (System.nanoTime() - begun) / 1e9;
            System.out.printf(Locale.US, "%d photos shown %.2f s after the drop%n", count, shown);
            System.exit(0);
        } catch (Exception e) {
            e.printStackTrace();
            System.exit(1);
        }
    }

    private static void drop(File folder) {
        JComponent target = (JComponent) WindowParts.ofWindows()
                .filter(c -> c instanceof JComponent one && one.getTransferHandler() instanceof FileDrop)
                .findFirst()
                .orElseThrow();
        Transferable files = new DroppedFiles(List.of(folder));
        target.getTransferHandler().importData(new TransferSupport(target, files));
    }

    private static void until(Predicate<Component> wanted) throws Exception {
        long end = System.currentTimeMillis() + MAX_MS;
        AtomicBoolean there = new AtomicBoolean();
        while (!there.get()) {
            if (System.currentTimeMillis() > end) {
                throw new IllegalStateException("it did not come");
            }
            Thread.sleep(10);
            SwingUtilities.invokeAndWait(
                    () -> there.set(WindowParts.ofWindows().anyMatch(c -> c.isShowing() && wanted.test(c))));
        }
    }
}
