package quarterlight.ui.photos.view;

import java.util.List;
import java.util.Optional;
import javax.swing.JCheckBox;
import quarterlight.edit.row.RowEdits;
import quarterlight.ui.kit.Texts;
import quarterlight.ui.kit.look.Look;
import quarterlight.ui.kit.visit.OpenVisit;
import quarterlight.ui.photos.list.PhotoItem;
import quarterlight.ui.photos.list.PhotosModel;
import quarterlight.visit.BuyerRelease;
import quarterlight.visit.photo.PhotoId;
import quarterlight.visit.pin.RecordId;
import quarterlight.visit.pin.Recorded;
import quarterlight.visit.row.RecordKind;

/** Whether the paper, memo, words or sidecar in hand may go to the buyer. Event thread only. */
public final class ReleaseBox extends JCheckBox {
    private final transient PhotosModel photos;

    ReleaseBox(Texts texts, PhotosModel model) {
        super(texts.get("photos.release"));
        this.photos = model;
        setName("photos-release");
        setOpaque(false);
        setToolTipText(texts.get("photos.release.tip"));
        Look.named(this, texts.get("photos.release"));
        addActionListener(e -> toggle());
        model.onList(this::refresh);
        model.visit().selection().onSelected(this::refresh);
        refresh();
    }

    private void refresh() {
        Optional<PhotoItem> held = hand();
        setVisible(held.isPresent());
        setEnabled(photos.visit().isEditable());
        setSelected(held.isPresent() && !rows(held.get().id()).isEmpty());
    }

    private Optional<PhotoItem> hand() {
        return photos.inHand().filter(item -> item.isHeldBack() && !item.isComing());
    }

    private List<RecordId> rows(PhotoId photo) {
        return photos.visit().visit().released().stream()
                .filter(row -> row.value().photo().equals(photo))
                .map(Recorded::id)
                .toList();
    }

    /** Releases what is in hand, or holds it back again. */
    public void toggle() {
        OpenVisit visit = photos.visit();
        hand().filter(item -> visit.isEditable()).ifPresent(item -> {
            List<RecordId> there = rows(item.id());
            visit.edit(
                    store -> {
                        RowEdits edits = new RowEdits(store);
                        if (there.isEmpty()) {
                            edits.add(RecordKind.RELEASED, List.of(new BuyerRelease(item.id())));
                        } else {
                            edits.remove(RecordKind.RELEASED, there);
                        }
                        return there;
                    },
                    done -> refresh());
        });
    }
}
