package quarterlight.ui;

import java.awt.AWTException;
import java.awt.Component;
import java.awt.Robot;
import java.awt.event.KeyEvent;
import java.io.File;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Consumer;
import java.util.function.Predicate;
import javax.swing.AbstractButton;
import javax.swing.JComponent;
import javax.swing.SwingUtilities;
import javax.swing.TransferHandler.TransferSupport;
import quarterlight.Main;
import quarterlight.ui.dialog.FileDrop;

/**
 * The real window at work until it is killed: {@code WindowAtWork VISIT FOLDER}. The folder is dropped on it, pages are made, and meanwhile keys go
 * through the photos and set one aside after the other (Enter takes the reason, and closes what the window tells). Says {@code dropped} and {@code pages} when it did so. Needs a display.
 */
public final class WindowAtWork {
    private static final int MAX_WAIT_MS = 60_000;
    private static final int PAUSE_MS = 60;

    private WindowAtWork() {}

    public static void main(String[] arguments) {
        Thread keys = new Thread(() -> work(new File(arguments[1])), "keys");
        keys.setDaemon(true);
        keys.start();
        Main.main(new String[] {"desk", arguments[0]});
    }

    private static void work(File folder) {
        try {
            with(c -> c instanceof JComponent one && one.getTransferHandler() instanceof FileDrop, c -> ((JComponent) c)
                    .getTransferHandler()
                    .importData(new TransferSupport(c, new DroppedFiles(List.of(folder)))));
            System.out.println("dropped");
            Robot robot = new Robot();
            for (int round = 0; ; round++) {
                if (round % 12 == 11) {
                    with(c -> "station-6".equals(c.getName()), c -> ((AbstractButton) c).doClick());
                    with(c -> "pages-make".equals(c.getName()) && c.isEnabled(), c -> ((AbstractButton) c).doClick());
                    System.out.println("pages");
                    with(c -> "station-1".equals(c.getName()), c -> ((AbstractButton) c).doClick());
                }
                press(robot, KeyEvent.VK_RIGHT);
                press(robot, KeyEvent.VK_DELETE);
                press(robot, KeyEvent.VK_ENTER);
            }
        } catch (AWTException | InterruptedException | ReflectiveOperationException e) {
            e.printStackTrace();
            System.exit(9);
        }
    }

    private static void press(Robot robot, int key) throws InterruptedException {
        robot.keyPress(key);
        robot.keyRelease(key);
        TimeUnit.MILLISECONDS.sleep(PAUSE_MS);
    }

    /** Waits for a component that shows, then does something with it on the event thread. */
    private static void with(Predicate<Component> wanted, Consumer<Component> work)
            throws InterruptedException, ReflectiveOperationException {
        AtomicReference<Boolean> done = new AtomicReference<>(false);
        for (int waited = 0; waited < MAX_WAIT_MS && !done.get(); waited += PAUSE_MS) {
            SwingUtilities.invokeAndWait(() -> WindowParts.ofWindows()
                    .filter(c -> c.isShowing() && wanted.test(c))
                    .findFirst()
                    .ifPresent(c -> {
                        work.accept(c);
                        done.set(true);
                    }));
            TimeUnit.MILLISECONDS.sleep(PAUSE_MS);
        }
    }
}
