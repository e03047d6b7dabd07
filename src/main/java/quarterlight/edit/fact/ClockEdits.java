package quarterlight.edit.fact;

import static quarterlight.language.Sentences.say;

import java.time.Duration;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import quarterlight.capture.CorrectedTimes;
import quarterlight.edit.EditRefused;
import quarterlight.store.VisitStore;
import quarterlight.store.problem.VisitProblem;
import quarterlight.visit.VisitRecord;
import quarterlight.visit.photo.CameraId;
import quarterlight.visit.photo.ClockSetting;
import quarterlight.visit.photo.Photo;
import quarterlight.visit.photo.PhotoId;

/** Sets the clock of a camera right; the recorded times stay as they are. */
public final class ClockEdits {
    private static final Pattern SHIFT = Pattern.compile("([+-])(\\d{1,6}):([0-5]\\d):([0-5]\\d)");

    private final VisitStore store;

    public ClockEdits(VisitStore store) {
        this.store = Objects.requireNonNull(store, "store");
    }

    /** Reads {@code ±HH:MM:SS}; the hours may have more digits, for a clock that is years off. */
    public static Duration shift(String text) throws EditRefused {
        Matcher m = SHIFT.matcher(text.strip());
        if (!m.matches()) {
            throw new EditRefused("shift", say("refused.clock.shift", text));
        }
        Duration shift = Duration.ofHours(Long.parseLong(m.group(2)))
                .plusMinutes(Long.parseLong(m.group(3)))
                .plusSeconds(Long.parseLong(m.group(4)));
        return m.group(1).equals("-") ? shift.negated() : shift;
    }

    /**
     * Shifts every time of a camera, in place of an earlier setting.
     *
     * @param zone the zone the camera's clock was set to, if it is known and not the visit's
     * @throws EditRefused if no photo of the visit is by this camera
     */
    public ClockSetting shift(CameraId camera, Duration shift, Optional<ZoneId> zone) throws EditRefused, VisitProblem {
        requireCamera(store.read(), camera);
        return set(new ClockSetting(camera, shift, zone));
    }

    /**
     * Sets a camera by a photo of a clock.
     *
     * @param shows what the clock in the photo shows, local time at the visit, or in {@code zone} if given
     * @throws EditRefused if the photo is not of this camera, or has no time
     */
    public ClockSetting fromPhoto(CameraId camera, PhotoId photo, LocalDateTime shows, Optional<ZoneId> zone)
            throws EditRefused, VisitProblem {
        VisitRecord visit = store.read();
        requireCamera(visit, camera);
        Photo seen =
                visit.photo(photo).orElseThrow(() -> new EditRefused("photo", "The visit has no photo " + photo + "."));
        if (!seen.file().camera().equals(Optional.of(camera))) {
            throw new EditRefused(
                    "photo", say("refused.clock.camera", photo, seen.file().name(), camera));
        }
        ClockSetting setting = CorrectedTimes.shownOn(visit, photo, shows, zone)
                .orElseThrow(() -> new EditRefused(
                        "photo", say("refused.clock.time", photo, seen.file().name())));
        return set(setting);
    }

    /** Takes a camera's clock as it recorded. */
    public void reset(CameraId camera) throws VisitProblem {
        store.change(say("undo.clock.reset", camera), tx -> tx.removeClock(camera));
    }

    private ClockSetting set(ClockSetting setting) throws VisitProblem {
        store.change(say("undo.clock", setting.camera()), tx -> tx.setClock(setting));
        return setting;
    }

    private static void requireCamera(VisitRecord visit, CameraId camera) throws EditRefused {
        List<String> known = visit.photos().stream()
                .flatMap(photo -> photo.file().camera().stream())
                .distinct()
                .sorted()
                .map(CameraId::value)
                .toList();
        if (!known.contains(camera.value())) {
            throw new EditRefused(
                    "camera",
                    "No photo of the visit is by camera \"" + camera + "\". "
                            + (known.isEmpty()
                                    ? "No photo names its camera."
                                    : "The cameras are " + String.join(", ", known) + "."));
        }
    }
}
