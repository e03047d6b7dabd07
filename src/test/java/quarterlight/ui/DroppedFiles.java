package quarterlight.ui;

import java.awt.datatransfer.DataFlavor;
import java.awt.datatransfer.Transferable;
import java.io.File;
import java.util.List;

/** What a file manager hands over when files are dropped. */
public record DroppedFiles(List<File> files) implements Transferable {
    public DroppedFiles {
        files = List.copyOf(files);
    }

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
        return files;
    }
}
