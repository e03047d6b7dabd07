package quarterlight.edit.row;

import java.util.Locale;
import quarterlight.car.Zone;
import quarterlight.car.ZoneCatalog;
import quarterlight.car.ZoneId;
import quarterlight.table.ZoneTable;
import quarterlight.visit.VisitRecord;
import quarterlight.visit.photo.Photo;
import quarterlight.visit.photo.PhotoId;
import quarterlight.visit.row.RecordKind;
import quarterlight.visit.row.UndoNames;

/** The labels of edits of one row: {@code add pin DSC_0231 to front door, left}, {@code remove arrow on DSC_0231}. */
public final class RowLabels implements UndoNames.Words {
    private final VisitRecord visit;

    public RowLabels(VisitRecord visit) {
        this.visit = visit;
    }

    /** Read when the first zone is named. */
    private static final class Zones {
        static final ZoneCatalog TABLE = ZoneTable.load();
    }

    <T> String added(RecordKind<T> kind, T value) {
        return kind.names().ofAdding(value, this);
    }

    <T> String changed(RecordKind<T> kind, T value) {
        return kind.names().ofChanging(value, this);
    }

    <T> String removed(RecordKind<T> kind, T value) {
        return kind.names().ofRemoving(value, this);
    }

    /** The file name of a photo. */
    @Override
    public String photo(PhotoId id) {
        return visit.photo(id).map(Photo::file).map(file -> file.name()).orElse("photo " + id);
    }

    /** The name of a zone as it stands within a sentence. */
    @Override
    public String zone(ZoneId id) {
        String label = Zones.TABLE.find(id).map(Zone::label).orElse(id.value());
        boolean word = label.length() > 1 && Character.isLowerCase(label.charAt(1));
        return word ? label.substring(0, 1).toLowerCase(Locale.ROOT) + label.substring(1) : label;
    }
}
