package quarterlight.ui.photos;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import quarterlight.ui.kit.Texts;
import quarterlight.ui.kit.place.ChangedRows;
import quarterlight.ui.kit.visit.Doubt;
import quarterlight.ui.kit.visit.Station;
import quarterlight.ui.photos.list.PhotoHints;
import quarterlight.ui.photos.list.PhotoItem;
import quarterlight.ui.photos.list.PhotosModel;
import quarterlight.visit.photo.PhotoId;

/** Photos that are kept although they are blurry beside the others, or almost like another one. Pure functions. */
final class PhotoDoubts {
    private PhotoDoubts() {}

    static List<Doubt> of(Texts texts, PhotosModel model) {
        PhotoHints hints = model.hints();
        List<Doubt> doubts = new ArrayList<>();
        Set<PhotoId> named = new HashSet<>();
        for (PhotoItem item : model.all().items()) {
            if (item.isAside() || !item.isPinned()) {
                continue;
            }
            if (hints.isSoft(item.id())) {
                add(texts.get("doubt.soft", item.name()), List.of(item.id()), doubts);
            }
            hints.alike(item.id())
                    .flatMap(match -> model.all().find(match.photo()))
                    .filter(other -> !other.isAside() && named.add(item.id()) && !named.contains(other.id()))
                    .ifPresent(other -> add(
                            texts.get("doubt.alike", item.name(), other.name()),
                            List.of(item.id(), other.id()),
                            doubts));
        }
        return doubts;
    }

    private static void add(String sentence, List<PhotoId> photos, List<Doubt> doubts) {
        doubts.add(new Doubt(
                Station.PHOTOS,
                new ChangedRows(Optional.empty(), List.of(), Set.of(), photos),
                Optional.empty(),
                sentence));
    }
}
