package quarterlight.ui;

import java.awt.Component;
import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.awt.Window;
import java.awt.image.BufferedImage;
import java.awt.image.DataBufferInt;
import java.lang.management.ManagementFactory;
import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicLong;
import java.util.concurrent.atomic.AtomicReference;
import javax.swing.RepaintManager;
import javax.swing.SwingUtilities;
import quarterlight.Main;
import quarterlight.diagram.scene.DiagramScene;
import quarterlight.ui.diagram.DiagramPanel;
import quarterlight.ui.kit.look.Look;
import quarterlight.ui.photos.sheet.ContactSheet;

/**
 * The whole program as a user starts it, on one visit: when its window stands, when the contact sheet is painted, and when the sheet has
 * ceased to change (its pictures are there). One start a run. Needs a display.
 * <p>Arguments: those of the program, such as {@code desk VISIT}. The property {@code bench.still} tells for how many ms nothing may change until it
 * ends (700). The property {@code bench.start} may give the time at which the command was
 * called, in ms since 1970; otherwise the Java machine's own start counts, which is some 50 ms later.
 */
public final class OpenBench {
    private static final long QUIET_MS = Long.getLong("bench.still", 700);
    private static final long START = start();
    private static final AtomicLong PAINTED = new AtomicLong();
    private static Optional<DiagramScene> drawn = Optional.empty();
    private static long drawnAt;
    private static long valued = Long.MAX_VALUE;

    private OpenBench() {}

    /** Notes when what was to be painted is painted. */
    private static final class Painting extends RepaintManager {
        @Override
        public void paintDirtyRegions() {
            super.paintDirtyRegions();
            if (PAINTED.get() == 0
                    && WindowParts.ofWindows()
                            .filter(ContactSheet.class::isInstance)
                            .map(ContactSheet.class::cast)
                            .findFirst()
                            .filter(Component::isShowing)
                            .isPresent()) {
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
            Still still = still();
            System.out.printf(
                    Locale.US,
                    "window %d ms, sheet painted %d ms (processor time %d ms), its pictures there %d ms, nothing"
                            + " changes from %d ms, values on the drawing %s, the last drawing from %d ms (processor"
                            + " time %d ms)%n",
                    window,
                    painted,
                    processor,
                    still.pictured(),
                    still.changed(),
                    valued == Long.MAX_VALUE ? "none" : "from " + valued + " ms",
                    drawnAt,
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

    /** When the last picture took the place of an empty box, and when the sheet changed last. */
    private record Still(long pictured, long changed) {}

    /** The sheet is looked at until nothing has changed for a while. */
    private static Still still() throws InterruptedException, java.lang.reflect.InvocationTargetException {
        AtomicReference<int[]> seen = new AtomicReference<>(new int[0]);
        AtomicReference<Still> last = new AtomicReference<>(new Still(sinceStart(), sinceStart()));
        while (sinceStart() - Math.max(last.get().changed(), drawnAt) < QUIET_MS) {
            Thread.sleep(30);
            SwingUtilities.invokeAndWait(() -> {
                drawing();
                int[] now = pixels(WindowParts.ofWindows()
                        .filter(ContactSheet.class::isInstance)
                        .map(ContactSheet.class::cast)
                        .findFirst()
                        .orElseThrow());
                int[] before = seen.getAndSet(now);
                if (!Arrays.equals(now, before)) {
                    boolean pictured = empty(now) < 0.98 * empty(before);
                    if (Boolean.getBoolean("bench.changes")) {
                        System.out.printf(Locale.US, "  %d ms: %d empty%n", sinceStart(), empty(now));
                    }
                    last.set(new Still(pictured ? sinceStart() : last.get().pictured(), sinceStart()));
                }
            });
        }
        return last.get();
    }

    /** Notes when the drawing of the car changed last. */
    private static void drawing() {
        DiagramPanel diagram = (DiagramPanel) StationPictures.find(
                        WindowParts.ofWindows()
                                .filter(ContactSheet.class::isInstance)
                                .map(ContactSheet.class::cast)
                                .findFirst()
                                .orElseThrow()
                                .getRootPane(),
                        c -> "diagram".equals(c.getName()))
                .orElseThrow();
        if (!diagram.scene().equals(drawn)) {
            drawn = diagram.scene();
            drawnAt = sinceStart();
            valued = drawn.filter(scene -> !scene.ink().looks().isEmpty())
                    .map(scene -> Math.min(valued, drawnAt))
                    .orElse(valued);
        }
    }

    /** How many pixels have the color of a box without a picture. */
    private static long empty(int[] pixels) {
        int box = Look.palette().sheet().getRGB() & 0xFFFFFF;
        long count = 0;
        for (int pixel : pixels) {
            count += (pixel & 0xFFFFFF) == box ? 1 : 0;
        }
        return count;
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
        int[] all = ((DataBufferInt) image.getRaster().getDataBuffer()).getData();
        int every = 16 * view.width;
        int[] lines = new int[all.length / 16 + view.width];
        for (int from = 0, to = 0; from + view.width <= all.length; from += every, to += view.width) {
            System.arraycopy(all, from, lines, to, view.width);
        }
        return lines;
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
