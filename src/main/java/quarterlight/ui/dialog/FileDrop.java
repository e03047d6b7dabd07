package quarterlight.ui.dialog;

import java.awt.datatransfer.DataFlavor;
import java.awt.datatransfer.UnsupportedFlavorException;
import java.io.File;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import javax.swing.TransferHandler;

/** Takes files and folders that are dropped on the window. */
public final class FileDrop extends TransferHandler {
    private final transient Consumer<List<Path>> taken;

    public FileDrop(Consumer<List<Path>> taken) {
        this.taken = taken;
    }

    @Override
    public boolean canImport(TransferSupport support) {
        return support.isDataFlavorSupported(DataFlavor.javaFileListFlavor);
    }

    @Override
    public boolean importData(TransferSupport support) {
        try {
            List<Path> paths = new ArrayList<>();
            for (Object file : (List<?>) support.getTransferable().getTransferData(DataFlavor.javaFileListFlavor)) {
                paths.add(((File) file).toPath());
            }
            taken.accept(paths);
            return true;
        } catch (UnsupportedFlavorException | IOException e) {
            return false;
        }
    }
}
