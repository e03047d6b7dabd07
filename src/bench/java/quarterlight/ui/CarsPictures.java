package quarterlight.ui;

import java.awt.Component;
import java.awt.Dimension;
import java.awt.event.ActionEvent;
import java.awt.event.InputEvent;
import java.awt.event.KeyEvent;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.swing.AbstractButton;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JFrame;
import javax.swing.JRootPane;
import javax.swing.JTabbedPane;
import javax.swing.KeyStroke;
import javax.swing.SwingUtilities;

/**
 * Takes a picture of every part of the window of several cars, for looking at them. Needs a display of at least the size asked for.
 * <p>Arguments: a folder for the pictures, two to six visits, then settings of the window as {@code key=value} ({@code dark=yes}), and {@code size=1280x800}
 * unless another is given.
 */
public final class CarsPictures {
    private CarsPictures() {}

    public static void main(String[] arguments) throws Exception {
        Path folder = Files.createDirectories(Path.of(arguments[0]));
        List<Path> visits = new ArrayList<>();
        List<String> kept = new ArrayList<>();
        Dimension size = new Dimension(1280, 800);
        for (int i = 1; i < arguments.length; i++) {
            if (arguments[i].startsWith("size=")) {
                String[] sides = arguments[i].substring(5).split("x", 2);
                size = new Dimension(Integer.parseInt(sides[0]), Integer.parseInt(sides[1]));
            } else if (arguments[i].contains("=")) {
                kept.add(arguments[i]);
            } else {
                visits.add(Path.of(arguments[i]).toAbsolutePath());
            }
        }
        JFrame main = StationPictures.open(Optional.of(visits.get(0)), kept);
        StationPictures.wait(c -> "diagram".equals(c.getName()));
        SwingUtilities.invokeLater(() -> askForCars(main));
        AbstractButton go = (AbstractButton) StationPictures.wait(c -> "two-go".equals(c.getName()));
        for (int car = 1; car < visits.size(); car++) {
            choose("two-" + (char) ('A' + car), visits.get(car));
        }
        SwingUtilities.invokeLater(go::doClick);
        JTabbedPane parts = (JTabbedPane) StationPictures.wait(c -> "compare-parts".equals(c.getName()));
        JFrame frame = (JFrame) SwingUtilities.getWindowAncestor(parts);
        Dimension inner = size;
        SwingUtilities.invokeAndWait(() -> {
            frame.getRootPane().setPreferredSize(inner);
            frame.setLocation(0, 0);
            frame.pack();
        });
        for (int part = 0; part < parts.getTabCount(); part++) {
            int at = part;
            SwingUtilities.invokeAndWait(() -> parts.setSelectedIndex(at));
            StationPictures.picture(frame, folder.resolve("part-" + (part + 1) + ".png"));
        }
        System.exit(0);
    }

    /** As the keys do. */
    private static void askForCars(JFrame main) {
        JRootPane root = main.getRootPane();
        KeyStroke keys = KeyStroke.getKeyStroke(KeyEvent.VK_C, InputEvent.CTRL_DOWN_MASK | InputEvent.SHIFT_DOWN_MASK);
        Object name = root.getInputMap(JComponent.WHEN_IN_FOCUSED_WINDOW).get(keys);
        root.getActionMap().get(name).actionPerformed(new ActionEvent(root, ActionEvent.ACTION_PERFORMED, ""));
    }

    private static void choose(String name, Path visit) throws Exception {
        Component found = StationPictures.wait(c -> name.equals(c.getName()));
        @SuppressWarnings("unchecked")
        JComboBox<Path> box = (JComboBox<Path>) found;
        SwingUtilities.invokeAndWait(() -> {
            box.addItem(visit);
            box.setSelectedItem(visit);
        });
    }
}
