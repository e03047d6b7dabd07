package quarterlight.capture;

import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import quarterlight.visit.TestCars;
import quarterlight.visit.VisitFacts;
import quarterlight.visit.VisitParts;
import quarterlight.visit.VisitRecord;
import quarterlight.visit.photo.CameraId;
import quarterlight.visit.photo.CaptureSource;
import quarterlight.visit.photo.CaptureTime;
import quarterlight.visit.photo.ClockSetting;
import quarterlight.visit.photo.MediaFacts;
import quarterlight.visit.photo.MediaHeader;
import quarterlight.visit.photo.MediaKind;
import quarterlight.visit.photo.Photo;
import quarterlight.visit.photo.PhotoFile;
import quarterlight.visit.photo.PhotoId;
import quarterlight.visit.photo.Sha256;

/** Builds visits whose photos have times only. */
public final class Visits {
    private final String zone;
    private final List<Photo> photos = new ArrayList<>();
    private final List<ClockSetting> clocks = new ArrayList<>();

    private Visits(String zone) {
        this.zone = zone;
    }

    public static Visits in(String zone) {
        return new Visits(zone);
    }

    /** A photo; an empty text leaves camera, offset or satellite time out. Photos are numbered from 1. */
    public Visits photo(String camera, String local, String offset, String gpsUtc) {
        return add(camera, CaptureSource.ORIGINAL, local, offset, gpsUtc);
    }

    Visits film(String camera, String utc) {
        return add(camera, CaptureSource.FILM, utc, "Z", "");
    }

    Visits clock(ClockSetting setting) {
        clocks.add(setting);
        return this;
    }

    public VisitRecord record() {

        return new VisitParts(facts()).photos(photos).clocks(clocks).record();
    }

    private Visits add(String camera, CaptureSource source, String local, String offset, String gpsUtc) {
        CaptureTime time = new CaptureTime(
                LocalDateTime.parse(local),
                "",
                offset.isEmpty() ? Optional.empty() : Optional.of(ZoneOffset.of(offset)),
                source,
                false);
        int number = photos.size() + 1;
        photos.add(new Photo(
                new PhotoId(number),
                new PhotoFile(
                        number + ".jpg",
                        "originals/" + number + ".jpg",
                        new Sha256(String.format("%064x", number)),
                        1,
                        source == CaptureSource.FILM ? MediaKind.FILM : MediaKind.PHOTO,
                        "JPEG",
                        MediaHeader.NONE
                                .withCaptured(Optional.of(time))
                                .withGpsUtc(
                                        gpsUtc.isEmpty() ? Optional.empty() : Optional.of(LocalDateTime.parse(gpsUtc)))
                                .withCamera(camera.isEmpty() ? Optional.empty() : Optional.of(new CameraId(camera))),
                        OptionalDouble.empty(),
                        List.of(),
                        MediaFacts.NONE),
                Optional.empty()));
        return this;
    }

    private VisitFacts facts() {
        return TestCars.coupe(ZoneId.of(zone));
    }
}
