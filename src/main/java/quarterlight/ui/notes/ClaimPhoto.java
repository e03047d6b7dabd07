package quarterlight.ui.notes;

import java.util.Objects;
import java.util.Optional;
import javax.swing.JCheckBox;
import quarterlight.ui.kit.Texts;
import quarterlight.ui.kit.view.PhotoCanvas;
import quarterlight.ui.kit.visit.OpenVisit;
import quarterlight.visit.photo.PhotoId;

/** The photo or paper that a claim rests on: tied to it by a tick, and seen beside it. Event thread only. */
final class ClaimPhoto {
    private final Texts texts;
    private final OpenVisit visit;
    private final JCheckBox tie = new JCheckBox();
    private final PhotoCanvas picture;
    private Optional<PhotoId> tied = Optional.empty();

    ClaimPhoto(Texts texts, OpenVisit visit) {
        this.texts = Objects.requireNonNull(texts, "texts");
        this.visit = Objects.requireNonNull(visit, "visit");
        picture = new PhotoCanvas(texts, visit);
        picture.setName("claim-picture");
        tie.setName("claim-photo");
        tie.setToolTipText(texts.get("notes.claim.photo.tip"));
        tie.addActionListener(e -> show(tie.isSelected() ? visit.selection().photo() : Optional.empty()));
        show(Optional.empty());
    }

    JCheckBox tie() {
        return tie;
    }

    PhotoCanvas picture() {
        return picture;
    }

    Optional<PhotoId> tied() {
        return tied;
    }

    /** The photo of the claim that is shown; empty if it has none. */
    void show(Optional<PhotoId> photo) {
        tied = photo;
        render();
    }

    /** The photo in hand is the one that a tick would tie. */
    void render() {
        Optional<PhotoId> offered = tied.or(() -> visit.selection().photo());
        tie.setSelected(tied.isPresent());
        tie.setEnabled(visit.isEditable() && offered.isPresent());
        tie.setText(offered.flatMap(this::name)
                .map(name -> texts.get("notes.claim.photo", name))
                .orElse(texts.get("notes.claim.photo.none")));
        picture.show(tied.flatMap(one -> visit.visit().photo(one)));
        picture.setVisible(tied.isPresent());
    }

    private Optional<String> name(PhotoId photo) {
        return visit.visit().photo(photo).map(one -> one.file().name());
    }
}
