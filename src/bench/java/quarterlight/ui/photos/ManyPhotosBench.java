package quarterlight.ui.photos;

import java.awt.BorderLayout;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Point;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Random;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.Executors;
import javax.swing.JButton;
import javax.swing.JFrame;
import javax.swing.JSplitPane;
import javax.swing.JViewport;
import javax.swing.RepaintManager;
import javax.swing.SwingUtilities;
import quarterlight.car.ZoneId;
import quarterlight.diagram.ink.Ramp;
import quarterlight.diagram.ink.TextMeasure;
import quarterlight.edit.fact.FactEdits;
import quarterlight.finish.place.ZoneSizes;
import quarterlight.photo.decode.Pictures;
import quarterlight.store.VisitStore;
import quarterlight.store.folder.ThumbnailStore;
import quarterlight.table.ZoneTable;
import quarterlight.ui.diagram.DiagramSide;
import quarterlight.ui.kit.Command;
import quarterlight.ui.kit.Problems;
import quarterlight.ui.kit.SettingsFile;
import quarterlight.ui.kit.SwingJobRunner;
import quarterlight.ui.kit.Texts;
import quarterlight.ui.kit.UiContext;
import quarterlight.ui.kit.look.Look;
import quarterlight.ui.kit.look.Palette;
import quarterlight.ui.kit.look.Typeface;
import quarterlight.ui.kit.visit.OpenVisit;
import quarterlight.ui.kit.visit.VisitOpener;
import quarterlight.ui.photos.sheet.ContactSheet;
import quarterlight.visit.photo.CameraId;
import quarterlight.visit.photo.CaptureSource;
import quarterlight.visit.photo.CaptureTime;
import quarterlight.visit.photo.MediaFacts;
import quarterlight.visit.photo.MediaHeader;
import quarterlight.visit.photo.MediaKind;
import quarterlight.visit.photo.PhotoFile;
import quarterlight.visit.photo.PhotoId;
import quarterlight.visit.photo.Sha256;
import quarterlight.visit.pin.Pin;
import quarterlight.visit.row.RecordKind;

/**
 * The Photos station with thousands of photos: from the start of the program to the painted contact sheet, the frames of a scroll, and from
 * a pin's key to the pin on the screen; with the load of the machine. Needs a display.
 * <p>Arguments: a folder for the made visit (made if it is not there), and how many photos, 5000 unless given.
 */
public final class ManyPhotosBench {
    private static final int FRAMES = 120;
    private static final int PINS = 60;
    /** Time between two keys. */
    private static final int EVERY_MS = 450;

    private ManyPhotosBench() {}

    public static void main(String[] arguments) throws Exception {
        Path folder = Path.of(arguments[0]);
        int photos = arguments.length > 1 ? Integer.parseInt(arguments[1]) : 5000;
        if (!Files.exists(folder)) {
            make(folder, photos);
            say("made %d photos; start again to measure", photos);
            return;
        }
        long start = ManagementFactory.getRuntimeMXBean().getStartTime();
        say("start of the program to its first line: %d ms", System.currentTimeMillis() - start);
        Window window = Window.open(folder);
        say("start of the program to the painted sheet: %d ms", System.currentTimeMillis() - start);
        say("processor time until then: %d ms", processMillis());
        threads();
        Thread.sleep(8000);
        scroll(window, "first scroll, thumbnails still coming");
        scroll(window, "second scroll");
        pins(window);
        say(
                "load of the machine: %.1f on %d processors",
                ManagementFactory.getOperatingSystemMXBean().getSystemLoadAverage(),
                Runtime.getRuntime().availableProcessors());
        System.exit(0);
    }

    private static long sinceStart() {
        return System.currentTimeMillis() - ManagementFactory.getRuntimeMXBean().getStartTime();
    }

    private static long processMillis() {
        return ManagementFactory.getOperatingSystemMXBean() instanceof com.sun.management.OperatingSystemMXBean os
                ? os.getProcessCpuTime() / 1_000_000
                : -1;
    }

    static long threadNanos() {
        return ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
    }

    /** Which threads took the processor. */
    private static void threads() {
        var threads = ManagementFactory.getThreadMXBean();
        for (long id : threads.getAllThreadIds()) {
            long ms = threads.getThreadCpuTime(id) / 1_000_000;
            if (ms > 50) {
                say("  %s: %d ms", threads.getThreadInfo(id).getThreadName(), ms);
            }
        }
    }

    private static long cpuMillis(String name) {
        var threads = ManagementFactory.getThreadMXBean();
        return Arrays.stream(threads.getAllThreadIds())
                .filter(id -> threads.getThreadInfo(id) != null
                        && threads.getThreadInfo(id).getThreadName().equals(name))
                .map(id -> threads.getThreadCpuTime(id) / 1_000_000)
                .sum();
    }

    private static void say(String format, Object... values) {
        System.out.println(String.format(Locale.US, format, values));
    }

    /** The station in a frame as the window shows it. */
    private record Window(JFrame frame, OpenVisit visit, PhotosScreen screen, DiagramSide diagram) {
        static Window open(Path folder) throws Exception {
            CountDownLatch shown = new CountDownLatch(1);
            List<Window> made = new ArrayList<>();
            SwingUtilities.invokeAndWait(() -> {
                Typeface.register(TextMeasure.bundled());
                Look.install(Palette.LIGHT);
                UiContext parts = parts(folder);
                say("at the door after %d ms", sinceStart());
                new VisitOpener(parts).open(folder, visit -> {
                    say("visit open after %d ms", sinceStart());
                    PhotosScreen screen =
                            new PhotosScreen(parts, visit, Command.of(parts.texts(), "do.take-in", () -> {}));
                    JFrame frame = new JFrame();
                    DiagramSide diagram = new DiagramSide(parts, visit, () -> Optional.of(screen), words -> {});
                    diagram.show(quarterlight.ui.diagram.Layer.PINS, true);
                    JSplitPane split = new JSplitPane(JSplitPane.HORIZONTAL_SPLIT, true, diagram, screen.side());
                    split.setDividerLocation(760);
                    frame.getContentPane().add(split, BorderLayout.CENTER);
                    frame.setSize(1900, 1000);
                    frame.setVisible(true);
                    screen.shown();
                    made.add(new Window(frame, visit, screen, diagram));
                    SwingUtilities.invokeLater(() -> {
                        RepaintManager.currentManager(frame).paintDirtyRegions();
                        shown.countDown();
                    });
                });
            });
            shown.await();
            return made.get(0);
        }
    }

    private static UiContext parts(Path folder) {
        Problems problems = new Problems() {
            @Override
            public void tell(String sentence) {
                say("told: %s", sentence);
            }

            @Override
            public void remark(String sentence) {
                say("remark: %s", sentence);
            }

            @Override
            public void failed(Throwable failure) {
                failure.printStackTrace();
            }

            @Override
            public boolean confirm(String question, String goOn) {
                return true;
            }

            @Override
            public Optional<String> ask(String question, String title, String proposed) {
                return Optional.empty();
            }
        };
        SwingJobRunner.Display display = new SwingJobRunner.Display() {
            @Override
            public void started(String title, quarterlight.task.JobRunner.Cancel cancel) {
                // nothing is shown
            }

            @Override
            public void report(int done, int total, String what) {
                // nothing is shown
            }

            @Override
            public void ended() {
                // nothing is shown
            }
        };
        return new UiContext(
                Texts.load(),
                Clock.systemUTC(),
                ZoneTable.load(),
                (visit, facts) -> ZoneSizes.NONE,
                SettingsFile.read(folder.resolveSibling("bench-settings/settings.properties"), task -> {}),
                new SwingJobRunner(Executors.newFixedThreadPool(3), display),
                problems,
                Ramp.load(),
                TextMeasure.bundled());
    }

    private static void scroll(Window window, String what) throws Exception {
        List<Double> ms = new ArrayList<>();
        for (int i = 0; i < FRAMES; i++) {
            int frame = i;
            SwingUtilities.invokeAndWait(() -> {
                JViewport view = (JViewport) window.screen().first().getParent();
                int way = view.getView().getHeight() - view.getHeight();
                view.setViewPosition(new Point(0, Math.min(way, frame * 96)));
                long before = threadNanos();
                window.screen().first().paintImmediately(view.getViewRect());
                ms.add((threadNanos() - before) / 1e6);
            });
            Thread.sleep(8);
        }
        report(what + ", processor time of a frame painted whole", ms);
    }

    private static void report(String what, List<Double> ms) {
        double[] sorted = ms.stream().mapToDouble(Double::doubleValue).sorted().toArray();
        say(
                "%s: median %.1f ms, 95th percentile %.1f ms, most %.1f ms, within 16 ms %.1f of 100, within 50 ms"
                        + " %.1f of 100",
                what,
                sorted[sorted.length / 2],
                sorted[(int) (sorted.length * 0.95)],
                sorted[sorted.length - 1],
                100.0 * within(sorted, 16) / sorted.length,
                100.0 * within(sorted, 50) / sorted.length);
    }

    private static long within(double[] ms, int most) {
        return Arrays.stream(ms).filter(x -> x <= most).count();
    }

    private static void pins(Window window) throws Exception {
        List<Double> shown = new ArrayList<>();
        List<Double> settled = new ArrayList<>();
        List<Double> processor = new ArrayList<>();
        PinFrames frames = new PinFrames(
                (ContactSheet) window.screen().first(), window.diagram().diagram());
        SwingUtilities.invokeAndWait(() -> RepaintManager.setCurrentManager(frames));
        long event = cpuMillis("AWT-EventQueue-0");
        long store = cpuMillis("quarterlight-store");
        int missed = 0;
        for (int i = 0; i < PINS; i++) {
            JButton row = button(window.frame(), "photos-row-" + (1 + i % 5));
            PhotoId photo = window.visit().selection().photo().orElseThrow();
            SwingUtilities.invokeAndWait(() -> frames.await(photo));
            long before = System.nanoTime();
            SwingUtilities.invokeAndWait(() -> row.doClick(0));
            Thread.sleep(EVERY_MS);
            if (frames.shown().isPresent()) {
                shown.add((frames.shown().getAsLong() - before) / 1e6);
                settled.add((frames.last() - before) / 1e6);
                processor.add(frames.processor() / 1e6);
            } else {
                missed++;
            }
        }
        report("from a key to the frame with the pin on the diagram and in its cell, by the clock", shown);
        report("the same, processor time of the event thread", processor);
        report("from a key to the last frame that follows it, by the clock", settled);
        say("pins that were not seen within %d ms: %d of %d", EVERY_MS, missed, PINS);
        say(
                "processor time of a pin: event thread %.1f ms, store thread %.1f ms",
                (cpuMillis("AWT-EventQueue-0") - event) / (double) PINS,
                (cpuMillis("quarterlight-store") - store) / (double) PINS);
    }

    private static JButton button(java.awt.Container parent, String name) {
        for (java.awt.Component child : parent.getComponents()) {
            if (child instanceof JButton found && name.equals(child.getName())) {
                return found;
            }
            if (child instanceof java.awt.Container inner) {
                JButton found = button(inner, name);
                if (found.getName() != null) {
                    return found;
                }
            }
        }
        return new JButton();
    }

    private static void make(Path folder, int photos) throws Exception {
        Random random = new Random(5);
        Map<String, String> facts = Map.of("car", "Made for measuring", "style", "coupe", "timezone", "UTC");
        List<ZoneId> zones =
                ZoneTable.load()
                        .zonesOf(new FactEdits(ZoneTable.load())
                                .start(facts, ZoneOffset.UTC)
                                .car()
                                .body())
                        .stream()
                        .map(zone -> zone.id())
                        .toList();
        try (VisitStore store = VisitStore.create(
                        folder, new FactEdits(ZoneTable.load()).start(facts, ZoneOffset.UTC), Clock.systemUTC());
                ThumbnailStore thumbs = ThumbnailStore.open(store.folder())) {
            List<PhotoFile> files = new ArrayList<>();
            LocalDateTime at = LocalDateTime.of(2026, 3, 2, 8, 0);
            for (int i = 0; i < photos; i++) {
                at = at.plusSeconds(random.nextInt(12) == 0 ? 70 + random.nextInt(200) : 2 + random.nextInt(20));
                files.add(photo(folder, thumbs, i, at, random));
            }
            store.change("take in", tx -> files.forEach(tx::addPhoto));
            List<Pin> pins = new ArrayList<>();
            for (int i = 0; i < photos; i += 3) {
                pins.add(new Pin(
                        new PhotoId(i + 1),
                        zones.get(i * zones.size() / photos),
                        OptionalDouble.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty()));
            }
            store.edit("pin", tx -> tx.addAll(RecordKind.PINS, pins));
        }
    }

    private static PhotoFile photo(Path folder, ThumbnailStore thumbs, int number, LocalDateTime at, Random random)
            throws IOException {
        BufferedImage image = new BufferedImage(320, 240, BufferedImage.TYPE_INT_RGB);
        Graphics2D g = image.createGraphics();
        for (int i = 0; i < 12; i++) {
            g.setColor(new Color(random.nextInt(0x1000000)));
            g.fillOval(
                    random.nextInt(320) - 60,
                    random.nextInt(240) - 60,
                    40 + random.nextInt(160),
                    40 + random.nextInt(160));
        }
        g.dispose();
        byte[] jpeg = Pictures.jpeg(image);
        Sha256 hash = sha256(jpeg);
        String stored = "originals/" + hash.prefix() + "-P" + number + ".jpg";
        Files.createDirectories(folder.resolve("originals"));
        Files.write(folder.resolve(stored), jpeg);
        thumbs.put(hash, Pictures.THUMBNAIL, jpeg);
        return new PhotoFile(
                "P" + number + ".jpg",
                stored,
                hash,
                jpeg.length,
                MediaKind.PHOTO,
                "JPEG",
                MediaHeader.NONE
                        .withCaptured(
                                Optional.of(new CaptureTime(at, "", Optional.empty(), CaptureSource.ORIGINAL, false)))
                        .withCamera(Optional.of(new CameraId(number % 3 == 0 ? "made-two" : "made-one")))
                        .withSize(OptionalInt.of(320), OptionalInt.of(240), 1),
                OptionalDouble.of(100 + random.nextInt(1500)),
                List.of(),
                MediaFacts.NONE);
    }

    private static Sha256 sha256(byte[] bytes) {
        try {
            return new Sha256(java.util.HexFormat.of()
                    .formatHex(
                            java.security.MessageDigest.getInstance("SHA-256").digest(bytes)));
        } catch (java.security.NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java platform has SHA-256", e);
        }
    }
}
