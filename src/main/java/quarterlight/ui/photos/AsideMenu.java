package quarterlight.ui.photos;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import javax.swing.JMenuItem;
import javax.swing.JPopupMenu;
import javax.swing.MenuElement;
import javax.swing.MenuSelectionManager;
import quarterlight.ui.kit.Texts;
import quarterlight.ui.photos.list.PhotoItem;
import quarterlight.ui.photos.list.PhotosModel;
import quarterlight.ui.photos.pins.PinWork;
import quarterlight.ui.photos.sheet.ContactSheet;

/** The reasons for which photos are set aside; the likeliest one is marked, so that Enter takes it. Event thread only. */
final class AsideMenu {
    private static final List<String> REASONS =
            List.of("photos.aside.soft", "photos.aside.alike", "photos.aside.other-car", "photos.aside.not-needed");

    private final Texts texts;
    private final PhotosModel model;
    private final PinWork work;

    AsideMenu(Texts texts, PhotosModel model, PinWork work) {
        this.texts = texts;
        this.model = model;
        this.work = work;
    }

    void show(ContactSheet sheet) {
        Optional<PhotoItem> hand = model.inHand();
        if (hand.isEmpty()) {
            return;
        }
        JPopupMenu menu = new JPopupMenu();
        Set<String> reasons = new LinkedHashSet<>();
        reasons.add(texts.get(likeliest(hand.get())));
        REASONS.forEach(key -> reasons.add(texts.get(key)));
        reasons.addAll(used());
        for (String reason : reasons) {
            JMenuItem item = menu.add(new JMenuItem(texts.get("photos.aside.for", reason)));
            item.addActionListener(e -> work.setAside(reason));
        }
        menu.show(sheet, sheet.anchorX(), sheet.anchorY());
        MenuSelectionManager.defaultManager()
                .setSelectedPath(new MenuElement[] {menu, (JMenuItem) menu.getComponent(0)});
    }

    private String likeliest(PhotoItem item) {
        if (model.hints().isSoft(item.id())) {
            return "photos.aside.soft";
        }
        return model.hints().alike(item.id()).isPresent() ? "photos.aside.alike" : "photos.aside.not-needed";
    }

    /** Reasons of the inspector's own. */
    private List<String> used() {
        return model.all().items().stream()
                .flatMap(item -> item.photo().setAside().stream())
                .distinct()
                .limit(6)
                .toList();
    }
}
