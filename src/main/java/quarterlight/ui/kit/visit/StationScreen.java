package quarterlight.ui.kit.visit;

import java.util.List;
import java.util.Optional;
import javax.swing.JComponent;
import quarterlight.car.ZoneId;
import quarterlight.coverage.Gap;
import quarterlight.ui.kit.Command;
import quarterlight.ui.kit.place.ChangedRows;
import quarterlight.ui.kit.place.Subject;
import quarterlight.ui.kit.view.PhotoCanvas;
import quarterlight.visit.photo.PhotoId;
import quarterlight.visit.pin.RecordId;
import quarterlight.visit.pin.ViewPoint;

/** What a station puts beside the diagram, and what gestures on the diagram mean while it is in front. Event thread only. */
public interface StationScreen {
    Station station();

    /** What stands beside the diagram. */
    JComponent side();

    /** The component that takes the keyboard when the station comes to the front. */
    JComponent first();

    /** The commands of the station for its menu, in order; the window binds their keys while the station is in front. */
    List<Command> commands();

    /** A zone was clicked or chosen by Enter on the diagram; the zone is selected already. */
    default void zoneChosen(ZoneId zone, ViewPoint point) {}

    /** Photos were dropped on a zone of the diagram. */
    default void photosDropped(List<PhotoId> photos, ZoneId zone, ViewPoint point) {}

    /** A pin was dragged along to another point. */
    default void pinMoved(RecordId pin, ZoneId zone, ViewPoint point) {}

    /** Shows rows that undo or redo changed; their zones and photos are selected already. */
    default void reveal(ChangedRows changed) {}

    /** Chooses the row of evidence that is missing. */
    default void reveal(Gap gap) {}

    /** Where what was shown last stands, and takes the keyboard when one goes there to settle it. */
    default JComponent revealed() {
        return first();
    }

    /** The station has come to the front. */
    default void shown() {}

    /** Another station has come to the front, or the visit is closing. */
    default void hidden() {}

    /** The visit is closing; work in the background ends. */
    default void closed() {}

    /** Thickness is shown in the other unit from now on. */
    default void unitChanged() {}

    /** What is in hand in the station, to ask the grounds of; empty if it is the selected zone. */
    default Optional<Subject> subject() {
        return Optional.empty();
    }

    /** What only the station knows to be open. */
    default List<Doubt> doubts() {
        return List.of();
    }

    /** The picture that the station shows itself; empty if what is in hand is seen beside the drawing. */
    default Optional<PhotoCanvas> picture() {
        return Optional.empty();
    }

    /** One line to show at the foot of the window while the station is in front: what a click does. */
    default Optional<String> hint() {
        return Optional.empty();
    }
}
