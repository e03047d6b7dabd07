package quarterlight.walk;

import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import quarterlight.car.Car;
import quarterlight.car.FinishProfile;
import quarterlight.car.Substrate;
import quarterlight.car.ZoneId;
import quarterlight.car.body.Body;
import quarterlight.car.body.BodyStyle;
import quarterlight.car.body.Dimensions;
import quarterlight.car.body.DriveSide;
import quarterlight.visit.VisitParts;
import quarterlight.visit.VisitRecord;
import quarterlight.visit.photo.CaptureSource;
import quarterlight.visit.photo.CaptureTime;
import quarterlight.visit.photo.MediaKind;
import quarterlight.visit.photo.Photo;
import quarterlight.visit.photo.PhotoFile;
import quarterlight.visit.photo.PhotoId;
import quarterlight.visit.photo.Sha256;
import quarterlight.visit.pin.Pin;
import quarterlight.visit.pin.RecordId;
import quarterlight.visit.pin.Recorded;

/** Made walks whose truth is known: panels photographed and measured one after the other, in either order. */
class ReadingPlacesTest {
    private static final LocalDateTime START = LocalDateTime.parse("2026-05-02T10:00:00");
    private static final List<ZoneId> PANELS = List.of(
                    "hood",
                    "fender-left",
                    "door-front-left",
                    "quarter-left",
                    "decklid",
                    "quarter-right",
                    "door-front-right",
                    "fender-right",
                    "roof")
            .stream()
            .map(ZoneId::new)
            .toList();

    private final List<Photo> photos = new ArrayList<>();
    private final List<Recorded<Pin>> pins = new ArrayList<>();
    private final List<LocalDateTime> readings = new ArrayList<>();
    private final List<ZoneId> truth = new ArrayList<>();

    private void photo(LocalDateTime time, ZoneId zone) {
        int number = photos.size() + 1;
        CaptureTime captured = new CaptureTime(time, "", Optional.empty(), CaptureSource.ORIGINAL, false);
        PhotoFile file = new PhotoFile(
                number + ".jpg",
                "originals/" + number + ".jpg",
                new Sha256(String.format("%064x", number)),
                1,
                MediaKind.PHOTO,
                "JPEG",
                Optional.of(captured),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                OptionalInt.empty(),
                OptionalInt.empty(),
                1,
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                List.of(),
                Optional.empty());
        photos.add(new Photo(new PhotoId(number), file, Optional.empty()));
        Pin pin = VisitParts.pin(new PhotoId(number), zone);
        pins.add(new Recorded<>(new RecordId(number), pin));
    }

    private void reading(LocalDateTime time, ZoneId zone) {
        readings.add(time);
        truth.add(zone);
    }

    private VisitRecord visit() {
        Car car = new Car(
                "Tamarisk",
                Body.usual(BodyStyle.COUPE),
                DriveSide.LEFT,
                FinishProfile.UNKNOWN,
                OptionalInt.empty(),
                Optional.empty(),
                Substrate.STEEL,
                Map.of(),
                Dimensions.NOT_GIVEN);
        return new VisitParts(VisitParts.facts(car, ZoneOffset.UTC))
                .photos(photos)
                .pins(pins)
                .record();
    }
}
