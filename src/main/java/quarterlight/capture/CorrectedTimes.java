package quarterlight.capture;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeMap;
import quarterlight.visit.VisitRecord;
import quarterlight.visit.photo.CameraId;
import quarterlight.visit.photo.CaptureSource;
import quarterlight.visit.photo.CaptureTime;
import quarterlight.visit.photo.ClockSetting;
import quarterlight.visit.photo.Photo;
import quarterlight.visit.photo.PhotoId;

/**
 * When each photo of a visit was taken: the recorded time plus its camera's shift, read at the camera's offset, told in local time at the
 * visit. The recorded time itself is never changed.
 * <p>The law: {@code utc = recorded + shift - offset}. The offset is, in this order: that of the zone which the visit gives this camera; the one
 * the photo records; the one most other photos of its camera record; the one that satellite times show for the camera; that of the visit's zone.
 * Offsets from zones are taken at the shifted time; where clocks skip or
 * repeat an hour, the offset before the change counts.
 * A film's container time is UTC.
 */
public final class CorrectedTimes {
    private final Map<PhotoId, CorrectedTime> times;
    private final List<CameraClock> cameras;

    private CorrectedTimes(Map<PhotoId, CorrectedTime> times, List<CameraClock> cameras) {
        this.times = times;
        this.cameras = List.copyOf(cameras);
    }

    public static CorrectedTimes of(VisitRecord visit) {
        ZoneId zone = visit.facts().timezone();
        Map<CameraId, List<Photo>> byCamera = new TreeMap<>();
        for (Photo photo : visit.photos()) {
            if (photo.file().captured().isPresent()) {
                photo.file().camera().ifPresent(id -> byCamera.computeIfAbsent(id, i -> new ArrayList<>())
                        .add(photo));
            }
        }
        Map<CameraId, CameraClock> clocks = new TreeMap<>();
        byCamera.forEach((id, photos) -> clocks.put(id, clock(id, photos, visit.clocks(), zone)));
        Map<PhotoId, CorrectedTime> times = new LinkedHashMap<>();
        for (Photo photo : visit.photos()) {
            Optional<CameraClock> clock = photo.file().camera().map(clocks::get);
            photo.file().captured().ifPresent(time -> times.put(photo.id(), corrected(time, clock, zone)));
        }
        return new CorrectedTimes(times, new ArrayList<>(clocks.values()));
    }

    /** Empty if the photo has no recorded time. */
    public Optional<CorrectedTime> of(PhotoId photo) {
        return Optional.ofNullable(times.get(Objects.requireNonNull(photo, "photo")));
    }

    /** The cameras of photos that have a time, by their ids. */
    public List<CameraClock> cameras() {
        return cameras;
    }

    /**
     * The shift that makes a photo of a clock agree with what the clock shows. With {@code zone}, the camera counts as set to that zone and the
     * clock as read in it; without, the clock is read in the visit's zone.
     *
     * @return empty if there is no such photo, or it has no time or no camera
     */
    public static Optional<ClockSetting> shownOn(
            VisitRecord visit, PhotoId photo, LocalDateTime shown, Optional<ZoneId> zone) {
        Optional<Photo> seen = visit.photo(photo);
        Optional<CameraId> camera = seen.flatMap(p -> p.file().camera());
        Optional<CaptureTime> recorded = seen.flatMap(p -> p.file().captured());
        if (camera.isEmpty() || recorded.isEmpty()) {
            return Optional.empty();
        }
        if (zone.isPresent() && recorded.get().source() != CaptureSource.FILM) {
            Duration shift = Duration.between(precise(recorded.get()), shown);
            return Optional.of(new ClockSetting(camera.get(), shift, zone));
        }
        Instant truth = shown.atZone(zone.orElse(visit.facts().timezone())).toInstant();
        ClockSetting none = new ClockSetting(camera.get(), Duration.ZERO, zone);
        List<ClockSetting> others = new ArrayList<>(visit.clocks());
        others.removeIf(setting -> setting.camera().equals(camera.get()));
        others.add(none);
        Instant unshifted = of(withClocks(visit, others)).times.get(photo).utc().toInstant();
        Duration shift = Duration.between(unshifted, truth);
        // near a change of the zone's offset the shift moves the photo to the other side; one more step settles it
        others.set(others.size() - 1, new ClockSetting(camera.get(), shift, zone));
        Instant shifted = of(withClocks(visit, others)).times.get(photo).utc().toInstant();
        return Optional.of(new ClockSetting(camera.get(), shift.plus(Duration.between(shifted, truth)), zone));
    }

    private static VisitRecord withClocks(VisitRecord visit, List<ClockSetting> clocks) {
        return new VisitRecord(
                visit.facts(),
                visit.photos(),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                clocks,
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                List.of());
    }

    private static CameraClock clock(
            CameraId camera, List<Photo> photos, Collection<ClockSetting> settings, ZoneId visitZone) {
        Optional<ClockSetting> setting = settings.stream()
                .filter(candidate -> candidate.camera().equals(camera))
                .reduce((earlier, later) -> later);
        Duration shift = setting.map(ClockSetting::shift).orElse(Duration.ZERO);
        Optional<ZoneId> zone = setting.flatMap(ClockSetting::zone);
        List<CaptureTime> stills = new ArrayList<>();
        List<SatelliteOffset.Pair> pairs = new ArrayList<>();
        for (Photo photo : photos) {
            CaptureTime time = photo.file().captured().orElseThrow();
            if (time.source() != CaptureSource.FILM) {
                stills.add(time);
                photo.file().gpsUtc().ifPresent(utc -> pairs.add(new SatelliteOffset.Pair(precise(time), utc)));
            }
        }
        Optional<SatelliteOffset> satellite = SatelliteOffset.of(pairs);
        Optional<ZoneOffset> recorded = mostRecorded(stills);
        Optional<ZoneOffset> offset = recorded.isPresent() ? recorded : satellite.map(SatelliteOffset::offset);
        OffsetSource source = zone.isPresent() || offset.isEmpty()
                ? OffsetSource.VISIT
                : recorded.isPresent() ? OffsetSource.RECORDED : OffsetSource.GPS;
        Optional<ZoneOffset> clockOffset = zone.isPresent() && !stills.isEmpty()
                ? Optional.of(offsetAt(zone.get(), precise(stills.get(0)).plus(shift)))
                : offset;
        Optional<Duration> drift = zone.isEmpty() && recorded.isEmpty()
                ? satellite.map(SatelliteOffset::drift)
                : SatelliteOffset.drift(pairs, clockOffset.orElse(offsetAt(visitZone, LocalDateTime.MIN)));
        return new CameraClock(
                camera,
                photos.size(),
                shift,
                zone,
                zone.isPresent() ? Optional.empty() : offset,
                source,
                drift.map(rest -> rest.plus(shift)),
                pairs.size(),
                satellite.map(SatelliteOffset::agreeing).orElse(0));
    }

    private static Optional<ZoneOffset> mostRecorded(List<CaptureTime> times) {
        Map<ZoneOffset, Integer> counts = new TreeMap<>();
        times.forEach(time -> time.offset().ifPresent(offset -> counts.merge(offset, 1, Integer::sum)));
        return counts.entrySet().stream().max(Map.Entry.comparingByValue()).map(Map.Entry::getKey);
    }

    private static CorrectedTime corrected(CaptureTime time, Optional<CameraClock> clock, ZoneId visitZone) {
        LocalDateTime set = precise(time).plus(clock.map(CameraClock::shift).orElse(Duration.ZERO));
        Optional<ZoneId> cameraZone = clock.flatMap(CameraClock::zone);
        ZoneOffset offset;
        OffsetSource source;
        if (time.source() == CaptureSource.FILM) {
            offset = time.offset().orElse(ZoneOffset.UTC);
            source = OffsetSource.RECORDED;
        } else if (cameraZone.isPresent()) {
            offset = offsetAt(cameraZone.get(), set);
            source = OffsetSource.VISIT;
        } else if (time.offset().isPresent()) {
            offset = time.offset().get();
            source = OffsetSource.RECORDED;
        } else if (clock.flatMap(CameraClock::offset).isPresent()) {
            offset = clock.flatMap(CameraClock::offset).get();
            source = clock.get().source();
        } else {
            offset = offsetAt(visitZone, set);
            source = OffsetSource.VISIT;
        }
        Instant instant = set.toInstant(offset);
        return new CorrectedTime(
                instant.atZone(visitZone).toOffsetDateTime(), instant.atOffset(ZoneOffset.UTC), offset, source);
    }

    private static ZoneOffset offsetAt(ZoneId zone, LocalDateTime local) {
        return zone.getRules().getOffset(local);
    }

    private static LocalDateTime precise(CaptureTime time) {
        return TimeText.withFraction(time.time(), time.fraction());
    }
}
