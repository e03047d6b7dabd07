package quarterlight.store;

import java.math.BigDecimal;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import quarterlight.car.Car;
import quarterlight.car.FinishProfile;
import quarterlight.car.PartialDate;
import quarterlight.car.Substrate;
import quarterlight.car.View;
import quarterlight.car.ZoneId;
import quarterlight.car.body.Body;
import quarterlight.car.body.BodyStyle;
import quarterlight.car.body.Dimensions;
import quarterlight.car.body.DriveSide;
import quarterlight.units.Thickness;
import quarterlight.units.ThicknessUnit;
import quarterlight.visit.BriefWords;
import quarterlight.visit.ReportLength;
import quarterlight.visit.TestCars;
import quarterlight.visit.VisitChoices;
import quarterlight.visit.VisitFacts;
import quarterlight.visit.photo.CameraId;
import quarterlight.visit.photo.CaptureSource;
import quarterlight.visit.photo.CaptureTime;
import quarterlight.visit.photo.MediaFacts;
import quarterlight.visit.photo.MediaHeader;
import quarterlight.visit.photo.MediaKind;
import quarterlight.visit.photo.PhotoFile;
import quarterlight.visit.photo.Position;
import quarterlight.visit.photo.Sha256;
import quarterlight.visit.photo.SidecarWords;
import quarterlight.visit.pin.ViewPoint;
import quarterlight.visit.reading.GaugeValue;
import quarterlight.visit.reading.Reading;

/** Values for the tests of the store; every optional part is filled in one of them and absent in another. */
public final class SampleVisit {
    public static final Clock CLOCK = Clock.fixed(Instant.parse("2026-03-02T10:15:30Z"), ZoneOffset.UTC);
    public static final ZoneId HOOD = new ZoneId("hood");
    public static final ZoneId ROOF = new ZoneId("roof");

    private SampleVisit() {}

    /** The least that a visit can be made of. */
    public static VisitFacts bareFacts() {
        return TestCars.coupe(java.time.ZoneId.of("America/Denver"));
    }

    /** Every fact given, with characters that trouble careless SQL. */
    public static VisitFacts fullFacts() {
        Car car = new Car(
                "Tamarisk 'Ridge'; \"DROP\" — größer",
                Body.usual(BodyStyle.PICKUP),
                DriveSide.RIGHT,
                FinishProfile.LACQUER,
                OptionalInt.of(1971),
                PartialDate.parse("1971-04"),
                Substrate.ALUMINUM,
                Map.of(HOOD, Substrate.FIBERGLASS, ROOF, Substrate.WOOD),
                new Dimensions(OptionalInt.of(2740), OptionalInt.of(4650), OptionalInt.of(1820), OptionalInt.of(1310)));
        return new VisitFacts(
                car,
                java.time.ZoneId.of("Europe/Lisbon"),
                Optional.of("N. Example"),
                Optional.of("a buyer"),
                Optional.of(LocalDate.of(2026, 3, 2)),
                Optional.of("a barn\nbeyond the river"),
                Optional.of("81,240 mi"),
                Optional.of("overcast"),
                Optional.of("no"),
                Optional.of("carpets out"),
                Optional.of("never painted"),
                new Thickness(1500.5),
                new VisitChoices(
                        true,
                        Optional.of("my 'own'.svg"),
                        Optional.of("terms;\nof \"mine\""),
                        Optional.of("an hour of daylight"),
                        ReportLength.SHORT,
                        new BriefWords(
                                Optional.of("32 years at the bench"),
                                Optional.of("+1 555 0100\n\"by letter\""),
                                Optional.of("A car for the 'patient'."))));
    }

    /** A photo whose hash is made of its number, with every optional part. */
    public static PhotoFile fullPhoto(int number) {
        return new PhotoFile(
                "DSC_" + number + ".JPG",
                "originals/" + hash(number).prefix() + "-DSC_" + number + ".JPG",
                hash(number),
                4_321_000_000L + number,
                MediaKind.FILM,
                "MP4",
                new MediaHeader(
                        Optional.of(new CaptureTime(
                                LocalDateTime.of(2026, 3, 2, 9, 0, 0),
                                "0070",
                                Optional.of(ZoneOffset.ofHoursMinutes(5, 45)),
                                CaptureSource.FILM,
                                true)),
                        Optional.of(LocalDateTime.of(2026, 3, 2, 3, 15, 1, 500_000_000)),
                        Optional.of(new Position(39.7391536, -104.9847034)),
                        Optional.of(new CameraId("alder-pocket-3")),
                        OptionalInt.of(4032),
                        OptionalInt.of(3024),
                        6,
                        OptionalDouble.of(12.345678901234567),
                        Optional.of("4F0C-'tie'")),
                OptionalDouble.of(1.0 / 3.0),
                List.of("first remark", "second; 'remark'"),
                new MediaFacts(
                        OptionalInt.of(3),
                        Optional.of(hash(number + 70)),
                        Optional.of(new SidecarWords(
                                Optional.of("two\nlines"),
                                List.of("dent", "it's \"quoted\""),
                                OptionalInt.of(-1),
                                OptionalInt.of(8))),
                        OptionalDouble.of(28.5)));
    }

    /** A photo of which nothing but the file is known. */
    public static PhotoFile barePhoto(int number) {
        return new PhotoFile(
                "p" + number,
                "originals/p" + number,
                hash(number),
                0,
                MediaKind.PHOTO,
                "JPEG",
                MediaHeader.NONE,
                OptionalDouble.empty(),
                List.of(),
                MediaFacts.NONE);
    }

    public static Sha256 hash(int number) {
        return new Sha256("%064x".formatted(number + 1));
    }

    public static Reading reading(ZoneId zone, String um) {
        return new Reading(
                zone,
                new GaugeValue.Measured(new BigDecimal(um), ThicknessUnit.UM),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty());
    }

    public static ViewPoint point(double x, double y) {
        return new ViewPoint(View.TOP, x, y);
    }
}
