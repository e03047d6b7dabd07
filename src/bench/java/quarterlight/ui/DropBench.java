package quarterlight.ui;

import java.awt.Component;
import java.awt.Container;
import java.awt.Window;
import java.awt.datatransfer.DataFlavor;
import java.awt.datatransfer.Transferable;
import java.io.File;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.RepaintManager;
import javax.swing.SwingUtilities;
import javax.swing.TransferHandler;
import quarterlight.Main;

/**
 * A folder of photos dropped on the window of an empty visit: when the contact sheet shows them all, sorted, and when the pictures in
 * sight are there. Needs a display; {@code DropBench VISIT FOLDER}.
 */
public final class DropBench {
    private static final long REST_MS = 3000;

    private DropBench() {}

    public static void main(String[] arguments) {
        File folder = new File(arguments[1]);
        Thread watch = new Thread(() -> watch(folder), "bench");
        watch.setDaemon(true);
        watch.start();
        Main.main(new String[] {"desk", arguments[0]});
    }

    private static void watch(File folder) {
        try {
            int wanted = folder.list().length;
            OpenBench.until(() -> OpenBench.sheet().filter(Component::isShowing).isPresent());
            Thread.sleep(REST_MS);
            long dropped = OpenBench.sinceStart();
            SwingUtilities.invokeAndWait(() -> drop(folder));
            OpenBench.until(() -> shows(wanted));
            SwingUtilities.invokeAndWait(
                    () -> RepaintManager.currentManager(OpenBench.sheet().orElseThrow())
                            .paintDirtyRegions());
            long complete = OpenBench.sinceStart() - dropped;
            System.out.printf(
                    Locale.US,
                    "%d photos on the sheet after %d ms, the pictures in sight after %d ms%n",
                    wanted,
                    complete,
                    OpenBench.still() - dropped);
            Runtime.getRuntime().halt(0);
        } catch (InterruptedException | java.lang.reflect.InvocationTargetException e) {
            throw new IllegalStateException(e);
        }
    }

    private static void drop(File folder) {
        Transferable files = new Transferable() {
            @Override
            public DataFlavor[] getTransferDataFlavors() {
                return new DataFlavor[] {DataFlavor.javaFileListFlavor};
            }

            @Override
            public boolean isDataFlavorSupported(DataFlavor flavor) {
                return flavor.equals(DataFlavor.javaFileListFlavor);
            }

            @Override
            public List<File> getTransferData(DataFlavor flavor) {
                return List.of(folder);
            }
        };
        JComponent target = parts(
                        part -> part instanceof JComponent one && one.getTransferHandler() instanceof FileDrop)
                .map(JComponent.class::cast)
                .findFirst()
                .orElseThrow();
        target.getTransferHandler().importData(new TransferHandler.TransferSupport(target, files));
    }

    /** Whether the filter that names all photos counts as many. */
    private static boolean shows(int wanted) {
        boolean[] answer = new boolean[1];
        try {
            SwingUtilities.invokeAndWait(() -> answer[0] = parts(JComboBox.class::isInstance)
                    .map(part -> (JComboBox<?>) part)
                    .flatMap(box -> IntStream.range(0, Math.min(1, box.getItemCount()))
                            .mapToObj(i -> String.valueOf(box.getItemAt(i))))
                    .anyMatch(text -> text.matches("All photos\\s+" + wanted)));
        } catch (InterruptedException | java.lang.reflect.InvocationTargetException e) {
            throw new IllegalStateException(e);
        }
        return answer[0];
    }

    private static Stream<Component> parts(Predicate<Component> wanted) {
        return Arrays.stream(Window.getWindows()).flatMap(DropBench::all).filter(wanted);
    }

    private static Stream<Component> all(Container parent) {
        return Stream.concat(
                Stream.of(parent),
                Arrays.stream(parent.getComponents())
                        .flatMap(child -> child instanceof Container inner ? all(inner) : Stream.of(child)));
    }
}
