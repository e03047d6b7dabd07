package quarterlight.ui.kit;

import java.awt.datatransfer.DataFlavor;
import java.awt.datatransfer.Transferable;
import java.awt.datatransfer.UnsupportedFlavorException;
import java.util.List;
import quarterlight.visit.photo.PhotoId;

/** Photos of the visit while they are dragged from one part of the window to another. */
public final class PhotoTransfer implements Transferable {
    /** Stands for photos of the visit; has a meaning within the program only. */
    public static final DataFlavor FLAVOR = new DataFlavor(PhotoTransfer.class, "photos of the visit");

    private final List<PhotoId> photos;

    public PhotoTransfer(List<PhotoId> photos) {
        this.photos = List.copyOf(photos);
    }

    public List<PhotoId> photos() {
        return photos;
    }

    @Override
    public DataFlavor[] getTransferDataFlavors() {
        return new DataFlavor[] {FLAVOR};
    }

    @Override
    public boolean isDataFlavorSupported(DataFlavor flavor) {
        return FLAVOR.equals(flavor);
    }

    @Override
    public Object getTransferData(DataFlavor flavor) throws UnsupportedFlavorException {
        if (!isDataFlavorSupported(flavor)) {
            throw new UnsupportedFlavorException(flavor);
        }
        return this;
    }
}
