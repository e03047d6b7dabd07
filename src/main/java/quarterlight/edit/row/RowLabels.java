package quarterlight.edit.row;

import static quarterlight.language.Sentences.say;

import java.util.List;
import java.util.Locale;
import quarterlight.car.Zone;
import quarterlight.car.ZoneCatalog;
import quarterlight.car.ZoneId;
import quarterlight.language.Language;
import quarterlight.table.ZoneTable;
import quarterlight.visit.VisitRecord;
import quarterlight.visit.photo.Photo;
import quarterlight.visit.photo.PhotoId;
import quarterlight.visit.row.RecordKind;
import quarterlight.visit.row.UndoNames;

/** The labels of edits of rows: {@code add pin DSC_0231 to front door, left}, {@code remove arrow on DSC_0231 and 3 more}. */
public final class RowLabels implements UndoNames.Words {
    private final VisitRecord visit;

    public RowLabels(VisitRecord visit) {
        this.visit = visit;
    }

    /** Read when the first zone is named. */
    private static final class Zones {
        static final ZoneCatalog TABLE = ZoneTable.load();
    }

    <T> String added(RecordKind<T> kind, List<T> values) {
        return kind.names().ofAdding(values, this);
    }

    <T> String changed(RecordKind<T> kind, List<T> values) {
        return kind.names().ofChanging(values, this);
    }

    <T> String removed(RecordKind<T> kind, List<T> values) {
        return kind.names().ofRemoving(values, this);
    }

    /** Rows within a label of its own: the first by its words, and how many more there are. */
    public <T> String named(RecordKind<T> kind, List<T> values) {
        return kind.names().named(values, this);
    }

    /** The file name of one photo, with how many more there are. */
    String photos(List<PhotoId> photos) {
        String first = photo(photos.get(0));
        return photos.size() == 1 ? first : say("undo.more", first, photos.size() - 1);
    }

    /** The file name of a photo. */
    @Override
    public String photo(PhotoId id) {
        return visit.photo(id).map(Photo::file).map(file -> file.name()).orElseGet(() -> say("undo.photo", id));
    }

    /** The name of a zone as it stands within a sentence. */
    @Override
    public String zone(ZoneId id) {
        String label = Zones.TABLE.find(id).map(Zone::label).orElse(id.value());
        boolean word =
                Language.inHand() == Language.ENGLISH && label.length() > 1 && Character.isLowerCase(label.charAt(1));
        return word ? label.substring(0, 1).toLowerCase(Locale.ROOT) + label.substring(1) : label;
    }
}
