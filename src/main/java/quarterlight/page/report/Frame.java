package quarterlight.page.report;

import java.util.Objects;
import java.util.OptionalDouble;
import quarterlight.visit.photo.PhotoId;
import quarterlight.visit.pin.Pin;

/** A photo, or a moment of a film, as a picture of the report. */
record Frame(PhotoId photo, OptionalDouble at) {
    Frame {
        Objects.requireNonNull(photo, "photo");
        Objects.requireNonNull(at, "at");
    }

    static Frame of(Pin pin) {
        return new Frame(pin.photo(), pin.at());
    }

    /** Its address within the page. */
    String address() {
        return "picture:" + photo + (at.isPresent() ? "-" + Math.round(1000 * at.getAsDouble()) : "");
    }
}
