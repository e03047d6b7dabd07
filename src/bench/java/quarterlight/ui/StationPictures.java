package quarterlight.ui;

import java.awt.Component;
import java.awt.Container;
import java.awt.Dimension;
import java.awt.Graphics2D;
import java.awt.Window;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Predicate;
import javax.accessibility.AccessibleContext;
import javax.imageio.ImageIO;
import javax.swing.AbstractButton;
import javax.swing.JFrame;
import javax.swing.JRootPane;
import javax.swing.SwingUtilities;
import quarterlight.diagram.NominalAreas;
import quarterlight.diagram.file.DiagramRefused;
import quarterlight.diagram.file.VisitDiagram;
import quarterlight.finish.place.ZoneSizes;
import quarterlight.table.ZoneTable;
import quarterlight.task.Progress;
import quarterlight.ui.kit.visit.Station;
import quarterlight.ui.start.SampleVisits;

/**
 * Takes a picture of every station with a visit open: for the manual, and for looking at them. Needs a display of at least the size asked for.
 * <p>Arguments: a visit ({@code -} for the first page without one), a folder for the pictures, then settings of the window as {@code key=value}
 * ({@code dark=yes}, {@code text.percent=200}), {@code hand=NAME} for the photo to take in hand, {@code size=1280x800} unless another is given, and
 * {@code rest=yes} for the pages of the stations, the layer of coverage, the first doubt and the windows that keys open.
 */
public final class StationPictures {
    private static final long MAX_WAIT_MS = 60_000;
    private static final int QUIET_ROUNDS = 2;

    private StationPictures() {}

    public static void main(String[] arguments) throws Exception {
        Path folder = Files.createDirectories(Path.of(arguments[1]));
        List<String> kept = new ArrayList<>();
        Dimension size = new Dimension(1280, 800);
        String hand = "";
        boolean rest = false;
        for (int i = 2; i < arguments.length; i++) {
            if (arguments[i].startsWith("size=")) {
                String[] sides = arguments[i].substring(5).split("x", 2);
                size = new Dimension(Integer.parseInt(sides[0]), Integer.parseInt(sides[1]));
            } else if (arguments[i].startsWith("hand=")) {
                hand = arguments[i].substring(5);
            } else if (arguments[i].equals("rest=yes")) {
                rest = true;
            } else {
                kept.add(arguments[i]);
            }
        }
        Optional<Path> visit = arguments[0].equals("-") ? Optional.empty() : Optional.of(Path.of(arguments[0]));
        JFrame frame = open(visit, kept);
        Dimension inner = size;
        SwingUtilities.invokeAndWait(() -> {
            frame.getRootPane().setPreferredSize(inner);
            frame.setLocation(0, 0);
            frame.pack();
        });
        if (visit.isEmpty()) {
            picture(frame, folder.resolve("start.png"));
        } else {
            wait(c -> "diagram".equals(c.getName()));
            take(hand);
            for (Station station : Station.values()) {
                show(frame, station, folder);
                if (rest) {
                    RestPictures.pages(frame, station, folder);
                }
            }
            // once more: by now everything is worked out
            show(frame, Station.PHOTOS, folder);
        }
        if (rest) {
            RestPictures.windows(frame, visit.isPresent(), folder);
        }
        System.exit(0);
    }

    /** Opens the desktop with settings of its own. */
    static JFrame open(Optional<Path> visit, List<String> kept) throws Exception {
        Path settings = Files.createTempDirectory("station-pictures");
        Files.writeString(
                settings.resolve("settings.properties"), "schema=1\nwelcomed=yes\n" + String.join("\n", kept) + "\n");
        Desktop desktop = new Desktop(
                Clock.system(java.time.ZoneId.systemDefault()),
                ZoneTable::load,
                (path, facts) -> {
                    try {
                        return NominalAreas.sizes(
                                VisitDiagram.of(path, facts), facts.car().dimensions());
                    } catch (DiagramRefused e) {
                        return ZoneSizes.NONE;
                    }
                },
                new DesktopPreloader(settings),
                new SampleVisits() {
                    @Override
                    public Path folder() {
                        return settings;
                    }

                    @Override
                    public java.util.List<Path> make(Progress progress) {
                        return java.util.List.of();
                    }
                },
                settings.resolve("log"));
        new Thread(() -> desktop.open(visit), "desk").start();
        return (JFrame) wait(c -> "main".equals(c.getName()));
    }

    private static void show(JFrame frame, Station station, Path folder) throws Exception {
        click("station-" + station.digit());
        picture(frame, folder.resolve("%s.png".formatted(station.name().toLowerCase(Locale.ROOT))));
    }

    /** Takes a photo in hand by the name of its file, as those do who hear the window. */
    private static void take(String file) throws Exception {
        if (file.isEmpty()) {
            return;
        }
        Component sheet = wait(c -> "photos-sheet".equals(c.getName()));
        SwingUtilities.invokeAndWait(() -> {
            AccessibleContext photos = sheet.getAccessibleContext();
            for (int i = 0; i < photos.getAccessibleChildrenCount(); i++) {
                AccessibleContext photo = photos.getAccessibleChild(i).getAccessibleContext();
                if (photo.getAccessibleName().startsWith(file)) {
                    photo.getAccessibleAction().doAccessibleAction(0);
                    return;
                }
            }
        });
    }

    static void click(String name) throws Exception {
        AbstractButton button = (AbstractButton) wait(c -> name.equals(c.getName()));
        SwingUtilities.invokeAndWait(button::doClick);
    }

    static void picture(JFrame frame, Path file) throws Exception {
        picture(frame.getRootPane(), file);
    }

    /** Waits until a window has ceased to change, then writes what it shows. */
    static void picture(JRootPane frame, Path file) throws Exception {
        AtomicReference<BufferedImage> last = new AtomicReference<>();
        int still = 0;
        for (int round = 0; round < 60 && still < QUIET_ROUNDS; round++) {
            TimeUnit.MILLISECONDS.sleep(350);
            BufferedImage before = last.get();
            SwingUtilities.invokeAndWait(() -> last.set(painted(frame)));
            still = before != null && same(before, last.get()) ? still + 1 : 0;
        }
        try {
            ImageIO.write(last.get(), "png", file.toFile());
        } catch (IOException e) {
            throw new IllegalStateException(file.toString(), e);
        }
        System.out.println(file);
    }

    private static BufferedImage painted(Container root) {
        BufferedImage image = new BufferedImage(root.getWidth(), root.getHeight(), BufferedImage.TYPE_INT_RGB);
        Graphics2D g = image.createGraphics();
        root.paint(g);
        g.dispose();
        return image;
    }

    private static boolean same(BufferedImage a, BufferedImage b) {
        return a.getWidth() == b.getWidth()
                && a.getHeight() == b.getHeight()
                && java.util.Arrays.equals(
                        a.getRGB(0, 0, a.getWidth(), a.getHeight(), null, 0, a.getWidth()),
                        b.getRGB(0, 0, b.getWidth(), b.getHeight(), null, 0, b.getWidth()));
    }

    static Component wait(Predicate<Component> wanted) throws Exception {
        for (long waited = 0; waited < MAX_WAIT_MS; waited += 100) {
            AtomicReference<Component> found = new AtomicReference<>();
            SwingUtilities.invokeAndWait(() -> {
                for (Window window : Window.getWindows()) {
                    find(window, wanted).ifPresent(found::set);
                }
            });
            if (found.get() != null) {
                return found.get();
            }
            TimeUnit.MILLISECONDS.sleep(100);
        }
        throw new IllegalStateException("not found on the screen");
    }

    static Optional<Component> find(Component at, Predicate<Component> wanted) {
        if (at.isShowing() && wanted.test(at)) {
            return Optional.of(at);
        }
        if (at instanceof Container parent) {
            for (Component child : parent.getComponents()) {
                Optional<Component> found = find(child, wanted);
                if (found.isPresent()) {
                    return found;
                }
            }
        }
        return Optional.empty();
    }
}
