package quarterlight.ui;

import java.awt.Component;
import java.awt.Container;
import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.awt.Window;
import java.awt.image.BufferedImage;
import java.lang.management.ManagementFactory;
import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicLong;
import java.util.concurrent.atomic.AtomicReference;
import javax.swing.RepaintManager;
import javax.swing.SwingUtilities;
import quarterlight.Main;
import quarterlight.ui.photos.sheet.ContactSheet;

/**
 * The whole program as a user starts it, on one visit: when its window stands, when the contact sheet is painted, and when the sheet has
 * ceased to change (its pictures are there). One start a run. Needs a display.
 * <p>Arguments: those of the program, such as {@code desk VISIT}. The property {@code bench.start} may give the time at which the command was
 * called, in ms since 1970; otherwise the Java machine's own start counts, which is some 50 ms later.
 */
public final class OpenBench {
    private static final long QUIET_MS = 700;
    private static final long START = start();
    private static final AtomicLong PAINTED = new AtomicLong();

    private OpenBench() {}

    /** Notes when what was to be painted is painted. */
    private static final class Painting extends RepaintManager {
        @Override
        public void paintDirtyRegions() {
            super.paintDirtyRegions();
            if (PAINTED.get() == 0 && sheet().filter(Component::isShowing).isPresent()) {
                PAINTED.set(sinceStart());
            }
        }
    }

    public static void main(String[] arguments) {
        RepaintManager.setCurrentManager(new Painting());
        Thread watch = new Thread(OpenBench::watch, "bench");
        watch.setDaemon(true);
        watch.start();
        Main.main(arguments);
    }

    private static void watch() {
        try {
            until(() -> Arrays.stream(Window.getWindows()).anyMatch(Component::isShowing));
            SwingUtilities.invokeAndWait(() -> {});
            long window = sinceStart();
            until(() -> PAINTED.get() > 0);
            long painted = PAINTED.get();
            long processor = processMillis();
            long still = still();
            System.out.printf(
                    Locale.US,
                    "window %d ms, sheet painted %d ms (processor time %d ms), its pictures there %d ms (processor time %d ms)%n",
                    window,
                    painted,
                    processor,
                    still,
                    processMillis());
            threads();
            System.exit(0);
        } catch (InterruptedException | java.lang.reflect.InvocationTargetException e) {
            throw new IllegalStateException(e);
        }
    }

    private interface Question {
        boolean holds();
    }

    private static void until(Question question) throws InterruptedException {
        while (!question.holds()) {
            Thread.sleep(15);
        }
    }

    /** When the sheet changed last; it is looked at until nothing has changed for a while. */
    private static long still() throws InterruptedException, java.lang.reflect.InvocationTargetException {
        AtomicReference<int[]> seen = new AtomicReference<>(new int[0]);
        long[] changed = {sinceStart()};
        while (sinceStart() - changed[0] < QUIET_MS) {
            Thread.sleep(30);
            SwingUtilities.invokeAndWait(() -> {
                int[] now = pixels(sheet().orElseThrow());
                if (!Arrays.equals(now, seen.getAndSet(now))) {
                    changed[0] = sinceStart();
                }
            });
        }
        return changed[0];
    }

    /** One line of pixels through each part of what is seen. */
    private static int[] pixels(ContactSheet sheet) {
        Rectangle view = sheet.getVisibleRect();
        BufferedImage image = new BufferedImage(view.width, view.height, BufferedImage.TYPE_INT_RGB);
        Graphics2D g = image.createGraphics();
        g.translate(-view.x, -view.y);
        g.clip(view);
        sheet.paint(g);
        g.dispose();
        int[] all = image.getRGB(0, 0, view.width, view.height, new int[view.width * view.height], 0, view.width);
        int every = 16 * view.width;
        int[] lines = new int[all.length / 16 + view.width];
        for (int from = 0, to = 0; from + view.width <= all.length; from += every, to += view.width) {
            System.arraycopy(all, from, lines, to, view.width);
        }
        return lines;
    }

    private static Optional<ContactSheet> sheet() {
        for (Window window : Window.getWindows()) {
            Optional<ContactSheet> found = sheet(window);
            if (found.isPresent()) {
                return found;
            }
        }
        return Optional.empty();
    }

    private static Optional<ContactSheet> sheet(Container parent) {
        for (Component child : parent.getComponents()) {
            if (child instanceof ContactSheet sheet) {
                return Optional.of(sheet);
            }
            if (child instanceof Container inner) {
                Optional<ContactSheet> found = sheet(inner);
                if (found.isPresent()) {
                    return found;
                }
            }
        }
        return Optional.empty();
    }

    private static long sinceStart() {
        return System.currentTimeMillis() - START;
    }

    /** The Java machine tells its start only through classes that take a while to load. */
    private static long start() {
        Long given = Long.getLong("bench.start");
        return given == null ? ManagementFactory.getRuntimeMXBean().getStartTime() : given;
    }

    private static long processMillis() {
        return ManagementFactory.getOperatingSystemMXBean() instanceof com.sun.management.OperatingSystemMXBean os
                ? os.getProcessCpuTime() / 1_000_000
                : -1;
    }

    /** Which threads took the processor. */
    private static void threads() {
        var threads = ManagementFactory.getThreadMXBean();
        for (long id : threads.getAllThreadIds()) {
            long ms = threads.getThreadCpuTime(id) / 1_000_000;
            if (ms > 50 && threads.getThreadInfo(id) != null) {
                System.out.printf(
                        Locale.US, "  %s: %d ms%n", threads.getThreadInfo(id).getThreadName(), ms);
            }
        }
    }
}
