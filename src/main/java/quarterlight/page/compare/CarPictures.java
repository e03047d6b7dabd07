package quarterlight.page.compare;

import java.util.Base64;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import quarterlight.visit.photo.PhotoId;

/** The photos of the cars of a comparison, as the template asks for them: each is made once for each size. Safe for several threads. */
public final class CarPictures {
    private final List<CarPage> cars;
    private final Map<Wish, Optional<String>> made = new ConcurrentHashMap<>();

    private record Wish(int car, PhotoId photo, int longSidePx) {}

    CarPictures(List<CarPage> cars) {
        this.cars = List.copyOf(cars);
    }

    /** A photo as an address that holds the picture itself; blank for one that cannot be shown. */
    public String source(int car, PhotoId photo, int longSidePx) {
        return made.computeIfAbsent(new Wish(car, photo, longSidePx), this::picture)
                .orElse("");
    }

    private Optional<String> picture(Wish wish) {
        return cars.get(wish.car())
                .picture()
                .of(wish.photo(), wish.longSidePx())
                .map(jpeg -> "data:image/jpeg;base64," + Base64.getEncoder().encodeToString(jpeg));
    }

    /** Where a photo stands in the car's own report: {@code photo 12, page 31}; blank if it stands nowhere. */
    public String reference(int car, PhotoId photo) {
        return found(car, photo).map(CarPage.Reference::words).orElse("");
    }

    /** The address of that place; blank if there is none. */
    public String address(int car, PhotoId photo) {
        return found(car, photo).flatMap(CarPage.Reference::address).orElse("");
    }

    private Optional<CarPage.Reference> found(int car, PhotoId photo) {
        return Optional.ofNullable(cars.get(car).references().get(photo));
    }

    /** Whether a reference can be given. */
    public boolean isReferred(int car, PhotoId photo) {
        return found(car, photo).isPresent();
    }
}
