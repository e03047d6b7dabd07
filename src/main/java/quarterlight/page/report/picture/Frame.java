package quarterlight.page.report.picture;

import java.util.Objects;
import java.util.OptionalDouble;
import quarterlight.visit.photo.PhotoId;
import quarterlight.visit.pin.Pin;

/** A photo, or a moment of a film, as a picture of the report. */
public record Frame(PhotoId photo, OptionalDouble at) {
    public Frame {
        Objects.requireNonNull(photo, "photo");
        Objects.requireNonNull(at, "at");
    }

    public static Frame of(Pin pin) {
        return new Frame(pin.photo(), pin.at());
    }

    /** Its address within the page. */
    public String address() {
        return "picture:" + photo + (at.isPresent() ? "-" + Math.round(1000 * at.getAsDouble()) : "");
    }
}
