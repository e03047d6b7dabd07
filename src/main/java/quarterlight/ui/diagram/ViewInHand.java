package quarterlight.ui.diagram;

import java.util.Optional;
import java.util.Set;
import quarterlight.car.View;
import quarterlight.car.ZoneId;
import quarterlight.ui.kit.visit.OpenVisit;
import quarterlight.visit.photo.PhotoId;
import quarterlight.visit.pin.Pin;
import quarterlight.visit.pin.Recorded;
import quarterlight.visit.pin.ViewPoint;

/** The one view that what is in hand belongs to: of the zone or the photo, whichever came into hand last. Event thread only. */
final class ViewInHand {
    private final OpenVisit visit;
    private Set<ZoneId> zones = Set.of();
    private Optional<PhotoId> photo = Optional.empty();
    private Optional<View> view = Optional.empty();

    ViewInHand(OpenVisit visit) {
        this.visit = visit;
    }

    /** Looks again; the earlier view stays while nothing in hand has a place on the car. */
    Optional<View> look() {
        Set<ZoneId> zonesNow = visit.selection().zones();
        Optional<PhotoId> photoNow = visit.selection().photo();
        Optional<View> ofZone = zonesNow.equals(zones)
                ? Optional.empty()
                : zonesNow.stream().findFirst().flatMap(this::of);
        Optional<View> ofPhoto = photoNow.equals(photo) ? Optional.empty() : photoNow.flatMap(this::of);
        zones = zonesNow;
        photo = photoNow;
        view = ofZone.or(() -> ofPhoto).or(() -> view);
        return view;
    }

    private Optional<View> of(ZoneId zone) {
        return visit.drawing()
                .places()
                .pointFor(visit.drawing().diagram(), zone)
                .map(ViewPoint::view);
    }

    private Optional<View> of(PhotoId id) {
        return visit.visit().pins().stream()
                .map(Recorded::value)
                .filter(pin -> pin.photo().equals(id))
                .findFirst()
                .flatMap(this::of);
    }

    private Optional<View> of(Pin pin) {
        return pin.point().map(ViewPoint::view).or(() -> of(pin.zone()));
    }
}
